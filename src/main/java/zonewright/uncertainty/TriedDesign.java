package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import zonewright.formula.BlockColumn;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.trade.Sheets;

/**
 * A copy of a design in which uncertain inputs are typed as they are tried, and what follows is
 * read. An input with a range stands in it as a typed number from the start: what the design works
 * it out from moves it no more, for the range says all there is to know of it.
 */
final class TriedDesign {
  private final Book book;
  private final List<UncertainInput> inputs;
  private final List<Column> ofZones;
  private final List<Column> ofSite;
  private final double[][] typed;
  private final double[][] months;

  /**
   * Makes the copy, with every input at the number the design rests on.
   *
   * @param ofZones the answers read for each zone
   * @param ofSite the answers read for the site
   */
  TriedDesign(
      BookSnapshot snapshot,
      Schema schema,
      List<UncertainInput> inputs,
      List<Column> ofZones,
      List<Column> ofSite) {
    this.inputs = inputs;
    this.ofZones = ofZones;
    this.ofSite = ofSite;
    List<Column> needed = new ArrayList<>(ofZones);
    needed.addAll(ofSite);
    inputs.forEach(input -> needed.add(input.column()));
    book = NeededSheets.of(snapshot, schema, needed);
    typed = new double[inputs.size()][];
    months = new double[inputs.size()][];
    List<Edit.Change> changes = new ArrayList<>();
    for (int at = 0; at < inputs.size(); at++) {
      UncertainInput input = inputs.get(at);
      Reference column = input.column().reference();
      typed[at] = new double[input.rows()];
      months[at] =
          input.range().ofSite()
              ? IntStream.range(0, book.rows(column.table()))
                  .mapToDouble(month -> book.number(column, month))
                  .toArray()
              : new double[0];
      for (int row = 0; row < input.rows(); row++) {
        typed[at][row] = input.held(row);
        if (input.uncertain(row)) {
          type(changes, at, row, input.held(row));
        }
      }
    }
    book.start(new Edit.SetCells("tried", changes));
  }

  int zones() {
    return book.rows(Sheets.ZONES);
  }

  /** Types a number of each input and row; those as they are already are left alone. */
  void type(double[][] numbers) {
    List<Edit.Change> changes = new ArrayList<>();
    for (int at = 0; at < numbers.length; at++) {
      for (int row = 0; row < numbers[at].length; row++) {
        if (numbers[at][row] != typed[at][row] && inputs.get(at).uncertain(row)) {
          typed[at][row] = numbers[at][row];
          type(changes, at, row, numbers[at][row]);
        }
      }
    }
    if (!changes.isEmpty()) {
      book.start(new Edit.SetCells("tried", changes));
    }
  }

  private void type(List<Edit.Change> changes, int at, int row, double number) {
    Reference column = inputs.get(at).column().reference();
    if (!inputs.get(at).range().ofSite()) {
      change(changes, column, row, number);
      return;
    }
    for (int month = 0; month < months[at].length; month++) {
      if (!Double.isNaN(months[at][month])) {
        change(changes, column, month, number * months[at][month]);
      }
    }
  }

  private void change(List<Edit.Change> changes, Reference column, int row, double number) {
    changes.add(
        new Edit.Change(
            column.table(),
            book.contents().row(column.table(), row).id(),
            book.position(column),
            book.entry(column, row),
            new Entry.Figure(number)));
  }

  /** Returns what each answer of zones comes to, zone by zone. */
  double[][] ofZones() {
    double[][] answers = new double[ofZones.size()][zones()];
    for (int answer = 0; answer < answers.length; answer++) {
      BlockColumn column = book.calculation().column(ofZones.get(answer).reference());
      for (int zone = 0; zone < answers[answer].length; zone++) {
        answers[answer][zone] = column.at(zone);
      }
    }
    return answers;
  }

  /** Returns what each answer of the site comes to. */
  double[] ofSite() {
    return ofSite.stream().mapToDouble(column -> book.number(column.reference(), 0)).toArray();
  }
}
