package zonewright.weather;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was wrong with the lines and values of a file: counted by kind, the first line named. */
final class Quality {
  /** What may be wrong with a line, or with a value in it. */
  enum Fault {
    NO_DATE("Left out for want of a date that can be read: %s"),
    TOO_SHORT("Left out, ending before the values: %s"),
    OTHER_STATION("Left out, of other stations: %s"),
    OUT_OF_ORDER("Out of order, put in order: %s"),
    TWICE("Left out, a second time the same: %s"),
    TWICE_DIFFERENTLY("Left out, a second time with other values: %s"),
    MISSING("missing"),
    UNREADABLE("not a number"),
    IMPOSSIBLE("out of limits (%s)"),
    DOUBTED("marked as doubtful by whoever publishes the file"),
    TOO_HUMID("above 100 % and taken as 100 %"),
    ABOVE_THE_AIR("more than reaches the top of the air"),
    LOW_ABOVE_HIGH("above the highest of the same day"),
    ABOVE_CLEAR_SKY("above that of a clear sky by a tenth and more, but used");

    private final String words;

    Fault(String words) {
      this.words = words;
    }
  }

  private static final class Count {
    private long number;
    private final int firstLine;

    Count(int firstLine) {
      this.firstLine = firstLine;
    }
  }

  private final Map<Fault, Count> lines = new EnumMap<>(Fault.class);
  private final Map<WeatherElement, Map<Fault, Count>> values = new EnumMap<>(WeatherElement.class);
  private final Map<String, Integer> remarks = new LinkedHashMap<>();

  /** Counts a line. */
  void line(Fault fault, int line) {
    lines.computeIfAbsent(fault, any -> new Count(line)).number++;
  }

  /** Counts a value. */
  void value(WeatherElement element, Fault fault, int line) {
    values
        .computeIfAbsent(element, any -> new EnumMap<>(Fault.class))
        .computeIfAbsent(fault, any -> new Count(line))
        .number++;
  }

  /** Notes a sentence, once. */
  void remark(String sentence) {
    remarks.put(sentence, 1);
  }

  /** Returns how often a fault was counted with an element. */
  long count(WeatherElement element, Fault fault) {
    Count count = values.getOrDefault(element, Map.of()).get(fault);
    return count == null ? 0 : count.number;
  }

  /** Returns how often a fault of lines was counted. */
  long count(Fault fault) {
    Count count = lines.get(fault);
    return count == null ? 0 : count.number;
  }

  /** Returns a sentence for each thing that was wrong. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    lines.forEach(
        (fault, count) ->
            sentences.add(
                fault.words.formatted(Sentence.count(count.number, "line"))
                    + (count.firstLine > 0 ? ", the first in line " + count.firstLine : "")
                    + "."));
    values.forEach(
        (element, faults) -> {
          List<String> parts = new ArrayList<>();
          faults.forEach(
              (fault, count) -> {
                String words = fault.words.replace("%s", element.limits());
                boolean where = fault != Fault.MISSING && count.firstLine > 0;
                parts.add(
                    Sentence.number(count.number)
                        + " "
                        + words
                        + (where ? " (first in line " + count.firstLine + ")" : ""));
              });
          String name = element.words();
          sentences.add(
              name.substring(0, 1).toUpperCase(Locale.ROOT)
                  + name.substring(1)
                  + ": "
                  + String.join("; ", parts)
                  + ".");
        });
    sentences.addAll(remarks.keySet());
    return sentences;
  }
}
