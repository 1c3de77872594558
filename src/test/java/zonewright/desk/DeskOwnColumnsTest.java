package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.util.List;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.JViewport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.design.OwnColumnDraft;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;
import zonewright.sheet.Remark;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/** The window in which a person adds a column of their own, and the sheets that show it. */
@Tag("window")
@CacioTest
class DeskOwnColumnsTest {
  private static final String WINDOW = "own column";

  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private void open() {
    desk.press("ctrl shift N");
    desk.waitUntil("the window", () -> desk.dialogIsOpen(WINDOW));
  }

  private void write(String name, String kind, String equation) {
    desk.act(
        () -> {
          desk.dialogField(WINDOW, "own name").setText(name);
          ((JComboBox<?>) desk.inDialog(WINDOW, "own kind")).setSelectedItem(kind);
          desk.dialogField(WINDOW, "own equation").setText(equation);
        });
  }

  private String said() {
    return desk.dialogField(WINDOW, "own result").getText();
  }

  private JButton put() {
    return (JButton) desk.inDialog(WINDOW, "put own column");
  }

  private List<String> headings() {
    JTable grid = (JTable) desk.shown("grid zones");
    return java.util.stream.IntStream.range(0, grid.getColumnCount())
        .mapToObj(grid::getColumnName)
        .toList();
  }

  private Column own() {
    TableDefinition zones = desk.book().schema().table(Sheets.ZONES);
    return zones.columns().get(zones.columns().size() - 1);
  }

