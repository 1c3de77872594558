package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Makes the timetable of a site whose controller starts programs at set times: the stations of a
 * program share its days, and its start times are the same on each of them.
 *
 * <p>Each program keeps inside the hours that all its nights have open, and two programs keep apart
 * where they ever share a night. One program runs at a time and one valve is open at a time.
 */
public final class PlainWeekPlanner {
  private final NightRules rules;
  private final StartRuns startRuns;
  private final List<Finding> findings = new ArrayList<>();

  private PlainWeekPlanner(NightRules rules, StartRuns startRuns) {
    this.rules = rules;
    this.startRuns = startRuns;
  }

  /**
   * Plans the site.
   *
   * @param zones the zones, each in the program it names
   * @param rules what holds for the site; the most valves at once is taken as one
   * @param firstDay the first date of the plan; matters only when a zone waters by dates
   * @param startRuns what a start of a program does
   * @throws java.util.concurrent.CancellationException when the thread is interrupted meanwhile
   */
  public static PlainTimetable plan(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, StartRuns startRuns) {
    PlainTimetable plan = new PlainWeekPlanner(rules, startRuns).run(zones, firstDay);
    Timetable made = plan.timetable();
    if (made.fits()) {
      return plan;
    }
    List<Cure> cures = new PlainCures(zones, rules, firstDay, startRuns, made.nights()).find();
    return new PlainTimetable(
        new Timetable(made.nights(), made.zones(), made.findings(), cures), plan.programs());
  }

  /** Plans the site, and leaves it to the caller to seek cures. */
  static Timetable withoutCures(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, StartRuns startRuns) {
    return new PlainWeekPlanner(rules, startRuns).run(zones, firstDay).timetable();
  }

  private PlainTimetable run(List<WateredZone> zones, LocalDate firstDay) {
    List<List<WateredZone>> programs = programs(zones);
    List<WateredZone> asZones = programs.stream().map(PlainWeekPlanner::asZone).toList();
    WeekdayChoice.Result choice = WeekdayChoice.choose(asZones, rules);
    findings.addAll(choice.findings().stream().map(PlainWeekPlanner::ofProgram).toList());
    Calendar calendar = new Calendar(asZones, rules, firstDay, choice.days());
    List<List<Integer>> byNight = new ArrayList<>();
    for (int day = 0; day < calendar.nights().size(); day++) {
      byNight.add(calendar.zonesOn(day, choice.days()));
    }
    List<PlainProgram> cards = new ArrayList<>();
    List<ValveRun> runs = new ArrayList<>();
    place(programs, calendar, byNight, cards, runs);
    cards.sort(Comparator.comparingInt(program -> program.card().startMinutes().get(0)));
    List<NightPlan> nights = nights(programs, calendar, byNight, runs);
    findings.addAll(tooShort(nights));
    return new PlainTimetable(
        new Timetable(nights, zoneNights(zones, programs, calendar, byNight), findings, List.of()),
        cards);
  }

  /** Zones by program, and where those of one want different days, by days. */
  private List<List<WateredZone>> programs(List<WateredZone> zones) {
    Map<String, Map<Object, List<WateredZone>>> byName = new LinkedHashMap<>();
    for (WateredZone zone : zones) {
      if (zone.flow() <= rules.availableFlow()) {
        byName
            .computeIfAbsent(zone.program(), name -> new LinkedHashMap<>())
            .computeIfAbsent(rhythm(zone), any -> new ArrayList<>())
            .add(zone);
      } else {
        findings.add(
            Finding.of(
                Finding.Kind.OVER_AVAILABLE_FLOW,
                zone,
                zone.name() + " alone draws more than the available flow and is left out."));
      }
    }
    List<List<WateredZone>> result = new ArrayList<>();
    byName.forEach(
        (name, parts) -> {
          int number = 1;
          for (List<WateredZone> part : parts.values()) {
            String own = number == 1 ? name : name + " (" + number + ")";
            result.add(part.stream().map(zone -> zone.inProgram(own)).toList());
            number++;
          }
          if (parts.size() > 1) {
            findings.add(split(name, parts.values().stream().map(p -> p.get(0)).toList()));
          }
        });
    return result;
  }

  private static Finding split(String name, List<WateredZone> examples) {
    List<String> wants = new ArrayList<>();
    for (WateredZone zone : examples) {
      String cycles = zone.cycles() == 1 ? "1 cycle" : zone.cycles() + " cycles";
      wants.add(zone.name() + " " + inWords(zone.days()) + " in " + cycles);
    }
    return Finding.ofSite(
        Finding.Kind.PROGRAM_SPLIT,
        "Stations of program "
            + name
            + " do not go together ("
            + String.join(", ", wants)
            + "). Key it in as "
            + examples.size()
            + " programs, or give its zones the same days and cycles.");
  }

