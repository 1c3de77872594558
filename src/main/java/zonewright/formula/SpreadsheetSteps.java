package zonewright.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * A formula of plain numbers in so many steps that each is short enough to be read where it stands
 * in a cell: published modelling standards ask for one calculation a cell.
 *
 * @param steps the steps in their order, each a formula of those before it
 * @param last the formula that gives the result
 */
public record SpreadsheetSteps(List<Formula> steps, Formula last) {
  /** The longest text of a step as it is shown. */
  public static final int LONGEST = 300;

  /** How deep brackets may go. */
  public static final int DEEPEST = 4;

  /** A part is no shorter than this, or the name of its cell would be as long. */
  private static final int SHORTEST = 60;

  public SpreadsheetSteps {
    steps = List.copyOf(steps);
  }

  /**
   * Returns a formula in steps.
   *
   * @param step gives the name of the cell that a step, counted from 0, stands in
   */
  public static SpreadsheetSteps of(
      Formula plain, SpreadsheetNames names, IntFunction<Reference> step) {
    List<Formula> steps = new ArrayList<>();
    Formula last = plain;
    for (Optional<Formula> rows = rows(last); rows.isPresent(); rows = rows(last)) {
      Formula cell = new Formula.Cell(step.apply(steps.size()));
      steps.add(rows.get());
      last = Rewriter.replaced(last, rows.get(), cell);
    }
    while (!readable(SpreadsheetText.of(last, names))) {
      Formula cell = new Formula.Cell(step.apply(steps.size()));
      Optional<Formula> part = largest(last, names);
      Optional<Condition> condition =
          part.isPresent() ? Optional.empty() : largestCondition(last, names);
      if (part.isPresent()) {
        steps.add(part.get());
        last = Rewriter.replaced(last, part.get(), cell);
      } else if (condition.isPresent()) {
        steps.add(asNumber(condition.get()));
        last = Rewriter.replaced(last, condition.get(), cell.atLeast(Formula.number(1)));
      } else {
        break;
      }
    }
    return new SpreadsheetSteps(steps, last);
  }

  /**
   * What is gathered from the rows that keep to a limit is long, and names the limit twice: limit
   * and rows are steps of their own.
   */
  private static Optional<Formula> rows(Formula whole) {
    Formula[] found = {null};
    Rewriter.parts(
        whole,
        part -> {
          Optional<Matching.Limit> limit =
              part instanceof Formula.Where where ? where.matching().limit() : Optional.empty();
          limit
              .map(Matching.Limit::than)
              .filter(than -> !(than instanceof Formula.Cell || than instanceof Formula.Constant))
              .or(() -> limit.isPresent() && part != whole ? Optional.of(part) : Optional.empty())
              .ifPresent(each -> found[0] = each);
          return limit.isEmpty();
        });
    return Optional.ofNullable(found[0]);
  }

  private static Formula asNumber(Condition condition) {
    return new Formula.Choose(condition, Formula.number(1), Formula.number(0));
  }

  private static boolean readable(String text) {
    return SpreadsheetText.shown(text).length() <= LONGEST
        && SpreadsheetText.depth(text) <= DEEPEST;
  }

  private static boolean worthwhile(String text) {
    return readable(text) && text.length() > SHORTEST;
  }

  /** The longest part that can be read by itself; what is within one is shorter. */
  private static Optional<Formula> largest(Formula whole, SpreadsheetNames names) {
    Formula[] best = {null};
    int[] length = {SHORTEST};
    Rewriter.parts(
        whole,
        part -> {
          if (part == whole) {
            return true;
          }
          if (part instanceof Formula.Cell || part instanceof Formula.Constant) {
            return false;
          }
          String text = SpreadsheetText.of(part, names);
          if (readable(text) && text.length() > length[0]) {
            best[0] = part;
            length[0] = text.length();
          }
          return !readable(text);
        });
    return Optional.ofNullable(best[0]);
  }

  private static Optional<Condition> largestCondition(Formula whole, SpreadsheetNames names) {
    return Rewriter.conditions(whole).stream()
        .filter(condition -> !(condition instanceof Condition.Comparison))
        .filter(condition -> worthwhile(SpreadsheetText.of(asNumber(condition), names)))
        .max(Comparator.comparingInt(condition -> SpreadsheetText.of(condition, names).length()));
  }
}
