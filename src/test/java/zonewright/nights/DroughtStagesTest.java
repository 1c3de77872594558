package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import zonewright.design.Finding;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.timetable.WateringWindow;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.Demand;
import zonewright.water.DroughtStages;

/** What stages of a drought do to a garden. The stages are invented and belong to no town. */
class DroughtStagesTest {
  private final Garden garden = new Garden();

  private static void rows(Garden garden, String table, int count) {
    garden.take(garden.design().edits().inserted(table, 0, count));
  }

  /** Two stages, the second stricter than the first in everything. */
  private static void twoStages(Garden garden, Random random) {
    rows(garden, Sheets.STAGES, 2);
    int days = 2 + random.nextInt(4);
    int cut = 10 * random.nextInt(5);
    garden.type(DroughtStages.STAGE, 0, "mild").type(DroughtStages.STAGE, 1, "severe");
    garden.type(DroughtStages.MOST_DAYS, 0, String.valueOf(days));
    garden.type(DroughtStages.MOST_DAYS, 1, String.valueOf(1 + random.nextInt(days)));
    garden.type(DroughtStages.CUT, 0, cut + " %");
    garden.type(DroughtStages.CUT, 1, cut + 10 * random.nextInt(5) + " %");
    garden.type(DroughtStages.STAGE_FROM, 0, "10:00").type(DroughtStages.STAGE_UNTIL, 0, "18:00");
    garden.type(DroughtStages.STAGE_FROM, 1, "05:00").type(DroughtStages.STAGE_UNTIL, 1, "19:30");
    rows(garden, Sheets.DAY_RULES, 2);
    garden.type(AllowedDays.RULE, 0, "1").type(AllowedDays.RULE, 1, "2");
    garden.type(AllowedDays.STAGE, 0, "mild").type(AllowedDays.DAYS, 0, "Mon Tue Thu Fri Sat Sun");
    garden.type(AllowedDays.STAGE, 1, "severe").type(AllowedDays.DAYS, 1, "Tue Fri Sat");
  }

  private double number(Column column, int row) {
    return garden.design().book().number(column.reference(), row);
  }

  @Test
  void aCutTakesItsPartOfEveryZoneAndTheZonesAreNamedByWhatTheyLack() {
    rows(garden, Sheets.STAGES, 1);
    garden.type(DroughtStages.STAGE, 0, "Stage 2").type(DroughtStages.CUT, 0, "40 %");
    garden.type(Controller.STARTS, 0, "12").type(Controller.PROGRAMS, 0, "12");
    double before = number(Demand.RUN_TIME_PER_WEEK, 0);
    garden.type(DroughtStages.IN_FORCE, 0, "Stage 2");
    assertThat(number(Demand.RUN_TIME_PER_WEEK, 0)).isCloseTo(0.6 * before, within(1e-9));
    assertThat(number(Demand.NEED_PER_WEEK, 0)).isEqualTo(before);
    List<ZoneShare> suffering = ZoneShare.suffering(ZoneShare.of(garden.plan()));
    assertThat(suffering).hasSize(garden.design().book().rows(Sheets.ZONES));
    assertThat(suffering)
        .isSortedAccordingTo((a, b) -> Double.compare(b.missingShare(), a.missingShare()));
    // Rounding up gives back a little of what is cut, never more than is cut.
    assertThat(suffering)
        .allSatisfy(share -> assertThat(share.missingShare()).isBetween(0.15, 0.4 + 1e-9));
    ZoneShare worst = suffering.get(0);
    assertThat(garden.findings())
        .extracting(Finding::line)
        .anyMatch(
            line ->
                line.contains(
                    "zones short: %s lacks %s (%s of"
                        .formatted(
                            NightNames.withPlace(worst.sheet()),
                            worst.missingWords(),
                            worst.placed())));
  }

  @Test
  void aStageWithoutACutOnEnoughDaysLeavesNoZoneShort() {
    rows(garden, Sheets.STAGES, 1);
    garden.type(Controller.STARTS, 0, "12").type(Controller.PROGRAMS, 0, "12");
    garden.type(DroughtStages.STAGE, 0, "Watch").type(DroughtStages.IN_FORCE, 0, "Watch");
    assertThat(ZoneShare.suffering(ZoneShare.of(garden.plan()))).isEmpty();
    assertThat(garden.findings())
        .anyMatch(finding -> finding.line().contains("leaves no zone short of what it needs"));
  }

  @Test
  void aStageThatForbidsWateringLeavesNothingToKeyInAndSaysSo() {
    rows(garden, Sheets.STAGES, 1);
    garden.type(DroughtStages.STAGE, 0, "Ban").type(DroughtStages.CUT, 0, "100 %");
    garden.type(DroughtStages.IN_FORCE, 0, "Ban");
    assertThat(garden.design().nights().plan()).isEmpty();
    assertThat(garden.findings())
        .anyMatch(finding -> finding.line().contains("short of all it needs"));
  }

