package zonewright.nights;

import java.util.List;

/**
 * What someone keys in for one program. Only what can be keyed in stands in it: no start outside
 * the hours, and no more starts and programs than the controller has.
 *
 * @param program its name; empty for zones that belong to none
 * @param nights its nights, in words; empty where nothing of it can run
 * @param startsProgram whether the controller starts the program, and not each zone by itself
 * @param starts its start times, the same on all its nights, where the controller starts programs;
 *     else empty
 * @param lines its stations
 * @param misfits what does not fit, and what is left undone for it, a sentence each; empty where
 *     all of it can be keyed in
 */
public record ScheduleCard(
    String program,
    String nights,
    boolean startsProgram,
    List<String> starts,
    List<Line> lines,
    List<String> misfits) {
  /** Keeps copies. */
  public ScheduleCard {
    starts = List.copyOf(starts);
    lines = List.copyOf(lines);
    misfits = List.copyOf(misfits);
  }

  /** Returns what to call it. */
  public String title() {
    return program.isEmpty() ? "Zones without a program" : "Program " + program;
  }

  /**
   * One station, on nights that have the same start times.
   *
   * @param zone the zone
   * @param nights the nights, in words
   * @param minutes minutes of each cycle
   * @param cycles cycles a night
   * @param soak shortest soak after a cycle, in minutes; 0 where there is but one
   * @param starts when its cycles start, as they will run
   */
  public record Line(
      NightsInput.SheetZone zone,
      String nights,
      int minutes,
      int cycles,
      int soak,
      List<String> starts) {
    /** Keeps a copy. */
    public Line {
      starts = List.copyOf(starts);
    }
  }
}
