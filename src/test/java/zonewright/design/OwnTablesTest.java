package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Plants, emitters and soils of one's own, chosen in zones like those of the program. */
class OwnTablesTest {
  private Design design;
  private Book book;

  @BeforeEach
  void open() {
    design = Demo.libraryGarden(UnitSystem.US);
    book = design.book();
    add(Sheets.OWN_PLANTS, "Meadow mix", "cool-season turf", "0.55", "14 in", "", "nursery", "");
    add(Sheets.OWN_EMITTERS, "Seep hose", "drip line", "75 %", "", "12 psi", "", "");
    add(Sheets.OWN_SOILS, "Terrace fill", "loam", "1.1 in/h", "0.1 in", "", "lab", "");
  }

  private void add(String table, String... texts) {
    int row = book.rows(table);
    book.perform(design.edits().inserted(table, row, 1));
    List<Column> columns = book.declared().table(table).columns();
    for (int i = 0; i < texts.length; i++) {
      book.perform(design.edits().typed(columns.get(i).reference(), row, texts[i]));
    }
  }

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  private double number(Column column, int row) {
    return book.number(column.reference(), row);
  }

  @Test
  void whatIsTypedCountsAndTheRestIsThatOfWhatItTakesAfter() {
    double depletion = number(Plants.ALLOWED_DEPLETION, 0);
    type(Plants.PLANT, 0, "meadow mix");
    assertThat(number(Plants.PLANT_FACTOR, 0)).isEqualTo(0.55);
    assertThat(number(Plants.ROOT_DEPTH, 0)).isEqualTo(14);
    assertThat(number(Plants.ALLOWED_DEPLETION, 0)).isEqualTo(depletion);
    type(Plants.BASIS, 0, "FAO-56 Kc");
    assertThat(number(Plants.PLANT_FACTOR, 0)).isEqualTo(0.55);
    type(Soils.SOIL_TYPE, 0, "Terrace fill");
    assertThat(number(Soils.INTAKE_RATE, 0)).isEqualTo(1.1);
    assertThat(number(Soils.SURFACE_STORAGE, 0)).isEqualTo(0.1);
    assertThat(book.working(Plants.PLANT_FACTOR.reference(), 0).toString())
        .contains("nursery; the rest as cool-season turf");
  }

  /** Turf is counted, and drip is judged by the ground it wets: so is what takes after them. */
  @Test
  void itIsCountedWithWhatItTakesAfter() {
    Reference turf = new Reference("takeoff", "turf-area", "", zonewright.units.QuantityKind.AREA);
    type(Emitters.WETTED_WIDTH, 5, "6 in");
    double before = number(Emitters.WETTED_RATE, 5);
    assertThat(number(Emitters.WETTED_RATE, 5))
        .isNotEqualTo(number(Emitters.PRECIPITATION_RATE, 5));
    type(Emitters.EMITTER, 5, "Seep hose");
    assertThat(number(Emitters.WETTED_RATE, 5)).isEqualTo(before);
    assertThat(number(Emitters.DISTRIBUTION_UNIFORMITY, 5)).isEqualTo(0.75);
    Column area =
        book.schema().table("takeoff").columns().stream()
            .filter(column -> column.reference().column().equals(turf.column()))
            .findFirst()
            .orElseThrow();
    type(Plants.PLANT, 5, "Meadow mix");
    assertThat(number(area, 5)).isEqualTo(number(Emitters.AREA, 5));
  }

  @Test
  void itIsOfferedChangedAndTakenAwayLikeAnyWord() {
    assertThat(book.choices(book.schema().column(Plants.PLANT.reference())))
        .endsWith("Meadow mix")
        .startsWith(Plants.TYPES.keys().get(0));
    type(Plants.PLANT, 0, "Meadow mix");
    Column factor = book.declared().table(Sheets.OWN_PLANTS).columns().get(2);
    type(factor, 0, "0.65");
    assertThat(number(Plants.PLANT_FACTOR, 0)).isEqualTo(0.65);
    book.perform(design.edits().removed(Sheets.OWN_PLANTS, 0, 1));
    assertThat(book.outcome(Plants.PLANT_FACTOR.reference(), 0).sentence())
        .startsWith("zone 1, Plant type: “Meadow mix” is none of the 25 words");
    book.undo();
    assertThat(number(Plants.PLANT_FACTOR, 0)).isEqualTo(0.65);
  }

  @Test
  void numbersStayWhatTheyAreInOtherUnits() {
    type(Soils.SOIL_TYPE, 0, "Terrace fill");
    double cycle = number(zonewright.water.CycleAndSoak.CYCLES, 0);
    book.perform(design.edits().switched(UnitSystem.SI));
    assertThat(number(Soils.INTAKE_RATE, 0))
        .isCloseTo(27.94, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(number(zonewright.water.CycleAndSoak.CYCLES, 0)).isEqualTo(cycle);
  }

  @Test
  void whatCannotBeUsedIsFound() {
    add(Sheets.OWN_PLANTS, "Cool-season turf", "warm-season turf", "0.1");
    add(Sheets.OWN_PLANTS, "No idea", "", "0.4");
    add(Sheets.OWN_PLANTS, "Too thirsty", "warm-season turf", "17");
    assertThat(design.findings())
        .extracting(Finding::line)
        .anyMatch(line -> line.contains("is called as a row of the program's table is"))
        .anyMatch(line -> line.contains("No idea") && line.contains("Takes after"))
        .anyMatch(line -> line.contains("17 is out of range"));
    type(Plants.PLANT, 0, "Too thirsty");
    assertThat(number(Plants.PLANT_FACTOR, 0)).isEqualTo(0.6);
  }
}
