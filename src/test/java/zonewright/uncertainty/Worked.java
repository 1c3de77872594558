package zonewright.uncertainty;

import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

/** One zone as worked examples have it, everything sure until a test says otherwise. */
final class Worked {
  private final Design design = Design.blank(UnitSystem.US);

  private Worked() {
    design.book().start(design.edits().inserted(Sheets.ZONES, 0, 1));
  }

  /**
   * Returns a zone that is watered once a week for 22 minutes.
   *
   * @param rate its precipitation rate, in/h
   * @param storage what may stand on its surface, in
   */
  static Worked zone(String rate, String storage) {
    return new Worked()
        .month(6, "2.598")
        .type(Plants.PLANT, "annual flowers")
        .type(Plants.PLANT_FACTOR, "1")
        .type(Plants.ALLOWED_DEPLETION, "50 %")
        .type(Plants.ROOT_DEPTH, "12")
        .type(Emitters.EMITTER, "fixed spray")
        .type(Emitters.DISTRIBUTION_UNIFORMITY, "100 %")
        .type(Emitters.AREA, "1000")
        .type(Emitters.ZONE_FLOW, "10")
        .type(Emitters.PRECIPITATION_RATE, rate)
        .type(Soils.SOIL_TYPE, "loam")
        .type(Soils.AVAILABLE_WATER, "2")
        .type(Soils.SURFACE_STORAGE, storage)
        .type(Demand.WATERING_DAYS, "1");
  }

  /** Gives one month this reference ET and all others none. */
  Worked month(int month, String depth) {
    for (int other = 0; other < 12; other++) {
      RangedGarden.type(design, Climate.REFERENCE_ET, other, other == month ? depth : "0");
    }
    return this;
  }

  Worked type(Column column, String text) {
    RangedGarden.type(design, column, 0, text);
    return this;
  }

  Design design() {
    return design;
  }

  HowSure sure() {
    return HowSure.of(design.book().snapshot());
  }
}
