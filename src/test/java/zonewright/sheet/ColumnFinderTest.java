package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.units.QuantityKind;

final class ColumnFinderTest {
  private static final Column POND_DEPTH =
      Column.input("ponds", "depth", "Depth", QuantityKind.DEPTH).build();
  private static final Column POND_AREA =
      Column.input("ponds", "area", "Area", QuantityKind.AREA).build();
  private static final Column WELL_DEPTH =
      Column.input("wells", "depth", "Depth", QuantityKind.DEPTH).build();
  private static final Column TANK_DEPTH =
      Column.input("tanks", "depth", "Depth", QuantityKind.DEPTH).build();

  private static final Schema BLUEPRINT =
      new Schema(
          List.of(
              table("ponds", "Ponds", POND_DEPTH, POND_AREA),
              table("wells", "Wells", WELL_DEPTH),
              table("tanks", "Tanks", TANK_DEPTH)));

  private static TableDefinition table(String id, String title, Column... columns) {
    return new TableDefinition(id, title, id, new TableDefinition.Rows.One(), List.of(columns));
  }

  private static List<String> otherNames(Column column) {
    return column.equals(TANK_DEPTH) ? List.of("depth of a tank", "td") : List.of();
  }

  private static Object found(String preferred, String name) {
    ColumnFinder.Found found =
        new ColumnFinder(BLUEPRINT, preferred, ColumnFinderTest::otherNames).find(name);
    return found instanceof ColumnFinder.One one
        ? one.column()
        : ((ColumnFinder.Unclear) found).sentence();
  }

  @Test
  void namesAreFoundWithoutCapitalsAndWithTheirUnit() {
    assertThat(found("ponds", " area ")).isEqualTo(POND_AREA);
    assertThat(found("ponds", "Area (m²)")).isEqualTo(POND_AREA);
    assertThat(found("ponds", "Area (ft²)")).isEqualTo(POND_AREA);
  }

  @Test
  void thePreferredTableComesFirst() {
    assertThat(found("wells", "Depth")).isEqualTo(WELL_DEPTH);
  }

  @Test
  void aTableCanBeNamed() {
    assertThat(found("wells", "tanks: depth")).isEqualTo(TANK_DEPTH);
  }

  @Test
  void aNameInSeveralOtherTablesIsUnclear() {
    assertThat(found("none", "Depth"))
        .isEqualTo(
            "“Depth” stands in several sheets; write “Ponds: Depth”, “Wells: Depth” or “Tanks: Depth”.");
  }

  @Test
  void anUnknownNameComesWithTheNearest() {
    assertThat(found("ponds", "Aera")).isEqualTo("There is no column “Aera”; did you mean “Area”?");
  }

  @Test
  void whatElseAColumnIsCalledFindsIt() {
    assertThat(found("ponds", "TD")).isEqualTo(TANK_DEPTH);
    assertThat(found("ponds", "what is the depth of a tank?")).isEqualTo(TANK_DEPTH);
  }

  @Test
  void severalThatComeNearStandInALineEach() {
    assertThat(found("none", "depht").toString().lines())
        .hasSize(4)
        .startsWith("There is no column “depht”; did you mean one of these?")
        .contains("  Ponds: Depth", "  Wells: Depth", "  Tanks: Depth");
  }
}
