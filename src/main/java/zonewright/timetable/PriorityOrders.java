package zonewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * Orders worth trying first: each a rule of thumb for which cycle should be placed before which.
 */
final class PriorityOrders {
  private PriorityOrders() {}

  /** The orders, best rules first; the designer's own order leads, so that it wins every tie. */
  static List<int[]> of(PlacementProblem problem) {
    List<ToDoubleBiFunction<Chain, Integer>> rules = new ArrayList<>();
    rules.add((chain, cycle) -> cycle * 1e9 + chain.wish());
    rules.add((chain, cycle) -> -chain.tailFrom(cycle));
    rules.add(
        (chain, cycle) -> -chain.tailFrom(cycle) - 1e4 * (double) chain.flow() / problem.flowLimit);
    rules.add((chain, cycle) -> -chain.tailFrom(cycle) * (double) (chain.flow() + 1));
    rules.add((chain, cycle) -> -chain.flow());
    rules.add((chain, cycle) -> -chain.minutes(cycle) * (double) (chain.flow() + 1));
    rules.add((chain, cycle) -> -chain.minutes(cycle));
    rules.add((chain, cycle) -> -chain.work() * (1.0 - (double) cycle / chain.cycles()));
    rules.add((chain, cycle) -> cycle * 1e6 - chain.tailFrom(cycle));
    List<int[]> orders = new ArrayList<>();
    for (ToDoubleBiFunction<Chain, Integer> rule : rules) {
      orders.add(order(problem, rule));
    }
    return orders;
  }

  private static int[] order(PlacementProblem problem, ToDoubleBiFunction<Chain, Integer> rule) {
    double[] keys = new double[problem.items];
    for (int c = 0; c < problem.chains.length; c++) {
      for (int cycle = 0; cycle < problem.chains[c].cycles(); cycle++) {
        keys[problem.firstItem[c] + cycle] = rule.applyAsDouble(problem.chains[c], cycle);
      }
    }
    return byKey(problem, keys);
  }

  /** Chain numbers in rising order of their items' keys; ties keep the items' own order. */
  private static int[] byKey(PlacementProblem problem, double[] keys) {
    Integer[] items = new Integer[problem.items];
    Arrays.setAll(items, i -> i);
    Arrays.sort(items, (a, b) -> Double.compare(keys[a], keys[b]));
    int[] order = new int[items.length];
    for (int i = 0; i < items.length; i++) {
      order[i] = problem.owner[items[i]];
    }
    return order;
  }

  /** Chain numbers in rising order of their items' minutes; ties keep the items' own order. */
  static int[] byMinute(PlacementProblem problem, int[] minutes) {
    long[] packed = new long[minutes.length];
    for (int i = 0; i < packed.length; i++) {
      packed[i] = (long) minutes[i] << Integer.SIZE | i;
    }
    Arrays.sort(packed);
    int[] order = new int[packed.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = problem.owner[(int) packed[i]];
    }
    return order;
  }
}
