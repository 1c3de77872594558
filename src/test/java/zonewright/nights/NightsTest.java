package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.sheet.Column;
import zonewright.sheet.Severity;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.water.AllowedDates;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.DroughtStages;
import zonewright.water.SiteRules;
import zonewright.water.WateringPattern;

/** A design's timetable follows its sheets. */
class NightsTest {
  private final Garden garden = new Garden();

  private double number(Column column, int row) {
    return garden.design().book().number(column.reference(), row);
  }

  @Test
  void theDemoGardenIsWateredInTheNightsItHas() {
    NightsPlan plan = garden.plan();
    assertThat(plan.timetable().overrunMinutes()).isZero();
    assertThat(plan.timetable().nights())
        .extracting(night -> night.night().weekday())
        .containsExactly(
            DayOfWeek.MONDAY,
            DayOfWeek.TUESDAY,
            DayOfWeek.THURSDAY,
            DayOfWeek.FRIDAY,
            DayOfWeek.SUNDAY);
  }

  @Test
  void everyZoneGetsItsCyclesAndMinutesOnAsManyNightsAsItsWateringDays() {
    for (NightsInput.Station station : garden.plan().input().stations()) {
      List<ValveRun> runs = garden.runsOf(station.sheet().row());
      int row = station.sheet().row();
      // The controller starts a zone no oftener than this; the rest is left undone and said.
      double cycles = Math.min(number(CycleAndSoak.CYCLES, row), number(Controller.STARTS, 0));
      double expected = cycles * number(Demand.WATERING_DAYS, row);
      assertThat(runs).hasSize((int) expected);
      assertThat(runs)
          .allMatch(
              run ->
                  run.endMinute() - run.startMinute() == number(CycleAndSoak.CYCLE_MINUTES, row));
    }
  }

  @Test
  void noMinuteHasMoreValvesOrFlowThanTheSiteAllows() {
    for (NightPlan night : garden.plan().timetable().nights()) {
      for (int minute = night.opensMinute(); minute < night.finishMinute(); minute++) {
        int now = minute;
        List<ValveRun> open =
            night.runs().stream()
                .filter(run -> run.startMinute() <= now && now < run.endMinute())
                .toList();
        assertThat(open).hasSizeLessThanOrEqualTo(2);
        assertThat(open.stream().mapToDouble(run -> run.zone().flow()).sum())
            .isLessThanOrEqualTo(40.0);
      }
    }
  }

  @Test
  void theSameDesignHasTheSameTimetable() {
    assertThat(new Garden().plan()).isEqualTo(garden.plan());
  }

  @Test
  void whatDoesNotMatterLeavesTheTimetableAsItIs() {
    NightsPlan before = garden.plan();
    garden.type(Facts.PROJECT_NAME, 0, "Another name");
    assertThat(garden.design().nights().known()).containsSame(before);
    garden.type(SiteNights.MOST_VALVES, 0, "1");
    assertThat(garden.design().nights().known()).isEmpty();
    garden.design().book().undo();
    assertThat(garden.design().nights().known()).containsSame(before);
  }

  @Test
  void looserRulesNeverMakeTheLongestNightLonger() {
    int before = garden.plan().longestNight().orElseThrow().lengthMinutes();
    garden.type(SiteRules.AVAILABLE_FLOW, 0, "60 gpm");
    int more = garden.plan().longestNight().orElseThrow().lengthMinutes();
    assertThat(more).isLessThanOrEqualTo(before);
    garden.type(SiteNights.MOST_VALVES, 0, "3");
    int most = garden.plan().longestNight().orElseThrow().lengthMinutes();
    assertThat(most).isLessThanOrEqualTo(more);
  }

  @Test
  void aProgramWaitsForTheTimeItIsGiven() {
    garden.type(SiteNights.START_WISH, 0, "11:30 pm");
    List<ValveRun> programA =
        garden.plan().timetable().nights().stream()
            .flatMap(night -> night.runs().stream())
            .filter(run -> garden.isOf(run, "A"))
            .toList();
    assertThat(programA).isNotEmpty().allMatch(run -> run.startMinute() >= 23 * 60 + 30);
  }

  @Test
  void aWishOutsideTheNightsIsTold() {
    garden.type(SiteNights.START_WISH, 0, "noon");
    assertThat(garden.findings())
        .anyMatch(
            finding ->
                finding
                    .line()
                    .startsWith(
                        "program A: should start no earlier than 12:00, when no night is open"));
  }

