package zonewright.nights;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import zonewright.timetable.NightRules;
import zonewright.timetable.StartRuns;
import zonewright.timetable.WateredZone;

/**
 * All that a timetable depends on at one moment, and what its zones are called.
 *
 * @param stations the zones that water, in their order
 * @param leftOut the zones of the sheet that are not among them
 * @param programs the programs by their numbers
 * @param rules what holds for the site
 * @param plain whether the controller starts programs at set times
 * @param startRuns what a start of a program runs then
 * @param firstDay the date from which dates are counted
 */
public record NightsInput(
    List<Station> stations,
    List<LeftOut> leftOut,
    Map<Long, Program> programs,
    NightRules rules,
    boolean plain,
    StartRuns startRuns,
    LocalDate firstDay) {
  /** Keeps copies. */
  public NightsInput {
    stations = List.copyOf(stations);
    leftOut = List.copyOf(leftOut);
    programs = Map.copyOf(programs);
  }

  /**
   * A zone as the timetable sees it.
   *
   * @param zone what the planner must know
   * @param sheet where it stands
   * @param askedAWeek minutes of watering that it asks for a week, before rounding
   */
  public record Station(WateredZone zone, SheetZone sheet, double askedAWeek) {}

  /**
   * A zone as people know it.
   *
   * @param row its row in the sheet of zones
   * @param name its name there
   * @param place where it is, in words; may be blank
   * @param program number of its program
   * @param needAWeek minutes of watering that its plants need a week, before rounding and whatever
   *     a stage forbids; not a number where that is not known
   */
  public record SheetZone(int row, String name, String place, long program, double needAWeek) {}

  /**
   * A zone that the planner never sees.
   *
   * @param sheet where it stands
   * @param why what keeps it out
   * @param minutesAsked minutes of watering a week that it asks for, where they are known
   */
  public record LeftOut(SheetZone sheet, Why why, OptionalInt minutesAsked) {
    /** What keeps a zone out. */
    public enum Why {
      /** Its cycles, minutes or flow are not known yet. */
      LACKS_FIGURES,
      /** Its days are not known yet. */
      LACKS_DAYS,
      /** Its cycles and soaks are too many or too long for any night. */
      TOO_LONG,
      /** The controller cannot choose its days. */
      OTHER_DAYS,
      /** The controller has no station left for it. */
      OVER_STATIONS,
      /** It asks for no water. */
      NO_WATER
    }
  }

  /**
   * A program of the design.
   *
   * @param row its row in the sheet of programs
   * @param name its name there
   */
  public record Program(int row, String name) {}

  /** Returns the same for a controller that starts programs at set times. */
  public NightsInput forPlainController() {
    NightRules one = plain ? rules : rules.withMostValves(1);
    return new NightsInput(stations, leftOut, programs, one, true, startRuns, firstDay);
  }

  /** Returns what of it the timetable depends on. */
  NightsProblem problem() {
    return new NightsProblem(
        stations.stream().map(Station::zone).toList(), rules, plain, startRuns, firstDay);
  }
}
