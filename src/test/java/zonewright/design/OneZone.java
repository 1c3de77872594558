package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

/** A design with one zone, into which a test types what a person would. */
final class OneZone {
  private final Design design;

  private OneZone(UnitSystem system) {
    design = Design.blank(system);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 0, 1));
  }

  static OneZone in(UnitSystem system) {
    return new OneZone(system);
  }

  static OneZone inUsUnits() {
    return new OneZone(UnitSystem.US);
  }

  Design design() {
    return design;
  }

  Book book() {
    return design.book();
  }

  /** Types into the zone, or into the site. */
  OneZone type(Column column, String text) {
    return type(column, 0, text);
  }

  OneZone type(Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
    assertThat(design.book().outcome(column.reference(), row))
        .as("%s typed into %s", text, column.name())
        .isNotInstanceOf(Outcome.Refused.class);
    return this;
  }

  /** Gives one month, counted from 0, this reference evapotranspiration and all others none. */
  OneZone onlyMonth(int month, String referenceEt) {
    for (int other = 0; other < 12; other++) {
      type(Climate.REFERENCE_ET, other, other == month ? referenceEt : "0");
    }
    return this;
  }

  /** Plants that take the reference evapotranspiration as it is, watered perfectly evenly. */
  OneZone plainDemand() {
    return type(Plants.PLANT_FACTOR, "1")
        .type(Emitters.DISTRIBUTION_UNIFORMITY, "100 %")
        .type(Demand.WATERING_DAYS, "1");
  }

  /** Gives the zone a precipitation rate: on 96.25 ft², so many gpm are so many in/h. */
  OneZone inchesAnHour(String rate) {
    return type(Emitters.AREA, "96.25 ft2").type(Emitters.ZONE_FLOW, rate + " gpm");
  }

  double number(Column column) {
    return number(column, 0);
  }

  double number(Column column, int row) {
    Outcome outcome = design.book().outcome(column.reference(), row);
    assertThat(outcome)
        .as("%s: %s", column.name(), outcome.sentence())
        .isInstanceOf(Outcome.Amount.class);
    return outcome.number();
  }

  Outcome outcome(Column column) {
    return design.book().outcome(column.reference(), 0);
  }

  /** The numbers of a cell's working, where unrounded values show. */
  String working(Column column) {
    return design.book().working(column.reference(), 0).numbers();
  }
}
