package zonewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.InputRange;

/** Ranges as people type them. */
class TypedRangeTest {
  private final Design garden = Demo.libraryGarden(UnitSystem.US);
  private final Book book = garden.book();
  private final InputRange intake = InputRange.of(Soils.INTAKE_RATE.reference()).orElseThrow();

  private TypedRange at(Column column, int row) {
    return TypedRange.at(book, new Place(column.reference(), row)).orElseThrow();
  }

  private List<Double> typed(Column input, String text) {
    TypedRange.Reading read = at(input, 6).read(text);
    assertThat(read).as(text).isInstanceOf(TypedRange.Made.class);
    book.perform(((TypedRange.Made) read).edit());
    InputRange range = InputRange.of(input.reference()).orElseThrow();
    int row = range.ofSite() ? 0 : 6;
    return List.of(
        book.number(range.least().reference(), row),
        book.number(range.greatest().reference(), row));
  }

  private String refused(Column input, String text) {
    return ((TypedRange.Refused) at(input, 6).read(text)).sentence();
  }

  @Test
  void aRangeIsReadInTheWaysPeopleWriteIt() {
    assertThat(typed(Soils.INTAKE_RATE, "0.2 to 0.5 in/h")).containsExactly(0.2, 0.5);
    assertThat(typed(Soils.INTAKE_RATE, "0.2 to 0.6")).containsExactly(0.2, 0.6);
    assertThat(typed(Soils.INTAKE_RATE, "0.1 - 0.5")).containsExactly(0.1, 0.5);
    assertThat(typed(Soils.INTAKE_RATE, "0.1–0.4 in/h")).containsExactly(0.1, 0.4);
    assertThat(typed(Soils.INTAKE_RATE, "2.54 to 12.7 mm/h").get(1)).isCloseTo(0.5, offset(1e-9));
    assertThat(typed(Soils.INTAKE_RATE, "2.54 mm/h to 0.5 in/h").get(0))
        .isCloseTo(0.1, offset(1e-9));
    assertThat(typed(Soils.INTAKE_RATE, "between 0.2 and 0.5")).containsExactly(0.2, 0.5);
    assertThat(typed(Soils.INTAKE_RATE, "0.2 TO 0.5 in/h")).containsExactly(0.2, 0.5);
    assertThat(typed(Soils.INTAKE_RATE, "± 5 %")).containsExactly(0.19, 0.21);
    assertThat(typed(Emitters.DISTRIBUTION_UNIFORMITY, "50 to 70 %")).containsExactly(0.5, 0.7);
    assertThat(typed(Emitters.AREA, "± 10 %").get(1)).isCloseTo(1760, offset(1e-9));
    assertThat(typed(Climate.REFERENCE_ET, "90 % to 115 %")).containsExactly(0.9, 1.15);
    assertThat(typed(Climate.REFERENCE_ET, "+-5 %")).containsExactly(0.95, 1.05);
    assertThat(typed(Soils.INTAKE_RATE, "  ")).containsOnly(Double.NaN);
  }

  @Test
  void whatIsNoRangeIsRefusedWithWhatWouldBe() {
    assertThat(refused(Soils.INTAKE_RATE, "0.3"))
        .isEqualTo(
            "“0.3” is no range. Write it as 0.2 to 0.5, with the unit if you like, or as ± 10 % around what it is.");
    assertThat(refused(Soils.INTAKE_RATE, "0.5 to 0.2"))
        .isEqualTo("The least comes first: write 0.2 in/h to 0.5 in/h.");
    assertThat(refused(Soils.INTAKE_RATE, "50.8 mm/h to 0.1"))
        .isEqualTo("The least comes first: write 0.1 in/h to 2 in/h.");
    assertThat(refused(Soils.INTAKE_RATE, "± 1.2.3 %")).contains("is no range");
    assertThat(refused(Soils.INTAKE_RATE, "± 200 %")).contains("out of range");
    assertThat(refused(Emitters.DISTRIBUTION_UNIFORMITY, "60 %")).contains("50 to 70 %");
    assertThat(refused(Soils.INTAKE_RATE, "0.2 to 0.5 gal")).contains("gal");
    assertThat(refused(Soils.INTAKE_RATE, "0 to 0.5")).contains("out of range");
    assertThat(refused(Soils.INTAKE_RATE, "low to high")).contains("Write it as");
    assertThat(refused(Emitters.DISTRIBUTION_UNIFORMITY, "50 to 170 %")).contains("out of range");
    Place calculated = new Place(CycleAndSoak.CYCLES.reference(), 0);
    assertThat(TypedRange.at(book, calculated)).isEmpty();
    assertThat(TypedRange.refused(book, calculated)).startsWith("Cycles can be given no range.");
  }

