package zonewright.equation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.units.QuantityKind;

/** The kinds of quantity as a person chooses among them, those of every day first. */
public final class KindWords {
  private static final Map<String, QuantityKind> KINDS = kinds();

  private KindWords() {}

  private static Map<String, QuantityKind> kinds() {
    List<QuantityKind> order =
        new ArrayList<>(
            List.of(
                QuantityKind.FACTOR,
                QuantityKind.COUNT,
                QuantityKind.SHARE,
                QuantityKind.AREA,
                QuantityKind.FLOW,
                QuantityKind.DEPTH,
                QuantityKind.RATE,
                QuantityKind.MINUTES,
                QuantityKind.VOLUME,
                QuantityKind.MONEY,
                QuantityKind.PRESSURE,
                QuantityKind.LENGTH));
    Arrays.stream(QuantityKind.values())
        .filter(kind -> kind != QuantityKind.CHOICE && !order.contains(kind))
        .forEach(order::add);
    Map<String, QuantityKind> kinds = new LinkedHashMap<>();
    order.forEach(kind -> kinds.put(of(kind), kind));
    return kinds;
  }

  /** Returns all of them. */
  public static List<String> all() {
    return List.copyOf(KINDS.keySet());
  }

  /** Returns what a kind is called. */
  public static String of(QuantityKind kind) {
    return switch (kind) {
      case FACTOR -> "plain number";
      case COUNT -> "whole number";
      case MINUTES -> "time in minutes";
      case MONEY -> "money";
      default -> kind.words();
    };
  }

  /** Returns the kind of some words. */
  public static Optional<QuantityKind> named(String words) {
    return Optional.ofNullable(KINDS.get(words));
  }
}