  /** Days typed for a zone are kept in the sheet and wait until the stage is over. */
  @Test
  void daysTypedForAZoneGiveWayToTheStage() {
    garden.type(Demand.WATERING_DAYS, 0, "5");
    rows(garden, Sheets.STAGES, 1);
    garden.type(DroughtStages.STAGE, 0, "Two days").type(DroughtStages.MOST_DAYS, 0, "2");
    garden.type(DroughtStages.IN_FORCE, 0, "Two days");
    assertThat(number(Demand.WATERINGS_A_WEEK, 0)).isEqualTo(2);
    assertThat(garden.plan().input().rules().openDays()).hasSize(2);
    garden.type(DroughtStages.IN_FORCE, 0, "");
    assertThat(number(Demand.WATERINGS_A_WEEK, 0)).isEqualTo(5);
  }

  /**
   * A stricter stage asks of no zone more and opens no hour that the milder one closes; what is
   * given beyond what is asked for is rounding, which the card says.
   */
  @Property(tries = 12)
  void aStricterStageNeverGivesMore(@ForAll long seed) {
    Random random = new Random(seed);
    Garden any = new Garden();
    any.firstZones(3 + random.nextInt(6));
    any.type(
        Controller.KIND,
        0,
        random.nextBoolean() ? Controller.PROGRAM_STARTS : Controller.STATION_STARTS);
    twoStages(any, random);
    double[][] asked = new double[3][];
    List<Set<Integer>> open = new ArrayList<>();
    List<String> stages = List.of("", "mild", "severe");
    for (int i = 0; i < 3; i++) {
      any.type(DroughtStages.IN_FORCE, 0, stages.get(i));
      Book book = any.design().book();
      asked[i] =
          IntStream.range(0, book.rows(Sheets.ZONES))
              .mapToDouble(row -> book.number(Demand.RUN_TIME_PER_WEEK.reference(), row))
              .toArray();
      open.add(open(any));
      givesNoMoreThanAsked(any.plan());
    }
    for (int stricter = 1; stricter < 3; stricter++) {
      for (int row = 0; row < asked[0].length; row++) {
        assertThat(asked[stricter][row]).isLessThanOrEqualTo(asked[stricter - 1][row] + 1e-9);
      }
      assertThat(open.get(stricter - 1).containsAll(open.get(stricter))).isTrue();
    }
  }

  private static void givesNoMoreThanAsked(NightsPlan plan) {
    List<ZoneShare> shares = ZoneShare.of(plan);
    for (NightsInput.Station station : plan.input().stations()) {
      ZoneShare share =
          shares.stream()
              .filter(each -> each.sheet().equals(station.sheet()))
              .findFirst()
              .orElseThrow();
      int rounding = 7 * (station.zone().cycles() + 1);
      assertThat((double) share.placed()).isLessThanOrEqualTo(station.askedAWeek() + rounding);
    }
  }

  /** Every minute of the week in which the sheet lets water run. */
  private static Set<Integer> open(Garden garden) {
    Set<Integer> minutes = new HashSet<>();
    Book book = garden.design().book();
    for (int night = 0; night < 7; night++) {
      if (book.number(NightSheet.MINUTES_OPEN.reference(), night) > 0) {
        int from = CalendarText.minuteOfDay(book.number(NightSheet.FIRST_OPENS.reference(), night));
        double length = book.number(NightSheet.FIRST_MINUTES.reference(), night);
        for (int at = 0; at < length; at++) {
          minutes.add((night * WateringWindow.DAY + from + at) % (7 * WateringWindow.DAY));
        }
      }
    }
    return minutes;
  }

  /** Stages that are written down and not in force change no number and no night. */
  @Test
  void withoutAStageInForceEverythingIsAsBefore() {
    Garden without = new Garden();
    twoStages(garden, new Random(7));
    for (TableDefinition table : without.design().book().schema().tables()) {
      if (Set.of(Sheets.STAGES, Sheets.DAY_RULES).contains(table.id())) {
        continue;
      }
      for (Column column : table.columns()) {
        for (int row = 0; row < without.design().book().rows(table.id()); row++) {
          double before = without.design().book().number(column.reference(), row);
          assertThat(Double.valueOf(number(column, row)))
              .as("%s, row %s", column.reference(), row)
              .isEqualTo(Double.valueOf(before));
        }
      }
    }
    assertThat(garden.plan().timetable()).isEqualTo(without.plan().timetable());
  }
}
