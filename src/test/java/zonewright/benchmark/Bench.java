package zonewright.benchmark;

import java.util.Collection;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/**
 * Measures calculation, all in one run of about a minute:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec</pre>
 *
 * <p>Prints nanoseconds a cell for 100,000 zones with every formula of theirs, beside a loop
 * written by hand, and their ratio; and for 10,000 zones the time from one typed text to all
 * numbers new, median and 99th percentile. Figures of two runs differ by some percent.
 */
public class Bench {
  private static final int MANY = 100_000;
  private static final int SOME = 10_000;

  /** The tables whose columns the loop by hand calculates too. */
  private static final Set<String> COLUMNS_OF = Set.of(Sheets.ZONES, Sheets.MONTHLY);

  /** A design with many zones, and the loop over the same entries. */
  @State(Scope.Benchmark)
  public static class Whole {
    private Design design;
    private PlainLoop loop;

    /** Makes the design once. */
    @Setup(Level.Trial)
    public void make() {
      design = ManyZones.design(MANY);
      loop = new PlainLoop(design);
    }
  }

  /** A design that is edited. */
  @State(Scope.Benchmark)
  public static class Edited {
    private Design design;
    private final Random random = new Random(1);

    /** Makes the design once. */
    @Setup(Level.Trial)
    public void make() {
      design = ManyZones.design(SOME);
    }
  }

  /** Every formula of the zones in every row, by the sheet. */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public void sheet(Whole whole) {
    whole.design.book().calculation().calculateAll(COLUMNS_OF);
  }

  /** The same by hand. */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public void byHand(Whole whole) {
    whole.loop.run();
  }

  /** One text typed into one zone, until everything that follows is calculated. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public void oneEdit(Edited edited) {
    int row = edited.random.nextInt(SOME);
    String area = Integer.toString(400 + edited.random.nextInt(4000));
    Design design = edited.design;
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), row, area));
  }

  /** Runs all and prints the summary. */
  public static void main(String[] arguments) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include(Bench.class.getName() + "\\..*")
            .forks(1)
            // In small regions every array of the loop by hand would begin at the same place of
            // its region, and they would drive each other out of the cache.
            .jvmArgs("-Xmx2g", "-XX:G1HeapRegionSize=8m")
            .warmupIterations(4)
            .warmupTime(TimeValue.seconds(2))
            .measurementIterations(5)
            .measurementTime(TimeValue.seconds(2))
            .verbosity(VerboseMode.SILENT)
            .build();
    Collection<RunResult> results = new Runner(options).run();
    Design design = ManyZones.design(1);
    long columns =
        COLUMNS_OF.stream()
            .flatMap(table -> design.book().schema().table(table).columns().stream())
            .filter(column -> column.formula().isPresent())
            .count();
    PlainLoop loop = new PlainLoop(design);
    loop.run();
    double sheet = 0;
    double byHand = 0;
    for (RunResult result : results) {
      String name = result.getParams().getBenchmark();
      double score = result.getPrimaryResult().getScore();
      if (name.endsWith(".sheet")) {
        sheet = score / MANY / columns;
      } else if (name.endsWith(".byHand")) {
        byHand = score / MANY / loop.results.size();
      } else {
        print(
            "One edit in %,d zones: median %.3f ms, 99th percentile %.3f ms%n",
            SOME,
            result.getPrimaryResult().getStatistics().getPercentile(50) / 1e6,
            result.getPrimaryResult().getStatistics().getPercentile(99) / 1e6);
      }
    }
    print(
        "All formulas of %,d zones, %d columns: %.2f ns a cell, %.1f ms in all%n",
        MANY, columns, sheet, sheet * columns * MANY / 1e6);
    print("By hand, the same %d columns: %.2f ns a cell%n", loop.results.size(), byHand);
    print("Ratio: %.2f%n", sheet / byHand);
    for (TableDefinition table : design.book().schema().tables()) {
      print("  table %s: %d columns%n", table.title(), table.columns().size());
    }
  }

  private static void print(String pattern, Object... values) {
    System.out.print(String.format(Locale.ROOT, pattern, values));
  }
}
