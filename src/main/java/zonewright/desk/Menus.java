package zonewright.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JRadioButtonMenuItem;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.grid.GridAction;
import zonewright.sheet.Edit;
import zonewright.sheet.Journal;
import zonewright.units.UnitSystem;

/** The menus and the few buttons above the sheets. */
final class Menus {
  private static final List<List<GridAction>> EDITS =
      List.of(
          List.of(GridAction.CUT, GridAction.COPY, GridAction.PASTE, GridAction.SELECT_ALL),
          List.of(GridAction.EDIT, GridAction.CLEAR, GridAction.FILL_DOWN, GridAction.FILL_SERIES),
          List.of(
              GridAction.INSERT_ROWS,
              GridAction.DUPLICATE_ROWS,
              GridAction.DELETE_ROWS,
              GridAction.MOVE_ROWS_UP,
              GridAction.MOVE_ROWS_DOWN),
          List.of(GridAction.FIND, GridAction.FIND_NEXT, GridAction.REPLACE));

  private static final List<List<GridAction>> ROWS_AND_COLUMNS =
      List.of(
          List.of(GridAction.SORT, GridAction.FILTER, GridAction.SHOW_ALL_ROWS),
          List.of(
              GridAction.COLUMN_LEFT,
              GridAction.COLUMN_RIGHT,
              GridAction.HIDE_COLUMNS,
              GridAction.FREEZE,
              GridAction.THAW,
              GridAction.FIT_COLUMNS));

  private final DeskWindow window;
  private final JMenuBar bar = new JMenuBar();
  private final JMenu recent = new JMenu("Recent");
  private final Deed undo;
  private final Deed redo;
  private final Deed save;
  private final Deed units;
  private final Deed back;
  private final Deed newRow;
  private final Deed split;
  private final Map<GridAction, Deed> deeds = new EnumMap<>(GridAction.class);
  private final List<Part> parts =
      List.of(
          new Part(menu("File", 'F'), this::file),
          new Part(menu("Edit", 'E'), this::edit),
          new Part(menu("View", 'V'), this::view),
          new Part(menu("Sheet", 'S'), this::sheet),
          new Part(menu("Go", 'G'), this::go),
          new Part(menu("Design", 'D'), this::design),
          new Part(menu("Field", 'I'), this::field),
          new Part(menu("Help", 'H'), this::help));

  Menus(DeskWindow window) {
    this.window = window;
    undo = new Deed("Undo", window.steps()::undo).keys("ctrl Z").drawn(Pictogram.UNDO);
    redo = new Deed("Redo", window.steps()::redo).keys("ctrl Y").drawn(Pictogram.REDO);
    save = new Deed("Save", window::save).keys("ctrl S").drawn(Pictogram.SAVE).tip("Save (Ctrl+S)");
    units = new Deed("Switch units", window.steps()::switchUnits).drawn(Pictogram.UNITS);
    back = new Deed("Back", window::back).keys("alt LEFT").drawn(Pictogram.BACK);
    newRow = new Deed("New row", window.steps()::newRow).drawn(Pictogram.ADD_ROW);
    split =
        new Deed(ZoneSplit.NAME, () -> ZoneSplit.perform(window))
            .tip("Part a zone that draws too much over as many valves as it needs");
    back.setEnabled(false);
    for (Part part : parts) {
      bar.add(part.menu());
    }
  }

  /** A menu and what fills it. */
  private record Part(JMenu menu, Consumer<JMenu> filling) {}

  /** Fills the menus, whose names alone stand in the bar at first; with that their keys work. */
  void fill() {
    parts.forEach(part -> part.filling().accept(part.menu()));
  }

  /** Returns the menu bar. */
  JMenuBar bar() {
    return bar;
  }

  private static JMenu menu(String name, char key) {
    JMenu menu = new JMenu(name);
    menu.setMnemonic(key);
    return menu;
  }

