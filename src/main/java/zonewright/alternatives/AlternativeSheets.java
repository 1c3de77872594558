package zonewright.alternatives;

import static zonewright.trade.Sheets.ALTERNATIVES;
import static zonewright.trade.Sheets.CHANGES;
import static zonewright.trade.Sheets.SITE;

import java.util.Arrays;
import java.util.List;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;

/** The sheets that hold the alternatives of a design. */
public final class AlternativeSheets {
  private static final String BAND = "Alternatives";
  private static final String CHANGE_BAND = "Change";

  /** What an alternative is called. */
  public static final Column NAME =
      Column.words(ALTERNATIVES, "name", "Alternative")
          .band(BAND)
          .means("What this alternative of the design is called, such as “Drip in the beds”.")
          .build();

  /** What it is for. */
  public static final Column ABOUT =
      Column.words(ALTERNATIVES, "about", "What it tries")
          .band(BAND)
          .means("What the alternative is for, in your own words.")
          .optional()
          .build();

  /** Whether the sheets hold its values. */
  public static final Column IN_HAND =
      Column.choice(
              ALTERNATIVES,
              "on-the-sheets",
              "On the sheets",
              new WordList.Fixed(List.of(Words.YES)))
          .band(BAND)
          .means(
              "Marks the alternative that stands on the sheets and is changed by what you type; where"
                  + " none is marked, that is the design itself. Mark another one to put it there.")
          .optional()
          .build();

  /** What alternatives are compared by. */
  public static final Column COMPARED =
      Column.words(SITE, "compared-figures", "Figures compared")
          .band(Sheets.PROJECT)
          .means(
              "By which figures alternatives stand side by side, with semicolons between, such as"
                  + " “Volume per year; Cycles of 7”. Blank: water, minutes, price, allowances and"
                  + " the end of the longest night.")
          .optional()
          .build();

  /** What a change is called: its number. */
  static final Column CHANGE =
      Column.words(CHANGES, "change", "Change")
          .band(CHANGE_BAND)
          .optional()
          .means("A number that tells this change from the others; it may be left blank.")
          .build();

  /** Which alternative makes the change. */
  static final Column OF =
      Column.words(CHANGES, "of", "Who has it so")
          .band(CHANGE_BAND)
          .means(
              "The alternative that is otherwise than the design here; or the design, while the"
                  + " alternative that differs stands on the sheets.")
          .build();

  /** What is done. */
  static final Column DONE =
      Column.choice(
              CHANGES,
              "done",
              "What is done",
              new WordList.Fixed(
                  Arrays.stream(Change.Kind.values()).map(Change.Kind::words).toList()))
          .band(CHANGE_BAND)
          .means(
              "Whether a value is typed into the cell, the cell is emptied, or the row is put in or"
                  + " taken out. Blank: a value.")
          .optional()
          .build();

  /** On which sheet. */
  static final Column SHEET =
      Column.words(CHANGES, "sheet", "On the sheet")
          .band(CHANGE_BAND)
          .means("The sheet on which something is otherwise, as its tab calls it.")
          .build();

  /** In which row. */
  static final Column ROW =
      Column.words(CHANGES, "row", "In the row")
          .band(CHANGE_BAND)
          .means(
              "The row by the name the design gives it, or as “row 3” where it has none of its own;"
                  + " blank on sheets with one row.")
          .optional()
          .build();

  /** In which column. */
  static final Column COLUMN =
      Column.words(CHANGES, "column", "In the column")
          .band(CHANGE_BAND)
          .means("The column, without its unit; blank where a row is put in or taken out.")
          .optional()
          .build();

  /** What is typed there. */
  static final Column VALUE =
      Column.words(CHANGES, "value", "Value")
          .band(CHANGE_BAND)
          .means(
              "What is typed into the cell, with its unit. Where a row is put in: the name of the row"
                  + " above it; blank puts it in at the top.")
          .optional()
          .build();

  private AlternativeSheets() {}

  /** Words of lists. */
  static final class Words {
    static final String YES = "yes";

    private Words() {}
  }

  /** Returns the sheets. */
  public static List<TableDefinition> tables() {
    return List.of(
        new TableDefinition(
            ALTERNATIVES,
            "Alternatives",
            "alternative",
            new TableDefinition.Rows.Free(),
            List.of(NAME, IN_HAND, ABOUT)),
        new TableDefinition(
            CHANGES, "Changes", "change", new TableDefinition.Rows.Free(), changeColumns()));
  }

  /** Returns the columns of a change, its number first. */
  static List<Column> changeColumns() {
    return List.of(CHANGE, OF, DONE, SHEET, ROW, COLUMN, VALUE);
  }
}
