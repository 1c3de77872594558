package zonewright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import zonewright.formula.Condition.ConditionVisitor;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;

/**
 * A formula of plain numbers as spreadsheet text, without the equals sign: the equation and nothing
 * else. What has no number is the error {@code #N/A}, which runs through a spreadsheet by itself as
 * not-a-number does through the engine.
 */
public final class SpreadsheetText implements FormulaVisitor<Text>, ConditionVisitor<String> {
  /** A name of the workbook for {@link Numbers#WHOLE_ENOUGH}. */
  public static final String WHOLE_ENOUGH = "Whole_enough";

  /** A name of the workbook for {@link Numbers#HALF_ENOUGH}. */
  public static final String HALF_ENOUGH = "Half_enough";

  /** A name of the workbook for the part by which two numbers may differ and count as equal. */
  public static final String EQUAL_ENOUGH = "Equal_enough";

  /** So many words are still held against a cell one by one. */
  private static final int FEW_WORDS = 2;

  private static final int POWER = 3;
  private static final double STRAIGHT_ANGLE = 180;

  /** So many neighbouring columns are one range. */
  private static final int FEWEST_IN_A_RANGE = 3;

  /** How a cell of the same row is called in the file: the table, its row, then the heading. */
  private static final Pattern THIS_ROW = Pattern.compile("\\w+\\[\\[#This Row\\],");

  private final SpreadsheetNames names;

  private SpreadsheetText(SpreadsheetNames names) {
    this.names = names;
  }

  /** Returns the text of {@code plain}, as {@link Expressed#in} made it. */
  public static String of(Formula plain, SpreadsheetNames names) {
    return plain.accept(new SpreadsheetText(names)).words();
  }

  /**
   * Returns the text of a condition, as {@link Expressed#in} made it: an error where what it needs
   * is not there.
   */
  public static String of(Condition plain, SpreadsheetNames names) {
    return plain.accept(new SpreadsheetText(names));
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

  /**
   * Returns the row of a list in which the words of a cell stand, as they are written, for a
   * look-up takes some signs for others.
   *
   * @param many whether the list has several rows with words in each, so that they can be held
   *     against the cell: a blank cell is like a blank row, and one row is no list to some programs
   */
  public static String match(String cell, String list, boolean many) {
    return many
        ? "MATCH(TRUE,INDEX(%s=%s,0),0)".formatted(list, cell)
        : "MATCH(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(%s,\"~\",\"~~\"),\"*\",\"~*\"),\"?\",\"~?\"),%s,0)"
            .formatted(cell, list);
  }

  /** Returns a text as it is shown where it stands: cells of the same row by their heading. */
  public static String shown(String text) {
    return THIS_ROW.matcher(text).replaceAll("[@");
  }

  /** Returns how deep the brackets of a text go; those of headings and words do not count. */
  public static int depth(String text) {
    int deepest = 0;
    int depth = 0;
    int headings = 0;
    boolean words = false;
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      if (headings > 0) {
        boolean escaped = letter == '\'';
        i += escaped ? 1 : 0;
        headings += letter == '[' ? 1 : letter == ']' ? -1 : 0;
      } else if (letter == '"') {
        words = !words;
      } else if (!words) {
        headings += letter == '[' ? 1 : 0;
        depth += letter == '(' ? 1 : letter == ')' ? -1 : 0;
        deepest = Math.max(deepest, depth);
      }
    }
    return deepest;
  }

  private Text text(Formula formula) {
    return formula.accept(this);
  }

  private String words(Formula formula) {
    return text(formula).words();
  }

  @Override
  public Text constant(Formula.Constant constant) {
    double value = constant.value();
    if (value == Math.PI) {
      return Text.closed("PI()");
    }
    if (value == Math.PI / 4) {
      return new Text("PI()/4", 2);
    }
    if (value == STRAIGHT_ANGLE / Math.PI) {
      return new Text("180/PI()", 2);
    }
    Optional<String> name = names.constant(value);
    if (name.isPresent()) {
      return Text.closed(name.get());
    }
    String number = number(value);
    return Text.closed(number.startsWith("-") ? "(" + number + ")" : number);
  }

