package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.InputRange;
import zonewright.workbook.pack.Audience;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheet;
import zonewright.workbook.pack.PackSheets;

/** The sheets that are handed over: complete, for whom they are meant, and never read back. */
class PackTest {
  @TempDir Path folder;

  private Path written(Design design, List<PackSheet> sheets) throws DesignFileException {
    return written(design, PackOrder.of(sheets));
  }

  private Path written(Design design, PackOrder order) throws DesignFileException {
    Path file = folder.resolve("pack.xlsx");
    DesignFile.write(design, file, order, Optional.empty());
    return file;
  }

  private static List<String> titles(Path file) throws IOException {
    List<String> titles = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      workbook.forEach(sheet -> titles.add(sheet.getSheetName()));
    }
    return titles;
  }

  @Test
  void wordsAndTitlesAreAllDifferentAndShortEnoughForASheet() {
    Set<String> known = new HashSet<>();
    for (PackSheet sheet : PackSheets.all()) {
      assertThat(known.add(sheet.word())).as(sheet.word()).isTrue();
      assertThat(known.add(sheet.title())).as(sheet.title()).isTrue();
      assertThat(sheet.word()).matches("[a-z]+(-[a-z]+)*");
      assertThat(sheet.title().length()).as(sheet.title()).isLessThanOrEqualTo(25);
      assertThat(sheet.about()).as("about %s", sheet.word()).endsWith(".");
    }
  }

  @Test
  void savingAgainKeepsTheOrderOfTheSheets() throws Exception {
    Path file = written(Designs.demo(UnitSystem.US), PackSheets.all());
    List<String> before = titles(file);
    for (int save = 0; save < 2; save++) {
      DesignFile.Opened opened = DesignFile.read(file);
      Designs.type(opened.design(), Emitters.AREA, save, "1234");
      DesignFile.save(opened.design(), file, Optional.of(opened.kept()));
      assertThat(titles(file)).isEqualTo(before);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aDesignWithTheWholePackComesBackAsItWasAndNothingIsRemarkedOn(UnitSystem system)
      throws DesignFileException {
    Design design = Designs.demo(system);
    DesignFile.Opened opened = DesignFile.read(written(design, PackSheets.all()));
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
    assertThat(opened.report().notes()).isEmpty();
  }

  @Test
  @Tag(Counts.LONG)
  void everyDesignCanBeHandedOverHoweverBroken() throws DesignFileException {
    for (Design design : Designs.eachKind()) {
      assertThat(written(design, PackSheets.all())).isNotEmptyFile();
    }
  }

  /** The slope of the demo asks for 99 min, and its controller starts 44 of them. */
  @Test
  void theTimetableListsEveryZoneAndTheCardSaysFirstWhatDoesNotFit()
      throws DesignFileException, IOException {
    Design design = Designs.demo(UnitSystem.US);
    Path file = written(design, PackSheets.all());
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      int zones = 0;
      for (Row row : workbook.getSheet("Timetable")) {
        boolean ofZone =
            row.getCell(5) != null
                && row.getCell(5).getCellType() == CellType.NUMERIC
                && row.getCell(2).getCellType() == CellType.STRING;
        if (ofZone) {
          zones++;
          assertThat(row.getCell(1).getNumericCellValue() + row.getCell(5).getNumericCellValue())
              .isEqualTo(row.getCell(0).getNumericCellValue());
        }
      }
      assertThat(zones).isEqualTo(design.book().rows(Sheets.ZONES));
      List<String> card = new ArrayList<>();
      workbook
          .getSheet("Card A")
          .forEach(
              row -> {
                if (row.getCell(0) != null && row.getCell(0).getCellType() == CellType.STRING) {
                  card.add(row.getCell(0).getStringCellValue());
                }
              });
      int box = card.indexOf("Does not fit: key in what stands here, and see to the rest");
      assertThat(box).isPositive().isLessThan(card.indexOf("Station"));
      assertThat(card).anyMatch(line -> line.contains("44 of 99 min a week placed"));
    }
  }

  /** Of the first zone: nothing is said of ranges nobody typed. */
  @Test
  void theWorkedZoneSaysWhatItsResultsLieBetweenWhereARangeWasTyped()
      throws DesignFileException, IOException {
    Design design = Designs.demo(UnitSystem.US);
    List<PackSheet> working =
        PackSheets.all().stream().filter(sheet -> sheet.word().equals("working")).toList();
    assertThat(words(written(design, working), "Working 1"))
        .noneMatch(line -> line.startsWith("Over the ranges"));
    InputRange area = InputRange.of(Emitters.AREA.reference()).orElseThrow();
    Designs.type(design, area.least(), 0, "2000");

    assertThat(words(written(design, working), "Working 1"))
        .filteredOn(line -> line.startsWith("Over the ranges of its inputs it lies between"))
        .hasSizeGreaterThan(2);
  }

  private static List<String> words(Path file, String sheet) throws IOException {
    List<String> words = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      workbook.getSheet(sheet).forEach(row -> row.forEach(cell -> words.add(cell.toString())));
    }
    return words;
  }

  @Test
  void aClientGetsNoSheetOfTheOffice() throws DesignFileException, IOException {
    Design design = Designs.demo(UnitSystem.US);
    List<String> titles = titles(written(design, PackOrder.forClient().withoutProposal()));
    for (PackSheet sheet : PackSheets.all()) {
      boolean there = titles.stream().anyMatch(title -> title.startsWith(sheet.title()));
      boolean wanted = sheet.audience() == Audience.CLIENT && sheet.lacks(design).isEmpty();
      assertThat(there).as(sheet.title()).isEqualTo(wanted);
    }
  }

  @Test
  void noFormulaOfAClientsCopyAsksForASheetThatIsNotInIt() throws DesignFileException, IOException {
    Path file = written(Designs.demo(UnitSystem.US), PackOrder.forClient().withoutProposal());
    List<String> titles = titles(file);
    List<String> left = new ArrayList<>();
    for (PackSheet sheet : PackSheets.all()) {
      if (titles.stream().noneMatch(title -> title.startsWith(sheet.title()))) {
        left.add(sheet.title());
      }
    }
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        for (Row row : sheet) {
          row.forEach(
              cell -> {
                if (cell.getCellType() == CellType.FORMULA) {
                  String formula = ((XSSFCell) cell).getCTCell().getF().getStringValue();
                  assertThat(left)
                      .as("%s %s: %s", sheet.getSheetName(), cell.getAddress(), formula)
                      .noneMatch(
                          title -> formula.contains(title + "!") || formula.contains(title + "'!"));
                }
              });
        }
      }
    }
  }

  @Test
  void aPersonsOwnSheetWithTheNameOfOneOfOursIsTheirs() throws Exception {
    Path file = written(Designs.demo(UnitSystem.US), List.of());
    Path changed = folder.resolve("changed.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        var stream = Files.newOutputStream(changed)) {
      workbook.createSheet("Cover").createRow(0).createCell(0).setCellValue("mine");
      workbook.write(stream);
    }
    assertThat(DesignFile.read(changed).report().lines())
        .anyMatch(line -> line.startsWith("Cover: "));
  }
}
