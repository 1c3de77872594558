package zonewright.desk.columns;

import java.awt.Color;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;
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
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;
import zonewright.sheet.Row;
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
  private final Consumer<Place> added;
  private final JDialog dialog;
  private final OwnColumnForm form = new OwnColumnForm(this::written);
  private final ColumnPick pick = new ColumnPick(form::insert);
  private final Prose heading = new Prose(" ").styled("h3");
  private final Prose result = new Prose(" ");
  private final JPanel offers = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3"));
  private final JButton put = new JButton("Add");
  private final JButton away =
      SideWindow.button("Take away", "Takes the column away; undo brings it back", this::takeAway);
  private final Timer soon = new Timer(PAUSE_MILLIS, event -> look(false));

  /** Counts what was asked, so that an answer to what is written no more is not shown. */
  private final AtomicInteger question = new AtomicInteger();

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "trial of a column");
            thread.setDaemon(true);
            return thread;
          });

  /** The identity of the definition that is changed; none where a new one is written. */
  private Optional<Long> changing = Optional.empty();

  private int seenIn;
  private String offered = "";

  /**
   * Makes the window; it is not shown yet.
   *
   * @param added is told where a new column is in the row a person is at
   */
  public OwnColumnWindow(Window owner, OpenDesign open, Consumer<Place> added) {
    this.open = open;
    this.added = added;
    dialog = SideWindow.of(owner, "Column of your own", "own column");
    soon.setRepeats(false);
    result.setName("own result");
    offers.setName("own offers");
    put.setName("put own column");
    put.addActionListener(event -> look(true));
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
    close.addActionListener(event -> hide());
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
    changing = Optional.empty();
    String sheet = open.book().declared().table(table).title();
    form.fill(new OwnColumnDraft("", sheet, OwnColumnDraft.kinds().get(0), "", "", "", "", ""));
    begun("New column", "Add");
  }

  private void change(int definition) {
    changing = Optional.of(open.book().contents().row(Sheets.OWN_COLUMNS, definition).id());
    OwnColumnDraft draft = OwnColumnDraft.of(open.book(), definition);
    form.fill(draft);
    begun(draft.name(), "Change");
  }

  private void begun(String words, String action) {
    heading.setText(words);
    put.setText(action);
    away.setVisible(changing.isPresent());
    offered = "";
    look(false);
  }

  /** Looks anew a moment later, where the window is seen: the design has changed. */
  @Override
  public void edited() {
    if (dialog.isShowing()) {
      question.incrementAndGet();
      offered = "";
      soon.restart();
    }
  }

  /** Another design lies on the desk. */
  @Override
  public void replaced() {
    hide();
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
    worker.shutdownNow();
    dialog.dispose();
  }

  /** Returns where the definition stands that is changed. */
  private Optional<Integer> row() {
    List<Row> rows = open.book().contents().rows(Sheets.OWN_COLUMNS);
    return IntStream.range(0, rows.size())
        .filter(at -> changing.equals(Optional.of(rows.get(at).id())))
        .boxed()
        .findFirst();
  }

  private void hide() {
    soon.stop();
    question.incrementAndGet();
    dialog.setVisible(false);
  }

  private void written() {
    soon.restart();
  }

  /**
   * Tries what is written on a copy of the design, away from the window: its rows may be thousands.
   *
   * @param thenPut whether it is put into the design where it can be calculated
   */
  private void look(boolean thenPut) {
    soon.stop();
    Book book = open.book();
    Optional<Integer> row = row();
    if (changing.isPresent() && row.isEmpty()) {
      // an undo took the definition away that was being changed
      changing = Optional.empty();
      begun("New column", "Add");
      return;
    }
    OwnColumnDraft draft = form.draft();
    if (!offered.equals(draft.sheet())) {
      offered = draft.sheet();
      pick.offer(OwnColumnDraft.known(book, offered));
    }
    BookSnapshot now = book.snapshot();
    int at = seenIn;
    int mine = question.incrementAndGet();
    worker.execute(
        () -> {
          OwnColumnDraft.Judged judged = draft.judgedIn(book.another(now), row, at);
          SwingUtilities.invokeLater(
              () -> {
                if (question.get() == mine) {
                  show(draft, judged);
                  if (thenPut && judged instanceof OwnColumnDraft.Fine fine) {
                    put(draft, fine.column().reference());
                  }
                }
              });
        });
  }

  private void show(OwnColumnDraft draft, OwnColumnDraft.Judged judged) {
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

  private void put(OwnColumnDraft draft, Reference column) {
    Book book = open.book();
    Optional<Integer> row = row();
    if (row.isPresent()) {
      perform(draft.changed(book, row.get()), () -> {});
    } else {
      perform(draft.added(book), () -> added.accept(new Place(column, seenIn)));
    }
  }

  private void takeAway() {
    row().ifPresent(at -> perform(OwnColumnDraft.removed(open.book(), at), () -> {}));
  }

  /** Says what takes its time with thousands of rows, and does it once that has been painted. */
  private void perform(Edit edit, Runnable then) {
    say("All rows are calculated …", UIManager.getColor("Label.foreground"), Optional.empty());
    put.setEnabled(false);
    SwingUtilities.invokeLater(
        () -> {
          hide();
          open.book().perform(edit);
          then.run();
        });
  }
}
