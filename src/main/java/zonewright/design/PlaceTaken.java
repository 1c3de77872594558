package zonewright.design;

import java.util.List;
import java.util.Optional;
import zonewright.climate.CalculatedEt;
import zonewright.climate.Climate;
import zonewright.climate.MonthlyWeather;
import zonewright.climate.PlaceFinder;
import zonewright.climate.Radiation;
import zonewright.climate.Rain;
import zonewright.climate.Weather;
import zonewright.climate.WeatherSite;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * A climate place taken into a design: one edit. A published place is named on the site; of another
 * the weather goes to the sheet Weather, which works reference ET out before everybody's eyes, and
 * the design carries no other place.
 */
public final class PlaceTaken {
  private static final double ON_A_COAST = 0.19;

  /** What would go before the weather of the place, or beside it. */
  private static final List<Column> CLEARED =
      List.of(
          Weather.HIGHEST_HUMIDITY,
          Weather.LOWEST_HUMIDITY,
          Weather.MEAN_HUMIDITY,
          Weather.SUNSHINE,
          Weather.VAPOUR_PRESSURE,
          Radiation.DAY_OF_YEAR,
          CalculatedEt.SOIL_HEAT_FLUX,
          Climate.REFERENCE_ET);

  private PlaceTaken() {}

  /**
   * Returns the edit that lets a design's reference ET come from a place. Of a place whose ET is
   * worked out, latitude, elevation and weather take the place of what the design has of them, and
   * months typed over are cleared, for they would hide it; rain goes into Months where it is known.
   */
  public static Edit edit(Book book, PlaceFinder.Found place) {
    TakenCells cells = new TakenCells(book);
    if (place.weather().isPresent()) {
      weather(cells, place.weather().get());
    } else {
      cells.word(Climate.PLACE, place.place());
      cells.word(WeatherSite.ET_METHOD, WeatherSite.PUBLISHED);
    }
    return cells.edit("climate place " + place.place());
  }

  /**
   * Returns the place whose weather was read that a person named as the climate place, where it is
   * none of the published ones: the one called so, or the only one with these words.
   */
  public static Optional<PlaceFinder.Found> named(Book book) {
    if (!(book.entry(Climate.PLACE.reference(), 0) instanceof Entry.Words words)
        || Climate.PLACES.position(words.text()).isPresent()) {
      return Optional.empty();
    }
    List<PlaceFinder.Found> found =
        PlaceFinder.named(words.text()).stream()
            .filter(each -> each.weather().isPresent())
            .toList();
    return found.stream()
        .filter(each -> each.place().equalsIgnoreCase(words.text().strip()))
        .findFirst()
        .or(() -> found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty());
  }

  private static void weather(TakenCells cells, MonthlyWeather weather) {
    cells.set(Climate.PLACE, 0, Entry.BLANK);
    cells.word(WeatherSite.ET_METHOD, WeatherSite.PENMAN_MONTEITH);
    cells.word(
        WeatherSite.WEATHER_FROM,
        "%s, %s: %s".formatted(weather.place(), weather.region(), weather.origin()));
    cells.figure(WeatherSite.LATITUDE, 0, weather.latitude(), Units.DEGREE);
    double elevation = Double.isNaN(weather.elevation()) ? 0 : weather.elevation();
    cells.figure(WeatherSite.ELEVATION, 0, elevation, Units.METRE);
    cells.figure(WeatherSite.WIND_HEIGHT, 0, weather.windHeight(), Units.METRE);
    double coefficient = weather.coast() ? ON_A_COAST : Double.NaN;
    cells.figure(WeatherSite.RADIATION_COEFFICIENT, 0, coefficient, Units.ONE);
    months(cells, Weather.HIGHEST, weather.highest(), Units.CELSIUS);
    months(cells, Weather.LOWEST, weather.lowest(), Units.CELSIUS);
    months(cells, Weather.DEW_POINT, weather.dewPoint(), Units.CELSIUS);
    months(cells, Weather.WIND, weather.wind(), Units.METRE_PER_SECOND);
    months(
        cells,
        Weather.SOLAR_RADIATION_MEASURED,
        weather.radiation(),
        Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY);
    for (Column column : CLEARED) {
      months(cells, column, List.of(), Units.ONE);
    }
    if (!weather.rain().isEmpty()) {
      months(cells, Rain.MONTH_RAIN, weather.rain(), Units.MILLIMETRE);
    }
  }

  private static void months(TakenCells cells, Column column, List<Double> numbers, Unit unit) {
    for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
      cells.figure(column, month, numbers.isEmpty() ? Double.NaN : numbers.get(month), unit);
    }
  }
}
