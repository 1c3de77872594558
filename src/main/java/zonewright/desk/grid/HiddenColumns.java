package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import zonewright.desk.part.Palette;
import zonewright.sheet.Column;

/** Marks in the headings where columns are hidden: how many, between which. */
final class HiddenColumns {
  private final SheetTable table;

  HiddenColumns(SheetTable table) {
    this.table = table;
  }

  /** Returns the columns hidden between a shown one and the next, in their order. */
  List<Column> after(int at) {
    List<Column> all = table.sheet().table().columns();
    int from = table.convertColumnIndexToModel(at);
    int to = at + 1 < table.getColumnCount() ? table.convertColumnIndexToModel(at + 1) : all.size();
    List<Column> hidden = new ArrayList<>();
    for (int model = from + 1; model < to; model++) {
      if (table.convertColumnIndexToView(model) < 0) {
        hidden.add(all.get(model));
      }
    }
    return hidden;
  }

  /** Returns where the mark stands in the heading of a column that others are hidden after. */
  Rectangle place(Rectangle heading, int count, FontMetrics metrics) {
    int width = metrics.stringWidth(words(count)) + UIScale.scale(6);
    int height = Math.min(metrics.getHeight(), heading.height - 2);
    return new Rectangle(
        heading.x + heading.width - width - 1, heading.y + 1, width, Math.max(1, height));
  }

  private static String words(int count) {
    return "‹" + count + "›";
  }

  /** Paints the mark. */
  void paint(Graphics2D g, Rectangle place, int count) {
    Palette palette = Palette.current();
    g.setColor(palette.selected(palette.headingGround()));
    g.fillRect(place.x, place.y, place.width, place.height);
    g.setColor(palette.ink());
    FontMetrics metrics = g.getFontMetrics();
    g.drawString(
        words(count),
        place.x + UIScale.scale(3),
        place.y + (place.height - metrics.getHeight()) / 2 + metrics.getAscent());
  }

  /** Returns what a pointer resting on the mark should tell. */
  static String tip(List<Column> hidden) {
    String names = hidden.stream().limit(12).map(Column::name).collect(Collectors.joining(", "));
    String more = hidden.size() > 12 ? " and " + (hidden.size() - 12) + " more" : "";
    return "<html><body style='width:260px'>Hidden here: %s%s. Click to show %s."
        .formatted(names, more, hidden.size() == 1 ? "it" : "them");
  }
}
