package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static zonewright.timetable.Sites.MONDAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.testing.Counts;

/**
 * Source of the reference: the exact optimum by the Choco constraint solver 4.10.18, on invented
 * sites with seeded numbers.
 */
class ExactOptimumTest {
  private int proven;
  private int optimal;
  private double sum;
  private double worst = 1;

  @Test
  @Tag(Counts.LONG)
  void nightsOfUpToTwelveZonesEndWithinOnePercentOfTheExactOptimum() {
    for (int seed = 0; seed < Counts.of(40, 235); seed++) {
      Random random = new Random(seed);
      compare(seed, zones(random, 12), random, Sites.window(60, 1000));
    }
    judge("One window", Counts.of(30, 200));
  }

  @Test
  @Tag(Counts.LONG)
  void nightsOfUpToFiveZonesWithTwoWindowsEndWithinOnePercentOfTheExactOptimum() {
    for (int seed = 1000; seed < 1000 + Counts.of(12, 40); seed++) {
      Random random = new Random(seed);
      int closes = 70 + random.nextInt(30);
      int reopens = closes + 5 + random.nextInt(25);
      compare(
          seed, zones(random, 5), random, Sites.window(60, closes), Sites.window(reopens, 1000));
    }
    judge("Two windows", Counts.of(9, 30));
  }

  private void compare(
      int seed, List<WateredZone> zones, Random random, WateringWindow... windows) {
    double largest = zones.stream().mapToDouble(WateredZone::flow).max().orElseThrow();
    double available = largest + random.nextInt((int) (largest * 2));
    NightRules rules = Sites.rules(1 + random.nextInt(3), available, random.nextInt(3), windows);
    NightPlan plan = NightPlacer.place(MONDAY, zones, rules, List.of());
    assertThat(NightChecker.broken(plan, zones, rules)).as("site %d", seed).isEmpty();
    OptionalInt least = ExactOptimum.length(zones, rules, plan.lengthMinutes());
    if (least.isPresent()) {
      double ratio = (double) plan.lengthMinutes() / least.getAsInt();
      assertThat(plan.boundMinutes())
          .as("bound of site %d", seed)
          .isLessThanOrEqualTo(least.getAsInt());
      proven++;
      optimal += ratio == 1 ? 1 : 0;
      sum += ratio;
      worst = Math.max(worst, ratio);
    }
  }

  private void judge(String what, int fewestProven) {
    String measured =
        String.format(
            Locale.ROOT,
            "%s: %d sites with a proven optimum, %d met exactly; mean ratio %.5f, worst %.5f",
            what,
            proven,
            optimal,
            sum / proven,
            worst);
    System.out.println(measured);
    assertThat(proven).as(measured).isGreaterThanOrEqualTo(fewestProven);
    assertThat(worst).as(measured).isLessThanOrEqualTo(1.01);
  }

  private static List<WateredZone> zones(Random random, int most) {
    int count = 2 + random.nextInt(most - 1);
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int cycles = 1 + random.nextInt(count > 8 ? 2 : 3);
      zones.add(
          Sites.zone(
              i + 1, cycles, 1 + random.nextInt(8), random.nextInt(20), 3 + random.nextInt(18)));
    }
    return zones;
  }
}
