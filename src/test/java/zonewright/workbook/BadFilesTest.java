package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.units.UnitSystem;

/** A file that is no design is refused with a sentence a designer can act on. */
class BadFilesTest {
  @TempDir Path folder;

  private void refused(Path file, String... words) {
    assertThatThrownBy(() -> DesignFile.read(file))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining(file.getFileName().toString())
        .hasMessageContainingAll(words)
        .hasMessageNotContainingAny("Exception", "null", "\n");
  }

  private Path demo() {
    return WrittenOnce.demo(folder);
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    refused(folder.resolve("nowhere.xlsx"), "There is no file");
  }

  @Test
  void aFolderIsNoFile() {
    refused(folder, "is a folder");
  }

  @Test
  void anEmptyFileIsCalledEmpty() throws IOException {
    refused(Files.createFile(folder.resolve("empty.xlsx")), "is empty");
  }

  @Test
  void plainTextIsNoWorkbook() throws IOException {
    refused(Files.writeString(folder.resolve("text.xlsx"), "zone,area\n1,900\n"), "not an .xlsx");
  }

  @Test
  void aFileCutShortIsCalledSo() throws DesignFileException, IOException {
    byte[] whole = Files.readAllBytes(demo());
    for (int part : new int[] {2, 3, 10}) {
      Path cut = folder.resolve("cut" + part + ".xlsx");
      refused(
          Files.write(cut, Arrays.copyOf(whole, whole.length - whole.length / part)), "cut short");
    }
  }

  @Test
  void aFileWithSpoiltBytesIsCalledDamaged() throws DesignFileException, IOException {
    byte[] whole = Files.readAllBytes(demo());
    Arrays.fill(whole, 2000, 6000, (byte) 'x');
    refused(Files.write(folder.resolve("spoilt.xlsx"), whole), "damaged");
  }

  /** One letter of a part that nobody would miss: only the check sum beside it tells. */
  @Test
  void aPartThatIsNotAsItWasWrittenIsCalledDamaged() throws IOException {
    Path file = folder.resolve("letter.xlsx");
    byte[] part = "<x>water</x>".getBytes(StandardCharsets.UTF_8);
    try (java.util.zip.ZipFile whole = new java.util.zip.ZipFile(demo().toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (ZipEntry each : java.util.Collections.list(whole.entries())) {
        zip.putNextEntry(new ZipEntry(each.getName()));
        whole.getInputStream(each).transferTo(zip);
        zip.closeEntry();
      }
      ZipEntry own = new ZipEntry("own/part.xml");
      java.util.zip.CRC32 sum = new java.util.zip.CRC32();
      sum.update(part);
      own.setMethod(ZipEntry.STORED);
      own.setSize(part.length);
      own.setCrc(sum.getValue());
      zip.putNextEntry(own);
      zip.write(part);
      zip.closeEntry();
    }
    byte[] bytes = Files.readAllBytes(file);
    int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("<x>water</x>");
    bytes[at + 4] = 'o';
    refused(Files.write(file, bytes), "damaged");
  }

  /** What is written is opened again, or not written. */
  @Test
  void whatWouldNotBeOpenedAgainIsNotSaved() throws IOException {
    Path file = Files.writeString(folder.resolve("garden.xlsx"), "as it was");
    String rows = "<row r=\"1\"><c r=\"A1\" s=\"1\"/></row>".repeat(1000);
    SafeSave.Content content =
        stream -> {
          ZipOutputStream zip = new ZipOutputStream(stream);
          for (String part : new String[] {"[Content_Types].xml", "xl/workbook.xml"}) {
            zip.putNextEntry(new ZipEntry(part));
            zip.closeEntry();
          }
          zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
          for (int i = 0; i < 301; i++) {
            zip.write(rows.getBytes(StandardCharsets.UTF_8));
          }
          zip.finish();
        };
    assertThatThrownBy(
            () ->
                SafeSave.replace(
                    file,
                    content,
                    written -> WorkbookOpening.again(written, file, Optional.empty())))
        .isInstanceOf(DesignFileException.class)
        .hasMessage(
            file
                + " was not saved: a design of this size would not be opened again (no more than 300000 rows and 5000000 cells are); divide it into several.");
    assertThat(file).hasContent("as it was");
    assertThat(folder.toFile().list()).containsExactly("garden.xlsx");
  }

  @Test
  void anOlderWorkbookIsToBeSavedAnew() throws IOException {
    Path file = folder.resolve("older.xls");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        OutputStream stream = Files.newOutputStream(file)) {
      workbook.createSheet("Zones");
      workbook.write(stream);
    }
    refused(file, "older .xls", "save it as .xlsx");
  }

