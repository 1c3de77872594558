package zonewright.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.Action;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.desk.grid.GridAction;
import zonewright.formula.Reference;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.StandingWater;

/** The main window: puts the parts together and passes on what happens in one to the others. */
final class DeskWindow {
  private static final Logger LOG = Logger.getLogger(DeskWindow.class.getName());
  private static final int FINDINGS_DELAY_MILLIS = 120;

  private final JFrame frame = new JFrame("Zonewright");
  private final Memory memory;
  private final Look look;
  private final OpenDesign open;
  private final Trail trail = new Trail();
  private final SheetDeck deck;
  private final WorkingPane working;
  private final FindingsPane findings;
  private final StandingWaterPicture picture = new StandingWaterPicture();
  private final FootLine foot = new FootLine();
  private final MessageBar messages = new MessageBar();
  private final Panels panels;
  private final Errands errands = new Errands(foot::busy);
  private final FileKeeper keeper;
  private final HandOver handOver;
  private final Menus menus;
  private final ColumnGuide guide;
  private final Timer findingsLater;
  private int pictured;

  DeskWindow(Memory memory, Look look, OpenDesign open, Shelf shelf, Optional<Questions> asked) {
    this.memory = memory;
    this.look = look;
    this.open = open;
    deck = new SheetDeck(open);
    working = new WorkingPane(this::follow, this::backToDefault, this::back);
    findings = new FindingsPane(this::followToFinding);
    panels = new Panels(deck, working, findings, picture, memory);
    Questions questions = asked.orElseGet(() -> new FileQuestions(frame));
    handOver = new HandOver(open, shelf, errands, questions, messages, this::picturedZone);
    keeper =
        new FileKeeper(
            open, shelf, errands, questions, messages, memory, new Curtain(frame.getRootPane()));
    guide = new ColumnGuide(frame, open.book().blueprint(), open.book().system());
    findingsLater = new Timer(FINDINGS_DELAY_MILLIS, event -> refreshFindings());
    findingsLater.setRepeats(false);
    menus = new Menus(this);
    assemble();
    connect();
    replaced();
  }

  private void assemble() {
    JPanel head = new JPanel(new BorderLayout());
    head.add(menus.buttons(), BorderLayout.PAGE_START);
    head.add(messages, BorderLayout.PAGE_END);
    frame.setJMenuBar(menus.bar());
    frame.add(head, BorderLayout.PAGE_START);
    frame.add(panels, BorderLayout.CENTER);
    frame.add(foot, BorderLayout.PAGE_END);
    frame.setIconImages(WindowIcon.images());
    frame.setName("desk");
    frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
    frame.setMinimumSize(UIScale.scale(new Dimension(720, 480)));
  }

