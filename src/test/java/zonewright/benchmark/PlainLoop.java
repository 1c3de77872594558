package zonewright.benchmark;

import java.util.LinkedHashMap;
import java.util.Map;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteNeed;
import zonewright.budget.WaterSense;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.water.AllowedDays;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.DryingOut;
import zonewright.water.MonthlySchedule;
import zonewright.water.SiteRules;

/**
 * All columns of the zones that follow from others, as a programmer would write them for US units
 * only: arrays in, arrays out, a loop for each group of columns, no names, no reasons. What is the
 * same for the whole site is fetched once, before the loops.
 */
final class PlainLoop {
  private static final double NONE = Double.NaN;

  private final int count;
  private final double[] plantFactors =
      list(Plants.TYPES.numbers("Plant factor", QuantityKind.FACTOR));
  private final double[] rootDepths =
      list(Plants.TYPES.numbers("Root depth (in)", QuantityKind.DEPTH));
  private final double[] depletions =
      list(Plants.TYPES.numbers("Allowed depletion", QuantityKind.SHARE));
  private final double[] uniformities =
      list(Emitters.KINDS.numbers("Distribution uniformity", QuantityKind.SHARE));
  private final double[] efficiencies =
      list(Emitters.KINDS.numbers("Irrigation efficiency", QuantityKind.SHARE));
  private final boolean[] drip = new boolean[efficiencies.length];
  private final double[] intakeRates =
      list(Soils.TEXTURES.numbers("Intake rate (in/h)", QuantityKind.RATE));
  private final double[][] storages = {
    list(Soils.TEXTURES.numbers("Surface storage 0-3 % (in)", QuantityKind.DEPTH)),
    list(Soils.TEXTURES.numbers("Surface storage 4-6 % (in)", QuantityKind.DEPTH)),
    list(Soils.TEXTURES.numbers("Surface storage 7-12 % (in)", QuantityKind.DEPTH)),
    list(Soils.TEXTURES.numbers("Surface storage over 12 % (in)", QuantityKind.DEPTH))
  };
  private final double[] availableWaters =
      list(Soils.TEXTURES.numbers("Available water (in/ft)", QuantityKind.STORAGE));

  private final double peak;
  private final double rain;
  private final double[] gaps;
  private final double[] fewestDays = new double[8];
  private final double peakDays;
  private final double allowedDays;
  private final boolean byEfficiency;
  private final boolean byDemand;
  private final double allowanceEt;
  private final double allowanceRain;
  private final double yearEt;
  private final double adjustment;
  private final boolean[] counted;
  private final Map<Column, double[]> typed = new LinkedHashMap<>();
  final Map<Column, double[]> results = new LinkedHashMap<>();
  private final PlainMonths months;
  private final PlainCuts cuts;

  PlainLoop(Design design) {
    Book book = design.book();
    count = book.rows(Sheets.ZONES);
    for (int kind = 0; kind < drip.length; kind++) {
      drip[kind] = Emitters.KINDS.keys().get(kind).contains("drip");
    }
    peak = book.number(Peak.REFERENCE_ET.reference(), 0);
    rain = book.number(Peak.EFFECTIVE_RAIN.reference(), 0);
    gaps =
        AllowedDays.LONGEST_GAPS.stream()
            .mapToDouble(column -> book.number(column.reference(), 0))
            .toArray();
    for (int interval = 1; interval <= 7; interval++) {
      int days = 1;
      while (days < 7 && gaps[days - 1] > interval) {
        days++;
      }
      fewestDays[interval] = days;
    }
    peakDays = book.number(Peak.DAYS.reference(), 0);
    allowedDays = book.number(SiteRules.DAYS_ALLOWED.reference(), 0);
    byEfficiency = book.number(SiteRules.GROSS_METHOD.reference(), 0) == 1;
    byDemand = book.number(SiteRules.DEPLETION_METHOD.reference(), 0) == 1;
    allowanceEt = book.number(WaterSense.MONTH_ET.reference(), 0);
    allowanceRain = book.number(WaterSense.MONTH_RAIN.reference(), 0);
    yearEt = book.number(Climate.YEAR_REFERENCE_ET.reference(), 0);
    adjustment = book.number(Ordinance.ADJUSTMENT_FACTOR.reference(), 0);
    months = new PlainMonths(book, results);
    counted = new boolean[count];
    for (int row = 0; row < count; row++) {
      counted[row] = book.counts(Sheets.ZONES, row);
    }
    cuts = new PlainCuts(book, counted, results);
    for (Column column : book.schema().table(Sheets.ZONES).columns()) {
      if (column.takesEntries()) {
        double[] numbers = new double[count];
        for (int row = 0; row < count; row++) {
          boolean blank = book.entry(column.reference(), row) instanceof Entry.Blank;
          numbers[row] = blank ? NONE : book.number(column.reference(), row);
        }
        typed.put(column, numbers);
      }
    }
  }

