package zonewright.handover;

import java.util.OptionalInt;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.RecordedWeather;
import zonewright.climate.WeatherSite;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;

/** Where the peak climate value of a design comes from, in sentences. */
public final class PeakOrigin {
  private PeakOrigin() {}

  /** Returns the sentences. */
  public static String of(Design design) {
    Book book = design.book();
    String method = words(book, WeatherSite.ET_METHOD);
    if (method.equals(WeatherSite.DESCRIPTION)) {
      return "From a general description of the climate only (%s); it can be off by half."
          .formatted(words(book, WeatherSite.DESCRIBED_CLIMATE));
    }
    String month = words(book, Peak.MONTH);
    int typed = 0;
    for (int row = 0; row < book.rows(Sheets.MONTHS); row++) {
      typed += book.entry(Climate.REFERENCE_ET.reference(), row) instanceof Entry.Blank ? 0 : 1;
    }
    String from = origin(book, method);
    String own =
        typed == 0
            ? ""
            : typed == book.rows(Sheets.MONTHS)
                ? " All months were typed in."
                : " %s of the months were typed over.".formatted(typed);
    boolean allTyped = typed == book.rows(Sheets.MONTHS);
    return "Mean daily reference evapotranspiration of %s, %s.%s%s"
        .formatted(
            month.isEmpty() ? "the peak month" : month,
            switch (words(book, Peak.CHOICE)) {
              case Peak.BY_DEFICIT -> "the month of the greatest deficit";
              case Peak.BY_ET -> "the month of the highest reference ET";
              default -> "the month that asks most";
            },
            allTyped || from.isEmpty() ? "" : " " + from,
            own);
  }

  private static String origin(Book book, String method) {
    if (!method.equals(WeatherSite.PUBLISHED)) {
      String weather = words(book, WeatherSite.WEATHER_FROM);
      return method.equals(WeatherSite.RECORD)
          ? "From years of measured weather: %s.".formatted(words(book, RecordedWeather.ORIGIN))
          : "Calculated from the sheet Weather by %s%s."
              .formatted(method, weather.isEmpty() ? "" : ". The weather is of " + weather);
    }
    String place = words(book, Climate.PLACE);
    OptionalInt row = Climate.PLACES.position(place);
    return row.isEmpty()
        ? ""
        : "Published monthly values for %s: %s."
            .formatted(place, Climate.PLACES.origin(row.getAsInt()));
  }

  private static String words(Book book, Column column) {
    return book.outcome(column.reference(), 0).text();
  }
}