  /** What all stations of a program must have in common. */
  private Object rhythm(WateredZone zone) {
    Object days =
        zone.days() instanceof WateringDays.ChooseWeekdays free ? free.daysNeeded() : zone.days();
    return startRuns == StartRuns.EVERY_STATION ? List.of(days, zone.cycles()) : days;
  }

  private static String inWords(WateringDays days) {
    if (days instanceof WateringDays.ChooseWeekdays free) {
      return free.daysNeeded() + (free.daysNeeded() == 1 ? " day" : " days") + " a week";
    }
    if (days instanceof WateringDays.OnWeekdays fixed) {
      return "on " + Clock.names(fixed.weekdays());
    }
    if (days instanceof WateringDays.EveryFewDays interval) {
      return interval.days() == 1 ? "every day" : "every " + interval.days() + " days";
    }
    return days instanceof WateringDays.OddDates ? "on odd dates" : "on even dates";
  }

  /** A program as one long run, for the choice of its days. */
  private static WateredZone asZone(List<WateredZone> stations) {
    int minutes = stations.stream().mapToInt(WateredZone::minutesPerNight).sum();
    WateringDays days = stations.get(0).days();
    if (days instanceof WateringDays.ChooseWeekdays free) {
      int gap = free.longestGap();
      Set<DayOfWeek> allowed = new LinkedHashSet<>(free.allowed());
      for (WateredZone zone : stations) {
        WateringDays.ChooseWeekdays other = (WateringDays.ChooseWeekdays) zone.days();
        gap = Math.min(gap, other.longestGap());
        allowed.retainAll(other.allowed());
      }
      days =
          new WateringDays.ChooseWeekdays(
              free.daysNeeded(), gap, allowed.isEmpty() ? free.allowed() : allowed);
    }
    String program = stations.get(0).program();
    return new WateredZone(
        program.isBlank() ? "without a name" : program,
        program,
        OptionalInt.empty(),
        1,
        Math.min(WateringWindow.DAY, minutes),
        0,
        0,
        days);
  }

  private static Finding ofProgram(Finding finding) {
    return Finding.ofSite(finding.kind(), "Program " + finding.sentence());
  }

  /** Places all programs and keeps what to key in. */
  private void place(
      List<List<WateredZone>> programs,
      Calendar calendar,
      List<List<Integer>> byNight,
      List<PlainProgram> cards,
      List<ValveRun> runs) {
    List<PlainWeekPlacer.Program> asked = new ArrayList<>();
    List<List<WateredZone>> placed = new ArrayList<>();
    for (int number = 0; number < programs.size(); number++) {
      int program = number;
      List<Integer> nights =
          IntStream.range(0, byNight.size())
              .filter(night -> byNight.get(night).contains(program))
              .boxed()
              .toList();
      if (!nights.isEmpty()) {
        List<WateredZone> stations = PlainControllerPlanner.inOrder(programs.get(number));
        List<WateringWindow> hours = commonWindows(nights, calendar, stations.get(0).program());
        Chain chain = PlainControllerPlanner.chain(stations, hours, rules.gapMinutes());
        asked.add(new PlainWeekPlacer.Program(chain, nights, hours));
        placed.add(stations);
      }
    }
    int[][] starts = PlainWeekPlacer.place(asked, rules.gapMinutes());
    for (int i = 0; i < placed.size(); i++) {
      List<WateredZone> stations = placed.get(i);
      ProgramCard card = card(stations, starts[i], runs);
      List<Night> nights =
          asked.get(i).nights().stream().map(night -> calendar.nights().get(night)).toList();
      cards.add(new PlainProgram(card, stations.get(0).days(), nights));
      judge(card, asked.get(i));
    }
  }

  private ProgramCard card(List<WateredZone> stations, int[] starts, List<ValveRun> runs) {
    for (int pass = 0; pass < starts.length; pass++) {
      PlainControllerPlanner.addRuns(stations, pass, starts[pass], rules.gapMinutes(), runs);
    }
    return PlainControllerPlanner.card(stations, Arrays.stream(starts).boxed().toList());
  }

