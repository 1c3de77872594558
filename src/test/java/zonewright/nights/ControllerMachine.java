package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A controller that someone keys cards into, program by program, and that then runs week after
 * week, minute by minute. It knows the texts of the cards and nothing of how they were made; what
 * it cannot take, it refuses.
 */
final class ControllerMachine {
  static final int DAY = 1440;
  static final int WEEK = 7 * DAY;

  private final int programs;
  private final int starts;
  private final int gap;
  private final boolean keepsSoaks;
  private final boolean skipsDone;
  private final int atOnce;
  private final Map<String, Program> keyed = new TreeMap<>();
  private final List<Single> singles = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();

  /** A valve that was open, from one minute to another, counted from Monday's midnight. */
  record Run(int zone, int from, int to) {}

  private record Station(int zone, int minutes, int cycles, int longestCycle, int soak) {}

  private record Program(List<Integer> days, List<Integer> starts, List<Station> stations) {}

  private record Single(List<Integer> days, List<Integer> starts, int zone, int minutes) {}

  /** A program that has started and is not done. */
  private static final class Started {
    private final List<Station> stations;
    private final int[] left;
    private final int[] ready;
    private int turn;
    private int busyUntil;

    Started(List<Station> stations) {
      this.stations = stations;
      left = stations.stream().mapToInt(Station::minutes).toArray();
      ready = new int[left.length];
    }

    boolean over() {
      return Arrays.stream(left).allMatch(minutes -> minutes == 0);
    }
  }

  /**
   * A controller with nothing keyed in.
   *
   * @param keepsSoaks whether stations take a longest cycle and a soak
   * @param skipsDone whether a start passes over stations that had their cycles
   * @param atOnce how many programs it runs at the same time
   */
  ControllerMachine(
      int programs, int starts, int gap, boolean keepsSoaks, boolean skipsDone, int atOnce) {
    this.programs = programs;
    this.starts = starts;
    this.gap = gap;
    this.keepsSoaks = keepsSoaks;
    this.skipsDone = skipsDone;
    this.atOnce = atOnce;
  }

  private static IllegalStateException refused(String why) {
    return new IllegalStateException(why);
  }

  /** Keys a card in as it is printed. */
  void keyIn(ScheduleCard card) {
    if (card.lines().isEmpty()) {
      return;
    }
    if (card.way() == ScheduleCard.Way.STATION_STARTS) {
      for (ScheduleCard.Line line : card.lines()) {
        singles.add(
            new Single(days(line.days()), times(line.starts()), line.zone().row(), line.minutes()));
      }
      return;
    }
    boolean has =
        card.letter().length() == 1
            && card.letter().charAt(0) >= 'A'
            && card.letter().charAt(0) < 'A' + programs;
    if (!has) {
      throw refused("It has no program “" + card.letter() + "”.");
    }
    if (card.starts().size() > starts) {
      throw refused("It has no " + card.starts().size() + " starts.");
    }
    List<Station> stations = new ArrayList<>();
    for (ScheduleCard.Line line : card.lines()) {
      int longest = keepsSoaks ? line.longestCycle() : line.minutes();
      stations.add(
          new Station(line.zone().row(), line.minutes(), line.cycles(), longest, line.soak()));
    }
    Program program = new Program(days(card.days()), times(card.starts()), stations);
    if (keyed.put(card.letter(), program) != null) {
      throw refused("Program " + card.letter() + " is keyed in already.");
    }
  }

  private static List<Integer> days(String words) {
    List<Integer> days = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name().charAt(0) + day.name().substring(1, 3).toLowerCase(Locale.ROOT);
      if (words.equals("every day") || List.of(words.split(" ", -1)).contains(name)) {
        days.add(day.getValue() - 1);
      }
    }
    if (days.isEmpty()) {
      throw refused("It knows no days “" + words + "”.");
    }
    return days;
  }

  private static List<Integer> times(List<String> words) {
    return words.stream()
        .map(
            word -> {
              int colon = word.indexOf(':');
              return 60 * Integer.parseInt(word.substring(0, colon))
                  + Integer.parseInt(word.substring(colon + 1));
            })
        .toList();
  }

  /** Runs for some weeks; returns what ran, in order. */
  List<Run> run(int weeks) {
    List<Started> running = new ArrayList<>();
    Map<Integer, Integer> open = new HashMap<>();
    runs.clear();
    for (int minute = 0; minute < weeks * WEEK; minute++) {
      int day = minute / DAY % 7;
      int clock = minute % DAY;
      int now = minute;
      running.removeIf(started -> started.over() && now >= started.busyUntil);
      for (Program program : keyed.values()) {
        if (program.days().contains(day) && program.starts().contains(clock)) {
          if (running.size() == atOnce) {
            throw refused(
                "A program starts at %d:%02d while %d run."
                    .formatted(clock / 60, clock % 60, atOnce));
          }
          int start = program.starts().indexOf(clock);
          running.add(
              new Started(
                  program.stations().stream()
                      .filter(station -> !skipsDone || station.cycles() > start)
                      .toList()));
        }
      }
      for (Single single : singles) {
        if (single.days().contains(day) && single.starts().contains(clock)) {
          if (open.getOrDefault(single.zone(), 0) > minute) {
            throw refused("A station starts while it runs.");
          }
          open.put(single.zone(), minute + single.minutes());
          runs.add(new Run(single.zone(), minute, minute + single.minutes()));
        }
      }
      for (Started started : running) {
        if (minute >= started.busyUntil) {
          next(started, minute);
        }
      }
    }
    return runs;
  }

  /** Opens the next valve of a program if its turn has come. */
  private void next(Started now, int minute) {
    for (int i = 0; i < now.left.length; i++) {
      int at = (now.turn + i) % now.left.length;
      if (now.left[at] > 0 && now.ready[at] <= minute) {
        Station station = now.stations.get(at);
        int minutes = Math.min(now.left[at], station.longestCycle());
        now.left[at] -= minutes;
        now.ready[at] = minute + minutes + station.soak();
        now.turn = at + 1;
        runs.add(new Run(station.zone(), minute, minute + minutes));
        now.busyUntil = minute + minutes + gap;
        return;
      }
    }
  }
}
