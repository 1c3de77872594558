package zonewright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files as people have them: what is read, filled in, refused, and said of it. Invented. */
class WeatherFileTest {
  private static String report(DailyRecord record) {
    return String.join("\n", record.report());
  }

  // FAO-56, example 18 (verified), as somebody's table: Uccle on 6 July, 3.88 mm.
  @Test
  void theExampleOfThePaperComesOutOfATable() throws WeatherProblem {
    DailyRecord record =
        WeatherText.file(
                """
                Date;Tmax (°C);Tmin (°C);RHmax (%);RHmin (%);Wind speed at 10 m (km/h);Sunshine (h)
                06/07/2026;21,5;12,3;84;63;10;9,25
                """)
            .read(
                new WeatherChoices(
                    new StationSite("Uccle", 50.8, Double.NaN, 100, Double.NaN, Double.NaN),
                    Equation.FAO,
                    false,
                    false,
                    Optional.of(true),
                    25),
                HowFar.UNWATCHED);
    assertThat(record.date(0)).isEqualTo(LocalDate.of(2026, 7, 6));
    assertThat(record.evapotranspiration(0)).isCloseTo(3.88, within(0.01));
    assertThat(record.notes(0)).containsExactly(DayNote.BY_DAY, DayNote.SUN_FROM_SUNSHINE);
    assertThat(report(record)).contains("50.80° north", "wind measured at 10 m");
  }

  // FAO-56, example 20 (verified): from temperatures alone the paper prints 5.0 by Hargreaves, and
  // with 2 m/s of wind 4.56.
  @Test
  void whatIsMissingIsFilledInAsThePaperSays() throws WeatherProblem {
    WeatherChoices lyon =
        WeatherChoices.USUAL
            .by(Equation.FAO)
            .at(new StationSite("", 45 + 43 / 60.0, Double.NaN, 200, Double.NaN, Double.NaN));
    DailyRecord bare =
        WeatherText.file("Date,Tmax (°C),Tmin (°C)\n2026-07-15,26.6,14.8\n")
            .read(lyon, HowFar.UNWATCHED);
    assertThat(bare.evapotranspiration(0)).isCloseTo(5.0, within(0.05));
    assertThat(bare.notes(0)).containsExactly(DayNote.HARGREAVES);
    DailyRecord windy =
        WeatherText.file("Date,Tmax (°C),Tmin (°C),Wind (m/s)\n2026-07-15,26.6,14.8,2\n")
            .read(lyon, HowFar.UNWATCHED);
    assertThat(windy.evapotranspiration(0)).isCloseTo(4.56, within(0.01));
    assertThat(windy.notes(0))
        .containsExactly(DayNote.BY_DAY, DayNote.DEW_FROM_LOWEST, DayNote.SUN_FROM_RANGE);
    assertThat(report(windy))
        .contains("humidity from the lowest temperature on 1 day", "tells nothing of rain");
  }

  @Test
  void anHourlyYearIsAddedUpHourByHour() throws WeatherProblem {
    DailyRecord record =
        WeatherText.file(WeatherText.hourlyYear(2001)).read(WeatherChoices.USUAL, HowFar.UNWATCHED);
    assertThat(record.size()).isEqualTo(365);
    assertThat(record.count(DayNote.BY_HOURS)).isEqualTo(365);
    assertThat(record.typical()).isFalse();
    assertThat(record.site().name()).isEqualTo("Inventown, CA");
    // the sum of the hours stays near what the whole day gives by itself
    DailyRecord byDay =
        WeatherText.file(WeatherText.hourlyYear(2001).replaceFirst("2001,7,1,12,0,[^\\n]*\\n", ""))
            .read(WeatherChoices.USUAL, HowFar.UNWATCHED);
    int july = 181;
    assertThat(byDay.notes(july)).contains(DayNote.BY_DAY);
    assertThat(record.evapotranspiration(july))
        .isCloseTo(byDay.evapotranspiration(july), within(1.0));
  }

  @Test
  void aYearOfUsualMonthsSaysNothingOfHowYearsDiffer() throws WeatherProblem {
    DailyRecord record =
        WeatherText.file(WeatherText.hourlyYear(1999, 2004, 1987))
            .read(WeatherChoices.USUAL, HowFar.UNWATCHED);
    assertThat(record.typical()).isTrue();
    assertThat(record.size()).isEqualTo(365);
    assertThat(report(record)).contains("what is usual, not how often more is needed");
    YearsOfWeather years = new YearsOfWeather(record);
    assertThat(years.months().get(6).mean()).isPositive();
    assertThat(years.months().get(6).notExceeded()).allSatisfy(each -> assertThat(each).isNaN());
  }

