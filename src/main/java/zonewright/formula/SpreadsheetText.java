package zonewright.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import zonewright.formula.Condition.ConditionReading;
import zonewright.units.QuantityText;

/**
 * A formula of plain numbers as spreadsheet text, without the equals sign.
 *
 * <p>It never calculates with a blank, a text or a number out of range: what must be there is asked
 * first, and where it is not the cell shows {@code needs ...} in place of a number. A choice asks
 * for what its branch needs only in the branch. What lacks in the middle of a calculation fails the
 * whole, which then says what may be missing in place of an error code.
 */
public final class SpreadsheetText implements Reading<Text>, ConditionReading<String> {
  /** A spreadsheet takes no longer text within a formula; this leaves room for quotes. */
  private static final int LONGEST_WORDS = 240;

  private final SpreadsheetNames names;
  private final SpreadsheetNeeds needs;
  private final Set<Need> established;

  /** Whether something calculates with the result, so that words would not do. */
  private final boolean inside;

  /** What may lack in the middle of a calculation, where words cannot stand. */
  private final Set<String> lackedInside;

  private SpreadsheetText(
      SpreadsheetNames names, Set<Need> established, boolean inside, Set<String> lackedInside) {
    this.names = names;
    this.lackedInside = lackedInside;
    this.needs = new SpreadsheetNeeds(names);
    this.established = established;
    this.inside = inside;
  }

  /** Returns the text of {@code plain}, as {@link Expressed#in} made it. */
  public static String of(Formula plain, SpreadsheetNames names) {
    Set<String> lacked = new LinkedHashSet<>();
    String text = new SpreadsheetText(names, Set.of(), false, lacked).guarded(plain).words();
    return lacked.isEmpty() ? text : "IFERROR(%s,%s)".formatted(text, needing(lacked));
  }

  /**
   * Returns the text of a condition, as {@link Expressed#in} made it: false, or an error, where
   * what it needs is not there.
   */
  public static String of(Condition plain, SpreadsheetNames names) {
    Set<Need> all = plain.read(new SpreadsheetNeeds(names));
    String text = new SpreadsheetText(names, all, true, new LinkedHashSet<>()).text(plain);
    return all.isEmpty() ? text : "AND(%s,%s)".formatted(test(List.copyOf(all)), text);
  }

  /** Returns the text of a part that others calculate with, its needs taken as met. */
  static String inside(Formula part, SpreadsheetNames names) {
    return new SpreadsheetText(
            names, part.read(new SpreadsheetNeeds(names)), true, new LinkedHashSet<>())
        .text(part)
        .onLeft(1);
  }

  /** Returns words as a spreadsheet takes them in a formula. */
  public static String quoted(String words) {
    return "\"" + words.replace("\"", "\"\"") + "\"";
  }

  /** Returns the shortest text that a spreadsheet reads as exactly this number. */
  public static String number(double value) {
    String plain = QuantityText.exact(value);
    return plain.length() <= 21 ? plain : Double.toString(value);
  }

  /** Returns the question whether a cell holds a formula; a newer function, marked as one. */
  public static String isFormula(String cell) {
    return "_xlfn.ISFORMULA(" + cell + ")";
  }

  static String found(Formula.Lookup lookup, SpreadsheetNames names) {
    return "INDEX(%s,%s)"
        .formatted(
            names.published(lookup.column()), match(lookup.word(), lookup.column().table(), names));
  }

  static String found(Formula.LookupAcross lookup, SpreadsheetNames names) {
    List<ReferenceTable.Numbers> columns = lookup.columns();
    return "INDEX(%s,%s,%s)"
        .formatted(
            names.published(columns.get(0), columns.get(columns.size() - 1)),
            match(lookup.word(), columns.get(0).table(), names),
            inside(lookup.position(), names));
  }

  static String found(Formula.Pick pick, SpreadsheetNames names) {
    return "INDEX(%s,%s)".formatted(names.column(pick.column()), inside(pick.position(), names));
  }

  static String found(Formula.Find find, SpreadsheetNames names) {
    return "INDEX(%s,MATCH(%s,%s,0))"
        .formatted(
            names.column(find.column()),
            literally(names.cell(find.word())),
            names.rowNames(find.column()));
  }

