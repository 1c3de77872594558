package zonewright.desk.columns;

import java.awt.Color;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import zonewright.design.OwnColumnDraft;
import zonewright.design.OwnColumnSheet;
import zonewright.design.OwnColumns;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SeverityMark;
import zonewright.desk.part.SideWindow;
import zonewright.equation.EquationReading;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;

/**
 * Adds a column of one's own or changes one: while it is written, a line below the equation says
 * what it gives in the row the person is at, or what is wrong and what could stand there instead.
 */
public final class OwnColumnWindow implements FollowingWindow {
  private static final int PAUSE_MILLIS = 200;
  private static final int MOST_OFFERS = 4;

  private final OpenDesign open;
  private final JDialog dialog;
  private final OwnColumnForm form = new OwnColumnForm(this::written);
  private final ColumnPick pick = new ColumnPick(form::insert);
  private final Prose heading = new Prose(" ").styled("h3");
  private final Prose result = new Prose(" ");
  private final JPanel offers = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3"));
  private final JButton put = new JButton("Add");
  private final JButton away =
      SideWindow.button("Take away", "Takes the column away; undo brings it back", this::takeAway);
  private final Timer soon = new Timer(PAUSE_MILLIS, event -> look());

  /** The definition that is changed; none where a new one is written. */
  private Optional<Integer> row = Optional.empty();

  private int seenIn;
  private String offered = "";

  /** Makes the window; it is not shown yet. */
  public OwnColumnWindow(Window owner, OpenDesign open) {
    this.open = open;
    dialog = SideWindow.of(owner, "Column of your own", "own column");
    soon.setRepeats(false);
    result.setName("own result");
    offers.setName("own offers");
    put.setName("put own column");
    put.addActionListener(event -> put());
    away.setName("take own column away");
    dialog.add(page());
    dialog.getRootPane().setDefaultButton(put);
    SideWindow.place(dialog, 860, 480);
  }

  private JPanel page() {
    JPanel left =
        new JPanel(
            new MigLayout(
                "insets 0, fill, wrap", "[grow,fill]", "[]10[]8[]2[grow,push]6[]4[]12[]"));
    left.add(heading, "wmin 100");
    left.add(form.head());
    left.add(new JLabel("Equation, as Zone flow / Area or IF(Slope > 5 %; 1.5; 1)"));
    left.add(form.equation(), "grow, hmin 70");
    left.add(result, "wmin 100, hmin 44, aligny top");
    left.add(offers, "hmin 30");
    left.add(form.limits());
    JPanel right = new JPanel(new MigLayout("insets 0, fill, wrap", "[grow,fill]", "[]6[]6[grow]"));
    right.add(new JLabel("Columns to insert"));
    right.add(pick.field());
    right.add(pick.list(), "grow, hmin 200");
    JPanel page =
        new JPanel(
            new MigLayout("insets 14, fill, wrap 2", "[grow,fill]14[260!,fill]", "[grow]10[]"));
    page.add(left, "grow");
    page.add(right, "grow");
    page.add(buttons(), "span 2, growx");
    return page;
  }

  private JPanel buttons() {
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3, fillx"));
    JButton close = new JButton("Close");
    close.addActionListener(event -> dialog.setVisible(false));
    panel.add(away);
    panel.add(close, "pushx, alignx right");
    panel.add(put);
    return panel;
  }

  /**
   * Shows the window: for the column of one's own a person is at, else for a new one on the sheet
   * at the front.
   */
  public void open(String table, Optional<Place> at) {
    Book book = open.book();
    Optional<Integer> defined =
        table.equals(Sheets.OWN_COLUMNS)
            ? at.map(Place::row)
            : at.flatMap(place -> OwnColumns.of(book).rowOf(place.column()));
    seenIn = table.equals(Sheets.OWN_COLUMNS) ? 0 : at.map(Place::row).orElse(0);
    if (defined.isPresent()) {
      change(defined.get());
    } else {
      add(table.equals(Sheets.OWN_COLUMNS) ? Sheets.ZONES : table);
    }
    dialog.setVisible(true);
    form.name().requestFocusInWindow();
  }

  private void add(String table) {
    row = Optional.empty();
    String sheet = open.book().declared().table(table).title();
    form.fill(new OwnColumnDraft("", sheet, OwnColumnDraft.kinds().get(0), "", "", "", "", ""));
    begun("New column", "Add");
  }

  private void change(int definition) {
    row = Optional.of(definition);
    OwnColumnDraft draft = OwnColumnDraft.of(open.book(), definition);
    form.fill(draft);
    begun(draft.name(), "Change");
  }

  private void begun(String words, String action) {
    heading.setText(words);
    put.setText(action);
    away.setVisible(row.isPresent());
    offered = "";
    look();
  }

  /** Looks anew a moment later, where the window is seen: the design has changed. */
  @Override
  public void edited() {
    if (dialog.isShowing()) {
      offered = "";
      soon.restart();
    }
  }

  /** Another design lies on the desk. */
  @Override
  public void replaced() {
    dialog.setVisible(false);
  }

  /** Takes the look over after it changed. */
  @Override
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
    edited();
  }

  /** Closes the window for good. */
  @Override
  public void close() {
    soon.stop();
    dialog.dispose();
  }

  private void written() {
    soon.restart();
  }

  private void look() {
    Book book = open.book();
    if (row.filter(at -> at >= book.rows(Sheets.OWN_COLUMNS)).isPresent()) {
      // an undo took the definition away that was being changed
      row = Optional.empty();
      begun("New column", "Add");
      return;
    }
    OwnColumnDraft draft = form.draft();
    if (!offered.equals(draft.sheet())) {
      offered = draft.sheet();
      pick.offer(OwnColumnDraft.known(book, offered));
    }
    OwnColumnDraft.Judged judged = draft.judged(book, row, seenIn);
    if (judged instanceof OwnColumnDraft.Fine fine) {
      say(fine.shown(), UIManager.getColor("Label.foreground"), Optional.empty());
    } else if (judged instanceof OwnColumnDraft.Not not) {
      boolean begun = !(draft.name().isBlank() && draft.equation().isBlank());
      Optional<EquationReading.Problem> place =
          not.place().filter(any -> not.cell().equals(OwnColumnSheet.EQUATION.reference()));
      say(begun ? Prose.capital(not.sentence()) : " ", SeverityMark.colour(Severity.WRONG), place);
    }
    put.setEnabled(judged instanceof OwnColumnDraft.Fine);
  }

  private void say(String words, Color colour, Optional<EquationReading.Problem> problem) {
    result.setText(words);
    result.setForeground(colour);
    offers.removeAll();
    problem.ifPresent(
        found ->
            found.offers().stream()
                .limit(MOST_OFFERS)
                .forEach(
                    offer ->
                        offers.add(
                            SideWindow.button(
                                offer,
                                "Puts it into the equation",
                                () -> form.replace(found.from(), found.to(), offer)))));
    offers.revalidate();
    offers.repaint();
  }

  private void put() {
    soon.stop();
    OwnColumnDraft draft = form.draft();
    Book book = open.book();
    if (draft.judged(book, row, seenIn) instanceof OwnColumnDraft.Fine) {
      Edit edit = row.isPresent() ? draft.changed(book, row.get()) : draft.added(book);
      dialog.setVisible(false);
      book.perform(edit);
    } else {
      look();
    }
  }

  private void takeAway() {
    row.ifPresent(
        definition -> {
          dialog.setVisible(false);
          open.book().perform(OwnColumnDraft.removed(open.book(), definition));
        });
  }
}