  @Test
  void aColumnIsWrittenByKeysStandsInTheGridAtOnceAndUndoTakesItBack() {
    desk.goTo(Emitters.AREA, 2);
    open();
    desk.write("Watt");
    desk.press("TAB");
    desk.press("TAB");
    desk.press("TAB");
    desk.press("TAB");
    desk.write("2*3");
    desk.waitUntil("it says what it gives", () -> said().equals("zone 3: 6"));
    desk.press("ENTER");
    desk.waitUntil("the grid has it", () -> headings().contains("Watt"));
    assertThat(desk.ask(() -> desk.dialogIsOpen(WINDOW))).isFalse();
    assertThat(desk.ask(() -> desk.book().number(own().reference(), 2))).isEqualTo(6);
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 2));
    assertThat(desk.ask(() -> desk.window().messages().sentence()))
        .isEqualTo("“Watt” stands behind the other columns of Zones.");
    desk.press("ctrl Z");
    desk.waitUntil("it is gone", () -> !headings().contains("Watt"));
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 2));
    desk.press("ctrl Y");
    desk.waitUntil("it is back", () -> headings().contains("Watt"));
  }

  @Test
  void whatIsWrongIsSaidWhileOneWritesAndWhatIsOfferedIsPutIn() {
    desk.goTo(Emitters.AREA, 0);
    open();
    write("Rate", "rate", "Zone flwo / Area");
    desk.waitUntil("the name is offered", () -> said().contains("There is no column “Zone flwo”"));
    assertThat(desk.ask(() -> put().isEnabled())).isFalse();
    desk.act(
        () -> {
          java.awt.Container offers = (java.awt.Container) desk.inDialog(WINDOW, "own offers");
          ((JButton) offers.getComponent(0)).doClick();
        });
    desk.waitUntil("it gives a number", () -> put().isEnabled());
    assertThat(desk.ask(() -> desk.dialogField(WINDOW, "own equation").getText()))
        .isEqualTo("Zone flow / Area");
    write("Rate", "time in minutes", "Zone flow / Area");
    desk.waitUntil("the kind is wrong", () -> said().startsWith("The equation gives a rate"));
  }

  @Test
  void aColumnIsChangedWhereItStandsAndTakenAway() {
    desk.goTo(Emitters.AREA, 1);
    open();
    write("Double", "area", "Area * 2");
    desk.waitUntil("it can be added", () -> put().isEnabled());
    desk.act(() -> put().doClick());
    desk.waitUntil("the grid has it", () -> headings().contains("Double (ft²)"));
    Column added = desk.ask(this::own);
    desk.goTo(added, 1);
    open();
    assertThat(desk.ask(() -> put().getText())).isEqualTo("Change");
    write("Double", "area", "Area * 3");
    desk.waitUntil("it can be changed", () -> put().isEnabled());
    desk.act(() -> put().doClick());
    double area = desk.ask(() -> desk.book().number(Emitters.AREA.reference(), 1));
    desk.waitUntil("it is thrice", () -> desk.book().number(own().reference(), 1) == 3 * area);
    desk.goTo(desk.ask(this::own), 1);
    open();
    desk.act(() -> ((JButton) desk.inDialog(WINDOW, "take own column away")).doClick());
    desk.waitUntil("it is gone", () -> !headings().contains("Double (ft²)"));
  }

  private JTable grid() {
    return (JTable) desk.shown("grid zones");
  }

  private List<Object> asAPersonLeftIt() {
    return desk.ask(
        () -> {
          JTable grid = grid();
          return List.of(
              ((JViewport) grid.getParent()).getViewPosition(),
              grid.getRowCount(),
              grid.getSelectedRow(),
              grid.getSelectedColumn(),
              grid.getColumnModel().getColumn(1).getWidth(),
              headings().subList(0, 6));
        });
  }

  private void perform(Function<Book, Edit> edit) {
    desk.act(() -> desk.book().perform(edit.apply(desk.book())));
  }

  private static OwnColumnDraft draft(String name, String equation) {
    return new OwnColumnDraft(name, "Zones", "area", equation, "", "", "", "");
  }

  /**
   * Hidden columns, their order and widths, a filter, what is selected and how far it is scrolled.
   */
  @Test
  void whateverAPersonChoseInTheGridStaysWhenColumnsComeChangeAndGo() {
    perform(book -> draft("Older", "Area / 2").added(book));
    desk.waitUntil("the grid has it", () -> headings().contains("Older (ft²)"));
    desk.goTo(Emitters.AREA, 8);
    desk.act(
        () -> {
          JTable grid = grid();
          grid.getColumnModel().getColumn(1).setPreferredWidth(171);
          grid.getColumnModel().getColumn(1).setWidth(171);
          grid.moveColumn(4, 3);
          int area = grid.getSelectedColumn();
          grid.changeSelection(8, area - 1, false, false);
        });
    desk.press("ctrl 0");
    desk.goTo(Emitters.ZONE_FLOW, 8);
    desk.press("ctrl shift F");
    desk.act(
        () -> {
          ((JComboBox<?>) desk.shown("filter relation")).setSelectedIndex(0);
          ((JTextField) desk.shown("filter text")).setText("5");
        });
    desk.waitUntil("rows are hidden", () -> grid().getRowCount() < 12);
    desk.goTo(Emitters.ZONE_FLOW, 8);
    List<Object> before = asAPersonLeftIt();
    JTable same = desk.ask(this::grid);
    perform(book -> draft("Newer", "Area / 3").added(book));
    desk.waitUntil("the grid has it", () -> headings().contains("Newer (ft²)"));
    assertThat(asAPersonLeftIt()).isEqualTo(before);
    perform(book -> draft("Old one", "Area / 2").changed(book, 0));
    desk.waitUntil("it is named otherwise", () -> headings().contains("Old one (ft²)"));
    assertThat(desk.ask(this::headings).indexOf("Old one (ft²)"))
        .isEqualTo(desk.ask(this::headings).indexOf("Newer (ft²)") - 1);
    assertThat(asAPersonLeftIt()).isEqualTo(before);
    perform(book -> OwnColumnDraft.removed(book, 0));
    desk.waitUntil("it is gone", () -> !headings().contains("Old one (ft²)"));
    assertThat(asAPersonLeftIt()).isEqualTo(before);
    assertThat(desk.ask(this::grid)).isSameAs(same);
    double area = desk.ask(() -> desk.book().number(Emitters.AREA.reference(), 0));
    assertThat(desk.ask(() -> desk.book().number(own().reference(), 0))).isEqualTo(area / 3);
    desk.press("ctrl Z");
    desk.waitUntil("it is back", () -> headings().contains("Old one (ft²)"));
    assertThat(asAPersonLeftIt()).isEqualTo(before);
  }

  @Test
  void notesAndColoursAreForItsCellsToo() {
    perform(book -> draft("Half", "Area / 2").added(book));
    Column half = desk.ask(this::own);
    desk.goTo(half, 2);
    desk.press("shift F2");
    desk.waitUntil("the form is there", () -> desk.dialogIsOpen("note"));
    desk.act(() -> desk.inDialog("note", "note words").requestFocus());
    desk.write("half will do");
    desk.press("ctrl ENTER");
    assertThat(desk.ask(() -> desk.book().remark(half.reference(), 2).note()))
        .isEqualTo("half will do");
    desk.press("ctrl Z");
    assertThat(desk.ask(() -> desk.book().remark(half.reference(), 2))).isEqualTo(Remark.NONE);
  }

  @Test
  void aFormOfOneRowHasItsLineAtOnceAndStaysWhereItWas() {
    desk.goTo(Facts.PREPARED_BY, 0);
    JTable form = desk.ask(() -> (JTable) desk.shown("grid site"));
    int lines = desk.ask(form::getRowCount);
    perform(book -> new OwnColumnDraft("Price", "Site", "money", "2", "", "", "", "").added(book));
    desk.waitUntil("it has a line", () -> form.getRowCount() > lines);
    assertThat(desk.current().column()).isEqualTo(Facts.PREPARED_BY.reference());
    desk.press("ctrl Z");
    desk.waitUntil("it is gone", () -> form.getRowCount() == lines);
    assertThat(desk.current().column()).isEqualTo(Facts.PREPARED_BY.reference());
  }
}
