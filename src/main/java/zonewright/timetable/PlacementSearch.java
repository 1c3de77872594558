package zonewright.timetable;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Looks for the earliest finish: rules of thumb, then packing a night from its end and from its
 * beginning in turn, then a walk through neighbouring orders, then branch and bound for small
 * nights. Every stage stops at the proven bound.
 */
final class PlacementSearch {
  private static final long RULE_STEPS = 40_000_000;
  private static final long WALK_STEPS = 2_000_000;
  private static final long EXACT_STEPS = 1_000_000;
  private static final int MOST_ITEMS_FOR_EXACT = 64;
  private static final int LARGE = 2_000;

  private final PlacementProblem problem;
  private final PlacementProblem mirrored;
  private final ListPlacer forward;
  private final ListPlacer backward;
  private final int[] trial;
  private final int[] mirror;
  private int[] best;
  private int finish = Integer.MAX_VALUE;
  private int bound;

  /** What a search found: starts, the finish, and the least finish proven possible. */
  static final class Outcome {
    private final int[] starts;
    private final int finish;
    private final int bound;

    Outcome(int[] starts, int finish, int bound) {
      this.starts = starts;
      this.finish = finish;
      this.bound = bound;
    }

    int start(int item) {
      return starts[item];
    }

    int[] starts() {
      return starts.clone();
    }

    int finish() {
      return finish;
    }

    int bound() {
      return bound;
    }

    boolean proven() {
      return finish <= bound;
    }
  }

  private PlacementSearch(PlacementProblem problem) {
    this.problem = problem;
    this.mirrored = mirrored(problem);
    this.forward = new ListPlacer(problem);
    this.backward = new ListPlacer(mirrored);
    this.trial = new int[problem.items];
    this.mirror = new int[problem.items];
    this.bound = LowerBound.of(problem);
  }

  /**
   * Places every cycle of the night. The finish is never later than that of any known night that
   * keeps this night's rules, nor than with fewer valves allowed at once.
   *
   * @param known orders in which the cycles of nights found before start, perhaps under tighter
   *     rules
   */
  static Outcome search(PlacementProblem problem, List<int[]> known) {
    Outcome outcome = new PlacementSearch(problem).run(known);
    if (problem.valves == 1 || outcome.proven()) {
      return outcome;
    }
    // One valve fewer might, by luck of the search, have found a better night. Ask, unless its
    // bound already says no.
    PlacementProblem fewer = problem.withValves(problem.valves - 1);
    if (LowerBound.of(fewer) >= outcome.finish) {
      return outcome;
    }
    Outcome tighter = search(fewer, List.of());
    return tighter.finish < outcome.finish
        ? new Outcome(tighter.starts, tighter.finish, outcome.bound)
        : outcome;
  }

  private Outcome run(List<int[]> known) {
    if (problem.items == 0) {
      return new Outcome(new int[0], 0, 0);
    }
    List<int[]> orders = PriorityOrders.of(problem);
    orders.addAll(problem.items > LARGE ? 0 : 1, FlowFill.of(problem));
    for (int[] order : orders) {
      Interruption.heed();
      // For thousands of zones the first few rules must do.
      if (finish == Integer.MAX_VALUE || forward.steps() + backward.steps() < RULE_STEPS) {
        settle(order);
      }
      if (finish <= bound) {
        return new Outcome(best, finish, bound);
      }
    }
    for (int[] order : known) {
      settle(order);
    }
    if (finish > bound && problem.items <= LARGE) {
      walk(WALK_STEPS);
    }
    if (finish > bound && problem.items <= MOST_ITEMS_FOR_EXACT) {
      ExactSearch exact = new ExactSearch(problem, best, finish, bound, EXACT_STEPS);
      boolean proven = exact.run();
      best = exact.starts();
      finish = exact.finish();
      if (proven) {
        bound = finish;
      }
    }
    return new Outcome(best, finish, bound);
  }

  /** Packs by the order, then from the end and the beginning in turn while that helps. */
  private int settle(int[] order) {
    int now = forward.place(order, trial);
    keep(now);
    int reached = now;
    int rounds = problem.items > LARGE ? 1 : 4;
    for (int round = 0; round < rounds && finish > bound; round++) {
      fromTheEnd(now);
      now = forward.place(PriorityOrders.byMinute(problem, ends()), trial);
      keep(now);
      if (now >= reached) {
        return reached;
      }
      reached = now;
    }
    return reached;
  }

  private void keep(int now) {
    if (now < finish) {
      finish = now;
      best = trial.clone();
    }
  }

  private void fromTheEnd(int until) {
    int[] keys = new int[problem.items];
    for (int c = 0; c < problem.chains.length; c++) {
      Chain chain = problem.chains[c];
      for (int cycle = 0; cycle < chain.cycles(); cycle++) {
        int other = problem.firstItem[c] + chain.cycles() - 1 - cycle;
        int item = problem.firstItem[c] + cycle;
        keys[other] = until - (trial[item] + chain.minutes(cycle));
      }
    }
    backward.place(PriorityOrders.byMinute(mirrored, keys), mirror);
  }

  /** Keys for a forward pass: the mirrored night's ends, latest first. */
  private int[] ends() {
    int[] keys = new int[problem.items];
    for (int c = 0; c < problem.chains.length; c++) {
      Chain chain = problem.chains[c];
      for (int cycle = 0; cycle < chain.cycles(); cycle++) {
        int other = problem.firstItem[c] + chain.cycles() - 1 - cycle;
        keys[problem.firstItem[c] + cycle] = -(mirror[other] + chain.minutes(cycle));
      }
    }
    return keys;
  }

  private void walk(long budget) {
    SplittableRandom random = new SplittableRandom(20_240_229L);
    int[] here = PriorityOrders.byMinute(problem, best);
    int height = finish;
    long until = forward.steps() + backward.steps() + budget;
    while (finish > bound && forward.steps() + backward.steps() < until) {
      Interruption.heed();
      int[] step = here.clone();
      int moves = 1 + random.nextInt(3);
      for (int i = 0; i < moves; i++) {
        move(step, random);
      }
      int reached = settle(step);
      if (reached <= height) {
        height = reached;
        here = PriorityOrders.byMinute(problem, trial);
      } else if (random.nextInt(200) == 0) {
        height = finish;
        here = PriorityOrders.byMinute(problem, best);
      }
    }
  }

  private static void move(int[] order, SplittableRandom random) {
    int from = random.nextInt(order.length);
    int to = random.nextInt(order.length);
    int value = order[from];
    if (random.nextBoolean()) {
      order[from] = order[to];
      order[to] = value;
    } else if (from < to) {
      System.arraycopy(order, from + 1, order, from, to - from);
      order[to] = value;
    } else {
      System.arraycopy(order, to, order, to + 1, from - to);
      order[to] = value;
    }
  }

  private static PlacementProblem mirrored(PlacementProblem problem) {
    Chain[] chains = new Chain[problem.chains.length];
    for (int c = 0; c < chains.length; c++) {
      chains[c] = problem.chains[c].mirrored();
    }
    return new PlacementProblem(
        chains, problem.valves, problem.flowLimit, problem.gap, new int[0][]);
  }
}
