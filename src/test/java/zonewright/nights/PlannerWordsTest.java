package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.timetable.Cure;
import zonewright.timetable.NightRules;
import zonewright.timetable.ProgramPart;
import zonewright.timetable.TimetableFinding;
import zonewright.timetable.WateredZone;
import zonewright.water.Controller;

/** Whatever the planner finds is said in whole sentences, made of names that hold anything. */
class PlannerWordsTest {
  private static final DayOfWeek MON = DayOfWeek.MONDAY;
  private static final DayOfWeek THU = DayOfWeek.THURSDAY;

  private final Garden garden = new Garden();

  private WateredZone zone() {
    return garden.plan().input().stations().get(0).zone();
  }

  private List<TimetableFinding> findings() {
    WateredZone zone = zone();
    ProgramPart program = new ProgramPart(zone.program(), 1);
    return List.of(
        new TimetableFinding.NoOpenDay(zone, Set.of(MON)),
        new TimetableFinding.NoOpenDay(program, Set.of(THU)),
        new TimetableFinding.ClosedDays(zone, Set.of(MON), Set.of(THU)),
        new TimetableFinding.TooFewDays(zone, 3, 2),
        new TimetableFinding.GapTooLong(zone, 3, 2, 4, OptionalInt.of(3)),
        new TimetableFinding.GapTooLong(program, 1, 2, 4, OptionalInt.empty()),
        new TimetableFinding.LostDates(zone, 4, 28),
        new TimetableFinding.CycleOverWindow(zone, MON, 10),
        new TimetableFinding.SpanOverWindow(zone, MON, 135, 120),
        new TimetableFinding.StartOverWindow(program, 130, 120),
        new TimetableFinding.StartOverWindow(new ProgramPart(WateredZone.NO_PROGRAM, 1), 130, 120),
        new TimetableFinding.ProgramSplit(zone.program(), List.of(zone, zone)),
        new TimetableFinding.KeyedTogether(zone.program(), List.of(zone, zone)),
        new TimetableFinding.NoCommonHours(program, MON, THU),
        new TimetableFinding.RestBetweenNights(zone),
        new TimetableFinding.RestOverWeeksEnd());
  }

  @Test
  void everyKindOfFindingHasWords() {
    assertThat(findings())
        .extracting(Object::getClass)
        .containsAll(Arrays.<Class<?>>asList(TimetableFinding.class.getPermittedSubclasses()));
    PlannerWords words = new PlannerWords(garden.plan(), new NightNames(garden.plan()));
    List<String> said = new ArrayList<>();
    for (TimetableFinding finding : findings()) {
      NightFinding inWords = words.of(finding);
      assertThat(inWords.sentence()).doesNotEndWith(".").doesNotContain("null", "[", " 1 days");
      assertThat(inWords.cure()).isNotBlank().doesNotEndWith(".");
      said.add(inWords.sentence());
    }
    assertThat(said).doesNotHaveDuplicates();
  }

  @Test
  void everyKindOfCureHasWordsAndThoseOfSettingsAnEdit() {
    NightsPlan plan = garden.plan();
    WateredZone zone = zone();
    NightRules rules = plan.input().rules();
    Map<Long, Set<DayOfWeek>> days = Map.of(zone.number(), Set.of(MON));
    List<Cure> cures =
        List.of(
            new Cure.OtherNights(List.of(new Cure.Move(zone, THU, MON)), days, 0),
            new Cure.OneMoreValve(rules, 3),
            new Cure.WiderWindows(List.of(new Cure.Shift(MON, true, 10, 400)), rules, 0),
            new Cure.LaterClose(20, rules, 7, 0),
            new Cure.SharedOut(days, 0),
            new Cure.NoSoak(List.of(zone), 0),
            new Cure.OtherController(0));
    assertThat(cures)
        .extracting(Object::getClass)
        .containsExactlyInAnyOrder(Cure.class.getPermittedSubclasses());
    CureWords words = new CureWords(plan, new NightNames(plan));
    assertThat(cures)
        .extracting(words::clause)
        .containsExactly(
            "water zone 1 on Monday instead of Thursday, after which every night is long enough",
            "let 2 valves run at once, after which 3 min are still missing",
            "let the window of Monday close 10 min later, at 06:40, after which every night is long enough",
            "let every night close 20 min later, after which every night is long enough",
            "share the zones out over the nights: zone 1 on Mon, after which every night is long enough",
            "give zone 1 emitters of a rate the soil takes in, so that no soak is needed, after which every night is long enough",
            "use a controller that starts each zone by itself, after which every night is long enough");
    assertThat(cures.get(0))
        .satisfies(
            cure ->
                assertThat(new CureEdit(cure, plan.input()).edit(garden.design().book(), null, 0))
                    .isPresent());
  }

  @Test
  void namesThatLookLikeSentencesBreakNone() {
    for (String name : List.of("N. side", "x; y. Then (2)")) {
      Garden named = new Garden().firstZones(6);
      named.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
      named.nameProgram(0, name).type(Facts.ZONE_NAME, 0, name);
      named.typeAll(NightSheet.CLOSES, "22:30");
      Garden plain = new Garden().firstZones(6);
      plain.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
      plain.typeAll(NightSheet.CLOSES, "22:30");
      // The program is the first of its sheet, the zone the first of its own, whatever their names.
      assertThat(said(named))
          .isEqualTo(said(plain).stream().map(line -> renamed(line, name)).toList());
    }
  }

  private static String renamed(String line, String name) {
    return line.replaceAll("(?<![A-Za-z0-9])zone 1(?![0-9])", "zone " + name);
  }

  private static List<String> said(Garden garden) {
    NightsPlan plan = garden.plan();
    return NightFindings.of(garden.design().book(), plan).stream()
        .flatMap(finding -> Stream.of(finding.sentence(), finding.cure()))
        .toList();
  }
}
