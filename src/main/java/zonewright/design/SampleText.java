package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
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
    return design(system, site, Map.of(), columns, zones);
  }

  /**
   * Returns the design.
   *
   * @param site what to type on the site sheet
   * @param months what to type in columns of the months, a text for each month
   * @param columns the zones' columns, in the order of the texts
   * @param zones the texts, a row a zone
   */
  static Design design(
      UnitSystem system,
      Map<Column, String> site,
      Map<Column, List<String>> months,
      List<Column> columns,
      String[][] zones) {
    Design design = Design.blank(UnitSystem.US);
    Edits edits = design.edits();
    List<Edit> parts = new ArrayList<>();
    site.forEach((column, text) -> parts.add(edits.typed(column.reference(), 0, text)));
    months.forEach(
        (column, texts) -> {
          for (int month = 0; month < texts.size(); month++) {
            parts.add(edits.typed(column.reference(), month, texts.get(month)));
          }
        });
    List<List<Entry>> rows = new ArrayList<>();
    for (String[] zone : zones) {
      rows.add(row(design, columns, zone));
    }
    parts.add(edits.appended(Sheets.ZONES, rows));
    design.book().start(new Edit.Several("sample", parts));
    if (system != UnitSystem.US) {
      design.book().start(design.edits().switched(system));
    }
    return design;
  }

  private static List<Entry> row(Design design, List<Column> columns, String[] texts) {
    List<Entry> entries = new ArrayList<>();
    for (Column column : design.book().blueprint().table(Sheets.ZONES).columns()) {
      int at = columns.indexOf(column);
      entries.add(at < 0 ? Entry.BLANK : Entries.read(column, texts[at], UnitSystem.US));
    }
    return entries;
  }
}