  @Override
  public Text cell(Formula.Cell cell) {
    return Text.closed(names.cell(cell.reference()));
  }

  @Override
  public Text arithmetic(Formula.Arithmetic sum) {
    Operator operator = sum.operator();
    if (operator == Operator.PLUS) {
      List<Formula> all = new ArrayList<>();
      addends(sum, all);
      Optional<String> span = span(all);
      if (span.isPresent()) {
        return Text.closed("SUM(" + span.get() + ")");
      }
    }
    if (operator == Operator.TIMES && sum.left().equals(sum.right())) {
      return power(text(sum.left()), "2");
    }
    boolean factor = operator == Operator.TIMES || operator == Operator.OVER;
    if (factor && isOne(sum.right())) {
      return text(sum.left());
    }
    if (operator == Operator.TIMES && isOne(sum.left())) {
      return text(sum.right());
    }
    return Text.joined(text(sum.left()), operator.typed(), text(sum.right()), operator.rank());
  }

  private static boolean isOne(Formula formula) {
    return formula instanceof Formula.Constant constant && constant.value() == 1;
  }

  private static void addends(Formula formula, List<Formula> all) {
    if (formula instanceof Formula.Arithmetic sum && sum.operator() == Operator.PLUS) {
      addends(sum.left(), all);
      addends(sum.right(), all);
    } else {
      all.add(formula);
    }
  }

  /** The cells of neighbouring columns as one range, where all are such cells. */
  private Optional<String> span(List<Formula> all) {
    boolean cells =
        all.size() >= FEWEST_IN_A_RANGE && all.stream().allMatch(Formula.Cell.class::isInstance);
    return cells
        ? names.across(all.stream().map(cell -> ((Formula.Cell) cell).reference()).toList())
        : Optional.empty();
  }

  @Override
  public Text extreme(Formula.Extreme extreme) {
    List<Formula> all = new ArrayList<>();
    collect(extreme, extreme.largest(), all);
    String words =
        span(all).orElseGet(() -> all.stream().map(this::words).collect(Collectors.joining(",")));
    return Text.closed((extreme.largest() ? "MAX(" : "MIN(") + words + ")");
  }

  private static void collect(Formula formula, boolean largest, List<Formula> all) {
    if (formula instanceof Formula.Extreme extreme && extreme.largest() == largest) {
      collect(extreme.left(), largest, all);
      collect(extreme.right(), largest, all);
    } else {
      all.add(formula);
    }
  }

  @Override
  public Text rounding(Formula.Rounding rounding) {
    String operand = text(rounding.operand()).onLeft(1);
    return Text.closed(
        switch (rounding.way()) {
          case UP -> "ROUNDUP(MAX(0," + operand + "-" + WHOLE_ENOUGH + "),0)";
          case DOWN -> "INT(" + operand + "+" + WHOLE_ENOUGH + ")";
          case NEAREST -> "INT(" + operand + "+0.5+" + HALF_ENOUGH + ")";
        });
  }

  @Override
  public Text power(Formula.Power power) {
    return power(text(power.base()), text(power.exponent()).onLeft(Text.CLOSED));
  }

  /** Powers bind most tightly; one is never the base of another without brackets. */
  private static Text power(Text base, String exponent) {
    return new Text(base.onLeft(Text.CLOSED) + "^" + exponent, POWER);
  }

  @Override
  public Text function(Formula.Function function) {
    return Text.closed(function.kind().spreadsheet() + "(" + words(function.operand()) + ")");
  }

  @Override
  public Text measure(Formula.Measure measure) {
    return text(measure.operand());
  }

