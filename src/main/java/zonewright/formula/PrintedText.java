package zonewright.formula;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Condition.ConditionReading;
import zonewright.units.QuantityText;

/** A declared formula as a person reads it: names joined by × and ÷, no factors. */
public final class PrintedText implements Reading<Text>, ConditionReading<String> {
  private PrintedText() {}

  /** Returns {@code formula} in names and signs. */
  public static String of(Formula formula) {
    return formula.read(new PrintedText()).words();
  }

  /** Returns {@code condition} in names and signs. */
  public static String of(Condition condition) {
    return condition.read(new PrintedText());
  }

  @Override
  public Text constant(Formula.Constant constant) {
    String symbol = constant.unit().symbol();
    String number = QuantityText.exact(constant.value());
    return Text.closed(symbol.isEmpty() ? number : number + " " + symbol);
  }

  @Override
  public Text cell(Formula.Cell cell) {
    return Text.closed(cell.reference().name());
  }

  @Override
  public Text arithmetic(Formula.Arithmetic sum) {
    String sign = " " + sum.operator().printed() + " ";
    return Text.joined(sum.left().read(this), sign, sum.right().read(this), sum.operator().rank());
  }

  @Override
  public Text extreme(Formula.Extreme extreme) {
    return Text.closed(
        "the %s of %s and %s"
            .formatted(
                extreme.largest() ? "larger" : "smaller",
                extreme.left().read(this).words(),
                extreme.right().read(this).words()));
  }

  @Override
  public Text rounding(Formula.Rounding rounding) {
    String unit = rounding.unit().symbol();
    return new Text(
        "%s, %s to %s"
            .formatted(
                rounding.operand().read(this).words(),
                rounding.way().words(),
                unit.isEmpty() ? "a whole number" : "a whole number of " + unit),
        0);
  }

  @Override
  public Text power(Formula.Power power) {
    return Text.closed(
        power.base().read(this).onLeft(Text.CLOSED)
            + " ^ "
            + power.exponent().read(this).onRight(3));
  }

  @Override
  public Text function(Formula.Function function) {
    return Text.closed(function.kind().words() + "(" + function.operand().read(this).words() + ")");
  }

  @Override
  public Text measure(Formula.Measure measure) {
    return Text.closed(measure.operand().read(this).onLeft(3) + " in " + measure.unit().symbol());
  }

  @Override
  public Text choose(Formula.Choose choose) {
    return new Text(
        "if %s: %s; otherwise: %s"
            .formatted(
                choose.condition().read(this),
                choose.then().read(this).words(),
                choose.otherwise().read(this).words()),
        0);
  }

  @Override
  public Text nth(Formula.Nth nth) {
    List<String> options = nth.options().stream().map(each -> each.read(this).words()).toList();
    int last = options.size() - 1;
    List<String> told =
        last < 3 ? options : List.of(options.get(0), options.get(1), "…", options.get(last));
    return new Text(
        "by %s: %s".formatted(nth.position().read(this).words(), String.join("; ", told)), 0);
  }

  @Override
  public Text nothing(Formula.Nothing nothing) {
    return Text.closed("“" + nothing.shown() + "”");
  }

  @Override
  public Text lookup(Formula.Lookup lookup) {
    return Text.closed(
        "%s of the %s (table %s)"
            .formatted(
                lookup.column().name(), lookup.word().name(), lookup.column().table().name()));
  }

  @Override
  public Text lookupAcross(Formula.LookupAcross lookup) {
    return Text.closed(
        "the value of the %s (table %s), column %s"
            .formatted(
                lookup.word().name(),
                lookup.columns().get(0).table().name(),
                lookup.position().read(this).words()));
  }

  @Override
  public Text gather(Formula.Gather gather) {
    return Text.closed(gather.gathering().words() + " " + gather.column().name());
  }

  @Override
  public Text where(Formula.Where where) {
    List<String> so = new ArrayList<>();
    for (Matching.Pair pair : where.matching().pairs()) {
      so.add(pair.word().name() + " is this " + pair.key().name());
    }
    where
        .matching()
        .limit()
        .ifPresent(
            limit ->
                so.add(
                    "%s %s %s"
                        .formatted(
                            limit.column().name(),
                            limit.comparator().printed(),
                            than(limit.than()))));
    String what = where.kind().keepsUnit() ? " " + where.column().name() : "";
    return Text.closed(where.kind().words() + what + " where " + String.join(" and ", so));
  }

  private String than(Formula formula) {
    return formula instanceof Formula.Cell cell
        ? cell.reference().name() + " of this row"
        : formula.read(this).onRight(1);
  }

  @Override
  public Text find(Formula.Find find) {
    return Text.closed(find.column().name() + " of the " + find.word().name());
  }

  @Override
  public Text pick(Formula.Pick pick) {
    String position = pick.position().read(this).words();
    String row = pick.position() instanceof Formula.Gather ? "the " : "row ";
    return Text.closed(pick.column().name() + " in " + row + position);
  }

  @Override
  public String comparison(Condition.Comparison comparison) {
    return comparison.left().read(this).words()
        + " "
        + comparison.comparator().printed()
        + " "
        + comparison.right().read(this).words();
  }

  @Override
  public String wordIs(Condition.WordIs wordIs) {
    return wordIs.word().name() + " is " + String.join(" or ", wordIs.words());
  }

  @Override
  public String given(Condition.Given given) {
    return given.cell().name() + " is given";
  }

  @Override
  public String joined(Condition.Joined joined) {
    return joined.left().read(this)
        + (joined.both() ? " and " : " or ")
        + joined.right().read(this);
  }

  @Override
  public String not(Condition.Not not) {
    return "not (" + not.condition().read(this) + ")";
  }
}
