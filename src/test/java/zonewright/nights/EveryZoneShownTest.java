package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateringWindow;
import zonewright.trade.Sheets;
import zonewright.water.Controller;
import zonewright.water.SiteRules;
import zonewright.water.WateringPattern;

/** No zone disappears from the nights, whatever the design, and no name takes another's water. */
class EveryZoneShownTest {

  private static Garden anyGarden(Random random) {
    Garden garden = new Garden();
    garden.firstZones(3 + random.nextInt(8));
    String[] closes = {"22:00", "23:00", "01:00", "04:00", "07:00"};
    garden.typeAll(NightSheet.CLOSES, closes[random.nextInt(closes.length)]);
    garden.type(SiteRules.AVAILABLE_FLOW, 0, 10 + random.nextInt(40) + " gpm");
    garden.type(Controller.STARTS, 0, String.valueOf(1 + random.nextInt(4)));
    garden.type(Controller.PROGRAMS, 0, String.valueOf(1 + random.nextInt(4)));
    if (random.nextBoolean()) {
      garden.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
      garden.type(
          Controller.START_RUNS,
          0,
          random.nextBoolean() ? Controller.EVERY_STATION : Controller.STATIONS_DUE);
    }
    String[] patterns = {WateringPattern.SITE, WateringPattern.ODD, WateringPattern.EVEN};
    garden.type(WateringPattern.PATTERN, 0, patterns[random.nextInt(patterns.length)]);
    if (random.nextInt(3) == 0) {
      garden.type(Emitters.AREA, 1, "");
    }
    if (random.nextInt(3) == 0) {
      garden.type(NightSheet.WATERED, 1 + random.nextInt(4), NightSheet.NO);
    }
    return garden;
  }

