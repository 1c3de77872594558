package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

class EmptyHintTest {
  private static TableDefinition table(String id) {
    return IrrigationSheets.schema().table(id);
  }

  @Test
  void anEmptySheetSaysWhatItIsForAndHowItBegins() {
    assertThat(EmptyHint.words(table(Sheets.FOUND), false, ""))
        .isEqualTo(table(Sheets.FOUND).about() + " Type into the first row to begin.");
  }

  @Test
  void aSheetThatFollowsAnotherNamesIt() {
    assertThat(EmptyHint.words(table(Sheets.PIPES), false, "Zones"))
        .endsWith("Its rows follow those of the sheet Zones, and there is none yet.");
  }

  @Test
  void aFilterThatHidesAllIsNotAnEmptySheet() {
    assertThat(EmptyHint.words(table(Sheets.ZONES), true, ""))
        .isEqualTo("No zone fits the filter.");
  }

  @Test
  void theWordsStandBelowTheRowsAndInsideWhatIsSeen() {
    BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    EmptyHint.paint(
        g, "some words ".repeat(12), new Rectangle(0, 0, 300, 200), 40, new Font("Dialog", 0, 12));
    g.dispose();
    int top = Integer.MAX_VALUE;
    int right = 0;
    for (int y = 0; y < 200; y++) {
      for (int x = 0; x < 300; x++) {
        if ((image.getRGB(x, y) & 0xFFFFFF) != 0) {
          top = Math.min(top, y);
          right = Math.max(right, x);
        }
      }
    }
    assertThat(top).isBetween(41, 199);
    assertThat(right).isBetween(100, 299);
  }
}
