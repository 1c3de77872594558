package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.WeatherTaken;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.weather.ColumnMatch;
import zonewright.weather.DailyRecord;
import zonewright.weather.Equation;
import zonewright.weather.StationSite;
import zonewright.weather.WeatherChoices;
import zonewright.weather.WeatherElement;
import zonewright.weather.WeatherFile;
import zonewright.weather.WeatherProblem;
import zonewright.weather.YearsOfWeather;
import zonewright.workbook.DaysFile;
import zonewright.workbook.DesignFileException;

/** Reads a weather file, says what it is worth, and takes its months into a design. */
@Command(
    name = "weather",
    header = "Read a weather file: what it is worth, and the months it gives a design.",
    description = {
      "",
      "Hourly files (EPW), daily summaries of weather services (GHCN-Daily as CSV) and any CSV of days or"
          + " hours whose first line names its columns, units in parentheses: Max temp (°F). What the"
          + " headings leave open is said with --match and --unit. Nothing is fetched.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright weather station.csv --latitude 38.5 --elevation 18",
      "  zonewright weather station.csv --into garden.xlsx --from garden.xlsx --replace --covering 8",
      "  zonewright weather days.csv --match \"Hi=highest temperature\" --unit \"Hi=°F\" --days et.csv"
    })
final class WeatherCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(index = "0", paramLabel = "FILE", description = "The weather file.")
  private Path file;

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description = "Where to write a design with the weather in it; ends in .xlsx.")
  private Optional<Path> into = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "DESIGN",
      description = "The design to take the weather into; an empty one unless given.")
  private Optional<Path> from = Optional.empty();

  @Option(names = "--replace", description = "Replace files that are there already.")
  private boolean replace;

  @Option(
      names = "--covering",
      paramLabel = "mean|5|8|9",
      description =
          "For how many years of 10 the months shall be enough; 8 where there are 10 years, else the best there is.")
  private Optional<String> covering = Optional.empty();

  @Option(
      names = "--latitude",
      paramLabel = "DEGREES",
      description = "Where it was measured; south is negative.")
  private double latitude = Double.NaN;

  @Option(
      names = "--longitude",
      paramLabel = "DEGREES",
      description = "The same; west is negative.")
  private double longitude = Double.NaN;

  @Option(names = "--elevation", paramLabel = "METRES", description = "Height above the sea.")
  private double elevation = Double.NaN;

  @Option(
      names = "--wind-height",
      paramLabel = "METRES",
      description = "Height above ground at which wind was measured; 2 unless the file says so.")
  private double windHeight = Double.NaN;

  @Option(
      names = "--clock",
      paramLabel = "HOURS",
      description = "How far the clock of hourly files is ahead of Greenwich; west is negative.")
  private double clock = Double.NaN;

  @Option(
      names = "--equation",
      paramLabel = "asce|fao",
      description = "Which form of the Penman-Monteith equation; asce unless given.")
  private String equation = "asce";

  @Option(
      names = "--dry",
      description =
          "The country is dry: dew falls 2 °C below the lowest temperature, where humidity is missing.")
  private boolean dry;

  @Option(
      names = "--coast",
      description = "A coast is near: radiation follows otherwise from temperatures.")
  private boolean coast;

  @Option(
      names = "--day-first",
      arity = "1",
      paramLabel = "yes|no",
      description =
          "Whether the day stands before the month in dates; by what they show unless given.")
  private Optional<String> dayFirst = Optional.empty();

  @Option(
      names = "--match",
      paramLabel = "THEIRS=WHAT",
      description = "What a column holds, such as \"Hi=highest temperature\"; may be repeated.")
  private List<String> matches = new ArrayList<>();

  @Option(
      names = "--unit",
      paramLabel = "THEIRS=UNIT",
      description = "The unit of a column whose heading names none; may be repeated.")
  private List<String> units = new ArrayList<>();

  @Option(
      names = "--leave",
      paramLabel = "THEIRS",
      description = "A column to leave out; may be repeated.")
  private List<String> left = new ArrayList<>();

  @Option(
      names = "--days",
      paramLabel = "PATH",
      description =
          "Write each day with its evapotranspiration and how it came about: a workbook with the sheet Days where the path ends in .xlsx, else CSV.")
  private Optional<Path> days = Optional.empty();

  @Override
  public Integer call() {
    into.ifPresent(path -> DesignFiles.mayWrite(path, replace));
    days.ifPresent(path -> DesignFiles.mayReplace(path, replace));
    Design design = source.designOrBlank(from, err());
    YearsOfWeather years = years(WeatherTaken.storage(design.book()));
    years.record().report().forEach(out()::println);
    out().println();
    print(years, design.book().system());
    days.ifPresent(path -> write(years.record(), design.book().system(), path));
    into.ifPresent(path -> take(design, years, path));
    return ExitCode.FINE;
  }

  private YearsOfWeather years(double storage) {
    try {
      WeatherFile weather = WeatherFile.open(file);
      weather.match().ifPresent(this::match);
      return new YearsOfWeather(
          weather.read(choices(storage), SlowWork.telling("Reading " + file, err())::at));
    } catch (WeatherProblem problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
  }

  private WeatherChoices choices(double storage) {
    Equation form =
        switch (equation.toLowerCase(Locale.ROOT)) {
          case "asce" -> Equation.ASCE;
          case "fao" -> Equation.FAO;
          default ->
              throw new Complaint(
                  ExitCode.USAGE,
                  "“%s” is no equation here; write asce or fao.".formatted(equation));
        };
    within("latitude", latitude, 90);
    within("longitude", longitude, 180);
    within("elevation", elevation, 9000);
    within("clock", clock, 14);
    if (windHeight < 0.5 || windHeight > 200) {
      throw new Complaint(
          ExitCode.USAGE, "Wind is measured 0.5 to 200 m above ground; say --wind-height so.");
    }
    Optional<Boolean> first =
        dayFirst.map(
            word ->
                switch (word.toLowerCase(Locale.ROOT)) {
                  case "yes" -> true;
                  case "no" -> false;
                  default -> throw new Complaint(ExitCode.USAGE, "Write --day-first yes or no.");
                });
    return new WeatherChoices(
        new StationSite("", latitude, longitude, elevation, windHeight, clock),
        form,
        dry,
        coast,
        first,
        storage);
  }

  private static void within(String what, double value, int most) {
    if (Math.abs(value) > most) {
      throw new Complaint(
          ExitCode.USAGE, "--%s lies between -%s and %s.".formatted(what, most, most));
    }
  }

  private void match(ColumnMatch match) {
    for (String name : left) {
      match.leave(position(match, name));
    }
    for (String pair : matches) {
      int at = parted("--match", pair);
      String what = pair.substring(at + 1).strip();
      WeatherElement element =
          Arrays.stream(WeatherElement.values())
              .filter(each -> each.words().equalsIgnoreCase(what))
              .findFirst()
              .orElseThrow(
                  () ->
                      new Complaint(
                          ExitCode.USAGE,
                          "“%s” is nothing a weather file holds here; there are %s."
                              .formatted(
                                  what,
                                  Arrays.stream(WeatherElement.values())
                                      .map(WeatherElement::words)
                                      .collect(Collectors.joining(", ")))));
      int position = position(match, pair.substring(0, at));
      match.set(position, element, match.unit(position));
    }
    for (String pair : units) {
      int at = parted("--unit", pair);
      int position = position(match, pair.substring(0, at));
      WeatherElement element =
          match
              .element(position)
              .orElseThrow(
                  () ->
                      new Complaint(
                          ExitCode.USAGE,
                          "Say first with --match what “%s” holds."
                              .formatted(match.headings().get(position))));
      match.set(position, element, pair.substring(at + 1));
    }
  }

  private static int parted(String option, String pair) {
    int at = pair.lastIndexOf('=');
    if (at < 0) {
      throw new Complaint(
          ExitCode.USAGE, "Write %s \"their column=…\", not “%s”.".formatted(option, pair));
    }
    return at;
  }

  private static int position(ColumnMatch match, String heading) {
    OptionalInt position = match.position(heading);
    if (position.isEmpty()) {
      throw new Complaint(
          ExitCode.USAGE,
          "The file has no column “%s”; it has %s."
              .formatted(heading.strip(), String.join(", ", match.headings())));
    }
    return position.getAsInt();
  }

  /** Prints what the months and the hottest spans come to. */
  private void print(YearsOfWeather years, UnitSystem system) {
    TextTable table = new TextTable();
    table.column("Span", false);
    for (String heading :
        List.of("Years", "Mean ET", "5 of 10", "8 of 10", "9 of 10", "Rain", "Rain that counts")) {
      table.column(heading, true);
    }
    List<YearsOfWeather.Stretch> months = years.months();
    for (int month = 0; month < months.size(); month++) {
      table.row(line(Climate.MONTH_NAMES.get(month), months.get(month), system));
    }
    for (YearsOfWeather.Stretch span : years.spans()) {
      table.row(line("Hottest %s days".formatted(span.days()), span, system));
    }
    table.lines().forEach(out()::println);
    out()
        .println(
            "Reference ET and rain in %s; rain that counts by days."
                .formatted(system == UnitSystem.US ? "inches" : "millimetres"));
    years.season().ifPresent(words -> out().println(words + "."));
  }

  private static List<String> line(String name, YearsOfWeather.Stretch stretch, UnitSystem system) {
    List<String> cells = new ArrayList<>(List.of(name, String.valueOf(stretch.years())));
    cells.add(depth(stretch.mean(), system));
    stretch.notExceeded().forEach(value -> cells.add(depth(value, system)));
    cells.add(depth(stretch.rain(), system));
    cells.add(depth(stretch.effectiveRain(), system));
    return cells;
  }

  private static String depth(double millimetres, UnitSystem system) {
    if (Double.isNaN(millimetres)) {
      return "–";
    }
    return system == UnitSystem.US
        ? String.format(Locale.ROOT, "%.2f", Units.MILLIMETRE.convert(millimetres, Units.INCH))
        : String.format(Locale.ROOT, "%.1f", millimetres);
  }

  private void write(DailyRecord record, UnitSystem system, Path path) {
    try {
      DaysFile.write(record, system, path);
    } catch (DesignFileException problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
    out().println("Written: " + path);
  }

  private void take(Design design, YearsOfWeather years, Path path) {
    String covered =
        covering
            .map(
                word ->
                    WeatherTaken.choices(years).stream()
                        .filter(choice -> choice.startsWith(word))
                        .findFirst()
                        .orElseThrow(
                            () ->
                                new Complaint(
                                    ExitCode.USAGE,
                                    "The file serves no --covering %s; it has years for %s."
                                        .formatted(
                                            word, String.join(", ", WeatherTaken.choices(years))))))
            .orElse(WeatherTaken.usualChoice(years));
    WeatherTaken.typedOver(design.book()).ifPresent(err()::println);
    design.book().perform(WeatherTaken.edit(design.book(), years, covered));
    DesignFiles.save(design, path, source.kept(), err());
    out().println("Written: %s, with reference ET for the %s".formatted(path, covered));
  }
}
