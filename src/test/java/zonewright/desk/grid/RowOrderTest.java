package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

class RowOrderTest {
  private final Design design = Demo.libraryGarden(UnitSystem.US);
  private final Book book = design.book();

  private List<String> names() {
    CellLooks looks = new CellLooks(book);
    return IntStream.range(0, book.rows(Sheets.ZONES))
        .mapToObj(row -> looks.look(Facts.ZONE_NAME, row).text())
        .toList();
  }

  private void sort(Column column, boolean upwards) {
    book.perform(
        RowOrder.sorted(book, new CellLooks(book), List.of(new RowOrder.Key(column, upwards))));
  }

  @Test
  void numbersWithinNamesCountAsNumbers() {
    assertThat(RowOrder.compare("zone 2", "zone 10")).isNegative();
    assertThat(RowOrder.compare("B1", "a2")).isPositive();
    sort(Facts.ZONE_NAME, false);
    assertThat(names()).startsWith("12", "11", "10", "9").endsWith("2", "1");
  }

  @Test
  void numbersSortBySizeAndRowsWithoutOneComeLastEitherWay() {
    book.perform(design.edits().typed(Emitters.AREA.reference(), 3, ""));
    sort(Emitters.AREA, true);
    assertThat(names()).startsWith("12", "5").endsWith("4");
    sort(Emitters.AREA, false);
    assertThat(names()).endsWith("12", "4");
  }

  @Test
  void sortingCanBeTakenBack() {
    List<String> before = names();
    sort(Emitters.AREA, true);
    book.undo();
    assertThat(names()).isEqualTo(before);
  }
}
