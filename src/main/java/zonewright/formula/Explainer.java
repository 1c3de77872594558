package zonewright.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import zonewright.formula.Condition.ConditionVisitor;
import zonewright.units.QuantityText;

/**
 * Calculates one cell and says how: the same arithmetic as the blocks, one row at a time, with the
 * numbers put in.
 *
 * <p>The explanation returns the number it explains, so it cannot drift from it.
 */
public final class Explainer
    implements FormulaVisitor<Explainer.Part>, ConditionVisitor<Explainer.Held> {
  /**
   * What a part of the formula comes to, and its text with numbers.
   *
   * @param constant whether it is but a number of the formula
   */
  public record Part(Outcome outcome, Text text, boolean constant) {
    Part(Outcome outcome, Text text) {
      this(outcome, text, false);
    }
  }

  /**
   * Whether a condition holds, or why that cannot be said.
   *
   * @param text what is so, or where that is not known what is asked
   */
  record Held(Outcome outcome, Supplier<String> text) {
    boolean known() {
      return outcome instanceof Outcome.Amount;
    }

    boolean holds() {
      return outcome.number() == 1;
    }
  }

  /**
   * A cell explained.
   *
   * @param outcome the number, or why there is none
   * @param numbers the formula with its numbers
   * @param notes what decided, and the rows of tables values were looked up in
   * @param sources where the values of these rows come from
   * @param constants the numbers of the formula that count on the way taken
   */
  public record Explanation(
      Outcome outcome,
      String numbers,
      List<String> notes,
      List<String> sources,
      Set<Double> constants) {
    public Explanation {
      notes = notes.stream().distinct().toList();
      sources = sources.stream().distinct().toList();
      constants = Collections.unmodifiableSet(new LinkedHashSet<>(constants));
    }
  }

  private static final int MOST_DECIMALS = 12;

  private final KnownRow row;
  private final Outcome.CellName cell;
  private final List<Supplier<String>> notes = new ArrayList<>();
  private final List<Supplier<String>> sources = new ArrayList<>();
  private final Set<Double> constants = new LinkedHashSet<>();

  private Explainer(KnownRow row, Outcome.CellName cell) {
    this.row = row;
    this.cell = cell;
  }

  /** Explains {@code plain}, a formula of plain numbers, for {@code cell}. */
  public static Explanation explain(Formula plain, KnownRow row, Outcome.CellName cell) {
    Explainer explainer = new Explainer(row, cell);
    Part part = plain.accept(explainer);
    return new Explanation(
        part.outcome(),
        explainer.as(cell.column(), part).words(),
        explainer.notes.stream().map(Supplier::get).toList(),
        explainer.sources.stream().map(Supplier::get).toList(),
        explainer.constants);
  }

  /** Returns what {@link #explain} says a cell comes to, without putting words together. */
  public static Outcome outcome(Formula plain, KnownRow row, Outcome.CellName cell) {
    return plain.accept(new Explainer(row, cell)).outcome();
  }

  /**
   * Says whether {@code plain}, a condition of plain numbers, holds in a row; not where that cannot
   * be said.
   */
  public static boolean holds(Condition plain, KnownRow row, Outcome.CellName cell) {
    return plain.accept(new Explainer(row, cell)).holds();
  }

  private Outcome joined(Outcome left, Outcome right, DoubleBinaryOperator operation) {
    if (left instanceof Outcome.Amount first && right instanceof Outcome.Amount second) {
      return amount(operation.applyAsDouble(first.value(), second.value()));
    }
    return worse(left, right);
  }

  private Outcome changed(Outcome operand, DoubleUnaryOperator operation) {
    return operand instanceof Outcome.Amount amount
        ? amount(operation.applyAsDouble(amount.value()))
        : operand;
  }

  private Outcome amount(double value) {
    return Double.isNaN(value)
        ? new Outcome.Refused(cell, "divides by zero or leaves the range of numbers")
        : new Outcome.Amount(value);
  }

  /**
   * The reason to carry on: something wrong before something missing before something that does not
   * arise.
   */
  static Outcome worse(Outcome left, Outcome right) {
    if (left instanceof Outcome.Refused || right instanceof Outcome.Refused) {
      return left instanceof Outcome.Refused ? left : right;
    }
    if (left instanceof Outcome.Missing first && right instanceof Outcome.Missing second) {
      Set<Outcome.CellName> needs = new LinkedHashSet<>(first.needs());
      needs.addAll(second.needs());
      return new Outcome.Missing(List.copyOf(needs));
    }
    if (left instanceof Outcome.Missing || right instanceof Outcome.Missing) {
      return left instanceof Outcome.Missing ? left : right;
    }
    return left instanceof Outcome.Amount ? right : left;
  }

  private String printed(Reference reference, Outcome outcome) {
    if (outcome instanceof Outcome.Words words) {
      return words.text();
    }
    return outcome instanceof Outcome.Amount amount
        ? row.shown(reference, amount.value())
        : reference.name();
  }

  @Override
  public Part constant(Formula.Constant constant) {
    constants.add(constant.value());
    return new Part(new Outcome.Amount(constant.value()), PrintedText.withUnit(constant), true);
  }

  /** A constant is written as a number of the column whose result it is or it is held against. */
  private Text as(Reference column, Part part) {
    return part.constant() && part.outcome() instanceof Outcome.Amount amount
        ? Text.number(() -> row.shown(column, amount.value()))
        : part.text();
  }

  @Override
  public Part cell(Formula.Cell node) {
    Outcome outcome = row.outcome(node.reference());
    return new Part(outcome, Text.number(() -> printed(node.reference(), outcome)));
  }

  @Override
  public Part arithmetic(Formula.Arithmetic sum) {
    Part left = sum.left().accept(this);
    Part right = sum.right().accept(this);
    Operator operator = sum.operator();
    if (operator.rank() == 2 && one(right)) {
      return new Part(joined(left.outcome(), right.outcome(), operator::of), left.text());
    }
    if (operator == Operator.TIMES && one(left)) {
      return new Part(joined(left.outcome(), right.outcome(), operator::of), right.text());
    }
    return new Part(
        joined(left.outcome(), right.outcome(), operator::of),
        Text.joined(left.text(), " " + operator.printed() + " ", right.text(), operator.rank()));
  }

  /** Says whether a part only gives a number its unit, which the numbers do not show. */
  private static boolean one(Part part) {
    return part.constant() && part.outcome().number() == 1;
  }

  @Override
  public Part extreme(Formula.Extreme extreme) {
    Part left = extreme.left().accept(this);
    Part right = extreme.right().accept(this);
    boolean largest = extreme.largest();
    Outcome outcome =
        joined(left.outcome(), right.outcome(), largest ? Numbers::larger : Numbers::smaller);
    return new Part(outcome, Text.extreme(largest, left.text(), right.text()));
  }

  @Override
  public Part rounding(Formula.Rounding rounding) {
    Part operand = rounding.operand().accept(this);
    return new Part(
        changed(operand.outcome(), rounding.way()::of),
        new Text(
            () ->
                "%s%s, %s"
                    .formatted(
                        operand.text().onLeft(1),
                        before(operand, rounding.way()),
                        rounding.way().words()),
            0));
  }

  /** What is rounded, with as many decimals as it takes to see where it goes. */
  private static String before(Part operand, RoundingWay way) {
    if (!(operand.outcome() instanceof Outcome.Amount amount)) {
      return "";
    }
    double value = amount.value();
    int decimals = 2;
    while (decimals < MOST_DECIMALS && way.of(shortened(value, decimals)) != way.of(value)) {
      decimals++;
    }
    return operand.text().rank() < Text.CLOSED || decimals > 2
        ? " = " + QuantityText.readable(value, decimals)
        : "";
  }

  private static double shortened(double value, int decimals) {
    return Double.parseDouble(QuantityText.fixed(value, decimals));
  }

  @Override
  public Part power(Formula.Power power) {
    Part base = power.base().accept(this);
    Part exponent = power.exponent().accept(this);
    return new Part(
        joined(base.outcome(), exponent.outcome(), Numbers::power),
        Text.power(base.text(), exponent.text()));
  }

  @Override
  public Part function(Formula.Function function) {
    Part operand = function.operand().accept(this);
    return new Part(
        changed(operand.outcome(), function.kind()::of),
        Text.closed(() -> function.kind().words() + "(" + operand.text().words() + ")"));
  }

  @Override
  public Part measure(Formula.Measure measure) {
    return measure.operand().accept(this);
  }

  @Override
  public Part choose(Formula.Choose choose) {
    Held held = choose.condition().accept(this);
    notes.add(held.text());
    if (!held.known()) {
      return new Part(stillNeeded(held.outcome(), choose), Text.closed("not known"));
    }
    return (held.holds() ? choose.then() : choose.otherwise()).accept(this);
  }

  /**
   * While a condition lacks its inputs, either branch may be taken: what both of them lack is told
   * at once, so that nobody is asked twice.
   */
  private Outcome stillNeeded(Outcome reason, Formula.Choose choose) {
    if (!(reason instanceof Outcome.Missing)) {
      return reason;
    }
    Outcome all = reason;
    int told = notes.size();
    for (Formula branch : List.of(choose.then(), choose.otherwise())) {
      Outcome outcome = branch.accept(this).outcome();
      all = outcome instanceof Outcome.Missing ? worse(all, outcome) : all;
    }
    notes.subList(told, notes.size()).clear();
    return all;
  }

  @Override
  public Part nth(Formula.Nth nth) {
    Part position = nth.position().accept(this);
    if (!(position.outcome() instanceof Outcome.Amount amount)) {
      return position;
    }
    if (!(amount.value() >= 1 && amount.value() < nth.options().size() + 1)) {
      String none = "there are %s to choose from, not %s";
      return new Part(
          new Outcome.Refused(cell, none.formatted(nth.options().size(), position.text().words())),
          position.text());
    }
    return nth.options().get((int) amount.value() - 1).accept(this);
  }

  @Override
  public Part nothing(Formula.Nothing nothing) {
    Outcome outcome =
        nothing.fault()
            ? new Outcome.Refused(cell, nothing.because())
            : new Outcome.NotApplicable(nothing.shown(), nothing.because());
    return new Part(outcome, Text.closed(nothing.shown()));
  }

  private Part found(Reference word, ReferenceTable.Numbers column) {
    if (!(row.outcome(word) instanceof Outcome.Words words)) {
      return new Part(row.outcome(word), Text.closed(word.name()));
    }
    KnownRow.LookedUp found = row.lookedUp(words.text(), column);
    notes.add(
        () ->
            "Table %s, row %s: %s %s%s"
                .formatted(
                    column.table().name(),
                    words.text(),
                    column.name(),
                    found.shown().get(),
                    found.published().get()));
    sources.add(() -> origin(words.text(), column, found));
    return new Part(found.outcome(), Text.number(found.shown()));
  }

  @Override
  public Part lookup(Formula.Lookup lookup) {
    return found(lookup.word(), lookup.column());
  }

  @Override
  public Part lookupAcross(Formula.LookupAcross lookup) {
    Part position = lookup.position().accept(this);
    double at = position.outcome().number();
    if (!(at >= 1 && at < lookup.columns().size() + 1)) {
      Outcome outcome =
          position.outcome() instanceof Outcome.Amount
              ? new Outcome.Refused(cell, "there is no column " + position.text().words())
              : position.outcome();
      return new Part(outcome, Text.closed(lookup.word().name()));
    }
    return found(lookup.word(), lookup.columns().get((int) at - 1));
  }

  @Override
  public Part lookupCount(Formula.LookupCount lookup) {
    Part limit = lookup.limit().accept(this);
    if (!(limit.outcome() instanceof Outcome.Amount most)) {
      return limit;
    }
    if (!(row.outcome(lookup.word()) instanceof Outcome.Words word)) {
      return new Part(row.outcome(lookup.word()), Text.closed(lookup.word().name()));
    }
    double below = 0;
    double before = Double.NaN;
    boolean enough = false;
    for (ReferenceTable.Numbers column : lookup.columns()) {
      KnownRow.LookedUp found = row.lookedUp(word.text(), column);
      if (!(found.outcome() instanceof Outcome.Amount amount)) {
        return new Part(found.outcome(), Text.closed(lookup.word().name()));
      }
      boolean less = amount.value() < most.value();
      if (Double.isNaN(before)) {
        notes.add(() -> tries(word.text(), column, limit));
        sources.add(() -> origin(word.text(), column, found));
      }
      if (!enough && amount.value() != before) {
        notes.add(() -> tried(column, found, less));
      }
      enough |= !less;
      before = amount.value();
      below += less ? 1 : 0;
    }
    Outcome outcome = new Outcome.Amount(below);
    return new Part(outcome, counted(outcome, () -> ""));
  }

  private static Text total(
      Reference column, Outcome outcome, KnownRow row, Supplier<String> words) {
    return Text.number(
        () ->
            outcome instanceof Outcome.Amount amount
                ? row.shown(column, amount.value())
                : words.get());
  }

  private static Text counted(Outcome outcome, Supplier<String> words) {
    return Text.number(
        () ->
            outcome instanceof Outcome.Amount amount
                ? QuantityText.exact(amount.value())
                : words.get());
  }

  @Override
  public Part aggregate(Formula.Aggregate aggregate) {
    Outcome outcome = row.gathered(aggregate);
    Supplier<String> words =
        () -> aggregate.aggregation().words() + " " + aggregate.column().name();
    return new Part(
        outcome,
        aggregate.aggregation().keepsUnit()
            ? total(aggregate.column(), outcome, row, words)
            : counted(outcome, words));
  }

  @Override
  public Part where(Formula.Where where) {
    Matching matching = where.matching();
    Outcome held = new Outcome.Amount(0);
    Outcome than = held;
    for (Matching.Pair pair : matching.pairs()) {
      Outcome key = row.outcome(pair.key());
      held = key instanceof Outcome.Words ? held : worse(held, key);
    }
    if (matching.limit().isPresent()) {
      than = matching.limit().get().than().accept(this).outcome();
      held = worse(held, than);
    }
    Outcome outcome = held instanceof Outcome.Amount ? row.matched(where, than.number()) : held;
    Supplier<String> words = () -> PrintedText.of(where);
    return new Part(
        outcome,
        where.kind().keepsUnit()
            ? total(where.column(), outcome, row, words)
            : counted(outcome, words));
  }

  @Override
  public Part rowLookup(Formula.RowLookup lookup) {
    Outcome word = row.outcome(lookup.word());
    Outcome outcome = word instanceof Outcome.Words ? row.found(lookup) : word;
    return new Part(outcome, Text.number(() -> printed(lookup.column(), outcome)));
  }

  @Override
  public Part pick(Formula.Pick pick) {
    Part position = pick.position().accept(this);
    if (!(position.outcome() instanceof Outcome.Amount amount)) {
      return position;
    }
    if (!(amount.value() >= 1 && amount.value() < row.rows(pick.column()) + 1)) {
      Outcome none = new Outcome.Refused(cell, "there is no row " + position.text().words());
      return new Part(none, Text.closed(pick.column().name()));
    }
    Outcome outcome = row.picked(pick.column(), (int) amount.value());
    return new Part(outcome, Text.number(() -> printed(pick.column(), outcome)));
  }

  /** The head of a table of tries. */
  private static String tries(String word, ReferenceTable.Numbers column, Part limit) {
    return "Tried in table %s, row %s, against %s:"
        .formatted(column.table().name(), word, limit.text().words());
  }

  /** A line of a table of tries: they go from the smallest on to the first that is not below. */
  private static String tried(
      ReferenceTable.Numbers column, KnownRow.LookedUp found, boolean less) {
    return "  %s: %s, %s"
        .formatted(column.name(), found.shown().get(), less ? "too small" : "will do");
  }

  private static String origin(
      String word, ReferenceTable.Numbers column, KnownRow.LookedUp found) {
    return "Table %s, row %s: %s".formatted(column.table().name(), word, found.origin().get());
  }

  @Override
  public Held comparison(Condition.Comparison comparison) {
    Part left = comparison.left().accept(this);
    Part right = comparison.right().accept(this);
    Comparator comparator = comparison.comparator();
    Outcome outcome =
        joined(
            left.outcome(),
            right.outcome(),
            (first, second) -> comparator.holds(first, second) ? 1 : 0);
    Comparator said =
        outcome instanceof Outcome.Amount amount && amount.value() == 0
            ? comparator.opposite()
            : comparator;
    return new Held(
        outcome,
        () ->
            side(comparison.left(), left, comparison.right())
                + " "
                + said.printed()
                + " "
                + side(comparison.right(), right, comparison.left()));
  }

  /** A number is said with the name of its cell, a constant as what it is held against. */
  private String side(Formula side, Part part, Formula other) {
    if (side instanceof Formula.Cell cell && part.outcome() instanceof Outcome.Amount) {
      return cell.reference().name() + " " + part.text().words();
    }
    Text text = other instanceof Formula.Cell cell ? as(cell.reference(), part) : part.text();
    return text.onLeft(1);
  }

  @Override
  public Held wordIs(Condition.WordIs wordIs) {
    Outcome outcome = row.outcome(wordIs.word());
    if (!(outcome instanceof Outcome.Words words)) {
      return new Held(outcome, () -> wordIs.word().name());
    }
    boolean found = wordIs.words().stream().anyMatch(word -> word.equalsIgnoreCase(words.text()));
    return new Held(
        new Outcome.Amount(found ? 1 : 0), () -> wordIs.word().name() + " is " + words.text());
  }

  @Override
  public Held given(Condition.Given given) {
    String name = given.cell().name();
    if (!row.given(given.cell())) {
      return new Held(new Outcome.Amount(0), () -> name + " is not given");
    }
    Outcome outcome = row.outcome(given.cell());
    boolean good = outcome instanceof Outcome.Amount || outcome instanceof Outcome.Words;
    return new Held(good ? new Outcome.Amount(1) : outcome, () -> name + " is given");
  }

  @Override
  public Held joined(Condition.Joined joined) {
    Held left = joined.left().accept(this);
    Held right = joined.right().accept(this);
    Outcome outcome =
        joined(left.outcome(), right.outcome(), joined.both() ? Numbers::smaller : Numbers::larger);
    Supplier<String> asked =
        () ->
            within(joined, joined.left(), left)
                + (joined.both() ? " and " : " or ")
                + within(joined, joined.right(), right);
    return new Held(
        outcome, outcome instanceof Outcome.Amount ? () -> deciding(outcome, left, right) : asked);
  }

  /** Of two conditions those that are as the whole is, which is why it is so. */
  private static String deciding(Outcome whole, Held left, Held right) {
    return Stream.of(left, right)
        .filter(each -> each.outcome().number() == whole.number())
        .map(each -> each.text().get())
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private static String within(Condition.Joined whole, Condition part, Held held) {
    String text = held.text().get();
    return PrintedText.mixed(whole, part) ? "(" + text + ")" : text;
  }

  @Override
  public Held not(Condition.Not not) {
    Held held = not.condition().accept(this);
    return held.known()
        ? new Held(changed(held.outcome(), value -> 1 - value), held.text())
        : new Held(held.outcome(), () -> "not (" + held.text().get() + ")");
  }
}
