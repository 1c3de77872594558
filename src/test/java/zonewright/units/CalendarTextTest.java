package zonewright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times of the day and dates, as people write them. */
class CalendarTextTest {
  private static QuantityText.Reading read(String text, QuantityKind kind) {
    return QuantityText.read(text, kind, UnitSystem.US);
  }

  @ParameterizedTest
  @CsvSource({
    "22:00, 22:00",
    "10 pm, 22:00",
    "10 PM, 22:00",
    "10:30 p.m., 22:30",
    "2200, 22:00",
    "930, 09:30",
    "22, 22:00",
    "6, 06:00",
    "6.15, 06:15",
    "22h, 22:00",
    "22h30, 22:30",
    "12 am, 00:00",
    "12 pm, 12:00",
    "12:05 am, 00:05",
    "noon, 12:00",
    "midnight, 00:00",
    "22:00:00, 22:00",
    "24:00, 24:00"
  })
  void manyWaysOfWritingATimeMeanTheSame(String typed, String shown) {
    QuantityText.Read time = (QuantityText.Read) read(typed, QuantityKind.TIME_OF_DAY);
    assertThat(QuantityText.shown(time.value(), QuantityKind.TIME_OF_DAY, 0)).isEqualTo(shown);
  }

  @ParameterizedTest
  @ValueSource(strings = {"25:00", "13 pm", "0 am", "22:60", "24:01", "evening", "10 min", "1/2"})
  void whatIsNoTimeIsRefusedWithAnExample(String typed) {
    assertThat(read(typed, QuantityKind.TIME_OF_DAY))
        .isEqualTo(
            new QuantityText.Unreadable(
                "“" + typed + "” is not a time of day; write for example 10 pm or 22:00"));
  }

  /** A spreadsheet keeps 6 pm as three quarters of a day. */
  @Test
  void aTimeIsThePartOfTheDayThatHasPassed() {
    assertThat(read("6 pm", QuantityKind.TIME_OF_DAY)).isEqualTo(new QuantityText.Read(0.75));
    assertThat(CalendarText.minuteOfDay(0.75)).isEqualTo(18 * 60);
    assertThat(CalendarText.timeOfDay(30 * 60)).isCloseTo(0.25, within(0.0));
  }

  @Test
  void everyMinuteOfTheDayReadsBackExactly() {
    for (int minute = 0; minute < 1440; minute++) {
      double time = CalendarText.timeOfDay(minute);
      String typed = QuantityText.typed(time, QuantityKind.TIME_OF_DAY);
      assertThat(read(typed, QuantityKind.TIME_OF_DAY)).isEqualTo(new QuantityText.Read(time));
      assertThat(CalendarText.minuteOfDay(time)).isEqualTo(minute);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2026-06-01;2026-06-01",
        "2026-6-1;2026-06-01",
        "1 June 2026;2026-06-01",
        "1. Jun 2026;2026-06-01",
        "June 1, 2026;2026-06-01",
        "Sept 30 2026;2026-09-30"
      })
  void datesAreReadWhereMonthAndDayAreInNoDoubt(String typed, String shown) {
    QuantityText.Read date = (QuantityText.Read) read(typed, QuantityKind.DATE);
    assertThat(QuantityText.shown(date.value(), QuantityKind.DATE, 0)).isEqualTo(shown);
    assertThat(CalendarText.date(date.value())).isEqualTo(LocalDate.parse(shown));
  }

  /** In figures alone the month comes first in the United States, and else the day. */
  @Test
  void datesInFiguresAreReadAsPeopleWriteThemWhereTheUnitsAreUsual() {
    assertThat(inFigures("6/1/2026", UnitSystem.US)).isEqualTo("2026-06-01");
    assertThat(inFigures("6/1/26", UnitSystem.US)).isEqualTo("2026-06-01");
    assertThat(inFigures("1/6/2026", UnitSystem.SI)).isEqualTo("2026-06-01");
    assertThat(inFigures("1.6.2026", UnitSystem.US)).isEqualTo("2026-06-01");
    assertThat(inFigures("25/6/2026", UnitSystem.US)).isEqualTo("2026-06-25");
    assertThat(inFigures("2026/6/1", UnitSystem.SI)).isEqualTo("2026-06-01");
    assertThat(inFigures("Monday, June 1, 2026", UnitSystem.US)).isEqualTo("2026-06-01");
  }

  private static String inFigures(String typed, UnitSystem system) {
    QuantityText.Read date =
        (QuantityText.Read) QuantityText.read(typed, QuantityKind.DATE, system);
    return QuantityText.shown(date.value(), QuantityKind.DATE, 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"13/13/2026", "2026-02-30", "2/30/2026", "30 Foo 2026", "tomorrow"})
  void whatIsNoDateIsRefused(String typed) {
    assertThat(read(typed, QuantityKind.DATE)).isInstanceOf(QuantityText.Unreadable.class);
  }

  /** ECMA-376 part 1, 18.17.4.1: in the 1900 date system 1 January 2000 is day 36526. */
  @Test
  void aDateIsTheNumberASpreadsheetKeeps() {
    assertThat(CalendarText.days(LocalDate.of(2000, 1, 1))).isEqualTo(36526);
    assertThat(CalendarText.date(36526)).isEqualTo(LocalDate.of(2000, 1, 1));
  }
}
