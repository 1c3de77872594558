package zonewright.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import zonewright.alternatives.Alternatives;
import zonewright.design.Design;
import zonewright.sheet.Book;

/**
 * A design and its alternatives side by side.
 *
 * @param names what each is called, the design first
 * @param inHand which of them the sheets hold
 * @param lines the figures; those that none has are left out
 * @param problems what is wrong with the figures chosen, a sentence each
 */
public record SideBySide(List<String> names, int inHand, List<Line> lines, List<String> problems) {
  public SideBySide {
    names = List.copyOf(names);
    lines = List.copyOf(lines);
    problems = List.copyOf(problems);
  }

  /**
   * One figure.
   *
   * @param values what each has, with the unit; empty where it has none
   */
  public record Line(String name, List<String> values) {
    public Line {
      values = List.copyOf(values);
    }

    /** Says whether one of them has it otherwise than the design. */
    public boolean differs(int which) {
      return !values.get(which).equals(values.get(0));
    }

    /** Says whether any of them has it otherwise than the design. */
    public boolean differs() {
      return values.stream().distinct().count() > 1;
    }
  }

  /**
   * Compares, by the figures the design says.
   *
   * @param book the design with its alternatives; it stays as it is
   * @param stopped asked now and then whether it is wanted no more
   * @throws CancellationException where it is not
   */
  public static SideBySide of(Book book, BooleanSupplier stopped) {
    Alternatives alternatives = new Alternatives(book);
    List<String> names = new ArrayList<>(alternatives.names());
    int inHand = 1 + alternatives.inHand().map(names::indexOf).orElse(-1);
    List<Design> designs = new ArrayList<>(List.of(Design.of(alternatives.design())));
    names.forEach(name -> designs.add(Design.of(alternatives.of(name))));
    ComparedFigure.Chosen chosen = ComparedFigure.of(book);
    List<Line> lines = new ArrayList<>();
    for (ComparedFigure figure : chosen.figures()) {
      List<String> values = new ArrayList<>();
      for (Design design : designs) {
        if (stopped.getAsBoolean()) {
          throw new CancellationException();
        }
        values.add(figure.shown(design));
      }
      if (values.stream().anyMatch(value -> !value.isEmpty())) {
        lines.add(new Line(figure.name(), values));
      }
    }
    names.add(0, Alternatives.DESIGN);
    return new SideBySide(names, inHand, lines, chosen.problems());
  }
}
