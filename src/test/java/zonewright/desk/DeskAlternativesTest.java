package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import javax.swing.JButton;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;

/** Alternatives in their window, while one types into the sheets. */
@Tag("window")
@CacioTest
class DeskAlternativesTest {
  private static final String WINDOW = "alternatives";

  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private void click(String button) {
    desk.act(() -> ((JButton) desk.inDialog(WINDOW, button)).doClick());
  }

  private String table(String name, int row, int column) {
    return desk.ask(
        () -> {
          JTable table = (JTable) desk.inDialog(WINDOW, name);
          return row < table.getRowCount() && column < table.getColumnCount()
              ? (String) table.getValueAt(row, column)
              : "";
        });
  }

  private double area() {
    return desk.ask(() -> desk.book().number(Emitters.AREA.reference(), 0));
  }

  private void copyAs(String name) {
    desk.act(() -> desk.dialogField(WINDOW, "name of the alternative").setText(name));
    click("copy as alternative");
  }

  @Test
  void anAlternativeIsCopiedChangedComparedLeftAndTaken() {
    double before = area();
    desk.press("ctrl shift A");
    desk.waitUntil("the window", () -> desk.dialogIsOpen(WINDOW));
    copyAs("Less turf");
    desk.act(
        () ->
            desk.book()
                .perform(
                    new zonewright.sheet.Edits(desk.book())
                        .typed(Emitters.AREA.reference(), 0, "500 ft2")));
    desk.waitUntil(
        "the figures are there", () -> table("figures side by side", 0, 2).startsWith("* "));
    desk.waitUntil(
        "the change is told", () -> table("changes of the alternative", 0, 4).equals("500 ft²"));
    assertThat(table("changes of the alternative", 0, 3)).isEqualTo("2250 ft²");
    click("work in alternative");
    assertThat(area()).isEqualTo(before);
    click("take alternative");
    assertThat(area()).isEqualTo(500);
    desk.waitUntil("none is left", () -> table("figures side by side", 0, 2).isEmpty());
    desk.act(() -> desk.book().undo());
    assertThat(area()).isEqualTo(before);
  }

  @Test
  void aNameThatWillNotDoIsToldInTheWindow() {
    desk.press("ctrl shift A");
    desk.waitUntil("the window", () -> desk.dialogIsOpen(WINDOW));
    copyAs(" ");
    String told =
        desk.ask(
            () ->
                ((javax.swing.text.JTextComponent) desk.inDialog(WINDOW, "alternatives message"))
                    .getText());
    assertThat(told).startsWith("An alternative needs a name");
    assertThat(desk.ask(() -> desk.book().journal().toUndo().isEmpty())).isTrue();
  }
}
