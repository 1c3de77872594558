package zonewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Synonyms;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Lists the columns: what they mean, how they are calculated and where that comes from. */
@Command(
    name = "columns",
    header = "List all columns: meaning, unit, range, equation and source.",
    description = {
      "",
      "Names the columns to list, or none for all of them; with --from those of your own in a design too.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright columns \"Longest cycle\" \"Intake rate\"",
      "  zonewright columns --sheet Zones",
      "  zonewright columns \"Cost a year\" --from garden.xlsx",
      "  zonewright columns --markdown > columns.md"
    })
final class ColumnsCommand extends Task {

  @Parameters(
      arity = "0..*",
      paramLabel = "COLUMN",
      description = "Names of columns, as Area or \"Site: Volume a week\".")
  private List<String> names = List.of();

  @Option(names = "--sheet", paramLabel = "NAME", description = "Only the columns of this sheet.")
  private Optional<String> sheet = Optional.empty();

  @Option(names = "--markdown", description = "Print tables in Markdown.")
  private boolean markdown;

  @Option(
      names = "--units",
      paramLabel = "us|si",
      converter = UnitSystemWord.class,
      description = "Units of the listing; us unless given.")
  private UnitSystem system = UnitSystem.US;

  @Mixin private KnownSheets known;

  @Override
  public Integer call() {
    PrintWriter out = out();
    Schema schema = known.schema(err());
    ColumnListing listing = new ColumnListing(system);
    for (Map.Entry<TableDefinition, List<Column>> each : chosen(schema).entrySet()) {
      listing.lines(each.getKey(), each.getValue(), markdown).forEach(out::println);
    }
    return ExitCode.FINE;
  }

  private Map<TableDefinition, List<Column>> chosen(Schema schema) {
    Map<TableDefinition, List<Column>> chosen = new LinkedHashMap<>();
    if (names.isEmpty()) {
      Optional<TableDefinition> only = sheet.map(name -> SheetNames.find(schema, name));
      for (TableDefinition table : schema.tables()) {
        if (only.isEmpty() || only.get().equals(table)) {
          chosen.put(table, table.columns());
        }
      }
      return chosen;
    }
    String preferred = sheet.map(name -> SheetNames.find(schema, name).id()).orElse(Sheets.ZONES);
    ColumnFinder finder = Synonyms.finder(schema, preferred);
    for (String name : names) {
      Column column = Asked.column(finder, name);
      chosen
          .computeIfAbsent(schema.table(column.reference().table()), any -> new ArrayList<>())
          .add(column);
    }
    return chosen;
  }
}
