package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.disk.CutDisk;
import zonewright.disk.Disk;
import zonewright.disk.DiskFile;

/** What stands on the disk if the power goes in the middle of saving, and who may read it. */
class PowerCutTest {
  private static final String FIRST = "the first version ".repeat(40);
  private static final String OLD = "the version before ".repeat(50);
  private static final String NEW = "what is saved now ".repeat(60);

  private FileSystem memory;
  private Path folder;
  private Path file;

  @BeforeEach
  void begin() throws IOException {
    memory =
        Jimfs.newFileSystem(Configuration.unix().toBuilder().setAttributeViews("posix").build());
    folder = Files.createDirectories(memory.getPath("/disk/designs"));
    file = folder.resolve("garden.xlsx");
  }

  @AfterEach
  void end() throws IOException {
    memory.close();
  }

  private static void save(Disk disk, Path file, String content) throws DesignFileException {
    SafeSave.replace(
        disk,
        file,
        stream -> stream.write(content.getBytes(StandardCharsets.UTF_8)),
        written -> {});
  }

  private static String text(Map<Path, byte[]> left, Path file) {
    return left.containsKey(file) ? new String(left.get(file), StandardCharsets.UTF_8) : "";
  }

  @Test
  void whereverThePowerGoesTheFileIsTheOldOneOrTheNewOneAndTheVersionBeforeIsWhole()
      throws Exception {
    Files.writeString(file, OLD);
    Files.writeString(SafeSave.backup(file), FIRST);
    CutDisk disk = new CutDisk(folder);
    save(disk, file, NEW);
    assertThat(disk.steps()).as("%s", disk.told()).isGreaterThanOrEqualTo(10);
    int states = 0;
    for (int after = 0; after <= disk.steps(); after++) {
      for (Map<Path, byte[]> left : disk.left(after)) {
        states++;
        assertThat(text(left, file)).as("after %s of%n%s", after, disk.told()).isIn(OLD, NEW);
        assertThat(text(left, SafeSave.backup(file))).isIn(FIRST, OLD);
        if (text(left, file).equals(NEW)) {
          assertThat(text(left, SafeSave.backup(file))).as("the version before").isEqualTo(OLD);
        }
      }
    }
    assertThat(states).isGreaterThan(20);
    for (Map<Path, byte[]> left : disk.left(disk.steps())) {
      assertThat(text(left, file)).as("once it is saved it stays").isEqualTo(NEW);
    }
  }

  @Test
  void aNewFileIsWholeOrNotThere() throws Exception {
    CutDisk disk = new CutDisk(folder);
    save(disk, file, NEW);
    for (int after = 0; after <= disk.steps(); after++) {
      for (Map<Path, byte[]> left : disk.left(after)) {
        assertThat(text(left, file)).isIn("", NEW);
      }
    }
  }

  @Test
  void whoMayReadTheFileAndNobodyElseMayReadItAndTheVersionBefore() throws Exception {
    Files.writeString(file, OLD);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    save(Disk.REAL, file, NEW);
    for (Path each : new Path[] {file, SafeSave.backup(file)}) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(each)))
          .isEqualTo("rw-r-----");
    }
  }

  @Test
  void aFullDiskLeavesTheOldFileAndNoPartOfTheNew() throws Exception {
    try (FileSystem small =
        Jimfs.newFileSystem(
            Configuration.unix().toBuilder().setBlockSize(512).setMaxSize(4096).build())) {
      Path there = Files.createDirectories(small.getPath("/disk/full")).resolve("garden.xlsx");
      Files.writeString(there, OLD);
      assertThatThrownBy(() -> save(Disk.REAL, there, NEW.repeat(5)))
          .isInstanceOf(DesignFileException.class)
          .hasMessage("/disk/full/garden.xlsx was not saved: the disk is full.");
      assertThat(Files.readString(there)).isEqualTo(OLD);
      try (var files = Files.list(there.getParent())) {
        assertThat(files).containsExactly(there);
      }
    }
  }

  @Test
  void whatAKilledSavingLeftIsClearedAwayAndWhatAnotherIsWritingStays() throws Exception {
    Path dead = folder.resolve(".garden.xlsx.0d3f7c1e-0000-4000-8000-000000000000.part");
    Path other = folder.resolve(".pond.xlsx.0d3f7c1e-0000-4000-8000-000000000000.part");
    Path live = folder.resolve(".garden.xlsx.0d3f7c1e-0000-4000-8000-000000000001.part");
    Files.writeString(dead, "half");
    Files.writeString(other, "half");
    try (DiskFile writing = Disk.REAL.create(live, Optional.empty())) {
      save(Disk.REAL, file, NEW);
      assertThat(writing.length()).isZero();
    }
    assertThat(dead).doesNotExist();
    assertThat(other).exists();
    assertThat(live).exists();
  }

  @Test
  void aNameAsLongAsADiskTakesIsSaved() throws Exception {
    Path longest = folder.resolve("g".repeat(245) + ".xlsx");
    save(Disk.REAL, longest, OLD);
    save(Disk.REAL, longest, NEW);
    assertThat(Files.readString(longest)).isEqualTo(NEW);
    assertThat(Files.readString(SafeSave.backup(longest))).isEqualTo(OLD);
    assertThat(SafeSave.backup(longest).getFileName().toString()).hasSizeLessThanOrEqualTo(255);
  }
}
