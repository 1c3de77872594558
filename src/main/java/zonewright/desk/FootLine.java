package zonewright.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import zonewright.alternatives.Alternatives;
import zonewright.desk.part.OpenDesign;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.CellSummary;
import zonewright.sheet.Place;

/** The line at the foot: what the selected cells come to, the units, and whether all is saved. */
final class FootLine extends JPanel {
  /** As long as a sentence takes to be noticed and read. */
  private static final int NEWS_MILLIS = 8000;

  private final JLabel selection = new JLabel(" ");
  private final JLabel news = new JLabel();
  private final Timer old = new Timer(NEWS_MILLIS, event -> said(""));
  private final JLabel progress = new JLabel();
  private final JProgressBar bar = new JProgressBar();
  private final JButton cancel = new JButton("Break off");
  private transient Optional<Runnable> cancelling = Optional.empty();
  private final JLabel units = new JLabel();
  private final JLabel saved = new JLabel();

  FootLine() {
    super(new MigLayout("insets 3 24 3 24, hidemode 3, fillx"));
    selection.setName("selection summary");
    news.setName("news");
    old.setRepeats(false);
    units.setName("unit system");
    saved.setName("saved or not");
    add(selection, "growx, pushx, wmin 0");
    add(news, "gapleft 18");
    add(progress, "gapleft 18");
    add(bar, "width 90!, height 6!");
    add(cancel, "gapleft 6");
    add(units, "gapleft 18");
    add(saved, "gapleft 18");
    cancel.setName("break off");
    cancel.addActionListener(event -> breakOff());
    busy("", Optional.empty());
  }

  /** Says for a while what was just done. */
  void said(String words) {
    news.setText(words);
    news.setVisible(!words.isEmpty());
    if (words.isEmpty()) {
      old.stop();
    } else {
      old.restart();
    }
  }

  /** Says what is going on, and how to end it; nothing for an empty text. */
  void busy(String words, Optional<Runnable> breakOff) {
    progress.setText(words);
    progress.setVisible(!words.isEmpty());
    bar.setVisible(!words.isEmpty());
    // Even an unseen bar goes on moving, sixty times a second for as long as the window is open.
    bar.setIndeterminate(!words.isEmpty());
    cancelling = breakOff;
    cancel.setVisible(!words.isEmpty() && breakOff.isPresent());
  }

  /** Ends early what is going on, where that can be done. */
  void breakOff() {
    cancelling.ifPresent(Runnable::run);
  }

  /** Shows the state of the design. */
  void state(OpenDesign open) {
    String hand =
        Alternatives.inHand(open.book().snapshot())
            .map("Alternative “%s” on the sheets; in "::formatted)
            .orElse("In ");
    units.setText(hand + open.book().system().words());
    saved.setText(
        open.unsaved() ? "Not saved yet" : open.file().isPresent() ? "Saved" : "Nothing to save");
  }

  /**
   * Shows what some cells of a book come to.
   *
   * @param fact what else is known of a single one
   */
  void selection(Book book, List<Place> places, String fact) {
    String words =
        places.size() == 1
            ? why(book, places.get(0), fact)
            : places.isEmpty() ? " " : words(book, CellSummary.of(book, places));
    selection.setText(words);
    selection.setToolTipText(words.isBlank() ? null : words);
  }

  /** Says why a cell has no number, in full; in the cell there is seldom room for it. */
  private static String why(Book book, Place place, String fact) {
    Outcome outcome = book.outcome(place.column(), place.row());
    boolean number = outcome instanceof Outcome.Amount || outcome instanceof Outcome.Words;
    return number || outcome instanceof Outcome.Blank ? fact + " " : outcome.sentence();
  }

  private static String words(Book book, CellSummary summary) {
    String head = summary.cells() + " cells";
    if (summary.numbers() == 0) {
      return head + ", no numbers";
    }
    String numbers =
        head + ", " + summary.numbers() + (summary.numbers() == 1 ? " number" : " numbers");
    return summary
        .amounts()
        .map(
            amounts ->
                List.of(
                        numbers,
                        "sum " + CellSummary.shown(book, amounts, amounts.sum()),
                        "mean " + CellSummary.shown(book, amounts, amounts.mean()),
                        "least " + CellSummary.shown(book, amounts, amounts.least()),
                        "greatest " + CellSummary.shown(book, amounts, amounts.greatest()))
                    .stream()
                    .collect(Collectors.joining("   ·   ")))
        .orElse(numbers + " of different kinds");
  }
}
