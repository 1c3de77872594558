package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.estimate.BuildUp;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.kit.Styles;

/** Whoever adds an estimate up with pencil and paper finds the numbers it was made from. */
class CheckedOnPaperTest {
  @TempDir Path folder;

  private final Design design = Design.blank(UnitSystem.US);

  private void type(Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
  }

  @BeforeEach
  void priced() {
    design.book().perform(design.edits().inserted(Sheets.PARTS, 0, 2));
    type(Parts.ITEM_NAME, 0, "Wire");
    type(Parts.PRICE, 0, "0.3275");
    type(Parts.COUNT, 0, "1250");
    type(Parts.ITEM_NAME, 1, "Pump");
    type(Parts.PRICE, 1, "9746870.3509");
    type(Parts.COUNT, 1, "35");
    type(JobFacts.TAX_SHARE, 0, "8.125 %");
  }

  private String printed(String... arguments) throws Exception {
    Path file = folder.resolve("priced.xlsx");
    DesignFile.write(design, file);
    String[] all = new String[arguments.length + 2];
    all[0] = "calculate";
    all[1] = file.toString();
    System.arraycopy(arguments, 0, all, 2, arguments.length);
    CommandRun run = CommandRun.of(all);
    assertThat(run.code()).as(run.err()).isZero();
    return run.out();
  }

  /** 0.3275 × 1250 = 409.375, which is 409.38; of 0.33 it would be 412.50. */
  @Test
  void aUnitPriceShowsTheDecimalsItHas() throws Exception {
    assertThat(printed("--sheet", "Parts", "--columns", "Item,Price,Quantity,Material"))
        .containsPattern("Wire +0\\.3275 +1,250\\.0 +409\\.38");
    assertThat(design.book().working(Parts.MATERIAL.reference(), 0).toString()).contains("0.3275");
  }

  @Test
  void aPercentShowsTheDecimalsItHas() throws Exception {
    assertThat(printed("--sheet", "Estimate")).containsPattern("Tax +8\\.125 %");
    assertThat(design.book().working(BuildUp.TAX.reference(), 0).toString()).contains("8.125 %");
    assertThat(Styles.format(JobFacts.TAX_SHARE, UnitSystem.US)).isEqualTo("0.00####%");
  }

  @Test
  void moneyForOtherProgramsIsMoney() throws Exception {
    String lines = printed("--sheet", "Parts", "--columns", "Item,Price,Material", "--csv");
    assertThat(lines).contains("Wire,0.3275,409.38").contains("Pump,9746870.3509,341140462.28");
    // 341,140,462.28 + 409.38 with the tax of 8.125 %, to the cent.
    assertThat(printed("--sheet", "Estimate", "--columns", "Price before tax,Tax amount", "--csv"))
        .contains("341140871.66,27717695.82");
  }

  @Test
  void aThirdIsShownWithItsUsualDecimals() {
    assertThat(JobFacts.TAX_SHARE.shown(1 / 3.0, UnitSystem.US)).isEqualTo("33.33 %");
    assertThat(Parts.PRICE.shown(12.5, UnitSystem.US)).isEqualTo("12.50");
    assertThat(Parts.MATERIAL.shown(0.3275, UnitSystem.US)).as("calculated").isEqualTo("0.33");
  }
}
