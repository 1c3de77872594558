package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.disk.Claims;
import zonewright.disk.CutDisk;
import zonewright.disk.Disk;
import zonewright.disk.DiskFile;
import zonewright.emitters.Emitters;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.units.UnitSystem;

/** The record of unsaved work on disks that are full, gone, closed or lose their power. */
class WorkRecordTest {
  private final Design design = Demo.libraryGarden(UnitSystem.US);
  private final List<String> told = Collections.synchronizedList(new ArrayList<>());
  private FileSystem memory = Jimfs.newFileSystem(posix().build());
  private WorkRecord record;
  private Path file;
  private Path spare;

  private static Configuration.Builder posix() {
    return Configuration.unix().toBuilder().setAttributeViews("posix");
  }

  @AfterEach
  void end() throws IOException {
    record.close();
    memory.close();
  }

  /** Begins a record of a design that lies in a file. */
  private WorkRecord begin(Disk disk) throws IOException {
    file = Files.createDirectories(memory.getPath("/disk/designs")).resolve("garden.xlsx");
    spare = memory.getPath("/disk/home/.zonewright/unsaved");
    if (!Files.exists(file)) {
      Files.writeString(file, "the design");
    }
    record =
        new WorkRecord(
            disk, design.book().schema(), design.book()::snapshot, Runnable::run, spare, told::add);
    record.follow(Optional.of(file), "garden", Optional.of(base()));
    return record;
  }

  private WorkRecord.Base base() {
    return new WorkRecord.Base(
        design.book().snapshot(), UnsavedFile.digest(file), Optional.empty());
  }

