package zonewright.water;

import static zonewright.trade.Sheets.SCHEDULE;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.TUNING;
import static zonewright.trade.Sheets.ZONES;

import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Settings by which what is seen on the site changes the minutes, never the watering days. */
public final class TuningPercents {
  /** The least tuning of the site and of a zone, as a share. */
  public static final double LEAST = 0.5;

  /** The greatest tuning of the site and of a zone, as a share. */
  public static final double MOST = 1.5;

  private static final String NO_SOURCE =
      "Common practice, no source: 100 % until the site shows otherwise, 50 to 150 %.";

  public static final Column SITE_TUNING =
      Column.defaulted(SITE, "site-tuning", "Site tuning", QuantityKind.SHARE, Formula.number(1))
          .band(TUNING)
          .within(Bounds.from(LEAST, MOST, Units.ONE))
          .means(
              "How much more or less every zone runs than calculated, by what was seen on the site. It is in the minutes already:"
                  + " leave the controller at 100 %. It changes run times only, never watering days.")
          .source(NO_SOURCE)
          .build();

  public static final Column ZONE_TUNING =
      Column.defaulted(ZONES, "zone-tuning", "Zone tuning", QuantityKind.SHARE, Formula.number(1))
          .band(SCHEDULE)
          .within(Bounds.from(LEAST, MOST, Units.ONE))
          .means(
              "How much more or less this zone runs than calculated, by what was seen in it; on top of the site's. It"
                  + " changes run times only, never watering days.")
          .source(NO_SOURCE)
          .build();

  public static final Column STEP =
      Column.defaulted(SITE, "tuning-step", "Tuning step", QuantityKind.SHARE, Formula.number(0.1))
          .band(TUNING)
          .within(Bounds.from(0.01, 0.2, Units.ONE))
          .means(
              "The most that one piece of advice changes a tuning, in points. Plants and soil answer slowly: small steps, and"
                  + " some days between them.")
          .source("Common practice, no source: 10 points.")
          .build();

  private TuningPercents() {}

  /** Returns what the calculated minutes of a zone are multiplied by: both tunings. */
  static Formula both() {
    return SITE_TUNING.times(ZONE_TUNING);
  }
}
