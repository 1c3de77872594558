package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.sheet.Column;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/** Several numbers in place of one, as {@code 20, 25, 30 mL}: a value for each row. */
public final class ListedValues {
  private static final Pattern APART = Pattern.compile("\\s*[;,]\\s*");
  private static final Pattern UNIT = Pattern.compile("[\\d.]\\s*([^\\d\\s.,;][^,;]*)$");

  private ListedValues() {}

  /**
   * Returns the numbers of a list, each as it would be typed, or blank; a unit behind the last
   * means all. What is a number as a whole and within its column's range is no list, nor what holds
   * anything but numbers.
   */
  public static List<String> of(String text, Column column, UnitSystem system) {
    if (column.content() != Column.Content.NUMBER || fits(text, column, system)) {
      return List.of(text);
    }
    List<String> parts = new ArrayList<>(List.of(APART.split(text.strip(), -1)));
    Matcher unit = UNIT.matcher(text.strip());
    String last = unit.find() ? unit.group(1).strip() : "";
    parts.replaceAll(
        part -> part.isBlank() || UNIT.matcher(part).find() ? part : (part + " " + last).strip());
    boolean numbers =
        parts.stream()
            .allMatch(
                part ->
                    part.isBlank()
                        || QuantityText.read(part, column.kind(), system)
                            instanceof QuantityText.Read);
    return parts.size() > 1 && numbers ? List.copyOf(parts) : List.of(text);
  }

  /** Says whether a text looks as a list of numbers does. */
  public static boolean looksSo(String text) {
    return text.matches("\\s*[\\d.]*(\\s*[;,]\\s*[\\d.]*)+\\s*[^\\d,;]*");
  }

  private static boolean fits(String text, Column column, UnitSystem system) {
    return QuantityText.read(text, column.kind(), system) instanceof QuantityText.Read read
        && column
            .bounds()
            .flatMap(bounds -> bounds.problem(read.value(), column.kind(), system))
            .isEmpty();
  }
}
