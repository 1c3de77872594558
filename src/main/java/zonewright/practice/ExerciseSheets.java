package zonewright.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.paper.Paper;
import zonewright.paper.PaperSize;
import zonewright.units.UnitSystem;

/** A set of exercises for a class: a sheet to hand out and a sheet of solutions. */
public final class ExerciseSheets {
  private static final double LETTERS = 10;

  private final List<Exercise> exercises;
  private final long seed;

  /** Makes a set of so many exercises; the same seed makes the same set. */
  public ExerciseSheets(long seed, int count, Optional<Topic> topic, UnitSystem system) {
    this.seed = seed;
    exercises =
        IntStream.rangeClosed(1, count)
            .mapToObj(number -> Exercise.of(seed, number, topic, system))
            .toList();
  }

  private String title(boolean solutions) {
    return "%s, set %s".formatted(solutions ? "Solutions" : "Exercises", seed);
  }

  /** Returns the sheet as lines of text. */
  public List<String> text(boolean solutions) {
    List<String> lines = new ArrayList<>(List.of(title(solutions), "All figures are invented."));
    for (int i = 0; i < exercises.size(); i++) {
      lines.add("");
      lines.add((i + 1) + ". " + exercises.get(i).topic().title());
      body(exercises.get(i), solutions).forEach(line -> lines.add("   " + line));
    }
    return lines;
  }

  private static List<String> body(Exercise exercise, boolean solutions) {
    List<String> lines = new ArrayList<>(exercise.task());
    if (solutions) {
      lines.add("Answer: " + exercise.answer());
      lines.addAll(exercise.working());
    } else {
      lines.add("Answer: ____________________");
    }
    return lines;
  }

  /** Returns the sheet as pages, a PDF. */
  public byte[] pages(boolean solutions, PaperSize size) {
    try (Paper paper = new Paper(size, title(solutions), title(solutions), "Figures invented")) {
      paper.page(title(solutions), "All figures are invented.");
      for (int i = 0; i < exercises.size(); i++) {
        paper.heading((i + 1) + ". " + exercises.get(i).topic().title());
        Exercise exercise = exercises.get(i);
        exercise.task().forEach(line -> paper.indented(line, LETTERS));
        if (solutions) {
          exercise.steps().forEach(step -> WorkedPage.step(paper, step.column().name(), step));
          paper.strong("Answer: " + exercise.answer(), LETTERS);
        } else {
          paper.indented("Answer: ____________________", LETTERS);
        }
        paper.space(LETTERS);
      }
      return paper.file();
    }
  }
}
