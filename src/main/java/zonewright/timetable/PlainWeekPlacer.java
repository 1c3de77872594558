package zonewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Finds start times for the programs of a plain controller that hold on every night: two programs
 * keep apart where they ever share a night, whatever the night. Where the controller runs two
 * programs at once, any two whose largest stations the flow feeds together may overlap, and never
 * three.
 *
 * <p>Programs are placed one after another, each start as early as its nights are free; many orders
 * are tried, and the one that runs over least, and then ends its nights earliest, is kept.
 */
final class PlainWeekPlacer {
  private static final int LAST_MINUTE = 12 * WateringWindow.DAY;
  private static final int TRIALS = 300;
  private static final int MOST_PROGRAMS_FOR_TRIALS = 60;

  private final List<Program> programs;
  private final int gap;
  private final boolean two;
  private final double flow;
  private final int nights;

  /**
   * A program to be placed.
   *
   * @param chain its blocks, one a start, with the shortest pauses between them
   * @param nights numbers of its nights
   * @param windows the hours that all its nights have open
   * @param onOneSide whether all its starts should be before midnight, or all after it
   * @param flow the greatest flow of one of its stations
   */
  record Program(
      Chain chain,
      List<Integer> nights,
      List<WateringWindow> windows,
      boolean onOneSide,
      double flow) {
    int closes() {
      return windows.get(windows.size() - 1).endMinute();
    }
  }

  /** Starts of each program, and what they are worth; less is better. */
  private static final class Trial {
    private final int[][] starts;
    private final long cost;

    Trial(int[][] starts, long cost) {
      this.starts = starts;
      this.cost = cost;
    }

    int[][] starts() {
      return starts;
    }

    long cost() {
      return cost;
    }
  }

  private PlainWeekPlacer(List<Program> programs, NightRules rules) {
    this.programs = programs;
    this.gap = rules.gapMinutes();
    this.two = rules.mostValvesAtOnce() > 1;
    this.flow = rules.availableFlow();
    this.nights =
        programs.stream().flatMap(p -> p.nights().stream()).mapToInt(n -> n + 1).max().orElse(0);
  }

  /** Returns the start times of each program, in minutes from midnight of the night's day. */
  static int[][] place(List<Program> programs, NightRules rules) {
    return new PlainWeekPlacer(programs, rules).run();
  }

  private int[][] run() {
    Trial best = null;
    Integer[] order = new Integer[programs.size()];
    for (Comparator<Integer> rule : rules()) {
      Arrays.setAll(order, i -> i);
      Arrays.sort(order, rule);
      best = better(best, trial(order));
    }
    if (best == null) {
      return new int[0][];
    }
    SplittableRandom random = new SplittableRandom(20_240_229L);
    Integer[] here = order.clone();
    int trials = programs.size() > MOST_PROGRAMS_FOR_TRIALS ? 0 : TRIALS;
    for (int i = 0; i < trials && programs.size() > 1; i++) {
      Interruption.heed();
      Integer[] step = here.clone();
      int one = random.nextInt(step.length);
      int other = random.nextInt(step.length);
      Integer kept = step[one];
      step[one] = step[other];
      step[other] = kept;
      Trial trial = trial(step);
      if (trial.cost() <= best.cost()) {
        here = step;
        best = better(best, trial);
      }
    }
    return best.starts();
  }

  private List<Comparator<Integer>> rules() {
    Comparator<Integer> bySpan = Comparator.comparingInt(i -> -programs.get(i).chain().tailFrom(0));
    Comparator<Integer> byNights = Comparator.comparingInt(i -> -programs.get(i).nights().size());
    Comparator<Integer> byWish = Comparator.comparingInt(i -> programs.get(i).chain().wish());
    List<Comparator<Integer>> rules = new ArrayList<>();
    rules.add(byWish.thenComparing(bySpan));
    rules.add(byNights.thenComparing(bySpan));
    rules.add(bySpan);
    return rules;
  }

  private static Trial better(Trial one, Trial other) {
    return one == null || other.cost() < one.cost() ? other : one;
  }

