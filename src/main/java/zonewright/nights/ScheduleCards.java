package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import zonewright.timetable.Night;
import zonewright.timetable.NightPlan;
import zonewright.timetable.PlainProgram;
import zonewright.timetable.ProgramPart;
import zonewright.timetable.StartRuns;
import zonewright.timetable.Undone;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringDays;
import zonewright.timetable.WateringWindow;
import zonewright.timetable.ZoneWater;

/** Makes the schedule cards of a timetable, one a program. */
public final class ScheduleCards {
  private final NightsPlan plan;
  private final NightNames names;
  private final Map<ProgramPart, List<ZoneShare>> shares = new HashMap<>();
  private final Map<Integer, ZoneShare> byRow = new HashMap<>();

  private ScheduleCards(NightsPlan plan) {
    this.plan = plan;
    this.names = new NightNames(plan);
    Map<Integer, ProgramPart> parts = new HashMap<>();
    for (NightsInput.Station station : plan.input().stations()) {
      parts.put(station.sheet().row(), names.part(station.zone()));
    }
    for (ZoneShare share : ZoneShare.of(plan)) {
      ProgramPart own = new ProgramPart(share.sheet().program(), 1);
      shares
          .computeIfAbsent(parts.getOrDefault(share.sheet().row(), own), any -> new ArrayList<>())
          .add(share);
      byRow.put(share.sheet().row(), share);
    }
  }

  /**
   * Returns the cards: where the controller starts programs in the order of its letters, else of
   * the programs' names; what cannot be keyed in at all comes last.
   */
  public static List<ScheduleCard> of(NightsPlan plan) {
    ScheduleCards cards = new ScheduleCards(plan);
    Map<ProgramPart, String> letters = ProgramLetters.of(plan, cards.names);
    List<ScheduleCard> all = new ArrayList<>();
    for (PlainProgram program : plan.programs()) {
      all.add(cards.ofProgram(program, letters.getOrDefault(program.program(), "")));
    }
    Set<ProgramPart> plain =
        plan.programs().stream().map(PlainProgram::program).collect(Collectors.toSet());
    NightNames.sorted(cards.shares, cards.names)
        .forEach(
            (part, zones) -> {
              boolean asks =
                  zones.stream().anyMatch(zone -> zone.state() != ZoneShare.State.NO_WATER);
              if (asks && !plain.contains(part)) {
                all.add(cards.ofZones(part));
              }
            });
    all.sort(
        Comparator.comparing((ScheduleCard card) -> card.letter().isEmpty())
            .thenComparing(card -> card.letter().length())
            .thenComparing(ScheduleCard::letter));
    return all;
  }

  private ScheduleCard ofProgram(PlainProgram program, String letter) {
    boolean oneStart = plan.input().startRuns() == StartRuns.CYCLES_AND_SOAKS;
    String days = letter.isEmpty() ? "" : days(program);
    List<ScheduleCard.Line> lines = new ArrayList<>();
    for (PlainProgram.Station station : program.stations()) {
      WateredZone zone = station.zone();
      int keyed = oneStart ? zone.minutes(station.cycles()) : zone.minutesPerCycle();
      lines.add(line(zone, days, keyed, starts(program.runs(), zone)));
    }
    List<String> misfits = new ArrayList<>();
    Misfits.of(program, plan.input().rules())
        .forEach(misfit -> misfits.add("This program " + misfit.clause() + "."));
    boolean second = program.asked().zones().isEmpty();
    return new ScheduleCard(
        letter,
        names.program(program.program().program()),
        days,
        oneStart ? ScheduleCard.Way.CYCLE_AND_SOAK : ScheduleCard.Way.START_A_CYCLE,
        program.startMinutes().stream().map(NightWords::time).toList(),
        lines,
        program.runs().stream().mapToInt(ValveRun::minutes).sum(),
        letter.isEmpty() ? "" : NightWords.time(program.finishMinute()),
        second ? misfits : withUndone(misfits, program.program()),
        second ? "" : rounding(program.program()));
  }

  private String days(PlainProgram program) {
    WateringDays rule = program.stations().get(0).zone().days();
    List<Night> days = program.startDays();
    if (rule instanceof WateringDays.EveryFewDays interval) {
      String first = NightWords.label(days.get(0));
      return interval.days() == 1
          ? "every day"
          : "every %s days, the first on %s".formatted(interval.days(), first);
    }
    if (rule instanceof WateringDays.OddDates) {
      return "odd dates";
    }
    return rule instanceof WateringDays.EvenDates ? "even dates" : weekdays(days);
  }

  private static String weekdays(List<Night> days) {
    Set<DayOfWeek> all = EnumSet.noneOf(DayOfWeek.class);
    days.forEach(day -> all.add(day.weekday()));
    return all.size() == DayOfWeek.values().length ? "every day" : NightWords.weekdays(all);
  }

  private static List<Integer> starts(List<ValveRun> runs, WateredZone zone) {
    return runs.stream()
        .filter(run -> run.zone().number() == zone.number())
        .map(ValveRun::startMinute)
        .toList();
  }

