package zonewright.equation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Operator;
import zonewright.sheet.Column;
import zonewright.sheet.Nearest;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.sheet.WordMatch;
import zonewright.units.Dimension;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Puts parts of an equation together, and refuses those that do not go together. */
final class Combining {
  private static final int MOST_WORDS = 5;
  private static final int HIGHEST_POWER = 6;
  private static final List<String> SAME = List.of("=");
  private static final List<String> OTHER = List.of("<>", "≠");

  /** Of how many letters the equation may consist where what is needed twice is written twice. */
  private static final int LONGEST_WRITTEN_OUT = 5000;

  private final KnownColumns columns;

  /** How often each letter of the equation stands in the formula. */
  private final int[] copies;

  private final List<EquationReading.RowWord> words = new ArrayList<>();

  /**
   * Prepares.
   *
   * @param letters how many the equation has
   */
  Combining(KnownColumns columns, int letters) {
    this.columns = columns;
    this.copies = new int[letters];
    Arrays.fill(copies, 1);
  }

  /** Returns the words met that should be names of rows. */
  List<EquationReading.RowWord> words() {
    return words;
  }

  /**
   * Notes that a part stands in the formula several times, which within each other soon would be
   * more than can be calculated.
   */
  void copied(Part part, int times) throws Misread {
    long all = 0;
    for (int at = 0; at < copies.length; at++) {
      copies[at] *= at >= part.from() && at < part.to() ? times : 1;
      all += copies[at];
    }
    if (all > LONGEST_WRITTEN_OUT) {
      throw new Misread(part, "This is needed too many times over: give it a column of its own.");
    }
  }

  /** Two amounts that can be added or held against each other. */
  record Pair(Part.Amount left, Part.Amount right) {
    Dimension dimension() {
      return left.any() ? right.dimension() : left.dimension();
    }

    boolean any() {
      return left.any() && right.any();
    }
  }

  /** Returns the number a part is: that of a cell within reach where it names a column. */
  Part.Amount amount(Part part) throws Misread {
    if (part instanceof Part.Amount amount && !amount.any()) {
      return amount;
    }
    if (part instanceof Part.Named named) {
      return cell(named);
    }
    if (part instanceof Part.Quote quote) {
      throw new Misread(part, "“%s” are words, where a number is needed.".formatted(quote.words()));
    }
    throw new Misread(
        part,
        part instanceof Part.Amount
            ? "This may give words in place of a number, so it cannot be calculated with further."
            : "This is so or not so, where a number is needed: IF(…; number; other number) makes one of it.");
  }

  private Part.Amount cell(Part.Named named) throws Misread {
    Column column = named.column();
    TableDefinition table = columns.tableOf(column);
    if (column.content() != Column.Content.NUMBER) {
      String compared =
          column.content() == Column.Content.CHOICE
              ? " It can be compared, as %s = \"%s\"."
                  .formatted(columns.written(column), firstWord(column))
              : "";
      throw new Misread(named, "“%s” holds words, no number.%s".formatted(column.name(), compared));
    }
    if (!columns.reaches(table)) {
      String all = "SUM(" + columns.written(column) + ")";
      throw new Misread(
          named.from(),
          named.to(),
          "“%s” has a number for each %s of %s: say what of them, as %s."
              .formatted(column.name(), table.rowWord(), table.title(), all),
          List.of(all));
    }
    return Part.Amount.of(column.asFormula(), column.kind().dimension(), named.from(), named.to());
  }

  private static String firstWord(Column column) {
    return column
        .words()
        .flatMap(WordList::constant)
        .filter(words -> !words.isEmpty())
        .map(words -> words.get(0))
        .orElse("…");
  }

  /** Returns the number or the words in place of one that a way through a choice gives. */
  Part.Amount outcome(Part part) throws Misread {
    if (part instanceof Part.Amount amount) {
      return amount;
    }
    if (part instanceof Part.Quote quote) {
      String because = "The equation of the column says “%s” here".formatted(quote.words());
      return new Part.Amount(
          Formula.doesNotApply(quote.words(), because),
          Dimension.NONE,
          true,
          part.from(),
          part.to());
    }
    return amount(part);
  }

  /** Returns a sum, a difference, a product or a quotient. */
  Part.Amount arithmetic(Operator operator, Part first, Part second) throws Misread {
    Part.Amount left = amount(first);
    Part.Amount right = amount(second);
    noTemperature(left);
    noTemperature(right);
    Dimension dimension;
    if (operator.rank() == 1) {
      Pair pair = alike(left, right, operator == Operator.PLUS ? "added" : "subtracted");
      left = pair.left();
      right = pair.right();
      dimension = pair.dimension();
    } else {
      dimension =
          operator == Operator.TIMES
              ? left.dimension().times(right.dimension())
              : left.dimension().over(right.dimension());
    }
    return Part.Amount.of(
        new Formula.Arithmetic(operator, left.formula(), right.formula()),
        dimension,
        first.from(),
        second.to());
  }

