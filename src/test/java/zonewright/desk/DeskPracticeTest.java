package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Practice in a window of its own: answered, marked, solved, and a set for a class. */
@Tag("window")
@CacioTest
class DeskPracticeTest {
  private final DeskDriver desk = new DeskDriver();

  @BeforeEach
  void open() {
    desk.press("ctrl shift E");
    desk.waitUntil("the window", () -> desk.dialogIsOpen("practice"));
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private String marks() {
    return desk.inDialog("practice", "practice marks")
        .getAccessibleContext()
        .getAccessibleDescription();
  }

  private void answer(String text) {
    desk.act(
        () -> {
          JTextField field = (JTextField) desk.inDialog("practice", "practice answer");
          field.setText(text);
          field.postActionEvent();
        });
  }

  /** The first exercise of seed 1 is 11 gpm on 2620 ft²: 96.25 × 11 ÷ 2620 = 0.404 in/h. */
  @Test
  void anAnswerIsMarkedWithTheStepWhereItWentWrong() {
    answer("");
    assertThat(marks()).isEqualTo("Write an answer first.");
    answer("0.0042 in/h");
    assertThat(marks())
        .startsWith("Not right. The factor of the units is missing: 96.25.")
        .contains("Look at this step: Rate by area");
    answer("0.404 in/h");
    assertThat(marks()).isEqualTo("Right.");
    desk.clickInDialog("practice", "Show the solution");
    assertThat(marks()).startsWith("Answer: 0.404 in/h").contains("= 96.25 × 11 gpm ÷ 2,620 ft²");
  }

  @Test
  void aTopicIsChosenAndASetForAClassIsWritten(@TempDir Path folder) {
    desk.act(
        () -> ((JComboBox<?>) desk.inDialog("practice", "practice topic")).setSelectedIndex(10));
    Path file = folder.resolve("solutions.pdf");
    desk.questions.file = Optional.of(file);
    desk.clickInDialog("practice", "Solutions …");
    desk.waitUntil("the solutions", () -> Files.exists(file) && Files.size(file) > 10_000);
    assertThat(desk.questions.asked.get(0)).endsWith("-solutions.pdf");
  }
}
