package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.TableColumn;
import org.jdesktop.swingx.table.TableColumnExt;
import zonewright.formula.Reference;
import zonewright.sheet.Column;

/** Shows, hides, moves and sizes the columns of a grid, and tells when that changed. */
public final class ColumnArranger {
  private final SheetTable table;
  private final List<Runnable> listeners = new ArrayList<>();

  /** The widths that content asked for; a column of another width was sized by a person. */
  private final Map<Reference, Integer> fitted = new HashMap<>();

  private boolean busy;

  ColumnArranger(SheetTable table) {
    this.table = table;
    table.getColumns(true).forEach(column -> stand(column, column.getModelIndex()));
    table
        .getColumnModel()
        .addColumnModelListener(
            new TableColumnModelListener() {
              @Override
              public void columnAdded(TableColumnModelEvent event) {
                tell();
              }

              @Override
              public void columnRemoved(TableColumnModelEvent event) {
                tell();
              }

              @Override
              public void columnMoved(TableColumnModelEvent event) {
                if (event.getFromIndex() != event.getToIndex()) {
                  tell();
                }
              }

              @Override
              public void columnMarginChanged(ChangeEvent event) {
                tell();
              }

              @Override
              public void columnSelectionChanged(ListSelectionEvent event) {}
            });
  }

  /** Hears when another arrangement is shown. */
  public void onChanged(Runnable listener) {
    listeners.add(listener);
  }

  private void tell() {
    if (!busy) {
      listeners.forEach(Runnable::run);
    }
  }

  /** Does several things and tells of them once. */
  private void together(Runnable what) {
    boolean outer = busy;
    busy = true;
    what.run();
    busy = outer;
    table.getTableHeader().resizeAndRepaint();
    tell();
  }

  /** Has a column of the grid show one of the sheet. */
  private void stand(TableColumn column, int at) {
    column.setModelIndex(at);
    column.setIdentifier(table.sheet().column(at).orElseThrow().reference().key());
  }

  /**
   * Shows the columns the sheet has now. Those that stay keep their places and widths and stay
   * hidden where they are; one that is called otherwise stands where it stood, a new one last.
   *
   * @param before the columns the sheet had
   */
  void takeColumns(List<Column> before) {
    List<Reference> old = before.stream().map(Column::reference).toList();
    List<Reference> now = table.sheet().table().columns().stream().map(Column::reference).toList();
    List<Reference> gone = new ArrayList<>(old);
    gone.removeAll(now);
    List<Reference> fresh = new ArrayList<>(now);
    fresh.removeAll(old);
    boolean renamed = gone.size() == 1 && fresh.size() == 1;
    together(
        () -> {
          for (TableColumn column : table.getColumns(true)) {
            Reference was = old.get(column.getModelIndex());
            if (now.contains(was)) {
              stand(column, now.indexOf(was));
            } else if (renamed) {
              fitted.put(fresh.get(0), fitted.getOrDefault(was, column.getWidth()));
              stand(column, now.indexOf(fresh.get(0)));
            } else {
              ((TableColumnExt) column).setVisible(true);
              table.getColumnModel().removeColumn(column);
            }
            fitted.keySet().retainAll(now);
          }
          for (Reference each : renamed ? List.<Reference>of() : fresh) {
            TableColumn column = new TableColumnExt(now.indexOf(each));
            stand(column, now.indexOf(each));
            table.getColumnModel().addColumn(column);
            fit(table.getColumnCount() - 1);
          }
        });
  }

  /** Returns what is shown now. */
  public Arrangement arrangement() {
    List<Arrangement.Shown> shown = new ArrayList<>();
    for (int at = 0; at < table.getColumnCount(); at++) {
      Reference reference = table.columnAt(at).reference();
      int width = table.getColumnModel().getColumn(at).getWidth();
      boolean usual = isFitted(reference, width);
      shown.add(new Arrangement.Shown(reference.column(), usual ? 0 : UIScale.unscale(width)));
    }
    return new Arrangement(shown, table.chosenFrozen());
  }

  private boolean isFitted(Reference reference, int width) {
    return Objects.equals(fitted.getOrDefault(reference, width), width);
  }

