package zonewright.nights;

import java.util.ArrayList;
import java.util.List;
import zonewright.timetable.NightRules;
import zonewright.timetable.PlainProgram;

/** What of a program a controller that starts programs cannot take, and by how much. */
final class Misfits {
  private Misfits() {}

  /**
   * One thing that does not fit.
   *
   * @param clause what, going on from the name of the program
   * @param cure what to do about it
   * @param tooLong whether it is the hours that do not suffice
   */
  record Misfit(String clause, String cure, boolean tooLong) {}

  /** Returns what does not fit of a program. */
  static List<Misfit> of(PlainProgram program, NightRules rules) {
    PlainProgram.Asked asked = program.asked();
    if (program.place() > rules.mostPrograms()) {
      return List.of(
          new Misfit(
              "would be program %s of a controller that has %s, so nothing of it can be keyed in"
                  .formatted(program.place(), rules.mostPrograms()),
              "put its zones into the other programs, with the same days and cycles",
              false));
    }
    List<Misfit> misfits = new ArrayList<>();
    if (asked.starts() > asked.startsKept()) {
      misfits.add(
          new Misfit(
              "asks for %s starts a night of a controller that has %s left for it, %s too many"
                  .formatted(
                      asked.starts(), asked.startsKept(), asked.starts() - asked.startsKept()),
              "water its zones on more days, or give them emitters with a lower rate",
              false));
    }
    if (asked.finishMinute() > asked.closesMinute()) {
      misfits.add(
          new Misfit(
              "would be done at %s, and its hours end at %s, which is %s too long"
                  .formatted(
                      NightWords.time(asked.finishMinute()),
                      NightWords.time(asked.closesMinute()),
                      NightWords.length(asked.finishMinute() - asked.closesMinute())),
              "open more hours or nights, or share its zones over more nights",
              true));
    }
    return misfits;
  }
}
