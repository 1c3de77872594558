package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class FootLineTest {
  private final FootLine line = new FootLine();

  private JProgressBar bar() {
    return Stream.of(line.getComponents())
        .filter(JProgressBar.class::isInstance)
        .map(JProgressBar.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingMovesInAWindowThatDoesNothing() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          assertThat(bar().isIndeterminate()).isFalse();
          line.busy("Writing …", Optional.empty());
          assertThat(bar().isIndeterminate()).isTrue();
          line.busy("", Optional.empty());
          assertThat(bar().isIndeterminate()).isFalse();
        });
  }
}
