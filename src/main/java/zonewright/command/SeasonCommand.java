package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.balance.WateringRule;
import zonewright.climate.Climate;
import zonewright.climate.WeatherSite;
import zonewright.design.Design;
import zonewright.design.NightsCalendar;
import zonewright.design.WeatherTaken;
import zonewright.season.ControllerScores;
import zonewright.season.Season;
import zonewright.season.SeasonFinding;
import zonewright.season.SeasonFindings;
import zonewright.season.SeasonReading;
import zonewright.season.SeasonRules;
import zonewright.season.SeasonTable;
import zonewright.season.SeasonWeather;
import zonewright.season.SeasonZone;
import zonewright.season.SeasonZones;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.CsvText;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.weather.StationSite;
import zonewright.weather.WeatherFile;
import zonewright.weather.WeatherProblem;

/** Follows the soil of each zone day by day through a season, and says what the schedule gives. */
@Command(
    name = "season",
    header = "Follow the soil of each zone day by day: what the schedule gives through a season.",
    description = {
      "",
      "The runs of the timetable as it stands, scaled by a controller, on days of weather: what plants"
          + " need and get, what is lost, in which week they lack most, and what would help. Without a"
          + " weather file the days are a typical year made from the months of the design.",
      ""
    },
    footer = {
      "",
      "Rules: fixed is the baseline at one percent, monthly the percent to key in of each month, daily",
      "a percent from reference ET of the days before, found the zones as found, as they run now.",
      "",
      "Examples:",
      "  zonewright season garden.xlsx",
      "  zonewright season garden.xlsx --rule monthly --compare daily",
      "  zonewright season garden.xlsx --weather days.csv --rain-sensor \"6 mm,3\" --months Apr-Oct",
      "  zonewright season garden.xlsx --zone 3 --csv > zone3.csv",
      "  zonewright season --sample controller-test-zones --rule daily --test"
    })
