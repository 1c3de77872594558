package zonewright.timetable;

import java.util.List;

/**
 * A night for a plain controller.
 *
 * @param night the cycles as they will run, with the finish and its proven bound
 * @param cards what to key in, one card a program, by first start
 * @param findings what the controller cannot do, or what does not fit
 */
public record ProgramPlan(NightPlan night, List<ProgramCard> cards, List<Finding> findings) {
  /** Keeps copies. */
  public ProgramPlan {
    cards = List.copyOf(cards);
    findings = List.copyOf(findings);
  }
}
