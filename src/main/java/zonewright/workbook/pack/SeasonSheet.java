package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import zonewright.balance.Baseline;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RunTotals;
import zonewright.balance.SoilDays;
import zonewright.balance.ZoneRun;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.season.SeasonTable;
import zonewright.season.SeasonZone;
import zonewright.sheet.Column;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.units.CalendarText;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.water.Controller;
import zonewright.water.Demand;
import zonewright.water.MonthlySchedule;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.Charts;

/** A season of one zone as live formulas, a row a day: the balance of FAO-56 chapter 8. */
final class SeasonSheet implements PackSheet {
  private static final String USED_COLOUR = "2F86A8";
  private static final String ALLOWED_COLOUR = "B3261E";
  private static final String WATER_COLOUR = "7FB58A";
  private static final int CHART_ROWS = 18;
  private static final int VALUE = 4;
  private static final int EXPLAINED = 6;

  /** Days before 1970 in the count of spreadsheets. */
  private static final int EPOCH = 25_569;

  private static final String[] WEEKDAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

  /** The columns of the days, in their order. */
  private enum Day {
    DATE(0, "Date"),
    ET(1, "Reference ET"),
    RAIN(2, "Rain"),
    NEED(3, "Need"),
    PERCENT(4, "Percent"),
    CYCLES(5, "Cycles"),
    CYCLE_MINUTES(6, "Minutes a cycle"),
    MINUTES(7, "Minutes"),
    REACHING(8, "Reaching the ground"),
    RUN_OFF(9, "Runs off"),
    SOAKS_IN(10, "Soaks in"),
    DRAINED(11, "Drained of it"),
    AFTER_WATER(12, "Used up after it"),
    RAIN_COUNTED(13, "Rain that counts"),
    RAIN_DRAINED(14, "Drained of it"),
    AFTER_RAIN(15, "Used up after it"),
    TAKEN(16, "Taken"),
    USED(17, "Used up"),
    BELOW(18, "Below allowed");

    private final int place;
    private final String heading;

    Day(int place, String heading) {
      this.place = place;
      this.heading = heading;
    }

    String letters() {
      return CellReference.convertNumToColString(place);
    }

    String in(int row) {
      return "$" + letters() + (row + 1);
    }
  }

  /** What one workbook's page is made from. */
  private static final class Making {
    private final Page page;
    private final SeasonZone zone;
    private final ZoneRun run;
    private final SeasonOfZone of;
    private final UnitSystem system;
    private final Unit depth;
    private String held;
    private String allowed;
    private String rate;
    private String wetted;
    private String intake;
    private String storage;
    private String reaching;
    private String part;
    private String flow;
    private String step;
    private String longest;
    private String peak;
    private String percentStep;
    private String least;
    private String most;
    private String times;
    private String before;
    private String light;
    private String coefficients;
    private String weekCycles;
    private String weekMinutes;
    private int firstDay;
    private int lastDay;

    Making(PackBook pack, Page page, SeasonOfZone of) {
      this.page = page;
      this.of = of;
      zone = of.zone();
      run = of.run();
      system = pack.design().book().system();
      depth = SeasonTable.depthUnit(system);
    }

    double shown(double millimetres) {
      return Units.MILLIMETRE.convert(millimetres, depth);
    }

    String depths() {
      return depth.equals(Units.INCH) ? "0.000" : "0.00";
    }

    private String absolute() {
      return new CellReference(page.row(), VALUE, true, true).formatAsString();
    }

    private String line(String name, String unit, String means) {
      String cell = absolute();
      label(name);
      page.words(VALUE + 1, unit, CellStyleName.SMALL)
          .across(EXPLAINED, means, CellStyleName.SMALL);
      return cell;
    }

    /** Writes a name over the columns before the value. */
    void label(String name) {
      for (int column = 0; column < VALUE; column++) {
        page.words(column, column == 0 ? name : "", CellStyleName.NAME);
      }
      page.sheet().addMergedRegion(new CellRangeAddress(page.row(), page.row(), 0, VALUE - 1));
    }

    String live(Column column, int row, String means) {
      page.live(VALUE, column, row, CellStyleName.CALCULATED);
      return line(column.name(), column.kind().unit(system).symbol(), means);
    }

    String value(String name, double value, String format, String unit, String means) {
      page.number(VALUE, value, format, CellStyleName.INPUT);
      return line(name, unit, means);
    }

    String formula(
        String name, String formula, double result, String format, String unit, String means) {
      page.formula(VALUE, formula, result, format, CellStyleName.CALCULATED);
      return line(name, unit, means);
    }