  private static double[] list(ReferenceTable.Numbers numbers) {
    return numbers.values(UnitSystem.US);
  }

  private double[] in(Column column) {
    return typed.get(column);
  }

  private double[] out(Column column) {
    return results.computeIfAbsent(column, any -> new double[count]);
  }

  /** Returns how many numbers a run calculates. */
  long cells() {
    return (long) results.size() * count;
  }

  static double or(double typed, double usual) {
    return Double.isNaN(typed) ? usual : typed;
  }

  static double up(double value) {
    return Math.ceil(Math.max(0, value - 1e-9));
  }

  private static double down(double value) {
    return Math.floor(value + 1e-9);
  }

  static boolean atMost(double left, double right) {
    return left - right <= 0x1p-48 * Math.abs(right);
  }

  static double over(double above, double below) {
    return below == 0 ? NONE : above / below;
  }

  private static double at(double[] list, double position) {
    return Double.isNaN(position) ? NONE : list[(int) position];
  }

  /** Calculates every column. */
  void run() {
    plants();
    application();
    soil();
    months.needs();
    demand();
    days();
    cycles();
    volumes();
    months.run();
    shares();
    allowances();
    cuts.run(in(Emitters.AREA));
  }

  private void plants() {
    double[] plant = in(Plants.PLANT);
    double[] secondPlant = in(Plants.SECOND_PLANT);
    double[] secondShare = in(Plants.SECOND_SHARE);
    double[] typedMixed = in(Plants.MIXED);
    double[] typedPlantFactor = in(Plants.PLANT_FACTOR);
    double[] typedDensity = in(Plants.DENSITY_FACTOR);
    double[] typedMicroclimate = in(Plants.MICROCLIMATE_FACTOR);
    double[] typedRootDepth = in(Plants.ROOT_DEPTH);
    double[] typedDepletion = in(Plants.ALLOWED_DEPLETION);
    double[] mixed = out(Plants.MIXED);
    double[] plantFactor = out(Plants.PLANT_FACTOR);
    double[] density = out(Plants.DENSITY_FACTOR);
    double[] microclimate = out(Plants.MICROCLIMATE_FACTOR);
    double[] coefficient = out(Plants.LANDSCAPE_COEFFICIENT);
    double[] rootDepth = out(Plants.ROOT_DEPTH);
    double[] depletion = out(Plants.ALLOWED_DEPLETION);
    for (int i = 0; i < count; i++) {
      mixed[i] = or(typedMixed[i], 0);
      double usual = at(plantFactors, plant[i]);
      if (!Double.isNaN(secondPlant[i])) {
        double second = plantFactors[(int) secondPlant[i]];
        usual =
            mixed[i] == 1
                ? usual * (1 - secondShare[i]) + second * secondShare[i]
                : Math.max(usual, second);
      }
      plantFactor[i] = or(typedPlantFactor[i], usual);
      density[i] = or(typedDensity[i], 1);
      microclimate[i] = or(typedMicroclimate[i], 1);
      coefficient[i] = plantFactor[i] * density[i] * microclimate[i];
      rootDepth[i] = or(typedRootDepth[i], at(rootDepths, plant[i]));
      depletion[i] = or(typedDepletion[i], at(depletions, plant[i]));
    }
  }