  @Test
  void aZoneWithWeekdaysOfItsOwnWatersOnThoseAndCarriesTheWeekOverThem() {
    garden.type(WateringPattern.PATTERN, 0, WateringPattern.OWN);
    garden.type(WateringPattern.OWN_DAYS, 0, "Mon Thu");
    assertThat(number(Demand.WATERINGS_A_WEEK, 0)).isEqualTo(2);
    assertThat(number(Demand.LONGEST_GAP, 0)).isEqualTo(4);
    assertThat(number(Demand.RUN_TIME, 0))
        .isEqualTo(Math.ceil(number(Demand.RUN_TIME_PER_WEEK, 0) / 2));
    assertThat(nightsOf(0)).containsExactly("Monday", "Thursday");
  }

  private List<String> nightsOf(int row) {
    return garden.plan().timetable().nights().stream()
        .filter(night -> night.runs().stream().anyMatch(run -> garden.isAt(run, row)))
        .map(night -> NightWords.label(night.night()))
        .collect(Collectors.toList());
  }

  /** 10 days' water at each watering: 10 ÷ 7 of what a week asks for. */
  @Test
  void everyTenDaysCarriesTenDays() {
    garden.typeAll(NightSheet.WATERED, "yes");
    garden.type(WateringPattern.PATTERN, 9, WateringPattern.INTERVAL);
    garden.type(WateringPattern.EVERY, 9, "10");
    assertThat(number(Demand.RUN_TIME, 9))
        .isEqualTo(Math.ceil(number(Demand.RUN_TIME_PER_WEEK, 9) * 10 / 7));
    NightsPlan plan = garden.plan();
    assertThat(plan.weekly()).isFalse();
    List<Integer> days =
        plan.timetable().nights().stream()
            .filter(night -> night.runs().stream().anyMatch(run -> garden.isAt(run, 9)))
            .map(night -> (int) night.night().date().orElseThrow().toEpochDay())
            .toList();
    assertThat(days).hasSizeGreaterThan(3);
    for (int i = 1; i < days.size(); i++) {
      assertThat(days.get(i) - days.get(i - 1)).isEqualTo(10);
    }
  }

  /** Odd dates of a year of 365 days: 7 months with 16, 4 with 15, February with 14. */
  @Test
  void oddAndEvenDatesAreCounted() {
    garden.type(WateringPattern.PATTERN, 0, WateringPattern.ODD);
    garden.type(WateringPattern.PATTERN, 1, WateringPattern.EVEN);
    assertThat(number(Demand.WATERINGS_A_WEEK, 0)).isEqualTo(7 * 186 / 365.0);
    assertThat(number(Demand.WATERINGS_A_WEEK, 1)).isEqualTo(7 * 179 / 365.0);
    assertThat(number(Demand.LONGEST_GAP, 0)).isEqualTo(2);
    assertThat(number(Demand.LONGEST_GAP, 1)).isEqualTo(3);
    garden.typeAll(NightSheet.WATERED, "yes");
    garden.plan().timetable().nights().stream()
        .filter(night -> night.runs().stream().anyMatch(run -> garden.isAt(run, 0)))
        .forEach(
            night ->
                assertThat(night.night().date().orElseThrow().getDayOfMonth() % 2).isEqualTo(1));
  }

  /** Many water rules give odd house numbers the odd dates (common practice, no source). */
  @Test
  void aSiteMayWaterOnTheDatesOfItsHouseNumber() {
    garden.typeAll(NightSheet.WATERED, "yes");
    garden.type(Controller.DAY_PATTERNS, 0, Controller.ALL_PATTERNS);
    garden.type(AllowedDates.ALLOWED, 0, AllowedDates.BY_NUMBER);
    assertThat(garden.findings())
        .anyMatch(finding -> finding.column().equals(AllowedDays.HOUSE_NUMBER.reference()));
    garden.type(AllowedDays.HOUSE_NUMBER, 0, "1205");
    assertThat(number(Demand.WATERINGS_A_WEEK, 0)).isEqualTo(7 * 186 / 365.0);
    List<NightPlan> nights =
        garden.plan().timetable().nights().stream()
            .filter(night -> !night.runs().isEmpty())
            .toList();
    assertThat(nights).hasSizeGreaterThan(3);
    assertThat(nights)
        .allMatch(night -> night.night().date().orElseThrow().getDayOfMonth() % 2 == 1);
    garden.type(AllowedDays.HOUSE_NUMBER, 0, "1204");
    assertThat(number(Demand.WATERINGS_A_WEEK, 0)).isEqualTo(7 * 179 / 365.0);
    assertThat(number(Demand.LONGEST_GAP, 0)).isEqualTo(3);
    garden.type(WateringPattern.PATTERN, 1, WateringPattern.ODD);
    assertThat(garden.design().findings())
        .anyMatch(
            finding ->
                finding.column().equals(WateringPattern.PATTERN.reference())
                    && finding.line().contains("to water on even dates"));
  }

