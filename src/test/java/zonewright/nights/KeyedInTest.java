package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.budget.SiteBudget;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.testing.Counts;
import zonewright.timetable.WateringWindow;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.units.UnitSystem;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.DroughtStages;
import zonewright.water.SiteRules;

/**
 * What the cards say, keyed into a controller and run minute by minute, waters every zone as it
 * needs, or as the cards say it lacks.
 */
class KeyedInTest {
  private static final int WEEKS = 3;

  private static void type(Design design, Column column, int row, Object value) {
    design.book().start(design.edits().typed(column.reference(), row, String.valueOf(value)));
  }

  /** Six zones with all that a designer types first, and nothing about the controller. */
  static Design sixZones() {
    Design design = Design.blank(UnitSystem.US);
    design.book().start(design.edits().inserted(Sheets.ZONES, 0, 6));
    type(design, zonewright.climate.Climate.PLACE, 0, "CIMIS zone 8");
    Object[][] zones = {
      {"2000", "cool-season turf", "fixed spray", "20", "1.5", "clay", "8"},
      {"1500", "cool-season turf", "fixed spray", "15", "1.5", "clay loam", "3"},
      {"3000", "cool-season turf", "rotor", "12", "3", "loam", "2"},
      {"900", "shrubs (dry climate)", "fixed spray", "10", "1.2", "clay", "12"},
      {"700", "shrubs (dry climate)", "fixed spray", "8", "1.2", "loam", "0"},
      {"500", "shrubs (dry climate)", "fixed spray", "6", "1.2", "sandy loam", "0"},
    };
    Column[] columns = {
      Emitters.AREA,
      Plants.PLANT,
      Emitters.EMITTER,
      Emitters.EMITTER_COUNT,
      Emitters.EMITTER_FLOW,
      Soils.SOIL_TYPE,
      Soils.SLOPE
    };
    for (int row = 0; row < zones.length; row++) {
      type(design, zonewright.design.Facts.ZONE_NAME, row, row + 1);
      for (int i = 0; i < columns.length; i++) {
        type(design, columns[i], row, zones[row][i]);
      }
    }
    return design;
  }

  @Test
  void theGardenOfSixZones() {
    for (String kind :
        List.of(
            Controller.PROGRAM_STARTS, Controller.CYCLES_AND_SOAKS, Controller.STATION_STARTS)) {
      Design design = sixZones();
      type(design, Controller.KIND, 0, kind);
      check(design, kind);
    }
  }

  private static int number(Design design, Column column) {
    return (int) design.book().number(column.reference(), 0);
  }

  private static String word(Design design, Column column) {
    return design.book().outcome(column.reference(), 0).text();
  }

  /** Returns the most valves that were open at once. */
  private static int check(Design design, String about) {
    NightsPlan plan = design.nights().plan().orElseThrow();
    String kind = word(design, Controller.KIND);
    ControllerMachine machine =
        new ControllerMachine(
            number(design, Controller.PROGRAMS),
            number(design, Controller.STARTS),
            number(design, SiteNights.GAP),
            kind.equals(Controller.CYCLES_AND_SOAKS),
            word(design, Controller.START_RUNS).equals(Controller.STATIONS_DUE),
            number(design, Controller.PROGRAMS_AT_ONCE));
    List<ScheduleCard> cards = ScheduleCards.of(plan);
    cards.forEach(machine::keyIn);
    List<ControllerMachine.Run> runs = machine.run(WEEKS);
    waterAsNeeded(design, plan, runs, about);
    soaksHold(plan, runs, about);
    inTheHours(plan, runs, about);
    keepsToTheStage(design, runs, about);
    return flowHolds(design, plan, runs, kind.equals(Controller.STATION_STARTS), about);
  }

  /** The water of the middle week, beside what the zone needs and the cards say it lacks. */
  private static void waterAsNeeded(
      Design design, NightsPlan plan, List<ControllerMachine.Run> runs, String about) {
    int step = number(design, Controller.MINUTE_STEP);
    Map<Integer, ZoneShare> shares =
        ZoneShare.of(plan).stream().collect(Collectors.toMap(s -> s.sheet().row(), s -> s));
    for (NightsInput.Station station : plan.input().stations()) {
      int row = station.sheet().row();
      int landed = 0;
      for (ControllerMachine.Run run : runs) {
        if (run.zone() == row) {
          int from = Math.max(run.from(), ControllerMachine.WEEK);
          int to = Math.min(run.to(), 2 * ControllerMachine.WEEK);
          landed += Math.max(0, to - from);
        }
      }
      ZoneShare share = shares.get(row);
      double need = design.book().number(Demand.RUN_TIME_PER_WEEK.reference(), row);
      assertThat(landed).as("%s zone %s", about, row).isEqualTo(share.placed());
      int lacks = share.undone().orElseThrow();
      assertThat(landed + lacks + 1e-6).as("%s zone %s", about, row).isGreaterThanOrEqualTo(need);
      // By rounding no more than a step for each cycle of each day, and one for each day.
      double cycles = station.zone().cycles() + 1.0;
      boolean together = share.asked().orElse(0) != keyedAsOnTheSheet(design, row);
      if (!together) {
        assertThat(landed + lacks - need)
            .as("%s zone %s", about, row)
            .isLessThanOrEqualTo(step * cycles * 7);
      }
    }
  }