  private void application() {
    double[] emitter = in(Emitters.EMITTER);
    double[] area = in(Emitters.AREA);
    double[] heads = in(Emitters.EMITTER_COUNT);
    double[] headFlow = in(Emitters.EMITTER_FLOW);
    double[] headSpacing = in(Emitters.HEAD_SPACING);
    double[] rowSpacing = in(Emitters.ROW_SPACING);
    double[] plants = in(Emitters.PLANT_COUNT);
    double[] canopy = in(Emitters.CANOPY);
    double[] typedFlow = in(Emitters.ZONE_FLOW);
    double[] typedMethod = in(Emitters.RATE_METHOD);
    double[] typedUniformity = in(Emitters.DISTRIBUTION_UNIFORMITY);
    double[] typedEfficiency = in(Emitters.IRRIGATION_EFFICIENCY);
    double[] flow = out(Emitters.ZONE_FLOW);
    double[] method = out(Emitters.RATE_METHOD);
    double[] byArea = out(Emitters.RATE_BY_AREA);
    double[] bySpacing = out(Emitters.RATE_BY_SPACING);
    double[] byCanopy = out(Emitters.RATE_BY_CANOPY);
    double[] rate = out(Emitters.PRECIPITATION_RATE);
    double[] uniformity = out(Emitters.DISTRIBUTION_UNIFORMITY);
    double[] efficiency = out(Emitters.IRRIGATION_EFFICIENCY);
    double[] wettedWidth = out(Emitters.WETTED_WIDTH);
    double[] typedWidth = in(Emitters.WETTED_WIDTH);
    double[] dripRate = out(Emitters.DRIP_RATE);
    double[] wettedRate = out(Emitters.WETTED_RATE);
    for (int i = 0; i < count; i++) {
      flow[i] = or(typedFlow[i], heads[i] * headFlow[i]);
      method[i] = or(typedMethod[i], 0);
      byArea[i] = over(96.25 * flow[i], area[i]);
      bySpacing[i] =
          Double.isNaN(headSpacing[i]) || Double.isNaN(rowSpacing[i])
              ? NONE
              : over(96.25 * headFlow[i], headSpacing[i] * rowSpacing[i]);
      byCanopy[i] =
          Double.isNaN(plants[i]) || Double.isNaN(canopy[i])
              ? NONE
              : over(96.25 * flow[i], plants[i] * (Math.PI / 4) * canopy[i] * canopy[i]);
      rate[i] = method[i] == 1 ? bySpacing[i] : method[i] == 2 ? byCanopy[i] : byArea[i];
      wettedWidth[i] = or(typedWidth[i], 1.5);
      dripRate[i] =
          Double.isNaN(rowSpacing[i])
              ? 96.25 * headFlow[i] / (Math.PI / 4 * wettedWidth[i] * wettedWidth[i])
              : rate[i] * rowSpacing[i] / wettedWidth[i];
      boolean drips = !Double.isNaN(emitter[i]) && drip[(int) emitter[i]];
      wettedRate[i] = drips ? Math.max(rate[i], dripRate[i]) : rate[i];
      uniformity[i] = or(typedUniformity[i], at(uniformities, emitter[i]));
      efficiency[i] = or(typedEfficiency[i], at(efficiencies, emitter[i]));
    }
  }

  private void soil() {
    double[] soil = in(Soils.SOIL_TYPE);
    double[] slope = in(Soils.SLOPE);
    double[] typedIntake = in(Soils.INTAKE_RATE);
    double[] typedStorage = in(Soils.SURFACE_STORAGE);
    double[] typedAvailable = in(Soils.AVAILABLE_WATER);
    double[] typedCompaction = in(Soils.COMPACTION);
    double[] compaction = out(Soils.COMPACTION);
    double[] intake = out(Soils.INTAKE_RATE);
    double[] storage = out(Soils.SURFACE_STORAGE);
    double[] available = out(Soils.AVAILABLE_WATER);
    for (int i = 0; i < count; i++) {
      compaction[i] = or(typedCompaction[i], 0);
      double left = compaction[i] == 0 ? 1 : compaction[i] == 1 ? 0.5 : 0.2;
      intake[i] = or(typedIntake[i], at(intakeRates, soil[i]) * left);
      int group =
          atMost(slope[i], 0.03) ? 0 : atMost(slope[i], 0.06) ? 1 : atMost(slope[i], 0.12) ? 2 : 3;
      double usual = Double.isNaN(slope[i]) ? NONE : at(storages[group], soil[i]);
      storage[i] = or(typedStorage[i], usual);
      available[i] = or(typedAvailable[i], at(availableWaters, soil[i]));
    }
  }

