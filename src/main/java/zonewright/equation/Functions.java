package zonewright.equation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.formula.Aggregation;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.sheet.Column;
import zonewright.sheet.Nearest;
import zonewright.units.Dimension;

/** The functions an equation can use, by their names in the open formula standard. */
final class Functions {
  private static final int MANY = 60;
  private static final int OFFERS = 3;

  /** A function: how many parts it takes, how it is written, and what it gives. */
  enum Known {
    IF(3, 3, "IF(condition; then; otherwise)", "one of two, by a condition"),
    IFS(
        4,
        MANY,
        "IFS(condition; then; condition; then; TRUE; otherwise)",
        "the first whose condition holds"),
    AND(1, MANY, "AND(condition; condition)", "a condition: all hold"),
    OR(1, MANY, "OR(condition; condition)", "a condition: at least one holds"),
    NOT(1, 1, "NOT(condition)", "a condition: the other does not hold"),
    ISBLANK(1, 1, "ISBLANK(column)", "a condition: nothing was typed there"),
    MIN(
        1,
        MANY,
        "MIN(number; number) or MIN(column)",
        "the smallest; of a column that of all rows"),
    MAX(1, MANY, "MAX(number; number) or MAX(column)", "the largest; of a column that of all rows"),
    SUM(1, MANY, "SUM(column) or SUM(number; number)", "the sum; of a column that of all rows"),
    AVERAGE(
        1,
        MANY,
        "AVERAGE(column) or AVERAGE(number; number)",
        "the mean; of a column that of all rows"),
    COUNT(1, 1, "COUNT(column)", "how many rows have a number"),
    COUNTIF(
        2,
        2,
        "COUNTIF(column; \">12 gpm\") or COUNTIF(column of words; column of this row)",
        "how many rows keep to a limit, or have the word of this row"),
    SUMIF(
        3,
        3,
        "SUMIF(column; \">12 gpm\"; column to add), or a column of this row in place of the limit",
        "the sum over such rows"),
    ROUND(1, 2, "ROUND(number; decimals) or ROUND(amount; 1 min)", "the nearest"),
    ROUNDUP(1, 2, "ROUNDUP(number; decimals) or ROUNDUP(amount; 1 min)", "away from 0"),
    ROUNDDOWN(1, 2, "ROUNDDOWN(number; decimals) or ROUNDDOWN(amount; 1 min)", "towards 0"),
    CEILING(1, 2, "CEILING(amount; 5 min)", "up to the next whole multiple"),
    FLOOR(1, 2, "FLOOR(amount; 5 min)", "down to the next whole multiple"),
    INT(1, 1, "INT(number)", "down to a whole number"),
    ABS(1, 1, "ABS(amount)", "the amount without its sign"),
    SQRT(1, 1, "SQRT(number)", "the square root"),
    EXP(1, 1, "EXP(number)", "e to a power"),
    LN(1, 1, "LN(number)", "the natural logarithm"),
    SIN(1, 1, "SIN(angle)", "the sine; a plain number counts as radians"),
    COS(1, 1, "COS(angle)", "the cosine"),
    TAN(1, 1, "TAN(angle)", "the tangent"),
    ACOS(1, 1, "ACOS(number)", "the angle whose cosine it is, in radians"),
    POWER(2, 2, "POWER(number; exponent)", "a power, as ^"),
    PI(0, 0, "PI()", "3.14159 …");

    private final int least;
    private final int most;
    private final String form;
    private final String gives;

    Known(int least, int most, String form, String gives) {
      this.least = least;
      this.most = most;
      this.form = form;
      this.gives = gives;
    }

    String form() {
      return form;
    }

    String gives() {
      return gives;
    }
  }

  private final KnownColumns columns;
  private final Combining combining;
  private final RowsOfColumn rows;
  private final Roundings roundings;

