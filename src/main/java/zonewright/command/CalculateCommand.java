package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.Synonyms;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/** Calculates a design and prints one of its sheets. */
@Command(
    name = "calculate",
    header = "Calculate a design and print one of its sheets.",
    description = {
      "",
      "Prints the zones unless another sheet is asked for. As text, the columns stand in groups;"
          + " columns with nothing in them are left out, and ? stands where a number is lacking.",
      "As CSV, all columns stand side by side with numbers in full and units in the headings.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright calculate garden.xlsx",
      "  zonewright calculate garden.xlsx --columns \"Zone,Area,Cycles,Minutes a cycle\"",
      "  zonewright calculate garden.xlsx --sheet Months --units si --csv"
    })
final class CalculateCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design file, an .xlsx workbook; without one, the demo garden.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet to print: Zones unless given.")
  private Optional<String> sheet = Optional.empty();

  @Option(
      names = "--columns",
      paramLabel = "NAMES",
      description = "The columns to print and their order, names set apart by commas.")
  private Optional<String> columns = Optional.empty();

  @Option(names = "--csv", description = "Print comma-separated values (RFC 4180).")
  private boolean csv;

  @Override
  public Integer call() {
    PrintWriter out = out();
    PrintWriter err = err();
    Design design = source.design(file, err);
    Schema schema = design.book().schema();
    TableDefinition table =
        sheet.map(name -> SheetNames.find(schema, name)).orElse(schema.table(Sheets.ZONES));
    SheetListing cells = new SheetListing(design.book(), table.id());
    List<Column> chosen =
        columns.map(names -> chosen(schema, table, names)).orElse(table.columns());
    if (csv) {
      out.print(cells.csv(chosen));
    } else if (table.single()) {
      cells.facts(chosen).forEach(out::println);
    } else if (columns.isPresent()) {
      cells.lines(chosen).forEach(out::println);
    } else {
      groups(out, cells, table);
    }
    out.flush();
    report(err, cells.lacking(chosen));
    return ExitCode.FINE;
  }

  private static List<Column> chosen(Schema schema, TableDefinition table, String names) {
    ColumnFinder finder = Synonyms.finder(schema, table.id());
    List<Column> chosen = new ArrayList<>();
    for (String name : names.split(",", -1)) {
      ColumnFinder.Found found = finder.in(table, name);
      if (found instanceof ColumnFinder.Unclear unclear) {
        throw new Complaint(ExitCode.USAGE, unclear.sentence());
      }
      chosen.add(((ColumnFinder.One) found).column());
    }
    return chosen;
  }

  private static void groups(PrintWriter out, SheetListing cells, TableDefinition table) {
    Column key = table.key().orElseThrow();
    Map<String, List<Column>> groups = new LinkedHashMap<>();
    for (Column column : table.columns()) {
      if (!column.equals(key) && !cells.isBlank(column)) {
        groups.computeIfAbsent(column.band(), any -> new ArrayList<>(List.of(key))).add(column);
      }
    }
    String gap = "";
    for (Map.Entry<String, List<Column>> group : groups.entrySet()) {
      out.print(gap);
      out.println(table.title() + ": " + group.getKey());
      cells.lines(group.getValue()).forEach(out::println);
      gap = System.lineSeparator();
    }
  }

  private static void report(PrintWriter err, long lacking) {
    if (lacking > 0) {
      err.println(
          (lacking == 1 ? "1 cell has no number" : lacking + " cells have no number")
              + "; the command findings says why.");
    }
  }
}
