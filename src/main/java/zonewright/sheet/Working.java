package zonewright.sheet;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Outcome;

/**
 * How one cell comes about, for a person to follow.
 *
 * @param cell which cell
 * @param column its column, with meaning and source
 * @param outcome the number, or why there is none; the same as in the grid
 * @param shown the result as text, with unit, or the reason
 * @param symbols the formula in names; empty for what is typed
 * @param taken the formula in names by the way its choices took; the whole where that is not known
 * @param numbers the formula with its numbers; empty for what is typed
 * @param inputs the cells it was made from, to go to
 * @param notes what decided, the rows of tables values were looked up in, and what the factors are
 *     that units brought
 * @param sources where the equation comes from, and the table values in it
 * @param rests the cells that say where the values come from on which it rests as it was worked out
 * @param origin how the cell came by its content: typed, default, typed over the default,
 *     calculated
 * @param cases the cases of a choice among several, in their order; empty where there is none
 */
public record Working(
    Outcome.CellName cell,
    Column column,
    Outcome outcome,
    String shown,
    String symbols,
    String taken,
    String numbers,
    List<Input> inputs,
    List<String> notes,
    List<String> sources,
    List<Input> rests,
    String origin,
    List<Case> cases) {
  public Working {
    cases = List.copyOf(cases);
    inputs = List.copyOf(inputs);
    notes = List.copyOf(notes);
    sources = List.copyOf(sources);
    rests = List.copyOf(rests);
  }

  /**
   * A cell it was made from.
   *
   * @param column its column
   * @param row its row, counted from 0; -1 where a whole column counts
   * @param shown what it holds, with unit
   * @param used whether it counted; not where a condition took another way
   */
  public record Input(Column column, int row, String shown, boolean used) {
    /** Returns its name and what it holds as a line. */
    public String told() {
      return column.name() + ": " + shown;
    }
  }

  /**
   * A case of a choice.
   *
   * @param when when it holds, in names
   * @param then what is taken then, in names
   * @param taken whether it is the one that holds
   */
  public record Case(String when, String then, boolean taken) {}

  /** Returns the formula, the formula with its numbers and the result, each if it says more. */
  public List<String> equations() {
    List<String> lines = new ArrayList<>();
    if (!taken.isEmpty() && !taken.equals(shown)) {
      lines.add(taken);
    }
    boolean bare =
        shown.startsWith(numbers + " ")
            || numbers.contains("not known")
            || column.content() == Column.Content.CHOICE;
    if (!numbers.equals(taken) && !numbers.equals(shown) && !bare) {
      lines.add(numbers);
    }
    lines.add(shown);
    return lines;
  }

  /** Returns how a cell that is typed, or taken as usual, comes about. */
  static Working plain(
      Outcome.CellName cell,
      Column column,
      Outcome outcome,
      String shown,
      String origin,
      List<String> notes) {
    return new Working(
        cell,
        column,
        outcome,
        shown,
        "",
        "",
        "",
        List.of(),
        notes,
        column.source().isEmpty() ? List.of() : List.of(column.source()),
        List.of(),
        origin,
        List.of());
  }

  /** Returns all of it as plain lines, to copy. */
  public String asText() {
    StringBuilder text = new StringBuilder();
    text.append(cell.inWords()).append(" (").append(origin).append(")\n");
    equations().forEach(line -> text.append("  = ").append(line).append('\n'));
    notes.forEach(note -> text.append("  ").append(note).append('\n'));
    rests.forEach(rest -> text.append("  Rests on ").append(rest.told()).append('\n'));
    sources.forEach(source -> text.append("  Source: ").append(source).append('\n'));
    return text.toString();
  }
}
