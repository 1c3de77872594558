package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to do after the first weeks, at the command line. */
class FirstWeeksCommandTest {
  @TempDir Path folder;

  @Test
  void theThreeChoicesArePrintedWithWhatWasSeen() {
    CommandRun run = CommandRun.of("first-weeks", "--sample", "library-garden");
    assertThat(run.code()).isEqualTo(ExitCode.FINE);
    assertThat(run.out())
        .contains("1. Everything is too wet", "2. One zone or two", "3. The setting of the site");
  }

  @Test
  void thePageHasThemTooAndRoomToWrite() throws IOException {
    Path page = folder.resolve("weeks.pdf");
    String[] words = {"first-weeks", "--sample", "library-garden", "--pdf", page.toString()};
    assertThat(CommandRun.of(words).code()).isEqualTo(ExitCode.FINE);
    try (PDDocument document = Loader.loadPDF(page.toFile())) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(text)
          .contains("This is where things stand", "Dry, right or wet", "West slope ground cover");
    }
    assertThat(CommandRun.of(words).code()).isEqualTo(ExitCode.FILE);
  }

  @Test
  void anotherEndingIsRefused() {
    assertThat(CommandRun.of("first-weeks", "--pdf", "weeks.doc").code()).isEqualTo(ExitCode.USAGE);
  }
}
