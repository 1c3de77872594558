package zonewright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.OwnColumnDraft;
import zonewright.equation.EquationReading;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Nearest;
import zonewright.trade.Sheets;

/** Adds columns of one's own to a design, changes them, takes them away, and lists them. */
@Command(
    name = "column",
    header = "Columns of your own in a design: list them, add, change or take one away.",
    description = {
      "",
      "Without more it lists the columns of your own that a design has. A new one takes a name, the"
          + " sheet it stands on, the kind of its numbers and an equation with names of columns, as"
          + " in a spreadsheet; of one that is changed only what is given changes. An equation that"
          + " cannot be calculated is refused with the reason, and then nothing is written.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright column garden.xlsx",
      "  zonewright column garden.xlsx --add \"Share of flow\" --on Zones --kind share --equation \"Zone flow / SUM(Zone flow)\" --replace",
      "  zonewright column garden.xlsx --change \"Share of flow\" --at-most \"30 %%\" --into other.xlsx",
      "  zonewright column garden.xlsx --take-away \"Share of flow\" --replace"
    })
final class ColumnCommand extends Task {
  private static final int OFFERS = 3;

  @Mixin private DesignSource source;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design; the demo garden unless given.")
  private Optional<Path> file = Optional.empty();

  @ArgGroup private What what = new What();

  /** One thing at a time. */
  static final class What {
    @Option(names = "--add", paramLabel = "NAME", description = "Add a column of this name.")
    private Optional<String> add = Optional.empty();

    @Option(
        names = "--change",
        paramLabel = "NAME",
        description = "Change the column of this name.")
    private Optional<String> change = Optional.empty();

    @Option(
        names = "--take-away",
        paramLabel = "NAME",
        description = "Take the column of this name away.")
    private Optional<String> away = Optional.empty();
  }

  @Option(names = "--name", paramLabel = "NAME", description = "Another name for the column.")
  private Optional<String> name = Optional.empty();