    String range(Day column) {
      return "$%1$s$%2$s:$%1$s$%3$s".formatted(column.letters(), firstDay + 1, lastDay + 1);
    }
  }

  @Override
  public String word() {
    return "season";
  }

  @Override
  public String title() {
    return "Season";
  }

  @Override
  public String about() {
    return "A season of one zone day by day, as live formulas and as a chart: what its soil holds, gets and loses.";
  }

  @Override
  public Audience audience() {
    return Audience.OFFICE;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return SeasonOfZone.lacks(design);
  }

  @Override
  public void write(PackBook pack) {
    Page page =
        pack.page(title(), true, 11, 9, 8, 8, 9, 8, 9, 9, 9, 8, 8, 8, 9, 9, 8, 9, 8, 8, 8, 8);
    Optional<SeasonOfZone> found = SeasonOfZone.of(pack.design(), pack.zone());
    if (found.isEmpty()) {
      page.title("A season, day by day", lacks(pack.design()).orElse("No zone can be followed."));
      return;
    }
    Making making = new Making(pack, page, found.get());
    page.title(
            "A season, day by day: " + making.zone.withPlace(),
            found.get().season().weather().origin()
                + " The schedule is what the timetable placed, driven by a percent by day; yellow cells may be changed.")
        .restingOnClimate();
    soil(making);
    water(making);
    schedule(making);
    sums(making);
    int top = page.breakHere().row();
    for (int row = 0; row < CHART_ROWS; row++) {
      page.next();
    }
    days(making);
    chart(making, top);
  }

  private static void soil(Making making) {
    int row = making.zone.row();
    making.page.band("The soil");
    making.held =
        making.live(SoilLayers.WATER_HELD, row, "All that roots can use: the wilting point.");
    String share =
        making.live(
            Demand.DEPLETION_USED, row, "The part that may be used before plants take less.");
    making.allowed =
        making.formula(
            "Allowed depletion",
            making.held + "*" + share,
            making.shown(making.zone.soil().readilyAvailable()),
            making.depths(),
            making.depth.symbol(),
            "FAO-56, equation 83.");
    making.before =
        making.value(
            "Used up before the first day",
            making.shown(making.run.scheduled().before()),
            making.depths(),
            making.depth.symbol(),
            "As the same year ends; where something is changed, copy the last day's here.");
    making.light =
        making.value(
            "Light rain",
            SoilDays.LIGHT_RAIN,
            "0.0",
            "× ET",
            "Rain below this part of a day's reference ET counts as nothing: FAO-56, page 170.");
    making.label("Coefficients");
    for (int month = 0; month < 12; month++) {
      making.page.words(
          VALUE + month, Climate.MONTH_NAMES.get(month).substring(0, 3), CellStyleName.HEADING);
    }
    making.page.next();
    making.coefficients =
        "$%s$%s:$%s$%s"
            .formatted(
                CellReference.convertNumToColString(VALUE),
                making.page.row() + 1,
                CellReference.convertNumToColString(VALUE + 11),
                making.page.row() + 1);
    for (int month = 0; month < 12; month++) {
      making.page.live(
          VALUE + month, MonthlySchedule.COEFFICIENTS.get(month), row, CellStyleName.CALCULATED);
    }
    making.page.next().next();
  }

  private static void water(Making making) {
    int row = making.zone.row();
    making.page.band("The water");
    making.flow = making.live(Emitters.ZONE_FLOW, row, "While the valve is open.");
    making.rate = making.live(Emitters.PRECIPITATION_RATE, row, "Mean over the area.");
    making.wetted = making.live(Emitters.WETTED_RATE, row, "By which water runs off.");
    making.intake = making.live(Soils.INTAKE_RATE, row, "What the soil takes in meanwhile.");
    making.storage = making.live(Soils.SURFACE_STORAGE, row, "What may stand before it runs off.");
    making.reaching =
        making.value(
            "Reaching the ground",
            making.zone.application().reaching(),
            "0.00",
            "",
            "What an efficiency leaves; 1 where unevenness is reckoned below.");
    making.part =
        making.value(
            "Part of the mean",
            making.zone.application().scheduled(),
            "0.0000",
            "",
            "What the ground gets that the schedule is made for: 1 ÷ run-time multiplier. Type the uniformity to follow the drier quarter.");
    making.page.next();
  }

