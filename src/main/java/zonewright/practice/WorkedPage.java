package zonewright.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import zonewright.design.AnswerWords;
import zonewright.design.Question;
import zonewright.paper.Paper;
import zonewright.paper.PaperSize;
import zonewright.sheet.Working;

/** An answer with its working as a page to hand in. */
public final class WorkedPage {
  private static final double LETTERS = 10.5;
  private static final double SMALL = 9;

  private WorkedPage() {}

  /** Returns the page of a question and its answer, a PDF. */
  public static byte[] of(Question question, AnswerWords words, PaperSize size) {
    String name = words.asked().name();
    try (Paper paper = new Paper(size, name, "Worked step by step", "Zonewright")) {
      paper.page(name, "");
      facts(paper, "Given", question, question.start());
      facts(paper, "Assumed", question, question.assumed());
      paper.heading("Working");
      Set<String> told = new HashSet<>();
      List<Working> steps = question.calculated();
      for (int i = 0; i < steps.size(); i++) {
        Working step = steps.get(i);
        step(paper, i + 1 + ". " + step.column().name(), step);
        words.rows(step.column()).forEach(row -> paper.indented(row.strip(), SMALL));
        step.sources().stream()
            .filter(told::add)
            .forEach(source -> paper.sentences("Source: " + source, SMALL));
        paper.space(LETTERS / 2);
      }
      List<String> answer = new ArrayList<>(List.of(name + " = " + words.result()));
      answer.addAll(words.further());
      paper.box("Answer", answer);
      return paper.file();
    }
  }

  private static void facts(Paper paper, String title, Question question, List<Working> cells) {
    if (!cells.isEmpty()) {
      paper.heading(title);
      cells.forEach(cell -> paper.fact(cell.column().name(), question.shownAsGiven(cell), LETTERS));
    }
  }

  /** Writes a step: the equation in symbols, with its numbers, what it comes to, and why so. */
  static void step(Paper paper, String head, Working step) {
    paper.strong(head, LETTERS);
    step.equations().forEach(equation -> paper.indented("= " + equation, LETTERS));
    step.notes().forEach(note -> paper.indented(note, SMALL));
    step.rests().forEach(rest -> paper.indented("Rests on " + rest.told(), SMALL));
  }
}
