package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.desk.task.Questions;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;

@Tag("window")
@CacioTest
class DeskFilesTest {
  private final DeskDriver desk = new DeskDriver();
  @TempDir Path folder;

  @AfterEach
  void close() {
    desk.close();
  }

  private String inputs() {
    return desk.ask(
        () -> {
          StringBuilder text = new StringBuilder();
          for (TableDefinition table : desk.book().schema().tables()) {
            for (int row = 0; row < desk.book().rows(table.id()); row++) {
              for (var column : table.inputs()) {
                text.append(column.reference().key()).append(' ');
                text.append(desk.book().entry(column.reference(), row)).append('\n');
              }
            }
          }
          return text.toString();
        });
  }

  private boolean unsaved() {
    return desk.ask(() -> desk.window().openDesign().unsaved());
  }

  private void typeAnArea() {
    desk.goTo(Emitters.AREA, 0);
    desk.type("1125");
  }

  @Test
  void quittingRightAfterSavingAsksNothing() {
    desk.questions.file = Optional.of(folder.resolve("garden.xlsx"));
    typeAnArea();
    desk.act(
        () -> {
          desk.window().keeper().save(() -> {});
          desk.window().close();
        });
    desk.waitUntil("the window is gone", () -> !desk.window().frame().isDisplayable());
    assertThat(desk.questions.asked).isEmpty();
    assertThat(folder.resolve("garden.xlsx")).isNotEmptyFile();
  }

  @Test
  void whatIsSavedComesBackWhenItIsOpenedAgain() {
    Path file = folder.resolve("garden.xlsx");
    desk.questions.file = Optional.of(file);
    typeAnArea();
    assertThat(desk.ask(() -> desk.window().frame().getTitle())).startsWith("• ");
    String before = inputs();
    desk.choose("Save as …");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
    assertThat(desk.ask(() -> desk.window().frame().getTitle()))
        .isEqualTo("garden.xlsx – Zonewright");

    desk.act(() -> desk.window().keeper().fresh(UnitSystem.SI));
    assertThat(inputs()).isNotEqualTo(before);
    desk.choose("Open …");
    desk.waitUntil(
        "it is open again", () -> desk.window().openDesign().name().equals("garden.xlsx"));

    assertThat(inputs()).isEqualTo(before);
    assertThat(unsaved()).isFalse();
    assertThat(desk.questions.asked).isEmpty();
  }

  @Test
  void closingAsksOnlyWhereSomethingWouldBeLost() {
    typeAnArea();
    desk.questions.answer = Questions.Unsaved.CANCEL;
    desk.act(desk.window()::close);
    assertThat(desk.questions.asked).containsExactly("the demo");
    assertThat(desk.ask(() -> desk.window().frame().isDisplayable())).isTrue();

    desk.questions.answer = Questions.Unsaved.LOSE;
    desk.act(desk.window()::close);
    assertThat(desk.ask(() -> desk.window().frame().isDisplayable())).isFalse();
  }

  @Test
  void closingAnUntouchedDesignAsksNothing() {
    desk.act(desk.window()::close);

    assertThat(desk.questions.asked).isEmpty();
    assertThat(desk.ask(() -> desk.window().frame().isDisplayable())).isFalse();
  }

  @Test
  void savingFromTheQuestionSavesAndThenCloses() {
    Path file = folder.resolve("kept.xlsx");
    desk.questions.file = Optional.of(file);
    desk.questions.answer = Questions.Unsaved.SAVE;
    typeAnArea();
    desk.act(desk.window()::close);
    desk.waitUntil("the window is gone", () -> !desk.window().frame().isDisplayable());

    assertThat(file).exists();
  }

  @Test
  void aFileThatHoldsNoDesignIsRefusedInASentenceAndTheDesignStays() throws IOException {
    Path file = folder.resolve("letter.xlsx");
    Files.writeString(file, "Dear gardener", StandardCharsets.UTF_8);
    Design before = desk.ask(() -> desk.window().openDesign().design());
    desk.act(() -> desk.window().keeper().open(file));
    desk.waitUntil("the refusal is shown", () -> desk.shows("close message"));

    assertThat(desk.text("message")).contains("letter.xlsx").endsWith(".");
    assertThat(desk.ask(() -> desk.window().openDesign().design())).isSameAs(before);
    desk.click("close message");
    assertThat(desk.shows("close message")).isFalse();
  }

  @Test
  void aProtectedFileAsksForItsPasswordUntilItIsRightAndStaysProtected() throws Exception {
    Path file = folder.resolve("secret.xlsx");
    try (POIFSFileSystem parts = new POIFSFileSystem();
        OutputStream out = Files.newOutputStream(file)) {
      Path plain = folder.resolve("plain.xlsx");
      DesignFile.write(Design.blank(UnitSystem.SI), plain);
      Encryptor lock = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      lock.confirmPassword("water");
      try (OutputStream stream = lock.getDataStream(parts)) {
        Files.copy(plain, stream);
      }
      parts.writeFilesystem(out);
    }
    desk.questions.passwords.addAll(List.of("wine", "water"));
    desk.act(() -> desk.window().keeper().open(file));
    desk.waitUntil("it is open", () -> desk.window().openDesign().file().isPresent());
    assertThat(desk.questions.asked)
        .containsExactly(
            "“secret.xlsx” is protected by a password.",
            "That is not the password of “secret.xlsx”.");
    desk.click("button New row");
    desk.choose("Save");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
    assertThatThrownBy(() -> DesignFile.read(file)).hasMessageContaining("password");

    desk.act(() -> desk.window().keeper().fresh(UnitSystem.US));
    desk.act(() -> desk.window().keeper().open(file));
    desk.waitUntil("it was asked and not told", () -> desk.shows("message"));
    assertThat(desk.text("message"))
        .isEqualTo("“secret.xlsx” was not opened; nothing has changed.");
  }

  @Test
  void aFolderThatCannotBeWrittenLosesNothing() {
    desk.questions.file = Optional.of(folder.resolve("not there").resolve("garden.xlsx"));
    typeAnArea();
    desk.choose("Save as …");
    desk.waitUntil("the refusal is shown", () -> desk.shows("close message"));

    assertThat(desk.text("message")).contains("Your work is still here.");
    assertThat(unsaved()).isTrue();
    assertThat(desk.book().entry(Emitters.AREA.reference(), 0)).isEqualTo(new Entry.Figure(1125));
  }

  @Test
  void aNewDesignHasNoZonesAndTheDesiredUnits() {
    desk.act(() -> desk.window().keeper().fresh(UnitSystem.SI));

    assertThat(desk.book().rows(Sheets.ZONES)).isZero();
    assertThat(desk.book().system()).isEqualTo(UnitSystem.SI);
    desk.click("button New row");
    assertThat(desk.book().rows(Sheets.ZONES)).isEqualTo(1);
    assertThat(desk.item(1, 0)).isEqualTo("Undo new zone");
  }
}