  private void file(JMenu menu) {
    menu.add(
        item(
            new Deed("New …", () -> window.begin(window.openDesign().book().system()))
                .keys("ctrl N")));
    menu.add(item(new Deed("Open …", window::open).keys("ctrl O")));
    menu.add(item(new Deed("Open the demo", window.keeper()::demo)));
    menu.add(recent);
    menu.addSeparator();
    menu.add(item(save));
    menu.add(item(new Deed("Save as …", window::saveAs).keys("ctrl shift S")));
    menu.add(item(new Deed("Back to what was saved", window::revert)));
    JMenu lists = new JMenu("Add zones");
    lists.add(item(new Deed("From a list (CSV) …", () -> window.lists().readAsked())));
    lists.add(item(new Deed("From what was copied …", () -> window.lists().paste())));
    menu.add(lists);
    JMenu handOver = new JMenu("Hand over");
    handOver.add(item(new Deed("Whole pack …", () -> window.handOver().whole())));
    handOver.add(item(new Deed("Chosen sheets …", () -> window.handOver().chosen())));
    handOver.add(item(new Deed("Copy for the client …", () -> window.handOver().forClient())));
    handOver.add(item(new Deed("Pages to print (PDF) …", () -> window.handOver().pages())));
    handOver.add(item(new Deed("Nights as a calendar …", () -> window.handOver().calendar())));
    menu.add(handOver);
    menu.addSeparator();
    menu.add(item(new Deed("Print the sheet …", window::print).keys("ctrl P")));
    menu.add(item(new Deed("Export picture …", window::exportPicture).keys("ctrl E")));
    menu.addSeparator();
    menu.add(item(new Deed("Quit", window::close).keys("ctrl Q")));
  }

  private void edit(JMenu menu) {
    menu.add(item(undo));
    menu.add(item(redo));
    groups(menu, EDITS);
  }

  private void go(JMenu menu) {
    new GoMenu(window, back).fill(menu);
  }

  private void groups(JMenu menu, List<List<GridAction>> groups) {
    for (List<GridAction> group : groups) {
      menu.addSeparator();
      for (GridAction which : group) {
        Deed deed = new Deed(which.label(), () -> window.perform(which));
        which.key().ifPresent(key -> deed.putValue(Action.ACCELERATOR_KEY, key));
        deeds.put(which, deed);
        menu.add(item(deed));
      }
    }
  }

  /** What is shown of a sheet: its columns in a view, its rows sorted and filtered. */
  private void sheet(JMenu menu) {
    menu.add(
        item(new Deed("Next view", () -> window.deck().tools().nextView()).keys("ctrl shift V")));
    menu.add(item(new Deed("Keep this view as my own …", () -> window.deck().tools().keepView())));
    groups(menu, ROWS_AND_COLUMNS);
  }

  private void view(JMenu menu) {
    ButtonGroup looks = new ButtonGroup();
    for (Look.Choice choice : Look.Choice.values()) {
      JRadioButtonMenuItem item =
          new JRadioButtonMenuItem(new Deed(choice.words(), () -> window.dress(choice)));
      item.setSelected(window.look().choice() == choice);
      looks.add(item);
      menu.add(item);
    }
    menu.addSeparator();
    menu.add(item(new Deed("Larger text", () -> window.resizeText(1)).keys("ctrl PERIOD")));
    menu.add(item(new Deed("Smaller text", () -> window.resizeText(-1)).keys("ctrl COMMA")));
    menu.add(item(new Deed("Usual text", () -> window.resizeText(0)).keys("ctrl 0")));
    menu.addSeparator();
    menu.add(shown("Working", window.panels()::showWorking));
    menu.add(shown("Findings", window.panels()::showFindings));
    menu.add(item(new Deed("Next picture", window::nextPicture).keys("ctrl shift P")));
    menu.add(item(new Deed("Next part of the window", window::nextPart).keys("F6")));
  }

  private static JCheckBoxMenuItem shown(String name, Consumer<Boolean> show) {
    JCheckBoxMenuItem item = new JCheckBoxMenuItem("Show " + name.toLowerCase(Locale.ROOT), true);
    item.addItemListener(event -> show.accept(item.isSelected()));
    return item;
  }

  private void design(JMenu menu) {
    menu.add(item(units));
    menu.add(item(nextFinding()));
    menu.add(item(new Deed("Put the finding right", window.mending()::mendFinding).keys("F9")));
    menu.add(item(new Deed("The nights", window::showNights).keys("ctrl T")));
    menu.add(item(split));
    menu.add(item(new Deed(ZoneSplit.ALL, () -> ZoneSplit.performAll(window, window.messages()))));
    menu.addSeparator();
    menu.add(item(new Deed("Take the zones as found", () -> window.pricing().takeAsFound())));
    menu.add(item(new Deed("Propose the zones as found", () -> window.pricing().proposeAsFound())));
    menu.add(item(new Deed("Read a price book …", () -> window.pricing().readPrices())));
    menu.add(item(new Deed("Write the price book …", () -> window.pricing().writePrices())));
  }