  @Test
  void aWorkbookWithAPasswordIsOpenedWithItAloneAndStaysProtectedAndNothingOfItLiesOpen()
      throws Exception {
    Path file = folder.resolve("secret.xlsx");
    lock(demo(), file, "water");
    byte[] before = Files.readAllBytes(file);
    refused(file, "password", "asked for");
    assertThatThrownBy(() -> DesignFile.read(file, Optional.of("wine"), Progress.UNWATCHED))
        .isInstanceOfSatisfying(
            DesignFileException.class, problem -> assertThat(problem.wantsPassword()).isTrue())
        .hasMessage("That is not the password of " + file + ".");

    DesignFile.Opened opened = DesignFile.read(file, Optional.of("water"), Progress.UNWATCHED);
    assertThat(Designs.zones(opened.design())).isEqualTo(12);
    Designs.type(opened.design(), Facts.ZONE_NOTE, 0, "a secret note");
    DesignFile.Written written = DesignFile.save(opened.design(), file, Optional.of(opened.kept()));
    assertThat(Files.readAllBytes(file)).isNotEqualTo(before);
    refused(file, "password");
    DesignFile.Opened again = DesignFile.read(file, Optional.of("water"), Progress.UNWATCHED);
    assertThat(again.design().book().snapshot().sameEntries(opened.design().book().snapshot()))
        .isTrue();
    DesignFile.save(again.design(), file, Optional.of(written.kept()));
    refused(file, "password");
    refused(DesignFile.backup(file), "password");
    assertThat(folder.toFile().list())
        .containsExactlyInAnyOrder("garden.xlsx", "secret.xlsx", "secret.bak.xlsx");
  }

