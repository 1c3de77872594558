package zonewright.command;

import java.util.List;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Nearest;
import zonewright.sheet.TableDefinition;

/** Finds a sheet by the name a person writes. */
final class SheetNames {
  private SheetNames() {}

  /**
   * Returns the sheet of that name, capitals aside.
   *
   * @throws Complaint where there is none
   */
  static TableDefinition find(Blueprint blueprint, String name) {
    List<String> titles = blueprint.tables().stream().map(TableDefinition::title).toList();
    return blueprint.tables().stream()
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
