package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.testing.Counts;
import zonewright.units.UnitSystem;

/** A design comes back from its file as it was. */
class DesignFileTest {
  @TempDir Path folder;

  static List<Design> designs() {
    return Designs.eachKind();
  }

  @ParameterizedTest
  @Tag(Counts.LONG)
  @MethodSource("designs")
  void everyInputComesBackExactly(Design design) throws DesignFileException {
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(design, file);
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
    assertThat(opened.report().notes())
        .as("a file just written differs in nothing")
        .allSatisfy(note -> assertThat(note.sentence()).contains("kept as it stands"));

    Path again = folder.resolve("again.xlsx");
    DesignFile.write(opened.design(), again);
    assertThat(Inputs.of(DesignFile.read(again).design())).isEqualTo(Inputs.of(design));
  }

  @Test
  void theLastVersionStaysBesideTheNew() throws DesignFileException, IOException {
    Path file = folder.resolve("garden.xlsx");
    Design design = Designs.demo(UnitSystem.US);
    DesignFile.write(design, file);
    assertThat(folder.resolve("garden.bak.xlsx")).doesNotExist();

    Designs.type(design, Facts.PROJECT_NAME, 0, "Second version");
    DesignFile.write(design, file);
    Design before = DesignFile.read(folder.resolve("garden.bak.xlsx")).design();
    assertThat(before.book().outcome(Facts.PROJECT_NAME.reference(), 0).toString())
        .contains("Library garden");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).as("nothing else is left behind").hasSize(2);
    }
  }
}