  private static void lock(Path plain, Path closed, String password) throws Exception {
    EncryptionInfo info = new EncryptionInfo(EncryptionMode.agile);
    Encryptor encryptor = info.getEncryptor();
    encryptor.confirmPassword(password);
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      try (OPCPackage parts = OPCPackage.open(plain.toFile());
          OutputStream stream = encryptor.getDataStream(files)) {
        parts.save(stream);
      }
      try (OutputStream stream = Files.newOutputStream(closed)) {
        files.writeFilesystem(stream);
      }
    }
  }

  @Test
  void otherOfficeFilesAreNoWorkbooks() throws IOException {
    refused(zip("letter.xlsx", "[Content_Types].xml", "word/document.xml"), "not an .xlsx");
    refused(zip("sheet.xlsx", "mimetype", "content.xml"), "OpenDocument");
    refused(zip("binary.xlsx", "[Content_Types].xml", "xl/workbook.bin"), "binary");
  }

  private Path zip(String name, String... parts) throws IOException {
    Path file = folder.resolve(name);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (String part : parts) {
        zip.putNextEntry(new ZipEntry(part));
        zip.write("<x/>".getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }

  @Test
  void someoneElsesWorkbookIsToldWhatItLacks() throws IOException {
    Path file = folder.resolve("accounts.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream stream = Files.newOutputStream(file)) {
      workbook.createSheet("Accounts").createRow(0).createCell(0).setCellValue("Sum");
      workbook.write(stream);
    }
    refused(file, "not a design made with Zonewright", "“Zones”");
  }

  @Test
  void aFileThatUnpacksToTooMuchIsNotOpened() throws IOException {
    Path file = folder.resolve("bomb.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.setLevel(1);
      byte[] nothing = new byte[1 << 20];
      for (String part : new String[] {"[Content_Types].xml", "xl/workbook.xml", "xl/a.xml"}) {
        zip.putNextEntry(new ZipEntry(part));
        for (int i = 0; i < 700; i++) {
          zip.write(nothing);
        }
        zip.closeEntry();
      }
    }
    refused(file, "would unpack to");
  }

  @Test
  void aMillionEmptyRowsAreNotOpened() throws IOException, DesignFileException {
    String rows = "<row r=\"1\"><c r=\"A1\" s=\"1\"/></row>".repeat(1000);
    Path file = folder.resolve("rows.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (String part : new String[] {"[Content_Types].xml", "xl/workbook.xml"}) {
        zip.putNextEntry(new ZipEntry(part));
        zip.closeEntry();
      }
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      for (int i = 0; i < 1000; i++) {
        zip.write(rows.getBytes(StandardCharsets.UTF_8));
      }
      zip.closeEntry();
    }
    refused(file, "rows", "delete what is not needed");
  }

  @Test
  void seventeenSheetsOfAPersonsOwnAndAnExternalLinkAreLeftAlone() throws Exception {
    Path file = folder.resolve("many.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(demo()));
        OutputStream stream = Files.newOutputStream(file)) {
      workbook.setCellFormulaValidation(false);
      for (int i = 1; i <= 17; i++) {
        workbook.createSheet("Mine " + i).createRow(0).createCell(0).setCellFormula("A1+1");
      }
      workbook
          .getSheet("Mine 1")
          .createRow(1)
          .createCell(0)
          .setCellFormula("WEBSERVICE(\"http://localhost:1/x\")");
      workbook.getSheet("Mine 1").createRow(2).createCell(0).setCellFormula("cmd|'/c x'!A0");
      workbook.write(stream);
    }
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(Designs.zones(opened.design())).isEqualTo(12);
    assertThat(opened.report().notes()).hasSize(17);
  }

  @Test
  void entitiesInXmlAreNotFetched() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "the secret");
    Path file = folder.resolve("entity.xlsx");
    try (java.util.zip.ZipFile whole = new java.util.zip.ZipFile(demo().toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (ZipEntry part : java.util.Collections.list(whole.entries())) {
        zip.putNextEntry(new ZipEntry(part.getName()));
        byte[] content = whole.getInputStream(part).readAllBytes();
        if (part.getName().equals("xl/sharedStrings.xml")) {
          String text = new String(content, StandardCharsets.UTF_8);
          int start = text.indexOf("<sst");
          String entity = "<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>";
          content =
              (text.substring(0, start) + entity + text.substring(start))
                  .replaceFirst("Library garden", "&e;")
                  .getBytes(StandardCharsets.UTF_8);
        }
        zip.write(content);
        zip.closeEntry();
      }
    }
    refused(file, "damaged");
  }

  @Test
  void macrosAreNeitherRunNorTaken() throws DesignFileException, IOException {
    Path file = demo();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(folder.resolve("macros.xlsm"))) {
      workbook.setVBAProject(new java.io.ByteArrayInputStream(new byte[] {1, 2, 3}));
      workbook.write(stream);
    }
    DesignFile.Opened opened = DesignFile.read(folder.resolve("macros.xlsm"));
    assertThat(opened.report().lines()).anyMatch(line -> line.contains("macros"));
    assertThat(Designs.zones(opened.design())).isEqualTo(12);
  }

  @Test
  void savingUnderAnotherEndingIsRefused() {
    assertThatThrownBy(
            () -> DesignFile.write(Designs.demo(UnitSystem.US), folder.resolve("garden.csv")))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining(".xlsx workbook");
  }

  @Test
  void savingIntoAFolderThatIsNotThereIsRefused() {
    Path file = folder.resolve("none").resolve("garden.xlsx");
    assertThatThrownBy(() -> DesignFile.write(Designs.demo(UnitSystem.US), file))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("There is no folder");
  }

  @Test
  void savingOverAFileThatIsOpenElsewhereIsRefused() throws DesignFileException, IOException {
    Path file = demo();
    byte[] before = Files.readAllBytes(file);
    Files.createFile(folder.resolve(".~lock.garden.xlsx#"));
    assertThatThrownBy(() -> DesignFile.write(Designs.demo(UnitSystem.SI), file))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("has it open");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void aSaveThatFailsHalfWayLeavesTheOldFileAndNothingElse() throws IOException {
    Path file = Files.writeString(folder.resolve("garden.xlsx"), "as it was");
    assertThatThrownBy(
            () ->
                SafeSave.replace(
                    file,
                    stream -> {
                      stream.write(1);
                      throw new IOException("No space left on device");
                    }))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("the disk is full");
    assertThat(file).hasContent("as it was");
    assertThat(folder.toFile().list()).containsExactly("garden.xlsx");
  }

  @Test
  void wordsTooLongForACellAreToldBeforeAnythingIsWritten() {
    Design design = Designs.demo(UnitSystem.US);
    Designs.type(design, Facts.ZONE_NOTE, 0, "long ".repeat(8000));
    Path file = folder.resolve("garden.xlsx");
    assertThatThrownBy(() -> DesignFile.write(design, file))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("letters");
    assertThat(file).doesNotExist();
  }
}
