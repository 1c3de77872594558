package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.design.IrrigationSheets;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellStyleName;

/** Where equations and figures come from, and what each source is worth. */
final class SourcesSheet implements PackSheet {
  /** So many names stand beside a source; the sheet Guide names the source of every column. */
  private static final int MOST_NAMES = 12;

  @Override
  public String word() {
    return "sources";
  }

  @Override
  public String title() {
    return "Sources";
  }

  @Override
  public String about() {
    return "Where equations and figures come from, and what each source is worth.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public void write(PackBook book) {
    Page page = book.page(title(), true, 78, 62);
    page.title(
        "Sources",
        "“Verified” was read in the source itself, “secondary” in a work that quotes it; “from memory” and “common practice” have"
            + " to be checked before anything rests on them.");
    page.band("Equations and defaults");
    page.headings("Source", "What rests on it, and what it is worth").repeated();
    equations(book).forEach((source, columns) -> line(page, source, some(columns)));
    page.next().band("Tables of the trade");
    for (ReferenceTable bundled : IrrigationSheets.referenceTables()) {
      ReferenceTable table = book.design().book().schema().inPlaceOf(bundled);
      rows(table).forEach((source, rows) -> line(page, table.name() + ": " + source, rows));
    }
  }

  /** The first of many, and how many more. */
  private static String some(List<String> names) {
    return names.size() <= MOST_NAMES
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, MOST_NAMES - 1))
            + " and %s more".formatted(names.size() - MOST_NAMES + 1);
  }

  private static void line(Page page, String source, String what) {
    page.words(0, source, CellStyleName.PLAIN).words(1, what, CellStyleName.SMALL).next();
  }

  private static Map<String, List<String>> equations(PackBook book) {
    Map<String, List<String>> sources = new LinkedHashMap<>();
    for (TableDefinition table : book.tables()) {
      for (Column column : table.columns()) {
        if (!column.source().isEmpty()) {
          sources
              .computeIfAbsent(column.source(), any -> new ArrayList<>())
              .add(column.name() + " (" + table.title() + ")");
        }
      }
    }
    return sources;
  }

  private static Map<String, String> rows(ReferenceTable table) {
    Map<String, Map<String, List<String>>> sources = new LinkedHashMap<>();
    for (int row = 0; row < table.size(); row++) {
      sources
          .computeIfAbsent(table.text(row, "Source"), any -> new LinkedHashMap<>())
          .computeIfAbsent(table.text(row, "Status"), any -> new ArrayList<>())
          .add(table.text(row, table.keyHeading()));
    }
    Map<String, String> lines = new LinkedHashMap<>();
    sources.forEach(
        (source, worth) -> {
          List<String> parts = new ArrayList<>();
          worth.forEach((status, keys) -> parts.add(some(keys) + ": " + status));
          lines.put(source, String.join("\n", parts));
        });
    return lines;
  }
}
