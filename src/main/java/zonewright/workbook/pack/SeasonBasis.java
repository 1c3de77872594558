package zonewright.workbook.pack;

import java.util.List;
import org.apache.poi.ss.util.CellReference;
import zonewright.balance.Baseline;
import zonewright.balance.SoilDays;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.emitters.Emitters;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.water.Controller;
import zonewright.water.Demand;
import zonewright.water.MonthlySchedule;
import zonewright.workbook.kit.CellStyleName;

/** What a season rests on: the soil, the water and the schedule, above its days. */
final class SeasonBasis {
  private static final String[] WEEKDAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
  private static final int VALUE = SeasonPage.VALUE;

  private SeasonBasis() {}

  /** Writes it. */
  static void write(SeasonPage season) {
    soil(season);
    water(season);
    schedule(season);
  }

  private static void soil(SeasonPage season) {
    int row = season.zone.row();
    season.page.band("The soil");
    season.held =
        season.live(SoilLayers.WATER_HELD, row, "All that roots can use: the wilting point.");
    String share =
        season.live(
            Demand.DEPLETION_USED, row, "The part that may be used before plants take less.");
    season.allowed =
        season.formula(
            "Allowed depletion",
            season.held + "*" + share,
            season.shown(season.zone.soil().readilyAvailable()),
            season.depths(),
            season.depth.symbol(),
            "FAO-56, equation 83.");
    season.before =
        season.value(
            "Used up before the first day",
            season.shown(season.run.scheduled().before()),
            season.depths(),
            season.depth.symbol(),
            "As the same year ends; where something is changed, copy the last day's here.");
    season.light =
        season.value(
            "Light rain",
            SoilDays.LIGHT_RAIN,
            "0.0",
            "× ET",
            "Rain below this part of a day's reference ET counts as nothing: FAO-56, page 170.");
    season.label("Coefficients");
    for (int month = 0; month < 12; month++) {
      season.page.words(
          VALUE + month, Climate.MONTH_NAMES.get(month).substring(0, 3), CellStyleName.HEADING);
    }
    season.page.next();
    season.coefficients =
        "$%s$%s:$%s$%s"
            .formatted(
                CellReference.convertNumToColString(VALUE),
                season.page.row() + 1,
                CellReference.convertNumToColString(VALUE + 11),
                season.page.row() + 1);
    for (int month = 0; month < 12; month++) {
      season.page.live(
          VALUE + month, MonthlySchedule.COEFFICIENTS.get(month), row, CellStyleName.CALCULATED);
    }
    season.page.next().next();
  }

  private static void water(SeasonPage season) {
    int row = season.zone.row();
    season.page.band("The water");
    season.flow = season.live(Emitters.ZONE_FLOW, row, "While the valve is open.");
    season.rate = season.live(Emitters.PRECIPITATION_RATE, row, "Mean over the area.");
    season.wetted = season.live(Emitters.WETTED_RATE, row, "By which water runs off.");
    season.intake = season.live(Soils.INTAKE_RATE, row, "What the soil takes in meanwhile.");
    season.storage = season.live(Soils.SURFACE_STORAGE, row, "What may stand before it runs off.");
    season.reaching =
        season.value(
            "Reaching the ground",
            season.zone.application().reaching(),
            "0.00",
            "",
            "What an efficiency leaves; 1 where unevenness is reckoned below.");
    season.part =
        season.value(
            "Part of the mean",
            season.zone.application().scheduled(),
            "0.0000",
            "",
            "What the ground gets that the schedule is made for: 1 ÷ run-time multiplier. Type the uniformity to follow the drier quarter.");
    season.page.next();
  }

  private static void schedule(SeasonPage season) {
    Page page = season.page;
    page.band("The schedule");
    season.step = season.live(Controller.MINUTE_STEP, 0, "Scaled runs are rounded to it.");
    season.peak = season.live(Peak.REFERENCE_ET, 0, "100 % is made for it.");
    season.percentStep =
        season.live(Controller.PERCENT_STEP, 0, "The percent goes in steps of it.");
    season.least =
        season.value("Least percent", season.of.daily().least(), "0%", "", "Never less than this.");
    season.most =
        season.value(
            "Greatest percent", season.of.daily().most(), "0%", "", "Never more than this.");
    season.times =
        season.value(
            "Percent times", 1, "0%", "", "All percents are multiplied with it: try 90 %.");
    Baseline baseline = season.zone.baseline();
    boolean divided = baseline.longestCycle() > 0;
    if (divided) {
      season.longest =
          season.value(
              "Longest cycle",
              baseline.longestCycle(),
              "0",
              "min",
              "The controller divides a day's minutes into cycles no longer than this.");
    }
    season.label(baseline.evening() ? "Night of" : "SeasonDay");
    for (int day = 0; day < WEEKDAYS.length; day++) {
      page.words(VALUE + day, WEEKDAYS[day], CellStyleName.HEADING);
    }
    page.next();
    season.weekCycles = week(season, divided ? "Waters" : "Cycles", divided, false);
    season.weekMinutes =
        week(season, divided ? "Minutes in all" : "Minutes a cycle", divided, true);
    page.next();
  }

  private static String week(SeasonPage season, String name, boolean divided, boolean minutes) {
    Page page = season.page;
    season.label(name);
    for (int day = 0; day < WEEKDAYS.length; day++) {
      List<Integer> cycles = season.zone.baseline().weekday(day);
      int sum = cycles.stream().mapToInt(Integer::intValue).sum();
      double value =
          cycles.isEmpty()
              ? 0
              : minutes ? (divided ? sum : cycles.get(0)) : divided ? 1 : cycles.size();
      page.number(VALUE + day, value, "0", CellStyleName.INPUT);
    }
    String range =
        "$%s$%s:$%s$%s"
            .formatted(
                CellReference.convertNumToColString(VALUE),
                page.row() + 1,
                CellReference.convertNumToColString(VALUE + WEEKDAYS.length - 1),
                page.row() + 1);
    page.next();
    return range;
  }
}
