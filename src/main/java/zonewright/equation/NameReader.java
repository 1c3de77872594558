package zonewright.equation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/** Reads the names of columns in an equation: bare, in brackets, or behind their sheet. */
final class NameReader {
  private final Cursor cursor;
  private final Numerals numerals;
  private final KnownColumns columns;
  private final List<EquationReading.Name> met = new ArrayList<>();

  /** Some letters of the equation. */
  private record Span(String text, int from, int to) {}

  NameReader(Cursor cursor, Numerals numerals, KnownColumns columns) {
    this.cursor = cursor;
    this.numerals = numerals;
    this.columns = columns;
  }

  /** Returns the names met so far; others may add what they met. */
  List<EquationReading.Name> met() {
    return met;
  }

  /** Says whether the name of a column within reach stands at a place. */
  boolean there(int from) {
    return columns.bare(cursor.text(), from).isPresent();
  }

  /** Reads the column that comes next, where the name of one does, or of a sheet. */
  Optional<Part> next() throws Misread {
    String text = cursor.text();
    int from = cursor.skip().at();
    if (cursor.next() == '[') {
      return Optional.of(inBrackets(from));
    }
    Optional<Map.Entry<TableDefinition, Integer>> sheet = columns.sheet(text, from);
    if (sheet.isPresent()) {
      cursor.jump(sheet.get().getValue());
      return Optional.of(ofSheet(sheet.get().getKey(), from));
    }
    Optional<KnownColumns.Match> match = columns.bare(text, from);
    if (match.isEmpty() || wordsGoOn(match.get().end())) {
      return Optional.empty();
    }
    cursor.jump(match.get().end());
    return Optional.of(one(match.get().columns(), clear(span(from, match.get().end())), from));
  }

  /** Says that words which begin at a place name no column. */
  Misread unknown(int from) {
    int to = NameText.wordsEnd(cursor.text(), from);
    String written = cursor.text().substring(from, to);
    return unknown(written, from, to, columns.offers(written));
  }

  private static Misread unknown(String name, int from, int to, List<String> offers) {
    String asked = offers.isEmpty() ? "" : " Did you mean %s?".formatted(String.join(", ", offers));
    return new Misread(
        from, to, "There is no column “%s” here.%s".formatted(name.strip(), asked), offers);
  }

  private Part inBrackets(int from) throws Misread {
    Span name = bracketed();
    List<Column> found = columns.named(name.text());
    if (found.isEmpty()) {
      throw unknown(name.text(), from, cursor.at(), columns.offers(name.text()));
    }
    return one(found, name, from);
  }

  private Part ofSheet(TableDefinition table, int from) throws Misread {
    String text = cursor.text();
    int at = cursor.skip().at();
    if (cursor.next() == '[') {
      Span name = bracketed();
      List<Column> found = columns.named(table, name.text());
      if (found.isEmpty()) {
        throw unknown(name.text(), from, cursor.at(), columns.offers(table, name.text()));
      }
      return one(found, name, from);
    }
    Optional<KnownColumns.Match> match = columns.in(table, text, at);
    if (match.isEmpty()) {
      int end = NameText.wordsEnd(text, at);
      String written = text.substring(at, end);
      throw unknown(
          table.title() + "." + written, from, Math.max(end, at), columns.offers(table, written));
    }
    cursor.jump(match.get().end());
    return one(match.get().columns(), span(at, match.get().end()), from);
  }

  private Span span(int from, int to) {
    return new Span(cursor.text().substring(from, to), from, to);
  }

  private Span bracketed() throws Misread {
    int open = cursor.skip().at();
    int end = cursor.text().indexOf(']', open);
    if (end < 0) {
      throw new Misread(open, open + 1, "This bracket is never closed.", List.of());
    }
    cursor.jump(open + 1);
    // spreadsheets write so that the cell of this row is meant, which it is here in any case
    cursor.took("@");
    int begin = Math.min(cursor.skip().at(), end);
    cursor.jump(end + 1);
    return span(begin, begin + cursor.text().substring(begin, end).stripTrailing().length());
  }

  /**
   * Returns the one column that was found.
   *
   * @param from where its sheet, a bracket or its name begins
   */
  private Part one(List<Column> found, Span name, int from) throws Misread {
    if (found.size() == 1) {
      met.add(new EquationReading.Name(found.get(0).reference(), name.from(), name.to()));
      return new Part.Named(found.get(0), from, cursor.at());
    }
    List<String> offers =
        found.stream()
            .map(column -> columns.tableOf(column).title() + ".[" + column.name() + "]")
            .toList();
    throw new Misread(
        from,
        cursor.at(),
        "“%s” stands on several sheets: write %s."
            .formatted(name.text(), String.join(" or ", offers)),
        offers);
  }

  /** Refuses a name without brackets that may as well be several columns with signs between. */
  private Span clear(Span name) throws Misread {
    Optional<Integer> sign = NameText.sign(name.text());
    String before = sign.map(at -> name.text().substring(0, at).strip()).orElse("");
    if (before.isEmpty() || columns.named(before).isEmpty()) {
      return name;
    }
    String whole = "[" + name.text() + "]";
    String parts = "[" + before + "]" + name.text().substring(before.length());
    throw new Misread(
        name.from(),
        name.to(),
        "“%s” can be read two ways: write %s for the column of this name, or %s."
            .formatted(name.text(), whole, parts),
        List.of(whole, parts));
  }

  /** Says whether further words follow a name, so that another name may have been meant. */
  private boolean wordsGoOn(int end) {
    int before = cursor.at();
    cursor.jump(end);
    boolean letter = Character.isLetter(cursor.next());
    boolean measured = letter && cursor.tookWord("in") && numerals.unit().isPresent();
    cursor.jump(before);
    return letter && !measured;
  }
}
