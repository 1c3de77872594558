package zonewright.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;
import zonewright.water.MonthlySchedule;

/** The peak month is the one of greatest need for what is planted, worked out again by hand. */
class PeakMonthLawsTest {
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  private static final int ZONES = 4;

  /** A site made by chance: rain in whole millimetres a day, so that some zones need none. */
  private static final class Site {
    private final Design design = Design.blank(UnitSystem.SI);
    private final List<Edit> typed = new ArrayList<>();
    private final double[] et = new double[12];
    private final double[] rain = new double[12];
    private final double[] coefficient = new double[ZONES];
    private final double[] area = new double[ZONES];

    Site(long seed) {
      Random random = new Random(seed);
      design.book().start(design.edits().inserted(Sheets.ZONES, 0, ZONES));
      type(Rain.METHOD, 0, Rain.SHARE);
      type(Rain.COUNTED_SHARE, 0, "100");
      for (int month = 0; month < 12; month++) {
        et[month] = 1 + random.nextInt(800) / 100.0;
        rain[month] = random.nextInt(500) / 100.0;
        type(Climate.REFERENCE_ET, month, et[month] * DAYS[month] + " mm");
        type(Rain.MONTH_RAIN, month, rain[month] * DAYS[month] + " mm");
      }
      for (int zone = 0; zone < ZONES; zone++) {
        coefficient[zone] = 0.2 + random.nextInt(80) / 100.0;
        area[zone] = 20 + random.nextInt(500);
        type(Facts.ZONE_NAME, zone, "zone " + zone);
        type(Plants.PLANT_FACTOR, zone, Double.toString(coefficient[zone]));
        type(Plants.ROOT_DEPTH, zone, "300 mm");
        type(Plants.ALLOWED_DEPLETION, zone, "50");
        type(Emitters.AREA, zone, area[zone] + " m2");
        type(Emitters.ZONE_FLOW, zone, area[zone] / 5 + " L/min");
        type(Emitters.DISTRIBUTION_UNIFORMITY, zone, "70");
        type(Soils.SOIL_TYPE, zone, "sand");
        type(Soils.SLOPE, zone, "2");
      }
      enter();
    }

    void type(Column column, int row, String text) {
      typed.add(design.edits().typed(column.reference(), row, text));
    }

    void enter() {
      design.book().perform(new Edit.Several("typed", typed));
      typed.clear();
    }

    double number(Column column, int row) {
      return design.book().number(column.reference(), row);
    }

    double need(int zone, int month) {
      return Math.max(0, et[month] * coefficient[zone] - rain[month]);
    }

    /** Litres a day. */
    double need(int month) {
      return IntStream.range(0, ZONES).mapToDouble(zone -> need(zone, month) * area[zone]).sum();
    }

    double greatest(int zone) {
      return IntStream.range(0, 12).mapToDouble(month -> need(zone, month)).max().orElse(0);
    }

    int peak() {
      return Climate.MONTH_NAMES.indexOf(words(Peak.MONTH, 0));
    }

    String words(Column column, int row) {
      Outcome outcome = design.book().outcome(column.reference(), row);
      return outcome instanceof Outcome.Words words ? words.text() : "";
    }

    boolean found(Column column, int row) {
      return design.findings().stream()
          .filter(finding -> finding.line().contains("of its baseline"))
          .anyMatch(found -> found.column().equals(column.reference()) && found.row() == row);
    }
  }

  @Property(tries = 60)
  @Label("no month needs more of the site than its peak month")
  void noMonthNeedsMoreThanThePeak(@ForAll long seed) {
    Site site = new Site(seed);
    for (int month = 0; month < 12; month++) {
      assertThat(site.need(month)).isLessThanOrEqualTo(site.need(site.peak()) * (1 + 1e-3));
      assertThat(site.number(SiteBudget.PERCENT, month))
          .isCloseTo(site.need(month) / site.need(site.peak()), within(1e-9))
          .isLessThanOrEqualTo(1.001);
    }
    assertThat(site.number(SiteBudget.PERCENT, site.peak())).isEqualTo(1);
  }

  @Property(tries = 40)
  @Label("each zone's own peak month is shown, and every month over 100 % is a finding, no other")
  void everyMonthOverAHundredPercentIsAFinding(@ForAll long seed) {
    Site site = new Site(seed);
    for (int zone = 0; zone < ZONES; zone++) {
      double greatest = site.greatest(zone);
      if (greatest == 0) {
        continue;
      }
      int own = Climate.MONTH_NAMES.indexOf(site.words(MonthlySchedule.OWN_PEAK, zone));
      assertThat(site.need(zone, own)).isCloseTo(greatest, within(1e-8));
      double baseline = site.need(zone, site.peak()) > 0 ? site.need(zone, site.peak()) : greatest;
      assertThat(site.number(Demand.NET_DEMAND, zone)).isCloseTo(baseline, within(1e-9));
      for (int month = 0; month < 12; month++) {
        Column percent = MonthlySchedule.PERCENTS.get(month);
        double expected = site.need(zone, month) / baseline;
        assertThat(site.number(percent, zone)).isCloseTo(expected, within(1e-9));
        if (Math.abs(expected - 1) > 1e-9) {
          assertThat(site.found(percent, zone)).isEqualTo(expected > 1);
        }
      }
    }
  }

  @Property(tries = 40)
  @Label("zone by zone, no zone asks for more than its baseline, and its water a year stays")
  void zoneByZoneNoMonthIsOverAHundredPercent(@ForAll long seed) {
    Site site = new Site(seed);
    double[] before = new double[ZONES];
    for (int zone = 0; zone < ZONES; zone++) {
      before[zone] =
          site.number(Demand.RUN_TIME_PER_WEEK, zone) / site.number(Demand.NET_DEMAND, zone);
    }
    site.type(Peak.BASELINE, 0, Peak.OF_EACH_ZONE);
    site.enter();
    for (int zone = 0; zone < ZONES; zone++) {
      if (site.greatest(zone) == 0) {
        continue;
      }
      double most = 0;
      for (Column percent : MonthlySchedule.PERCENTS) {
        most = Math.max(most, site.number(percent, zone));
      }
      assertThat(most).isEqualTo(1);
      double after =
          site.number(Demand.RUN_TIME_PER_WEEK, zone) / site.number(Demand.NET_DEMAND, zone);
      assertThat(after).as("minutes a depth").isCloseTo(before[zone], within(1e-9));
    }
    assertThat(site.design.findings())
        .extracting(Finding::line)
        .noneMatch(line -> line.contains("of its baseline"));
  }

  @Property(tries = 40)
  @Label("a zone is watered in every month in which it needs water")
  void aZoneIsWateredInEveryMonthInWhichItNeedsWater(@ForAll long seed) {
    Site site = new Site(seed);
    for (int month = 0; month < 12; month++) {
      site.type(MonthlySchedule.MONTH, 0, Climate.MONTH_NAMES.get(month));
      site.enter();
      for (int zone = 0; zone < ZONES; zone++) {
        double run = site.number(MonthlySchedule.RUN_TIME, zone);
        if (site.need(zone, month) > 1e-6) {
          assertThat(run).isPositive();
        } else if (site.greatest(zone) > 0) {
          assertThat(run).isZero();
        }
      }
    }
  }
}