  private static List<String> rowsThatCount(Garden garden) {
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < garden.design().book().rows(Sheets.ZONES); row++) {
      rows.add(String.valueOf(row));
    }
    return rows;
  }

  /** What is shown as placed and as not placed is, zone by zone, what is asked for. */
  @Property(tries = 25)
  void whatIsShownIsWhatIsAsked(@ForAll long seed) {
    Garden garden = anyGarden(new Random(seed));
    NightsPlan plan = garden.plan();
    List<ZoneShare> shares = ZoneShare.of(plan);
    assertThat(shares)
        .extracting(share -> String.valueOf(share.sheet().row()))
        .isEqualTo(rowsThatCount(garden));
    for (ZoneShare share : shares) {
      int runs = garden.runsOf(share.sheet().row()).stream().mapToInt(ValveRun::minutes).sum();
      assertThat(share.placed()).isEqualTo(runs);
      if (share.asked().isPresent()) {
        int lost = Math.max(0, share.inNoNight());
        int noRoom =
            plan.timetable().nights().stream()
                .flatMap(night -> night.undone().stream())
                .filter(
                    each ->
                        each.zone().number()
                            == garden
                                .design()
                                .book()
                                .contents()
                                .row(Sheets.ZONES, share.sheet().row())
                                .id())
                .mapToInt(each -> each.minutes())
                .sum();
        assertThat(runs + noRoom + lost).as("%s", share).isEqualTo(share.asked().getAsInt());
      }
      assertThat(share.why().isEmpty()).as("%s", share).isEqualTo(share.whole());
    }
    cardsHoldOnlyWhatCanBeKeyedIn(plan, shares);
    theCalendarNamesWhatDoesNotFit(plan, shares);
  }

  private static void cardsHoldOnlyWhatCanBeKeyedIn(NightsPlan plan, List<ZoneShare> shares) {
    List<ScheduleCard> cards = ScheduleCards.of(plan);
    int most = plan.input().rules().mostStarts();
    long keyed = cards.stream().filter(card -> !card.starts().isEmpty()).count();
    assertThat(keyed).isLessThanOrEqualTo(plan.input().rules().mostPrograms());
    String all = String.join(" ", cards.stream().flatMap(card -> card.misfits().stream()).toList());
    for (ScheduleCard card : cards) {
      assertThat(card.starts()).hasSizeLessThanOrEqualTo(most);
      for (ScheduleCard.Line line : card.lines()) {
        assertThat(line.starts()).hasSizeLessThanOrEqualTo(most).hasSize(line.cycles());
      }
    }
    for (NightPlan night : plan.timetable().nights()) {
      for (ValveRun run : night.runs()) {
        assertThat(night.windows()).anyMatch(window -> holds(window, run));
      }
    }
    for (ZoneShare share : shares) {
      boolean onACard =
          cards.stream()
              .flatMap(card -> card.lines().stream())
              .anyMatch(line -> line.zone().row() == share.sheet().row());
      assertThat(onACard || all.contains("Zone " + share.sheet().name()))
          .as("%s is on a card or in its box", share)
          .isTrue();
      assertThat(share.whole() || all.contains("Zone " + share.sheet().name())).isTrue();
    }
    assertThat(plan.complete()).isEqualTo(all.isEmpty());
  }

  private static boolean holds(WateringWindow window, ValveRun run) {
    return window.startMinute() <= run.startMinute() && run.endMinute() <= window.endMinute();
  }

  private static void theCalendarNamesWhatDoesNotFit(NightsPlan plan, List<ZoneShare> shares) {
    String text = CalendarFile.of(plan, "Any", LocalDate.of(2026, 6, 1), Instant.EPOCH);
    String said =
        Biweekly.parse(text).first().getEvents().stream()
            .map(event -> event.getDescription().getValue())
            .collect(Collectors.joining("\n"));
    for (ZoneShare share : shares) {
      assertThat(said.contains(share.line(plan))).isEqualTo(!share.whole());
    }
  }

  /** Zones that differ in all but their name: each keeps its own minutes and starts. */
  @Test
  void zonesWithOneNameKeepTheirOwnRuns() {
    Garden different = new Garden();
    Garden alike = new Garden();
    alike.typeAll(Facts.ZONE_NAME, "Lawn").typeAll(Facts.ZONE_PLACE, "");
    for (int row = 0; row < different.design().book().rows(Sheets.ZONES); row++) {
      assertThat(alike.runsOf(row)).isNotEmpty().isEqualTo(different.runsOf(row));
    }
    List<List<String>> starts = starts(different);
    assertThat(starts(alike)).isEqualTo(starts);
    assertThat(starts.stream().distinct().count()).isGreaterThan(3);
  }

  private static List<List<String>> starts(Garden garden) {
    return ScheduleCards.of(garden.plan()).stream()
        .flatMap(card -> card.lines().stream())
        .map(ScheduleCard.Line::starts)
        .toList();
  }

  @Test
  void anotherNameChangesNothingButWords() {
    Garden garden = new Garden();
    NightsPlan before = garden.plan();
    garden.nameProgram(0, "N. side").type(Facts.ZONE_NAME, 0, "Croquet");
    NightsPlan after = garden.design().nights().known().orElseThrow();
    assertThat(after.timetable()).isSameAs(before.timetable());
    assertThat(ScheduleCards.of(after)).extracting(ScheduleCard::title).contains("Program N. side");
    assertThat(ZoneShare.of(after).get(0).sheet().name()).isEqualTo("Croquet");
  }

  /** A program that is cut short: the box says what and by how much before anything to key in. */
  @Test
  void aCardSaysFirstWhatDoesNotFit() {
    Garden garden = new Garden();
    garden.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
    garden.type(Controller.PROGRAMS, 0, "1").type(Controller.STARTS, 0, "2");
    garden.typeAll(NightSheet.CLOSES, "22:30");
    List<ScheduleCard> cards = ScheduleCards.of(garden.plan());
    String said = String.join("\n", cards.stream().flatMap(c -> c.misfits().stream()).toList());
    assertThat(said)
        .contains("a controller that has 1, so nothing of it can be keyed in")
        .contains("not placed, the controller has too few programs");
    assertThat(cards).anyMatch(card -> card.lines().isEmpty() && card.starts().isEmpty());
    for (ScheduleCard card : cards) {
      for (String start : card.starts()) {
        assertThat(start).isGreaterThanOrEqualTo("21:00").isLessThan("22:30");
      }
    }
  }
}
