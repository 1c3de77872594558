package zonewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What of a program can be keyed in on a controller whose starts run stations one after another: so
 * many of its starts, and those of its stations that are done before the hours end, as leaves the
 * fewest minutes undone. A station that is left out lets those after it run earlier, at each start
 * alike.
 */
final class FittingCard implements PartCard {
  private final List<WateredZone> zones;
  private final int[] starts;
  private final int gap;
  private final int closes;
  private final int mostStarts;
  private final List<PlainProgram.Station> stations;

  /**
   * Chooses.
   *
   * @param mostStarts for so many of the starts the controller has programs
   */
  FittingCard(List<WateredZone> zones, int[] starts, int gap, int closes, int mostStarts) {
    this.zones = zones;
    this.starts = starts.clone();
    this.gap = gap;
    this.closes = closes;
    this.mostStarts = mostStarts;
    List<PlainProgram.Station> best = List.of();
    for (int passes = Math.min(starts.length, mostStarts); passes > 0; passes--) {
      List<PlainProgram.Station> trial = stations(passes);
      if (minutes(trial) > minutes(best)) {
        best = trial;
      }
    }
    stations = best;
  }

  private List<PlainProgram.Station> stations(int passes) {
    List<PlainProgram.Station> kept = new ArrayList<>();
    int offset = 0;
    for (WateredZone zone : zones) {
      int own = Math.min(zone.cycles(), passes);
      if (starts[own - 1] + offset + zone.minutesPerCycle() <= closes) {
        kept.add(new PlainProgram.Station(zone, own));
        offset += zone.minutesPerCycle() + gap;
      }
    }
    return kept;
  }

  private static int minutes(List<PlainProgram.Station> stations) {
    return stations.stream()
        .mapToInt(station -> station.cycles() * station.zone().minutesPerCycle())
        .sum();
  }

  @Override
  public List<PlainProgram.Station> stations() {
    return stations;
  }

  @Override
  public List<ValveRun> runs() {
    List<ValveRun> runs = new ArrayList<>();
    int offset = 0;
    for (PlainProgram.Station station : stations) {
      int minutes = station.zone().minutesPerCycle();
      for (int pass = 0; pass < station.cycles(); pass++) {
        int start = starts[pass] + offset;
        runs.add(new ValveRun(station.zone(), pass + 1, start, start + minutes));
      }
      offset += minutes + gap;
    }
    return runs;
  }

  @Override
  public List<Undone> undone() {
    List<Undone> undone = new ArrayList<>();
    int offset = 0;
    for (WateredZone zone : zones) {
      int done =
          stations.stream()
              .filter(station -> station.zone().equals(zone))
              .mapToInt(PlainProgram.Station::cycles)
              .sum();
      for (int pass = done; pass < zone.cycles(); pass++) {
        Undone.Why why = pass < mostStarts ? Undone.Why.AFTER_CLOSE : Undone.Why.OVER_STARTS;
        undone.add(new Undone(zone, pass + 1, why, OptionalInt.of(starts[pass] + offset)));
      }
      offset += zone.minutesPerCycle() + gap;
    }
    return undone;
  }
}
