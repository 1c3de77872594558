package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.Schema;

/** Which columns and tables a command knows: the program's, or those of a design too. */
final class KnownSheets {
  @Option(
      names = "--from",
      paramLabel = "FILE",
      description =
          "A design file whose own columns, and own rows of tables, are known too; none of its"
              + " values is taken.")
  private Optional<Path> from = Optional.empty();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /**
   * Returns them.
   *
   * @param err told what there is to tell of the file
   * @throws Complaint when the file cannot be read
   */
  Schema schema(PrintWriter err) {
    return from.map(
            file ->
                DesignFiles.existing(file, err, StartCommand.terminal(command))
                    .design()
                    .book()
                    .schema())
        .orElseGet(IrrigationSheets::schema);
  }
}
