package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.KeptFile;

/** Where a command takes its design from: a design file, or the demo garden. */
final class DesignSource {
  @Option(
      names = "--units",
      paramLabel = "us|si",
      converter = UnitSystemWord.class,
      description = "Units to calculate and print in; those of the file unless given.")
  private Optional<UnitSystem> units = Optional.empty();

  @Option(
      names = "--sample",
      paramLabel = "NAME",
      description =
          "A design that comes with the program, where no file is named: library-garden (the demo),"
              + " controller-test-zones (from memory), campus-retrofit or homework (both invented).")
  private Optional<String> sample = Optional.empty();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  private Optional<KeptFile> kept = Optional.empty();

  /**
   * Returns a design that is only read from, such as the office's.
   *
   * @throws Complaint when the file cannot be read
   */
  Design other(Path file, PrintWriter err) {
    return DesignFiles.existing(file, err, StartCommand.terminal(command)).design();
  }

  /** Returns the units asked for; none where none are. */
  Optional<UnitSystem> units() {
    return units;
  }

  /** Returns the file the design came from; none where it came from no file. */
  Optional<KeptFile> kept() {
    return kept;
  }

  /**
   * Returns the design of a file, or the demo garden where none is named, in the units asked for.
   *
   * @param err told where the design comes from if that is not plain
   * @throws Complaint when the file cannot be read
   */
  Design design(Optional<Path> file, PrintWriter err) {
    if (file.isPresent() && sample.isPresent()) {
      throw new Complaint(ExitCode.USAGE, "Name a file or a sample, not both.");
    }
    if (sample.isPresent()) {
      return named(sample.get()).design(units.orElse(UnitSystem.US));
    }
    if (file.isEmpty()) {
      err.println("No file is named, so this is the demo garden; its figures are invented.");
      return Demo.libraryGarden(units.orElse(UnitSystem.US));
    }
    DesignFile.Opened opened =
        DesignFiles.existing(file.get(), err, StartCommand.terminal(command));
    kept = Optional.of(opened.kept());
    Design design = opened.design();
    if (units.isPresent() && units.get() != design.book().system()) {
      design.book().start(design.edits().switched(units.get()));
    }
    return design;
  }

  /**
   * Returns the design of a file or a sample, or a blank one where none is named.
   *
   * @throws Complaint when the file cannot be read
   */
  Design designOrBlank(Optional<Path> file, PrintWriter err) {
    return file.isEmpty() && sample.isEmpty()
        ? Design.blank(units.orElse(UnitSystem.US))
        : design(file, err);
  }

  private static Sample named(String word) {
    return Sample.named(word)
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "There is no sample %s; there are %s."
                        .formatted(word, String.join(" and ", Sample.words()))));
  }
}