  /** Choices one in the other stand side by side, as a list of cases. */
  @Override
  public Text choose(Formula.Choose choose) {
    List<Formula.Choose> cases = new ArrayList<>();
    Formula last = choose;
    while (last instanceof Formula.Choose next) {
      cases.add(next);
      last = next.otherwise();
    }
    if (cases.size() == 1) {
      return Text.closed(
          "IF(%s,%s,%s)".formatted(choose.condition().accept(this), then(choose), words(last)));
    }
    boolean ends = last instanceof Formula.Nothing;
    Optional<Reference> word = oneWord(cases);
    if (word.isPresent()) {
      String each =
          cases.stream()
              .map(
                  one ->
                      quoted(((Condition.WordIs) one.condition()).words().get(0)) + "," + then(one))
              .collect(Collectors.joining(","));
      return Text.closed(
          "_xlfn.SWITCH(%s,%s%s)"
              .formatted(names.cell(word.get()), each, ends ? "" : "," + words(last)));
    }
    String each =
        cases.stream()
            .map(one -> one.condition().accept(this) + "," + then(one))
            .collect(Collectors.joining(","));
    return Text.closed("_xlfn.IFS(%s%s)".formatted(each, ends ? "" : ",TRUE," + words(last)));
  }

  /** The cell whose word alone decides between several cases. */
  private static Optional<Reference> oneWord(List<Formula.Choose> cases) {
    Set<Optional<Reference>> words =
        cases.stream()
            .map(
                each ->
                    each.condition() instanceof Condition.WordIs is && is.words().size() == 1
                        ? Optional.of(is.word())
                        : Optional.<Reference>empty())
            .collect(Collectors.toSet());
    return words.size() == 1 ? words.iterator().next() : Optional.empty();
  }

  private String then(Formula.Choose choose) {
    String then = words(choose.then());
    boolean unasked =
        choose.condition() instanceof Condition.Given given
            && !Dependencies.of(choose.then()).cells().contains(given.cell());
    // What was typed must be good, though nothing that follows asks for it.
    return unasked
        ? "IF(%s<>\"\",%s)"
            .formatted(names.cell(((Condition.Given) choose.condition()).cell()), then)
        : then;
  }

  @Override
  public Text nth(Formula.Nth nth) {
    if (nth.options().stream().allMatch(SpreadsheetText::summed)) {
      List<Reference> columns =
          nth.options().stream().map(option -> ((Formula.Aggregate) option).column()).toList();
      List<String> counted =
          columns.stream().map(names::counted).flatMap(Optional::stream).distinct().toList();
      if (counted.size() == 1) {
        String chosen =
            names
                .neighbours(columns)
                .map(all -> "INDEX(%s,0,%s)".formatted(all, words(nth.position())))
                .orElseGet(() -> chosen(nth, columns.stream().map(names::column)));
        return Text.closed("SUMIFS(%s,%s,1)".formatted(chosen, counted.get(0)));
      }
    }
    Optional<String> span = span(nth.options());
    if (span.isPresent()) {
      return Text.closed("INDEX(%s,%s)".formatted(span.get(), words(nth.position())));
    }
    return Text.closed(chosen(nth, nth.options().stream().map(this::words)));
  }

  private static boolean summed(Formula option) {
    return option instanceof Formula.Aggregate aggregate
        && aggregate.aggregation() == Aggregation.SUM;
  }

  private String chosen(Formula.Nth nth, Stream<String> options) {
    return "CHOOSE(%s,%s)"
        .formatted(words(nth.position()), options.collect(Collectors.joining(",")));
  }

  @Override
  public Text nothing(Formula.Nothing nothing) {
    return Text.closed("NA()");
  }

  @Override
  public Text lookup(Formula.Lookup lookup) {
    return Text.closed(
        "INDEX(%s,%s)"
            .formatted(
                names.published(lookup.column()),
                names.row(lookup.word(), lookup.column().table())));
  }

  @Override
  public Text lookupAcross(Formula.LookupAcross lookup) {
    List<ReferenceTable.Numbers> columns = lookup.columns();
    return Text.closed(
        "INDEX(%s,%s,%s)"
            .formatted(
                names.published(columns.get(0), columns.get(columns.size() - 1)),
                names.row(lookup.word(), columns.get(0).table()),
                words(lookup.position())));
  }