  /**
   * Prepares.
   *
   * @param names takes where limits in quotation marks name columns
   */
  Functions(KnownColumns columns, Combining combining, List<EquationReading.Name> names) {
    this.columns = columns;
    this.combining = combining;
    this.rows = new RowsOfColumn(columns, names, combining.words());
    this.roundings = new Roundings(new Sign(columns::column), combining);
  }

  static Optional<Known> named(String word) {
    String plain = word.toUpperCase(Locale.ROOT);
    return Arrays.stream(Known.values()).filter(each -> each.name().equals(plain)).findFirst();
  }

  /** Returns what a word alone stands for, where it is none of a column. */
  static Optional<Part> constant(String word, int from, int to) {
    return switch (word.toUpperCase(Locale.ROOT)) {
      case "TRUE" -> Optional.of(new Part.Certain(true, from, to));
      case "FALSE" -> Optional.of(new Part.Certain(false, from, to));
      case "PI" -> Optional.of(Part.Amount.of(Formula.number(Math.PI), Dimension.NONE, from, to));
      default -> Optional.empty();
    };
  }

  Known known(String name, int from, int to) throws Misread {
    Optional<Known> known = named(name);
    if (known.isPresent()) {
      return known.get();
    }
    List<String> names = Arrays.stream(Known.values()).map(Known::name).toList();
    List<String> offers = Nearest.to(name.toUpperCase(Locale.ROOT), names, OFFERS);
    throw new Misread(
        from,
        to,
        "There is no function “%s” here. Did you mean %s?"
            .formatted(name, String.join(", ", offers)),
        offers);
  }

  /** Returns what a function gives. */
  Part call(Known function, List<Part> parts, int from, int to) throws Misread {
    if (parts.size() < function.least || parts.size() > function.most) {
      throw new Misread(
          from, to, "%s is written %s.".formatted(function.name(), function.form()), List.of());
    }
    return switch (function) {
      case AND, OR, NOT, ISBLANK -> new Part.Truth(condition(function, parts), from, to);
      case IF ->
          combining.choice(Combining.condition(parts.get(0)), parts.get(1), parts.get(2), from, to);
      case IFS -> cases(parts, from, to);
      case MIN, MAX, SUM, AVERAGE ->
          parts.size() == 1 && rows.whole(parts.get(0))
              ? rows.all(function, (Part.Named) parts.get(0)).at(from, to)
              : ofThisRow(function, parts).at(from, to);
      case COUNT -> rows.count(parts.get(0)).at(from, to);
      case COUNTIF -> rows.countWhere(parts.get(0), parts.get(1)).at(from, to);
      case SUMIF -> rows.sumWhere(parts.get(0), parts.get(1), parts.get(2)).at(from, to);
      case ROUND, ROUNDUP, ROUNDDOWN, CEILING, FLOOR, INT ->
          roundings.rounded(function, combining.amount(parts.get(0)), step(parts)).at(from, to);
      case ABS -> kept(combining.amount(parts.get(0)), from, to);
      case SQRT -> plain(FunctionKind.SQUARE_ROOT, parts.get(0), from, to);
      case EXP -> plain(FunctionKind.EXPONENTIAL, parts.get(0), from, to);
      case LN -> plain(FunctionKind.NATURAL_LOGARITHM, parts.get(0), from, to);
      case SIN -> plain(FunctionKind.SINE, parts.get(0), from, to);
      case COS -> plain(FunctionKind.COSINE, parts.get(0), from, to);
      case TAN -> plain(FunctionKind.TANGENT, parts.get(0), from, to);
      case ACOS -> plain(FunctionKind.ARC_COSINE, parts.get(0), from, to);
      case POWER -> combining.power(parts.get(0), parts.get(1)).at(from, to);
      case PI -> Part.Amount.of(Formula.number(Math.PI), Dimension.NONE, from, to);
    };
  }

  private Optional<Part.Amount> step(List<Part> parts) throws Misread {
    return parts.size() < 2 ? Optional.empty() : Optional.of(combining.amount(parts.get(1)));
  }

