package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.sheet.CsvText;
import zonewright.sheet.Severity;

/** Lists what the designer should know about a design. */
@Command(
    name = "findings",
    header = "List what is wrong, missing or to be looked at in a design.",
    description = {
      "",
      "There are four kinds, the worst first: wrong (a cell cannot be used as it is), missing"
          + " (something must still be entered), check (the design would not work, or breaks a rule,"
          + " as it stands) and note (worth knowing).",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright findings garden.xlsx",
      "  zonewright findings garden.xlsx --csv > findings.csv",
      "  zonewright findings garden.xlsx --fail-on check && echo fine"
    })
final class FindingsCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design file, an .xlsx workbook; without one, the demo garden.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--csv", description = "Print comma-separated values (RFC 4180).")
  private boolean csv;

  @Option(
      names = "--fail-on",
      paramLabel = "KIND",
      converter = SeverityWord.class,
      description =
          "End with code 1 when there are findings of this kind or a worse one:"
              + " wrong, missing, check or note.")
  private Optional<Severity> failOn = Optional.empty();

  @Override
  public Integer call() {
    PrintWriter out = out();
    Design design = source.design(file, err());
    design.nights().plan();
    List<Finding> findings = design.findings();
    if (csv) {
      table(out, design, findings);
    } else {
      lines(out, findings);
    }
    boolean found =
        failOn.isPresent()
            && findings.stream().anyMatch(each -> each.severity().compareTo(failOn.get()) <= 0);
    return found ? ExitCode.FOUND : ExitCode.FINE;
  }

  private static void lines(PrintWriter out, List<Finding> findings) {
    if (findings.isEmpty()) {
      out.println("Nothing to report.");
    }
    for (Finding finding : findings) {
      String kind = finding.severity().word();
      out.println(kind + " ".repeat(Math.max(1, 9 - kind.length())) + finding.line());
    }
  }

  private static void table(PrintWriter out, Design design, List<Finding> findings) {
    out.print(CsvText.line(List.of("Kind", "Sheet", "Row", "Column", "Finding", "What to do")));
    for (Finding finding : findings) {
      String where = finding.where().replaceAll(":$", "");
      out.print(
          CsvText.line(
              List.of(
                  finding.severity().word().toLowerCase(Locale.ROOT),
                  design.book().schema().table(finding.column().table()).title(),
                  CsvText.harmless(where),
                  finding.column().name(),
                  CsvText.harmless(finding.sentence()),
                  CsvText.harmless(finding.cure()))));
    }
  }
}
