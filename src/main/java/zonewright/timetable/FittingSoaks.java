package zonewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What of a program can be keyed in on a controller that knows cycles and soaks: station after
 * station as many of its cycles as are over with those before it when the hours end, and no more
 * than a station may run at a start.
 */
final class FittingSoaks implements PartCard {
  private final List<WateredZone> zones;
  private final int start;
  private final int gap;
  private final int longestRun;
  private final List<PlainProgram.Station> stations = new ArrayList<>();

  FittingSoaks(List<WateredZone> zones, int start, int gap, int closes, int longestRun) {
    this.zones = zones;
    this.start = start;
    this.gap = gap;
    this.longestRun = longestRun;
    for (WateredZone zone : zones) {
      boolean fits = false;
      for (int cycles = most(zone, longestRun); cycles > 0 && !fits; cycles--) {
        stations.add(new PlainProgram.Station(zone, cycles));
        fits = start + new Interleaving(stations, gap).minutes() <= closes;
        if (!fits) {
          stations.remove(stations.size() - 1);
        }
      }
    }
  }

  /** As many cycles of a zone as a station may run at one start. */
  private static int most(WateredZone zone, int longestRun) {
    return zone.minutesPerNight() <= longestRun
        ? zone.cycles()
        : longestRun / zone.minutesPerCycle();
  }

  /** The stations with all cycles that a start may give them. */
  static List<PlainProgram.Station> all(List<WateredZone> zones, int longestRun) {
    List<PlainProgram.Station> all = new ArrayList<>();
    for (WateredZone zone : zones) {
      if (most(zone, longestRun) > 0) {
        all.add(new PlainProgram.Station(zone, most(zone, longestRun)));
      }
    }
    return all;
  }

  @Override
  public List<PlainProgram.Station> stations() {
    return List.copyOf(stations);
  }

  @Override
  public List<ValveRun> runs() {
    return new Interleaving(stations, gap).runs(start);
  }

  @Override
  public List<Undone> undone() {
    List<ValveRun> whole = new Interleaving(all(zones, longestRun), gap).runs(start);
    List<Undone> undone = new ArrayList<>();
    for (WateredZone zone : zones) {
      int done =
          stations.stream()
              .filter(station -> station.zone().equals(zone))
              .mapToInt(PlainProgram.Station::cycles)
              .sum();
      for (int cycle = done + 1; cycle <= zone.cycles(); cycle++) {
        int number = cycle;
        OptionalInt lies =
            whole.stream()
                .filter(run -> run.zone().equals(zone) && run.cycle() == number)
                .mapToInt(ValveRun::startMinute)
                .findFirst();
        undone.add(
            new Undone(
                zone,
                cycle,
                lies.isPresent() ? Undone.Why.AFTER_CLOSE : Undone.Why.OVER_LONGEST_RUN,
                lies));
      }
    }
    return undone;
  }
}
