package zonewright.timetable;

import java.util.ArrayList;
import java.util.List;

/**
 * One start of a program on a controller that knows cycles and soaks of its stations: it goes round
 * the stations in their order, runs a cycle of each whose soak is over, and waits only where none
 * is ready.
 */
final class Interleaving {
  private final List<ValveRun> runs = new ArrayList<>();
  private int minutes;

  /**
   * Runs the start from minute 0.
   *
   * @param stations each with as many cycles as the start gives it
   * @param gap minutes between the closing of one valve and the opening of the next
   */
  Interleaving(List<PlainProgram.Station> stations, int gap) {
    int[] done = new int[stations.size()];
    int[] ready = new int[stations.size()];
    int clock = 0;
    int turn = 0;
    int left = stations.stream().mapToInt(PlainProgram.Station::cycles).sum();
    while (left > 0) {
      int next = -1;
      int soonest = Integer.MAX_VALUE;
      for (int i = 0; i < stations.size() && next < 0; i++) {
        int at = (turn + i) % stations.size();
        if (done[at] < stations.get(at).cycles()) {
          next = ready[at] <= clock ? at : -1;
          soonest = Math.min(soonest, ready[at]);
        }
      }
      if (next < 0) {
        clock = soonest;
        continue;
      }
      WateredZone zone = stations.get(next).zone();
      int cycle = ++done[next];
      minutes = clock + zone.minutesOf(cycle);
      runs.add(new ValveRun(zone, cycle, clock, minutes));
      ready[next] = minutes + zone.soakMinutes();
      clock = minutes + gap;
      turn = next + 1;
      left--;
    }
  }

  /** From the first valve's opening to the last one's closing. */
  int minutes() {
    return minutes;
  }

  /** The cycles, when it starts at the given minute. */
  List<ValveRun> runs(int start) {
    return runs.stream()
        .map(
            run ->
                new ValveRun(
                    run.zone(), run.cycle(), start + run.startMinute(), start + run.endMinute()))
        .toList();
  }
}
