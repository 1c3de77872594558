package zonewright.help;

import static zonewright.help.HelpPage.escaped;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import zonewright.formula.Dependencies;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;

/**
 * A page for each sheet with all its columns, made from their declarations, linked along the
 * formulas.
 */
final class ColumnPages {
  private final Schema schema;
  private final Map<Reference, Set<Reference>> usedBy = new LinkedHashMap<>();

  ColumnPages(Schema schema) {
    this.schema = schema;
    for (Column column : schema.order()) {
      for (Reference need : needs(column)) {
        usedBy.computeIfAbsent(need, any -> new LinkedHashSet<>()).add(column.reference());
      }
    }
  }

  private Set<Reference> needs(Column column) {
    Set<Reference> needs = new LinkedHashSet<>();
    Dependencies found = schema.dependencies(column).orElse(null);
    if (found != null) {
      needs.addAll(found.cells());
      needs.addAll(found.columns());
    }
    return needs;
  }

  static String file(String table) {
    return "columns-" + table + ".html";
  }

  static String title(TableDefinition table) {
    return "Columns of the sheet " + table.title();
  }

  /** Returns the whole page of a sheet. */
  String body(TableDefinition table) {
    StringBuilder body = new StringBuilder();
    if (!table.about().isEmpty()) {
      body.append("<p>").append(escaped(table.about())).append("</p>\n");
    }
    String band = "";
    for (Column column : table.columns()) {
      if (!column.band().equals(band)) {
        band = column.band();
        body.append("<h2>").append(escaped(band)).append("</h2>\n");
      }
      body.append(section(column));
    }
    return body.toString();
  }

  /** Returns the part of a page on one column. */
  String section(Column column) {
    StringBuilder text = new StringBuilder();
    text.append("<h3 id=\"")
        .append(column.reference().column())
        .append("\">")
        .append(escaped(column.name()))
        .append("</h3>\n<p>")
        .append(escaped(column.help()))
        .append("</p>\n<table>\n");
    row(text, "Comes from", escaped(origin(column)));
    row(text, "Unit", escaped(units(column)));
    column
        .bounds()
        .ifPresent(
            bounds ->
                row(
                    text,
                    "Range",
                    escaped(
                        bounds.inWords(column.kind(), UnitSystem.US)
                            + differing(
                                bounds.inWords(column.kind(), UnitSystem.US),
                                bounds.inWords(column.kind(), UnitSystem.SI)))));
    column.words().ifPresent(words -> row(text, "One of", escaped(list(words))));
    column
        .equation()
        .filter(equation -> column.usualWord().isEmpty())
        .ifPresent(equation -> row(text, "Equation", escaped(equation)));
    row(text, "Made from", links(column.reference(), needs(column)));
    row(
        text,
        "Used by",
        links(column.reference(), usedBy.getOrDefault(column.reference(), Set.of())));
    row(text, "Rests on", links(column.reference(), schema.origins(column)));
    row(text, "Source", escaped(column.source()));
    return text.append("</table>\n").toString();
  }

  private static void row(StringBuilder text, String head, String cell) {
    if (!cell.isEmpty()) {
      text.append("<tr><th>").append(head).append("</th><td>").append(cell).append("</td></tr>\n");
    }
  }

  private static String origin(Column column) {
    return switch (column.role()) {
      case INPUT -> column.isOptional() ? "typed; may stay blank" : "typed";
      case DEFAULTED ->
          column
              .usualWord()
              .map(word -> "“" + word + "” unless another is chosen")
              .orElse("calculated unless typed over");
      case CALCULATED -> "calculated";
    };
  }

  private static String units(Column column) {
    if (column.content() != Column.Content.NUMBER) {
      return "";
    }
    if (column.kind().percent()) {
      return "percent";
    }
    String us = column.kind().unit(UnitSystem.US).symbol();
    return us.isEmpty() ? "none" : us + differing(us, column.kind().unit(UnitSystem.SI).symbol());
  }

  private static String differing(String us, String metric) {
    return us.equals(metric) ? "" : "; metric: " + metric;
  }

  private static String list(WordList words) {
    if (words instanceof WordList.Published published) {
      return "the rows of the table " + published.table().name();
    }
    if (words instanceof WordList.RowsOf rows) {
      return "the names in the sheet " + rows.table();
    }
    return String.join(", ", ((WordList.Fixed) words).words());
  }

  private String links(Reference from, Set<Reference> columns) {
    List<String> links = new ArrayList<>();
    for (Reference column : columns) {
      boolean here = column.table().equals(from.table());
      String sheet = here ? "" : schema.table(column.table()).title() + ": ";
      String target = (here ? "" : file(column.table())) + "#" + column.column();
      links.add("<a href=\"" + target + "\">" + escaped(sheet + column.name()) + "</a>");
    }
    return links.stream().collect(Collectors.joining(", "));
  }
}