  // The archive writes tenths of °C and mm; the second letter of its attributes marks a doubt.
  @Test
  void dailySummariesAreReadInTheArchivesTenths() throws WeatherProblem {
    DailyRecord record =
        WeatherText.file(
                """
                "STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"
                "XX000000001","2020-07-14","45.7167","4.9","200.0","INVENTED","  127",",,W","  266",",,W","  148",",,W"
                "XX000000001","2020-07-15","45.7167","4.9","200.0","INVENTED","    0","T,,W","  289",",D,W","  148",",,W"
                """)
            .read(WeatherChoices.USUAL, HowFar.UNWATCHED);
    assertThat(record.rain(0)).isCloseTo(12.7, within(1e-9));
    assertThat(record.evapotranspiration(0)).isCloseTo(5.0, within(0.1));
    assertThat(record.evapotranspiration(1)).isNaN();
    assertThat(report(record)).contains("tenths of °C", "1 marked as doubtful");
  }

  @Test
  void dailySummariesOrderedInFahrenheitAndInchesAreKnownByTheirDecimals() throws WeatherProblem {
    DailyRecord record =
        WeatherText.read(
            "STATION,DATE,PRCP,TMAX,TMIN\nX,2020-07-01,0.50,90,60\nX,2020-07-02,0.00,91,61\n");
    assertThat(record.rain(0)).isCloseTo(12.7, within(1e-9));
    assertThat(record.lowest(0)).isCloseTo(15.556, within(0.001));
  }

  @Test
  void summariesWithALineForEachElementAreReadToo() throws WeatherProblem {
    DailyRecord record =
        WeatherText.read(
            """
            XX000000001,20200701,TMAX,266,,,W,
            XX000000001,20200701,TMIN,148,,,W,
            XX000000001,20200701,PRCP,25,,X,W,
            XX000000002,20200701,TMIN,148,,,W,
            """);
    assertThat(record.size()).isEqualTo(1);
    assertThat(record.evapotranspiration(0)).isPositive();
    assertThat(record.rain(0)).isNaN();
    assertThat(report(record)).contains("Left out, of other stations: 1 line");
  }

  @Test
  void unitsOfTheHeadingsCount() throws WeatherProblem {
    DailyRecord us =
        WeatherText.read(
            """
            Stn Id,Date,Jul,ETo (in),Precip (in),Sol Rad (Ly/day),Max Air Temp (F),Min Air Temp (F)
            6,7/13/2020,195,0.25,1,600,90.5,58.1
            6,7/14/2020,196,,0,600,90.5,58.1
            """);
    assertThat(us.evapotranspiration(0)).isCloseTo(6.35, within(1e-9));
    assertThat(us.rain(0)).isCloseTo(25.4, within(1e-9));
    assertThat(us.lowest(0)).isCloseTo(14.5, within(0.001));
    assertThat(us.notes(0)).containsExactly(DayNote.GIVEN);
    // 600 ly/day = 25.1 MJ/m²
    DailyRecord metric =
        WeatherText.read(
            "Date,Tmax (°C),Tmin (°C),Radiation (MJ/m²)\n2020-07-14,32.5,14.5,25.104\n");
    assertThat(us.evapotranspiration(1)).isCloseTo(metric.evapotranspiration(0), within(1e-6));
  }

  @Test
  void aHeadingWithoutAUnitIsAskedAbout() throws WeatherProblem {
    String text = "Date,Tmax,Tmin\n2020-07-01,90,60\n";
    assertThatThrownBy(() -> WeatherText.read(text))
        .isInstanceOf(WeatherProblem.class)
        .hasMessageContaining("“Tmax” names no unit")
        .hasMessageContaining("°C, °F, K");
    WeatherFile file = WeatherText.file(text);
    ColumnMatch match = file.match().orElseThrow();
    match.set(1, WeatherElement.HIGHEST, "°F");
    match.set(2, WeatherElement.LOWEST, "°F");
    assertThat(match.problems()).isEmpty();
    DailyRecord record =
        file.read(
            WeatherChoices.USUAL.at(new StationSite("", 38, Double.NaN, 0, Double.NaN, Double.NaN)),
            HowFar.UNWATCHED);
    assertThat(record.lowest(0)).isCloseTo(15.556, within(0.001));
  }

  // Headings as they are found, invented and gathered from memory.
  @ParameterizedTest
  @CsvSource({
    "Max Air Temp (F), HIGHEST",
    "Temperature Max (°C), HIGHEST",
    "temp_min (C), LOWEST",
    "tmax_c, HIGHEST",
    "Air Temperature Average (°C), TEMPERATURE",
    "temperature_2m_min (°C), LOWEST",
    "Rel humidity max (%), HIGHEST_HUMIDITY",
    "RH min (%), LOWEST_HUMIDITY",
    "Avg Rel Hum (%), HUMIDITY",
    "Dew Point (F), DEW_POINT",
    "Wind speed at 10 m (km/h), WIND",
    "Avg Wind Speed (mph), WIND",
    "Sol Rad (Ly/day), RADIATION",
    "Precip (in), RAIN",
    "ETo (in), EVAPOTRANSPIRATION"
  })
  void headingsAreTakenAtTheirWord(String heading, WeatherElement element) throws WeatherProblem {
    ColumnMatch match =
        WeatherText.file("Date," + heading + "\n2020-01-01,1\n").match().orElseThrow();
    assertThat(match.element(1)).contains(element);
    assertThat(match.problems()).noneMatch(problem -> problem.contains(heading));
  }

