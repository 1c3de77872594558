package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Outcome;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Values that stand for calculated columns, and what working tells of inputs. */
final class KnownValuesTest {
  private static final Column WIDTH =
      Column.input("pond", "width", "Width", QuantityKind.LENGTH).build();
  private static final Column LENGTH =
      Column.input("pond", "length", "Length", QuantityKind.LENGTH).build();
  private static final Column DEPTH =
      Column.input("pond", "depth", "Depth", QuantityKind.LENGTH).build();

  private static final Column AREA =
      Column.calculated("pond", "area", "Area", QuantityKind.AREA, WIDTH.times(LENGTH))
          .means("Ground under water.")
          .source("By definition.")
          .build();

  private static final Condition DEEP = DEPTH.above(Formula.amount(3, Units.FOOT));

  private static final Column CARE =
      Column.calculated(
              "pond",
              "care",
              "Care",
              QuantityKind.AREA,
              Formula.when(DEEP).then(AREA).otherwise(Formula.zero(QuantityKind.AREA)))
          .build();

  private static final Schema BLUEPRINT =
      new Schema(
          List.of(
              new TableDefinition(
                  "pond",
                  "Pond",
                  "pond",
                  new TableDefinition.Rows.One(),
                  List.of(WIDTH, LENGTH, DEPTH, AREA, CARE))));

  private static Book book(Schema schema) {
    return new Book(schema, UnitSystem.US);
  }

  private static void type(Book book, Column column, String text) {
    book.perform(new Edits(book).typed(column.reference(), 0, text));
  }

  @Test
  void aKnownValueStandsForACalculatedColumn() {
    Book book = book(BLUEPRINT.withInputs(Set.of(AREA.reference())));
    type(book, AREA, "120 ft2");
    type(book, DEPTH, "4 ft");

    assertThat(book.number(CARE.reference(), 0)).isEqualTo(120);
    assertThat(book.working(AREA.reference(), 0).origin()).isEqualTo("typed");
  }

  @Test
  void aKnownValueKeepsMeaningAndSourceOfItsColumn() {
    Column known = BLUEPRINT.withInputs(Set.of(AREA.reference())).column(AREA.reference());

    assertThat(known.meaning()).isEqualTo(AREA.meaning());
    assertThat(known.source()).isEqualTo(AREA.source());
  }

  @Test
  void aKnownAmountBelowZeroIsRefused() {
    Book book = book(BLUEPRINT.withInputs(Set.of(AREA.reference())));
    type(book, AREA, "-1");

    assertThat(book.outcome(AREA.reference(), 0).sentence()).contains("must be at least 0 ft²");
    assertThat(book.number(AREA.reference(), 0)).isNaN();
  }

  @Test
  void theSchemaItCameFromStaysAsItWas() {
    BLUEPRINT.withInputs(Set.of(AREA.reference()));

    assertThat(BLUEPRINT.column(AREA.reference()).role()).isEqualTo(Column.Role.CALCULATED);
  }

  @Test
  void workingTellsWhichInputsCounted() {
    Book book = book(BLUEPRINT);
    type(book, DEPTH, "2 ft");

    assertThat(book.working(CARE.reference(), 0).inputs())
        .extracting(input -> input.column().name() + " " + input.used())
        .containsExactly("Depth true", "Area false");
  }

  @Test
  void whileAChoiceIsOpenAllThatItMayNeedIsNamedOnce() {
    Outcome outcome = book(BLUEPRINT).outcome(CARE.reference(), 0);

    assertThat(outcome.sentence()).isEqualTo("needs Pond, Depth; Pond, Width; Pond, Length");
  }

  @Test
  void aReasonIsNotRememberedPastAnEdit() {
    Book book = book(BLUEPRINT);
    assertThat(book.outcome(CARE.reference(), 0)).isInstanceOf(Outcome.Missing.class);

    type(book, WIDTH, "wide");
    type(book, DEPTH, "4 ft");

    assertThat(book.outcome(CARE.reference(), 0)).isInstanceOf(Outcome.Refused.class);
  }
}