  private Deed nextFinding() {
    return new Deed("Next finding", window.mending()::nextFinding)
        .keys("F8")
        .drawn(Pictogram.NEXT_FINDING)
        .tip("Go to the next finding (F8)");
  }

  private void field(JMenu menu) {
    FieldWork field = new FieldWork(window);
    menu.add(item(new Deed("Paste cans from a grid", field::pasteCans)));
    menu.add(item(new Deed("Let the zone go by this test", field::useTest)));
    menu.add(item(new Deed("No longer go by this test", field::dropTest)));
    menu.addSeparator();
    menu.add(item(new Deed("Take the advice of the tuning log", field::takeAdvice)));
  }

  private void help(JMenu menu) {
    menu.add(item(new Deed("What this column means", window::explainColumn).keys("F1")));
    menu.add(item(new Deed("Cautions", () -> Cautions.open(window.frame()))));
    menu.addSeparator();
    menu.add(item(new Deed("About Zonewright", () -> Cautions.openAbout(window.frame()))));
  }

  static JMenuItem item(Deed deed) {
    JMenuItem item = new JMenuItem(deed);
    item.setIcon(null);
    item.setToolTipText(null);
    return item;
  }

  /** Returns the buttons above the sheets. */
  JComponent buttons() {
    JPanel panel = new JPanel(new MigLayout("insets 6 10 4 10, gap 2", "", "[]"));
    panel.setName("buttons");
    panel.add(
        button(
            new Deed("Open", window::open).drawn(Pictogram.OPEN).tip("Open a design (Ctrl+O)"),
            "Open"));
    panel.add(button(save, "Save"), "gapright 14");
    panel.add(button(undo, "Undo"));
    panel.add(button(redo, "Redo"), "gapright 14");
    panel.add(button(newRow, ""), "gapright 14");
    panel.add(button(nextFinding(), "Next finding"));
    panel.add(
        button(
            new Deed("What is this?", window::explainColumn)
                .drawn(Pictogram.HELP)
                .tip("What the column means, its equation and its source (F1)"),
            "What is this?"),
        "pushx");
    panel.add(button(units, ""), "wmin 40");
    panel.setBorder(BorderFactory.createEmptyBorder());
    return panel;
  }

  /** A button with its own fixed text, or that of the deed where {@code text} is empty. */
  private static JButton button(Deed deed, String text) {
    JButton button = new JButton();
    if (!text.isEmpty()) {
      button.setHideActionText(true);
    }
    button.setAction(deed);
    if (!text.isEmpty()) {
      button.setText(text);
      button.getAccessibleContext().setAccessibleName(text);
    }
    button.setName("button " + deed.getValue(Action.NAME));
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.setFocusable(true);
    return button;
  }

  /** Brings names and what can be done up to date. */
  void refresh() {
    Journal journal = window.openDesign().book().journal();
    named(undo, "Undo", "Ctrl+Z", journal.toUndo());
    named(redo, "Redo", "Ctrl+Y", journal.toRedo());
    boolean metric = window.openDesign().book().system() == UnitSystem.SI;
    UnitSystem other = metric ? UnitSystem.US : UnitSystem.SI;
    units.rename("Switch to " + other.words());
    units.tip("Keep the whole design in " + other.words() + "; can be undone");
    back.setEnabled(window.mayGoBack());
    split.setEnabled(ZoneSplit.possible(window));
    String word = window.steps().frontRowWord();
    newRow.rename("New " + word);
    newRow.tip("Put a new " + word + " below the one selected");
    newRow.setEnabled(window.steps().mayAddRows());
    deeds.forEach((which, deed) -> deed.setEnabled(window.front().action(which).isEnabled()));
  }

  private static void named(Deed deed, String verb, String keys, Optional<Edit> edit) {
    deed.setEnabled(edit.isPresent());
    deed.rename(edit.map(found -> verb + " " + found.name()).orElse(verb));
    deed.tip(deed.getValue(Action.NAME) + " (" + keys + ")");
  }

  /** Brings the list of recent files up to date. */
  void refreshRecent(List<Path> files) {
    recent.removeAll();
    for (Path file : files) {
      Deed deed = new Deed(file.getFileName().toString(), () -> window.keeper().open(file));
      JMenuItem item = item(deed);
      item.setToolTipText(file.toString());
      recent.add(item);
    }
    recent.setEnabled(!files.isEmpty());
  }

  /** Runs a deed of a view as if a person had asked for it there. */
  static void run(Action action, JComponent source) {
    action.actionPerformed(new ActionEvent(source, ActionEvent.ACTION_PERFORMED, ""));
  }
}
