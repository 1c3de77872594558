package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.Icon;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import zonewright.desk.part.Palette;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Tint;

/** A person's own notes and colours on cells of any kind, each an edit that can be undone. */
final class RemarkActions {
  private final EntryTable table;
  private final Supplier<List<Reference>> columns;
  private final Supplier<List<Integer>> rows;

  /**
   * Prepares for one table.
   *
   * @param columns the columns of the cells selected; of whole rows all there are
   * @param rows the rows of the book selected
   */
  RemarkActions(EntryTable table, Supplier<List<Reference>> columns, Supplier<List<Integer>> rows) {
    this.table = table;
    this.columns = columns;
    this.rows = rows;
  }

  void install(GridActions actions) {
    actions.does(GridAction.NOTE, this::note);
    actions.does(GridAction.COLOUR, this::choose);
  }

  private void note() {
    table.commit();
    table.place(table.leadRow(), table.leadColumn()).ifPresent(this::note);
  }

  private void note(CellPlace place) {
    Book book = table.book();
    new NoteForm(
            table,
            book.cellName(place.column(), place.row()).inWords(),
            book.remark(place.column(), place.row()).note(),
            words -> book.perform(table.edits().noted(place.column(), place.row(), words)))
        .open();
  }

  /** Offers the colours where the cell is that has the focus. */
  private void choose() {
    table.commit();
    Rectangle cell = table.getCellRect(table.leadRow(), table.leadColumn(), false);
    JPopupMenu menu = new JPopupMenu("Colour");
    for (Tint tint : Tint.values()) {
      JMenuItem item = new JMenuItem(tint.words(), new Swatch(tint));
      item.setName("colour " + tint);
      item.setMnemonic(tint.words().charAt(0));
      item.addActionListener(event -> colour(tint));
      menu.add(item);
    }
    menu.show(table, cell.x, cell.y + cell.height);
  }

  private void colour(Tint tint) {
    if (!rows.get().isEmpty() && !columns.get().isEmpty()) {
      table.book().perform(table.edits().tinted(columns.get(), rows.get(), tint));
    }
  }

  /** A colour as it stands in cells. */
  private record Swatch(Tint tint) implements Icon {
    @Override
    public void paintIcon(Component on, Graphics g, int x, int y) {
      Palette palette = Palette.current();
      g.setColor(palette.tint(tint).orElse(palette.paper()));
      g.fillRect(x, y, getIconWidth(), getIconHeight());
      g.setColor(palette.strongLine());
      g.drawRect(x, y, getIconWidth() - 1, getIconHeight() - 1);
    }

    @Override
    public int getIconWidth() {
      return UIScale.scale(16);
    }

    @Override
    public int getIconHeight() {
      return UIScale.scale(16);
    }
  }
}
