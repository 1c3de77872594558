package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.WeatherSite;
import zonewright.formula.BlockColumn;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/**
 * A copy of a design in which uncertain inputs are typed as they are tried, and what follows is
 * read. An input with a range stands in it as a typed number from the start: what the design works
 * it out from moves it no more, for the range says all there is to know of it.
 */
final class TriedDesign {
  private static final Reference PEAK = Peak.REFERENCE_ET.reference();

  private final Book book;
  private final List<UncertainInput> inputs;
  private final List<Column> ofZones;
  private final List<Column> ofSite;
  private final double[][] typed;
  private final Reference[] cells;
  private final long[][] rows;
  private final int[] places;
  private final double[][] parts;

  /**
   * Makes the copy, with every input at the number the design rests on.
   *
   * @param whole the design; it stays as it is
   * @param ofZones the answers read for each zone
   * @param ofSite the answers read for the site
   */
  TriedDesign(Book whole, List<UncertainInput> inputs, List<Column> ofZones, List<Column> ofSite) {
    this.inputs = inputs;
    this.ofZones = ofZones;
    this.ofSite = ofSite;
    List<Column> needed = new ArrayList<>(ofZones);
    needed.addAll(ofSite);
    inputs.forEach(input -> needed.add(input.column()));
    boolean described = described(whole);
    book = NeededSheets.of(whole, needed, described ? Set.of(PEAK) : Set.of());
    typed = new double[inputs.size()][];
    cells = new Reference[inputs.size()];
    rows = new long[inputs.size()][];
    places = new int[inputs.size()];
    parts = new double[inputs.size()][];
    List<Edit.Change> changes = new ArrayList<>();
    for (int at = 0; at < inputs.size(); at++) {
      UncertainInput input = inputs.get(at);
      boolean climate = input.column().equals(Climate.REFERENCE_ET);
      Reference cell = climate && described ? PEAK : input.column().reference();
      cells[at] = cell;
      rows[at] = book.contents().rows(cell.table()).stream().mapToLong(Row::id).toArray();
      places[at] = book.position(cell);
      parts[at] =
          input.range().ofSite()
              ? IntStream.range(0, whole.rows(cell.table()))
                  .mapToDouble(row -> whole.number(cell, row))
                  .toArray()
              : new double[0];
      typed[at] = new double[input.rows()];
      for (int row = 0; row < input.rows(); row++) {
        typed[at][row] = input.held(row);
        if (input.uncertain(row)) {
          type(changes, at, row, input.held(row));
        }
      }
    }
    book.start(new Edit.SetCells("tried", changes));
  }

  /** A climate that is only described has a peak and no months. */
  private static boolean described(Book whole) {
    return whole.outcome(WeatherSite.ET_METHOD.reference(), 0) instanceof Outcome.Words words
        && words.text().equals(WeatherSite.DESCRIPTION);
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
    if (!inputs.get(at).range().ofSite()) {
      change(changes, at, row, number);
      return;
    }
    for (int each = 0; each < parts[at].length; each++) {
      if (!Double.isNaN(parts[at][each])) {
        change(changes, at, each, number * parts[at][each]);
      }
    }
  }

  /** What stood there before does not matter: nothing is taken back here. */
  private void change(List<Edit.Change> changes, int at, int row, double number) {
    changes.add(
        new Edit.Change(
            cells[at].table(), rows[at][row], places[at], Entry.BLANK, new Entry.Figure(number)));
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
