package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import zonewright.alternatives.AlternativeEdits;
import zonewright.alternatives.Alternatives;
import zonewright.alternatives.Change;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.CsvText;
import zonewright.sheet.Edit;
import zonewright.whatif.SideBySide;

/** Makes alternatives of a design and sets them side by side. */
@Command(
    name = "alternatives",
    header = "Set alternatives of a design side by side; make one, work in one, take one.",
    description = {
      "",
      "An alternative is what it does otherwise than the design: what is typed into the design holds for"
          + " all, but where they differ. One may stand on the sheets of the file: then"
          + " what is typed into them, by the command set or in the window, is its own.",
      "Printed are the figures of all of them; an asterisk marks what differs from the design. Which"
          + " figures: Site, Figures compared, with semicolons between.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright alternatives --from garden.xlsx --copy \"Drip in the beds\" --into garden.xlsx --replace",
      "  zonewright set garden.xlsx --from garden.xlsx --replace \"Climate place=CIMIS zone 14\"",
      "  zonewright alternatives --from garden.xlsx --changes",
      "  zonewright alternatives --from garden.xlsx --take \"Drip in the beds\" --keep Spray --into garden.xlsx --replace"
    })
final class AlternativesCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  /** What is done, at most one of these. */
  private static final class Deed {
    @Option(
        names = "--copy",
        paramLabel = "NAME",
        description =
            "Copy what the sheets hold as an alternative, which what is typed then changes.")
    private Optional<String> copy = Optional.empty();

    @Option(
        names = "--work-in",
        paramLabel = "NAME",
        description =
            "Put an alternative on the sheets, to work in it; \"The design\" puts the design back.")
    private Optional<String> inHand = Optional.empty();

    @Option(
        names = "--take",
        paramLabel = "NAME",
        description = "Make an alternative the design; the others stay what they are.")
    private Optional<String> take = Optional.empty();

    @Option(names = "--remove", paramLabel = "NAME", description = "Take an alternative away.")
    private Optional<String> remove = Optional.empty();
  }

  @ArgGroup private Deed deed = new Deed();

  @Option(
      names = "--keep",
      paramLabel = "NAME",
      description = "With --take: keep the design as it was as an alternative of this name.")
  private Optional<String> keep = Optional.empty();

  @Option(names = "--changes", description = "List what each alternative does otherwise.")
  private boolean changes;

  @Option(names = "--csv", description = "Print comma-separated values (RFC 4180).")
  private boolean csv;

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description = "Write the design with its alternatives to this workbook; ends in .xlsx.")
  private Optional<Path> into = Optional.empty();

  @Override
  public Integer call() {
    into.ifPresent(path -> DesignFiles.mayWrite(path, files.replace()));
    Design design = source.design(files.from(), err());
    Book book = design.book();
    Optional<Edit> edit = edit(new Alternatives(book));
    edit.ifPresent(book::perform);
    Alternatives alternatives = new Alternatives(book);
    if (changes) {
      list(alternatives);
    } else {
      SideBySide table = SideBySide.of(book, () -> false);
      table.problems().forEach(err()::println);
      print(table);
    }
    into.ifPresent(
        path -> {
          DesignFiles.save(design, path, source.kept(), err());
          out().println("Written: " + path);
        });
    return ExitCode.FINE;
  }

  private Optional<Edit> edit(Alternatives alternatives) {
    AlternativeEdits edits = new AlternativeEdits(alternatives);
    if (keep.isPresent() && deed.take.isEmpty()) {
      throw new Complaint(ExitCode.USAGE, "--keep goes with --take.");
    }
    deed.copy.ifPresent(name -> free(alternatives, name));
    keep.ifPresent(name -> free(alternatives, name));
    return deed.copy
        .map(edits::copied)
        .or(() -> deed.inHand.map(name -> edits.worked(held(alternatives, name))))
        .or(() -> deed.take.map(name -> edits.taken(there(alternatives, name), keep)))
        .or(() -> deed.remove.map(name -> edits.removed(there(alternatives, name))));
  }

  private static void free(Alternatives alternatives, String name) {
    alternatives
        .refused(name)
        .ifPresent(
            sentence -> {
              throw new Complaint(ExitCode.USAGE, sentence);
            });
  }

  private static Optional<String> held(Alternatives alternatives, String name) {
    return name.strip().equalsIgnoreCase(Alternatives.DESIGN)
        ? Optional.empty()
        : Optional.of(there(alternatives, name));
  }

  private static String there(Alternatives alternatives, String name) {
    return alternatives
        .named(name)
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    alternatives.names().isEmpty()
                        ? "The design has no alternatives; --copy makes one."
                        : "There is no alternative “%s”; there are %s."
                            .formatted(name, String.join(", ", alternatives.names()))));
  }

  private void print(SideBySide table) {
    List<String> headings = new ArrayList<>(List.of("Figure"));
    for (int i = 0; i < table.names().size(); i++) {
      headings.add(table.names().get(i) + (i == table.inHand() && i > 0 ? " (on the sheets)" : ""));
    }
    List<List<String>> rows = new ArrayList<>();
    for (SideBySide.Line line : table.lines()) {
      List<String> cells = new ArrayList<>(List.of(line.name()));
      for (int i = 0; i < line.values().size(); i++) {
        cells.add((!csv && line.differs(i) ? "* " : "") + line.values().get(i));
      }
      rows.add(cells);
    }
    print(headings, rows, true);
  }

  private void list(Alternatives alternatives) {
    List<List<String>> rows = new ArrayList<>();
    for (String name : alternatives.names()) {
      Map<String, String> instead = alternatives.insteadOf(name);
      for (Change change : alternatives.changes(name)) {
        rows.add(
            List.of(
                name,
                change.sheet(),
                change.row(),
                change.column(),
                instead.getOrDefault(change.where(), ""),
                change.told()));
      }
    }
    print(
        List.of("Alternative", "Sheet", "Row", "Column", Alternatives.DESIGN, "In the alternative"),
        rows,
        false);
  }

  private void print(List<String> headings, List<List<String>> rows, boolean numbers) {
    if (csv) {
      out().print(CsvText.line(headings));
      rows.forEach(row -> out().print(CsvText.line(row)));
      return;
    }
    TextTable table = new TextTable();
    for (int i = 0; i < headings.size(); i++) {
      table.column(headings.get(i), numbers && i > 0);
    }
    rows.forEach(table::row);
    table.lines().forEach(out()::println);
  }
}