  /** Returns the words of a cell as a search takes them that else reads signs in words. */
  public static String literally(String cell) {
    return "SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(%s,\"~\",\"~~\"),\"*\",\"~*\"),\"?\",\"~?\")"
        .formatted(cell);
  }

  private static String match(Reference word, ReferenceTable table, SpreadsheetNames names) {
    return "MATCH(%s,%s,0)".formatted(names.cell(word), names.keys(table));
  }

  private SpreadsheetText knowing(Set<Need> more, boolean within) {
    Set<Need> all = new LinkedHashSet<>(established);
    all.addAll(more);
    return new SpreadsheetText(names, all, within, lackedInside);
  }

  private Text guarded(Formula formula) {
    Set<Need> lacking = new LinkedHashSet<>(formula.read(needs));
    lacking.removeAll(established);
    String text = knowing(lacking, inside).text(formula).words();
    if (lacking.isEmpty()) {
      return text(formula);
    }
    TreeMap<Integer, List<Need>> levels = new TreeMap<>();
    lacking.forEach(
        need -> levels.computeIfAbsent(need.level(), any -> new ArrayList<>()).add(need));
    for (List<Need> level : levels.descendingMap().values()) {
      text = "IF(%s,%s,%s)".formatted(test(level), text, lack(level));
    }
    return Text.closed(text);
  }

  private static String test(List<Need> wanted) {
    List<String> counted =
        wanted.stream().flatMap(need -> need.counted().stream()).distinct().toList();
    List<String> tests = new ArrayList<>();
    if (!counted.isEmpty()) {
      tests.add("COUNT(" + String.join(",", counted) + ")=" + counted.size());
    }
    wanted.stream().flatMap(need -> need.tests().stream()).distinct().forEach(tests::add);
    return tests.size() == 1 ? tests.get(0) : "AND(" + String.join(",", tests) + ")";
  }

  private String lack(List<Need> wanted) {
    List<String> columns = wanted.stream().map(need -> need.named().name()).distinct().toList();
    if (inside) {
      lackedInside.addAll(columns);
      return "NA()";
    }
    return needing(columns);
  }

  private static String needing(Collection<String> columns) {
    String words = "needs " + String.join(", ", columns);
    return quoted(
        words.length() > LONGEST_WORDS ? words.substring(0, LONGEST_WORDS) + " …" : words);
  }

  private Text text(Formula formula) {
    return formula.read(this);
  }

  private Text part(Formula formula) {
    return (inside ? this : knowing(Set.of(), true)).text(formula);
  }

  @Override
  public Text constant(Formula.Constant constant) {
    String number = number(constant.value());
    return Text.closed(number.startsWith("-") ? "(" + number + ")" : number);
  }

  @Override
  public Text cell(Formula.Cell cell) {
    return Text.closed(names.cell(cell.reference()));
  }

  @Override
  public Text arithmetic(Formula.Arithmetic sum) {
    Operator operator = sum.operator();
    return Text.joined(part(sum.left()), operator.typed(), part(sum.right()), operator.rank());
  }

  @Override
  public Text extreme(Formula.Extreme extreme) {
    return Text.closed(
        "%s(%s,%s)"
            .formatted(
                extreme.largest() ? "MAX" : "MIN",
                part(extreme.left()).words(),
                part(extreme.right()).words()));
  }

  @Override
  public Text rounding(Formula.Rounding rounding) {
    String operand = part(rounding.operand()).onLeft(1);
    return Text.closed(
        switch (rounding.way()) {
          case UP -> "ROUNDUP(MAX(0," + operand + "-1E-9),0)";
          case DOWN -> "INT(" + operand + "+1E-9)";
          case NEAREST -> "INT(" + operand + "+0.5+1E-6)";
        });
  }

  @Override
  public Text power(Formula.Power power) {
    return Text.closed(
        "POWER(%s,%s)".formatted(part(power.base()).words(), part(power.exponent()).words()));
  }

  @Override
  public Text function(Formula.Function function) {
    return Text.closed(
        function.kind().spreadsheet() + "(" + part(function.operand()).words() + ")");
  }

