package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Sample;
import zonewright.units.UnitSystem;

/** The workbooks that come with the program are its samples as it writes them today. */
class SampleWorkbookTest {
  @ParameterizedTest
  @EnumSource
  void theWorkbookHoldsTheSample(Sample sample) throws DesignFileException {
    DesignFile.Opened opened = DesignFile.read(Path.of("workbooks", sample.word() + ".xlsx"));
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(sample.design(UnitSystem.US)));
    assertThat(opened.report().lines())
        .as(
            "write it anew after columns or formulas changed: write workbooks/... --sample %s --replace",
            sample.word())
        .hasSize(opened.report().taken().size());
  }
}
