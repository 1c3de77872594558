package zonewright.nights;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import zonewright.timetable.Night;
import zonewright.timetable.NightPlan;
import zonewright.timetable.PlainProgram;
import zonewright.timetable.ProgramCard;
import zonewright.timetable.ValveRun;

/** Makes the schedule cards of a timetable, one a program. */
public final class ScheduleCards {
  private final NightsPlan plan;
  private final Map<String, NightsInput.Station> stations;

  private ScheduleCards(NightsPlan plan) {
    this.plan = plan;
    this.stations = plan.stations();
  }

  /** Returns the cards; programs in the order of their names, zones without one last. */
  public static List<ScheduleCard> of(NightsPlan plan) {
    ScheduleCards cards = new ScheduleCards(plan);
    return plan.input().plain() ? cards.ofPrograms() : cards.ofZones();
  }

  private List<ScheduleCard> ofPrograms() {
    List<ScheduleCard> cards = new ArrayList<>();
    for (PlainProgram program : plan.programs()) {
      ProgramCard card = program.card();
      String nights = NightWords.nights(program.nights());
      List<ScheduleCard.Line> lines = new ArrayList<>();
      for (ProgramCard.Station station : card.stations()) {
        lines.add(
            new ScheduleCard.Line(
                stations.get(station.zone().name()),
                nights,
                station.minutes(),
                station.starts(),
                station.starts() > 1 ? station.zone().soakMinutes() : 0,
                starts(station.zone().name())));
      }
      List<String> starts = card.startMinutes().stream().map(NightWords::time).toList();
      cards.add(new ScheduleCard(card.program(), nights, starts, lines));
    }
    cards.sort(Comparator.comparing(ScheduleCard::program));
    return cards;
  }

  /** When a zone of a plain controller starts: alike on all its nights. */
  private List<String> starts(String zone) {
    for (NightPlan night : plan.timetable().nights()) {
      List<String> starts =
          night.runs().stream()
              .filter(run -> run.zone().name().equals(zone))
              .map(run -> NightWords.time(run.startMinute()))
              .toList();
      if (!starts.isEmpty()) {
        return starts;
      }
    }
    return List.of();
  }

  private List<ScheduleCard> ofZones() {
    Map<String, Map<String, Map<List<Integer>, List<Night>>>> programs =
        new TreeMap<>(
            (one, other) ->
                one.isEmpty() == other.isEmpty()
                    ? one.compareTo(other)
                    : Boolean.compare(one.isEmpty(), other.isEmpty()));
    for (NightsInput.Station station : plan.input().stations()) {
      Map<List<Integer>, List<Night>> byStarts = new LinkedHashMap<>();
      for (NightPlan night : plan.timetable().nights()) {
        List<Integer> starts =
            night.runs().stream()
                .filter(run -> run.zone().name().equals(station.zone().name()))
                .map(ValveRun::startMinute)
                .toList();
        if (!starts.isEmpty()) {
          byStarts.computeIfAbsent(starts, any -> new ArrayList<>()).add(night.night());
        }
      }
      if (!byStarts.isEmpty()) {
        programs
            .computeIfAbsent(station.zone().program(), any -> new LinkedHashMap<>())
            .put(station.zone().name(), byStarts);
      }
    }
    List<ScheduleCard> cards = new ArrayList<>();
    programs.forEach((name, zones) -> cards.add(card(name, zones)));
    return cards;
  }

  private ScheduleCard card(String program, Map<String, Map<List<Integer>, List<Night>>> zones) {
    List<ScheduleCard.Line> lines = new ArrayList<>();
    zones.forEach(
        (zone, byStarts) -> {
          NightsInput.Station station = stations.get(zone);
          byStarts.forEach(
              (starts, nights) ->
                  lines.add(
                      new ScheduleCard.Line(
                          station,
                          NightWords.nights(nights),
                          station.zone().minutesPerCycle(),
                          station.zone().cycles(),
                          station.zone().cycles() > 1 ? station.zone().soakMinutes() : 0,
                          starts.stream().map(NightWords::time).toList())));
        });
    List<Night> all =
        plan.timetable().nights().stream()
            .filter(
                night ->
                    night.runs().stream().anyMatch(run -> run.zone().program().equals(program)))
            .map(NightPlan::night)
            .toList();
    return new ScheduleCard(program, NightWords.nights(all), List.of(), lines);
  }
}