  /** A cure that opens hours which a rule closes would be none. */
  @Test
  void noCureOpensHoursThatAreForbidden() {
    garden.typeAll(NightSheet.CLOSES, "02:00");
    garden.type(Controller.KIND, 0, Controller.STATION_STARTS);
    assertThat(garden.findings()).anyMatch(finding -> finding.cure().contains("min later"));
    garden.type(DroughtStages.NO_WATER_FROM, 0, "02:10");
    garden.type(DroughtStages.NO_WATER_UNTIL, 0, "20:00");
    assertThat(garden.findings())
        .filteredOn(finding -> finding.column().equals(NightSheet.CLOSES.reference()))
        .isNotEmpty()
        .noneMatch(finding -> finding.cure().contains("min later"));
  }

  @Test
  void datesWithoutAFirstNightAreTold() {
    garden.type(SiteNights.FIRST_NIGHT, 0, "");
    garden.type(WateringPattern.PATTERN, 0, WateringPattern.ODD);
    assertThat(garden.findings())
        .anyMatch(finding -> finding.column().equals(SiteNights.FIRST_NIGHT.reference()));
  }

  @Test
  void aMonthAtHalfGetsHalfTheWeekByTheSameFormulas() {
    NightsInput half = MonthBook.input(garden.design().book(), 0.5).orElseThrow();
    for (NightsInput.Station station : half.stations()) {
      double week = number(Demand.RUN_TIME_PER_WEEK, station.sheet().row()) / 2;
      double run = Math.ceil(week / number(Demand.WATERING_DAYS, station.sheet().row()) - 1e-9);
      assertThat(station.zone().minutesPerNight()).isGreaterThanOrEqualTo((int) run);
      double longest = number(CycleAndSoak.LONGEST_CYCLE, station.sheet().row());
      if (!Double.isNaN(longest)) {
        assertThat(station.zone().minutesPerCycle()).isLessThanOrEqualTo((int) longest);
        assertThat(station.zone().cycles()).isEqualTo((int) Math.ceil(run / longest));
      }
    }
    assertThat(MonthBook.input(garden.design().book(), 1))
        .isEqualTo(garden.design().nights().asked());
    assertThat(MonthBook.input(garden.design().book(), 0)).isEmpty();
  }

  @Test
  void aPlainControllerHasOneSetOfStartsForAllDaysOfAProgram() {
    garden.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
    NightsPlan plan = garden.plan();
    assertThat(plan.programs()).isNotEmpty();
    Map<Integer, List<String>> keyed = new TreeMap<>();
    for (ScheduleCard card : ScheduleCards.of(plan)) {
      assertThat(card.way()).isEqualTo(ScheduleCard.Way.START_A_CYCLE);
      for (ScheduleCard.Line line : card.lines()) {
        assertThat(line.starts()).hasSize(line.cycles());
        // A zone of several programs has the starts of all of them.
        keyed.computeIfAbsent(line.zone().row(), any -> new ArrayList<>()).addAll(line.starts());
      }
    }
    keyed.forEach(
        (row, starts) ->
            assertThat(
                    plan.timetable().nights().stream()
                        .map(
                            night ->
                                night.runs().stream()
                                    .filter(run -> garden.isAt(run, row))
                                    .map(run -> NightWords.time(run.startMinute()))
                                    .toList())
                        .filter(some -> !some.isEmpty())
                        .distinct())
                .containsExactly(starts));
  }