  @Test
  void aPlaceThatIsNotKnownIsAskedFor() {
    assertThatThrownBy(
            () ->
                WeatherText.file("Date,Tmax (°C),Tmin (°C)\n2020-07-01,30,15\n")
                    .read(WeatherChoices.USUAL, HowFar.UNWATCHED))
        .hasMessageContaining("its latitude and its height above the sea");
  }

  @Test
  void marksForNothingAndWhatCannotBeAreCounted() throws WeatherProblem {
    DailyRecord record =
        WeatherText.read(
            """
            Date,Tmax (°C),Tmin (°C),RH (%),Wind (m/s),Solar radiation (MJ/m²),Rain (mm)
            2020-07-01,30,15,-999,M,25,T
            2020-07-02,9999,15,50,2,25,
            2020-07-03,30,150,50,2,25,0
            2020-07-04,10,15,50,2,25,0
            2020-07-05,30,15,104,2,60,0
            2020-07-06,30,15,50,fast,25,0
            """);
    assertThat(record.rain(0)).isZero();
    assertThat(record.count(DayNote.NONE)).isEqualTo(3);
    assertThat(record.notes(0)).contains(DayNote.DEW_FROM_LOWEST, DayNote.WIND_OF_TWO);
    // 60 MJ/m² is more than the sun gives above the air: the day is worked out without it
    assertThat(record.notes(4)).contains(DayNote.SUN_FROM_RANGE);
    assertThat(report(record))
        .contains("1 out of limits (-90 to 60 °C) (first in line 4)")
        .contains("1 above the highest of the same day")
        .contains("1 above 100 % and taken as 100 %")
        .contains("1 more than reaches the top of the air")
        .contains("1 not a number (first in line 7)");
  }

  @Test
  void daysComeInOrderAndOnce() throws WeatherProblem {
    DailyRecord record =
        WeatherText.read(
            """
            Date,ET (mm)
            2020-02-29,2
            2020-02-28,1
            2020-03-01,3
            2020-03-01,4
            2020-03-05,3
            2021-02-29,3
            """);
    assertThat(record.size()).isEqualTo(4);
    assertThat(record.date(0)).isEqualTo(LocalDate.of(2020, 2, 28));
    assertThat(record.evapotranspiration(2)).isEqualTo(3);
    assertThat(report(record))
        .contains("Out of order, put in order: 1 line")
        .contains("Left out, a second time with other values: 1 line")
        .contains("Left out for want of a date that can be read: 1 line, the first in line 7")
        .contains("4 days from 2020-02-28 to 2020-03-05; 3 days between them missing");
  }

  @Test
  void theOrderOfDayAndMonthIsFoundOutOrAskedFor() throws WeatherProblem {
    assertThat(WeatherText.read("Date,ET (mm)\n30/06/2020,5\n01/07/2020,6\n").date(1))
        .isEqualTo(LocalDate.of(2020, 7, 1));
    assertThat(WeatherText.read("Date,ET (mm)\n03/04/2020,5\n03/05/2020,6\n").date(1))
        .isEqualTo(LocalDate.of(2020, 3, 5));
    assertThatThrownBy(() -> WeatherText.read("Date,ET (mm)\n03/04/2020,5\n"))
        .hasMessageContaining("day or the month first");
  }

  @Test
  void hoursOfATableAreGathered() throws WeatherProblem {
    StringBuilder text =
        new StringBuilder("Date,Hour,Air temp (°C),Rel hum (%),Wind speed (m/s),Sol rad (W/m²)\n");
    for (int hour = 1; hour <= 24; hour++) {
      text.append("2020-07-01,").append(hour).append(",25,50,2,");
      text.append(hour > 6 && hour < 19 ? 500 : 0).append('\n');
    }
    DailyRecord record = WeatherText.read(text.toString());
    assertThat(record.size()).isEqualTo(1);
    assertThat(record.notes(0)).containsExactly(DayNote.BY_HOURS);
    assertThat(record.evapotranspiration(0)).isBetween(4.0, 8.0);
    assertThat(report(record)).contains("each was taken to name its end");
  }

  @Test
  void whatIsNoWeatherIsRefusedInASentence() {
    assertThatThrownBy(() -> WeatherText.file("  \n")).hasMessageContaining("holds nothing");
    assertThatThrownBy(() -> WeatherText.file("a garden")).hasMessageContaining("no table");
    assertThatThrownBy(() -> WeatherText.file("PK\u0003\u0004"))
        .hasMessageContaining("unpack it first");
    assertThatThrownBy(() -> WeatherText.read("Zone,Area (m²)\nA,12\n"))
        .hasMessageContaining("No column tells the day");
  }
}
