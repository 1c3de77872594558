package zonewright.nights;

import java.util.ArrayList;
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
import zonewright.timetable.Undone;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;

/** Makes the schedule cards of a timetable, one a program. */
public final class ScheduleCards {
  private final NightsPlan plan;
  private final NightNames names;
  private final Map<ProgramPart, List<ZoneShare>> shares = new HashMap<>();

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
    }
  }

  /**
   * Returns the cards, one for each program that has zones; programs in the order of their names,
   * zones without one last.
   */
  public static List<ScheduleCard> of(NightsPlan plan) {
    ScheduleCards cards = new ScheduleCards(plan);
    List<ScheduleCard> all = new ArrayList<>();
    Map<ProgramPart, PlainProgram> plain =
        plan.programs().stream()
            .collect(Collectors.toMap(PlainProgram::program, program -> program));
    NightNames.sorted(cards.shares, cards.names)
        .forEach(
            (part, zones) -> {
              if (zones.stream().anyMatch(zone -> zone.state() != ZoneShare.State.NO_WATER)) {
                all.add(
                    plain.containsKey(part)
                        ? cards.ofProgram(plain.get(part))
                        : cards.ofZones(part));
              }
            });
    return all;
  }

  private ScheduleCard ofProgram(PlainProgram program) {
    String nights = program.stations().isEmpty() ? "" : NightWords.nights(program.nights());
    List<ScheduleCard.Line> lines = new ArrayList<>();
    for (PlainProgram.Station station : program.stations()) {
      lines.add(line(station.zone(), nights, starts(station.zone())));
    }
    List<String> misfits = new ArrayList<>();
    Misfits.of(program, plan.input().rules())
        .forEach(misfit -> misfits.add("This program " + misfit.clause() + "."));
    return new ScheduleCard(
        names.program(program.program()),
        nights,
        true,
        program.startMinutes().stream().map(NightWords::time).toList(),
        lines,
        withUndone(misfits, program.program()));
  }

  /** When a zone of a plain controller starts: alike on all its nights. */
  private List<Integer> starts(WateredZone zone) {
    for (NightPlan night : plan.timetable().nights()) {
      List<Integer> starts = starts(night, zone);
      if (!starts.isEmpty()) {
        return starts;
      }
    }
    return List.of();
  }

  private static List<Integer> starts(NightPlan night, WateredZone zone) {
    return night.runs().stream()
        .filter(run -> run.zone().number() == zone.number())
        .map(ValveRun::startMinute)
        .toList();
  }

  private static ScheduleCard.Line line(
      NightsInput.SheetZone sheet, WateredZone zone, String nights, List<Integer> starts) {
    return new ScheduleCard.Line(
        sheet,
        nights,
        zone.minutesPerCycle(),
        starts.size(),
        starts.size() > 1 ? zone.soakMinutes() : 0,
        starts.stream().map(NightWords::time).toList());
  }

  private ScheduleCard.Line line(WateredZone zone, String nights, List<Integer> starts) {
    return line(names.sheet(zone), zone, nights, starts);
  }

  private ScheduleCard ofZones(ProgramPart part) {
    List<ScheduleCard.Line> lines = new ArrayList<>();
    Set<Night> all = new LinkedHashSet<>();
    for (NightsInput.Station station : plan.input().stations()) {
      if (station.zone().program() != part.program()) {
        continue;
      }
      Map<List<Integer>, List<Night>> byStarts = new LinkedHashMap<>();
      for (NightPlan night : plan.timetable().nights()) {
        List<Integer> starts = starts(night, station.zone());
        if (!starts.isEmpty()) {
          byStarts.computeIfAbsent(starts, any -> new ArrayList<>()).add(night.night());
          all.add(night.night());
        }
      }
      byStarts.forEach(
          (starts, nights) -> lines.add(line(station.zone(), NightWords.nights(nights), starts)));
    }
    List<Night> inOrder =
        plan.timetable().nights().stream().map(NightPlan::night).filter(all::contains).toList();
    return new ScheduleCard(
        names.program(part),
        inOrder.isEmpty() ? "" : NightWords.nights(inOrder),
        plan.input().plain(),
        List.of(),
        lines,
        withUndone(ofZoneStarts(part), part));
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
}
