package zonewright.equation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.formula.Formula;
import zonewright.formula.Operator;
import zonewright.units.Dimension;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;

/**
 * Reads an equation: comparisons of sums of products of powers of signed parts, as OpenDocument 1.3
 * part 4, 5.5 orders them, signs binding more tightly than powers and each from the left.
 */
public final class EquationReader {
  /** Longer equations are parted into columns. */
  public static final int LONGEST = 1000;

  private static final int DEEPEST = 40;
  private static final List<String> COMPARISONS =
      List.of("<>", "<=", ">=", "≤", "≥", "≠", "<", ">", "=");
  private static final List<String> OVER = List.of("/", "÷", "∕", "⁄");
  private static final List<String> TIMES = List.of("*", "×", "·", "⋅", "∙");
  private static final List<String> MINUS = List.of("-", "−", "–", "‑");

  private final Cursor cursor;
  private final Numerals numerals;
  private final Combining combining;
  private final Functions functions;
  private final NameReader names;
  private int depth;
  private int calls;

  private EquationReader(String typed, KnownColumns columns) {
    this.cursor = new Cursor(typed);
    this.numerals = new Numerals(cursor);
    this.names = new NameReader(cursor, numerals, columns);
    this.combining = new Combining(columns, typed.length());
    this.functions = new Functions(columns, combining, names.met());
  }

  /** Returns the formula of an equation that gives numbers of a kind, or what is wrong with it. */
  public static EquationReading read(String typed, KnownColumns columns, QuantityKind kind) {
    return read(typed, columns, Optional.of(kind));
  }

  /** Returns the formula of an equation whatever it gives, or what is wrong with it. */
  public static EquationReading read(String typed, KnownColumns columns) {
    return read(typed, columns, Optional.empty());
  }

  /** Returns how each function is written, with what it gives, in the order of the help. */
  public static Map<String, String> functions() {
    Map<String, String> forms = new LinkedHashMap<>();
    for (Functions.Known function : Functions.Known.values()) {
      forms.put(function.form(), function.gives());
    }
    return forms;
  }

  private static EquationReading read(
      String typed, KnownColumns columns, Optional<QuantityKind> kind) {
    EquationReader reader = new EquationReader(typed, columns);
    try {
      Part.Amount amount = reader.whole();
      Formula formula = kind.isPresent() ? wanted(amount, kind.get()) : amount.formula();
      // a limit in quotation marks is read once all parts of its function are
      List<EquationReading.Name> names = new ArrayList<>(reader.names.met());
      names.sort(Comparator.comparingInt(EquationReading.Name::from));
      return new EquationReading.Understood(formula, names, reader.combining.words());
    } catch (Misread problem) {
      return problem.problem();
    }
  }

  private static Formula wanted(Part.Amount amount, QuantityKind kind) throws Misread {
    Part.Amount fitting = Quantities.fitting(amount, kind.dimension());
    if (fitting.any() || fitting.dimension().equals(kind.dimension())) {
      return fitting.formula();
    }
    Combining.needsUnit(amount, kind);
    throw new Misread(
        amount,
        "The equation gives %s, and the column holds %s: %s."
            .formatted(
                Quantities.words(amount),
                Quantities.words(kind),
                Quantities.instead(amount.dimension(), kind.dimension())));
  }

  private Part.Amount whole() throws Misread {
    if (cursor.text().length() > LONGEST) {
      throw new Misread(
          LONGEST,
          cursor.text().length(),
          "The equation is longer than 1000 letters: give a part of it a column of its own.",
          List.of());
    }
    cursor.took("=");
    if (cursor.ended()) {
      throw missing("An equation is missing, such as Zone flow / Area.");
    }
    Part part = expression();
    if (!cursor.ended()) {
      throw leftOver();
    }
    Part.Amount amount = combining.outcome(part);
    if (amount.any()) {
      throw new Misread(amount, "The equation gives words only, no number.");
    }
    return amount;
  }

  private Misread missing(String sentence) {
    int at = Math.min(cursor.skip().at(), cursor.text().length());
    return new Misread(at, at, sentence, List.of());
  }

  /** Something stands where a sign or the end should. */
  private Misread leftOver() {
    int at = cursor.at();
    char next = cursor.next();
    String text = cursor.text();
    int end = Math.max(at + 1, NameText.wordsEnd(text, at));
    String sentence =
        switch (next) {
          case ')', ']' -> "This bracket was never opened.";
          case ';', ',' -> "“%s” stands between the parts of a function only.".formatted(next);
          case '"' -> "Before these words a sign is missing, such as =.";
          default ->
              Character.isLetterOrDigit(next) || next == '(' || next == '['
                  ? "Before “%s” a sign is missing, such as * or +."
                      .formatted(text.substring(at, end))
                  : "“%s” means nothing in an equation.".formatted(next);
        };
    return new Misread(at, end, sentence, List.of());
  }

  private Part expression() throws Misread {
    if (++depth > DEEPEST) {
      throw missing("Too many brackets one in the other: give a part of it a column of its own.");
    }
    Part left = sum();
    String sign = cursor.tookOneOf(COMPARISONS);
    if (!sign.isEmpty()) {
      left = combining.comparison(sign, left, sum());
      if (!cursor.tookOneOf(COMPARISONS).isEmpty()) {
        throw missing("Two comparisons at once are written AND(…; …).");
      }
    }
    depth--;
    return left;
  }

  private Part sum() throws Misread {
    Part left = product();
    while (true) {
      if (cursor.took("+")) {
        left = combining.arithmetic(Operator.PLUS, left, product());
      } else if (!cursor.tookOneOf(MINUS).isEmpty()) {
        left = combining.arithmetic(Operator.MINUS, left, product());
      } else {
        return left;
      }
    }
  }

