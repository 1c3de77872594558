package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.budget.Ordinance;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Working;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

/** Whatever rests on reference evapotranspiration says where that comes from. */
class OriginTest {
  @Test
  void runTimesAndAllowancesSayWhereTheClimateComesFrom() {
    Book book = Demo.libraryGarden(UnitSystem.US).book();
    String origin = book.outcome(Climate.ORIGIN.reference(), 0).sentence();
    for (Column column : new Column[] {Demand.RUN_TIME, Ordinance.MAXIMUM}) {
      Working working = book.working(column.reference(), 0);
      assertThat(working.rests()).extracting(Working.Input::column).contains(Climate.ORIGIN);
      assertThat(working.asText()).contains("Rests on Origin of reference ET: ").contains(origin);
    }
  }

  @Test
  void whatTheClimateDoesNotTouchSaysNothingOfIt() {
    Book book = Demo.libraryGarden(UnitSystem.US).book();
    for (Column column : new Column[] {Emitters.PRECIPITATION_RATE, Soils.INTAKE_RATE}) {
      assertThat(book.working(column.reference(), 0).rests()).isEmpty();
    }
  }
}
