package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Sample;
import zonewright.units.UnitSystem;

/** The workbooks that come with a release are its samples, and can be made again. */
class SampleWorkbookTest {
  /** Says when the file was made. */
  private static final String PROPERTIES = "docProps/core.xml";

  private static final Path FOLDER = Path.of("workbooks");

  private static Map<String, Integer> parts(Path file) throws IOException {
    Map<String, Integer> parts = new TreeMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      zip.stream()
          .filter(part -> !part.getName().equals(PROPERTIES))
          .forEach(part -> parts.put(part.getName(), hash(zip, part)));
    }
    return parts;
  }

  private static int hash(ZipFile zip, ZipEntry part) {
    try {
      return Arrays.hashCode(zip.getInputStream(part).readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aSampleIsWrittenTheSameEachTime(Sample sample, @TempDir Path folder) throws Exception {
    Path first = folder.resolve("first.xlsx");
    Path second = folder.resolve("second.xlsx");
    DesignFile.write(sample.design(UnitSystem.US), first);
    DesignFile.write(sample.design(UnitSystem.US), second);
    assertThat(parts(second)).isEqualTo(parts(first));
  }

  /** What an earlier program made in a file is no person's own, and goes when it is saved. */
  @ParameterizedTest
  @EnumSource
  void theWorkbookOfTheLastReleaseOpensAndIsBroughtUpToDate(Sample sample, @TempDir Path folder)
      throws Exception {
    Path file = folder.resolve("garden.xlsx");
    Files.copy(FOLDER.resolve(sample.word() + ".xlsx"), file);
    DesignFile.Opened before = DesignFile.read(file);
    assertThat(before.report().lines()).noneMatch(line -> line.contains("your own"));
    DesignFile.Written written = DesignFile.save(before.design(), file, Optional.of(before.kept()));
    assertThat(written.notes()).isEmpty();
    DesignFile.Opened after = DesignFile.read(file);
    assertThat(Inputs.of(after.design())).isEqualTo(Inputs.of(before.design()));
    assertThat(after.report().lines()).hasSize(after.report().taken().size());
  }

  @Tag("release")
  @ParameterizedTest
  @EnumSource
  void theWorkbookHoldsTheSample(Sample sample) throws DesignFileException {
    DesignFile.Opened opened = DesignFile.read(FOLDER.resolve(sample.word() + ".xlsx"));
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(sample.design(UnitSystem.US)));
    assertThat(opened.report().lines())
        .as("make the release anew: .ci/release")
        .hasSize(opened.report().taken().size());
  }
}
