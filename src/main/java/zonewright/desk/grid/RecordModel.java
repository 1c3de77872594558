package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/** The columns of a one-row table as lines, each group beneath a line with its name. */
final class RecordModel extends AbstractTableModel {
  static final int NAME = 0;
  static final int VALUE = 1;
  static final int UNIT = 2;
  static final int MEANING = 3;

  /**
   * A line: a column of the book, or the name of a group.
   *
   * @param words what stands beside the value
   */
  record Line(String band, Optional<Column> column, String words) {}

  private final transient Book book;
  private final transient CellLooks looks;
  private transient TableDefinition table;
  private final transient List<Line> lines = new ArrayList<>();
  private final transient List<String> bands = new ArrayList<>();

  /** Holds the lines given, each group of them below its name. */
  RecordModel(Book book, String tableId, CellLooks looks, List<FormQuestion> questions) {
    this.book = book;
    this.looks = looks;
    take(tableId, questions);
  }

  /** Takes over other lines. */
  final void take(String tableId, List<FormQuestion> questions) {
    table = book.schema().table(tableId);
    lines.clear();
    bands.clear();
    for (FormQuestion question : questions) {
      if (!bands.contains(question.band())) {
        bands.add(question.band());
      }
    }
    for (String band : bands) {
      lines.add(new Line(band, Optional.empty(), ""));
      questions.stream()
          .filter(question -> question.band().equals(band))
          .forEach(
              question ->
                  lines.add(new Line(band, Optional.of(question.column()), question.words())));
    }
  }

  TableDefinition table() {
    return table;
  }

  Line line(int row) {
    return lines.get(row);
  }

  /** Returns the line of a column; -1 where it has none. */
  int lineOf(Reference column) {
    return IntStream.range(0, lines.size())
        .filter(
            at -> lines.get(at).column().map(Column::reference).filter(column::equals).isPresent())
        .findFirst()
        .orElse(-1);
  }

  /** Returns the place of the group of a line among the groups. */
  int bandPlace(int row) {
    return bands.indexOf(lines.get(row).band());
  }

  @Override
  public int getRowCount() {
    return lines.size();
  }

  @Override
  public int getColumnCount() {
    return MEANING + 1;
  }

  @Override
  public String getColumnName(int at) {
    return List.of("Name", "Value", "Unit", "Meaning").get(at);
  }

  @Override
  public Object getValueAt(int row, int at) {
    Line line = lines.get(row);
    if (line.column().isEmpty()) {
      return at == NAME ? line.band() : "";
    }
    Column column = line.column().get();
    return switch (at) {
      case NAME -> column.name();
      case VALUE -> looks.look(column, 0).text();
      case UNIT -> unit(column);
      default -> line.words();
    };
  }

  private String unit(Column column) {
    boolean bare = column.content() != Column.Content.NUMBER || column.kind().percent();
    return bare ? "" : column.kind().unit(book.system()).symbol();
  }

  @Override
  public boolean isCellEditable(int row, int at) {
    return at == VALUE
        && lines.get(row).column().filter(column -> EntryTable.typeable(book, column)).isPresent();
  }
}
