package zonewright.exchange;

import java.util.List;
import zonewright.estimate.Parts;
import zonewright.estimate.PriceBook;
import zonewright.sheet.Column;
import zonewright.sheet.Headings;
import zonewright.sheet.ListText;

/** Finds the headings of a price book, which may stand below a title and a few words about it. */
public final class PriceLists {
  private static final int LINES_ABOVE = 20;

  private PriceLists() {}

  /**
   * Returns the list below the line that names most columns of a price book, among the first; where
   * none does, below the first.
   *
   * @param name what to call it in a complaint
   * @throws ListProblem when it is empty or too long
   */
  public static ForeignList of(ListText text, String name) throws ListProblem {
    List<ListText.Line> lines = text.lines();
    int head = 0;
    long most = 0;
    for (int at = 0; at < Math.min(lines.size(), LINES_ABOVE); at++) {
      long known = lines.get(at).cells().stream().filter(PriceLists::known).count();
      if (known > most) {
        most = known;
        head = at;
      }
    }
    return ForeignList.of(text, name, head);
  }

  /** Says whether a cell is the heading of a price book, by our name or another. */
  private static boolean known(String cell) {
    String heading = cell.replaceAll("\\s*\\([^()]*\\)\\s*$", "");
    return Headings.plain(heading).equals(Headings.plain(Parts.COUNT.name()))
        || PriceBook.columns().stream().anyMatch(column -> named(column, heading));
  }

  private static boolean named(Column column, String heading) {
    return Headings.plain(heading).equals(Headings.plain(column.name()))
        || ListHeadings.means(column, heading);
  }
}
