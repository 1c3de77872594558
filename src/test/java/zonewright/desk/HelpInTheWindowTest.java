package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.BadLocationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.desk.help.HelpView;
import zonewright.emitters.Emitters;

/** Help opens inside the program at the column that has the focus, and its links lead on. */
@Tag("window")
@CacioTest
class HelpInTheWindowTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private static <T extends Component> T named(Container in, Class<T> type, String name) {
    for (Component child : in.getComponents()) {
      if (type.isInstance(child) && name.equals(child.getName())) {
        return type.cast(child);
      }
      T below = child instanceof Container more ? named(more, type, name) : null;
      if (below != null) {
        return below;
      }
    }
    return null;
  }

  private static Container guide() {
    for (Window window : Window.getWindows()) {
      if ("column guide".equals(window.getName()) && window.isShowing()) {
        return window;
      }
    }
    throw new AssertionError("the help is not open");
  }

  private String text() {
    return desk.ask(
        () -> {
          HelpView view = named(guide(), HelpView.class, "help page");
          try {
            return view.getDocument().getText(0, view.getDocument().getLength());
          } catch (BadLocationException problem) {
            throw new AssertionError(problem);
          }
        });
  }

  private void follow(String link) {
    desk.act(
        () -> {
          HelpView view = named(guide(), HelpView.class, "help page");
          view.fireHyperlinkUpdate(
              new HyperlinkEvent(view, HyperlinkEvent.EventType.ACTIVATED, null, link));
        });
  }

  @Test
  void theKeyForHelpOpensThePageOfTheColumnAndLinksLeadOnAndBack() {
    desk.goTo(Emitters.RATE_BY_AREA, 2);
    desk.press("F1");
    assertThat(text()).contains("Rate by area", "Zone flow ÷ Area", "Ohio State");
    follow("#area");
    assertThat(text()).contains("Area").doesNotContain("Zone flow ÷ Area");
    follow("columns-site.html#available-flow");
    assertThat(text()).contains("Available flow");
    follow("index.html");
    assertThat(text()).contains("How to size a zone", "Reference checks");
    follow("cycle-and-soak.html");
    assertThat(text()).contains("Cycle and soak");
    desk.act(() -> named(guide(), JButton.class, "back").doClick());
    desk.act(() -> named(guide(), JButton.class, "back").doClick());
    assertThat(text()).contains("Available flow");
  }

  @Test
  void aColumnIsFoundByWhatPeopleCallIt() {
    desk.goTo(Emitters.RATE_BY_AREA, 2);
    desk.press("F1");
    desk.act(() -> named(guide(), JTextField.class, "find a column").setText("friction loss"));
    String first =
        desk.ask(
            () ->
                String.valueOf(named(guide(), JList.class, "columns").getModel().getElementAt(0)));
    assertThat(first).isEqualTo("Pipes  ·  Lateral friction");
  }
}
