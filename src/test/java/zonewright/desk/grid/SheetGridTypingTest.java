package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

@CacioTest
@Tag("window")
class SheetGridTypingTest {
  private GridWindow window;

  @BeforeEach
  void open() {
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES);
  }

  @AfterEach
  void close() {
    window.close();
  }

  @Test
  void typingReplacesWhatTheCellHeld() {
    window.goTo(Emitters.AREA, 2);
    window.type("95");
    window.enter();
    assertThat(window.entry(Emitters.AREA, 2)).isEqualTo(new Entry.Figure(95));
    assertThat(window.selectedRow()).isEqualTo(3);
  }

  @Test
  void aColumnGrowsWithWhatIsTyped() {
    window.goTo(Facts.ZONE_PLACE, 2);
    int before = window.columnWidth(Facts.ZONE_PLACE);
    window.type("Between the orangery and the wall");
    window.enter();
    assertThat(window.columnWidth(Facts.ZONE_PLACE)).isGreaterThan(before);
  }

  @Test
  void f2EditsWhatTheCellHolds() {
    window.goTo(Emitters.AREA, 2);
    window.press(KeyEvent.VK_F2);
    window.type("5");
    window.enter();
    assertThat(window.entry(Emitters.AREA, 2)).isEqualTo(new Entry.Figure(18005));
  }

  @Test
  void aDoubleClickEditsInPlace() {
    window.clickCell(1, 1, 2);
    window.type("!");
    window.enter();
    assertThat(window.entry(Facts.ZONE_PLACE, 1))
        .isInstanceOfSatisfying(
            Entry.Words.class,
            words ->
                assertThat(words.text())
                    .contains("!")
                    .hasSize("Reading lawn, south half".length() + 1));
  }

  @Test
  void editingWithoutAChangeTypesNothingOverADefault() {
    window.goTo(Plants.PLANT_FACTOR, 0);
    window.press(KeyEvent.VK_F2);
    window.enter();
    assertThat(window.entry(Plants.PLANT_FACTOR, 0)).isEqualTo(Entry.BLANK);
  }

  @Test
  void tabGoesRightAndEnterReturnsBelowWhereTheRunBegan() {
    window.goTo(Facts.ZONE_PLACE, 4);
    window.type("Gate");
    window.press(KeyEvent.VK_TAB);
    window.type("B");
    window.press(KeyEvent.VK_TAB);
    window.type("700");
    window.enter();
    assertThat(window.entry(Facts.ZONE_PLACE, 4)).isEqualTo(new Entry.Words("Gate"));
    assertThat(window.entry(Emitters.AREA, 4)).isEqualTo(new Entry.Figure(700));
    assertThat(window.selectedColumn()).isEqualTo(Facts.ZONE_PLACE.reference());
    assertThat(window.selectedRow()).isEqualTo(5);
    window.press(KeyEvent.VK_TAB, KeyEvent.VK_SHIFT);
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_SHIFT);
    assertThat(window.selectedRow()).isEqualTo(4);
  }

  @Test
  void escapeLeavesTheCellAsItWas() {
    window.goTo(Emitters.AREA, 2);
    window.type("1");
    window.press(KeyEvent.VK_ESCAPE);
    assertThat(window.entry(Emitters.AREA, 2)).isEqualTo(new Entry.Figure(1800));
    assertThat(window.ask(() -> window.table.isEditing())).isFalse();
  }

  @Test
  void amountsAreTypedWithUnitsAndFractions() {
    window.goTo(Emitters.AREA, 0);
    window.type("100 m2");
    window.enter();
    window.goTo(Plants.ROOT_DEPTH, 0);
    window.type("7 1/2 in");
    window.enter();
    assertThat(window.outcome(Emitters.AREA, 0).number()).isBetween(1076.3, 1076.5);
    assertThat(window.entry(Plants.ROOT_DEPTH, 0)).isEqualTo(new Entry.Figure(7.5));
  }

  @Test
  void aBadEntryIsKeptFlaggedAndBlocksNothing() {
    window.goTo(Emitters.AREA, 1);
    window.type("big");
    window.enter();
    assertThat(window.entry(Emitters.AREA, 1)).isInstanceOf(Entry.Unreadable.class);
    assertThat(window.outcome(Emitters.AREA, 1)).isInstanceOf(Outcome.Refused.class);
    assertThat(window.selectedRow()).isEqualTo(2);
    CellLook look = window.ask(() -> new CellLooks(window.design.book()).look(Emitters.AREA, 1));
    assertThat(look.standing()).isEqualTo(CellLook.Standing.REFUSED);
    assertThat(look.text()).isEqualTo("big");
    assertThat(look.sentence()).contains("Area");
  }

  @Test
  void aChoiceCompletesAsItIsTyped() {
    window.goTo(Soils.SOIL_TYPE, 0);
    window.type("sandy l");
    JTextComponent field = window.ask(() -> (JTextComponent) window.table.getEditorComponent());
    window.waitUntil("the word is complete", () -> field.getText().equals("sandy loam"));
    window.enter();
    assertThat(window.entry(Soils.SOIL_TYPE, 0)).isEqualTo(new Entry.Words("sandy loam"));
  }

  @Test
  void theListOfAChoiceOpensAndIsWalkedWithKeys() {
    window.goTo(Soils.SOIL_TYPE, 0);
    String first = window.ask(() -> window.design.book().choices(Soils.SOIL_TYPE).get(0));
    window.does(GridAction.CHOOSE);
    window.press(KeyEvent.VK_PAGE_UP);
    window.press(KeyEvent.VK_PAGE_UP);
    window.enter();
    assertThat(window.entry(Soils.SOIL_TYPE, 0)).isEqualTo(new Entry.Words(first));
  }

  @Test
  void aWordThatIsInNoListIsKeptWithAHint() {
    window.goTo(Soils.SOIL_TYPE, 0);
    window.type("loom");
    window.enter();
    assertThat(window.entry(Soils.SOIL_TYPE, 0)).isEqualTo(new Entry.Words("loom"));
    assertThat(window.outcome(Soils.SOIL_TYPE, 0).sentence()).contains("loam");
  }

  @Test
  void deleteBringsADefaultBack() {
    window.goTo(Plants.PLANT_FACTOR, 0);
    double usual = window.outcome(Plants.PLANT_FACTOR, 0).number();
    window.type("0.5");
    window.enter();
    assertThat(window.outcome(Plants.PLANT_FACTOR, 0).number()).isEqualTo(0.5);
    window.press(KeyEvent.VK_UP);
    window.press(KeyEvent.VK_DELETE);
    assertThat(window.entry(Plants.PLANT_FACTOR, 0)).isEqualTo(Entry.BLANK);
    assertThat(window.outcome(Plants.PLANT_FACTOR, 0).number()).isEqualTo(usual);
  }

  @Test
  void calculatedCellsTakeNoTyping() {
    window.goTo(Plants.LANDSCAPE_COEFFICIENT, 0);
    window.type("3");
    assertThat(window.ask(() -> window.table.isEditing())).isFalse();
    assertThat(window.ask(() -> window.design.book().journal().toUndo())).isEmpty();
  }

  @Test
  void typingInTheLastLineBeginsANewZone() {
    int before = window.rows(Sheets.ZONES);
    window.act(() -> window.table.changeSelection(before, 1, false, false));
    window.type("Pond edge");
    window.press(KeyEvent.VK_TAB);
    assertThat(window.rows(Sheets.ZONES)).isEqualTo(before + 1);
    assertThat(window.entry(Facts.ZONE_PLACE, before)).isEqualTo(new Entry.Words("Pond edge"));
    assertThat(window.entry(Facts.ZONE_NAME, before)).isEqualTo(new Entry.Words("13"));
    assertThat(window.selectedRow()).isEqualTo(before);
  }
}
