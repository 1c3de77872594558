package zonewright.water;

import static zonewright.trade.Sheets.DRYING_OUT;
import static zonewright.trade.Sheets.ZONES;

import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.soil.SoilLayers;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of how far the soil has dried after so many days of the peak month without watering. */
public final class DryingOut {
  public static final Column DAYS =
      Column.defaulted(
              ZONES, "dry-days", "Days without watering", QuantityKind.DAYS, Demand.LONGEST_GAP)
          .band(DRYING_OUT)
          .within(Bounds.from(0, 366, Units.DAY))
          .means(
              "For how many days of the peak month to look ahead: the longest gap of the week, unless you type another number, such as"
                  + " the days of a shut-off.")
          .source("Longest gap, unless typed over.")
          .build();

  public static final Column DEPTH =
      Column.calculated(
              ZONES,
              "dry-depth",
              "Depletion after those days",
              QuantityKind.DEPTH,
              Formula.smaller(SoilLayers.WATER_HELD, Demand.NET_DEMAND.times(DAYS)))
          .band(DRYING_OUT)
          .means(
              "Depth of water gone from the root zone after those days, beginning full; never more than it holds. Plants short of water"
                  + " slow down, which is not counted: the safe side.")
          .source(
              "Sum of daily use less rain that counts: FAO Irrigation and Drainage Paper 56 (1998), equation 85 without irrigation"
                  + " (verified).")
          .build();

  public static final Column SHARE =
      Column.calculated(
              ZONES,
              "dry-share",
              "Part depleted by then",
              QuantityKind.SHARE,
              DEPTH.over(SoilLayers.WATER_HELD))
          .band(DRYING_OUT)
          .means(
              "The same as a part of the water held: above the allowed depletion the plants feel it, at 100 % they wilt.")
          .source("By definition.")
          .build();

  private DryingOut() {}
}