  private static void schedule(Making making) {
    Page page = making.page;
    page.band("The schedule");
    making.step = making.live(Controller.MINUTE_STEP, 0, "Scaled runs are rounded to it.");
    making.peak = making.live(Peak.REFERENCE_ET, 0, "100 % is made for it.");
    making.percentStep =
        making.live(Controller.PERCENT_STEP, 0, "The percent goes in steps of it.");
    making.least =
        making.value("Least percent", making.of.daily().least(), "0%", "", "Never less than this.");
    making.most =
        making.value(
            "Greatest percent", making.of.daily().most(), "0%", "", "Never more than this.");
    making.times =
        making.value(
            "Percent times", 1, "0%", "", "All percents are multiplied with it: try 90 %.");
    Baseline baseline = making.zone.baseline();
    boolean divided = baseline.longestCycle() > 0;
    if (divided) {
      making.longest =
          making.value(
              "Longest cycle",
              baseline.longestCycle(),
              "0",
              "min",
              "The controller divides a day's minutes into cycles no longer than this.");
    }
    making.label(baseline.evening() ? "Night of" : "Day");
    for (int day = 0; day < WEEKDAYS.length; day++) {
      page.words(VALUE + day, WEEKDAYS[day], CellStyleName.HEADING);
    }
    page.next();
    making.weekCycles = week(making, divided ? "Waters" : "Cycles", divided, false);
    making.weekMinutes =
        week(making, divided ? "Minutes in all" : "Minutes a cycle", divided, true);
    page.next();
  }

