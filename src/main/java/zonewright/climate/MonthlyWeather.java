package zonewright.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.formula.ReferenceTable;

/**
 * Mean weather of a place month by month, read in a named file: from it the sheet Weather works out
 * reference evapotranspiration where no published months are to be had.
 *
 * <p>A list has twelve numbers, or none where the file does not say; a number not known is
 * not-a-number.
 *
 * @param region state and country, or the country
 * @param latitude degrees, north positive
 * @param longitude degrees, east positive
 * @param elevation metres above the sea
 * @param highest mean of the daily highest temperatures, °C
 * @param lowest mean of the daily lowest temperatures, °C
 * @param dewPoint mean dew point, °C
 * @param wind mean wind, m/s
 * @param windHeight metres above ground at which it was measured
 * @param radiation mean solar radiation of a day, MJ/m²
 * @param rain mean rain of the month, mm
 * @param coast whether the place lies on a coast
 * @param source where it was read, and what that is worth
 */
public record MonthlyWeather(
    String place,
    String region,
    double latitude,
    double longitude,
    double elevation,
    List<Double> highest,
    List<Double> lowest,
    List<Double> dewPoint,
    List<Double> wind,
    double windHeight,
    List<Double> radiation,
    List<Double> rain,
    boolean coast,
    String source) {
  private static final List<MonthlyWeather> PLACES = read();

  /** Returns all places, in the order of the table. */
  public static List<MonthlyWeather> places() {
    return PLACES;
  }

  /** Returns in one line how reference ET comes about here, what is filled in, and the source. */
  public String origin() {
    return "worked out by Penman-Monteith (FAO-56) from monthly means of %s%s. %s"
        .formatted(listed(measured()), filledIn(), source);
  }

  private List<String> measured() {
    List<String> measured = new ArrayList<>(List.of("temperature"));
    say(measured, dewPoint, "dew point");
    say(measured, wind, "wind");
    say(measured, radiation, "sun");
    return measured;
  }

  private static void say(List<String> said, List<Double> numbers, String what) {
    if (!numbers.isEmpty()) {
      said.add(what);
    }
  }

  private String filledIn() {
    List<String> filled = new ArrayList<>();
    if (dewPoint.isEmpty()) {
      filled.add("the dew point taken as the lowest temperature");
    }
    if (wind.isEmpty()) {
      filled.add("wind as 2 m/s");
    }
    if (radiation.isEmpty()) {
      filled.add("the sun from the range of temperatures");
    }
    if (Double.isNaN(elevation)) {
      filled.add("the height as that of the sea");
    }
    return filled.isEmpty() ? "" : "; " + listed(filled);
  }

  private static String listed(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  private static List<MonthlyWeather> read() {
    ReferenceTable table =
        ReferenceTable.read(MonthlyWeather.class, "monthly-weather.csv", "MonthlyWeather");
    return IntStream.range(0, table.size()).mapToObj(row -> of(table, row)).toList();
  }

  private static MonthlyWeather of(ReferenceTable table, int row) {
    return new MonthlyWeather(
        table.keys().get(row),
        table.text(row, "Region"),
        number(table.text(row, "Latitude")),
        number(table.text(row, "Longitude")),
        number(table.text(row, "Elevation (m)")),
        numbers(table.text(row, "Highest (°C)")),
        numbers(table.text(row, "Lowest (°C)")),
        numbers(table.text(row, "Dew point (°C)")),
        numbers(table.text(row, "Wind (m/s)")),
        number(table.text(row, "Wind height (m)")),
        numbers(table.text(row, "Radiation (MJ/m²/day)")),
        numbers(table.text(row, "Rain (mm)")),
        table.text(row, "Coast").equals("yes"),
        table.origin(row));
  }

  private static double number(String text) {
    return text.isBlank() ? Double.NaN : Double.parseDouble(text);
  }

  private static List<Double> numbers(String text) {
    return text.isBlank()
        ? List.of()
        : Stream.of(text.split(" ", -1)).map(Double::valueOf).toList();
  }
}
