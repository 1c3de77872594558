package zonewright.benchmark;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.nights.MonthBook;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.NightsPlanner;
import zonewright.nights.SiteNights;
import zonewright.nights.ZoneShare;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.water.Controller;
import zonewright.water.DroughtStages;
import zonewright.water.SiteRules;

/**
 * How much processor time the whole timetable of a site with thousand zones takes, on each kind of
 * controller, without and with a stage in force; the third of three in a row counts. Invented.
 */
public final class SitePlanBench {
  private static final int ZONES = 1000;
  private static final int ROUNDS = 3;

  /** A share of the peak month at which most of it fits, so that no cures are sought. */
  private static final double SMALL = 0.125;

  private SitePlanBench() {}

  private static void type(Design design, Column column, String text) {
    design.book().perform(design.edits().typed(column.reference(), 0, text));
  }

  /** Runs it and prints a line for each. */
  public static void main(String[] arguments) {
    Design design = ManyZones.design(ZONES);
    type(design, SiteRules.AVAILABLE_FLOW, "4000 gpm");
    type(design, Controller.PROGRAMS, "99");
    type(design, Controller.STARTS, "99");
    type(design, SiteNights.MOST_VALVES, "200");
    design.book().perform(design.edits().inserted(Sheets.STAGES, 0, 1));
    type(design, DroughtStages.STAGE, "Stage 2");
    type(design, DroughtStages.MOST_DAYS, "4");
    type(design, DroughtStages.CUT, "30 %");
    for (String stage : List.of("", "Stage 2")) {
      type(design, DroughtStages.IN_FORCE, stage);
      for (String kind :
          List.of(
              Controller.STATION_STARTS, Controller.PROGRAM_STARTS, Controller.CYCLES_AND_SOAKS)) {
        type(design, Controller.KIND, kind);
        String about = kind + ", " + (stage.isEmpty() ? "no stage" : stage);
        plan(MonthBook.input(design.book(), 1).orElseThrow(), about + ", peak month");
        plan(MonthBook.input(design.book(), SMALL).orElseThrow(), about + ", an eighth of it");
      }
    }
  }

  private static void plan(NightsInput input, String about) {
    NightsPlan plan = null;
    double seconds = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long before = processor();
      plan = NightsPlanner.plan(input, Optional.empty());
      seconds = (processor() - before) / 1e9;
    }
    System.out.printf(
        Locale.ROOT, "%s: %.2f s. %s%n", about, seconds, ZoneShare.summary(ZoneShare.of(plan)));
  }

  private static long processor() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