  @Test
  void itIsOneStepThatIsTakenBackAndReadsBackAsItWasTyped() {
    typed(Soils.INTAKE_RATE, "0.2 to 0.5 in/h");

    assertThat(at(Soils.INTAKE_RATE, 6).typed()).isEqualTo("0.2 to 0.5");
    assertThat(at(intake.least(), 6).name()).isEqualTo("zone 7, Intake rate");
    assertThat(book.journal().toUndo().orElseThrow().name())
        .isEqualTo("range of zone 7, Intake rate");
    book.undo();
    assertThat(at(Soils.INTAKE_RATE, 6).typed()).isEmpty();
    assertThat(at(Soils.INTAKE_RATE, 6).published().orElseThrow())
        .contains("0.197 in/h to 0.394 in/h");
    assertThat(at(Climate.REFERENCE_ET, 3).name()).isEqualTo("Reference ET of all months");
  }

  @Test
  void aRangeGoesAlongIntoTheOtherUnits() {
    typed(Soils.INTAKE_RATE, "0.2 to 0.5 in/h");
    book.perform(garden.edits().switched(UnitSystem.SI));

    assertThat(book.number(intake.greatest().reference(), 6)).isCloseTo(12.7, offset(1e-9));
  }

  /** A range that leaves out the number the design rests on is told, by the end it passes. */
  @Test
  void aRangeThatDoesNotHoldTheNumberIsAFinding() {
    assertThat(outside()).isEmpty();
    typed(Soils.INTAKE_RATE, "0.3 to 0.5");
    assertThat(outside())
        .containsExactly(
            "zone 7: has 0.2 in/h as its intake rate, below the least it may be, 0.3 in/h — type a range that holds the number of the sheet Zones, or another number there");
    typed(Soils.INTAKE_RATE, "0.1 to 0.15");
    assertThat(outside())
        .hasSize(1)
        .allMatch(line -> line.contains("above the greatest it may be, 0.15 in/h"));
    typed(Soils.INTAKE_RATE, "");
    typed(Climate.REFERENCE_ET, "105 % to 110 %");
    assertThat(outside())
        .hasSize(1)
        .allMatch(line -> line.contains("105 %") && line.contains("above 100 %"));
  }

  private List<String> outside() {
    return garden.findings().stream()
        .map(Finding::line)
        .filter(
            line -> line.contains("may be, ") || line.contains("leaves out what the months hold"))
        .toList();
  }

  /** One end alone is enough: the other is the number the design rests on. */
  @Test
  void ofOneEndTheOtherIsTheNumberHeld() {
    RangedGarden.type(garden, intake.greatest(), 6, "0.6");
    HowSure sure = HowSure.of(book.snapshot());

    assertThat(at(Soils.INTAKE_RATE, 6).typed()).isEqualTo("0.2 to 0.6");
    assertThat(sure.ranges())
        .filteredOn(range -> range.of().equals("7") && range.input().equals(Soils.INTAKE_RATE))
        .extracting(HowSure.Counted::words, HowSure.Counted::origin)
        .containsExactly(tuple("0.2 in/h to 0.6 in/h", "typed"));
  }
}