  private ScheduleCard.Line line(WateredZone zone, String days, int keyed, List<Integer> starts) {
    NightsInput.SheetZone sheet = names.sheet(zone);
    ZoneShare share = byRow.get(sheet.row());
    return new ScheduleCard.Line(
        sheet,
        days,
        keyed,
        starts.size(),
        zone.minutesPerCycle(),
        zone.cycles() > 1 ? zone.soakMinutes() : 0,
        starts.stream().map(NightWords::time).toList(),
        share.whole()
            ? ""
            : "lacks %s min %s".formatted(share.undone().orElse(0), ZoneShare.period(plan)));
  }

  private ScheduleCard ofZones(ProgramPart part) {
    List<ScheduleCard.Line> lines = new ArrayList<>();
    Set<Night> all = new LinkedHashSet<>();
    for (NightsInput.Station station : plan.input().stations()) {
      if (!names.part(station.zone()).equals(part)) {
        continue;
      }
      Map<List<Integer>, List<Night>> byStarts = new LinkedHashMap<>();
      for (NightPlan night : plan.timetable().nights()) {
        List<Integer> starts = starts(night.runs(), station.zone());
        onOneSide(starts, night.night(), byStarts, all);
      }
      int keyed = station.zone().minutesPerCycle();
      byStarts.forEach(
          (starts, days) -> lines.add(line(station.zone(), ownDays(days), keyed, starts)));
    }
    return new ScheduleCard(
        "",
        names.program(part),
        all.isEmpty() ? "" : ownDays(List.copyOf(all)),
        ScheduleCard.Way.STATION_STARTS,
        List.of(),
        lines,
        0,
        "",
        withUndone(ofZoneStarts(part), part),
        rounding(part));
  }

  private static String ownDays(List<Night> days) {
    return days.get(0).date().isPresent() ? NightWords.nights(days) : weekdays(days);
  }

  /** Adds the starts of a night on the days of the calendar on which they lie. */
  private static void onOneSide(
      List<Integer> starts, Night night, Map<List<Integer>, List<Night>> byStarts, Set<Night> all) {
    Map<Boolean, List<Integer>> sides =
        starts.stream().collect(Collectors.partitioningBy(start -> start >= WateringWindow.DAY));
    sides.forEach(
        (after, some) -> {
          if (!some.isEmpty()) {
            Night day = after ? night.next() : night;
            byStarts.computeIfAbsent(some, any -> new ArrayList<>()).add(day);
            all.add(day);
          }
        });
  }

  /** What of zones that start by themselves does not fit. */
  private List<String> ofZoneStarts(ProgramPart part) {
    Map<WateredZone, Integer> late = new LinkedHashMap<>();
    Set<WateredZone> starts = new LinkedHashSet<>();
    for (NightPlan night : plan.timetable().nights()) {
      for (Undone each : night.undone()) {
        if (each.zone().program() != part.program()) {
          continue;
        }
        if (each.why() == Undone.Why.OVER_STARTS) {
          starts.add(each.zone());
        }
        int end = each.startMinute().orElse(0) + each.minutes();
        if (end > night.closesMinute()) {
          late.merge(each.zone(), end - night.closesMinute(), Math::max);
        }
      }
    }
    List<String> misfits = new ArrayList<>();
    int most = plan.input().rules().mostStarts();
    for (WateredZone zone : starts) {
      misfits.add(
          "%s asks for %s starts a night of a controller that has %s, %s too many."
              .formatted(
                  NightWords.capital(names.zone(zone)), zone.cycles(), most, zone.cycles() - most));
    }
    late.values().stream()
        .max(Integer::compare)
        .ifPresent(
            minutes ->
                misfits.add(
                    "Its nights are too short: it would be done %s after they end."
                        .formatted(NightWords.length(minutes))));
    return misfits;
  }

  /** Adds what each zone of a program lacks. */
  private List<String> withUndone(List<String> misfits, ProgramPart part) {
    List<String> all = new ArrayList<>(misfits);
    for (ZoneShare share : shares.getOrDefault(part, List.of())) {
      if (!share.whole()) {
        all.add(NightWords.capital(share.line(plan)) + ".");
      }
    }
    return all;
  }

  /** What rounding adds for the zones of a program that get all they ask for. */
  private String rounding(ProgramPart part) {
    Set<Integer> rows =
        shares.getOrDefault(part, List.of()).stream()
            .filter(ZoneShare::whole)
            .map(share -> share.sheet().row())
            .collect(Collectors.toSet());
    double sum = 0;
    List<String> some = new ArrayList<>();
    Map<Long, ZoneWater> water =
        plan.timetable().zones().stream()
            .collect(Collectors.toMap(each -> each.zone().number(), each -> each));
    for (NightsInput.Station station : plan.input().stations()) {
      if (plan.weekly() && rows.contains(station.sheet().row())) {
        ZoneWater its = water.get(station.zone().number());
        double excess = its.minutesAsked() - station.askedAWeek();
        sum += excess;
        if (excess >= 1) {
          some.add("%s by %s min".formatted(NightNames.zone(station.sheet()), Math.round(excess)));
        }
      }
    }
    return some.isEmpty()
        ? ""
        : "Rounding gives %s min a week more than is needed, %s."
            .formatted(Math.round(sum), String.join(", ", some));
  }
}
