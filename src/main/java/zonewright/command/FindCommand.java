package zonewright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.Place;
import zonewright.units.QuantityText;
import zonewright.whatif.InputAnswer;
import zonewright.whatif.InputFinder;
import zonewright.whatif.InputQuestion;

/** Finds the input of a design that makes an answer as wanted. */
@Command(
    name = "find",
    header = "Find the input that makes an answer of a design as wanted.",
    description = {
      "",
      "Say which input, and what is to come of it: INPUT of ROW so that ANSWER of ROW is at most"
          + " VALUE; or at least VALUE, or just VALUE. Each is a column's name, or what people call"
          + " it, and the name of its row; sheets with one row need none.",
      "All that the input may hold is tried on a copy of the design. Printed is the input nearest to"
          + " the present one, all others that do, the findings that come or go by it, and how the"
          + " answer comes about. Where none does, it says what comes nearest.",
      "Nights and starts are placed, not calculated; the command timetable tells them.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright find \"Intake rate\" of 7 so that Cycles of 7 is at most 2",
      "  zonewright find Area of 2 so that \"Rate by area\" of 2 is \"0.5 in/h\" --from garden.xlsx",
      "  zonewright find Area of 1 so that \"Left of the yearly allowance\" is at least 0 --from garden.xlsx --into less.xlsx"
    })
final class FindCommand extends Task {
  private static final String FORM =
      "Write for example: find \"Intake rate\" of 7 so that Cycles of 7 is at most 2";

  private static final Map<String, NumberSearch.Goal> GOALS =
      Map.of("at most", NumberSearch.Goal.AT_MOST, "at least", NumberSearch.Goal.AT_LEAST);

  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(
      arity = "1..*",
      paramLabel = "WORDS",
      description = "INPUT of ROW so that ANSWER of ROW is [at most|at least] VALUE.")
  private List<String> words = List.of();

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description = "Write the design with the input found to this workbook; ends in .xlsx.")
  private Optional<Path> into = Optional.empty();

  @Override
  public Integer call() {
    into.ifPresent(path -> DesignFiles.mayWrite(path, files.replace()));
    if (words.size() == 1) {
      words = List.of(words.get(0).split("\\s+", -1));
    }
    int so = words.indexOf("so");
    int is = words.lastIndexOf("is");
    boolean formed = so > 0 && is > so + 2 && is + 1 < words.size();
    if (!formed || !words.get(so + 1).equals("that")) {
      throw new Complaint(ExitCode.USAGE, "What is to be found is not said. " + FORM);
    }
    Design design = source.design(files.from(), err());
    Book book = design.book();
    Place input = Asked.cell(book, words.subList(0, so));
    Place answer = Asked.cell(book, words.subList(so + 2, is));
    List<String> wanted = words.subList(is + 1, words.size());
    InputAnswer found = found(book, input, answer, String.join(" ", wanted));
    if (found instanceof InputAnswer.Refused refused) {
      throw new Complaint(ExitCode.USAGE, refused.sentence());
    }
    found.lines().forEach(out()::println);
    if (!(found instanceof InputAnswer.Reached reached)) {
      return ExitCode.FOUND;
    }
    into.ifPresent(
        path -> {
          book.perform(reached.edit(book));
          DesignFiles.save(design, path, source.kept(), err());
          out().println("Written: " + path);
        });
    return ExitCode.FINE;
  }

  private static InputAnswer found(Book book, Place input, Place answer, String wanted) {
    String plain = wanted.strip().toLowerCase(Locale.ROOT);
    Optional<String> said = GOALS.keySet().stream().filter(plain::startsWith).findFirst();
    NumberSearch.Goal goal = said.map(GOALS::get).orElse(NumberSearch.Goal.EQUAL);
    String number = wanted.strip().substring(said.map(String::length).orElse(0)).strip();
    InputQuestion.refused(book, input, answer)
        .ifPresent(
            sentence -> {
              throw new Complaint(ExitCode.USAGE, sentence);
            });
    QuantityText.Reading read = InputQuestion.wanted(book, answer, number);
    if (read instanceof QuantityText.Unreadable not) {
      throw new Complaint(ExitCode.USAGE, not.sentence() + ".");
    }
    double value = ((QuantityText.Read) read).value();
    return InputFinder.answer(
        book.snapshot(), new InputQuestion(input, answer, goal, value), () -> false);
  }
}
