package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.sheet.Edits;
import zonewright.soil.Soils;
import zonewright.water.CycleAndSoak;
import zonewright.water.InputRange;

/** Ranges typed at the keyboard, and the window of what follows from them. */
@Tag("window")
@CacioTest
class DeskSureTest {
  private static final String WINDOW = "how sure";
  private static final InputRange INTAKE =
      InputRange.of(Soils.INTAKE_RATE.reference()).orElseThrow();

  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private double greatest() {
    return desk.ask(() -> desk.book().number(INTAKE.greatest().reference(), 6));
  }

  private JTable zones() {
    return desk.dialogTable(WINDOW, "sure zones");
  }

  /** To be asked for where windows are made. */
  private String cycles(int row) {
    JTable table = (JTable) desk.inDialog(WINDOW, "sure zones");
    return table.getRowCount() <= row ? "" : table.getValueAt(row, 4).toString();
  }

  @Test
  void aRangeIsTypedByKeysAndTheWindowFollowsIt() {
    desk.press("ctrl shift R");
    desk.waitUntil("the window", () -> desk.dialogIsOpen(WINDOW));
    desk.waitUntil("the spans are there", () -> cycles(6).equals("2–7"));
    JTable zones = zones();
    desk.act(() -> zones.setRowSelectionInterval(6, 6));
    assertThat(desk.ask(() -> desk.dialogField(WINDOW, "sure words").getText()))
        .startsWith("Zone 7")
        .contains(
            "Measure the width that drip wets (digging for roots): cycles lie between 3 and 7");
    desk.act(() -> SwingUtilities.getWindowAncestor(zones).setVisible(false));

    desk.goTo(Soils.INTAKE_RATE, 6);
    desk.press("ctrl R");
    desk.waitUntil("the form", () -> desk.dialogIsOpen("range"));
    desk.act(() -> desk.dialogField("range", "range typed").setText("0.2 to 0.1"));
    desk.act(() -> ((JButton) desk.inDialog("range", "range Keep")).doClick());
    assertThat(desk.ask(() -> desk.dialogField("range", "range problem").getText()))
        .startsWith("The least comes first");
    desk.act(() -> desk.dialogField("range", "range typed").setText("0.2 to 0.9 in/h"));
    desk.act(() -> ((JButton) desk.inDialog("range", "range Keep")).doClick());
    desk.waitUntil("it is kept", () -> !desk.dialogIsOpen("range"));
    assertThat(greatest()).isEqualTo(0.9);

    desk.press("ctrl shift R");
    desk.waitUntil("the spans are those of the new range", () -> cycles(6).equals("1–7"));
    desk.act(() -> desk.book().undo());
    desk.waitUntil("an edit is followed", () -> cycles(6).equals("2–7"));
    assertThat(greatest()).isNaN();
  }

  private String working() {
    return desk.shown("working page").getAccessibleContext().getAccessibleDescription();
  }

  private String foot() {
    return ((JLabel) desk.shown("selection summary")).getText();
  }

  /** Only where somebody typed a range: published ones lie under every answer. */
  @Test
  void theWorkingOfACellSaysWhatItLiesBetweenWhereARangeWasTypedBelowIt() {
    desk.goTo(CycleAndSoak.CYCLES, 6);
    desk.waitUntil("the working", () -> working().startsWith("zone 7, Cycles"));
    assertThat(desk.ask(this::working)).doesNotContain("Over the ranges");

    desk.act(
        () ->
            desk.book()
                .perform(
                    new Edits(desk.book()).typed(INTAKE.greatest().reference(), 6, "0.9 in/h")));
    String said = "Over the ranges of its inputs it lies between 1 and 7";
    desk.waitUntil("the span", () -> working().contains(said));
    desk.waitUntil("the foot line too", () -> foot().startsWith(said));
    desk.goTo(Soils.INTAKE_RATE, 6);
    desk.waitUntil(
        "the range", () -> foot().startsWith("Its range, as typed: 0.2 in/h to 0.9 in/h."));
    desk.goTo(CycleAndSoak.CYCLE_MINUTES, 6);
    desk.waitUntil("any number of the zone", () -> foot().startsWith("Over the ranges"));
    desk.goTo(CycleAndSoak.CYCLES, 5);
    desk.waitUntil("the working of another", () -> working().startsWith("zone 6, Cycles"));
    assertThat(desk.ask(this::working)).doesNotContain("Over the ranges");
  }

  @Test
  void oneRangeIsTypedForAllCellsSelectedAndTakenBackInOneStep() {
    desk.goTo(Soils.INTAKE_RATE, 5);
    desk.press("shift DOWN");
    desk.press("ctrl R");
    desk.waitUntil("the form", () -> desk.dialogIsOpen("range"));
    desk.act(() -> desk.dialogField("range", "range typed").setText("± 50 %"));
    desk.act(() -> ((JButton) desk.inDialog("range", "range Keep")).doClick());

    assertThat(greatest()).isCloseTo(0.3, offset(1e-9));
    assertThat(desk.ask(() -> desk.book().number(INTAKE.least().reference(), 5)))
        .isCloseTo(0.175, offset(1e-9));
    desk.act(() -> desk.book().undo());
    assertThat(greatest()).isNaN();
    assertThat(desk.ask(() -> desk.book().journal().toUndo().isEmpty())).isTrue();
  }

  @Test
  void ofACellThatIsCalculatedItSaysWhyNot() {
    desk.goTo(CycleAndSoak.CYCLES, 6);
    desk.choose("Range of this input");
    desk.waitUntil(
        "it is said",
        () -> desk.window().messages().sentence().startsWith("Cycles can be given no range."));
  }
}
