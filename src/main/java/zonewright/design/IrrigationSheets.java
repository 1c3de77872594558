package zonewright.design;

import static zonewright.trade.Sheets.CANS;
import static zonewright.trade.Sheets.CONTROLLER;
import static zonewright.trade.Sheets.DAY_RULES;
import static zonewright.trade.Sheets.INSPECTION;
import static zonewright.trade.Sheets.MONTHLY;
import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.NIGHTS;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.RANGES;
import static zonewright.trade.Sheets.RECORD;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.STAGES;
import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.VERDICTS;
import static zonewright.trade.Sheets.WEATHER;
import static zonewright.trade.Sheets.ZONES;
import static zonewright.trade.Sheets.ZONE_NIGHTS;

import java.util.ArrayList;
import java.util.List;
import zonewright.alternatives.AlternativeSheets;
import zonewright.budget.LocalRule;
import zonewright.budget.MonthlyVolume;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.SiteNeed;
import zonewright.budget.WaterSense;
import zonewright.budget.YearBalance;
import zonewright.budget.ZoneBudget;
import zonewright.climate.CalculatedEt;
import zonewright.climate.Climate;
import zonewright.climate.HottestSpans;
import zonewright.climate.Peak;
import zonewright.climate.Radiation;
import zonewright.climate.Rain;
import zonewright.climate.RecordedWeather;
import zonewright.climate.Weather;
import zonewright.climate.WeatherSite;
import zonewright.emitters.Emitters;
import zonewright.emitters.FieldTested;
import zonewright.emitters.Spacings;
import zonewright.fieldwork.Cans;
import zonewright.fieldwork.CatchTests;
import zonewright.fieldwork.Inspection;
import zonewright.fieldwork.LowQuarter;
import zonewright.fieldwork.TestRules;
import zonewright.fieldwork.Verdicts;
import zonewright.fieldwork.Watching;
import zonewright.formula.ReferenceTable;
import zonewright.nights.NightSheet;
import zonewright.nights.SiteNights;
import zonewright.pipes.PipeRules;
import zonewright.pipes.PipeSheets;
import zonewright.pipes.PipeTables;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.soil.Salinity;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.water.AllowedDates;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.DroughtStages;
import zonewright.water.DryingOut;
import zonewright.water.InputRange;
import zonewright.water.MonthlySchedule;
import zonewright.water.ScheduleRules;
import zonewright.water.SiteRules;
import zonewright.water.TuningPercents;
import zonewright.water.WateringPattern;
import zonewright.weather.YearsOfWeather;

