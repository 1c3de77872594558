package zonewright.equation;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.formula.Formula;
import zonewright.units.Dimension;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Reads the numbers of an equation with their units, and decides what its commas mean. */
final class Numerals {
  private static final Pattern NUMBER =
      Pattern.compile("(?:\\d+(?:[.,]\\d+)*\\.?|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?");

  /** Without the sign of seconds and feet, which quote words, and those that divide. */
  private static final List<Name> NAMES =
      Units.all().stream()
          .flatMap(unit -> Units.namesOf(unit).stream().map(name -> new Name(name, unit)))
          .filter(name -> Character.isLetter(name.text().charAt(0)) || name.text().startsWith("°"))
          .sorted(Comparator.comparingInt((Name name) -> -name.text().length()))
          .toList();

  private record Name(String text, Unit unit) {}

  private final Cursor cursor;
  private final boolean semicolons;
  private final boolean pointsSeen;

  Numerals(Cursor cursor) {
    this.cursor = cursor;
    String bare = cursor.text().replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]", "");
    this.semicolons = bare.indexOf(';') >= 0;
    this.pointsSeen = Pattern.compile("\\d\\.\\d|,(?!\\d)|(?<!\\d),").matcher(bare).find();
  }

  /** Says whether a number comes next. */
  boolean next() {
    char first = cursor.next();
    int at = cursor.at() + 1;
    boolean figure = at < cursor.text().length() && digit(cursor.text().charAt(at));
    return digit(first) || ((first == '.' || first == ',') && figure);
  }

  private static boolean digit(char letter) {
    return letter >= '0' && letter <= '9';
  }

  /**
   * Reads the number that comes next.
   *
   * @param listed whether it stands among the arguments of a function, where a comma may end it
   */
  Part.Amount read(boolean listed) throws Misread {
    int from = cursor.skip().at();
    Matcher number = NUMBER.matcher(cursor.text());
    number.region(from, cursor.text().length());
    if (!number.lookingAt()) {
      throw new Misread(from, from + 1, "A number is missing here.", List.of());
    }
    String figures = number.group();
    if (listed && !semicolons && figures.indexOf(',') >= 0) {
      if (!pointsSeen) {
        throw new Misread(
            from,
            from + figures.length(),
            "“%s” can be read two ways: write %s, or %s."
                .formatted(figures, figures.replace(",", "; "), figures.replace(',', '.')),
            List.of(figures.replace(",", "; "), figures.replace(',', '.')));
      }
      figures = figures.substring(0, figures.indexOf(','));
    }
    cursor.jump(from + figures.length());
    double value = value(figures, from);
    if (cursor.took("%")) {
      double part = new BigDecimal(Double.toString(value)).movePointLeft(2).doubleValue();
      return Part.Amount.of(Formula.number(part), Dimension.NONE, from, cursor.at());
    }
    Unit unit = unit().orElse(Units.ONE);
    if (unit.equals(Units.PERCENT)) {
      value = new BigDecimal(Double.toString(value)).movePointLeft(2).doubleValue();
      unit = Units.ONE;
    }
    return Part.Amount.of(Formula.amount(value, unit), unit.dimension(), from, cursor.at());
  }

  private static double value(String figures, int from) throws Misread {
    QuantityText.Reading reading = QuantityText.read(figures, QuantityKind.FACTOR, UnitSystem.SI);
    if (reading instanceof QuantityText.Read read) {
      return read.value();
    }
    throw new Misread(
        from,
        from + figures.length(),
        ((QuantityText.Unreadable) reading).sentence() + ".",
        List.of());
  }

  /** Takes the longest name of a unit that comes next. */
  Optional<Unit> unit() {
    int at = cursor.skip().at();
    for (Name name : NAMES) {
      int end = NameText.end(cursor.text(), at, name.text());
      if (end >= 0) {
        cursor.jump(end);
        return Optional.of(name.unit());
      }
    }
    return Optional.empty();
  }
}
