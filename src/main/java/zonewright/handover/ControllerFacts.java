package zonewright.handover;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** The facts of a zone that weather-based controllers ask for, in the words of the trade. */
public final class ControllerFacts {
  private static final List<Column> PLANTS_AND_SOIL =
      List.of(
          Plants.PLANT,
          Plants.LANDSCAPE_COEFFICIENT,
          Plants.ROOT_DEPTH,
          Demand.DEPLETION_USED,
          Soils.SOIL_TYPE,
          Soils.AVAILABLE_WATER,
          Soils.INTAKE_RATE,
          Soils.SLOPE);

  private static final List<Column> WATER =
      List.of(
          Emitters.EMITTER,
          Emitters.PRECIPITATION_RATE,
          Emitters.DISTRIBUTION_UNIFORMITY,
          Emitters.AREA,
          Emitters.ZONE_FLOW,
          CycleAndSoak.LONGEST_CYCLE,
          CycleAndSoak.SOAK);

  private ControllerFacts() {}

  /** Returns what it asks about plants and soil. */
  public static List<Column> plantsAndSoil() {
    return PLANTS_AND_SOIL;
  }

  /** Returns what it asks about water. */
  public static List<Column> water() {
    return WATER;
  }
}
