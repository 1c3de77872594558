package zonewright.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.uncertainty.HowSure;
import zonewright.water.InputRange;

/**
 * Measures how long it takes to say how sure a design of a thousand zones is with twenty uncertain
 * inputs in each, in processor time of the one thread that does it:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.benchmark.SureBench</pre>
 */
public final class SureBench {
  private static final int ZONES = 1000;
  private static final int INPUTS = 20;
  private static final int ROUNDS = 11;
  private static final double LIMIT = 1000;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private SureBench() {}

  /** Runs it. */
  public static void main(String[] arguments) {
    Design design = design();
    List<Double> times = new ArrayList<>();
    int tried = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long from = THREADS.getCurrentThreadCpuTime();
      tried = HowSure.of(design.book().snapshot()).tried();
      times.add((THREADS.getCurrentThreadCpuTime() - from) / 1e6);
    }
    double first = times.get(0);
    Collections.sort(times);
    double median = times.get(ROUNDS / 2);
    System.out.printf(
        Locale.ROOT,
        "%d zones x %d uncertain inputs, %d designs tried: %.0f ms (median of %d; first %.0f ms), ratio to %.0f ms: %.2f%n",
        ZONES,
        INPUTS,
        tried,
        median,
        ROUNDS,
        first,
        LIMIT,
        median / LIMIT);
  }

  /** Many zones, each of their inputs known to a tenth either way. */
  private static Design design() {
    Design design = ManyZones.design(ZONES);
    Book book = design.book();
    List<Edit> ranges = new ArrayList<>();
    for (InputRange range : InputRange.all().subList(0, INPUTS)) {
      for (int zone = 0; zone < (range.ofSite() ? 1 : ZONES); zone++) {
        double held = range.ofSite() ? 1 : book.number(range.input().reference(), zone);
        if (!Double.isNaN(held)) {
          ranges.add(
              design.edits().set(range.least().reference(), zone, new Entry.Figure(held * 0.9)));
          ranges.add(
              design.edits().set(range.greatest().reference(), zone, new Entry.Figure(held * 1.1)));
        }
      }
    }
    book.start(new Edit.Several("ranges", ranges));
    if (book.rows(Sheets.RANGES) != ZONES) {
      throw new IllegalStateException("the ranges do not stand beside the zones");
    }
    return design;
  }
}
