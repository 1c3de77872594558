package zonewright.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import zonewright.sheet.Book;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;

/** In which row of its sheet each row of a design stands in a file just made. */
final class KeptRows {
  private KeptRows() {}

  /** Returns the rows of one table in a sheet made by {@link TableSheet}. */
  static Map<Long, Integer> fresh(Book book, TableDefinition table) {
    Map<Long, Integer> rows = new HashMap<>();
    List<Row> all = book.contents().rows(table.id());
    for (int i = 0; i < all.size(); i++) {
      rows.put(all.get(i).id(), TableSheet.FIRST_ROW + i);
    }
    return rows;
  }
}
