package zonewright.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.AnswerWords;
import zonewright.design.Question;
import zonewright.design.Synonyms;
import zonewright.design.TurnedQuestion;
import zonewright.formula.Outcome;
import zonewright.paper.PaperSize;
import zonewright.practice.WorkedPage;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Schema;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Answers one question with its working. */
@Command(
    name = "answer",
    header = "Work one value out and show every step.",
    description = {
      "",
      "Name the column you want, or what people call it (PR, DU, friction loss), and give what you"
          + " know. A value given counts as it is, also that of"
          + " a column which is otherwise calculated. What is still needed is named.",
      "A value of a month counts for the month that is named, Month=July, or for all alike; where the"
          + " months differ and none is named, all are listed. What is assumed is said first.",
      "Several values at once are a list: Cans=20,25,30 mL, or twelve for the months.",
      "Where what follows from the column is given, the equations are solved for it, or, where that"
          + " cannot be done, a number is searched.",
      "Where several sheets have a column of one name, that of the zones is meant; write"
          + " \"Site: Volume a week\" for another.",
      "With --from the columns of your own that a design has can be asked for and given as well.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright answer \"Precipitation rate\" \"Zone flow=12 gpm\" \"Area=900 ft2\"",
      "  zonewright answer Area \"Precipitation rate=0.64 in/h\" \"Zone flow=9.6 gpm\"",
      "  zonewright answer \"Longest cycle\" \"Precipitation rate=1.6 in/h\" Soil=loam Slope=4",
      "  zonewright answer \"Mean daily reference ET\" Month=July \"Reference ET=7.4 in\"",
      "  zonewright answer \"Low-quarter uniformity\" Cans=20,25,30,22,28,24,26,21 \"Can opening=16 in2\"",
      "  zonewright answer \"Water held in mm\" \"Available water=1.5 in/ft\" \"Root depth=2 ft\"",
      "  zonewright answer \"Net demand\" \"Peak reference ET=6 mm/day\" \"Plant factor=0.6\" --units si"
    })
final class AnswerCommand extends Task {

  @Parameters(
      index = "0",
      paramLabel = "COLUMN",
      description = "The column asked for; with the unit it is wanted in, as \"Run time in h\".")
  private String name;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "NAME=VALUE",
      description = "What is known, each as \"Area=900 ft2\"; the unit may be left out.")
  private List<String> values = List.of();

  @Option(
      names = "--units",
      paramLabel = "us|si",
      converter = UnitSystemWord.class,
      description = "Units of the answer, and of values without one; us unless given.")
  private UnitSystem system = UnitSystem.US;

  @Mixin private KnownSheets sheets;

  @Mixin private PdfOption pdf;

  @Override
  public Integer call() {
    PrintWriter err = err();
    Schema schema = sheets.schema(err);
    ColumnFinder finder = Synonyms.finder(schema, Sheets.ZONES);
    AskedFor asked = AskedFor.of(finder, name);
    Map<Column, String> given = Asked.values(finder, values, false);
    Question question = new Question(asked.column(), given, system, schema);
    question.problems().stream()
        .findFirst()
        .ifPresent(
            problem -> {
              throw new Complaint(ExitCode.USAGE, AnswerText.sentence(problem));
            });
    AnswerText text = text(finder, question, asked);
    if (question.rowMatters()) {
      text.byRow().forEach(out()::println);
      return ExitCode.FINE;
    }
    if (!question.missing().isEmpty()) {
      Optional<TurnedQuestion.Answer> turned =
          TurnedQuestion.answer(asked.column(), given, system, schema);
      if (turned.isPresent()) {
        turned(finder, asked, turned.get());
        return ExitCode.FINE;
      }
      throw new Complaint(ExitCode.USAGE, text.missing());
    }
    question
        .unused()
        .forEach(
            column ->
                err.println(
                    "%s has no part in %s; left aside."
                        .formatted(column.name(), asked.column().name())));
    told(text, question);
    if (question.outcome() instanceof Outcome.Refused refused) {
      err.println(AnswerText.sentence(refused));
      return ExitCode.FOUND;
    }
    return ExitCode.FINE;
  }

  /** Prints an answer that follows the other way round. */
  private void turned(ColumnFinder finder, AskedFor asked, TurnedQuestion.Answer answer) {
    AskedFor worked =
        answer.found().isPresent() ? new AskedFor(answer.from(), Optional.empty()) : asked;
    answer
        .found()
        .ifPresent(
            number ->
                out()
                    .println(
                        "%s = %s, found by search: with it %s is what was given.%n"
                            .formatted(asked.column().name(), number, answer.from().name())));
    told(text(finder, answer.question(), worked), answer.question());
  }

  private AnswerText text(ColumnFinder finder, Question question, AskedFor asked) {
    AnswerWords words = new AnswerWords(question, asked.column(), asked.unit(), system);
    return new AnswerText(finder, question, words, system);
  }

  /** Prints an answer, or writes it as a page. */
  private void told(AnswerText text, Question question) {
    if (pdf.asked()) {
      out().println(pdf.write(() -> WorkedPage.of(question, text.words(), PaperSize.of(system))));
    } else {
      text.lines().forEach(out()::println);
    }
  }
}