  private static String week(Making making, String name, boolean divided, boolean minutes) {
    Page page = making.page;
    making.label(name);
    for (int day = 0; day < WEEKDAYS.length; day++) {
      List<Integer> cycles = making.zone.baseline().weekday(day);
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

  /** The sums stand above the days, with what the program itself found beside them. */
  private static void sums(Making making) {
    Page page = making.page;
    RunTotals whole = making.of.season().results().get(0).whole();
    int sums = 7;
    int size = making.of.season().weather().days().size();
    making.firstDay = page.row() + 1 + sums + 1 + CHART_ROWS + 1 + 1;
    making.lastDay = making.firstDay + size - 1;
    page.band("What it comes to");
    String need =
        sum(making, "Need", "SUM(%s)", Day.NEED, making.shown(whole.need()), making.depths());
    String taken =
        sum(
            making,
            "Taken",
            "SUM(%s)",
            Day.TAKEN,
            making.shown(whole.need() - whole.deficit()),
            making.depths());
    making.formula(
        "Adequacy",
        "IF(%1$s=0,1,%2$s/%1$s)".formatted(need, taken),
        whole.adequacy(),
        "0.0%",
        "",
        "The part of the need that was met.");
    String reaching =
        sum(
            making,
            "Irrigation",
            "SUM(%s)*" + making.part,
            Day.REACHING,
            making.shown(whole.reaching() * making.zone.application().scheduled()),
            making.depths());
    String lost =
        "(SUM(%s)*%s+SUM(%s))"
            .formatted(making.range(Day.RUN_OFF), making.part, making.range(Day.DRAINED));
    making.formula(
        "Excess",
        "IF(%1$s=0,0,%2$s/%1$s)".formatted(reaching, lost),
        whole.excess(),
        "0.0%",
        "",
        "Irrigation that ran off or went below the roots, of all irrigation.");
    sum(making, "Days below allowed", "SUM(%s)", Day.BELOW, whole.daysBelow(), "0");
    Unit volume = QuantityKind.VOLUME.unit(making.system);
    making.formula(
        "Water",
        "SUM(%s)*%s".formatted(making.range(Day.MINUTES), making.flow),
        Units.LITRE.convert(whole.minutes() * making.zone.application().flow(), volume),
        "#,##0",
        volume.symbol(),
        "Minutes × flow.");
    page.next();
  }

  private static String sum(
      Making making, String name, String formula, Day of, double result, String format) {
    boolean count = of == Day.BELOW;
    return making.formula(
        name,
        formula.formatted(making.range(of)),
        result,
        format,
        count ? "days" : making.depth.symbol(),
        "Of the days below.");
  }

  /** The chart stands above the days; it is made once they are there. */
  private static void chart(Making making, int top) {
    Page page = making.page;
    CellRangeAddress dates = cells(making, Day.DATE);
    Charts.barsAndLines(
        page.sheet(),
        new Charts.Place(0, top, Day.values().length, top + CHART_ROWS - 1),
        "Used up of what the soil holds, and water that soaks in",
        making.depth.symbol(),
        dates,
        List.of(new Charts.Series("Soaks in", cells(making, Day.SOAKS_IN), WATER_COLOUR)),
        List.of(
            new Charts.Series("Used up", cells(making, Day.USED), USED_COLOUR),
            new Charts.Series("Allowed", allowedCells(making), ALLOWED_COLOUR)));
  }

  private static CellRangeAddress cells(Making making, Day column) {
    return new CellRangeAddress(making.firstDay, making.lastDay, column.place, column.place);
  }

  /** The allowed depletion stands once more beside each day, for the chart. */
  private static CellRangeAddress allowedCells(Making making) {
    int column = Day.values().length;
    return new CellRangeAddress(making.firstDay, making.lastDay, column, column);
  }

  private static void days(Making making) {
    Page page = making.page;
    String unit = making.depth.symbol();
    page.band("The days: depths in " + unit);
    List<String> headings = new ArrayList<>();
    for (Day column : Day.values()) {
      headings.add(column.heading);
    }
    headings.add("Allowed");
    page.headings(headings.toArray(String[]::new)).repeated();
    if (page.row() != making.firstDay) {
      throw new IllegalStateException("the sums stand over other rows: " + page.row());
    }
    for (int day = 0; day < making.of.season().weather().days().size(); day++) {
      day(making, day);
      page.next();
    }
  }

  private static void day(Making making, int day) {
    Page page = making.page;
    int row = page.row();
    DaysOfWeather weather = making.of.season().weather().days();
    SoilDays soil = making.run.scheduled();
    String depths = making.depths();
    put(page, Day.DATE, CalendarText.days(weather.date(day)), "d\\ mmm");
    put(page, Day.ET, making.shown(weather.evapotranspiration(day)), depths);
    put(page, Day.RAIN, making.shown(weather.rain(day)), depths);
    set(
        making,
        Day.NEED,
        "INDEX(%s,MONTH(%s))*%s".formatted(making.coefficients, Day.DATE.in(row), Day.ET.in(row)),
        making.shown(soil.need(day)));
    percent(making, day, row);
    runs(making, day, row);
    set(
        making,
        Day.REACHING,
        "%s*%s*%s/60".formatted(making.rate, making.reaching, Day.MINUTES.in(row)),
        making.shown(making.run.given().reaching(day)));
    set(
        making,
        Day.RUN_OFF,
        "MAX(0,(%2$s-%3$s)*%6$s/60-%4$s)*%5$s*%1$s*%7$s/%2$s"
            .formatted(
                making.rate,
                making.wetted,
                making.intake,
                making.storage,
                Day.CYCLES.in(row),
                Day.CYCLE_MINUTES.in(row),
                making.reaching),
        making.shown(making.run.given().runOff(day)));
    set(
        making,
        Day.SOAKS_IN,
        "(%s-%s)*%s".formatted(Day.REACHING.in(row), Day.RUN_OFF.in(row), making.part),
        making.shown(soil.irrigation(day)));
    String used = day == 0 ? making.before : Day.USED.in(row - 1);
    double before = day == 0 ? soil.before() : soil.depletion(day - 1);
    double afterWater = Math.max(0, before - soil.irrigation(day));
    set(
        making,
        Day.DRAINED,
        "MAX(0,%s-%s)".formatted(Day.SOAKS_IN.in(row), used),
        making.shown(soil.drainedIrrigation(day)));
    set(
        making,
        Day.AFTER_WATER,
        "MAX(0,%s-%s)".formatted(used, Day.SOAKS_IN.in(row)),
        making.shown(afterWater));
    set(
        making,
        Day.RAIN_COUNTED,
        "IF(%1$s<%3$s*%2$s,0,%1$s)".formatted(Day.RAIN.in(row), Day.ET.in(row), making.light),
        making.shown(soil.rain(day)));
    set(
        making,
        Day.RAIN_DRAINED,
        "MAX(0,%s-%s)".formatted(Day.RAIN_COUNTED.in(row), Day.AFTER_WATER.in(row)),
        making.shown(soil.drainedRain(day)));
    set(
        making,
        Day.AFTER_RAIN,
        "MAX(0,%s-%s)".formatted(Day.AFTER_WATER.in(row), Day.RAIN_COUNTED.in(row)),
        making.shown(Math.max(0, afterWater - soil.rain(day))));
    set(
        making,
        Day.TAKEN,
        "MIN(%1$s*MIN(1,(%2$s-%3$s)/(%2$s-%4$s)),%2$s-%3$s)"
            .formatted(Day.NEED.in(row), making.held, Day.AFTER_RAIN.in(row), making.allowed),
        making.shown(soil.taken(day)));
    set(
        making,
        Day.USED,
        "%s+%s".formatted(Day.AFTER_RAIN.in(row), Day.TAKEN.in(row)),
        making.shown(soil.depletion(day)));
    page.formula(
        Day.BELOW.place,
        "IF(%s>%s+0.0000001,1,0)".formatted(Day.USED.in(row), making.allowed),
        soil.belowAllowed(day) ? 1 : 0,
        "0",
        CellStyleName.TABLE);
    page.formula(
        Day.values().length,
        making.allowed,
        making.shown(making.zone.soil().readilyAvailable()),
        depths,
        CellStyleName.TABLE);
  }

  private static void percent(Making making, int day, int row) {
    int back = Math.min(day, making.of.daily().days());
    String mean =
        day == 0
            ? Day.ET.in(row)
            : "AVERAGE(%s:%s)".formatted(Day.ET.in(row - back), Day.ET.in(row - 1));
    making.page.formula(
        Day.PERCENT.place,
        "MAX(%s,MIN(%s,%s*INT(%s/%s/%s+0.500000001)))*%s"
            .formatted(
                making.least,
                making.most,
                making.percentStep,
                mean,
                making.peak,
                making.percentStep,
                making.times),
        making.of.season().percent(day),
        "0%",
        CellStyleName.TABLE);
  }

  private static void runs(Making making, int day, int row) {
    Baseline baseline = making.zone.baseline();
    String date = Day.DATE.in(row) + (baseline.evening() ? "-1" : "");
    String runs =
        baseline
            .oddDates()
            .map(odd -> "*(MOD(DAY(%s),2)=%s)".formatted(date, odd ? 1 : 0))
            .orElse(
                baseline.every() > 0
                    ? "*(MOD(%s-%s,%s)=0)"
                        .formatted(date, baseline.from() + EPOCH, baseline.every())
                    : "");
    String weekday = "WEEKDAY(%s,2)".formatted(date);
    String keyed = "INDEX(%s,%s)".formatted(making.weekMinutes, weekday);
    String cycles = "INDEX(%s,%s)%s".formatted(making.weekCycles, weekday, runs);
    String scaled =
        "%1$s*INT(%2$s*%3$s/%1$s+0.500000001)".formatted(making.step, keyed, Day.PERCENT.in(row));
    double minutes = making.run.given().minutes(day);
    double count = cycleCount(making, day);
    if (making.longest == null) {
      set(making, Day.CYCLES, cycles, count, "0");
      set(making, Day.CYCLE_MINUTES, scaled, cycleMinutes(making, day), "0");
      set(making, Day.MINUTES, Day.CYCLES.in(row) + "*" + Day.CYCLE_MINUTES.in(row), minutes, "0");
    } else {
      set(
          making,
          Day.CYCLES,
          "ROUNDUP(%s/%s,0)".formatted(Day.MINUTES.in(row), making.longest),
          Math.ceil(minutes / baseline.longestCycle() - 1e-9),
          "0");
      set(
          making,
          Day.CYCLE_MINUTES,
          "IF(%1$s=0,0,%2$s/%1$s)".formatted(Day.CYCLES.in(row), Day.MINUTES.in(row)),
          minutes == 0 ? 0 : minutes / Math.ceil(minutes / baseline.longestCycle() - 1e-9),
          "0.0");
      set(making, Day.MINUTES, scaled + "*" + cycles, minutes, "0");
    }
  }

  private static int named(Making making, int day) {
    int weekday = making.of.season().weather().days().weekday(day);
    return making.zone.baseline().evening() ? Math.floorMod(weekday - 1, 7) : weekday;
  }

  /**
   * How many cycles the controller begins on a day, also where the percent leaves them no minute.
   */
  private static double cycleCount(Making making, int day) {
    boolean due = true;
    Baseline baseline = making.zone.baseline();
    DaysOfWeather days = making.of.season().weather().days();
    int at = baseline.evening() ? day - 1 : day;
    if (baseline.oddDates().isPresent()) {
      due = days.dayOfMonth(at) % 2 == (baseline.oddDates().get() ? 1 : 0);
    } else if (baseline.every() > 0) {
      due = Math.floorMod(days.dayNumber(at) - baseline.from(), baseline.every()) == 0;
    }
    return due ? baseline.weekday(named(making, day)).size() : 0;
  }

  private static double cycleMinutes(Making making, int day) {
    List<Integer> keyed = making.zone.baseline().weekday(named(making, day));
    double step = making.zone.baseline().step();
    return keyed.isEmpty()
        ? 0
        : step * Math.floor(keyed.get(0) * making.of.season().percent(day) / step + 0.500000001);
  }

  private static void put(Page page, Day column, double value, String format) {
    page.number(column.place, value, format, CellStyleName.TABLE);
  }

  private static void set(Making making, Day column, String formula, double result) {
    set(making, column, formula, result, making.depths());
  }

  private static void set(Making making, Day column, String formula, double result, String format) {
    making.page.formula(column.place, formula, result, format, CellStyleName.TABLE);
  }
}
