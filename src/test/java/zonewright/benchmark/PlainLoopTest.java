package zonewright.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.sheet.Column;

/** The loop written by hand is a fair measure only while it gives the same numbers. */
class PlainLoopTest {
  @Test
  void theLoopWrittenByHandGivesTheNumbersOfTheSheet() {
    int count = 3000;
    Design design = ManyZones.design(count);
    PlainLoop loop = new PlainLoop(design);
    loop.run();
    assertThat(loop.results).hasSizeGreaterThan(30);
    for (Column column : loop.results.keySet()) {
      double[] numbers = loop.results.get(column);
      int known = 0;
      for (int row = 0; row < count; row++) {
        double number = design.book().number(column.reference(), row);
        if (Double.isNaN(number)) {
          assertThat(numbers[row]).as("%s in row %d", column, row).isNaN();
        } else {
          known++;
          assertThat(numbers[row])
              .as("%s in row %d", column, row)
              .isCloseTo(number, offset(1e-12 * Math.abs(number)));
        }
      }
      assertThat(known).as("numbers in %s", column).isGreaterThan(count / 20);
    }
  }
}