  @Override
  public Text lookupCount(Formula.LookupCount lookup) {
    List<ReferenceTable.Numbers> columns = lookup.columns();
    return Text.closed(
        "SUMPRODUCT(--(INDEX(%s,%s,0)<%s))"
            .formatted(
                names.published(columns.get(0), columns.get(columns.size() - 1)),
                names.row(lookup.word(), columns.get(0).table()),
                text(lookup.limit()).onLeft(1)));
  }

  @Override
  public Text aggregate(Formula.Aggregate aggregate) {
    String column = names.column(aggregate.column());
    Optional<String> counted = names.counted(aggregate.column());
    List<String> criteria = counted.map(each -> List.of(each, "1")).orElse(List.of());
    return Text.closed(
        switch (aggregate.aggregation()) {
          case SUM -> gathered("SUM", column, criteria);
          case LARGEST -> largestOf("MAX", column, criteria);
          case SMALLEST -> largestOf("MIN", column, criteria);
          case COUNT ->
              criteria.isEmpty()
                  ? "COUNT(" + column + ")"
                  : "SUMPRODUCT(--ISNUMBER(%s),--(%s=1))".formatted(column, criteria.get(0));
          case POSITION_OF_LARGEST -> "MATCH(MAX(%s),%s,0)".formatted(column, column);
          case RATE_OF_RETURN -> "IRR(" + column + ")";
        });
  }

  private static String gathered(String function, String column, List<String> criteria) {
    return criteria.isEmpty()
        ? function + "(" + column + ")"
        : function + "IFS(" + column + "," + String.join(",", criteria) + ")";
  }

  /** Where no row counts the function would say 0. */
  private static String largestOf(String function, String column, List<String> criteria) {
    return criteria.isEmpty()
        ? gathered(function, column, criteria)
        : "IF(COUNTIFS(%s)=0,NA(),%s)"
            .formatted(String.join(",", criteria), "_xlfn." + gathered(function, column, criteria));
  }

  @Override
  public Text where(Formula.Where where) {
    Matching matching = where.matching();
    String column = names.column(where.column());
    String text =
        matching.limit().isPresent()
            ? limited(where, column)
            : found(where.kind(), column, criteria(where));
    String keys =
        matching.pairs().stream().map(pair -> key(pair.key())).collect(Collectors.joining("*"));
    // A criterion that is an error would find the rows that have the same error.
    return matching.pairs().stream().anyMatch(pair -> names.listed(pair.key()))
        ? Text.closed("IF(%s,%s)".formatted(keys, text))
        : new Text(text, matching.limit().isPresent() ? 1 : Text.CLOSED);
  }

  private String key(Reference key) {
    return names.listed(key) ? names.row(key) : "1";
  }

  private List<String> criteria(Formula.Where where) {
    List<String> criteria = new ArrayList<>();
    for (Matching.Pair pair : where.matching().pairs()) {
      boolean listed = names.listed(pair.key());
      criteria.add(listed ? names.rows(pair.word()) : names.column(pair.word()));
      criteria.add(listed ? names.row(pair.key()) : names.cell(pair.key()));
    }
    names
        .counted(where.column())
        .ifPresent(
            counted -> {
              criteria.add(counted);
              criteria.add("1");
            });
    return criteria;
  }

  private static String found(WhereKind kind, String column, List<String> criteria) {
    return switch (kind) {
      case COUNT -> "COUNTIFS(" + String.join(",", criteria) + ")";
      case SUM -> gathered("SUM", column, criteria);
      case LARGEST -> largestOf("MAX", column, criteria);
      case SMALLEST -> largestOf("MIN", column, criteria);
    };
  }

