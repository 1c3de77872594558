package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

/** The handover pack at the command line. */
class HandoverCommandTest {
  @TempDir Path folder;

  @Test
  void aDesignFileBecomesPages() throws IOException {
    Path pages = folder.resolve("garden.pdf");
    CommandRun run = CommandRun.of("handover", pages.toString(), "--sample", "library-garden");
    assertThat(run.code()).isEqualTo(ExitCode.FINE);
    assertThat(run.firstLine()).isEqualTo("Written: " + pages);
    try (PDDocument document = Loader.loadPDF(pages.toFile())) {
      assertThat(document.getNumberOfPages()).isGreaterThan(3);
      assertThat(new PDFTextStripper().getText(document)).contains("Program A");
    }
  }

  @Test
  void aFileThatIsThereIsLeftUnlessItMayBeReplaced() throws IOException {
    Path pages = Files.writeString(folder.resolve("old.pdf"), "old");
    String[] words = {"handover", pages.toString(), "--sample", "library-garden"};
    CommandRun run = CommandRun.of(words);
    assertThat(run.code()).isEqualTo(ExitCode.FILE);
    assertThat(run.err()).contains("is there already; add --replace");
    assertThat(pages).hasContent("old");
    assertThat(CommandRun.of(words[0], words[1], words[2], words[3], "--replace").code())
        .isEqualTo(ExitCode.FINE);
    assertThat(Files.size(pages)).isGreaterThan(1000);
  }

  @Test
  void anotherEndingIsRefusedBeforeAnythingIsRead() {
    CommandRun run =
        CommandRun.of("handover", folder.resolve("a.doc").toString(), "--from", "nowhere.xlsx");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("end the path in .pdf");
  }

  @Test
  void aDesignWithoutZonesHasNothingToHandOver() throws DesignFileException {
    Path empty = folder.resolve("empty.xlsx");
    DesignFile.write(Design.blank(UnitSystem.SI), empty);
    Path pages = folder.resolve("none.pdf");
    CommandRun run = CommandRun.of("handover", pages.toString(), "--from", empty.toString());
    assertThat(run.code()).isEqualTo(ExitCode.FOUND);
    assertThat(run.err()).contains("has no zones");
    assertThat(pages).doesNotExist();
  }
}
