package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

class BookSnapshotTest {
  private final Design design = Demo.libraryGarden(UnitSystem.SI);

  private static String all(Book book) {
    StringBuilder text = new StringBuilder();
    for (TableDefinition table : book.schema().tables()) {
      for (int row = 0; row < book.rows(table.id()); row++) {
        for (Column column : table.columns()) {
          text.append(book.number(column.reference(), row)).append(' ');
          text.append(book.entry(column.reference(), row)).append('\n');
        }
      }
    }
    return text.toString();
  }

  @Test
  void aBookFromASnapshotHoldsTheSameEntriesAndTheSameNumbers() {
    Design copy = Design.of(design.book().snapshot());

    assertThat(copy.book().system()).isEqualTo(UnitSystem.SI);
    assertThat(all(copy.book())).isEqualTo(all(design.book()));
    assertThat(copy.findings()).isEqualTo(design.findings());
  }

  @Test
  void editsOfEitherDoNotReachTheOther() {
    BookSnapshot snapshot = design.book().snapshot();
    String before = all(design.book());
    Design copy = Design.of(snapshot);

    design.book().perform(design.edits().removed(Sheets.ZONES, 0, 3));
    assertThat(all(copy.book())).isEqualTo(before);

    copy.book().perform(copy.edits().inserted(Sheets.ZONES, 0, 2));
    assertThat(copy.book().rows(Sheets.ZONES)).isEqualTo(14);
    assertThat(design.book().rows(Sheets.ZONES)).isEqualTo(9);
    assertThat(all(Design.of(snapshot).book())).isEqualTo(before);
  }

  @Test
  void newRowsOfACopyAreToldApartFromThoseItCameWith() {
    Design copy = Design.of(design.book().snapshot());
    copy.book()
        .perform(copy.edits().duplicated(Sheets.ZONES, IntStream.range(0, 12).boxed().toList()));

    assertThat(copy.book().contents().rows(Sheets.ZONES))
        .extracting(Row::id)
        .doesNotHaveDuplicates();
  }

  @Test
  void whatWasTypedWhileAFileWasBeingWrittenCountsAsUnsaved() {
    Book book = design.book();
    book.perform(design.edits().inserted(Sheets.ZONES, 0, 1));
    var last = book.journal().toUndo();
    book.perform(design.edits().inserted(Sheets.ZONES, 0, 1));
    book.journal().saved(last);

    assertThat(book.journal().unsaved()).isTrue();
    book.undo();
    assertThat(book.journal().unsaved()).isFalse();
  }
}