  /** Temperatures count from a zero of their own, so a sum of them depends on the scale. */
  private static void noTemperature(Part.Amount amount) throws Misread {
    if (amount.dimension().temperature() != 0) {
      throw new Misread(
          amount, "Say in which degrees a temperature counts here, as in (… in °C) or (… in °F).");
    }
  }

  /** Returns the two as amounts of one kind; refuses what is unlike. */
  Pair alike(Part.Amount first, Part.Amount second, String verb) throws Misread {
    Part.Amount left = Quantities.fitting(first, second.dimension());
    Part.Amount right = Quantities.fitting(second, left.dimension());
    boolean fit = left.any() || right.any() || left.dimension().equals(right.dimension());
    if (fit) {
      return new Pair(left, right);
    }
    Part.Amount plain = plainNumber(right) ? right : plainNumber(left) ? left : null;
    if (plain != null) {
      Part.Amount other = plain.equals(right) ? left : right;
      Optional<QuantityKind> kind =
          other.formula() instanceof Formula.Cell cell
              ? Optional.of(cell.reference().kind())
              : Quantities.named(other.dimension());
      if (kind.isPresent()) {
        needsUnit(plain, kind.get());
      }
    }
    throw new Misread(
        left.from(),
        right.to(),
        "The left side is %s and the right side %s: they cannot be %s."
            .formatted(Quantities.words(left), Quantities.words(right), verb),
        List.of());
  }

  private static boolean plainNumber(Part.Amount amount) {
    return amount.formula() instanceof Formula.Constant constant
        && constant.unit().equals(Units.ONE);
  }

  /** Refuses a figure without a unit where one of a kind that has units is needed. */
  static void needsUnit(Part.Amount amount, QuantityKind kind) throws Misread {
    if (!plainNumber(amount) || kind.unit(UnitSystem.US).symbol().isEmpty()) {
      return;
    }
    String number = QuantityText.exact(((Formula.Constant) amount.formula()).value());
    List<String> offers = new ArrayList<>();
    for (UnitSystem system : UnitSystem.values()) {
      String offer = number + " " + kind.unit(system).symbol();
      if (!offers.contains(offer)) {
        offers.add(offer);
      }
    }
    throw new Misread(
        amount.from(),
        amount.to(),
        "%s is a plain number, where %s is needed: write its unit, as %s."
            .formatted(number, Quantities.words(kind), String.join(" or ", offers)),
        offers);
  }

  /** Returns a power: of plain numbers any, of an amount with a unit a whole one. */
  Part.Amount power(Part first, Part second) throws Misread {
    Part.Amount base = amount(first);
    Part.Amount exponent = amount(second);
    if (!exponent.dimension().equals(Dimension.NONE)) {
      throw new Misread(
          exponent, "A power is a plain number, not %s.".formatted(Quantities.words(exponent)));
    }
    if (base.dimension().equals(Dimension.NONE)) {
      return Part.Amount.of(
          base.formula().power(exponent.formula()), Dimension.NONE, first.from(), second.to());
    }
    noTemperature(base);
    double times = exponent.formula() instanceof Formula.Constant each ? each.value() : 0;
    if (times != Math.rint(times) || times < 1 || times > HIGHEST_POWER) {
      throw new Misread(
          exponent,
          "The power of %s must be a whole number from 1 to 6.".formatted(Quantities.words(base)));
    }
    copied(base, (int) times);
    Formula product = base.formula();
    Dimension dimension = base.dimension();
    for (int i = 1; i < times; i++) {
      product = product.times(base.formula());
      dimension = dimension.times(base.dimension());
    }
    return Part.Amount.of(product, dimension, first.from(), second.to());
  }

  /** Returns an amount with its sign turned. */
  Part.Amount negative(Part part, int from) throws Misread {
    Part.Amount amount = amount(part);
    noTemperature(amount);
    Formula negative =
        amount.formula() instanceof Formula.Constant constant
            ? Formula.amount(0 - constant.value(), constant.unit())
            : zero(amount.dimension()).minus(amount.formula());
    return Part.Amount.of(negative, amount.dimension(), from, part.to());
  }

  static Formula zero(Dimension dimension) {
    return Formula.amount(0, Quantities.unit(dimension));
  }

  /** Returns one held against the other. */
  Part.Truth comparison(String sign, Part left, Part right) throws Misread {
    boolean words = words(left) || words(right);
    Condition condition =
        words ? sameWord(sign, left, right) : numbers(sign, amount(left), amount(right));
    return new Part.Truth(condition, left.from(), right.to());
  }

  private static boolean words(Part part) {
    return part instanceof Part.Quote
        || (part instanceof Part.Named named && named.column().content() != Column.Content.NUMBER);
  }

