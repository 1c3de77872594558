package zonewright.timetable;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Adds up what each zone gets in the nights of a plan, and what is left undone. */
final class WaterBalance {
  private final Map<Long, Integer> placed = new HashMap<>();
  private final Map<Long, Map<Undone.Why, Integer>> undone = new HashMap<>();
  private final List<ZoneWater> zones = new ArrayList<>();

  WaterBalance(List<NightPlan> nights) {
    for (NightPlan night : nights) {
      for (ValveRun run : night.runs()) {
        placed.merge(run.zone().number(), run.minutes(), Integer::sum);
      }
      for (Undone each : night.undone()) {
        left(each.zone()).merge(each.why(), each.minutes(), Integer::sum);
      }
    }
  }

  private Map<Undone.Why, Integer> left(WateredZone zone) {
    return undone.computeIfAbsent(zone.number(), any -> new EnumMap<>(Undone.Why.class));
  }

  /**
   * Adds a zone.
   *
   * @param asked how often it asks for water
   * @param nights the nights in which its cycles were arranged
   * @param lost why others that it asks for are not among them
   */
  void add(WateredZone zone, int asked, List<Night> nights, Undone.Why lost) {
    if (asked > nights.size()) {
      int minutes = (asked - nights.size()) * zone.minutesPerNight();
      left(zone).merge(lost, minutes, Integer::sum);
    }
    zones.add(
        new ZoneWater(
            zone,
            nights,
            asked,
            placed.getOrDefault(zone.number(), 0),
            undone.getOrDefault(zone.number(), Map.of())));
  }

  List<ZoneWater> zones() {
    return zones;
  }
}
