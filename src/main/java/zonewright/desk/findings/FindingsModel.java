package zonewright.desk.findings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.table.AbstractTableModel;
import zonewright.design.Finding;
import zonewright.desk.part.Prose;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/** The findings of a design, those of some severities left out where a person wants that. */
public final class FindingsModel extends AbstractTableModel {
  private static final List<String> HEADINGS =
      List.of("", "Where", "What, and what to do about it");

  /** More than anybody reads; as many as are laid out within a frame. */
  private static final int MOST = 500;

  private final Set<Severity> wanted = EnumSet.allOf(Severity.class);
  private List<Finding> all = List.of();
  private List<Finding> shown = List.of();
  private int left;

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
    shown = List.copyOf(kept.subList(0, kept.size() - left));
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

  /** Returns a finding that is shown. */
  public Finding at(int row) {
    return shown.get(row);
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
    Finding finding = shown.get(row);
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
