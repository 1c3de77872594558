package zonewright.trade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;

/**
 * A sheet with rows of a person's own for a table of the trade. Each takes after a row of the
 * program's, and has its numbers where none of its own are typed.
 */
public final class OwnRows {
  /** What such a row is worth, in the column of the table that says so. */
  public static final String STATUS = "of one's own, not checked by the program";

  private final String id;
  private final String title;
  private final String word;
  private final ReferenceTable table;
  private final Column name;
  private final Column like;
  private final Map<Column, List<String>> numbers = new LinkedHashMap<>();
  private final Column source;
  private final Column from;

  /**
   * Begins a sheet without numbers.
   *
   * @param word what a row is called, such as {@code plant}
   */
  public OwnRows(String id, String title, String word, ReferenceTable table) {
    this.id = id;
    this.title = title;
    this.word = word;
    this.table = table;
    String capital = word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    this.name =
        Column.words(id, "name", capital)
            .band(Sheets.OWN)
            .means(
                "What you call it. It can be chosen on the sheet Zones beside the %ss that come with"
                        .formatted(word)
                    + " the program.")
            .build();
    this.like =
        Column.choice(id, "takes-after", "Takes after", new WordList.Fixed(table.keys()))
            .band(Sheets.OWN)
            .means(
                "The %s of the program's table whose numbers it has where none are typed beside it,"
                        .formatted(word)
                    + " and with which it is counted.")
            .build();
    this.source =
        Column.words(id, "source", "Source")
            .band(Sheets.OWN)
            .means("Where its numbers come from, such as a data sheet, a test or a nursery.")
            .optional()
            .build();
    this.from =
        Column.words(id, "taken-from", "Taken from")
            .band(Sheets.OWN)
            .means("The workbook of the office it was taken from; blank where it was typed here.")
            .optional()
            .build();
  }

  /**
   * Adds a number.
   *
   * @param headings the columns of the table it stands for
   */
  public OwnRows number(
      String column,
      String called,
      QuantityKind kind,
      Bounds within,
      String means,
      String... headings) {
    numbers.put(
        Column.input(id, column, called, kind)
            .band(Sheets.OWN)
            .within(within)
            .optional()
            .means(means + " Blank: that of what it takes after.")
            .build(),
        List.of(headings));
    return this;
  }

  /** Returns the table whose rows they stand beside. */
  public ReferenceTable table() {
    return table;
  }

  /** Returns the column of their names. */
  public Column name() {
    return name;
  }

  /** Returns the column that says which row each takes after. */
  public Column like() {
    return like;
  }

  /** Returns the columns of numbers, each with the headings it stands for. */
  public Map<Column, List<String>> numbers() {
    return Collections.unmodifiableMap(numbers);
  }

  /** Returns the column of their sources. */
  public Column source() {
    return source;
  }

  /** Returns the column that says from which workbook each was taken. */
  public Column from() {
    return from;
  }

  /** Returns the sheet. */
  public TableDefinition sheet() {
    List<Column> columns = new ArrayList<>(List.of(name, like));
    columns.addAll(numbers.keySet());
    columns.add(source);
    columns.add(from);
    return new TableDefinition(id, title, word, new TableDefinition.Rows.Free(), columns);
  }
}
