package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.OwnColumnRows;
import zonewright.design.OwnColumns;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.pipes.Supply;
import zonewright.plants.Plants;
import zonewright.savings.Rates;
import zonewright.sheet.Column;
import zonewright.sheet.Remark;
import zonewright.sheet.Tint;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;
import zonewright.workbook.pack.PackOrder;

/** Notes and colours of a person's own are comments and fills in the file, and come back. */
class CellRemarksTest {
  private static final String NOTE = "measured by hand,\nnot taped";

  @TempDir Path folder;

  private static Design noted() {
    Design design = Designs.demo(UnitSystem.US);
    note(design, Emitters.AREA, 3, NOTE);
    note(design, Plants.PLANT_FACTOR, 1, "asked the gardener");
    note(design, Demand.RUN_TIME, 2, "too long?");
    note(design, Facts.PREPARED_BY, 0, "initials only");
    tint(design, Tint.GREEN, List.of(4, 5), Emitters.AREA, Demand.RUN_TIME, Plants.PLANT_FACTOR);
    tint(design, Tint.VIOLET, List.of(3), Emitters.AREA);
    OwnColumnRows.add(design, "Half of it", "Zones", "area", "Area / 2");
    Column own = OwnColumns.of(design.book()).column(0).orElseThrow();
    note(design, own, 3, "of one's own");
    tint(design, Tint.BLUE, List.of(3, 4), own);
    return design;
  }

  private static void note(Design design, Column column, int row, String words) {
    design.book().perform(design.edits().noted(column.reference(), row, words));
  }

  private static void tint(Design design, Tint tint, List<Integer> rows, Column... columns) {
    List<Reference> references = List.of(columns).stream().map(Column::reference).toList();
    design.book().perform(design.edits().tinted(references, rows, tint));
  }

  private static Remark remark(Design design, Column column, int row) {
    return design.book().remark(column.reference(), row);
  }

  private static boolean same(Design one, Design other) {
    return one.book().snapshot().sameEntries(other.book().snapshot());
  }

  private DesignFile.Opened saved(Design design, Optional<KeptFile> kept) throws Exception {
    Path file = folder.resolve("noted.xlsx");
    DesignFile.Written written = DesignFile.save(design, file, kept);
    assertThat(written.notes()).isEmpty();
    return DesignFile.read(file);
  }

