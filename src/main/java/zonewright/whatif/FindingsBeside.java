package zonewright.whatif;

import java.util.ArrayList;
import java.util.List;
import zonewright.design.Finding;

/** Which findings come and which go, where a design is tried otherwise. */
final class FindingsBeside {
  private static final int MOST_TOLD = 3;

  private final List<Finding> before;

  FindingsBeside(List<Finding> before) {
    this.before = before;
  }

  /** Returns in words what came and went, a line each; one line where nothing did. */
  List<String> changes(List<Finding> after) {
    List<String> lines = new ArrayList<>();
    tell(lines, without(after, before), "comes by it:", "come by it:");
    tell(lines, without(before, after), "goes by it:", "go by it:");
    if (lines.isEmpty()) {
      lines.add("No finding comes or goes by it.");
    }
    return lines;
  }

  private static void tell(List<String> lines, List<Finding> told, String one, String several) {
    if (told.isEmpty()) {
      return;
    }
    lines.add(
        told.size() == 1 ? "1 finding " + one : "%s findings %s".formatted(told.size(), several));
    told.stream().limit(MOST_TOLD).forEach(finding -> lines.add("  " + finding.line()));
    if (told.size() > MOST_TOLD) {
      lines.add("  and %s more".formatted(told.size() - MOST_TOLD));
    }
  }

  /** A finding of the same cell with other numbers in its sentence is the same finding. */
  private static List<Finding> without(List<Finding> some, List<Finding> others) {
    List<Finding> left = new ArrayList<>(some);
    for (Finding other : others) {
      left.stream().filter(each -> same(each, other)).findFirst().ifPresent(left::remove);
    }
    return left;
  }

  private static boolean same(Finding one, Finding other) {
    return one.row() == other.row()
        && one.severity() == other.severity()
        && one.column().equals(other.column());
  }
}
