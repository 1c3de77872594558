package zonewright.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RunTotals;
import zonewright.balance.SoilDays;
import zonewright.balance.ZoneRun;
import zonewright.climate.Climate;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** The tables of a season, as they are printed, written and shown: zone by zone, and day by day. */
public final class SeasonTable {
  private final UnitSystem system;
  private final List<Heading> headings;
  private final List<List<Cell>> rows = new ArrayList<>();

  /**
   * A heading.
   *
   * @param name what the column is called
   * @param unit its unit as written in parentheses; empty for none
   * @param numbers whether it holds numbers
   * @param meaning what it is, as a sentence
   */
  public record Heading(String name, String unit, boolean numbers, String meaning) {
    /** Returns the name with its unit. */
    public String withUnit() {
      return unit.isEmpty() ? name : name + " (" + unit + ")";
    }
  }

  /** A cell: words, or a number with the decimals it is shown with. */
  public record Cell(String words, double number, int decimals) {
    static Cell of(String words) {
      return new Cell(words, Double.NaN, 0);
    }

    /** Returns it as shown to people. */
    public String shown() {
      return Double.isNaN(number) ? words : QuantityText.grouped(number, decimals);
    }

    /** Returns it for a file: numbers with a point and without groups. */
    public String plain() {
      return Double.isNaN(number)
          ? words
          : String.format(Locale.ROOT, "%." + (decimals + 2) + "f", number);
    }
  }

  private SeasonTable(UnitSystem system, List<Heading> headings) {
    this.system = system;
    this.headings = List.copyOf(headings);
  }

  /** Returns the headings. */
  public List<Heading> headings() {
    return headings;
  }

  /** Returns the rows. */
  public List<List<Cell>> rows() {
    return List.copyOf(rows);
  }

  /** Returns the unit of depths in a system. */
  public static Unit depthUnit(UnitSystem system) {
    return QuantityKind.DEPTH.unit(system);
  }

  /** Returns the decimals with which depths are shown. */
  public static int depthDecimals(UnitSystem system) {
    return system == UnitSystem.US ? 2 : 1;
  }

  /** Returns a depth with its unit. */
  public static String depth(double millimetres, UnitSystem system) {
    Unit unit = depthUnit(system);
    return QuantityText.grouped(Units.MILLIMETRE.convert(millimetres, unit), depthDecimals(system))
        + " "
        + unit.symbol();
  }

  /** Returns a volume with its unit. */
  public static String volume(double litres, UnitSystem system) {
    Unit unit = QuantityKind.VOLUME.unit(system);
    return QuantityText.grouped(Units.LITRE.convert(litres, unit), 0) + " " + unit.symbol();
  }

  /** Returns the table of the zones of a season, a row each; water is that of a year. */
  public static SeasonTable ofZones(Season season, UnitSystem system) {
    String depth = depthUnit(system).symbol();
    SeasonTable table =
        new SeasonTable(
            system,
            List.of(
                new Heading("Zone", "", false, "Its name."),
                new Heading("Where", "", false, "Where it is."),
                new Heading(
                    "Water a year",
                    QuantityKind.VOLUME.unit(system).symbol(),
                    true,
                    "What its valve gives in a year: flow times minutes."),
                new Heading("Need a year", depth, true, "What its plants need in the season."),
                new Heading(
                    "Adequacy",
                    "%",
                    true,
                    "Part of the need met on the ground the schedule is made for."),
                new Heading(
                    "Drier quarter", "%", true, "Part of the need met on the drier quarter."),
                new Heading(
                    "Excess",
                    "%",
                    true,
                    "Irrigation that runs off or goes below the roots of the ground the schedule is made for: what the schedule wastes."),
                new Heading(
                    "Below roots",
                    "%",
                    true,
                    "Irrigation that goes below the roots over the whole area, with what unevenness takes."),
                new Heading("Runs off", "%", true, "Irrigation that runs off."),
                new Heading(
                    "Days below", "a year", true, "Days that end below the allowed depletion."),
                new Heading(
                    "Worst week",
                    "",
                    false,
                    "The week in which plants lacked most, and what they got.")));
    for (ZoneResult result : season.results()) {
      table.row(result, season);
    }
    return table;
  }

  private void row(ZoneResult result, Season season) {
    RunTotals whole = result.whole();
    double years = season.years();
    rows.add(
        List.of(
            Cell.of(result.zone().name()),
            Cell.of(result.zone().place()),
            new Cell(
                "",
                Units.LITRE.convert(result.litres() / years, QuantityKind.VOLUME.unit(system)),
                0),
            depthCell(whole.need() / years),
            share(whole.adequacy()),
            share(whole.adequacyOfDrier()),
            share(whole.excess()),
            share(whole.belowRoots()),
            share(whole.runningOff()),
            new Cell("", whole.daysBelow() / years, 0),
            Cell.of(
                result
                    .worst()
                    .map(
                        worst ->
                            date(season.weather(), worst.firstDay())
                                + ", "
                                + QuantityText.grouped(100 * worst.totals().adequacy(), 0)
                                + " %")
                    .orElse("none"))));
  }

