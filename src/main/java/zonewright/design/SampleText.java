package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import zonewright.climate.Climate;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Makes a design from texts, as a person would type them in US units. */
final class SampleText {
  private SampleText() {}

  /**
   * Returns the design.
   *
   * @param site what to type on the site sheet
   * @param columns the zones' columns, in the order of the texts
   * @param zones the texts, a row a zone
   */
  static Design design(
      UnitSystem system, Map<Column, String> site, List<Column> columns, String[][] zones) {
    return design(system, site, List.of(new Rows(Sheets.ZONES, columns, List.of(zones))));
  }

  /**
   * Rows of one sheet.
   *
   * @param columns in the order of the texts
   */
  record Rows(String table, List<Column> columns, List<String[]> texts) {}

  /**
   * Returns the design.
   *
   * @param site what to type on the site sheet
   * @param sheets what to type on others
   */
  static Design design(UnitSystem system, Map<Column, String> site, List<Rows> sheets) {
    Design design = Design.blank(UnitSystem.US);
    Edits edits = design.edits();
    List<Edit> parts = new ArrayList<>();
    site.forEach((column, text) -> parts.add(edits.typed(column.reference(), 0, text)));
    for (Rows sheet : sheets) {
      if (standing(design, sheet)) {
        continue;
      }
      List<List<Entry>> rows = new ArrayList<>();
      for (String[] texts : sheet.texts()) {
        rows.add(row(design, sheet, texts));
      }
      parts.add(edits.appended(sheet.table(), rows));
    }
    design.book().start(new Edit.Several("sample", parts));
    for (Rows sheet : sheets) {
      if (standing(design, sheet)) {
        design.book().start(new Edit.Several("sample", typed(edits, sheet)));
      }
    }
    if (system != UnitSystem.US) {
      design.book().start(design.edits().switched(system));
    }
    return design;
  }

  /** Returns what is typed in columns of the months, a text for each month. */
  static Rows months(Map<Column, List<String>> columns) {
    List<Column> which = List.copyOf(columns.keySet());
    String[][] texts = new String[Climate.MONTH_NAMES.size()][which.size()];
    for (int month = 0; month < texts.length; month++) {
      for (int i = 0; i < which.size(); i++) {
        texts[month][i] = columns.get(which.get(i)).get(month);
      }
    }
    return new Rows(Sheets.MONTHS, which, List.of(texts));
  }

  /** Whether the rows are there before anything is typed, or come with those of another sheet. */
  private static boolean standing(Design design, Rows sheet) {
    return !(design.book().schema().table(sheet.table()).rows()
        instanceof TableDefinition.Rows.Free);
  }

  /** What is typed in rows that are there already; empty texts are left blank. */
  private static List<Edit> typed(Edits edits, Rows sheet) {
    List<Edit> typed = new ArrayList<>();
    for (int row = 0; row < sheet.texts().size(); row++) {
      for (int i = 0; i < sheet.columns().size(); i++) {
        String text = sheet.texts().get(row)[i];
        if (!text.isEmpty()) {
          typed.add(edits.typed(sheet.columns().get(i).reference(), row, text));
        }
      }
    }
    return typed;
  }

  private static List<Entry> row(Design design, Rows sheet, String[] texts) {
    List<Entry> entries = new ArrayList<>();
    for (Column column : design.book().schema().table(sheet.table()).columns()) {
      int at = sheet.columns().indexOf(column);
      entries.add(at < 0 ? Entry.BLANK : Entries.read(column, texts[at], UnitSystem.US));
    }
    return entries;
  }
}
