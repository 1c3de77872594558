package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import zonewright.sheet.Column;
import zonewright.sheet.Tint;
import zonewright.units.UnitSystem;

/**
 * A sheet as it goes on paper: the columns and rows that are shown, as texts.
 *
 * @param title what the sheet is called
 * @param headings the heads of its columns
 * @param repeated how many columns at the left stand on every page
 * @param rows the texts of its cells, row by row
 */
public record PrintedGrid(String title, List<Heading> headings, int repeated, List<Line> rows) {
  /**
   * The head of a column: its group, its name, its unit, and whether its cells end at the right.
   */
  public record Heading(String band, String name, String unit, boolean right) {}

  /** A row, or where {@code band} says so the name of a group in its first cell. */
  public record Line(List<Cell> cells, boolean band) {
    public Line {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A cell: its text, whether that is a default or a reason and so stands back, and a person's
   * colour.
   */
  public record Cell(String text, boolean soft, Tint tint) {}

  public PrintedGrid {
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
  }

  /** Returns the same with some columns alone; those that stand on every page always stay. */
  public PrintedGrid only(Set<Integer> columns) {
    List<Integer> kept =
        IntStream.range(0, headings.size())
            .filter(at -> at < repeated || columns.contains(at))
            .boxed()
            .toList();
    List<Line> lines =
        rows.stream()
            .map(line -> new Line(kept.stream().map(line.cells()::get).toList(), line.band()))
            .toList();
    return new PrintedGrid(title, kept.stream().map(headings::get).toList(), repeated, lines);
  }

  /** Returns the columns and rows that a grid shows. */
  static PrintedGrid of(SheetTable table) {
    UnitSystem system = table.book().system();
    List<Heading> headings = new ArrayList<>();
    List<Column> columns = new ArrayList<>();
    for (int at = 0; at < table.getColumnCount(); at++) {
      Column column = table.columnAt(at);
      columns.add(column);
      boolean number = column.content() == Column.Content.NUMBER;
      headings.add(new Heading(column.band(), column.name(), unit(column, system), number));
    }
    List<Line> lines = new ArrayList<>();
    for (int row = 0; row < table.sheet().shown().count(); row++) {
      int bookRow = table.bookRow(row);
      lines.add(
          new Line(columns.stream().map(column -> cell(table, column, bookRow)).toList(), false));
    }
    int repeated = Math.max(1, Math.min(table.chosenFrozen(), 3));
    return new PrintedGrid(table.sheet().table().title(), headings, repeated, lines);
  }

  private static String unit(Column column, UnitSystem system) {
    if (column.content() != Column.Content.NUMBER) {
      return "";
    }
    return column.kind().percent() ? "%" : column.kind().unit(system).symbol();
  }

  private static Cell cell(EntryTable table, Column column, int row) {
    CellLook look = table.looks().look(column, row);
    boolean soft =
        switch (look.standing()) {
          case DEFAULTED, NOT_APPLICABLE, MISSING, REFUSED_ELSEWHERE -> true;
          default -> false;
        };
    Tint tint = table.book().remark(column.reference(), row).tint();
    return new Cell(look.text(), soft, tint);
  }

  /** Returns the lines of a form. */
  static PrintedGrid of(RecordTable table) {
    RecordModel model = (RecordModel) table.getModel();
    List<Line> lines = new ArrayList<>();
    for (int row = 0; row < model.getRowCount(); row++) {
      List<Cell> cells = new ArrayList<>();
      for (int at = 0; at < model.getColumnCount(); at++) {
        String text = String.valueOf(model.getValueAt(row, at));
        cells.add(new Cell(text, at == RecordModel.MEANING, Tint.NONE));
      }
      boolean band = model.line(row).column().isEmpty();
      if (!band) {
        cells.set(RecordModel.VALUE, cell(table, model.line(row).column().get(), 0));
      }
      lines.add(new Line(cells, band));
    }
    List<Heading> headings =
        List.of(
            new Heading("", "Name", "", false),
            new Heading("", "Value", "", true),
            new Heading("", "Unit", "", false),
            new Heading("", "Meaning", "", false));
    return new PrintedGrid(model.table().title(), headings, 1, lines);
  }
}
