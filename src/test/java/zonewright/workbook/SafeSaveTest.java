package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person is told when a file cannot be written. */
class SafeSaveTest {
  @TempDir Path folder;

  @Test
  void aFolderThatTakesNoFilesIsToldInWordsAndWithoutTheNameOfThePassingFile() {
    Path file = folder.resolve("garden.xlsx");
    assertThatThrownBy(
            () ->
                SafeSave.replace(
                    file,
                    stream -> {
                      throw new NoSuchFileException(folder.resolve(".garden.part").toString());
                    }))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("may not be written to; save in another folder")
        .hasMessageNotContaining(".part");
    assertThat(folder).isEmptyDirectory();
  }
}