final class SeasonCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design file, an .xlsx workbook; without one, the demo garden.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--rule",
      paramLabel = "fixed|monthly|daily|found",
      description = "What drives the schedule; daily unless given.")
  private String rule = "daily";

  @Option(
      names = "--compare",
      paramLabel = "RULE",
      description = "Another rule, to hold beside it on the same days.")
  private Optional<String> compare = Optional.empty();

  @Option(
      names = "--percent",
      paramLabel = "PERCENT",
      description = "All percents times this, such as 90; 100 unless given.")
  private String percent = "100";

  @Option(
      names = "--months",
      paramLabel = "FROM-TO",
      description = "The months in which it waters, such as Apr-Oct; all unless given.")
  private Optional<String> months = Optional.empty();

  @Option(
      names = "--limits",
      paramLabel = "LEAST-MOST",
      description = "Least and greatest percent by day, such as 20-150; 0-150 unless given.")
  private Optional<String> limits = Optional.empty();

  @Option(
      names = "--rain-pause",
      paramLabel = "DEPTH,DAYS",
      description = "No water for so many nights after a day with so much rain.")
  private Optional<String> pause = Optional.empty();

  @Option(
      names = "--rain-sensor",
      paramLabel = "DEPTH,DAYS",
      description = "A rain sensor that so much rain fills, and that dries in so many days.")
  private Optional<String> sensor = Optional.empty();

  @Option(
      names = "--not-below",
      paramLabel = "TEMPERATURE",
      description =
          "No water on days whose lowest temperature is below this, such as \"3 °C\"; needs a weather file.")
  private Optional<String> coldest = Optional.empty();

  @Option(
      names = "--weather",
      paramLabel = "WEATHER",
      description =
          "A file of hours or days, as the command weather reads it; or one that its --days wrote.")
  private Optional<Path> weather = Optional.empty();

  @Option(
      names = "--zone",
      paramLabel = "NAME",
      description = "Print the days of one zone in place of all zones.")
  private Optional<String> zone = Optional.empty();

  @Option(
      names = "--test",
      description =
          "Score each zone as a published test scores weather-based controllers; try it with --sample controller-test-zones.")
  private boolean test;

  @Option(names = "--csv", description = "Print comma-separated values (RFC 4180).")
  private boolean csv;

  private UnitSystem system;

  @Override
  public Integer call() {
    if ((zone.isPresent() ? 1 : 0) + (compare.isPresent() ? 1 : 0) + (test ? 1 : 0) > 1) {
      throw new Complaint(ExitCode.USAGE, "Choose one of --zone, --compare and --test.");
    }
    Design design = source.design(file, err());
    Book book = design.book();
    system = book.system();
    SeasonWeather days = weather.map(path -> read(path, book)).orElseGet(() -> typical(book));
    double more = number("--percent", percent, QuantityKind.SHARE, 0, 5);
    Season season = season(design, named(rule), days, more);
    if (zone.isPresent()) {
      print(SeasonTable.ofDays(season, zoneNamed(season, zone.get()), system));
      return ExitCode.FINE;
    }
    if (test) {
      return tested(season);
    }
    if (csv) {
      print(SeasonTable.ofZones(season, system));
      compare.ifPresent(
          other -> print(SeasonTable.ofZones(season(design, named(other), days, more), system)));
      return ExitCode.FINE;
    }
    out().println(days.origin());
    season.zones().remarks().forEach(out()::println);
    told(season, named(rule), book);
    if (compare.isPresent()) {
      Season other = season(design, named(compare.get()), days, more);
      told(other, named(compare.get()), book);
      difference(season, other);
      return ExitCode.FINE;
    }
    List<SeasonFinding> findings = SeasonFindings.of(season);
    out().println();
    findings.forEach(finding -> out().println(finding.line() + "."));
    if (findings.isEmpty()) {
      out()
          .println(
              "Every zone that is followed gets what it needs, and little of its water is wasted.");
    }
    return findings.isEmpty() && season.zones().leftOut().isEmpty()
        ? ExitCode.FINE
        : ExitCode.FOUND;
  }

  private int tested(Season season) {
    if (!csv) {
      out().println(season.weather().origin());
      season.zones().remarks().forEach(out()::println);
      out()
          .println(
              "A zone passes with an adequacy of %s %% and a scheduling efficiency of %s %%."
                  .formatted(whole(ControllerScores.ADEQUATE), whole(ControllerScores.EFFICIENT)));
      out().println();
    }
    print(ControllerScores.table(season));
    boolean all = ControllerScores.of(season).stream().allMatch(ControllerScores.Score::passes);
    return all ? ExitCode.FINE : ExitCode.FOUND;
  }

  private static SeasonRules named(String word) {
    return SeasonRules.named(word)
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "“%s” is no rule; write fixed, monthly, daily or found.".formatted(word)));
  }

  private Season season(Design design, SeasonRules which, SeasonWeather days, double more) {
    Book book = design.book();
    SeasonZones zones =
        which == SeasonRules.FOUND
            ? SeasonReading.found(book)
            : design
                .nights()
                .plan()
                .map(plan -> SeasonReading.proposed(book, plan))
                .orElseThrow(() -> new Complaint(ExitCode.FOUND, NightsCalendar.whyNone(design)));
    if (zones.zones().isEmpty()) {
      zones.remarks().forEach(err()::println);
      throw new Complaint(
          ExitCode.FOUND,
          which == SeasonRules.FOUND && zones.leftOut().isEmpty()
              ? which.lacks()
              : "No zone can be followed.");
    }
    WateringRule.Setting setting =
        which.setting(book).orElseThrow(() -> new Complaint(ExitCode.FOUND, which.lacks()));
    return new Season(zones, days, asked(limited(setting), days), more);
  }

  private WateringRule.Setting limited(WateringRule.Setting setting) {
    if (limits.isEmpty() || !(setting instanceof WateringRule.Daily daily)) {
      return setting;
    }
    String[] parts = limits.get().split("-", -1);
    if (parts.length != 2) {
      throw new Complaint(ExitCode.USAGE, "Write --limits as least and most, such as 20-150.");
    }
    double least = number("--limits", parts[0], QuantityKind.SHARE, 0, 5);
    double most = number("--limits", parts[1], QuantityKind.SHARE, least, 5);
    return new WateringRule.Daily(daily.reference(), daily.step(), least, most, daily.days());
  }

  private WateringRule asked(WateringRule.Setting setting, SeasonWeather days) {
    if (coldest.isPresent() && Double.isNaN(days.days().lowest(0))) {
      throw new Complaint(
          ExitCode.USAGE, "--not-below needs a weather file with lowest temperatures.");
    }
    int[] season = months.map(SeasonCommand::months).orElse(new int[] {0, 11});
    return new WateringRule(
        setting,
        pause.map(
            words ->
                new WateringRule.RainPause(
                    depth("--rain-pause", words), (int) Math.round(days("--rain-pause", words)))),
        sensor.map(
            words ->
                new WateringRule.RainSensor(
                    depth("--rain-sensor", words), days("--rain-sensor", words))),
        coldest.map(this::celsius).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        season[0],
        season[1]);
  }

  private static int[] months(String words) {
    String[] parts = words.split("-", -1);
    int[] found = {-1, -1};
    for (int part = 0; part < parts.length && part < 2; part++) {
      String begins = parts[part].strip().toLowerCase(Locale.ROOT);
      for (int month = 0; month < 12 && begins.length() >= 3; month++) {
        if (Climate.MONTH_NAMES.get(month).toLowerCase(Locale.ROOT).startsWith(begins)) {
          found[part] = month;
        }
      }
    }
    if (parts.length != 2 || found[0] < 0 || found[1] < 0) {
      throw new Complaint(ExitCode.USAGE, "Write --months by their names, such as Apr-Oct.");
    }
    return found;
  }

  private double depth(String option, String words) {
    double kept = number(option, parts(option, words)[0], QuantityKind.DEPTH, 0, 1000);
    double depth = QuantityKind.DEPTH.unit(system).convert(kept, Units.MILLIMETRE);
    if (depth <= 0) {
      throw new Complaint(ExitCode.USAGE, option + " wants a depth above 0.");
    }
    return depth;
  }

  private double days(String option, String words) {
    return number(option, parts(option, words)[1], QuantityKind.DAYS, 0.5, 60);
  }

  private static String[] parts(String option, String words) {
    String[] parts = words.split(",", -1);
    if (parts.length != 2) {
      throw new Complaint(
          ExitCode.USAGE, "Write %s as a depth and days, such as \"6 mm,2\".".formatted(option));
    }
    return parts;
  }

  private double celsius(String words) {
    double kept = number("--not-below", words, QuantityKind.TEMPERATURE, -60, 120);
    return QuantityKind.TEMPERATURE.unit(system).convert(kept, Units.CELSIUS);
  }

  private double number(String option, String words, QuantityKind kind, double from, double to) {
    QuantityText.Reading reading = QuantityText.read(words, kind, system);
    if (reading instanceof QuantityText.Read read && read.value() >= from && read.value() <= to) {
      return read.value();
    }
    throw new Complaint(
        ExitCode.USAGE,
        reading instanceof QuantityText.Unreadable not
            ? "%s: %s.".formatted(option, not.sentence())
            : "%s: “%s” is out of range.".formatted(option, words.strip()));
  }

  private static SeasonWeather typical(Book book) {
    SeasonWeather.FromMonths made = SeasonWeather.of(book);
    return made.weather().orElseThrow(() -> new Complaint(ExitCode.FOUND, made.problem()));
  }

  private SeasonWeather read(Path path, Book book) {
    StationSite site =
        new StationSite(
            "",
            place(book, WeatherSite.LATITUDE, Units.DEGREE),
            Double.NaN,
            place(book, WeatherSite.ELEVATION, Units.METRE),
            Double.NaN,
            Double.NaN);
    try {
      WeatherFile opened = WeatherFile.open(path);
      return SeasonWeather.of(
          opened.read(
              WeatherTaken.choicesFor(book).at(site),
              SlowWork.telling("Reading " + path, err())::at));
    } catch (WeatherProblem problem) {
      throw new Complaint(
          ExitCode.FILE,
          problem.getMessage()
              + " The command weather takes more said of a file; name here what its --days writes.");
    }
  }

  private static double place(Book book, Column column, Unit unit) {
    double kept = book.number(column.reference(), 0);
    return Double.isNaN(kept) ? kept : column.kind().unit(book.system()).convert(kept, unit);
  }

  private static SeasonZone zoneNamed(Season season, String name) {
    return season.zones().zones().stream()
        .filter(each -> each.name().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "There is no zone “%s” to follow; there are %s."
                        .formatted(
                            name.strip(),
                            season.zones().zones().stream()
                                .map(SeasonZone::name)
                                .collect(Collectors.joining(", ")))));
  }

  private void told(Season season, SeasonRules which, Book book) {
    out().println();
    out().println("%s: %s".formatted(capital(which.label()), season.zones().schedule()) + ".");
    SeasonTable.summary(season, system).forEach(out()::println);
    season
        .cost(book)
        .ifPresent(
            cost ->
                out()
                    .println(
                        "The water costs %s a year by the sheet Rates."
                            .formatted(QuantityText.grouped(cost, 2))));
    print(SeasonTable.ofZones(season, system));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private void difference(Season one, Season other) {
    out().println();
    double litres = (other.litres() - one.litres()) / one.years();
    out()
        .println(
            "The second gives %s a year %s, meets %s %% of the need against %s %%, and wastes %s %% against %s %%."
                .formatted(
                    SeasonTable.volume(Math.abs(litres), system),
                    litres < 0 ? "less" : "more",
                    whole(other.adequacy()),
                    whole(one.adequacy()),
                    whole(other.excess()),
                    whole(one.excess())));
  }

  private static String whole(double share) {
    return QuantityText.grouped(100 * share, 0);
  }

  private void print(SeasonTable table) {
    if (csv) {
      out()
          .print(
              CsvText.line(table.headings().stream().map(SeasonTable.Heading::withUnit).toList()));
      for (List<SeasonTable.Cell> row : table.rows()) {
        out()
            .print(
                CsvText.line(
                    row.stream()
                        .map(
                            cell ->
                                Double.isNaN(cell.number())
                                    ? CsvText.harmless(cell.words())
                                    : cell.plain())
                        .toList()));
      }
      return;
    }
    TextTable text = new TextTable();
    table.headings().forEach(heading -> text.column(heading.withUnit(), heading.numbers()));
    for (List<SeasonTable.Cell> row : table.rows()) {
      text.row(new ArrayList<>(row.stream().map(SeasonTable.Cell::shown).toList()));
    }
    text.lines().forEach(out()::println);
  }
}
