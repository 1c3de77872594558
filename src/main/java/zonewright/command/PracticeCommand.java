package zonewright.command;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.paper.PaperSize;
import zonewright.practice.Exercise;
import zonewright.practice.ExerciseSheets;
import zonewright.practice.Marking;
import zonewright.practice.Topic;
import zonewright.sheet.Nearest;
import zonewright.units.UnitSystem;

/** Sets exercises and marks answers. */
@Command(
    name = "practice",
    header = "Set an exercise, mark an answer, print a set for a class.",
    description = {
      "",
      "Exercises have invented figures and the equations of the program. The same seed and number"
          + " make the same exercise. An answer may differ by 1 %%. Of a wrong one it is said how it"
          + " most likely came about, and in which step.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright practice --list",
      "  zonewright practice \"precipitation rate from area\" --seed 7",
      "  zonewright practice \"precipitation rate from area\" --seed 7 --answer \"0.64 in/h\"",
      "  zonewright practice --set 20 --seed 7 --pdf exercises.pdf",
      "  zonewright practice --set 20 --seed 7 --solutions --pdf solutions.pdf"
    })
final class PracticeCommand extends Task {
  private static final int MOST = 200;

  @Parameters(
      arity = "0..1",
      paramLabel = "TOPIC",
      description = "What it is about, or the number of the topic; one after the other if none.")
  private Optional<String> topic = Optional.empty();

  @Option(names = "--list", description = "List the topics.")
  private boolean list;

  @Option(names = "--seed", paramLabel = "N", description = "A whole number; 1 unless given.")
  private long seed = 1;

  @Option(
      names = "--number",
      paramLabel = "N",
      description = "Which exercise of the seed, from 1; the first unless given.")
  private int number = 1;

  @Option(
      names = "--answer",
      paramLabel = "VALUE",
      description = "An answer to mark, with its unit, as \"0.64 in/h\".")
  private Optional<String> answer = Optional.empty();

  @Option(names = "--set", paramLabel = "N", description = "Print so many exercises.")
  private Optional<Integer> set = Optional.empty();

  @Option(names = "--solutions", description = "Print the solution, or those of the set.")
  private boolean solutions;

  @Mixin private PdfOption pdf;

  @Option(
      names = "--units",
      paramLabel = "us|si",
      converter = UnitSystemWord.class,
      description = "Units of the exercises; us unless given.")
  private UnitSystem system = UnitSystem.US;

  @Override
  public Integer call() {
    if (list) {
      List<Topic> topics = Topic.all();
      for (int i = 0; i < topics.size(); i++) {
        out().println((i < 9 ? " " : "") + (i + 1) + "  " + topics.get(i).title());
      }
      return ExitCode.FINE;
    }
    Optional<Topic> about = topic.map(PracticeCommand::topic);
    if (set.isPresent() || pdf.asked()) {
      return sheets(about);
    }
    between("--number", number);
    Exercise exercise = Exercise.of(seed, number, about, system);
    return answer.map(written -> marked(exercise, written)).orElseGet(() -> set(exercise));
  }

  private static void between(String option, int value) {
    if (value < 1 || value > MOST) {
      throw new Complaint(
          ExitCode.USAGE, "%s %s: write a number from 1 to %s.".formatted(option, value, MOST));
    }
  }

  private static Topic topic(String written) {
    List<Topic> topics = Topic.all();
    List<String> titles = topics.stream().map(Topic::title).toList();
    if (written.matches("\\d{1,2}")) {
      int place = Integer.parseInt(written);
      if (place >= 1 && place <= topics.size()) {
        return topics.get(place - 1);
      }
    }
    return Nearest.alike(written, titles)
        .map(title -> topics.get(titles.indexOf(title)))
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "There is no topic “%s”; --list names the %s there are."
                        .formatted(written, topics.size())));
  }

  private Integer set(Exercise exercise) {
    out().println(exercise.topic().title());
    exercise.task().forEach(line -> out().println("  " + line));
    if (solutions) {
      out().println("Answer: " + exercise.answer());
      exercise.working().forEach(out()::println);
    }
    return ExitCode.FINE;
  }

  private Integer marked(Exercise exercise, String written) {
    Marking marking = new Marking(exercise, written);
    if (marking.verdict() == Marking.Verdict.UNREADABLE) {
      throw new Complaint(ExitCode.USAGE, String.join(" ", marking.lines()));
    }
    marking.lines().forEach(out()::println);
    return marking.verdict() == Marking.Verdict.RIGHT ? ExitCode.FINE : ExitCode.FOUND;
  }

  private Integer sheets(Optional<Topic> about) {
    if (answer.isPresent()) {
      throw new Complaint(
          ExitCode.USAGE, "An answer is marked for one exercise; leave --set and --pdf out.");
    }
    int count = set.orElse(1);
    between("--set", count);
    ExerciseSheets sheets = new ExerciseSheets(seed, count, about, system);
    if (pdf.asked()) {
      out().println(pdf.write(() -> sheets.pages(solutions, PaperSize.of(system))));
    } else {
      sheets.text(solutions).forEach(out()::println);
    }
    return ExitCode.FINE;
  }
}
