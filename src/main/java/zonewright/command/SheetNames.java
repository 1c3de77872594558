package zonewright.command;

import java.util.List;
import zonewright.sheet.Nearest;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;

/** Finds a sheet by the name a person writes. */
final class SheetNames {
  private SheetNames() {}

  /**
   * Returns the sheet of that name, capitals aside.
   *
   * @throws Complaint where there is none
   */
  static TableDefinition find(Schema schema, String name) {
    List<String> titles = schema.tables().stream().map(TableDefinition::title).toList();
    return schema.tables().stream()
        .filter(table -> table.title().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "There is no sheet “%s”; did you mean “%s”? The sheets are %s."
                        .formatted(
                            name.strip(),
                            Nearest.to(name, titles, 1).get(0),
                            String.join(", ", titles))));
  }
}
