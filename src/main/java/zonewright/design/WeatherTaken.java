package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.climate.RecordedWeather;
import zonewright.climate.WeatherSite;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.units.Units;
import zonewright.weather.StationSite;
import zonewright.weather.WeatherChoices;
import zonewright.weather.YearsOfWeather;

/** Years of weather taken into a design: one edit, after which the weather file is not needed. */
public final class WeatherTaken {
  private final YearsOfWeather years;
  private final TakenCells cells;

  private WeatherTaken(Book book, YearsOfWeather years) {
    this.years = years;
    this.cells = new TakenCells(book);
  }

  /**
   * Returns what a design says already of a weather file yet to be read: its place, its storage.
   */
  public static WeatherChoices choicesFor(Book book) {
    return new WeatherChoices(
        StationSite.UNKNOWN,
        WeatherChoices.USUAL.equation(),
        false,
        false,
        Optional.empty(),
        storage(book));
  }

  /** Returns a sentence on the months typed over, which a record takes the place of; if any are. */
  public static Optional<String> typedOver(Book book) {
    List<String> typed =
        IntStream.range(0, Climate.MONTH_NAMES.size())
            .filter(
                month ->
                    !(book.entry(Climate.REFERENCE_ET.reference(), month) instanceof Entry.Blank))
            .mapToObj(Climate.MONTH_NAMES::get)
            .toList();
    return typed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "What was typed as reference ET of %s was cleared, for it would hide the record."
                .formatted(String.join(", ", typed)));
  }

  /** Returns the rain that a design's root zones can take up between waterings, in mm. */
  public static double storage(Book book) {
    double kept = book.outcome(Rain.USABLE_STORAGE.reference(), 0).number();
    return Double.isNaN(kept)
        ? WeatherChoices.USUAL.storage()
        : Rain.USABLE_STORAGE.kind().unit(book.system()).convert(kept, Units.MILLIMETRE);
  }

  /**
   * Returns the words of the choices a record serves: what is not exceeded in 8 or 9 years of 10
   * only where there are years enough.
   */
  public static List<String> choices(YearsOfWeather years) {
    int fewest = years.months().stream().mapToInt(YearsOfWeather.Stretch::years).min().orElse(0);
    List<String> choices = new ArrayList<>(List.of(RecordedWeather.MEAN_OF_THE_YEARS));
    if (fewest >= YearsOfWeather.ENOUGH_FOR_HALF) {
      choices.add(RecordedWeather.FIVE_OF_TEN);
    }
    if (fewest >= YearsOfWeather.ENOUGH_YEARS) {
      choices.add(RecordedWeather.EIGHT_OF_TEN);
      choices.add(RecordedWeather.NINE_OF_TEN);
    }
    return choices;
  }

  /** Returns the usual choice: 8 years of 10, else the best there is. */
  public static String usualChoice(YearsOfWeather years) {
    List<String> choices = choices(years);
    return choices.contains(RecordedWeather.EIGHT_OF_TEN)
        ? RecordedWeather.EIGHT_OF_TEN
        : choices.get(choices.size() - 1);
  }

  /**
   * Returns the edit that puts a record into a design and lets its reference ET come from it.
   * Months typed over are cleared, for they would hide the record; latitude and elevation are set
   * where the design has none. Rain goes into Months only where the file has it for each month.
   *
   * @param covered one of {@link #choices}
   */
  public static Edit edit(Book book, YearsOfWeather years, String covered) {
    return new WeatherTaken(book, years).made(covered);
  }

  private Edit made(String covered) {
    cells.word(WeatherSite.ET_METHOD, WeatherSite.RECORD);
    cells.word(RecordedWeather.YEARS_COVERED, covered);
    cells.word(RecordedWeather.ORIGIN, years.origin());
    cells.set(
        RecordedWeather.SEASON, 0, years.season().<Entry>map(Entry.Words::new).orElse(Entry.BLANK));
    StationSite site = years.record().site();
    cells.place(WeatherSite.LATITUDE, site.latitude(), Units.DEGREE);
    cells.place(WeatherSite.ELEVATION, site.elevation(), Units.METRE);
    List<YearsOfWeather.Stretch> rows = new ArrayList<>(years.months());
    rows.addAll(years.spans());
    boolean rained = true;
    for (int row = 0; row < rows.size(); row++) {
      YearsOfWeather.Stretch stretch = rows.get(row);
      cells.figure(RecordedWeather.YEARS, row, stretch.years(), Units.ONE);
      cells.figure(RecordedWeather.MEAN, row, stretch.mean(), Units.MILLIMETRE);
      cells.figure(RecordedWeather.IN_FIVE, row, stretch.notExceeded().get(0), Units.MILLIMETRE);
      cells.figure(RecordedWeather.IN_EIGHT, row, stretch.notExceeded().get(1), Units.MILLIMETRE);
      cells.figure(RecordedWeather.IN_NINE, row, stretch.notExceeded().get(2), Units.MILLIMETRE);
      cells.figure(RecordedWeather.RAIN, row, stretch.rain(), Units.MILLIMETRE);
      cells.figure(RecordedWeather.EFFECTIVE_RAIN, row, stretch.effectiveRain(), Units.MILLIMETRE);
      cells.figure(RecordedWeather.FROST, row, stretch.frost(), Units.DAY);
      cells.figure(RecordedWeather.GROWING, row, stretch.growing(), Units.DAY);
      rained &= row >= Climate.MONTH_NAMES.size() || !Double.isNaN(stretch.rain());
    }
    for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
      cells.set(Climate.REFERENCE_ET, month, Entry.BLANK);
      if (rained) {
        cells.figure(Rain.MONTH_RAIN, month, rows.get(month).rain(), Units.MILLIMETRE);
      }
    }
    return cells.edit("weather of " + years.record().file());
  }
}
