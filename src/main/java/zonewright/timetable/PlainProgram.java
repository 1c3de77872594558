package zonewright.timetable;

import java.util.List;

/**
 * A program of a controller that starts programs, as it is keyed in: the same on each of its
 * nights. What the controller or the hours cannot take is left out.
 *
 * @param program which program
 * @param place which program of the controller it would be, from 1, those that ask for most first
 * @param startMinutes its start times, in order, as minutes from midnight at the start of the
 *     night's weekday; 1440 and more is next morning
 * @param stations its stations, in the order they run
 * @param runs its cycles in each of its nights, as they will run
 * @param nights its nights: of every week, or of the dates the plan covers
 * @param asked what it would be whole
 */
public record PlainProgram(
    ProgramPart program,
    int place,
    List<Integer> startMinutes,
    List<Station> stations,
    List<ValveRun> runs,
    List<Night> nights,
    Asked asked) {
  /** Keeps copies. */
  public PlainProgram {
    startMinutes = List.copyOf(startMinutes);
    stations = List.copyOf(stations);
    runs = List.copyOf(runs);
    nights = List.copyOf(nights);
  }

  /**
   * One station of the program.
   *
   * @param zone the zone it waters
   * @param cycles how many cycles it runs: at the first so many of the program's starts, or all at
   *     its one start where the controller knows cycles and soaks
   */
  public record Station(WateredZone zone, int cycles) {}

  /** When its last station is done, counted as its starts; 0 where nothing of it runs. */
  public int finishMinute() {
    return runs.stream().mapToInt(ValveRun::endMinute).max().orElse(0);
  }

  /**
   * The days of the calendar on which its starts lie: its nights, or each the day after where they
   * come after midnight. All starts are on one side of it, unless the program runs every night.
   */
  public List<Night> startDays() {
    boolean after = !startMinutes.isEmpty() && startMinutes.get(0) >= WateringWindow.DAY;
    return after ? nights.stream().map(Night::next).toList() : nights;
  }

  /**
   * What the whole would be if all of it ran. Of starts that need a second program of the
   * controller, that second one asks for nothing more.
   *
   * @param zones its zones in the order they run
   * @param starts how many starts
   * @param startsKept for how many the controller has starts and programs
   * @param finishMinute when its last station would be done
   * @param closesMinute when the last window closes that its nights have in common
   */
  public record Asked(
      List<WateredZone> zones, int starts, int startsKept, int finishMinute, int closesMinute) {
    /** Keeps a copy. */
    public Asked {
      zones = List.copyOf(zones);
    }
  }
}
