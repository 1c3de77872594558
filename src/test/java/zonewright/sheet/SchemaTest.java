package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.units.QuantityKind;

/** Tables that cannot work are refused when they are put together, by name. */
class SchemaTest {
  private static Formula cell(String table, String id) {
    return reference(table, id).asFormula();
  }

  private static Reference reference(String table, String id) {
    return new Reference(table, id, id.toUpperCase(java.util.Locale.ROOT), QuantityKind.FACTOR);
  }

  private static Column calculated(String table, String id, Formula formula) {
    return Column.calculated(
            table, id, id.toUpperCase(java.util.Locale.ROOT), QuantityKind.FACTOR, formula)
        .build();
  }

  private static TableDefinition free(String id, Column... columns) {
    return new TableDefinition(id, id, "row", new TableDefinition.Rows.Free(), List.of(columns));
  }

  private static void refused(String message, TableDefinition... tables) {
    assertThatThrownBy(() -> new Schema(List.of(tables)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void columnsInACircleAreNamedInTheirOrder() {
    refused(
        "columns in a circle: A → B → C → A",
        free(
            "t",
            calculated("t", "a", cell("t", "b")),
            calculated("t", "b", cell("t", "c")),
            calculated("t", "c", cell("t", "a"))));
  }

  @Test
  void aCircleIsNamedWithoutTheWayIntoIt() {
    refused(
        "columns in a circle: B → C → B",
        free(
            "t",
            calculated("t", "a", cell("t", "b")),
            calculated("t", "b", cell("t", "c").plus(1)),
            calculated("t", "c", Formula.smaller(Formula.number(1), cell("t", "b")))));
  }

  @Test
  void aColumnCannotDependOnTheSumOfItself() {
    refused(
        "columns in a circle: A → A", free("t", calculated("t", "a", reference("t", "a").sum())));
  }

  @Test
  void aNameThatMeansNoColumnIsRefused() {
    refused("there is no column t.gone", free("t", calculated("t", "a", cell("t", "gone"))));
  }

  @Test
  void aCellOfAnotherTableWithManyRowsIsRefused() {
    refused(
        "u.b means a cell of t.a, but which row of it?",
        free("t", Column.input("t", "a", "A", QuantityKind.FACTOR).build()),
        free("u", calculated("u", "b", cell("t", "a"))));
  }

  @Test
  void askingWhetherACalculatedCellIsGivenIsRefused() {
    Formula asks =
        Formula.when(reference("t", "a").given().and(reference("t", "b").given()))
            .then(1)
            .otherwise(0);
    Column typed = Column.input("t", "a", "A", QuantityKind.FACTOR).build();
    refused(
        "t.c asks whether t.b is given, but that is calculated and never typed",
        free("t", typed, calculated("t", "b", Formula.number(2)), calculated("t", "c", asks)));
    Column typedOver =
        Column.defaulted("t", "b", "B", QuantityKind.FACTOR, Formula.number(2)).build();
    assertThat(new Schema(List.of(free("t", typed, typedOver, calculated("t", "c", asks)))).order())
        .hasSize(3);
  }

  @Test
  void twoColumnsOfOneNameAreRefusedWhateverTheirCapitals() {
    refused(
        "two columns of t are called area",
        free(
            "t",
            Column.input("t", "a", "Area", QuantityKind.AREA).build(),
            Column.input("t", "b", "area", QuantityKind.AREA).build()));
  }

  @Test
  void aFormulaOfAnotherDimensionThanItsColumnIsRefusedByName() {
    Column depth = Column.input("t", "depth", "Depth", QuantityKind.DEPTH).build();
    Column rate = Column.input("t", "rate", "Rate", QuantityKind.RATE).build();
    assertThatThrownBy(
            () ->
                Column.calculated("t", "time", "Run time", QuantityKind.MINUTES, rate.over(depth))
                    .build())
        .hasMessage("Run time: the formula gives 1/time, the column holds time");
    assertThatThrownBy(
            () ->
                Column.calculated("t", "sum", "Sum", QuantityKind.DEPTH, depth.plus(rate)).build())
        .hasMessage("Sum: cannot add length and length/time");
  }

  @Test
  void everyColumnComesAfterWhatItDependsOn() {
    Schema schema =
        new Schema(
            List.of(
                free(
                    "t",
                    calculated("t", "a", cell("t", "b")),
                    calculated("t", "b", cell("t", "c")),
                    Column.input("t", "c", "C", QuantityKind.FACTOR).build())));
    assertThat(schema.order()).extracting(Column::name).containsExactly("C", "B", "A");
  }
}