/** The sheets of an irrigation design: which columns stand where, in which order. */
public final class IrrigationSheets {
  private static final List<Column> SITE_COLUMNS =
      List.of(
          Facts.PROJECT_NAME,
          Facts.LOCATION,
          Facts.PREPARED_BY,
          Facts.OFFICE,
          AlternativeSheets.COMPARED,
          WeatherSite.ET_METHOD,
          Climate.PLACE,
          WeatherSite.DESCRIBED_CLIMATE,
          Climate.ORIGIN,
          WeatherSite.WEATHER_FROM,
          RecordedWeather.YEARS_COVERED,
          RecordedWeather.ORIGIN,
          RecordedWeather.SEASON,
          Peak.CHOICE,
          Peak.BASELINE,
          Peak.MONTH,
          Peak.REFERENCE_ET,
          Peak.EFFECTIVE_RAIN,
          Peak.DAYS,
          MonthlySchedule.MONTH,
          MonthlySchedule.MONTH_NUMBER,
          SiteNeed.COUNTED_AREA,
          SiteNeed.PEAK,
          Climate.YEAR_REFERENCE_ET,
          Climate.PRINTED_YEAR,
          Spacings.WIND,
          WeatherSite.LATITUDE,
          WeatherSite.ELEVATION,
          WeatherSite.WIND_HEIGHT,
          WeatherSite.RADIATION_COEFFICIENT,
          WeatherSite.AIR_PRESSURE,
          WeatherSite.PSYCHROMETRIC_CONSTANT,
          Plants.BASIS,
          Plants.BASIS_PLACE,
          Rain.METHOD,
          Rain.COUNTED_SHARE,
          Rain.USABLE_STORAGE,
          Rain.MEAN_COEFFICIENT,
          SiteRules.GROSS_METHOD,
          SiteRules.DEPLETION_METHOD,
          SiteRules.WEEKDAYS,
          SiteRules.DAYS_ALLOWED,
          AllowedDays.HOUSE_NUMBER,
          AllowedDays.DIGIT_PLACE,
          AllowedDates.ALLOWED,
          AllowedDates.IN_FORCE,
          DroughtStages.NO_WATER_FROM,
          DroughtStages.NO_WATER_UNTIL,
          DroughtStages.IN_FORCE,
          DroughtStages.DAYS,
          DroughtStages.KEPT,
          DroughtStages.CLOSED_FROM,
          DroughtStages.CLOSED_UNTIL,
          AllowedDays.IN_FORCE,
          AllowedDays.BY_RULE,
          SiteRules.AVAILABLE_FLOW,
          Controller.KIND,
          Controller.START_RUNS,
          Controller.PROGRAMS,
          Controller.PROGRAMS_AT_ONCE,
          Controller.STARTS,
          Controller.STATIONS,
          SiteNights.MOST_VALVES,
          Controller.MINUTE_STEP,
          Controller.LONGEST_RUN,
          Controller.LONGEST_RUN_KEYED,
          Controller.PERCENT_STEP,
          Controller.DAY_PATTERNS,
          Controller.KEYED_IN,
          SiteNights.GAP,
          SiteNights.FIRST_NIGHT,
          AllowedDays.LONGEST_GAPS.get(0),
          AllowedDays.LONGEST_GAPS.get(1),
          AllowedDays.LONGEST_GAPS.get(2),
          AllowedDays.LONGEST_GAPS.get(3),
          AllowedDays.LONGEST_GAPS.get(4),
          AllowedDays.LONGEST_GAPS.get(5),
          AllowedDays.LONGEST_GAPS.get(6),
          Salinity.OF_THE_WATER,
          SiteBudget.TOTAL_AREA,
          SiteBudget.MEAN_COEFFICIENT,
          SiteBudget.SITE_WEEK,
          SiteBudget.SITE_PEAK_MONTH,
          SiteBudget.SITE_YEAR,
          WaterSense.APPLIES,
          WaterSense.MONTH_ET,
          WaterSense.MONTH_RAIN,
          WaterSense.ALLOWANCE,
          WaterSense.SITE_REQUIRED,
          WaterSense.LEFT_OVER,
          Ordinance.APPLIES,
          Ordinance.LAND_USE,
          Ordinance.ADJUSTMENT_FACTOR,
          Ordinance.RAIN_CREDITED,
          Ordinance.ANNUAL_CHOICE,
          Ordinance.ANNUAL_USED,
          Ordinance.ANNUAL_ET,
          Ordinance.YEAR_ET,
          Ordinance.SITE_SPECIAL,
          Ordinance.MAXIMUM,
          Ordinance.SITE_ESTIMATED_USE,
          Ordinance.LEFT_OVER,
          Ordinance.MEAN_FACTOR,
          LocalRule.VOLUME,
          LocalRule.SHARE,
          LocalRule.LIMIT,
          LocalRule.LEFT_OVER,
          TuningPercents.SITE_TUNING,
          TuningPercents.STEP,
          Watching.TOLERANCE,
          InputRange.REFERENCE_ET.least(),
          InputRange.REFERENCE_ET.greatest(),
          InputRange.RAIN.least(),
          InputRange.RAIN.greatest());

  private static final List<Column> MONTH_COLUMNS =
      List.of(
          Climate.MONTH,
          Climate.NUMBER,
          Climate.DAYS,
          Climate.REFERENCE_ET,
          Climate.DAILY_REFERENCE_ET,
          Rain.MONTH_RAIN,
          Rain.EFFECTIVE,
          Rain.DAILY_EFFECTIVE,
          SiteNeed.COVERED,
          SiteNeed.THIRSTY_AREA,
          SiteNeed.THIRSTY_WEIGHTED,
          SiteNeed.NEED,
          Peak.RANKING,
          SiteBudget.PERCENT,
          SiteBudget.PEAK_DAYS_WORTH,
          SiteBudget.MONTH_VOLUME,
          SiteBudget.PERCENT_BY_VOLUME,
          SiteBudget.PERCENT_TO_KEY_IN,
          YearBalance.NEED,
          YearBalance.FROM_RAIN,
          YearBalance.ALLOWED,
          WaterSense.MONTH_RANKING,
          Watching.COUNT,
          Watching.MEAN,
          Watching.STRAYS);

