package zonewright.benchmark;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import zonewright.balance.Application;
import zonewright.balance.Baseline;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RootZone;
import zonewright.balance.WateringRule;
import zonewright.desk.part.Palette;
import zonewright.desk.picture.Canvas;
import zonewright.desk.picture.SeasonDrawing;
import zonewright.season.Season;
import zonewright.season.SeasonFindings;
import zonewright.season.SeasonWeather;
import zonewright.season.SeasonZone;
import zonewright.season.SeasonZones;
import zonewright.units.UnitSystem;

/**
 * Measures thirty years of a hundred zones, and a year of a hundred beside what a frame allows, in
 * processor time of the one thread that does it:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.benchmark.SeasonBench</pre>
 */
public final class SeasonBench {
  private static final int ROUNDS = 41;
  private static final double FRAME = 1000 / 60.0;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private SeasonBench() {}

  /** Runs it. */
  public static void main(String[] arguments) {
    SeasonZones zones = zones(100);
    WateringRule rule = WateringRule.of(new WateringRule.Daily(6, 0.05, 0, 1.5, 3));
    SeasonWeather thirty = weather(10957);
    SeasonWeather one = weather(365);
    say("30 years x 100 zones", 1000, () -> new Season(zones, thirty, rule, 1).litres());
    say("1 year x 100 zones", FRAME, () -> new Season(zones, one, rule, 0.9).litres());
    say("a zone's picture after the slider", FRAME, () -> painted(zones, one, rule));
    say("its findings", 1000, () -> SeasonFindings.of(new Season(zones, one, rule, 1)).size());
  }

  /** What the slider of the window sets off: one zone followed, and its picture painted. */
  private static double painted(SeasonZones zones, SeasonWeather weather, WateringRule rule) {
    SeasonZone zone = zones.zones().get(0);
    Season season = new Season(new SeasonZones(List.of(zone), List.of(), ""), weather, rule, 0.9);
    BufferedImage image = new BufferedImage(700, 500, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    new SeasonDrawing(season, zone, "", 1991, UnitSystem.SI)
        .paint(new Canvas(pen, new Rectangle(700, 500), Palette.onPaper(), 1));
    pen.dispose();
    return season.litres();
  }

  private interface Work {
    double run();
  }

  private static void say(String what, double limit, Work work) {
    List<Double> times = new ArrayList<>();
    double sum = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long from = THREADS.getCurrentThreadCpuTime();
      sum += work.run();
      times.add((THREADS.getCurrentThreadCpuTime() - from) / 1e6);
    }
    double first = times.get(0);
    Collections.sort(times);
    double median = times.get(ROUNDS / 2);
    System.out.printf(
        Locale.ROOT,
        "%s: %.1f ms (median of %d; first %.0f ms), ratio to %.1f ms: %.2f%n",
        what,
        median,
        ROUNDS,
        first,
        limit,
        median / limit);
    if (Double.isNaN(sum)) {
      throw new IllegalStateException("nothing was calculated");
    }
  }

  private static SeasonZones zones(int count) {
    Random random = new Random(1);
    List<SeasonZone> zones = new ArrayList<>();
    for (int zone = 0; zone < count; zone++) {
      List<int[]> week = new ArrayList<>();
      for (int day = 0; day < 7; day++) {
        week.add(day % 2 == 0 ? random.ints(1 + random.nextInt(3), 5, 20).toArray() : new int[0]);
      }
      zones.add(
          new SeasonZone(
              zone,
              String.valueOf(zone + 1),
              "",
              new RootZone(
                  20 + random.nextInt(80), 0.5, Collections.nCopies(12, 0.4 + random.nextDouble())),
              new Application(30, 30, 10, 6, 1, 0.65, 0.79, 60),
              Baseline.weekly(week, 1),
              ""));
    }
    return new SeasonZones(zones, List.of(), "");
  }

  private static SeasonWeather weather(int size) {
    Random random = new Random(2);
    double[] rain = new double[size];
    for (int day = 0; day < size; day++) {
      rain[day] = random.nextInt(5) == 0 ? random.nextDouble() * 20 : 0;
    }
    return new SeasonWeather(
        new DaysOfWeather(
            LocalDate.of(1991, 1, 1), random.doubles(size, 0, 8).toArray(), rain, new double[size]),
        false,
        "");
  }
}