  private Trial trial(Integer[] order) {
    Taken taken = new Taken();
    int[] finish = new int[nights];
    int[] over = new int[nights];
    int[][] starts = new int[programs.size()][];
    for (int number : order) {
      Program program = programs.get(number);
      starts[number] = starts(program, taken.of(program));
      BitSet runs = new BitSet();
      Chain chain = program.chain();
      int end = 0;
      for (int pass = 0; pass < chain.cycles(); pass++) {
        int from = starts[number][pass];
        int to = from + chain.minutes(pass);
        end = Math.max(end, to);
        runs.set(Math.max(0, from - gap), to + gap);
      }
      taken.add(program, runs);
      int closes = program.closes();
      for (int night : program.nights()) {
        finish[night] = Math.max(finish[night], end);
        over[night] = Math.max(over[night], end - closes);
      }
    }
    long cost = 0;
    for (int night = 0; night < nights; night++) {
      cost += 10_000L * over[night] + finish[night];
    }
    return new Trial(starts, cost);
  }

  /** What the programs placed so far leave free. */
  private final class Taken {
    private final BitSet[] once = new BitSet[nights];
    private final BitSet[] twice = new BitSet[nights];
    private final IdentityHashMap<Program, BitSet> placed = new IdentityHashMap<>();

    Taken() {
      Arrays.setAll(once, i -> new BitSet());
      Arrays.setAll(twice, i -> new BitSet());
    }

    void add(Program program, BitSet runs) {
      for (int night : program.nights()) {
        if (two) {
          BitSet both = (BitSet) once[night].clone();
          both.and(runs);
          twice[night].or(both);
        }
        once[night].or(runs);
      }
      placed.put(program, runs);
    }

    /** The minutes in which a program cannot run. */
    BitSet of(Program program) {
      BitSet taken = new BitSet();
      program.nights().forEach(night -> taken.or(two ? twice[night] : once[night]));
      if (two) {
        placed.forEach(
            (other, runs) -> {
              boolean together = !Collections.disjoint(program.nights(), other.nights());
              if (together && program.flow() + other.flow() > flow) {
                taken.or(runs);
              }
            });
      }
      return taken;
    }
  }

  private int[] starts(Program program, BitSet taken) {
    int opens = program.windows().get(0).startMinute() + program.chain().release();
    int[] starts = starts(program, taken, opens);
    int last = starts.length - 1;
    if (program.onOneSide() && KeyedStarts.straddles(starts[0], starts[last])) {
      int[] after = starts(program, taken, WateringWindow.DAY);
      if (after[last] + program.chain().minutes(last) <= program.closes()) {
        return after;
      }
    }
    return starts;
  }

  private int[] starts(Program program, BitSet taken, int from) {
    Chain chain = program.chain();
    int[] starts = new int[chain.cycles()];
    int ready = from;
    for (int pass = 0; pass < starts.length; pass++) {
      starts[pass] = firstFree(ready, chain.minutes(pass), program.windows(), taken);
      ready = starts[pass] + chain.minutes(pass) + Math.max(gap, chain.pause(pass));
    }
    return starts;
  }

  /** The first minute at which a block fits into a window. */
  private static int firstFree(int ready, int minutes, List<WateringWindow> windows, BitSet taken) {
    int minute = ready;
    while (minute < LAST_MINUTE) {
      int open = opening(minute, minutes, windows);
      int hit = taken.nextSetBit(open);
      if (hit < 0 || hit >= open + minutes) {
        return open;
      }
      minute = taken.nextClearBit(hit);
    }
    return minute;
  }

  /**
   * The first minute from which so many minutes lie in one window; the last has no end here, so
   * that what does not fit can be measured.
   */
  private static int opening(int from, int minutes, List<WateringWindow> windows) {
    int last = windows.size() - 1;
    for (int i = 0; i < last; i++) {
      int at = Math.max(from, windows.get(i).startMinute());
      if (at + minutes <= windows.get(i).endMinute()) {
        return at;
      }
    }
    return Math.max(from, windows.get(last).startMinute());
  }
}