  @Option(names = "--on", paramLabel = "SHEET", description = "The sheet it stands on.")
  private Optional<String> sheet = Optional.empty();

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "The kind of its numbers: plain number, area, flow, time in minutes, money …")
  private Optional<String> kind = Optional.empty();

  @Option(
      names = "--equation",
      paramLabel = "EQUATION",
      description = "How it is calculated, as \"Zone flow / Area\".")
  private Optional<String> equation = Optional.empty();

  @Option(names = "--decimals", paramLabel = "N", description = "Decimals it shows.")
  private Optional<String> decimals = Optional.empty();

  @Option(
      names = "--at-least",
      paramLabel = "LIMIT",
      description = "The least it should be; less is a finding.")
  private Optional<String> least = Optional.empty();

  @Option(
      names = "--at-most",
      paramLabel = "LIMIT",
      description = "The most it should be; more is a finding.")
  private Optional<String> most = Optional.empty();

  @Option(
      names = "--note",
      paramLabel = "WORDS",
      description = "What to do where a limit is broken.")
  private Optional<String> note = Optional.empty();

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description = "Write the design to this workbook; to the file itself unless given.")
  private Optional<Path> into = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  @Override
  public Integer call() {
    boolean changes = what.add.isPresent() || what.change.isPresent() || what.away.isPresent();
    Optional<Path> target = into.or(() -> file);
    if (changes) {
      DesignFiles.mayWrite(
          target.orElseThrow(
              () ->
                  new Complaint(
                      ExitCode.USAGE, "Say where to write the design, with --into PATH.")),
          replace);
    }
    Design design = source.design(file, err());
    Book book = design.book();
    if (!changes) {
      if (Stream.of(name, sheet, kind, equation, decimals, least, most, note)
          .anyMatch(Optional::isPresent)) {
        throw new Complaint(
            ExitCode.USAGE, "Say which column is meant, with --add NAME or --change NAME.");
      }
      list(book);
      return ExitCode.FINE;
    }
    book.perform(edit(book));
    DesignFiles.save(design, target.orElseThrow(), source.kept(), err());
    out().println("Written: " + target.orElseThrow());
    return ExitCode.FINE;
  }

  private Edit edit(Book book) {
    if (what.away.isPresent()) {
      return OwnColumnDraft.removed(book, row(book, what.away.get()));
    }
    Optional<Integer> row = what.change.map(each -> row(book, each));
    OwnColumnDraft draft = draft(book, row);
    if (draft.judged(book, row, 0) instanceof OwnColumnDraft.Not not) {
      throw new Complaint(ExitCode.USAGE, told(draft, not));
    }
    return row.isPresent() ? draft.changed(book, row.get()) : draft.added(book);
  }

  private OwnColumnDraft draft(Book book, Optional<Integer> row) {
    OwnColumnDraft before =
        row.map(at -> OwnColumnDraft.of(book, at))
            .orElseGet(
                () -> new OwnColumnDraft(what.add.orElse(""), "Zones", "", "", "", "", "", ""));
    return new OwnColumnDraft(
        name.orElse(before.name()),
        sheet.map(each -> sheet(book, each)).orElse(before.sheet()),
        kind.map(ColumnCommand::kind).orElse(before.kind()),
        equation.orElse(before.equation()),
        decimals.orElse(before.decimals()),
        least.orElse(before.least()),
        most.orElse(before.most()),
        note.orElse(before.note()));
  }

  private static String kind(String words) {
    return OwnColumnDraft.kinds().stream()
        .filter(each -> each.equalsIgnoreCase(words.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "There is no kind “%s”; did you mean %s?"
                        .formatted(
                            words,
                            String.join(
                                " or ", Nearest.to(words, OwnColumnDraft.kinds(), OFFERS)))));
  }

  /** Returns the title of a sheet that can have columns of one's own. */
  private static String sheet(Book book, String named) {
    String title = SheetNames.find(book.declared(), named).title();
    if (!OwnColumnDraft.sheets().contains(title)) {
      throw new Complaint(
          ExitCode.USAGE, "The sheet %s takes no columns of your own.".formatted(title));
    }
    return title;
  }

  /** What is wrong, with the place in the equation under it. */
  private static String told(OwnColumnDraft draft, OwnColumnDraft.Not not) {
    String sentence =
        not.sentence().substring(0, 1).toUpperCase(Locale.ROOT) + not.sentence().substring(1);
    if (!sentence.endsWith(".") && !sentence.endsWith("?")) {
      sentence += ".";
    }
    Optional<EquationReading.Problem> place = not.place();
    String typed = draft.text(not.cell());
    if (place.isEmpty() || typed.indexOf('\n') >= 0) {
      return sentence;
    }
    int length = Math.max(1, place.get().to() - place.get().from());
    return String.join(
        System.lineSeparator(),
        sentence,
        "  " + typed,
        "  " + " ".repeat(place.get().from()) + "^".repeat(length));
  }

  private static int row(Book book, String name) {
    List<String> names = names(book);
    return IntStream.range(0, names.size())
        .filter(at -> names.get(at).equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    names.isEmpty()
                        ? "The design has no columns of your own."
                        : "There is no column of your own “%s”; there are %s."
                            .formatted(name, String.join(", ", names))));
  }

  private static List<String> names(Book book) {
    return IntStream.range(0, book.rows(Sheets.OWN_COLUMNS))
        .mapToObj(at -> OwnColumnDraft.of(book, at).name())
        .toList();
  }

  private void list(Book book) {
    if (book.rows(Sheets.OWN_COLUMNS) == 0) {
      out().println("The design has no columns of your own.");
    }
    for (int at = 0; at < book.rows(Sheets.OWN_COLUMNS); at++) {
      OwnColumnDraft draft = OwnColumnDraft.of(book, at);
      out()
          .println(
              "%s: %s (%s) = %s"
                  .formatted(draft.sheet(), draft.name(), draft.kind(), draft.equation()));
      limit("at least", draft.least());
      limit("at most", draft.most());
      if (draft.judged(book, Optional.of(at), 0) instanceof OwnColumnDraft.Not not) {
        out().println("  wrong: " + not.sentence());
      }
    }
  }

  private void limit(String words, String typed) {
    if (!typed.isEmpty()) {
      out().println("  " + words + " " + typed);
    }
  }
}
