package zonewright.equation;

import java.util.List;

/** Ends the reading of an equation at its first problem. */
final class Misread extends Exception {
  private static final long serialVersionUID = 1;

  private final transient EquationReading.Problem problem;

  Misread(int from, int to, String sentence, List<String> offers) {
    this(new EquationReading.Problem(from, to, sentence, offers));
  }

  Misread(EquationReading.Problem problem) {
    super(problem.sentence(), null, false, false);
    this.problem = problem;
  }

  Misread(Part part, String sentence) {
    this(part.from(), part.to(), sentence, List.of());
  }

  EquationReading.Problem problem() {
    return problem;
  }
}