  private static Part.Amount kept(Part.Amount amount, int from, int to) {
    return Part.Amount.of(
        amount.formula().apply(FunctionKind.ABSOLUTE), amount.dimension(), from, to);
  }

  private Part.Amount plain(FunctionKind kind, Part part, int from, int to) throws Misread {
    Part.Amount amount = combining.amount(part);
    if (!amount.dimension().equals(Dimension.NONE)) {
      throw new Misread(
          part,
          "%s takes a plain number, and this is %s: divide it by one of its units, or say in which unit it counts."
              .formatted(kind.spreadsheet(), Quantities.words(amount)));
    }
    return Part.Amount.of(amount.formula().apply(kind), Dimension.NONE, from, to);
  }

  private Condition condition(Known function, List<Part> parts) throws Misread {
    if (function == Known.ISBLANK) {
      return blank(parts.get(0));
    }
    Condition condition = Combining.condition(parts.get(0));
    if (function == Known.NOT) {
      return condition instanceof Condition.Not not ? not.condition() : condition.negated();
    }
    for (Part part : parts.subList(1, parts.size())) {
      condition = Combining.joined(function == Known.AND, condition, Combining.condition(part));
    }
    return condition;
  }

  private Condition blank(Part part) throws Misread {
    if (!(part instanceof Part.Named named)) {
      throw new Misread(part, "ISBLANK asks whether something was typed into a column: name one.");
    }
    Column column = named.column();
    if (!column.takesEntries() || !columns.reaches(columns.tableOf(column))) {
      throw new Misread(
          part,
          "“%s” is no cell of this row that is typed into, so it is never blank."
              .formatted(column.name()));
    }
    return column.given().negated();
  }

  /** Cases one after the other; where none holds there is no number. */
  private Part.Amount cases(List<Part> parts, int from, int to) throws Misread {
    if (parts.size() % 2 != 0) {
      throw new Misread(from, to, "IFS is written %s.".formatted(Known.IFS.form()), List.of());
    }
    int last = parts.size() - 2;
    boolean otherwise = parts.get(last) instanceof Part.Certain certain && certain.so();
    Part result = otherwise ? parts.get(last + 1) : new Part.Quote("none of these", from, to);
    for (int i = otherwise ? last - 2 : last; i >= 0; i -= 2) {
      Condition condition = Combining.condition(parts.get(i));
      result = combining.choice(condition, parts.get(i + 1), result, from, to);
    }
    return combining.outcome(result);
  }

  private Part.Amount ofThisRow(Known function, List<Part> parts) throws Misread {
    Part.Amount first = combining.amount(parts.get(0));
    Formula result = first.formula();
    Part.Amount whole = first;
    for (Part part : parts.subList(1, parts.size())) {
      Combining.Pair pair = combining.alike(whole, combining.amount(part), "put together");
      Formula left = pair.left().formula();
      Formula right = pair.right().formula();
      result =
          switch (function) {
            case MIN -> Formula.smaller(left, right);
            case MAX -> Formula.larger(left, right);
            default -> left.plus(right);
          };
      whole = Part.Amount.of(result, pair.dimension(), first.from(), part.to());
    }
    boolean added = function == Known.SUM || function == Known.AVERAGE;
    if (added && whole.dimension().temperature() != 0) {
      throw new Misread(
          whole, "Say in which degrees a temperature counts here, as in (… in °C) or (… in °F).");
    }
    Formula of = function == Known.AVERAGE ? whole.formula().over(parts.size()) : whole.formula();
    return Part.Amount.of(of, whole.dimension(), first.from(), whole.to());
  }

  /** What a whole column comes to, by its spreadsheet function. */
  static Aggregation aggregation(Known function) {
    return switch (function) {
      case MIN -> Aggregation.SMALLEST;
      case MAX -> Aggregation.LARGEST;
      default -> Aggregation.SUM;
    };
  }
}