  private void judge(ProgramCard card, PlainWeekPlacer.Program program) {
    if (card.startMinutes().size() > rules.mostStarts()) {
      findings.add(
          Finding.ofSite(
              Finding.Kind.TOO_MANY_STARTS,
              "Program "
                  + card.program()
                  + " needs "
                  + card.startMinutes().size()
                  + " starts, and may have "
                  + rules.mostStarts()
                  + ". Water its stations on more days or in fewer cycles."));
    }
    int longest = ImpossibleZones.longestStretch(program.windows());
    if (program.chain().minutes(0) > longest) {
      findings.add(
          Finding.ofSite(
              Finding.Kind.CYCLE_OVER_WINDOW,
              "One start of program "
                  + card.program()
                  + " takes "
                  + program.chain().minutes(0)
                  + " min, longer than any window of its nights. Share its stations over more"
                  + " programs."));
    }
    int first = card.startMinutes().get(0);
    int last = card.startMinutes().get(card.startMinutes().size() - 1);
    for (ProgramCard.Station station : card.stations()) {
      int free = WateringWindow.DAY - (last - first) - station.minutes();
      if (station.starts() > 1 && free < station.zone().soakMinutes()) {
        findings.add(
            Finding.of(
                Finding.Kind.REST_BETWEEN_NIGHTS,
                station.zone(),
                station.zone().name()
                    + " starts again a night later before its soak of "
                    + station.zone().soakMinutes()
                    + " min is over. Close the night sooner, or water on fewer days."));
      }
    }
  }

  /** The hours that all nights of a program have open; those of the first where there are none. */
  private List<WateringWindow> commonWindows(
      List<Integer> nights, Calendar calendar, String program) {
    DayOfWeek first = calendar.nights().get(nights.get(0)).weekday();
    List<WateringWindow> common = rules.windowsOn(first);
    for (int night : nights) {
      DayOfWeek day = calendar.nights().get(night).weekday();
      List<WateringWindow> both = new ArrayList<>();
      for (WateringWindow one : common) {
        for (WateringWindow other : rules.windowsOn(day)) {
          int from = Math.max(one.startMinute(), other.startMinute());
          int to = Math.min(one.endMinute(), other.endMinute());
          if (from < to && from < WateringWindow.DAY) {
            both.add(new WateringWindow(from, to));
          }
        }
      }
      if (both.isEmpty()) {
        findings.add(
            Finding.ofSite(
                Finding.Kind.NO_COMMON_HOURS,
                "Program "
                    + program
                    + " starts at the same times on all its days, and "
                    + Clock.name(first)
                    + " and "
                    + Clock.name(day)
                    + " have no hours in common. Give both nights windows that overlap."));
        return rules.windowsOn(first);
      }
      common = both;
    }
    return common;
  }

  private List<NightPlan> nights(
      List<List<WateredZone>> programs,
      Calendar calendar,
      List<List<Integer>> byNight,
      List<ValveRun> all) {
    List<NightPlan> plans = new ArrayList<>();
    for (int day = 0; day < byNight.size(); day++) {
      Night night = calendar.nights().get(day);
      List<WateringWindow> windows = rules.windowsOn(night.weekday());
      if (windows.isEmpty()) {
        continue;
      }
      List<WateredZone> here = new ArrayList<>();
      byNight.get(day).forEach(number -> here.addAll(programs.get(number)));
      Set<WateredZone> set = new LinkedHashSet<>(here);
      List<ValveRun> runs = all.stream().filter(run -> set.contains(run.zone())).toList();
      int opens = windows.get(0).startMinute();
      int finish = runs.stream().mapToInt(ValveRun::endMinute).max().orElse(opens);
      int bound =
          here.isEmpty() ? opens : PlainControllerPlanner.bound(night, here, rules, startRuns);
      plans.add(new NightPlan(night, windows, runs, finish, Math.min(bound, finish)));
    }
    return plans;
  }

  private static List<Finding> tooShort(List<NightPlan> nights) {
    List<Finding> found = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      nights.stream()
          .filter(night -> night.night().weekday() == day && night.overrunMinutes() > 0)
          .max(Comparator.comparingInt(NightPlan::overrunMinutes))
          .ifPresent(night -> found.add(TimetablePlanner.tooShort(night, true)));
    }
    return found;
  }

  private static List<ZoneNights> zoneNights(
      List<WateredZone> zones,
      List<List<WateredZone>> programs,
      Calendar calendar,
      List<List<Integer>> byNight) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (int number = 0; number < programs.size(); number++) {
      for (WateredZone station : programs.get(number)) {
        numbers.put(station.name(), number);
      }
    }
    List<ZoneNights> result = new ArrayList<>();
    for (WateredZone zone : zones) {
      List<Night> nights = new ArrayList<>();
      Integer number = numbers.get(zone.name());
      for (int day = 0; number != null && day < byNight.size(); day++) {
        if (byNight.get(day).contains(number)) {
          nights.add(calendar.nights().get(day));
        }
      }
      result.add(new ZoneNights(zone, nights));
    }
    return result;
  }
}
