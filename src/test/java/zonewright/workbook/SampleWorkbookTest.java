package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.units.UnitSystem;

/** The workbook that comes with the program is the demo as the program writes it today. */
class SampleWorkbookTest {
  private static final Path SAMPLE = Path.of("workbooks", "library-garden.xlsx");

  @Test
  void theSampleHoldsTheDemo() throws DesignFileException {
    DesignFile.Opened opened = DesignFile.read(SAMPLE);
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(Demo.libraryGarden(UnitSystem.US)));
    assertThat(opened.report().lines())
        .as("write it anew with DesignFile.write after columns or formulas changed")
        .hasSize(opened.report().taken().size());
  }
}
