package zonewright.desk.grid;

import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** What a pointer resting on the name of a column tells: what it means and where it comes from. */
final class ColumnTip {
  private ColumnTip() {}

  static String of(Column column, UnitSystem system) {
    String source =
        column.source().isEmpty() ? "" : "<p style='margin-top:4'>" + escaped(column.source());
    return "<html><body width='320'><b>%s</b><p>%s%s</body></html>"
        .formatted(escaped(column.heading(system)), escaped(column.help()), source);
  }

  private static String escaped(String plain) {
    return plain.replace("&", "&amp;").replace("<", "&lt;");
  }
}