  private Part product() throws Misread {
    Part left = power();
    while (true) {
      if (!cursor.tookOneOf(TIMES).isEmpty()) {
        left = combining.arithmetic(Operator.TIMES, left, power());
      } else if (!cursor.tookOneOf(OVER).isEmpty()) {
        left = combining.arithmetic(Operator.OVER, left, power());
      } else {
        return left;
      }
    }
  }

  private Part power() throws Misread {
    Part left = signed();
    while (cursor.took("^")) {
      left = combining.power(left, signed());
    }
    return left;
  }

  private Part signed() throws Misread {
    int from = cursor.skip().at();
    if (!cursor.tookOneOf(MINUS).isEmpty()) {
      if (++depth > DEEPEST) {
        throw missing("Too many signs one after the other.");
      }
      Part negative = combining.negative(signed(), from);
      depth--;
      return negative;
    }
    if (cursor.took("+")) {
      if (cursor.next() == '+') {
        throw missing("A number is missing between two signs.");
      }
      return combining.amount(signed());
    }
    return measured(primary());
  }

  /** What may follow a part: percent, and the unit it is measured in. */
  private Part measured(Part first) throws Misread {
    Part part = first;
    while (cursor.took("%")) {
      Part.Amount amount = combining.amount(part);
      part =
          Part.Amount.of(amount.formula().over(100), amount.dimension(), part.from(), cursor.at());
    }
    int before = cursor.at();
    if (cursor.tookWord("in")) {
      Optional<Unit> unit = numerals.unit();
      if (unit.isEmpty()) {
        cursor.jump(before);
        return part;
      }
      Part.Amount amount = combining.amount(part);
      if (!unit.get().dimension().equals(amount.dimension())) {
        throw new Misread(
            part.from(),
            cursor.at(),
            "%s is not measured in %s."
                .formatted(Quantities.capital(Quantities.words(amount)), unit.get().symbol()),
            List.of());
      }
      boolean shifted = unit.get().zero().signum() != 0;
      if (shifted && !(amount.formula() instanceof Formula.Cell)) {
        throw new Misread(
            part, "Only the temperature of a column can be measured in degrees, not a result.");
      }
      return Part.Amount.of(
          amount.formula().measuredIn(unit.get()), Dimension.NONE, part.from(), cursor.at());
    }
    return part;
  }

  private Part primary() throws Misread {
    int from = cursor.skip().at();
    if (numerals.next()) {
      return numerals.read(calls > 0);
    }
    return switch (cursor.next()) {
      case 0 -> throw missing("Something is missing at the end.");
      case '(' -> bracket(from);
      case '"', '“', '„' -> quote(from);
      case '[' -> names.next().orElseThrow();
      case 'π' -> {
        cursor.jump(from + 1);
        yield Part.Amount.of(Formula.number(Math.PI), Dimension.NONE, from, from + 1);
      }
      default -> {
        if (!Character.isLetter(cursor.next())) {
          throw new Misread(
              from,
              from + 1,
              "A number, a column or a bracket is missing before “%s”.".formatted(cursor.next()),
              List.of());
        }
        yield word(from);
      }
    };
  }

  private Part bracket(int from) throws Misread {
    cursor.took("(");
    int before = calls;
    calls = 0;
    Part inside = expression();
    calls = before;
    close(from);
    return inside.at(from, cursor.at());
  }

  private void close(int from) throws Misread {
    if (!cursor.took(")")) {
      throw cursor.ended()
          ? new Misread(from, from + 1, "This bracket is never closed.", List.of())
          : leftOver();
    }
  }

  private Part quote(int from) throws Misread {
    String text = cursor.text();
    int end = from + 1;
    boolean printed = text.charAt(from) != '"';
    StringBuilder words = new StringBuilder();
    while (end < text.length()) {
      char letter = text.charAt(end);
      boolean closes = letter == '"' || (printed && (letter == '”' || letter == '“'));
      boolean doubled = closes && text.startsWith("\"\"", end);
      if (closes && !doubled) {
        cursor.jump(end + 1);
        return new Part.Quote(words.toString(), from, end + 1);
      }
      words.append(letter);
      end += doubled ? 2 : 1;
    }
    throw new Misread(
        from, text.length(), "These words have no quotation mark at their end.", List.of());
  }

  /** A function, a column, or a word that stands for a number. */
  private Part word(int from) throws Misread {
    String text = cursor.text();
    int end = from;
    while (end < text.length()
        && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_')) {
      end++;
    }
    String word = text.substring(from, end);
    boolean called = end < text.length() && text.charAt(end) == '(';
    if (called && (Functions.named(word).isPresent() || !names.there(from))) {
      cursor.jump(end + 1);
      return call(word, from);
    }
    Optional<Part> column = names.next();
    if (column.isPresent()) {
      return column.get();
    }
    Part constant = Functions.constant(word, from, end).orElseThrow(() -> names.unknown(from));
    cursor.jump(end);
    return constant;
  }

  private Part call(String name, int from) throws Misread {
    Functions.Known function = functions.known(name, from, cursor.at() - 1);
    List<Part> arguments = new ArrayList<>();
    calls++;
    if (!cursor.took(")")) {
      do {
        if (cursor.next() == ';' || cursor.next() == ',' || cursor.next() == ')') {
          throw missing("A part of %s is missing here.".formatted(function.name()));
        }
        arguments.add(expression());
      } while (cursor.took(";") || cursor.took(","));
      close(cursor.text().indexOf('(', from));
    }
    calls--;
    return functions.call(function, arguments, from, cursor.at());
  }
}
