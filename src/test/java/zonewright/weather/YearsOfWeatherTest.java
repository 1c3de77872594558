package zonewright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Years of days added up, each figure against a plain count of its own. Invented weather. */
class YearsOfWeatherTest {
  private static final LocalDate BEGIN = LocalDate.of(2001, 1, 1);

  private static YearsOfWeather years(String text) throws WeatherProblem {
    return new YearsOfWeather(WeatherText.read(text));
  }

  /**
   * Years in which each day of a month asks its number of tenths of a millimetre, and the year's.
   */
  private static String plain(int count) {
    StringBuilder text = new StringBuilder("Date,ET (mm),Rain (mm)\n");
    for (LocalDate day = BEGIN; day.getYear() < 2001 + count; day = day.plusDays(1)) {
      double depth = day.getMonthValue() / 2.0 + (day.getYear() - 2000) / 10.0;
      text.append(String.format(Locale.ROOT, "%s,%.2f,0%n", day, depth));
    }
    return text.toString();
  }

  @Test
  void monthsAreMeansAndWhatWasNotExceeded() throws WeatherProblem {
    YearsOfWeather years = years(plain(19));
    YearsOfWeather.Stretch july = years.months().get(6);
    assertThat(july.years()).isEqualTo(19);
    // July of the k-th year asks 31 × (3.5 + k ÷ 10); the mean is that of the tenth year
    assertThat(july.mean()).isCloseTo(31 * 4.5, within(1e-9));
    // of 19 years the m-th smallest stands for m ÷ 20: 5, 8 and 9 of 10 are the 10th, 16th and 18th
    assertThat(july.notExceeded().get(0)).isCloseTo(31 * 4.5, within(1e-9));
    assertThat(july.notExceeded().get(1)).isCloseTo(31 * 5.1, within(1e-9));
    assertThat(july.notExceeded().get(2)).isCloseTo(31 * 5.3, within(1e-9));
  }

  @Test
  void fewYearsSayNothingOfEightInTen() throws WeatherProblem {
    YearsOfWeather years = years(plain(9));
    assertThat(years.months().get(6).notExceeded().get(0)).isPositive();
    assertThat(years.months().get(6).notExceeded().get(1)).isNaN();
  }

  @Test
  void aMonthCountsWithFiveDaysMissingAndThreeInARow() throws WeatherProblem {
    List<String> lines = new ArrayList<>(plain(1).lines().toList());
    lines.removeIf(line -> line.matches("2001-03-(05|06|07|20|21),.*"));
    lines.removeIf(line -> line.matches("2001-04-(05|06|07|08),.*"));
    lines.removeIf(line -> line.matches("2001-05-(01|03|05|07|09|11),.*"));
    YearsOfWeather years = years(String.join("\n", lines));
    assertThat(years.months().get(2).mean()).isCloseTo(31 * 1.6, within(1e-9));
    assertThat(years.months().get(3).mean()).isNaN();
    assertThat(years.months().get(4).mean()).isNaN();
    // rain is a sum: with a day missing the month does not count
    assertThat(years.months().get(2).rain()).isNaN();
    assertThat(years.months().get(1).rain()).isZero();
  }

  @Test
  void theHottestSpansAreThoseOfEachYear() throws WeatherProblem {
    Random random = new Random(3);
    double[] depths = new double[365];
    StringBuilder text = new StringBuilder("Date,ET (mm)\n");
    for (int day = 0; day < depths.length; day++) {
      depths[day] = Math.rint(100 * (2 + 6 * random.nextDouble())) / 100;
      text.append(String.format(Locale.ROOT, "%s,%.2f%n", BEGIN.plusDays(day), depths[day]));
    }
    List<YearsOfWeather.Stretch> spans = years(text.toString()).spans();
    for (int span = 0; span < spans.size(); span++) {
      int length = YearsOfWeather.SPANS.get(span);
      double most = 0;
      for (int from = 0; from + length <= depths.length; from++) {
        most = Math.max(most, Arrays.stream(depths, from, from + length).sum());
      }
      assertThat(spans.get(span).mean()).as("%s days", length).isCloseTo(most, within(1e-6));
    }
  }

  @Test
  void rainCountsAsFarAsTheRootZoneTakesItUp() throws WeatherProblem {
    StringBuilder text = new StringBuilder("Date,ET (mm),Rain (mm)\n");
    for (int day = 1; day <= 31; day++) {
      // 4 mm a day; 0.5 mm is less than a fifth of it and counts as nothing
      double fell = day == 3 ? 40 : day == 5 ? 0.5 : day == 6 ? 5 : 0;
      text.append(String.format(Locale.ROOT, "2001-07-%02d,4,%s%n", day, fell));
    }
    // on the 3rd 12 mm were used up and are made good; on the 6th 12 again, of which 5
    assertThat(years(text.toString()).months().get(6).effectiveRain()).isCloseTo(17, within(1e-9));
  }

  @Test
  void frostSetsTheSeason() throws WeatherProblem {
    StringBuilder text = new StringBuilder("Date,Tmax (°C),Tmin (°C)\n");
    for (LocalDate day = BEGIN; day.getYear() < 2004; day = day.plusDays(1)) {
      int into = day.getDayOfYear();
      text.append(day).append(into <= 100 || into >= 300 ? ",5,-1\n" : ",20,5\n");
    }
    YearsOfWeather years = years(text.toString());
    assertThat(years.season().orElseThrow())
        .isEqualTo(
            "Last frost of spring 10 April, first of autumn 27 October, on the mean of 3 years");
    assertThat(years.months().get(0).frost()).isEqualTo(31);
    assertThat(years.months().get(6).growing()).isEqualTo(31);
    assertThat(years.months().get(0).growing()).isZero();
  }

  @Test
  void whatIsNotExceededIsBetweenTheSmallestAndTheLargest() {
    Random random = new Random(7);
    for (int size = 1; size < 40; size++) {
      List<Double> values = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        values.add(random.nextDouble());
      }
      double[] all = values.stream().mapToDouble(each -> each).toArray();
      double half = YearsOfWeather.notExceeded(all, 0.5);
      double eight = YearsOfWeather.notExceeded(all, 0.8);
      assertThat(half).isBetween(Collections.min(values), eight);
      assertThat(eight).isLessThanOrEqualTo(Collections.max(values));
    }
  }
}
