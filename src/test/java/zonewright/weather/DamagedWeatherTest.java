package zonewright.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.testing.Counts;

/** Damaged weather files: each is read or refused in a sentence, and nothing else ever happens. */
class DamagedWeatherTest {
  private static final WeatherChoices SAID =
      WeatherChoices.USUAL.at(new StationSite("", 38.5, -121.7, 18, Double.NaN, -8));

  private static final List<String> WHOLE =
      List.of(
          WeatherText.days(LocalDate.of(2020, 2, 1), 40),
          WeatherText.hourlyYear(2001).substring(0, 9000),
          """
          "STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN"
          "XX000000001","2020-07-01","45.7","4.9","200.0","127",",,W","266",",,W","148"
          "XX000000001","2020-07-02","45.7","4.9","200.0","0","T,,W","289",",D,W","148"
          """,
          "XX000000001,20200701,TMAX,266,,,W,\nXX000000001,20200701,TMIN,148,,,W,\n",
          "Date;Hour;Temp (°C);RH (%);Wind (km/h);Rs (W/m²)\n1/7/2020;1;20,5;50;3,2;0\n2/7/2020;24;20,5;50;3,2;900\n");

  @Test
  @Tag(Counts.LONG)
  void aSentenceEachAndNothingEscapes() {
    for (int seed = 0; seed < Counts.of(150, 10_000); seed++) {
      Random random = new Random(seed);
      byte[] damaged = damaged(random);
      try {
        DailyRecord record = WeatherFile.of(damaged, "damaged.csv").read(SAID, HowFar.UNWATCHED);
        assertThat(record.size()).as("seed %s", seed).isPositive();
        assertThat(record.report()).allSatisfy(line -> assertThat(line).isNotBlank());
        for (int day = 0; day < record.size(); day++) {
          double depth = record.evapotranspiration(day);
          assertThat(Double.isNaN(depth) || (depth >= 0 && depth < 60))
              .as("seed %s day %s: %s", seed, day, depth)
              .isTrue();
        }
        YearsOfWeather years = new YearsOfWeather(record);
        assertThat(years.months()).hasSize(12);
        years.season();
      } catch (WeatherProblem problem) {
        assertThat(problem.getMessage()).as("seed %s", seed).isNotBlank().endsWith(".");
      } catch (RuntimeException escaped) {
        throw new AssertionError("seed " + seed, escaped);
      }
    }
  }

  private static byte[] damaged(Random random) {
    String text = WHOLE.get(random.nextInt(WHOLE.size()));
    for (int blow = 0; blow <= random.nextInt(4); blow++) {
      text = blow(text, random);
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    for (int i = 0; bytes.length > 0 && i < random.nextInt(6); i++) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static String blow(String text, Random random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text;
    }
    int at = random.nextInt(lines.size());
    switch (random.nextInt(9)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
      case 2 -> Collections.shuffle(lines, random);
      case 3 -> lines.set(at, lines.get(at).replace(',', ';'));
      case 4 -> lines.set(at, lines.get(at).replaceAll("\\d", "9"));
      case 5 -> lines.set(at, lines.get(at) + "\"");
      case 6 -> {
        return text.substring(0, random.nextInt(text.length() + 1));
      }
      case 7 -> lines.replaceAll(line -> line.replace('.', ','));
      default -> lines.set(at, lines.get(at).replaceFirst("\\d+", "1e309"));
    }
    return String.join("\n", lines);
  }
}