  private static int keyedAsOnTheSheet(Design design, int row) {
    return (int)
        Math.round(
            design.book().number(CycleAndSoak.MINUTES_GIVEN.reference(), row)
                * design.book().number(Demand.WATERINGS_A_WEEK.reference(), row));
  }

  private static void soaksHold(NightsPlan plan, List<ControllerMachine.Run> runs, String about) {
    boolean told =
        plan.timetable().findings().stream()
            .anyMatch(
                finding ->
                    finding instanceof zonewright.timetable.TimetableFinding.RestBetweenNights
                        || finding
                            instanceof zonewright.timetable.TimetableFinding.RestOverWeeksEnd);
    Map<Integer, Integer> soaks =
        ScheduleCards.of(plan).stream()
            .flatMap(card -> card.lines().stream())
            .collect(
                Collectors.toMap(line -> line.zone().row(), ScheduleCard.Line::soak, Math::max));
    for (NightsInput.Station station : plan.input().stations()) {
      List<ControllerMachine.Run> own =
          runs.stream()
              .filter(run -> run.zone() == station.sheet().row())
              .sorted(Comparator.comparingInt(ControllerMachine.Run::from))
              .toList();
      for (int i = 1; i < own.size(); i++) {
        int pause = own.get(i).from() - own.get(i - 1).to();
        if (pause < 600 || !told) {
          assertThat(pause)
              .as("%s %s", about, own.get(i))
              .isGreaterThanOrEqualTo(soaks.getOrDefault(station.sheet().row(), 0));
        }
        if (own.get(i).to() - own.get(i).from() > station.zone().minutesPerCycle()) {
          throw new AssertionError(about + ": a cycle is longer than the soil takes");
        }
      }
    }
  }

  private static void inTheHours(NightsPlan plan, List<ControllerMachine.Run> runs, String about) {
    boolean[] open = new boolean[ControllerMachine.WEEK];
    plan.input()
        .rules()
        .windows()
        .forEach(
            (day, windows) -> {
              for (WateringWindow window : windows) {
                int midnight = (day.getValue() - 1) * ControllerMachine.DAY;
                for (int at = window.startMinute(); at < window.endMinute(); at++) {
                  open[(midnight + at) % open.length] = true;
                }
              }
            });
    for (ControllerMachine.Run run : runs) {
      boolean inside = true;
      for (int at = run.from(); at < run.to(); at++) {
        inside &= open[at % open.length];
      }
      assertThat(inside).as("%s %s is in the hours", about, run).isTrue();
    }
  }

  /** No valve is open in the hours the stage forbids, nor on more days than it allows. */
  private static void keepsToTheStage(
      Design design, List<ControllerMachine.Run> runs, String about) {
    if (word(design, DroughtStages.IN_FORCE).isEmpty()) {
      return;
    }
    int from = minute(design, DroughtStages.STAGE_FROM);
    int until = minute(design, DroughtStages.STAGE_UNTIL);
    List<Integer> nights = new ArrayList<>();
    for (ControllerMachine.Run run : runs) {
      for (int at = run.from(); at < run.to(); at++) {
        int clock = at % ControllerMachine.DAY;
        assertThat(clock >= from && clock < until).as("%s %s", about, run).isFalse();
      }
      // Windows open at 18:00 or later, or at midnight: what runs in the morning is of that night.
      boolean afterMidnight = minute(design, NightSheet.OPENS) != 0;
      int noonToNoon = run.from() - (afterMidnight ? ControllerMachine.DAY / 2 : 0);
      nights.add(Math.floorMod(Math.floorDiv(noonToNoon, ControllerMachine.DAY), 7));
    }
    assertThat(nights.stream().distinct().count())
        .as(about)
        .isLessThanOrEqualTo(number(design, DroughtStages.MOST_DAYS));
  }

  private static int minute(Design design, Column column) {
    return CalendarText.minuteOfDay(design.book().number(column.reference(), 0));
  }

