package zonewright.timetable;

import java.util.List;

/** What of a program can be keyed in at given start times, and what is left undone for it. */
interface PartCard {
  /** The stations that can run, each with as many cycles as it can have. */
  List<PlainProgram.Station> stations();

  /** The cycles of a night as they run. */
  List<ValveRun> runs();

  /** The cycles of a night that cannot run, where they would lie if all did. */
  List<Undone> undone();

  /** Minutes that run in a night. */
  default int minutes() {
    return runs().stream().mapToInt(ValveRun::minutes).sum();
  }
}
