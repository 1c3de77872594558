package zonewright.exchange;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import zonewright.sheet.ListText;

/**
 * A list as it stands in a file: headings and rows of text.
 *
 * @param headings the line that names the columns
 * @param rows the lines below it, each with as many cells as there are headings
 * @param text what it was read from, which tells how its numbers are written
 * @param head which of its lines the headings are, counted from 0
 * @param notes what the reader should know, each a sentence
 */
public record ForeignList(
    List<String> headings, List<List<String>> rows, ListText text, int head, List<String> notes) {
  /** No list of more rows is read. */
  static final int MOST_ROWS = 50_000;

  public ForeignList {
    headings = List.copyOf(headings);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
  }

  /**
   * Reads a file.
   *
   * @throws ListProblem when it cannot be read, is too large, or is no list
   */
  public static ForeignList read(Path file) throws ListProblem {
    try {
      return of(ListText.of(file), file.toString());
    } catch (ListText.Problem problem) {
      throw new ListProblem(problem.getMessage(), problem);
    }
  }

  /**
   * Reads what was copied in another program; spreadsheets set cells apart by tabs.
   *
   * @throws ListProblem when it is too large, or no list
   */
  public static ForeignList pasted(String text) throws ListProblem {
    if (text.length() > ListText.LARGEST) {
      throw new ListProblem(
          "What was copied has %s million letters; lists of up to %s are read."
              .formatted(text.length() >> 20, ListText.LARGEST >> 20));
    }
    return of(text.getBytes(StandardCharsets.UTF_8), "What was copied");
  }

  /**
   * Reads the content of a file.
   *
   * @param name what to call it in a complaint
   */
  static ForeignList of(byte[] content, String name) throws ListProblem {
    try {
      return of(ListText.of(content, name), name);
    } catch (ListText.Problem problem) {
      throw new ListProblem(problem.getMessage(), problem);
    }
  }

  private static ForeignList of(ListText text, String name) throws ListProblem {
    return of(text, name, 0);
  }

  /**
   * Takes lines that were read already.
   *
   * @param name what to call it in a complaint
   * @param head which line names the columns, counted from 0; what stands above is left out
   */
  static ForeignList of(ListText text, String name, int head) throws ListProblem {
    List<ListText.Line> lines =
        text.lines().subList(Math.min(head, text.lines().size()), text.lines().size());
    if (lines.isEmpty()) {
      throw new ListProblem("%s holds nothing.".formatted(name));
    }
    if (lines.size() > MOST_ROWS + 1) {
      throw new ListProblem(
          "%s has %s rows; lists of up to %s are read."
              .formatted(name, lines.size() - 1, MOST_ROWS));
    }
    List<String> notes = new ArrayList<>(text.notes());
    List<String> headings = lines.get(0).cells().stream().map(String::strip).toList();
    List<List<String>> rows = new ArrayList<>();
    for (ListText.Line line : lines.subList(1, lines.size())) {
      rows.add(fitted(line.cells(), headings.size(), line.number(), notes));
    }
    return new ForeignList(headings, rows, text, head, notes);
  }

  /** Returns the line of the file that a row stands in, counted from 1. */
  public int line(int row) {
    return text.lines().get(head + 1 + row).number();
  }

  private static List<String> fitted(List<String> line, int width, int number, List<String> notes) {
    List<String> cells = new ArrayList<>(line);
    while (cells.size() < width) {
      cells.add("");
    }
    List<String> beyond = cells.subList(width, cells.size());
    if (beyond.stream().anyMatch(cell -> !cell.isBlank())) {
      notes.add(
          "Line %s has more cells than there are headings; left out: %s."
              .formatted(number, String.join(", ", beyond)));
    }
    return List.copyOf(cells.subList(0, width));
  }
}
