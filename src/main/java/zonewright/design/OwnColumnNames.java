package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.equation.EquationReader;
import zonewright.equation.EquationReading;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;

/** Carries a new name of a column of one's own over into the equations that name it. */
final class OwnColumnNames {
  /** The cells of a definition that hold equations. */
  private static final List<Column> EQUATIONS =
      List.of(OwnColumnSheet.EQUATION, OwnColumnSheet.AT_LEAST, OwnColumnSheet.AT_MOST);

  private OwnColumnNames() {}

  /** Returns the edits of the equations that name a column, for when it is called otherwise. */
  static List<Edit> renamed(Book book, Reference column, String name) {
    List<Edit> edits = new ArrayList<>();
    for (int row = 0; row < book.rows(Sheets.OWN_COLUMNS); row++) {
      OwnColumnDraft draft = OwnColumnDraft.of(book, row);
      for (Column cell : EQUATIONS) {
        Optional<String> text =
            book.entry(cell.reference(), row) instanceof Entry.Words words
                ? renamed(book, draft.sheet(), words.text(), column, name)
                : Optional.empty();
        if (text.isPresent()) {
          edits.add(new Edits(book).typed(cell.reference(), row, text.get()));
        }
      }
    }
    return edits;
  }

  private static Optional<String> renamed(
      Book book, String sheet, String equation, Reference column, String name) {
    if (!(EquationReader.read(equation, OwnColumnDraft.known(book, sheet))
        instanceof EquationReading.Understood understood)) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder(equation);
    List<EquationReading.Name> names = understood.names();
    for (int i = names.size() - 1; i >= 0; i--) {
      EquationReading.Name each = names.get(i);
      if (each.column().equals(column)) {
        String written = equation.substring(each.from(), each.to());
        text.replace(each.from(), each.to(), renamed(written, column.name(), name));
      }
    }
    String now = text.toString();
    return now.equals(equation) ? Optional.empty() : Optional.of(now);
  }

  /** What stands before the name, such as its sheet, stays; the new name stands in brackets. */
  private static String renamed(String written, String before, String name) {
    boolean brackets = written.endsWith("]");
    int end = written.length() - (brackets ? 1 : 0);
    String ahead = written.substring(0, Math.max(0, end - before.length()));
    return (brackets ? ahead : ahead + "[") + name + "]";
  }
}
