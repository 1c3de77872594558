package zonewright.uncertainty;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import zonewright.budget.ZoneBudget;
import zonewright.sheet.Column;
import zonewright.water.CycleAndSoak;

/**
 * Looks around the corners of answers in steps: where watering days, cycles or minutes go one up,
 * an answer can lie beyond them. In each design one input of each zone, by chance, is elsewhere in
 * its range; what does no worse stays.
 */
final class Climb {
  /** Designs tried around each corner: more where few zones are. */
  private static final int FEWEST_ROUNDS = 20;

  private static final int MOST_ROUNDS = 100;
  private static final int ZONES_AND_ROUNDS = 10_000;

  /** Answers looked at around their corners; the year's volume goes with the week's. */
  private static final List<Column> CLIMBED =
      List.of(
          CycleAndSoak.MINUTES_GIVEN,
          CycleAndSoak.CYCLES,
          CycleAndSoak.SOAK,
          ZoneBudget.VOLUME_PER_WEEK);

  private final List<UncertainInput> inputs;
  private final Trials trials;
  private final Corners corners;
  private final SplittableRandom random;

  Climb(List<UncertainInput> inputs, Trials trials, Corners corners, SplittableRandom random) {
    this.inputs = inputs;
    this.trials = trials;
    this.corners = corners;
    this.random = random;
  }

  /** Returns how many designs will be tried with so many zones. */
  static int designs(int zones) {
    return 2 * CLIMBED.size() * (1 + rounds(zones));
  }

  private static int rounds(int zones) {
    return Math.max(FEWEST_ROUNDS, Math.min(MOST_ROUNDS, ZONES_AND_ROUNDS / Math.max(1, zones)));
  }

  /** Looks around all corners. */
  void all(List<Column> answers) {
    for (Column answer : CLIMBED) {
      for (boolean most : new boolean[] {false, true}) {
        climb(answers.indexOf(answer), most);
      }
    }
  }

  private void climb(int answer, boolean most) {
    corners.putZones(answer, most, input -> true);
    corners.bySite(answer, most, input -> true).entrySet().stream()
        .max(Comparator.comparingInt(group -> group.getValue().size()))
        .map(Map.Entry::getKey)
        .ifPresent(corners::putSite);
    double[] best = trials.tryOut()[answer].clone();
    for (int round = 0; round < rounds(best.length); round++) {
      int[] moved = new int[best.length];
      double[] before = new double[best.length];
      for (int zone = 0; zone < moved.length; zone++) {
        moved[zone] = chosen(answer, zone);
        double part = random.nextDouble();
        if (moved[zone] >= 0) {
          before[zone] = trials.put(moved[zone], zone);
          trials.put(moved[zone], zone, inputs.get(moved[zone]).at(zone, part));
        }
      }
      double[] read = trials.tryOut()[answer];
      for (int zone = 0; zone < moved.length; zone++) {
        if (most ? read[zone] >= best[zone] : read[zone] <= best[zone]) {
          best[zone] = read[zone];
        } else if (moved[zone] >= 0) {
          trials.put(moved[zone], zone, before[zone]);
        }
      }
    }
  }

  /** Returns one of the zone's own inputs that move the answer, by chance; -1 where none does. */
  private int chosen(int answer, int zone) {
    int chosen = -1;
    int seen = 0;
    for (int at = 0; at < inputs.size(); at++) {
      if (!inputs.get(at).range().ofSite() && corners.profiles()[at][answer].moves(zone)) {
        seen++;
        chosen = random.nextInt(seen) == 0 ? at : chosen;
      }
    }
    return chosen;
  }
}
