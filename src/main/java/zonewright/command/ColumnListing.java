package zonewright.command;

import java.util.ArrayList;
import java.util.List;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;

/** Tells of columns in words: what a student or a reviewer wants to look up. */
final class ColumnListing {
  private final UnitSystem system;

  ColumnListing(UnitSystem system) {
    this.system = system;
  }

  /** Returns the lines about some columns of a sheet. */
  List<String> lines(TableDefinition table, List<Column> columns, boolean markdown) {
    List<String> lines = new ArrayList<>();
    lines.add(markdown ? "## " + table.title() : table.title());
    lines.add(markdown ? "" : "═".repeat(table.title().length()));
    if (markdown) {
      lines.add(
          "| Column | Unit | How it is filled | Range or list | Meaning | Equation | Source |");
      lines.add("|---|---|---|---|---|---|---|");
      columns.forEach(column -> lines.add(markdownRow(column)));
      lines.add("");
    } else {
      columns.forEach(column -> lines.addAll(paragraph(column)));
    }
    return lines;
  }

  private List<String> paragraph(Column column) {
    List<String> lines = new ArrayList<>();
    String unit = unit(column);
    lines.add(column.name() + (unit.isEmpty() ? "" : " (" + unit + ")") + ": " + origin(column));
    add(lines, "  ", column.help());
    add(lines, "  Equation: ", equation(column));
    add(lines, "  Takes: ", range(column));
    add(lines, "  Source: ", column.source());
    lines.add("");
    return lines;
  }

  private static void add(List<String> lines, String head, String text) {
    if (!text.isEmpty()) {
      lines.add(head + text);
    }
  }

  private String markdownRow(Column column) {
    List<String> cells =
        List.of(
            column.name(),
            unit(column),
            origin(column),
            range(column),
            column.help(),
            equation(column),
            column.source());
    return "| "
        + String.join(" | ", cells.stream().map(cell -> cell.replace("|", "\\|")).toList())
        + " |";
  }

  private String unit(Column column) {
    if (column.content() != Column.Content.NUMBER) {
      return "";
    }
    return column.kind().percent() ? "%" : column.kind().unit(system).symbol();
  }

  private static String origin(Column column) {
    return switch (column.role()) {
      case INPUT -> column.isOptional() ? "typed, may stay blank" : "typed";
      case DEFAULTED -> "calculated unless typed";
      case CALCULATED -> "calculated";
    };
  }

  private static String equation(Column column) {
    return column.usualWord().isPresent()
        ? ""
        : column.equation().map(text -> "= " + text).orElse("");
  }

  private String range(Column column) {
    if (!column.takesEntries()) {
      return "";
    }
    return column
        .words()
        .map(words -> list(column, words))
        .or(() -> column.bounds().map(bounds -> bounds.inWords(column.kind(), system)))
        .orElse("");
  }

  private static String list(Column column, WordList words) {
    String usual = column.usualWord().map(word -> "; usually " + word).orElse("");
    if (words instanceof WordList.Published published) {
      return "a row of the table "
          + published.table().name()
          + ": "
          + String.join(", ", published.table().keys());
    }
    return words
        .constant()
        .map(list -> "one of " + String.join(", ", list) + usual)
        .orElse("the name of a row of another sheet");
  }
}
