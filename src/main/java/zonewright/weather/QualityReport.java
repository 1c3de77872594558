package zonewright.weather;

import java.util.ArrayList;
import java.util.List;

/** What a person should know of a weather file before trusting it, read in a minute. */
final class QualityReport {
  private final String form;
  private final DailyRecord record;
  private final Observations observed;
  private final double windHeight;

  QualityReport(String form, DailyRecord record, Observations observed, double windHeight) {
    this.form = form;
    this.record = record;
    this.observed = observed;
    this.windHeight = windHeight;
  }

  /** Returns the sentences, the most important first. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add("%s is %s.".formatted(record.file(), form));
    place(sentences);
    span(sentences);
    ways(sentences);
    warnings(sentences);
    sentences.addAll(observed.quality().sentences());
    return sentences;
  }

  private void place(List<String> sentences) {
    StationSite site = record.site();
    List<String> parts = new ArrayList<>();
    if (!Double.isNaN(site.latitude())) {
      parts.add(
          Sentence.decimal(Math.abs(site.latitude()), 2)
              + "° "
              + (site.latitude() < 0 ? "south" : "north"));
    }
    if (!Double.isNaN(site.longitude())) {
      parts.add(
          Sentence.decimal(Math.abs(site.longitude()), 2)
              + "° "
              + (site.longitude() < 0 ? "west" : "east"));
    }
    if (!Double.isNaN(site.elevation())) {
      parts.add(Sentence.decimal(site.elevation(), 0) + " m above the sea");
    }
    if (observed.elements().contains(WeatherElement.WIND)) {
      parts.add(
          "wind measured at " + Sentence.decimal(windHeight, windHeight % 1 == 0 ? 0 : 1) + " m");
    }
    if (!parts.isEmpty()) {
      sentences.add(
          (site.name().isEmpty() ? "The place: " : site.name() + ": ")
              + String.join(", ", parts)
              + ".");
    }
  }

  private void span(List<String> sentences) {
    int first = record.dayNumber(0);
    int last = record.dayNumber(record.size() - 1);
    long gaps = (long) last - first + 1 - record.size();
    sentences.add(
        "%s from %s to %s; %s."
            .formatted(
                WeatherStep.DAY.count(record.size()),
                record.date(0),
                record.date(record.size() - 1),
                gaps == 0
                    ? "none is missing"
                    : WeatherStep.DAY.count(gaps) + " between them missing"));
  }

  private void ways(List<String> sentences) {
    StringBuilder text = new StringBuilder();
    for (DayNote note :
        List.of(
            DayNote.GIVEN, DayNote.BY_HOURS, DayNote.BY_DAY, DayNote.HARGREAVES, DayNote.NONE)) {
      int count = record.count(note);
      if (count > 0) {
        text.append(text.isEmpty() ? "" : "; ")
            .append(WeatherStep.DAY.count(count))
            .append(' ')
            .append(note.words());
      }
    }
    boolean equation = record.count(DayNote.BY_DAY) + record.count(DayNote.BY_HOURS) > 0;
    sentences.add(
        "Reference evapotranspiration: %s%s."
            .formatted(text, equation ? " (" + record.equation().words() + ")" : ""));
    StringBuilder filled = new StringBuilder();
    for (DayNote note :
        List.of(
            DayNote.DEW_FROM_LOWEST,
            DayNote.SUN_FROM_RANGE,
            DayNote.SUN_FROM_SUNSHINE,
            DayNote.WIND_OF_TWO,
            DayNote.AT_SATURATION)) {
      int count = record.count(note);
      if (count > 0) {
        filled
            .append(filled.isEmpty() ? "" : "; ")
            .append(note.words())
            .append(" on ")
            .append(WeatherStep.DAY.count(count));
      }
    }
    if (!filled.isEmpty()) {
      sentences.add("Filled in: " + filled + ".");
    }
    if (!observed.elements().contains(WeatherElement.RAIN)) {
      sentences.add("The file tells nothing of rain.");
    }
  }

  private void warnings(List<String> sentences) {
    Quality quality = observed.quality();
    double share = DailyCalculation.suspiciousShare() * record.size();
    long above =
        quality.count(WeatherElement.RADIATION, Quality.Fault.ABOVE_THE_AIR)
            + quality.count(WeatherElement.RADIATION, Quality.Fault.ABOVE_CLEAR_SKY);
    if (above > share) {
      sentences.add(
          "Look at the unit of solar radiation: on %s it is more than a clear sky lets through."
              .formatted(WeatherStep.DAY.count(above)));
    }
    StationSite site = record.site();
    if (observed.step() == WeatherStep.HOUR && Double.isNaN(site.longitude() + site.timeZone())) {
      sentences.add(
          "The clock was taken for that of the sun, for longitude or time zone are not known.");
    }
    long again = quality.count(Quality.Fault.TWICE_DIFFERENTLY);
    if (again > observed.size() / 2) {
      sentences.add(
          "The file has several lines for most %s; one was kept of each. Files of days and of hours are read, none finer."
              .formatted(observed.step() == WeatherStep.DAY ? "days" : "hours"));
    }
  }
}
