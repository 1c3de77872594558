package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import zonewright.sheet.Column;

/**
 * What each input alone does to the answers, and the designs that follow from it: all inputs at the
 * ends that make an answer least, or greatest.
 */
final class Corners {
  private final List<UncertainInput> inputs;
  private final List<Column> answers;
  private final List<SureAnswer> ofSite;
  private final Trials trials;
  private final Profile[][] profiles;
  private final Profile[][] siteProfiles;

  /** Takes each input alone through its range, in all zones at once. */
  Corners(
      List<UncertainInput> inputs, List<Column> answers, List<SureAnswer> ofSite, Trials trials) {
    this.inputs = inputs;
    this.answers = answers;
    this.ofSite = ofSite;
    this.trials = trials;
    this.profiles = new Profile[inputs.size()][answers.size()];
    this.siteProfiles = new Profile[inputs.size()][ofSite.size()];
    for (int at = 0; at < inputs.size(); at++) {
      Arrays.setAll(profiles[at], any -> new Profile(trials.zones()));
      Arrays.setAll(siteProfiles[at], any -> new Profile(1));
      alone(at);
      trials.hold(at);
    }
  }

  private void alone(int at) {
    UncertainInput input = inputs.get(at);
    double[][] steps = new double[input.rows()][];
    for (int row = 0; row < steps.length; row++) {
      steps[row] = input.steps(row);
    }
    for (int step = 0; step < UncertainInput.STEPS; step++) {
      for (int row = 0; row < steps.length; row++) {
        trials.put(at, row, steps[row][step]);
      }
      double[][] read = trials.tryOut();
      for (int answer = 0; answer < answers.size(); answer++) {
        for (int zone = 0; zone < trials.zones(); zone++) {
          double number = trials.put(at, input.rowOf(zone));
          profiles[at][answer].take(zone, number, read[answer][zone]);
        }
      }
      for (int answer = 0; answer < ofSite.size(); answer++) {
        siteProfiles[at][answer].take(0, trials.put(at, 0), trials.ofSite(answer));
      }
    }
  }

  /** Returns what each input alone does to each answer of zones. */
  Profile[][] profiles() {
    return profiles;
  }

  /** Returns what each input alone does to each answer of the site. */
  Profile[][] siteProfiles() {
    return siteProfiles;
  }

  /**
   * Puts some inputs at the ends that make an answer of each zone least or greatest, all others
   * held, and returns what it comes to, zone by zone. Zones that want other numbers of the site's
   * inputs are tried one group after another.
   *
   * @param look looks at each of these designs
   */
  double[] corner(int answer, boolean most, Predicate<UncertainInput> varied, Runnable look) {
    double[] found = new double[trials.zones()];
    putZones(answer, most, varied);
    bySite(answer, most, varied)
        .forEach(
            (site, zones) -> {
              putSite(site);
              double[] read = trials.tryOut()[answer];
              look.run();
              zones.forEach(zone -> found[zone] = read[zone]);
            });
    return found;
  }

  /** Does the same for an answer of the site, and returns what that comes to. */
  double siteCorner(int answer, boolean most, Predicate<UncertainInput> varied) {
    SureAnswer asked = ofSite.get(answer);
    putZones(answers.indexOf(asked.zones()), most == asked.more(), varied);
    List<Double> wanted = new ArrayList<>();
    for (int at = 0; at < inputs.size(); at++) {
      Profile profile = siteProfiles[at][answer];
      if (inputs.get(at).range().ofSite()) {
        boolean moved = varied.test(inputs.get(at)) && profile.moves(0);
        wanted.add(moved ? profile.at(0, most) : inputs.get(at).held(0));
      }
    }
    putSite(wanted);
    trials.tryOut();
    return trials.ofSite(answer);
  }

  /** Puts the inputs of each zone at the ends that make its own answer least or greatest. */
  void putZones(int answer, boolean most, Predicate<UncertainInput> varied) {
    for (int at = 0; at < inputs.size(); at++) {
      for (int zone = 0; !inputs.get(at).range().ofSite() && zone < trials.zones(); zone++) {
        trials.put(at, zone, end(at, answer, most, varied, zone));
      }
    }
  }

  /** Returns the zones by the numbers of the site's inputs that make their answer so. */
  Map<List<Double>, List<Integer>> bySite(
      int answer, boolean most, Predicate<UncertainInput> varied) {
    Map<List<Double>, List<Integer>> zones = new LinkedHashMap<>();
    for (int zone = 0; zone < trials.zones(); zone++) {
      List<Double> wanted = new ArrayList<>();
      for (int at = 0; at < inputs.size(); at++) {
        if (inputs.get(at).range().ofSite()) {
          wanted.add(end(at, answer, most, varied, zone));
        }
      }
      zones.computeIfAbsent(wanted, any -> new ArrayList<>()).add(zone);
    }
    return zones;
  }

  /** Puts the inputs of the site, in their order. */
  void putSite(List<Double> wanted) {
    int next = 0;
    for (int at = 0; at < inputs.size(); at++) {
      if (inputs.get(at).range().ofSite()) {
        trials.put(at, 0, wanted.get(next++));
      }
    }
  }

  /**
   * Returns the number of an input at which a zone's answer is least or greatest: by what it does
   * to the answer, or else to what the answer follows without steps.
   */
  private double end(int at, int answer, boolean most, Predicate<UncertainInput> varied, int zone) {
    UncertainInput input = inputs.get(at);
    if (!varied.test(input)) {
      return input.held(input.rowOf(zone));
    }
    int drift = answers.indexOf(Drift.OF.getOrDefault(answers.get(answer), answers.get(answer)));
    return end(at, new int[] {answer, drift}, new boolean[] {most, most}, zone);
  }

  /** Returns the end at which the first of some answers that the input moves is as wanted. */
  private double end(int at, int[] of, boolean[] most, int zone) {
    for (int which = 0; which < of.length; which++) {
      Profile profile = profiles[at][of[which]];
      if (profile.moves(zone)) {
        return profile.at(zone, most[which]);
      }
    }
    return inputs.get(at).held(inputs.get(at).rowOf(zone));
  }

  /** Returns the first zone in which an input moves any of some answers; the first where none. */
  private int moved(int at, int... of) {
    return IntStream.range(0, trials.zones())
        .filter(zone -> Arrays.stream(of).anyMatch(answer -> profiles[at][answer].moves(zone)))
        .findFirst()
        .orElse(0);
  }

  /**
   * Tries what pulls answers in steps two ways, for more watering days make each day's run shorter:
   * all ways of going with the pace and against the load, or the other way round.
   *
   * @param varied the inputs moved; all others are held
   * @param look looks at each of these designs
   */
  void opposed(Predicate<UncertainInput> varied, Runnable look) {
    int pace = answers.indexOf(Drift.PACE);
    int load = answers.indexOf(Drift.LOAD);
    for (int[] of : new int[][] {{pace, load}, {load, pace}}) {
      for (int ways = 0; ways < 4; ways++) {
        boolean[] most = {(ways & 1) > 0, (ways & 2) > 0};
        for (int at = 0; at < inputs.size(); at++) {
          trials.hold(at);
          boolean site = inputs.get(at).range().ofSite();
          for (int row = 0; varied.test(inputs.get(at)) && row < inputs.get(at).rows(); row++) {
            trials.put(at, row, end(at, of, most, site ? moved(at, of) : row));
          }
        }
        trials.tryOut();
        look.run();
      }
    }
  }
}