  /**
   * Rows that keep to a limit. Where only some rows of a table count, a criterion finds them: it
   * loses the last digits of the limit, so what is as good as equal is given some room; a row that
   * counts and has no number makes the sum of all an error, and so the result. Of counts no digits
   * are lost.
   */
  private String limited(Formula.Where where, String column) {
    Matching.Limit limit = where.matching().limit().orElseThrow();
    String looked = names.column(limit.column());
    Text than = text(limit.than());
    List<String> criteria = criteria(where);
    if (criteria.isEmpty() && limit.column().kind() == QuantityKind.COUNT) {
      String within = "\"%s\"&%s".formatted(limit.comparator().typed(), than.onLeft(1));
      return found(where.kind(), column, List.of(looked, within));
    }
    if (criteria.isEmpty()) {
      return compared(
          where.kind(),
          column,
          "(%s%s%s)".formatted(looked, limit.comparator().typed(), than.onLeft(1)));
    }
    boolean less =
        limit.comparator() == Comparator.BELOW || limit.comparator() == Comparator.AT_LEAST;
    List<String> within =
        new ArrayList<>(
            List.of(
                looked,
                "\"%s\"&%s%s%s*ABS(%s)"
                    .formatted(
                        limit.comparator().typed(),
                        than.onLeft(1),
                        less ? "-" : "+",
                        EQUAL_ENOUGH,
                        than.words())));
    within.addAll(criteria);
    return "%s+0*%s"
        .formatted(found(where.kind(), column, within), gathered("SUM", looked, criteria));
  }

  private static String compared(WhereKind kind, String column, String rows) {
    return switch (kind) {
      case COUNT -> "SUMPRODUCT(--" + rows + ")";
      case SUM -> "SUMPRODUCT(%s*%s)".formatted(rows, column);
      case LARGEST -> "_xlfn.AGGREGATE(14,6,%s/%s,1)".formatted(column, rows);
      case SMALLEST -> "_xlfn.AGGREGATE(15,6,%s/%s,1)".formatted(column, rows);
    };
  }

  @Override
  public Text rowLookup(Formula.RowLookup lookup) {
    return Text.closed(
        "INDEX(%s,%s)"
            .formatted(names.column(lookup.column()), names.row(lookup.word(), lookup.column())));
  }

  @Override
  public Text pick(Formula.Pick pick) {
    return Text.closed(
        "INDEX(%s,%s)".formatted(names.column(pick.column()), words(pick.position())));
  }

  @Override
  public String comparison(Condition.Comparison comparison) {
    return words(comparison.left()) + comparison.comparator().typed() + words(comparison.right());
  }

  @Override
  public String wordIs(Condition.WordIs wordIs) {
    String cell = names.cell(wordIs.word());
    List<String> each = wordIs.words().stream().map(word -> cell + "=" + quoted(word)).toList();
    if (each.size() <= FEW_WORDS) {
      return each.size() == 1 ? each.get(0) : "OR(" + String.join(",", each) + ")";
    }
    String words =
        wordIs.words().stream().map(SpreadsheetText::quoted).collect(Collectors.joining(","));
    return "SUMPRODUCT(--(%s={%s}))>0".formatted(cell, words);
  }

  @Override
  public String given(Condition.Given given) {
    return names.typed(given.cell()) + "<>\"\"";
  }

  @Override
  public String joined(Condition.Joined joined) {
    List<String> all = new ArrayList<>();
    collect(joined, joined.both(), all);
    return (joined.both() ? "AND(" : "OR(") + String.join(",", all) + ")";
  }

  /** All that must be so, or of which one must be so, in one list. */
  private void collect(Condition condition, boolean both, List<String> all) {
    if (condition instanceof Condition.Joined joined && joined.both() == both) {
      collect(joined.left(), both, all);
      collect(joined.right(), both, all);
    } else {
      all.add(part(condition));
    }
  }

  /** A part of a condition: an error where something was typed that is no good. */
  private String part(Condition condition) {
    return condition instanceof Condition.Given given
        ? "IF(%s=\"\",FALSE,%s<>\"\")"
            .formatted(names.typed(given.cell()), names.cell(given.cell()))
        : condition.accept(this);
  }

  @Override
  public String not(Condition.Not not) {
    return "NOT(" + part(not.condition()) + ")";
  }
}