  private void type(String area) {
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), 0, area));
    record.changed();
  }

  private static void waitUntil(String what, Callable<Boolean> holds) throws Exception {
    for (int i = 0; i < 1000; i++) {
      if (holds.call()) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("never: " + what);
  }

  private static List<Path> records(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(each -> each.toString().endsWith(UnsavedFile.ENDING)).toList();
    }
  }

  private boolean holds(Path folder, double area) throws IOException {
    for (Path each : records(folder)) {
      Optional<BookSnapshot> book =
          UnsavedFile.read(each, design.book().schema()).flatMap(UnsavedFile.Found::book);
      if (book.isPresent() && area(book.get()).equals(new Entry.Figure(area))) {
        return true;
      }
    }
    return false;
  }

  private static Entry area(BookSnapshot book) {
    Design read = Design.of(book);
    return read.book().entry(Emitters.AREA.reference(), 0);
  }

  @Test
  void aFullDiskKeepsTheLastGoodRecordSaysSoAndGoesOnWhenThereIsRoom() throws Exception {
    memory.close();
    memory = Jimfs.newFileSystem(posix().setBlockSize(512).setMaxSize(600_000).build());
    begin(Disk.REAL);
    type("777");
    waitUntil("on record", () -> holds(file.getParent(), 777));
    Path ballast = file.resolveSibling("ballast");
    try (var stream = Files.newOutputStream(ballast)) {
      while (true) {
        stream.write(new byte[64]);
      }
    } catch (IOException full) {
      type("888");
    }
    for (int i = 0; i < 40 && told.isEmpty(); i++) {
      type(Integer.toString(1000 + i));
      Thread.sleep(100);
    }
    assertThat(told)
        .containsExactly(
            "What you type is not on record now, and a crash would lose it: the disk is full. Make room on it, or save in another folder.");
    UnsavedFile.Found kept =
        UnsavedFile.read(records(file.getParent()).get(0), design.book().schema()).orElseThrow();
    assertThat(kept.whole()).as("the last good record").isTrue();
    assertThat(kept.book()).isPresent();
    Files.delete(ballast);
    type("999");
    waitUntil("on record again", () -> holds(file.getParent(), 999));
    waitUntil("it is told", () -> told.size() == 2);
    assertThat(told.get(1)).isEqualTo("What you type is on record again.");
  }

  @Test
  void aFolderThatVanishesOrMayNotBeWrittenLeadsToTheProgramsOwnFolderAndIsFoundThere()
      throws Exception {
    begin(
        new Disk() {
          @Override
          public DiskFile create(Path wanted, Optional<Path> like) throws IOException {
            if (wanted.startsWith("/disk/designs")) {
              throw new AccessDeniedException(wanted.toString());
            }
            return Disk.super.create(wanted, like);
          }
        });
    type("777");
    waitUntil("on record", () -> holds(spare, 777));
    assertThat(told).isEmpty();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(spare)))
        .isEqualTo("rwx------");
    Path place = records(spare).get(0);
    assertThat(UnsavedFile.around(file, "", spare).live()).hasSize(1);

    byte[] left = Files.readAllBytes(place);
    record.close();
    Files.write(place, left);
    assertThat(UnsavedFile.around(file, "", spare).left()).containsExactly(place);
    Path moved = Files.move(file, file.resolveSibling("pond.xlsx"));
    assertThat(UnsavedFile.around(moved, UnsavedFile.digest(moved), spare).left())
        .as("known by what is in it")
        .containsExactly(place);
    Path another = Files.writeString(file.resolveSibling("other.xlsx"), "another design");
    assertThat(UnsavedFile.around(another, UnsavedFile.digest(another), spare).left()).isEmpty();
  }

  @Test
  void aRecordThatWasDeletedUnderItsWindowIsBegunAnew() throws Exception {
    begin(Disk.REAL);
    type("777");
    waitUntil("on record", () -> holds(file.getParent(), 777));
    Files.delete(records(file.getParent()).get(0));
    type("888");
    waitUntil("on record again", () -> holds(file.getParent(), 888));
    assertThat(told).isEmpty();
  }

  @Test
  void whereNothingCanBeWrittenAtAllItIsTold() throws Exception {
    begin(
        new Disk() {
          @Override
          public DiskFile create(Path wanted, Optional<Path> like) throws IOException {
            throw new AccessDeniedException(wanted.toString());
          }
        });
    type("777");
    waitUntil("it is told", () -> !told.isEmpty());
    assertThat(told)
        .containsExactly(
            "What you type is not on record now, and a crash would lose it: nothing can be written beside the design or in the program's own folder. Save it, here or in another folder.");
  }

  @Test
  void whoMayReadTheDesignMayReadTheRecord() throws Exception {
    file = Files.createDirectories(memory.getPath("/disk/designs")).resolve("garden.xlsx");
    Files.writeString(file, "the design");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
    begin(Disk.REAL);
    Set<String> seen = new HashSet<>();
    waitUntil(
        "the record has the permissions of the design",
        () -> {
          for (Path each : records(file.getParent())) {
            seen.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(each)));
          }
          return seen.contains("rw-rw----");
        });
    assertThat(seen).as("it was never more open").isSubsetOf("rw-------", "rw-rw----");
  }

  @Test
  void aRecordIsItsWindowsAsLongAsThatLivesAndNobodysAfterwards() throws Exception {
    begin(Disk.REAL);
    type("777");
    waitUntil("on record", () -> holds(file.getParent(), 777));
    Path place = records(file.getParent()).get(0);
    assertThat(Claims.live(place)).isTrue();
    UnsavedFile.Around around = UnsavedFile.around(file, "", spare);
    assertThat(around.left()).isEmpty();
    assertThat(around.holder(record.id())).isEmpty();
    assertThat(around.holder("another window").orElseThrow().who()).contains(" on ");
    byte[] left = Files.readAllBytes(place);
    record.close();
    assertThat(place).as("ended in peace").doesNotExist();
    Files.write(place, left);
    assertThat(Claims.live(place)).isFalse();
    assertThat(UnsavedFile.around(file, "", spare).left()).containsExactly(place);
  }

  @Test
  void whereverThePowerGoesWhatWasTypedAfterASaveStandsInTheOldRecordOrTheNew() throws Exception {
    file = Files.createDirectories(memory.getPath("/disk/designs")).resolve("garden.xlsx");
    Files.writeString(file, "the design");
    CutDisk disk = new CutDisk(file.getParent());
    begin(disk);
    type("777");
    waitUntil("on record", () -> holds(file.getParent(), 777));
    waitUntil("and forced", () -> disk.told().strip().endsWith("force null"));
    int typed = disk.steps();
    record.saved(file, "garden", base(), true);
    waitUntil("the old is gone", () -> disk.told().contains("delete"));
    int states = 0;
    for (int after = typed; after <= disk.steps(); after++) {
      for (Map<Path, byte[]> left : disk.left(after)) {
        states++;
        Path folder = Files.createDirectories(memory.getPath("/disk/cut" + states));
        for (Map.Entry<Path, byte[]> each : left.entrySet()) {
          Files.write(folder.resolve(each.getKey().getFileName()), each.getValue());
        }
        assertThat(holds(folder, 777)).as("after %s of%n%s", after, disk.told()).isTrue();
      }
    }
    assertThat(states).isGreaterThan(5);
  }

  @Test
  void theRecordOfAProtectedDesignLiesBesideItAndOpensWithItsPasswordAlone() throws Exception {
    begin(Disk.REAL);
    Design secret = Design.of(design.book().snapshot());
    design.book().perform(design.edits().typed(Facts.ZONE_NOTE.reference(), 0, "a secret note"));
    WorkRecord.Base base =
        new WorkRecord.Base(
            secret.book().snapshot(), UnsavedFile.digest(file), Optional.of("water"));
    record.follow(Optional.of(file), "garden", Optional.of(base));
    record.changed();
    Path folder = file.getParent();
    Schema schema = design.book().schema();
    waitUntil(
        "the note is on record",
        () ->
            records(folder).size() == 1
                && UnsavedFile.read(records(folder).get(0), schema, Optional.of("water"))
                    .flatMap(UnsavedFile.Found::book)
                    .filter(design.book().snapshot()::sameEntries)
                    .isPresent());
    Path closed = records(folder).get(0);
    String text = Files.readString(closed);
    assertThat(text).doesNotContain("secret note", "Reading lawn", "cells\t");
    assertThat(UnsavedFile.around(file, base.digest(), spare).live())
        .as("others at the file see whose it is")
        .singleElement()
        .satisfies(head -> assertThat(head.id()).isEqualTo(record.id()));

    // as a crash leaves it, cut within its last group
    Path left = folder.resolve(".garden.xlsx.12345678.unsaved");
    Files.writeString(left, text.substring(0, text.length() - 9));
    UnsavedFile.Found found = UnsavedFile.read(left, schema, Optional.of("water")).orElseThrow();
    assertThat(found.whole()).isFalse();
    assertThat(found.locked()).isFalse();
    assertThat(found.book().orElseThrow().sameEntries(secret.book().snapshot())).isTrue();
    for (Optional<String> other : List.of(Optional.of("wine"), Optional.<String>empty())) {
      UnsavedFile.Found shut = UnsavedFile.read(closed, schema, other).orElseThrow();
      assertThat(shut.locked()).isTrue();
      assertThat(shut.book()).isEmpty();
      assertThat(shut.untouched()).as("it is kept, not cleared away").isFalse();
    }
  }
}