  @Test
  void whatDoesNotFitComesWithCuresThatCanBeCarriedOut() {
    garden.typeAll(NightSheet.OPENS, "22:00").typeAll(NightSheet.CLOSES, "03:00");
    assertThat(garden.plan().timetable().fits()).isFalse();
    List<Finding> found =
        garden.findings().stream()
            .filter(finding -> finding.column().equals(NightSheet.CLOSES.reference()))
            .toList();
    assertThat(found.get(0).severity()).isEqualTo(Severity.CHECK);
    assertThat(found.get(0).sentence()).contains("min more than its hours give; no room for zone");
    int missing = overrun();
    boolean helped = false;
    for (Finding finding : found) {
      if (finding.remedy().isPresent()) {
        garden.take(finding.mend(garden.design().book()).orElseThrow());
        assertThat(overrun()).isLessThan(missing);
        helped = true;
        garden.design().book().undo();
        assertThat(overrun()).isEqualTo(missing);
      }
    }
    assertThat(helped).isTrue();
  }

  private int overrun() {
    return garden.plan().timetable().nights().stream().mapToInt(NightPlan::overrunMinutes).sum();
  }

  @Test
  void aRemedyIsGoneOnceTheDesignIsAnother() {
    garden.typeAll(NightSheet.CLOSES, "03:00");
    Finding finding =
        garden.findings().stream()
            .filter(each -> each.column().equals(NightSheet.CLOSES.reference()))
            .filter(each -> each.remedy().isPresent())
            .findFirst()
            .orElseThrow();
    garden.type(SiteNights.GAP, 0, "3 min");
    assertThat(finding.mend(garden.design().book())).isEmpty();
  }

  @Test
  void aSoakLongerThanTheNightIsNamed() {
    garden.typeAll(NightSheet.OPENS, "22:00").typeAll(NightSheet.CLOSES, "22:45");
    assertThat(garden.findings())
        .anyMatch(
            finding ->
                finding.where().equals("zone 1:")
                    && finding
                        .sentence()
                        .startsWith("needs 62 min for its cycles and soaks alone"));
  }

  @Test
  void aZoneOverTheFlowIsNamedOnceAndLeftOut() {
    garden.type(SiteRules.AVAILABLE_FLOW, 0, "20 gpm");
    assertThat(garden.runsOf(0)).isEmpty();
    assertThat(
            garden.findings().stream()
                .filter(finding -> finding.where().equals("zone 1:"))
                .filter(finding -> finding.column().equals(Emitters.ZONE_FLOW.reference())))
        .hasSize(1);
  }

  @Test
  void withoutNightsThereIsNoTimetableAndTheFirstNightSaysSo() {
    garden.typeAll(NightSheet.WATERED, "no");
    assertThat(garden.design().nights().plan()).isEmpty();
    assertThat(garden.findings())
        .anyMatch(finding -> finding.line().contains("nothing can be watered"));
  }

  @Test
  void hoursThatOverlapAreNamedByTheirNight() {
    garden.type(NightSheet.CLOSES, 0, "21:30");
    garden.type(NightSheet.OPENS, 0, "22:00");
    assertThat(garden.findings())
        .anyMatch(
            finding ->
                finding
                    .line()
                    .startsWith("night Monday: has a window that is still open when that of"));
    assertThat(garden.design().nights().plan()).isEmpty();
  }

  @Test
  void moreNightsThanTheSiteAllowsAreTold() {
    garden.type(SiteRules.DAYS_ALLOWED, 0, "3");
    assertThat(garden.findings())
        .anyMatch(finding -> finding.line().contains("nights of the week, and 3 are allowed"));
  }

  @Test
  void weekdaysAllowedCloseTheOtherNights() {
    garden.type(SiteRules.WEEKDAYS, 0, "Mon Thu");
    garden.typeAll(NightSheet.WATERED, "yes");
    assertThat(garden.plan().timetable().nights())
        .extracting(night -> NightWords.label(night.night()))
        .containsExactly("Monday", "Thursday");
  }

  @Test
  void zonesWithoutMinutesAreLeftOutAndCounted() {
    garden.type(Emitters.AREA, 4, "");
    garden.type(Emitters.AREA, 5, "");
    assertThat(garden.plan().input().stations()).hasSize(10);
    assertThat(garden.findings())
        .anyMatch(
            finding -> finding.line().startsWith("zone 5: and 1 more are not in the timetable"));
  }

  @Test
  void theOrderWishedForIsFollowedWhereItCostsNothing() {
    garden.firstZones(2);
    garden.type(WateringPattern.ORDER, 0, "2").type(WateringPattern.ORDER, 1, "1");
    NightPlan both =
        garden.plan().timetable().nights().stream()
            .filter(night -> night.runs().size() == 4)
            .findFirst()
            .orElseThrow();
    assertThat(garden.isAt(both.runs().get(0), 1)).isTrue();
  }
}