  private void connect() {
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            close();
          }
        });
    deck.onSelected(this::selected);
    open.onReplaced(this::replaced);
    open.onChanged(
        changes -> {
          selected();
          findingsLater.restart();
        });
    open.onNamed(this::named);
  }

  private void replaced() {
    trail.clear();
    pictured = 0;
    FileDrop.accept(frame.getRootPane(), keeper::open);
    refreshFindings();
    selected();
    named();
    deck.focusTarget().requestFocusInWindow();
    EventQueue.invokeLater(deck::goToFirstResult);
  }

  private void named() {
    menus.refreshRecent(memory.recent());
    refreshState();
  }

  private void refreshState() {
    frame.setTitle((open.unsaved() ? "• " : "") + open.name() + " – Zonewright");
    frame.getRootPane().putClientProperty("Window.documentModified", open.unsaved());
    foot.state(open);
    menus.refresh();
  }

  private void refreshFindings() {
    List<Finding> found = open.design().findings();
    findings.show(found);
    Map<Place, Severity> worst = new HashMap<>();
    for (Finding finding : found) {
      worst.putIfAbsent(new Place(finding.column(), finding.row()), finding.severity());
    }
    deck.flag(place -> Optional.ofNullable(worst.get(place)));
  }

  private void selected() {
    Optional<Place> current = deck.current();
    current.ifPresentOrElse(place -> working.show(open.book(), place), working::nothing);
    current
        .filter(place -> place.column().table().equals(Sheets.ZONES))
        .ifPresent(place -> pictured = place.row());
    refreshPicture();
    foot.selection(open.book(), deck.front().selected().stream().filter(open::holds).toList());
    working.setMayGoBack(!trail.isEmpty());
    refreshState();
  }

  private Optional<String> picturedZone() {
    return pictured < open.book().rows(Sheets.ZONES)
            && open.book().entry(Facts.ZONE_NAME.reference(), pictured) instanceof Entry.Words name
        ? Optional.of(name.text())
        : Optional.empty();
  }

  private void refreshPicture() {
    int zones = open.book().rows(Sheets.ZONES);
    if (zones == 0) {
      picture.nothing();
      return;
    }
    pictured = Math.min(pictured, zones - 1);
    Reference name = open.book().blueprint().table(Sheets.ZONES).columns().get(0).reference();
    picture.show(
        open.book().cellName(name, pictured).row(), StandingWater.of(open.book(), pictured));
  }

  /** Shows the window as it was left last. */
  void show() {
    Rectangle screen = frame.getGraphicsConfiguration().getBounds();
    int width = Math.min(memory.number("width", 1400), screen.width);
    int height = Math.min(memory.number("height", 900), screen.height);
    frame.setSize(width, height);
    frame.setLocationRelativeTo(null);
    if (memory.word("maximised", "").equals("yes")) {
      frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
    }
    frame.setVisible(true);
    deck.focusTarget().requestFocusInWindow();
  }

  private void follow(Place place) {
    jump(place);
    working.focusTarget().requestFocusInWindow();
  }

  private void followToFinding(Place place) {
    jump(place);
    deck.focusTarget().requestFocusInWindow();
  }

  private void jump(Place place) {
    deck.current().filter(current -> !current.equals(place)).ifPresent(trail::leaves);
    deck.goTo(place);
    selected();
  }

  /** Goes back to the cell that the last link led away from. */
  void back() {
    boolean inWorking = has(working);
    trail.back(open::holds).ifPresent(deck::goTo);
    selected();
    (inWorking ? working.focusTarget() : deck.focusTarget()).requestFocusInWindow();
  }

  boolean mayGoBack() {
    return !trail.isEmpty();
  }

  private void backToDefault(Place place) {
    open.book()
        .perform(open.design().edits().cleared(List.of(place.column()), List.of(place.row())));
  }

  /** Takes the last edit back. */
  void undo() {
    deck.front().finishTyping();
    open.book().undo();
  }

  /** Does again what was taken back. */
  void redo() {
    open.book().redo();
  }

  /** Does something to the selected cells or rows. */
  void perform(GridAction which) {
    boolean typedElsewhere =
        EventQueue.getCurrentEvent() instanceof KeyEvent && (has(working) || has(findings));
    Action action = deck.front().action(which);
    if (!typedElsewhere && action.isEnabled()) {
      Menus.run(action, deck.front().component());
    }
  }

  /** Says whether rows can be added to the sheet at the front. */
  boolean mayAddRows() {
    return open.book().blueprint().table(deck.frontTable()).rows()
        instanceof TableDefinition.Rows.Free;
  }

  /** Puts a new row below the one the person is at and goes there. */
  void newRow() {
    String table = deck.frontTable();
    if (!mayAddRows()) {
      return;
    }
    deck.front().finishTyping();
    int rows = open.book().rows(table);
    int at = deck.current().map(place -> place.row() + 1).orElse(rows);
    open.book().perform(open.design().edits().inserted(table, at, 1));
    Reference first = open.book().blueprint().table(table).columns().get(0).reference();
    deck.goTo(new Place(first, at));
    selected();
  }

  /** Keeps the whole design in the other unit system. */
  void switchUnits() {
    deck.front().finishTyping();
    UnitSystem other = open.book().system() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    open.book().perform(open.design().edits().switched(other));
  }

  /** Asks for a file and opens it. */
  void open() {
    deck.front().finishTyping();
    keeper.openAsked();
  }

  /** Saves the design. */
  void save() {
    deck.front().finishTyping();
    keeper.save(() -> {});
  }

  /** Asks where to save the design. */
  void saveAs() {
    deck.front().finishTyping();
    keeper.saveAs(() -> {});
  }

  /** Returns what writes copies to hand over, with what is being typed finished. */
  HandOver handOver() {
    deck.front().finishTyping();
    return handOver;
  }

  /** Closes the window, unless something would be lost and the person thinks better of it. */
  void close() {
    deck.front().finishTyping();
    keeper.whenSafe(this::dispose);
  }

  private void dispose() {
    boolean whole = (frame.getExtendedState() & JFrame.MAXIMIZED_BOTH) != 0;
    memory.keep("maximised", whole ? "yes" : "no");
    if (!whole) {
      memory.keep("width", frame.getWidth());
      memory.keep("height", frame.getHeight());
    }
    panels.keep();
    findingsLater.stop();
    errands.close();
    frame.dispose();
  }

  /** Goes to the next finding. */
  void nextFinding() {
    deck.front().finishTyping();
    findings.next();
  }

  /** Brings a sheet to the front. */
  void goToSheet(String table) {
    deck.show(table);
    deck.focusTarget().requestFocusInWindow();
  }

  /** Gives the keyboard to the next part of the window. */
  void nextPart() {
    Component next = deck.focusTarget();
    if (has(deck) && working.isShowing()) {
      next = working.focusTarget();
    } else if ((has(deck) || has(working)) && findings.isShowing()) {
      next = findings.focusTarget();
    }
    next.requestFocusInWindow();
  }

  /** Says whether the keyboard is in a part of the window. */
  private static boolean has(Component part) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && SwingUtilities.isDescendingFrom(owner, part);
  }

  /** Shows what the column of the selected cell means. */
  void explainColumn() {
    guide.open(deck.current().map(Place::column), open.book().system());
  }

  void cautions() {
    TextPage.open(frame, Cautions.TITLE, Cautions.TEXT, 560);
  }

  void about() {
    TextPage.open(frame, "About Zonewright", Cautions.ABOUT, 280);
  }

  /** Puts on another look. */
  void dress(Look.Choice choice) {
    look.choose(choice);
    restyle();
  }

  /** Makes the text larger or smaller. */
  void resizeText(int step) {
    look.resize(step);
    restyle();
  }

  private void restyle() {
    guide.restyle();
    selected();
  }

  /** Opens a file given at the start. */
  void open(Path file) {
    keeper.open(file);
  }

  /** Tells a person of a fault of the program, and keeps what is known of it for its makers. */
  void unexpected(Throwable fault) {
    LOG.log(Level.WARNING, "a fault in the window", fault);
    SwingUtilities.invokeLater(
        () ->
            messages.problem(
                "The program made a mistake here; your design is as it was. Save it under another"
                    + " name to be safe.",
                List.of(String.valueOf(fault))));
  }

  FileKeeper keeper() {
    return keeper;
  }

  Look look() {
    return look;
  }

  Panels panels() {
    return panels;
  }

  OpenDesign openDesign() {
    return open;
  }

  SheetView front() {
    return deck.front();
  }

  /** Returns what a person calls a row of the sheet at the front. */
  String frontRowWord() {
    return mayAddRows() ? open.book().blueprint().table(deck.frontTable()).rowWord() : "row";
  }

  JFrame frame() {
    return frame;
  }

  SheetDeck deck() {
    return deck;
  }
}
