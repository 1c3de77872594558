package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.Changes;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** A new book calculates a column when it is first asked for; nobody can tell by the numbers. */
class AskedForTest {
  @Test
  void inWhateverOrderColumnsAreAskedForTheirNumbersAreThose() {
    Book settled = Design.of(Demo.libraryGarden(UnitSystem.US).book().snapshot()).book();
    for (int seed = 1; seed <= 5; seed++) {
      Book asked = Demo.libraryGarden(UnitSystem.US).book();
      for (Column column : shuffled(asked, seed)) {
        for (int row = 0; row < asked.rows(column.reference().table()); row++) {
          assertThat(Double.valueOf(asked.number(column.reference(), row)))
              .as("%s in row %s", column.reference().key(), row + 1)
              .isEqualTo(Double.valueOf(settled.number(column.reference(), row)));
        }
      }
    }
  }

  @Test
  void anEditBeforeAnythingWasAskedForIsToldAsAnyOther() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    List<Changes> heard = new ArrayList<>();
    design.book().listen(heard::add);

    design.book().perform(design.edits().typed(Emitters.AREA.reference(), 0, "1234"));

    assertThat(heard).hasSize(1);
    assertThat(heard.get(0).everything()).isFalse();
    assertThat(heard.get(0).cells().get(Emitters.PRECIPITATION_RATE.reference()).stream())
        .containsExactly(0);
    assertThat(design.book().number(Emitters.AREA.reference(), 0)).isEqualTo(1234);
  }

  @Test
  void anEditThatBelongsToTheStartCountsAtOnce() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    double before = design.book().number(Emitters.PRECIPITATION_RATE.reference(), 0);

    design.book().start(design.edits().typed(Emitters.AREA.reference(), 0, "123456"));

    assertThat(design.book().number(Emitters.PRECIPITATION_RATE.reference(), 0)).isLessThan(before);
    assertThat(design.book().counts(Sheets.ZONES, 0)).isTrue();
  }

  private static List<Column> shuffled(Book book, int seed) {
    List<Column> columns = new ArrayList<>();
    for (TableDefinition table : book.schema().tables()) {
      columns.addAll(table.columns());
    }
    Collections.shuffle(columns, new Random(seed));
    return columns;
  }
}