  private void demand() {
    double[] coefficient = out(Plants.LANDSCAPE_COEFFICIENT);
    double[] rate = out(Emitters.PRECIPITATION_RATE);
    double[] uniformity = out(Emitters.DISTRIBUTION_UNIFORMITY);
    double[] efficiency = out(Emitters.IRRIGATION_EFFICIENCY);
    double[] atPeak = out(Demand.PEAK_NEED);
    double[] greatest = out(MonthlySchedule.GREATEST_NEED);
    double[] net = out(Demand.NET_DEMAND);
    double[] multiplier = out(Demand.RUN_TIME_MULTIPLIER);
    double[] gross = out(Demand.GROSS_DEMAND);
    double[] week = out(Demand.RUN_TIME_PER_WEEK);
    for (int i = 0; i < count; i++) {
      atPeak[i] = Math.max(0, peak * coefficient[i] - rain);
      net[i] = atMost(atPeak[i], 0) ? greatest[i] : atPeak[i];
      multiplier[i] = 1 / (0.4 + 0.6 * uniformity[i]);
      gross[i] = byEfficiency ? over(net[i], efficiency[i]) : net[i] * multiplier[i];
      week[i] = over(gross[i] * 420, rate[i]);
    }
    System.arraycopy(week, 0, out(Demand.NEED_PER_WEEK), 0, count);
  }

  private void days() {
    double[] typedDays = in(Demand.WATERING_DAYS);
    double[] coefficient = out(Plants.LANDSCAPE_COEFFICIENT);
    double[] rootDepth = out(Plants.ROOT_DEPTH);
    double[] depletion = out(Plants.ALLOWED_DEPLETION);
    double[] available = out(Soils.AVAILABLE_WATER);
    double[] net = out(Demand.NET_DEMAND);
    double[] week = out(Demand.RUN_TIME_PER_WEEK);
    double[] used = out(Demand.DEPLETION_USED);
    double[] held = out(SoilLayers.WATER_HELD);
    double[] depth = out(Demand.DEPLETION_DEPTH);
    double[] interval = out(Demand.LONGEST_INTERVAL);
    double[] needed = out(Demand.DAYS_NEEDED);
    double[] days = out(Demand.WATERING_DAYS);
    double[] gap = out(Demand.LONGEST_GAP);
    double[] run = out(Demand.RUN_TIME);
    double[] typedDry = in(DryingOut.DAYS);
    double[] dry = out(DryingOut.DAYS);
    double[] gone = out(DryingOut.DEPTH);
    double[] goneShare = out(DryingOut.SHARE);
    for (int i = 0; i < count; i++) {
      used[i] =
          byDemand
              ? Math.max(
                  0.1, Math.min(0.8, depletion[i] + 0.04 * (5 - 25.4 * peak * coefficient[i])))
              : depletion[i];
      held[i] = available[i] / 12 * rootDepth[i];
      depth[i] = held[i] * used[i];
      interval[i] = atMost(net[i], 0) ? NONE : Math.max(1, down(over(depth[i], net[i])));
      needed[i] = up(7 / interval[i]);
      double fewest = at(fewestDays, Math.min(interval[i], 7));
      days[i] = or(typedDays[i], Math.min(fewest, allowedDays));
      gap[i] = at(gaps, days[i] - 1);
      run[i] = up(week[i] / days[i]);
      dry[i] = or(typedDry[i], gap[i]);
      gone[i] = Math.min(held[i], net[i] * dry[i]);
      goneShare[i] = over(gone[i], held[i]);
    }
  }

  private void cycles() {
    double[] rate = out(Emitters.WETTED_RATE);
    double[] mean = out(Emitters.PRECIPITATION_RATE);
    double[] applied = out(CycleAndSoak.APPLIED);
    double[] intake = out(Soils.INTAKE_RATE);
    double[] storage = out(Soils.SURFACE_STORAGE);
    double[] run = out(Demand.RUN_TIME);
    double[] longest = out(CycleAndSoak.LONGEST_CYCLE);
    double[] most = out(CycleAndSoak.MOST_MINUTES);
    double[] cycles = out(CycleAndSoak.CYCLES);
    double[] cycleMinutes = out(CycleAndSoak.CYCLE_MINUTES);
    double[] soak = out(CycleAndSoak.SOAK);
    double[] given = out(CycleAndSoak.MINUTES_GIVEN);
    double[] excess = out(CycleAndSoak.EXCESS_OF_ROUNDING);
    double[] waterings = out(Demand.WATERING_DAYS);
    double[] week = out(Demand.RUN_TIME_PER_WEEK);
    for (int i = 0; i < count; i++) {
      boolean atOnce = atMost(rate[i], intake[i]);
      longest[i] = atOnce ? NONE : down(60 * storage[i] / (rate[i] - intake[i]));
      double keyed = PlainMonths.LONGEST_RUN;
      most[i] = atOnce ? keyed : longest[i] < 1 ? NONE : Math.min(longest[i], keyed);
      cycles[i] = Math.max(1, up(run[i] / most[i]));
      cycleMinutes[i] = up(over(run[i], cycles[i]));
      double soaking = (rate[i] - intake[i]) * cycleMinutes[i] / intake[i];
      soak[i] = cycles[i] > 1 ? Math.max(0, up(soaking)) : NONE;
      given[i] = cycles[i] * cycleMinutes[i];
      excess[i] = given[i] * waterings[i] - week[i];
      applied[i] = given[i] * mean[i] / 60;
    }
  }