  private Condition numbers(String sign, Part.Amount first, Part.Amount second) throws Misread {
    Pair pair = alike(first, second, "compared");
    if (SAME.contains(sign) || OTHER.contains(sign)) {
      copied(first, 2);
      copied(second, 2);
    }
    Formula left = pair.left().formula();
    Formula right = pair.right().formula();
    return switch (sign) {
      case "=" -> left.atMost(right).and(left.atLeast(right));
      case "<>", "≠" -> left.below(right).or(left.above(right));
      default -> new Condition.Comparison(comparator(sign), left, right);
    };
  }

  private Condition sameWord(String sign, Part left, Part right) throws Misread {
    Part.Named named =
        left instanceof Part.Named one ? one : right instanceof Part.Named two ? two : null;
    Part.Quote quote =
        left instanceof Part.Quote one ? one : right instanceof Part.Quote two ? two : null;
    if (named == null || quote == null) {
      throw new Misread(
          left.from(),
          right.to(),
          "Words can only be compared with a word in quotation marks, as in Soil = \"loam\".",
          List.of());
    }
    boolean equal = SAME.contains(sign);
    if (!equal && !OTHER.contains(sign)) {
      throw new Misread(
          left.from(),
          right.to(),
          "Words can be the same (=) or not (<>), nothing else.",
          List.of());
    }
    Column column = named.column();
    if (!columns.reaches(columns.tableOf(column))) {
      throw new Misread(
          named,
          "“%s” has a word for each %s of %s, and none for this row."
              .formatted(
                  column.name(),
                  columns.tableOf(column).rowWord(),
                  columns.tableOf(column).title()));
    }
    Condition is = column.is(word(column, quote));
    return equal ? is : is.negated();
  }

  private String word(Column column, Part.Quote quote) throws Misread {
    Optional<WordList> list = columns.list(column);
    if (list.isEmpty()) {
      throw new Misread(
          quote,
          "“%s” holds any words, not those of a list, so an equation cannot go by them."
              .formatted(column.name()));
    }
    Optional<List<String>> fixed = list.get().constant();
    if (fixed.isEmpty()) {
      if (column.content() == Column.Content.WORDS) {
        throw new Misread(
            quote,
            "“%s” names the rows themselves, which may be blank or called otherwise: compare a column that is chosen from a list."
                .formatted(column.name()));
      }
      // rows come and go; whoever knows which there are asks for these words
      words.add(
          new EquationReading.RowWord(column, quote.words().strip(), quote.from(), quote.to()));
      return quote.words().strip();
    }
    return WordMatch.in(fixed.get(), quote.words())
        .orElseThrow(
            () -> new Misread(never(column, quote.words(), fixed.get(), quote.from(), quote.to())));
  }

  /** Says that a column never holds a word, with those it may hold. */
  static EquationReading.Problem never(
      Column column, String word, List<String> list, int from, int to) {
    List<String> offers =
        Nearest.to(word, list, MOST_WORDS).stream()
            .map(offer -> "\"" + offer.replace("\"", "\"\"") + "\"")
            .toList();
    String instead =
        offers.isEmpty()
            ? "there are no words for it yet"
            : "it may be " + String.join(", ", offers);
    return new EquationReading.Problem(
        from, to, "“%s” is never “%s”; %s.".formatted(column.name(), word, instead), offers);
  }

  /** Returns a part that is so or not so. */
  static Condition condition(Part part) throws Misread {
    if (part instanceof Part.Truth truth) {
      return truth.condition();
    }
    throw new Misread(
        part,
        part instanceof Part.Certain
            ? "A condition asks something of this row; TRUE and FALSE ask nothing."
            : "A condition is needed here: something compared, as Area > 500 ft².");
  }

  /** Returns one of two, by a condition. */
  Part.Amount choice(Condition condition, Part first, Part second, int from, int to)
      throws Misread {
    Pair pair = alike(outcome(first), outcome(second), "the two outcomes of one choice");
    return new Part.Amount(
        Formula.when(condition).then(pair.left().formula()).otherwise(pair.right().formula()),
        pair.dimension(),
        pair.any(),
        from,
        to);
  }

  /** Returns conditions joined by AND or OR; one word or another of a cell is one question. */
  static Condition joined(boolean both, Condition left, Condition right) {
    if (!both
        && left instanceof Condition.WordIs one
        && right instanceof Condition.WordIs two
        && one.word().equals(two.word())) {
      List<String> words = new ArrayList<>(one.words());
      words.addAll(two.words());
      return new Condition.WordIs(one.word(), words);
    }
    return both ? left.and(right) : left.or(right);
  }

  /** Returns the comparator that is typed or printed so. */
  static Comparator comparator(String sign) {
    return Arrays.stream(Comparator.values())
        .filter(each -> each.typed().equals(sign) || each.printed().equals(sign))
        .findFirst()
        .orElseThrow();
  }
}
