package zonewright.desk.grid;

import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** What a resting pointer tells of a column, and of a cell with a note. */
final class ColumnTip {
  private ColumnTip() {}

  static String of(Column column, UnitSystem system) {
    String source =
        column.source().isEmpty() ? "" : "<p style='margin-top:4'>" + escaped(column.source());
    return "<html><body width='320'><b>%s</b><p>%s%s</body></html>"
        .formatted(escaped(column.heading(system)), escaped(column.help()), source);
  }

  /** Returns a person's note on a cell, with what else is told of the cell below it. */
  static String withNote(String note, String tip) {
    String rest = tip.isEmpty() ? "" : "<p style='margin-top:4'>" + escaped(tip);
    return "<html><body width='320'>%s%s</body></html>"
        .formatted(escaped(note).replace("\n", "<br>"), rest);
  }

  private static String escaped(String plain) {
    return plain.replace("&", "&amp;").replace("<", "&lt;");
  }
}
