package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.formula.Reference;
import zonewright.sheet.Edits;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;

/** The sheets of a job whose currency a person types. */
@Tag("window")
@CacioTest
class DeskCurrencyTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private String shown(String grid, Reference column, int row) {
    return desk.ask(
        () -> {
          JTable table = (JTable) desk.shown(grid);
          int at = table.convertColumnIndexToView(desk.book().position(column));
          return table.getValueAt(row, at).toString();
        });
  }

  @Test
  void amountsStandWithTheDecimalsOfTheCurrencyAtOnceAndUndoGivesTheOthersBack() {
    desk.act(() -> desk.book().perform(new Edits(desk.book()).inserted(Sheets.PARTS, 0, 1)));
    desk.goTo(Parts.ITEM_NAME, 0);
    desk.type("Valve");
    desk.goTo(Parts.PRICE, 0);
    desk.type("12.5");
    desk.goTo(Parts.COUNT, 0);
    desk.type("3");
    assertThat(shown("grid parts", Parts.MATERIAL.reference(), 0)).isEqualTo("37.50");
    desk.goTo(JobFacts.CURRENCY, 0);
    desk.type("JPY");
    assertThat(desk.current())
        .as("Enter goes on")
        .isEqualTo(new Place(JobFacts.LABOUR_RATE.reference(), 0));
    desk.goTo(Parts.MATERIAL, 0);
    assertThat(shown("grid parts", Parts.MATERIAL.reference(), 0)).isEqualTo("38");
    assertThat(shown("grid parts", Parts.PRICE.reference(), 0)).isEqualTo("12.5");
    desk.press("ctrl Z");
    assertThat(shown("grid parts", Parts.MATERIAL.reference(), 0)).isEqualTo("37.50");
    assertThat(desk.book().rows(Sheets.PARTS)).isEqualTo(1);
  }
}
