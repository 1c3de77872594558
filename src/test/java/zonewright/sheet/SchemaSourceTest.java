package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.formula.Reference;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** Columns that follow from what is entered. */
class SchemaSourceTest {
  /** Each group named by a number gives the things a column with that many times their length. */
  private static final SchemaSource BY_GROUPS =
      new SchemaSource() {
        private final Schema declared = Ledger.schema();

        @Override
        public Schema declared() {
          return declared;
        }

        @Override
        public Set<String> definedBy() {
          return Set.of("groups");
        }

        @Override
        public Schema schema(BookSnapshot entered) {
          List<Column> columns =
              entered.rows("groups").stream()
                  .map(row -> ((Entry.Words) row.entry(0)).text())
                  .filter(name -> name.matches("\\d"))
                  .map(SchemaSourceTest::times)
                  .toList();
          return columns.isEmpty() ? declared : declared.withColumns(Map.of("things", columns));
        }
      };

  private static final Reference THRICE = times("3").reference();

  private final List<Changes> heard = new ArrayList<>();
  private Book book;

  private static Column times(String number) {
    return Column.calculated(
            "things",
            "times" + number,
            number + " lengths",
            QuantityKind.LENGTH,
            Ledger.LENGTH.times(Double.parseDouble(number)))
        .build();
  }

  @BeforeEach
  void open() {
    book = new Book(BY_GROUPS, Ledger.book().snapshot());
    book.settle();
    book.listen(heard::add);
  }

  private void nameGroup(String name) {
    book.perform(new Edits(book).typed(Ledger.GROUP.reference(), 0, name));
  }

  private List<String> names() {
    return book.schema().table("things").columns().stream().map(Column::name).toList();
  }

  @Test
  void aColumnComesWithItsDefinitionAndGoesWithIt() {
    assertThat(names()).doesNotContain("3 lengths");
    nameGroup("3");
    assertThat(heard)
        .singleElement()
        .matches(Changes::columns, "columns")
        .matches(Changes::everything);
    assertThat(names()).endsWith("3 lengths");
    assertThat(book.number(THRICE, 2)).isEqualTo(12);
    book.perform(new Edits(book).typed(Ledger.LENGTH.reference(), 2, "5"));
    assertThat(book.number(THRICE, 2)).isEqualTo(15);
    assertThat(book.working(THRICE, 2).symbols()).isEqualTo("Length × 3");
    nameGroup("C");
    assertThat(names()).doesNotContain("3 lengths");
    assertThat(book.number(Ledger.TOTAL.reference(), 0)).isEqualTo(8);
  }

  @Test
  void undoAndRedoTakeTheColumnAwayAndBringItBack() {
    nameGroup("3");
    book.undo();
    assertThat(names()).doesNotContain("3 lengths");
    book.redo();
    assertThat(book.number(THRICE, 1)).isEqualTo(6);
  }

  @Test
  void otherEditsOfTheDefiningTableLeaveTheColumnsAlone() {
    nameGroup("3");
    Schema before = book.schema();
    book.perform(new Edits(book).inserted("things", 0, 1));
    assertThat(book.schema()).isSameAs(before);
    assertThat(heard.get(1)).matches(changes -> !changes.columns(), "columns as before");
    assertThat(book.number(THRICE, 1)).isEqualTo(3);
    assertThat(book.entry(THRICE, 0)).isEqualTo(Entry.BLANK);
  }

  @Test
  void aBookLikeAnotherHasItsColumnsToo() {
    nameGroup("3");
    Book other = book.another(book.snapshot());
    assertThat(other.number(THRICE, 1)).isEqualTo(6);
    other.perform(new Edits(other).switched(UnitSystem.SI));
    assertThat(other.number(THRICE, 1)).isEqualTo(6 * 0.3048);
    assertThat(book.number(THRICE, 1)).isEqualTo(6);
  }
}