  private void volumes() {
    double[] flow = out(Emitters.ZONE_FLOW);
    double[] days = out(Demand.WATERING_DAYS);
    double[] given = out(CycleAndSoak.MINUTES_GIVEN);
    double[] perDay = out(ZoneBudget.VOLUME_PER_WATERING_DAY);
    double[] perWeek = out(ZoneBudget.VOLUME_PER_WEEK);
    double[] perPeakMonth = out(ZoneBudget.VOLUME_PEAK_MONTH);
    double[] atPeak = out(Demand.PEAK_NEED);
    double[] net = out(Demand.NET_DEMAND);
    for (int i = 0; i < count; i++) {
      perDay[i] = flow[i] * given[i];
      perWeek[i] = perDay[i] * days[i];
      perPeakMonth[i] = over(perWeek[i] * peakDays / 7 * atPeak[i], net[i]);
    }
  }

  private void shares() {
    double[] perWeek = out(ZoneBudget.VOLUME_PER_WEEK);
    double[] share = out(ZoneBudget.SHARE);
    double total = 0;
    for (int i = 0; i < count; i++) {
      if (counted[i]) {
        total += perWeek[i];
      }
    }
    for (int i = 0; i < count; i++) {
      share[i] = over(perWeek[i], total);
    }
  }

  private void allowances() {
    double[] area = in(Emitters.AREA);
    double[] typedSpecial = in(Ordinance.SPECIAL);
    double[] plantFactor = out(Plants.PLANT_FACTOR);
    double[] coefficient = out(Plants.LANDSCAPE_COEFFICIENT);
    double[] uniformity = out(Emitters.DISTRIBUTION_UNIFORMITY);
    double[] efficiency = out(Emitters.IRRIGATION_EFFICIENCY);
    double[] plant = in(Plants.PLANT);
    double[] typedPlantFactor = in(Plants.PLANT_FACTOR);
    double[] weighted = out(ZoneBudget.WEIGHTED_AREA);
    double[] counted = out(SiteNeed.COUNTED_COEFFICIENT);
    double[] required = out(WaterSense.REQUIRED);
    double[] special = out(Ordinance.SPECIAL);
    double[] specialArea = out(Ordinance.SPECIAL_AREA);
    double[] factor = out(Ordinance.ZONE_FACTOR);
    double[] regular = out(Ordinance.REGULAR_WEIGHTED);
    double[] estimated = out(Ordinance.ESTIMATED_USE);
    double[] above = out(Ordinance.ABOVE_SHARE);
    for (int i = 0; i < count; i++) {
      weighted[i] = coefficient[i] * area[i];
      boolean planted = !Double.isNaN(plant[i]) || !Double.isNaN(typedPlantFactor[i]);
      counted[i] = planted && !Double.isNaN(area[i]) ? coefficient[i] : 0;
      double depth = Math.max(0, allowanceEt * coefficient[i] - allowanceRain);
      required[i] = over(144.0 / 231 * depth * area[i], uniformity[i]);
      special[i] = or(typedSpecial[i], 0);
      boolean isSpecial = special[i] == 1;
      specialArea[i] = isSpecial ? area[i] : 0;
      factor[i] = isSpecial ? 1 : over(plantFactor[i], efficiency[i]);
      regular[i] = isSpecial ? 0 : factor[i] * area[i];
      estimated[i] = yearEt * 0.62 * (factor[i] * area[i]);
      above[i] = isSpecial ? 0 : estimated[i] - yearEt * 0.62 * (adjustment * area[i]);
    }
  }
}
