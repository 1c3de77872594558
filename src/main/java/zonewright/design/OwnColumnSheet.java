package zonewright.design;

import java.util.List;
import zonewright.equation.KindWords;
import zonewright.formula.Reference;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** The sheet whose rows are columns of one's own. */
public final class OwnColumnSheet {
  private static final String ID = Sheets.OWN_COLUMNS;
  private static final String SOURCE = "Defined by you.";
  static final int MOST_DECIMALS = 6;

  /** What the column is called. */
  public static final Column NAME =
      Column.words(ID, "name", "Column")
          .band(Sheets.OWN)
          .means(
              "What the new column is called, unlike any other on its sheet. Other equations use this name.")
          .source(SOURCE)
          .build();

  /** The kind of its numbers. */
  public static final Column KIND =
      Column.choice(ID, "kind", "Kind", new WordList.Fixed(KindWords.all()))
          .band(Sheets.OWN)
          .means("What its numbers are. That decides the unit they are shown in.")
          .source(SOURCE)
          .build();

  /** How it is calculated. */
  public static final Column EQUATION =
      Column.words(ID, "equation", "Equation")
          .band(Sheets.OWN)
          .means(
              "How it is calculated, as in a spreadsheet and with names of columns: Area * 1.5 in, or"
                  + " IF(Slope > 5 %; Run time a week / 2; Run time a week). Numbers carry their unit.")
          .source(SOURCE)
          .build();

  /** How many decimals it shows. */
  public static final Column DECIMALS =
      Column.input(ID, "decimals", "Decimals", QuantityKind.COUNT)
          .within(Bounds.from(0, MOST_DECIMALS, Units.ONE).wholeNumbers())
          .band(Sheets.OWN)
          .means("How many decimals it shows; blank for those usual for its kind.")
          .source(SOURCE)
          .optional()
          .build();

  /** The least it should be. */
  public static final Column AT_LEAST =
      Column.words(ID, "at-least", "At least")
          .band(Sheets.LIMITS_OF_OWN)
          .means("The least it should be, with its unit: 12 gpm. Less is a finding.")
          .source(SOURCE)
          .optional()
          .build();

  /** The most it should be. */
  public static final Column AT_MOST =
      Column.words(ID, "at-most", "At most")
          .band(Sheets.LIMITS_OF_OWN)
          .means(
              "The most it should be, with its unit, or a column: Available flow. More is a finding.")
          .source(SOURCE)
          .optional()
          .build();

  /** What to do where a limit is broken. */
  public static final Column NOTE =
      Column.words(ID, "note", "What to do")
          .band(Sheets.LIMITS_OF_OWN)
          .means("What is said beside the finding where a limit is broken.")
          .source(SOURCE)
          .optional()
          .build();

  /** On which sheet it stands; its words are the sheets there are. */
  public static final Reference SHEET = new Reference(ID, "sheet", "On sheet", QuantityKind.CHOICE);

  private OwnColumnSheet() {}

  /**
   * Returns the sheet.
   *
   * @param sheets the titles of those that can have further columns
   */
  static TableDefinition table(List<String> sheets) {
    Column sheet =
        Column.choice(ID, SHEET.column(), SHEET.name(), new WordList.Fixed(sheets))
            .band(Sheets.OWN)
            .means("The sheet it stands on, behind the columns that are there.")
            .source(SOURCE)
            .build();
    return new TableDefinition(
        ID,
        "OwnColumns",
        "column",
        new TableDefinition.Rows.Free(),
        List.of(NAME, sheet, KIND, EQUATION, DECIMALS, AT_LEAST, AT_MOST, NOTE));
  }
}
