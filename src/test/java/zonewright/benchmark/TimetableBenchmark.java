package zonewright.benchmark;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import zonewright.timetable.Night;
import zonewright.timetable.NightPlacer;
import zonewright.timetable.NightPlan;
import zonewright.timetable.NightRules;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringDays;
import zonewright.timetable.WateringWindow;

/**
 * How long one night takes to place, and how near it comes to its proven bound. The sites are
 * invented.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Benchmark)
public class TimetableBenchmark {

  /** Zones that water in the night. */
  @Param({"100", "1000", "5000"})
  public int zones;

  /** Valves at once: one; several with flow to spare; several that the flow keeps apart. */
  @Param({"ONE_VALVE", "FOUR_VALVES", "FLOW_BOUND"})
  public String site;

  private List<WateredZone> asked;
  private NightRules rules;
  private NightPlan plan;

  /** Draws the zones by seeded numbers. */
  @Setup
  public void draw() {
    Random random = new Random(zones);
    asked = new ArrayList<>();
    for (int i = 0; i < zones; i++) {
      asked.add(
          new WateredZone(
              i + 1,
              1,
              OptionalInt.empty(),
              1 + random.nextInt(4),
              3 + random.nextInt(15),
              random.nextInt(60),
              3 + random.nextInt(180) / 10.0,
              new WateringDays.OnWeekdays(EnumSet.of(DayOfWeek.MONDAY)),
              OptionalInt.empty()));
    }
    rules =
        new NightRules(
            Map.of(DayOfWeek.MONDAY, List.of(new WateringWindow(1320, 360))),
            site.equals("ONE_VALVE") ? 1 : 4,
            site.equals("FLOW_BOUND") ? 40 : 1000,
            1,
            16,
            4);
  }

  /** Places the night. */
  @Benchmark
  public NightPlan place() {
    plan = NightPlacer.place(Night.weekly(DayOfWeek.MONDAY), asked, rules, List.of());
    return plan;
  }

  /** Tells how near the last night came to its bound. */
  @TearDown
  public void tell() {
    System.out.printf(
        Locale.ROOT,
        "%n%d zones, %s: %d min against a bound of %d, ratio %.4f%n",
        zones,
        site,
        plan.lengthMinutes(),
        plan.boundMinutes(),
        (double) plan.lengthMinutes() / plan.boundMinutes());
  }

  /** Runs the benchmark. */
  public static void main(String[] arguments) throws RunnerException {
    new Runner(new OptionsBuilder().include(TimetableBenchmark.class.getSimpleName()).build())
        .run();
  }
}
