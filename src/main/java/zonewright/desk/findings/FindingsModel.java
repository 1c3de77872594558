package zonewright.desk.findings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.swing.table.AbstractTableModel;
import zonewright.design.Finding;
import zonewright.desk.part.Prose;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/**
 * The findings of a design, those of some severities left out where a person wants that: together
 * with those about the same part of the same sheet, below a line that names it, the gravest first.
 */
public final class FindingsModel extends AbstractTableModel {
  private static final List<String> HEADINGS =
      List.of("", "Where", "What, and what to do about it");

  /** More than anybody reads; as many as are laid out within a frame. */
  private static final int MOST = 500;

  private final Set<Severity> wanted = EnumSet.allOf(Severity.class);
  private List<Finding> all = List.of();
  private List<Line> shown = List.of();

  /** A finding, or the name of what those below it are about. */
  private record Line(String heading, Optional<Finding> finding) {}

  private int left;
  private Function<Finding, String> about = finding -> "";

  /** Sets what says what a finding is about. */
  public void about(Function<Finding, String> words) {
    about = words;
  }

  /** Returns how many findings find no place in the list; those before them come first. */
  public int left() {
    return left;
  }

  /** Takes other findings; says nothing to anybody where they are the same as before. */
  public void set(List<Finding> findings) {
    if (!findings.equals(all)) {
      all = List.copyOf(findings);
      filter();
    }
  }

  /** Shows or hides the findings of a severity. */
  public void want(Severity severity, boolean yes) {
    if (yes ? wanted.add(severity) : wanted.remove(severity)) {
      filter();
    }
  }

  private void filter() {
    List<Finding> kept = new ArrayList<>();
    all.stream().filter(finding -> wanted.contains(finding.severity())).forEach(kept::add);
    left = Math.max(0, kept.size() - MOST);
    Map<String, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : kept.subList(0, kept.size() - left)) {
      groups.computeIfAbsent(about.apply(finding), any -> new ArrayList<>()).add(finding);
    }
    List<Line> lines = new ArrayList<>();
    groups.forEach(
        (name, group) -> {
          String count = group.size() == 1 ? "" : "  (" + group.size() + ")";
          lines.add(new Line(name + count, Optional.empty()));
          group.forEach(finding -> lines.add(new Line("", Optional.of(finding))));
        });
    shown = List.copyOf(lines);
    fireTableDataChanged();
  }

  /** Returns how many findings of each severity there are, shown or not. */
  public Map<Severity, Integer> counts() {
    Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
    for (Severity severity : Severity.values()) {
      counts.put(severity, 0);
    }
    all.forEach(finding -> counts.merge(finding.severity(), 1, Integer::sum));
    return counts;
  }

  /** Returns the first finding of a cell that has a remedy. */
  public Optional<Finding> curableAt(Place cell) {
    return all.stream()
        .filter(finding -> finding.column().equals(cell.column()) && finding.row() == cell.row())
        .filter(finding -> finding.remedy().isPresent())
        .findFirst();
  }

  /** Returns the finding in a row; none where what follows is named. */
  public Optional<Finding> finding(int row) {
    return row < 0 || row >= shown.size() ? Optional.empty() : shown.get(row).finding();
  }

  /** Returns what the findings below a row are about; empty for a finding itself. */
  public String heading(int row) {
    return shown.get(row).heading();
  }

  /** Returns how many findings are listed. */
  public int listed() {
    return (int) shown.stream().filter(line -> line.finding().isPresent()).count();
  }

  @Override
  public int getRowCount() {
    return shown.size();
  }

  @Override
  public int getColumnCount() {
    return HEADINGS.size();
  }

  @Override
  public String getColumnName(int column) {
    return HEADINGS.get(column);
  }

  @Override
  public Object getValueAt(int row, int column) {
    if (finding(row).isEmpty()) {
      return column == 0 ? heading(row) : "";
    }
    Finding finding = finding(row).get();
    return switch (column) {
      case 0 -> finding.severity().word();
      case 1 -> where(finding);
      default ->
          finding.cure().isEmpty()
              ? finding.sentence()
              : finding.sentence() + " — " + finding.cure();
    };
  }

  /** Returns where a finding lies, without the colon that stands in a line. */
  public static String where(Finding finding) {
    String where = finding.where();
    String plain = where.endsWith(":") ? where.substring(0, where.length() - 1) : where;
    return Prose.capital(plain);
  }
}