  @Override
  public Text measure(Formula.Measure measure) {
    return text(measure.operand());
  }

  @Override
  public Text choose(Formula.Choose choose) {
    Condition condition = choose.condition();
    return Text.closed(
        "IF(%s,%s,%s)"
            .formatted(
                (inside ? this : knowing(Set.of(), true)).text(condition),
                knowing(needs.known(condition, true), inside).guarded(choose.then()).words(),
                knowing(needs.known(condition, false), inside)
                    .guarded(choose.otherwise())
                    .words()));
  }

  private String text(Condition condition) {
    return condition.read(this);
  }

  @Override
  public Text nth(Formula.Nth nth) {
    List<String> options =
        nth.options().stream()
            .map(option -> knowing(Set.of(), inside).guarded(option).words())
            .toList();
    return Text.closed(
        "CHOOSE(%s,%s)".formatted(inside(nth.position(), names), String.join(",", options)));
  }

  @Override
  public Text nothing(Formula.Nothing nothing) {
    return Text.closed(inside ? "NA()" : quoted(nothing.shown()));
  }

  @Override
  public Text lookup(Formula.Lookup lookup) {
    return Text.closed(found(lookup, names));
  }

  @Override
  public Text lookupAcross(Formula.LookupAcross lookup) {
    return Text.closed(found(lookup, names));
  }

  @Override
  public Text gather(Formula.Gather gather) {
    String column = names.column(gather.column());
    return Text.closed(
        switch (gather.gathering()) {
          case SUM -> "SUMIFS(%s,%s,\"<>\")".formatted(column, names.rowNames(gather.column()));
          case LARGEST -> "MAX(" + column + ")";
          case SMALLEST -> "MIN(" + column + ")";
          case POSITION_OF_LARGEST -> "MATCH(MAX(" + column + ")," + column + ",0)";
          case RATE_OF_RETURN -> "IRR(" + column + ")";
        });
  }

  @Override
  public Text where(Formula.Where where) {
    String rows = SpreadsheetRows.matching(where, true, names);
    String column = names.column(where.column());
    String none = inside ? "NA()" : quoted("none");
    return Text.closed(
        switch (where.kind()) {
          case COUNT -> "SUMPRODUCT(%s)".formatted(rows);
          // Of a table of one row some programs take its one cell for a word, not for a list.
          case SUM -> "IF(SUMPRODUCT(%s)=0,0,SUMPRODUCT(%s,%s))".formatted(rows, rows, column);
          case LARGEST ->
              "IF(SUMPRODUCT(%s)=0,%s,_xlfn.AGGREGATE(14,6,%s/(%s),1))"
                  .formatted(rows, none, column, rows);
          case SMALLEST ->
              "IF(SUMPRODUCT(%s)=0,%s,_xlfn.AGGREGATE(15,6,%s/(%s),1))"
                  .formatted(rows, none, column, rows);
        });
  }

  @Override
  public Text find(Formula.Find find) {
    return Text.closed(found(find, names));
  }

  @Override
  public Text pick(Formula.Pick pick) {
    return Text.closed(found(pick, names));
  }

  @Override
  public String comparison(Condition.Comparison comparison) {
    return part(comparison.left()).words()
        + comparison.comparator().typed()
        + part(comparison.right()).words();
  }

  @Override
  public String wordIs(Condition.WordIs wordIs) {
    String cell = names.cell(wordIs.word());
    List<String> each = wordIs.words().stream().map(word -> cell + "=" + quoted(word)).toList();
    return each.size() == 1 ? each.get(0) : "OR(" + String.join(",", each) + ")";
  }

  @Override
  public String given(Condition.Given given) {
    String cell = names.cell(given.cell());
    return names.defaulted(given.cell()) ? "NOT(" + isFormula(cell) + ")" : cell + "<>\"\"";
  }

  @Override
  public String joined(Condition.Joined joined) {
    return (joined.both() ? "AND(" : "OR(")
        + text(joined.left())
        + ","
        + text(joined.right())
        + ")";
  }

  @Override
  public String not(Condition.Not not) {
    return "NOT(" + text(not.condition()) + ")";
  }
}