  /** Shows columns as arranged; what the sheet does not have is left out, its names always stay. */
  public void apply(Arrangement wanted) {
    table.commit();
    List<Column> all = table.sheet().table().columns();
    Map<String, Column> known = new HashMap<>();
    all.forEach(column -> known.put(column.reference().column(), column));
    List<Arrangement.Shown> shown = new ArrayList<>(wanted.columns());
    shown.removeIf(column -> !known.containsKey(column.id()));
    String names = all.get(0).reference().column();
    if (shown.stream().noneMatch(column -> column.id().equals(names))) {
      shown.add(0, new Arrangement.Shown(names, 0));
    }
    together(
        () -> {
          Selected selected = Selected.of(table);
          Set<String> ids = new HashSet<>();
          shown.forEach(column -> ids.add(column.id()));
          all.forEach(
              column -> extended(column).setVisible(ids.contains(column.reference().column())));
          for (int i = 0; i < shown.size(); i++) {
            Column column = known.get(shown.get(i).id());
            int now = table.getColumnModel().getColumnIndex(column.reference().key());
            if (now != i) {
              table.getColumnModel().moveColumn(now, i);
            }
            if (shown.get(i).width() > 0) {
              fitted.putIfAbsent(column.reference(), -1);
              size(i, UIScale.scale(shown.get(i).width()));
            } else {
              fit(i);
            }
          }
          table.freeze(wanted.frozen());
          selected.restore(table);
        });
  }

  private TableColumnExt extended(Column column) {
    return table.getColumnExt(column.reference().key());
  }

  /** Says whether a column is shown. */
  public boolean isShown(Column column) {
    return extended(column).isVisible();
  }

  /** Shows or hides columns; the one that names the rows always stays. */
  public void show(List<Column> columns, boolean shown) {
    table.commit();
    together(
        () -> {
          for (Column column : columns) {
            boolean names = column.equals(table.sheet().table().columns().get(0));
            if (!names && extended(column).isVisible() != shown) {
              extended(column).setVisible(shown);
              if (shown) {
                fit(table.getColumnModel().getColumnIndex(column.reference().key()));
              }
            }
          }
        });
  }

  /** Moves a shown column by some places; the one that names the rows stays first. */
  public void move(int at, int by) {
    int to = Math.max(1, Math.min(table.getColumnCount() - 1, at + by));
    if (at > 0 && to != at) {
      table.commit();
      table.getColumnModel().moveColumn(at, to);
      table.getColumnModel().getSelectionModel().setSelectionInterval(to, to);
    }
  }

  /** Keeps the first columns in view while the others scroll; none for 0. */
  public void freeze(int columns) {
    table.freeze(columns);
    tell();
  }

  /** Gives every column the width its heading and content ask for. */
  public void fitAll() {
    together(
        () -> {
          for (int at = 0; at < table.getColumnCount(); at++) {
            fit(at);
          }
        });
  }

  /** Gives a column the width its heading and content ask for. */
  public void fit(int at) {
    Column column = table.columnAt(at);
    int width = ColumnWidths.usual(table, column, (SheetHeader) table.getTableHeader());
    fitted.put(column.reference(), width);
    size(at, width);
  }

  /** Gives a column the width that its heading and the widest text in it ask for. */
  void fitWidest(int at) {
    Column column = table.columnAt(at);
    int width = ColumnWidths.widest(table, column, (SheetHeader) table.getTableHeader());
    fitted.putIfAbsent(column.reference(), -1);
    together(() -> size(at, width));
  }

  /** Makes room for what stands in some rows since, unless a person has chosen the width. */
  void widen(int at, IntStream rows) {
    Column column = table.columnAt(at);
    int now = table.getColumnModel().getColumn(at).getWidth();
    if (isFitted(column.reference(), now)) {
      int wanted = ColumnWidths.content(table, column, rows);
      if (wanted > now) {
        together(
            () -> {
              fitted.put(column.reference(), wanted);
              size(at, wanted);
            });
      }
    }
  }

  private void size(int at, int width) {
    table.getColumnModel().getColumn(at).setPreferredWidth(width);
    table.getColumnModel().getColumn(at).setWidth(width);
  }
}