  private static int flowHolds(
      Design design,
      NightsPlan plan,
      List<ControllerMachine.Run> runs,
      boolean stationsStart,
      String about) {
    double[] flow = new double[WEEKS * ControllerMachine.WEEK + ControllerMachine.DAY];
    int[] valves = new int[flow.length];
    for (ControllerMachine.Run run : runs) {
      double own = design.book().number(Emitters.ZONE_FLOW.reference(), run.zone());
      for (int at = run.from(); at < run.to(); at++) {
        flow[at] += own;
        valves[at]++;
      }
    }
    double most = plan.input().rules().availableFlow() * (1 + 1e-9);
    int together =
        number(design, stationsStart ? SiteNights.MOST_VALVES : Controller.PROGRAMS_AT_ONCE);
    assertThat(Arrays.stream(flow).max().orElse(0)).as(about).isLessThanOrEqualTo(most);
    int valvesAtOnce = Arrays.stream(valves).max().orElse(0);
    assertThat(valvesAtOnce).as(about).isLessThanOrEqualTo(together);
    return valvesAtOnce;
  }

  private static Design anyGarden(Random random, String kind) {
    Garden garden = new Garden();
    int zones = 3 + random.nextInt(8);
    garden.firstZones(zones);
    Design design = garden.design();
    type(design, Controller.KIND, 0, kind);
    type(
        design,
        Controller.START_RUNS,
        0,
        random.nextBoolean() ? Controller.EVERY_STATION : Controller.STATIONS_DUE);
    type(design, Controller.STARTS, 0, 1 + random.nextInt(6));
    type(design, Controller.PROGRAMS, 0, 2 + random.nextInt(5));
    type(design, Controller.MINUTE_STEP, 0, 1 + random.nextInt(3) + " min");
    type(design, Controller.LONGEST_RUN, 0, 12 + random.nextInt(240) + " min");
    type(design, SiteRules.AVAILABLE_FLOW, 0, 20 + random.nextInt(60) + " gpm");
    type(design, SiteNights.MOST_VALVES, 0, 1 + random.nextInt(3));
    type(design, Controller.PROGRAMS_AT_ONCE, 0, 1 + random.nextInt(2));
    type(design, SiteNights.GAP, 0, random.nextInt(3) + " min");
    String[] opens = {"18:00", "20:00", "21:00", "22:30", "00:00"};
    String[] closes = {"03:00", "05:00", "07:00", "09:00"};
    garden.typeAll(NightSheet.OPENS, opens[random.nextInt(opens.length)]);
    garden.typeAll(NightSheet.CLOSES, closes[random.nextInt(closes.length)]);
    for (int night = 0; night < 7; night++) {
      type(
          design,
          NightSheet.WATERED,
          night,
          night > 1 && random.nextInt(3) == 0 ? NightSheet.NO : NightSheet.YES);
    }
    String[] soils = {"clay", "clay loam", "loam", "sandy loam"};
    for (int row = 0; row < zones; row++) {
      type(design, Soils.SOIL_TYPE, row, soils[random.nextInt(soils.length)]);
      type(design, Soils.SLOPE, row, random.nextInt(12) + " %");
      if (random.nextBoolean()) {
        type(design, Demand.WATERING_DAYS, row, 1 + random.nextInt(5));
      }
      if (random.nextInt(3) == 0) {
        type(design, SiteBudget.ZONE_PROGRAM, row, "");
      }
    }
    if (random.nextInt(3) == 0) {
      design.book().start(design.edits().inserted(Sheets.STAGES, 0, 1));
      type(design, DroughtStages.STAGE, 0, "Stage 1");
      type(design, DroughtStages.MOST_DAYS, 0, 1 + random.nextInt(4));
      type(design, DroughtStages.CUT, 0, 10 * random.nextInt(6) + " %");
      type(design, DroughtStages.STAGE_FROM, 0, random.nextBoolean() ? "06:00" : "02:00");
      type(design, DroughtStages.STAGE_UNTIL, 0, "19:00");
      type(design, DroughtStages.IN_FORCE, 0, "Stage 1");
    }
    return design;
  }

  @Test
  @Tag(Counts.LONG)
  void anyGardenOnAnyController() {
    List<String> kinds =
        new ArrayList<>(
            List.of(
                Controller.PROGRAM_STARTS, Controller.CYCLES_AND_SOAKS, Controller.STATION_STARTS));
    int lacking = 0;
    int whole = 0;
    int together = 0;
    for (int seed = 0; seed < Counts.of(10, 1000); seed++) {
      for (String kind : kinds) {
        Design design = anyGarden(new Random(seed), kind);
        if (design.nights().plan().isEmpty()) {
          continue;
        }
        int valves = check(design, "garden " + seed + ", " + kind);
        together += !kind.equals(Controller.STATION_STARTS) && valves == 2 ? 1 : 0;
        if (design.nights().plan().orElseThrow().complete()) {
          whole++;
        } else {
          lacking++;
        }
      }
    }
    assertThat(Math.min(lacking, whole)).as("%s whole, %s not", whole, lacking).isPositive();
    assertThat(together).as("two programs ran at once").isPositive();
  }
}
