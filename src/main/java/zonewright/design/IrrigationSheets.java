package zonewright.design;

import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.TableDefinition;
import zonewright.soil.Soils;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.ScheduleRules;
import zonewright.water.SiteRules;

/** The sheets of an irrigation design: which columns stand where, in which order. */
public final class IrrigationSheets {
  private static final List<Column> SITE_COLUMNS =
      List.of(
          Facts.PROJECT_NAME,
          Facts.LOCATION,
          Facts.PREPARED_BY,
          Climate.PLACE,
          Climate.PEAK_MONTH,
          Climate.PEAK_REFERENCE_ET,
          Climate.PEAK_DAYS,
          Climate.YEAR_REFERENCE_ET,
          SiteRules.GROSS_METHOD,
          SiteRules.DAYS_ALLOWED,
          SiteRules.MOST_CYCLES,
          SiteRules.AVAILABLE_FLOW,
          SiteBudget.TOTAL_AREA,
          SiteBudget.SITE_WEEK,
          SiteBudget.SITE_PEAK_MONTH,
          SiteBudget.SITE_YEAR);

  private static final List<Column> MONTH_COLUMNS =
      List.of(
          Climate.MONTH,
          Climate.NUMBER,
          Climate.DAYS,
          Climate.REFERENCE_ET,
          Climate.DAILY_REFERENCE_ET,
          SiteBudget.PERCENT,
          SiteBudget.MONTH_VOLUME);

  private static final List<Column> PROGRAM_COLUMNS =
      List.of(
          SiteBudget.PROGRAM,
          SiteBudget.PROGRAM_MINUTES,
          SiteBudget.PROGRAM_WEEK,
          SiteBudget.PROGRAM_PEAK_MONTH,
          SiteBudget.PROGRAM_YEAR);

  private static final List<Column> ZONE_COLUMNS =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          SiteBudget.ZONE_PROGRAM,
          Emitters.AREA,
          Facts.ZONE_NOTE,
          Plants.PLANT,
          Plants.PLANT_FACTOR,
          Plants.DENSITY_FACTOR,
          Plants.MICROCLIMATE_FACTOR,
          Plants.LANDSCAPE_COEFFICIENT,
          Plants.ROOT_DEPTH,
          Plants.ALLOWED_DEPLETION,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.EMITTER_FLOW,
          Emitters.ZONE_FLOW,
          Emitters.HEAD_SPACING,
          Emitters.ROW_SPACING,
          Emitters.RATE_METHOD,
          Emitters.RATE_BY_AREA,
          Emitters.RATE_BY_SPACING,
          Emitters.PRECIPITATION_RATE,
          Emitters.DISTRIBUTION_UNIFORMITY,
          Emitters.IRRIGATION_EFFICIENCY,
          Soils.SOIL_TYPE,
          Soils.SLOPE,
          Soils.INTAKE_RATE,
          Soils.SURFACE_STORAGE,
          Soils.AVAILABLE_WATER,
          Demand.NET_DEMAND,
          Demand.RUN_TIME_MULTIPLIER,
          Demand.GROSS_DEMAND,
          Demand.RUN_TIME_PER_WEEK,
          Demand.DEPLETION_DEPTH,
          Demand.LONGEST_INTERVAL,
          Demand.DAYS_NEEDED,
          Demand.WATERING_DAYS,
          Demand.RUN_TIME,
          CycleAndSoak.LONGEST_CYCLE,
          CycleAndSoak.CYCLES,
          CycleAndSoak.CYCLE_MINUTES,
          CycleAndSoak.SOAK,
          ZoneBudget.MINUTES_GIVEN,
          ZoneBudget.VOLUME_PER_WATERING_DAY,
          ZoneBudget.VOLUME_PER_WEEK,
          ZoneBudget.VOLUME_PEAK_MONTH,
          ZoneBudget.VOLUME_PER_YEAR,
          ZoneBudget.SHARE);

  private static final Blueprint BLUEPRINT =
      new Blueprint(
          List.of(
              new TableDefinition(
                  SITE, "Site", "site", new TableDefinition.Rows.One(), SITE_COLUMNS),
              new TableDefinition(
                  MONTHS,
                  "Months",
                  "month",
                  new TableDefinition.Rows.Named(Climate.MONTH_NAMES),
                  MONTH_COLUMNS),
              new TableDefinition(
                  PROGRAMS,
                  "Programs",
                  "program",
                  new TableDefinition.Rows.Free(),
                  PROGRAM_COLUMNS),
              new TableDefinition(
                  ZONES, "Zones", "zone", new TableDefinition.Rows.Free(), ZONE_COLUMNS)));

  private IrrigationSheets() {}

  /** Returns all sheets and columns, checked. */
  public static Blueprint blueprint() {
    return BLUEPRINT;
  }

  /** Returns the reference tables that formulas look things up in. */
  public static List<ReferenceTable> referenceTables() {
    return List.of(Climate.PLACES, Plants.TYPES, Emitters.KINDS, Soils.TEXTURES);
  }

  /** Returns what to tell a designer, in the order in which it should be read. */
  public static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>(ScheduleRules.all());
    rules.add(Emitters.RATES_DIFFER);
    return List.copyOf(rules);
  }
}
