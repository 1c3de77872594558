package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.sheet.Column;
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
    assertThat(desk.current().row()).isEqualTo(2);
    desk.press("ctrl Z");
    desk.waitUntil("it is gone", () -> !headings().contains("Watt"));
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
}