  private static final List<Column> WEATHER_COLUMNS =
      List.of(
          Weather.MONTH,
          Weather.NUMBER,
          Weather.HIGHEST,
          Weather.LOWEST,
          Weather.DEW_POINT,
          Weather.HIGHEST_HUMIDITY,
          Weather.LOWEST_HUMIDITY,
          Weather.MEAN_HUMIDITY,
          Weather.WIND,
          Weather.SUNSHINE,
          Weather.SOLAR_RADIATION_MEASURED,
          Weather.MEAN_TEMPERATURE,
          Weather.SATURATION_PRESSURE,
          Weather.VAPOUR_PRESSURE,
          Weather.SLOPE_OF_SATURATION,
          Weather.WIND_AT_TWO_METRES,
          Radiation.DAY_OF_YEAR,
          Radiation.DECLINATION,
          Radiation.SUNSET_ANGLE,
          Radiation.EXTRATERRESTRIAL_RADIATION,
          Radiation.DAYLIGHT,
          Radiation.CLEAR_SKY_RADIATION,
          Radiation.SOLAR_RADIATION,
          Radiation.NET_LONG_WAVE,
          Radiation.NET_RADIATION,
          CalculatedEt.SOIL_HEAT_FLUX,
          CalculatedEt.PENMAN_MONTEITH,
          CalculatedEt.HARGREAVES);

  private static final List<Column> RECORD_COLUMNS =
      List.of(
          RecordedWeather.SPAN,
          RecordedWeather.DAYS,
          RecordedWeather.YEARS,
          RecordedWeather.MEAN,
          RecordedWeather.IN_FIVE,
          RecordedWeather.IN_EIGHT,
          RecordedWeather.IN_NINE,
          RecordedWeather.USED,
          RecordedWeather.USED_A_DAY,
          HottestSpans.AGAINST_PEAK,
          RecordedWeather.RAIN,
          RecordedWeather.EFFECTIVE_RAIN,
          RecordedWeather.FROST,
          RecordedWeather.GROWING);

  private static final List<Column> PROGRAM_COLUMNS =
      List.of(
          SiteBudget.PROGRAM,
          SiteNights.START_WISH,
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
          Plants.LANDSCAPE_COEFFICIENT,
          Plants.ROOT_DEPTH,
          Plants.ALLOWED_DEPLETION,
          Plants.DENSITY_FACTOR,
          Plants.MICROCLIMATE_FACTOR,
          Plants.SECOND_PLANT,
          Plants.SECOND_SHARE,
          Plants.MIXED,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.EMITTER_FLOW,
          Emitters.ZONE_FLOW,
          Emitters.PRECIPITATION_RATE,
          Emitters.DISTRIBUTION_UNIFORMITY,
          Emitters.IRRIGATION_EFFICIENCY,
          Emitters.RATE_METHOD,
          Emitters.RATE_BY_AREA,
          Emitters.HEAD_SPACING,
          Emitters.ROW_SPACING,
          Spacings.THROW,
          Spacings.PATTERN,
          Spacings.SHARE,
          Spacings.LARGEST_SPACING,
          Spacings.LARGEST_ROWS,
          Emitters.RATE_BY_SPACING,
          Emitters.PLANT_COUNT,
          Emitters.CANOPY,
          Emitters.RATE_BY_CANOPY,
          Emitters.WETTED_WIDTH,
          Emitters.DRIP_RATE,
          Emitters.WETTED_RATE,
          FieldTested.TESTS_IN_USE,
          FieldTested.RATE_BY_TEST,
          FieldTested.TESTED_UNIFORMITY,
          Soils.SOIL_TYPE,
          Soils.SLOPE,
          Soils.COMPACTION,
          Soils.INTAKE_RATE,
          Soils.SURFACE_STORAGE,
          Soils.AVAILABLE_WATER,
          Soils.FIELD_CAPACITY,
          Soils.WILTING_POINT,
          Soils.AVAILABLE_BY_REPORT,
          SoilLayers.SECOND_SOIL,
          SoilLayers.UPPER_DEPTH,
          SoilLayers.SECOND_AVAILABLE,
          SoilLayers.ROOTED_ABOVE,
          SoilLayers.WATER_HELD,
          Salinity.TOLERATED,
          Salinity.OF_THE_DRAINAGE,
          Salinity.LEACHING_REQUIREMENT,
          Demand.PEAK_NEED,
          Demand.NET_DEMAND,
          Demand.RUN_TIME_MULTIPLIER,
          Demand.GROSS_DEMAND,
          TuningPercents.ZONE_TUNING,
          Demand.NEED_PER_WEEK,
          Demand.RUN_TIME_PER_WEEK,
          Demand.DEPLETION_USED,
          Demand.DEPLETION_DEPTH,
          Demand.LONGEST_INTERVAL,
          Demand.DAYS_NEEDED,
          Demand.WATERING_DAYS,
          Demand.LONGEST_GAP,
          Demand.RUN_TIME,
          CycleAndSoak.LONGEST_CYCLE,
          CycleAndSoak.MOST_MINUTES,
          CycleAndSoak.CYCLES,
          CycleAndSoak.CYCLE_MINUTES,
          CycleAndSoak.SOAK,
          DryingOut.DAYS,
          DryingOut.DEPTH,
          DryingOut.SHARE,
          CycleAndSoak.APPLIED,
          ZoneBudget.WEIGHTED_AREA,
          SiteNeed.COUNTED_COEFFICIENT,
          CycleAndSoak.MINUTES_GIVEN,
          CycleAndSoak.EXCESS_OF_ROUNDING,
          ZoneBudget.VOLUME_PER_WATERING_DAY,
          ZoneBudget.VOLUME_PER_WEEK,
          ZoneBudget.VOLUME_PEAK_MONTH,
          ZoneBudget.VOLUME_PER_YEAR,
          ZoneBudget.SHARE,
          WaterSense.REQUIRED,
          WaterSense.ABOVE_SHARE,
          WaterSense.LEAST_CUT,
          Ordinance.SPECIAL,
          Ordinance.SPECIAL_AREA,
          Ordinance.ZONE_FACTOR,
          Ordinance.REGULAR_WEIGHTED,
          Ordinance.ESTIMATED_USE,
          Ordinance.ABOVE_SHARE,
          Ordinance.LEAST_CUT,
          Ordinance.FACTOR_WANTED,
          LocalRule.ABOVE_SHARE,
          LocalRule.LEAST_CUT);

