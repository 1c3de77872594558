package zonewright.nights;

import java.util.List;

/**
 * What someone keys in for one program.
 *
 * @param program its name; empty for zones that belong to none
 * @param nights its nights, in words
 * @param starts its start times, the same on all its nights, where the controller starts programs;
 *     else empty
 * @param lines its stations
 */
public record ScheduleCard(String program, String nights, List<String> starts, List<Line> lines) {
  /** Keeps copies. */
  public ScheduleCard {
    starts = List.copyOf(starts);
    lines = List.copyOf(lines);
  }

  /** Returns what to call it. */
  public String title() {
    return program.isEmpty() ? "Zones without a program" : "Program " + program;
  }

  /** Says whether the controller starts the program, and not each zone by itself. */
  public boolean startsProgram() {
    return !starts.isEmpty();
  }

  /**
   * One station, on nights that have the same start times.
   *
   * @param station the zone
   * @param nights the nights, in words
   * @param minutes minutes of each cycle
   * @param cycles cycles a night
   * @param soak shortest soak after a cycle, in minutes; 0 where there is but one
   * @param starts when its cycles start, as they will run
   */
  public record Line(
      NightsInput.Station station,
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