  @Test
  void theyComeBackFromANewFile() throws Exception {
    Design design = noted();
    DesignFile.Opened opened = saved(design, Optional.empty());
    assertThat(same(opened.design(), design)).isTrue();
    assertThat(remark(opened.design(), Emitters.AREA, 3)).isEqualTo(new Remark(NOTE, Tint.VIOLET));
    assertThat(opened.design().book().journal().toUndo()).isEmpty();
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(Files.newInputStream(folder.resolve("noted.xlsx")))) {
      XSSFSheet zones = workbook.getSheet("Zones");
      int area = Headings.typed(zones, Emitters.AREA);
      CellAddress at = new CellAddress(TableSheet.FIRST_ROW + 3, area);
      assertThat(zones.getCellComment(at).getString().getString()).isEqualTo(NOTE);
      assertThat(zones.getRow(TableSheet.FIRST_ROW + 4).getCell(area).getCellStyle())
          .satisfies(
              style ->
                  assertThat(style.getFillForegroundXSSFColor().getARGBHex())
                      .isEqualTo("FFA1E0B0"));
    }
  }

  @Test
  void theyFollowTheirRowsIntoAFileThatWasOpened() throws Exception {
    DesignFile.Opened opened = saved(noted(), Optional.empty());
    Design design = opened.design();
    int zones = design.book().rows(Sheets.ZONES);
    List<Integer> order = IntStream.range(0, zones).map(i -> zones - 1 - i).boxed().toList();
    design.book().perform(design.edits().removed(Sheets.ZONES, 5, 1));
    design.book().undo();
    design.book().perform(design.edits().reordered(Sheets.ZONES, "other way round", order));
    design.book().perform(design.edits().removed(Sheets.ZONES, 0, 2));
    note(design, Demand.RUN_TIME, 0, "new here");
    note(design, Plants.PLANT_FACTOR, zones - 4, "");
    tint(design, Tint.NONE, List.of(zones - 2 - 5), Emitters.AREA);
    tint(design, Tint.BLUE, List.of(0), Emitters.AREA);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 1, 1));
    DesignFile.Opened again = saved(design, Optional.of(opened.kept()));
    assertThat(same(again.design(), design)).isTrue();
    assertThat(remark(again.design(), Emitters.AREA, zones - 5))
        .isEqualTo(new Remark(NOTE, Tint.VIOLET));
    assertThat(
            IntStream.range(0, again.design().book().rows(Sheets.ZONES))
                .mapToObj(row -> remark(again.design(), Emitters.AREA, row).note())
                .filter(NOTE::equals))
        .hasSize(1);
  }

  @Test
  void whatAnotherProgramPutOnOurCellsIsReadAndStaysAsItWasMade() throws Exception {
    Path file = folder.resolve("theirs.xlsx");
    OwnThings.add(WrittenOnce.demo(folder), file);
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(remark(opened.design(), Emitters.AREA, 3))
        .isEqualTo(new Remark(OwnThings.REMARK, Tint.YELLOW));
    Designs.type(opened.design(), Emitters.AREA, 3, "4321");
    saved(opened.design(), Optional.of(opened.kept()));
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(Files.newInputStream(folder.resolve("noted.xlsx")))) {
      XSSFSheet zones = workbook.getSheet("Zones");
      XSSFCell area =
          zones.getRow(TableSheet.FIRST_ROW + 3).getCell(Headings.typed(zones, Emitters.AREA));
      assertThat(area.getCellComment().getAuthor()).isEqualTo("A person");
      assertThat(area.getCellStyle().getFillForegroundColor()).isEqualTo((short) 13);
    }
  }

  @Test
  void aNoteOnASheetNotInUseBringsTheSheetIntoTheFile() throws Exception {
    Design design = Designs.demo(UnitSystem.US);
    design.book().perform(design.edits().inserted(Sheets.RATES, 0, 1));
    for (Column column : List.of(Rates.BILLED_BY, Supply.SAFE_FLOW)) {
      note(design, column, 0, "ask the utility");
    }
    assertThat(same(saved(design, Optional.empty()).design(), design)).isTrue();
  }

  @Test
  void aLongTableHasThemToo() throws Exception {
    Design design = noted();
    for (int i = 0; i < 5; i++) {
      List<Integer> all = IntStream.range(0, design.book().rows(Sheets.ZONES)).boxed().toList();
      design.book().perform(design.edits().duplicated(Sheets.ZONES, all));
    }
    assertThat(design.book().rows(Sheets.ZONES)).isGreaterThan(DesignWriting.LONG_TABLE);
    assertThat(same(saved(design, Optional.empty()).design(), design)).isTrue();
  }

  @Test
  void aClientGetsNone() throws Exception {
    Path file = folder.resolve("client.xlsx");
    DesignFile.write(noted(), file, PackOrder.forClient().withoutProposal(), Optional.empty());
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      workbook.forEach(
          sheet -> assertThat(sheet.getCellComments()).as(sheet.getSheetName()).isEmpty());
    }
  }

  @Test
  void aFillOfOursOrAGreyOneIsNobodysColour() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      assertThat(read(workbook, "FFF1CC")).isEqualTo(Tint.NONE);
      assertThat(read(workbook, "FFF2CC")).isEqualTo(Tint.NONE);
      assertThat(read(workbook, "BFBFBF")).isEqualTo(Tint.NONE);
      assertThat(read(workbook, "00B050")).isEqualTo(Tint.GREEN);
      assertThat(read(workbook, "FFFF00")).isEqualTo(Tint.YELLOW);
      assertThat(read(workbook, "5B9BD5")).isEqualTo(Tint.BLUE);
      for (Tint tint : Tint.values()) {
        assertThat(read(workbook, "%06X".formatted(tint.light()))).isEqualTo(tint);
      }
      try (OutputStream nowhere = OutputStream.nullOutputStream()) {
        workbook.write(nowhere);
      }
    }
  }

  private static Tint read(XSSFWorkbook workbook, String digits) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFillForegroundColor(new XSSFColor(java.util.HexFormat.of().parseHex(digits), null));
    return CellRemarks.tint(style);
  }
}