  private static final List<Column> ZONE_NIGHT_COLUMNS =
      List.of(
          WateringPattern.ZONE,
          WateringPattern.ORDER,
          WateringPattern.PATTERN,
          WateringPattern.OWN_DAYS,
          WateringPattern.EVERY,
          WateringPattern.PATTERN_A_WEEK,
          WateringPattern.PATTERN_GAP,
          Demand.WATERINGS_A_WEEK);

  private static final Schema BLUEPRINT = new Schema(tables());

  private static List<TableDefinition> tables() {
    List<TableDefinition> tables =
        new ArrayList<>(
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
                    WEATHER,
                    "Weather",
                    "month",
                    new TableDefinition.Rows.Named(Climate.MONTH_NAMES),
                    WEATHER_COLUMNS),
                new TableDefinition(
                    RECORD,
                    "Record",
                    "span",
                    new TableDefinition.Rows.Named(recordRows()),
                    RECORD_COLUMNS),
                new TableDefinition(
                    PROGRAMS,
                    "Programs",
                    "program",
                    new TableDefinition.Rows.Free(),
                    PROGRAM_COLUMNS),
                PipeSheets.supply(),
                PipeSheets.valves(),
                PipeSheets.materials(),
                new TableDefinition(
                    STAGES,
                    "Stages",
                    "stage",
                    new TableDefinition.Rows.Free(),
                    DroughtStages.ofStage()),
                new TableDefinition(
                    DAY_RULES,
                    "DayRules",
                    "rule",
                    new TableDefinition.Rows.Free(),
                    AllowedDays.ofRule()),
                new TableDefinition(
                    NIGHTS,
                    "Nights",
                    "night",
                    new TableDefinition.Rows.Named(AllowedDays.DAY_NAMES),
                    NightSheet.columns()),
                new TableDefinition(
                    ZONES, "Zones", "zone", new TableDefinition.Rows.Free(), ZONE_COLUMNS),
                PipeSheets.pipes(),
                new TableDefinition(
                    ZONE_NIGHTS,
                    "ZoneNights",
                    "zone",
                    new TableDefinition.Rows.Alongside(ZONES),
                    ZONE_NIGHT_COLUMNS),
                new TableDefinition(
                        MONTHLY,
                        "Monthly",
                        "zone",
                        new TableDefinition.Rows.Alongside(ZONES),
                        monthlyColumns())
                    .without(MonthlySchedule.GONE),
                new TableDefinition(
                    RANGES,
                    "Ranges",
                    "zone",
                    new TableDefinition.Rows.Alongside(ZONES),
                    InputRange.columns()),
                field(TESTS, "Tests", "test", testColumns()),
                field(CANS, "Cans", "can", Cans.ALL),
                field(INSPECTION, "Inspection", "item", Inspection.ALL),
                field(CONTROLLER, "Controller", "reading", Watching.ALL),
                field(VERDICTS, "Verdicts", "look", Verdicts.ALL)));
    tables.addAll(PricingSheets.tables(ofZones()));
    tables.addAll(OwnTables.sheets());
    tables.add(OwnColumnSheet.table(tables.stream().map(TableDefinition::title).toList()));
    tables.addAll(AlternativeSheets.tables());
    tables.replaceAll(table -> table.about(SheetPurposes.of(table.id())));
    return tables;
  }

  /** The months, and the hottest spans of the years below them. */
  private static List<String> recordRows() {
    List<String> rows = new ArrayList<>(Climate.MONTH_NAMES);
    YearsOfWeather.SPANS.forEach(days -> rows.add("Hottest %s days".formatted(days)));
    return rows;
  }

  /** All columns that say something of a zone by itself, wherever they stand. */
  private static List<Column> ofZones() {
    List<Column> columns = new ArrayList<>(ZONE_COLUMNS);
    columns.addAll(ZONE_NIGHT_COLUMNS.subList(1, ZONE_NIGHT_COLUMNS.size()));
    columns.addAll(monthlyColumns());
    return columns;
  }

  private static List<Column> monthlyColumns() {
    List<Column> columns = new ArrayList<>(MonthlySchedule.all());
    columns.add(columns.indexOf(MonthlySchedule.SOAK) + 1, MonthlyVolume.OF_THE_MONTH);
    columns.addAll(MonthlyVolume.VOLUMES);
    columns.add(MonthlyVolume.YEAR);
    return columns;
  }

  private static List<Column> testColumns() {
    List<Column> columns = new ArrayList<>(CatchTests.ALL);
    columns.addAll(LowQuarter.ALL);
    return columns;
  }

  private IrrigationSheets() {}

  /** A sheet that stays empty until somebody has been on the site. */
  private static TableDefinition field(
      String id, String title, String rowWord, List<Column> columns) {
    return new TableDefinition(id, title, rowWord, new TableDefinition.Rows.Free(), columns);
  }

  /** Returns all sheets and columns, checked. */
  public static Schema schema() {
    return BLUEPRINT;
  }

  /** Returns the reference tables that formulas look things up in. */
  public static List<ReferenceTable> referenceTables() {
    List<ReferenceTable> tables =
        new ArrayList<>(
            List.of(
                Climate.PLACES,
                WeatherSite.DESCRIPTIONS,
                Plants.TYPES,
                Emitters.KINDS,
                Spacings.SHARES,
                Soils.TEXTURES,
                SiteRules.WEEKDAY_SETS,
                AllowedDays.NUMBERED_SETS,
                AllowedDays.HOUSE_NUMBERS));
    tables.addAll(PipeTables.all());
    return List.copyOf(tables);
  }

  /** Returns what to tell a designer, in the order in which it should be read. */
  public static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>(ScheduleRules.all());
    rules.replaceAll(
        rule ->
            rule.id().equals("flow-too-great")
                ? rule.curedBy("Split it evenly", EvenSplit.REMEDY)
                : rule);
    rules.addAll(Salinity.rules());
    rules.addAll(DroughtStages.rules());
    rules.addAll(AllowedDays.rules());
    rules.addAll(AllowedDates.rules());
    rules.addAll(WateringPattern.rules());
    rules.addAll(NightSheet.rules());
    rules.addAll(InputRange.rules());
    rules.add(Emitters.RATES_DIFFER);
    rules.add(Spacings.TOO_FAR);
    rules.add(Spacings.ROWS_TOO_FAR);
    rules.add(SiteBudget.ABOVE_PEAK);
    rules.add(SiteBudget.ABOVE_PEAK_BY_VOLUME);
    rules.add(Peak.ONLY_DESCRIBED);
    rules.add(HottestSpans.FEW_YEARS);
    rules.add(WaterSense.EXCEEDED);
    rules.add(WaterSense.CHANGE);
    rules.add(Ordinance.EXCEEDED);
    rules.add(Ordinance.CHANGE);
    rules.add(Ordinance.MEAN_TOO_HIGH);
    rules.add(Ordinance.ANNUAL_VALUES_DIFFER);
    rules.add(LocalRule.EXCEEDED);
    rules.addAll(TestRules.all());
    rules.add(Inspection.URGENT_AND_OPEN);
    rules.add(Inspection.TOO_MUCH_FLOW);
    rules.add(Inspection.TOO_LITTLE_FLOW);
    rules.add(Watching.TOO_MUCH);
    rules.add(Watching.TOO_LITTLE);
    rules.add(Watching.SHUT_OFF);
    rules.add(LocalRule.CHANGE);
    rules.addAll(PipeRules.all());
    rules.addAll(PricingSheets.rules());
    return List.copyOf(rules);
  }
}
