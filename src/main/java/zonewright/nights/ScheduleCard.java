package zonewright.nights;

import java.util.List;

/**
 * What someone keys in for one program of the controller, or where each station has times of its
 * own for the zones of one program of the design. Only what can be keyed in stands in it: no start
 * outside the hours, and no more starts and programs than the controller has.
 *
 * @param letter the controller's program it is keyed in as, such as {@code A}; empty where the
 *     controller does not start it or nothing of it can be keyed in
 * @param program the name of the design's program; empty for zones that belong to none
 * @param days the days of the calendar on which its starts lie, in words; empty where nothing of it
 *     can run
 * @param way how the controller is keyed in
 * @param starts its start times, the same on all its days, where the controller starts programs;
 *     else empty
 * @param lines its stations in the order they run
 * @param minutes minutes of watering on one of its days; 0 where its stations differ in days
 * @param finish when the last station is done, where the controller starts programs; else empty
 * @param misfits what does not fit, and what is left undone for it, a sentence each; empty where
 *     all of it can be keyed in
 * @param rounding what rounding adds to the minutes needed, as a sentence; empty where it is less
 *     than a minute a week
 */
public record ScheduleCard(
    String letter,
    String program,
    String days,
    Way way,
    List<String> starts,
    List<Line> lines,
    int minutes,
    String finish,
    List<String> misfits,
    String rounding) {
  /** Keeps copies. */
  public ScheduleCard {
    starts = List.copyOf(starts);
    lines = List.copyOf(lines);
    misfits = List.copyOf(misfits);
  }

  /** How a controller is keyed in. */
  public enum Way {
    /** A start gives each station one run. */
    START_A_CYCLE(
        "Each start runs the stations in this order, one after another; another start gives the next cycle."),
    /** A start gives each station all its cycles. */
    CYCLE_AND_SOAK(
        "One start gives everything: key in each station's whole run time, its longest cycle and its soak; the controller goes round by itself."),
    /** Each station has start times of its own. */
    STATION_STARTS("Each station starts by itself at its times.");

    private final String sentence;

    Way(String sentence) {
      this.sentence = sentence;
    }

    /** Returns what to know before keying in, as a sentence. */
    public String sentence() {
      return sentence;
    }
  }

  /** Returns what to call it. */
  public String title() {
    if (letter.isEmpty()) {
      return program.isEmpty() ? "Zones without a program" : "Program " + program;
    }
    return program.isEmpty() || program.equals(letter)
        ? "Program " + letter
        : "Program " + letter + ", zones of " + program;
  }

  /**
   * One station, on days that have the same start times.
   *
   * @param zone the zone
   * @param days its days, in words
   * @param minutes minutes to key in: of each cycle, or of all where the controller keeps the
   *     cycles
   * @param cycles how many cycles a day
   * @param longestCycle most minutes at a time
   * @param soak shortest soak after a cycle, in minutes; 0 where there is but one
   * @param starts when its cycles start, as they will run
   * @param lacks what it gets too little, in words; empty where it gets all it needs
   */
  public record Line(
      NightsInput.SheetZone zone,
      String days,
      int minutes,
      int cycles,
      int longestCycle,
      int soak,
      List<String> starts,
      String lacks) {
    /** Keeps a copy. */
    public Line {
      starts = List.copyOf(starts);
    }
  }
}
