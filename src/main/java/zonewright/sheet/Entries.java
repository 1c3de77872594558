package zonewright.sheet;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Outcome;
import zonewright.units.Arithmetic;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Between what people type and what cells hold. */
public final class Entries {
  /** As many words are told, where none is like what was typed. */
  private static final int FEW = 12;

  private Entries() {}

  /** Reads what was typed into a cell; what cannot be read is kept with the reason. */
  public static Entry read(Column column, String typed, UnitSystem system) {
    if (typed.isBlank()) {
      return Entry.BLANK;
    }
    if (column.content() == Column.Content.CHOICE) {
      List<String> list = column.words().flatMap(WordList::constant).orElse(List.of());
      return Entry.words(WordMatch.in(list, typed).orElse(typed));
    }
    if (column.content() == Column.Content.WORDS) {
      return Entry.words(typed);
    }
    if (Arithmetic.begins(typed)) {
      return calculated(column, typed);
    }
    QuantityText.Reading reading = QuantityText.read(typed, column.kind(), system);
    return reading instanceof QuantityText.Read read
        ? new Entry.Figure(read.value())
        : new Entry.Unreadable(typed.strip(), ((QuantityText.Unreadable) reading).sentence());
  }

  private static Entry calculated(Column column, String typed) {
    String sum = Arithmetic.plain(typed);
    Optional<Double> value = column.kind().onCalendar() ? Optional.empty() : Arithmetic.value(sum);
    return value
        .<Entry>map(
            found ->
                new Entry.Figure(
                    column.kind().percent() ? Units.PERCENT.convert(found, Units.ONE) : found, sum))
        .orElseGet(
            () ->
                new Entry.Unreadable(
                    typed.strip(),
                    "“%s” comes to no number; write figures and signs, as in =35*40"
                        .formatted(typed.strip())));
  }

  /** Returns what a person would type to get the entry again, exactly. */
  public static String typed(Column column, Entry entry) {
    if (entry instanceof Entry.Figure number) {
      return !number.sum().isEmpty()
          ? number.sum()
          : QuantityText.typed(number.value(), column.kind());
    }
    if (entry instanceof Entry.Words words) {
      return words.text();
    }
    return entry instanceof Entry.Unreadable unreadable ? unreadable.text() : "";
  }

  /** Returns the same amount in another system; words and what is unreadable stay as they are. */
  public static Entry converted(Column column, Entry entry, UnitSystem from, UnitSystem to) {
    return entry instanceof Entry.Figure number
        ? new Entry.Figure(column.kind().unit(from).convert(number.value(), column.kind().unit(to)))
        : entry;
  }

  /**
   * Returns what an entry comes to: a number, words, a blank, or a refusal that says what would be
   * right.
   *
   * @param list the words to choose from, where the column holds choices
   */
  static Outcome outcome(
      Column column, Entry entry, List<String> list, UnitSystem system, Outcome.CellName cell) {
    if (entry instanceof Entry.Blank) {
      return new Outcome.Blank();
    }
    if (entry instanceof Entry.Unreadable unreadable) {
      return new Outcome.Refused(cell, unreadable.problem());
    }
    if (entry instanceof Entry.Words words) {
      return column.content() == Column.Content.CHOICE
          ? chosen(column, words.text(), list, cell)
          : column.content() == Column.Content.WORDS
              ? new Outcome.Words(words.text())
              : new Outcome.Refused(cell, "“" + words.text() + "” is not a number");
    }
    double value = ((Entry.Figure) entry).value();
    Optional<String> problem =
        column.bounds().flatMap(bounds -> bounds.problem(value, column.kind(), system));
    return problem.isPresent()
        ? new Outcome.Refused(cell, problem.get())
        : new Outcome.Amount(value);
  }

  private static Outcome chosen(
      Column column, String word, List<String> list, Outcome.CellName cell) {
    for (String known : list) {
      if (known.equalsIgnoreCase(word.strip())) {
        return new Outcome.Words(known);
      }
    }
    return new Outcome.Refused(cell, notInList(column, word, list));
  }

  /** Returns the word of a column's list that another one means, or is most like. */
  public static Optional<String> meant(Column column, String word, List<String> list) {
    return column
        .words()
        .flatMap(words -> words.alsoCalled(word))
        .or(() -> Nearest.alike(word, list));
  }

  private static String notInList(Column column, String word, List<String> list) {
    if (list.isEmpty()) {
      return "“" + word + "” is not known, and the list to choose from is empty";
    }
    Optional<Unit> unit = Units.named(word).filter(any -> word.strip().length() > 1);
    if (unit.isPresent()) {
      return "“%s” is a unit, %s, and none of the words to choose from"
          .formatted(word, unit.get().inWords());
    }
    return meant(column, word, list)
        .map(near -> "“%s” is not in the list; did you mean “%s”?".formatted(word, near))
        .orElseGet(
            () ->
                list.size() > FEW
                    ? "“%s” is none of the %s words to choose from".formatted(word, list.size())
                    : "“%s” is not in the list; choose %s"
                        .formatted(word, String.join(", ", list)));
  }
}
