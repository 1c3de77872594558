package zonewright.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.OfficeTables;
import zonewright.units.UnitSystem;

/** Takes what an office keeps for all its designs into one of them. */
@Command(
    name = "office",
    header = "Take plants, emitters, soils, pipes, prices and rules of the office's workbook.",
    description = {
      "",
      "The office's workbook is a design like any other, in which its tables and its usual rules are"
          + " typed. Without --from a new design begins with all of it. With --from rows that the design"
          + " has not are taken, and what is blank there is filled in; what it has stays.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright office office.xlsx --into new.xlsx",
      "  zonewright office office.xlsx --from garden.xlsx --into garden.xlsx --replace"
    })
final class OfficeCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(index = "0", paramLabel = "OFFICE", description = "The workbook of the office.")
  private Path office;

  @Option(
      names = "--changed",
      description = "Make rows that are in the design with other values like those of the office.")
  private boolean changed;

  @Option(
      names = "--into",
      required = true,
      paramLabel = "PATH",
      description = "Where to write the design; ends in .xlsx.")
  private Path into;

  @Override
  public Integer call() {
    DesignFiles.mayWrite(into, files.replace());
    String name = office.getFileName().toString();
    Design tables = source.other(office, err());
    Design design =
        files.from().isPresent()
            ? taken(tables, name)
            : OfficeTables.begun(tables, name, units(tables.book().system()));
    DesignFiles.save(design, into, source.kept(), err());
    out().println("Written: " + into);
    return ExitCode.FINE;
  }

  private UnitSystem units(UnitSystem usual) {
    return source.units().orElse(usual);
  }

  private Design taken(Design tables, String name) {
    Design design = source.design(files.from(), err());
    OfficeTables.Taken taken = OfficeTables.taken(design.book(), tables.book(), name, changed);
    design.book().perform(taken.edit());
    taken.told().forEach(out()::println);
    if (!changed) {
      taken
          .differing()
          .forEach(
              words ->
                  out()
                      .println(
                          "Here with other values, and left (--changed takes them): "
                              + words
                              + "."));
    }
    return design;
  }
}
