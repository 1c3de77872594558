package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.soil.Soils;
import zonewright.water.CycleAndSoak;

/** The window that finds what to type into a cell, so that an answer is as wanted. */
@Tag("window")
@CacioTest
class DeskInputTest {
  private static final String WINDOW = "find the input";

  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private void open() {
    desk.goTo(Soils.INTAKE_RATE, 6);
    desk.press("ctrl I");
    desk.waitUntil("the window", () -> desk.dialogIsOpen(WINDOW));
  }

  private String found() {
    return desk.ask(() -> desk.dialogField(WINDOW, "input found").getText());
  }

  private void want(String answer, int goal, String number) {
    desk.act(
        () -> {
          desk.dialogField(WINDOW, "answer sought").setText(answer);
          ((JComboBox<?>) desk.inDialog(WINDOW, "goal")).setSelectedIndex(goal);
          desk.dialogField(WINDOW, "wanted").setText(number);
        });
  }

  private JButton set() {
    return (JButton) desk.inDialog(WINDOW, "set the input");
  }

  @Test
  void whatIsFoundIsShownWhileOneAsksAndSetInOneStep() {
    open();
    want("Cycles", 0, "2");
    desk.waitUntil("it is found", () -> set().isEnabled());

    assertThat(found())
        .startsWith("zone 7, Intake rate: from 0.2 in/h to ")
        .contains("zone 7, Cycles: from 3 to 2, where at most 2 is wanted", "in/h or more");
    double before = desk.ask(() -> desk.book().number(Soils.INTAKE_RATE.reference(), 6));
    desk.act(() -> set().doClick());
    assertThat(desk.ask(() -> desk.book().number(CycleAndSoak.CYCLES.reference(), 6))).isEqualTo(2);
    desk.waitUntil("that is told", () -> found().startsWith("zone 7, Cycles is 2 already"));
    assertThat(desk.ask(() -> set().isEnabled())).isFalse();
    desk.act(() -> desk.book().undo());
    assertThat(desk.ask(() -> desk.book().number(Soils.INTAKE_RATE.reference(), 6)))
        .isEqualTo(before);
    assertThat(desk.ask(() -> desk.book().journal().toUndo().isEmpty())).isTrue();
  }

  @Test
  void theAnswersAreThoseThatFollowAndTheNumberIsReadWithItsUnit() {
    open();
    desk.waitUntil(
        "only what follows is offered",
        () -> {
          String all = ((JList<?>) desk.inDialog(WINDOW, "answers")).getModel().toString();
          return all.contains("Longest cycle") && !all.contains("Rate by area");
        });
    want("Longest cycle", 1, "3 gal");
    desk.waitUntil("the unit is refused", () -> found().contains("the unit “gal”"));
    want("no such thing at all", 1, "3");
    desk.waitUntil("nothing is called so", () -> found().startsWith("No answer that follows"));
    want("Cycles", 1, "5000");
    desk.waitUntil("none is told", () -> found().startsWith("None in range"));
    assertThat(desk.ask(() -> set().isEnabled())).isFalse();
  }

  @Test
  void ofACellThatIsCalculatedItSaysWhyNot() {
    desk.goTo(CycleAndSoak.CYCLES, 6);
    desk.choose("Find the input");
    desk.waitUntil(
        "it is said",
        () ->
            desk.window()
                .messages()
                .sentence()
                .startsWith("zone 7, Cycles is calculated, so nothing"));
    assertThat(desk.dialogIsOpen(WINDOW)).isFalse();
  }

  @Test
  void rowsThatComeOrGoAreFollowed() {
    open();
    want("Cycles", 0, "2");
    desk.waitUntil("it is found", () -> set().isEnabled());
    desk.act(
        () -> desk.book().perform(new zonewright.sheet.Edits(desk.book()).removed("zones", 7, 3)));
    desk.waitUntil("it is found anew", () -> set().isEnabled());
    assertThat(desk.ask(() -> ((JComboBox<?>) desk.inDialog(WINDOW, "answer row")).getItemCount()))
        .isEqualTo(desk.ask(() -> desk.book().rows("zones")));
  }
}