  private static Cell share(double share) {
    return new Cell("", 100 * share, 0);
  }

  private Cell depthCell(double millimetres) {
    return new Cell(
        "", Units.MILLIMETRE.convert(millimetres, depthUnit(system)), depthDecimals(system));
  }

  /** Returns a day as a date; of a typical year without the year. */
  public static String date(SeasonWeather weather, int day) {
    DaysOfWeather days = weather.days();
    String name = Climate.MONTH_NAMES.get(days.month(day)).substring(0, 3);
    return days.dayOfMonth(day) + " " + name + (weather.typical() ? "" : " " + days.year(day));
  }

  /** Returns the days of a zone, a row each, on the ground the schedule is made for. */
  public static SeasonTable ofDays(Season season, SeasonZone zone, UnitSystem system) {
    String depth = depthUnit(system).symbol();
    ZoneRun run = season.run(zone);
    SoilDays soil = run.scheduled();
    SeasonTable table =
        new SeasonTable(
            system,
            List.of(
                new Heading("Date", "", false, "The day."),
                new Heading("Reference ET", depth, true, "What the air asks of grass."),
                new Heading("Rain", depth, true, "What fell."),
                new Heading("Percent", "%", true, "The percent of the night before the day."),
                new Heading("Minutes", "min", true, "What the valve ran."),
                new Heading("Irrigation", depth, true, "What soaked in of it."),
                new Heading("Rain soaked in", depth, true, "Rain that was not too light."),
                new Heading("Need", depth, true, "What the plants needed."),
                new Heading("Taken", depth, true, "What they took."),
                new Heading("Runoff", depth, true, "Irrigation that ran off."),
                new Heading("Drained", depth, true, "What went below the roots."),
                new Heading("Depletion", depth, true, "What is used up at the day's end."),
                new Heading("Allowed", depth, true, "The depletion from which plants take less.")));
    DaysOfWeather days = season.weather().days();
    double part = zone.application().scheduled();
    for (int day = 0; day < days.size(); day++) {
      table.rows.add(
          List.of(
              Cell.of(days.date(day).toString()),
              table.depthCell(days.evapotranspiration(day)),
              table.depthCell(days.rain(day)),
              share(season.percent(day)),
              new Cell("", run.given().minutes(day), 0),
              table.depthCell(soil.irrigation(day)),
              table.depthCell(soil.rain(day)),
              table.depthCell(soil.need(day)),
              table.depthCell(soil.taken(day)),
              table.depthCell(run.given().runOff(day) * part),
              table.depthCell(soil.drainedIrrigation(day) + soil.drainedRain(day)),
              table.depthCell(soil.depletion(day)),
              table.depthCell(zone.soil().readilyAvailable())));
    }
    return table;
  }

  /** Returns the scores of zones in a test of controllers. */
  static SeasonTable ofScores(List<ControllerScores.Score> scores) {
    SeasonTable table =
        new SeasonTable(
            UnitSystem.US,
            List.of(
                new Heading("Zone", "", false, "Its name."),
                new Heading("Where", "", false, "Where it is."),
                new Heading("Adequacy", "%", true, "Part of the need that was met."),
                new Heading(
                    "Scheduling efficiency",
                    "%",
                    true,
                    "Part of the irrigation that was not lost."),
                new Heading("Passes", "", false, "Whether both reach their thresholds.")));
    for (ControllerScores.Score score : scores) {
      table.rows.add(
          List.of(
              Cell.of(score.zone().name()),
              Cell.of(score.zone().place()),
              new Cell("", 100 * score.adequacy(), 1),
              new Cell("", 100 * score.efficiency(), 1),
              Cell.of(score.passes() ? "yes" : "no")));
    }
    return table;
  }

  /** Returns the season of the site in sentences. */
  public static List<String> summary(Season season, UnitSystem system) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "%s a year; %s %% of the need met, %s %% of the water wasted by the schedule."
            .formatted(
                volume(season.litres() / season.years(), system),
                QuantityText.grouped(100 * season.adequacy(), 0),
                QuantityText.grouped(100 * season.excess(), 0)));
    if (season.leastPercent().isPresent()) {
      sentences.add(
          "Percent of the baseline: %s to %s %%%s."
              .formatted(
                  QuantityText.grouped(100 * season.leastPercent().getAsDouble(), 0),
                  QuantityText.grouped(100 * season.mostPercent().getAsDouble(), 0),
                  season.daysKeptOff() == 0
                      ? ""
                      : "; no water on %s of %s days, for rain, cold or a percent of 0"
                          .formatted(season.daysKeptOff(), season.daysInSeason())));
    } else {
      sentences.add("It never waters.");
    }
    return sentences;
  }
}
