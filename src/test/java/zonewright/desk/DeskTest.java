package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.desk.part.Keyboard;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

@Tag("window")
@CacioTest
class DeskTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  /** Returns the list of findings once they are there: they are looked for beside the window. */
  private JTable findings() {
    JTable list = (JTable) desk.named("findings list");
    desk.waitUntil("the findings are there", () -> list.getRowCount() > 0);
    return list;
  }

  private static List<Entry> entries(Book book) {
    List<Entry> entries = new ArrayList<>();
    for (TableDefinition table : book.schema().tables()) {
      for (Row row : book.contents().rows(table.id())) {
        for (int at = 0; at < table.columns().size(); at++) {
          entries.add(row.entry(at));
        }
      }
    }
    return entries;
  }

  private String shown(zonewright.sheet.Column column, int row) {
    return desk.ask(
        () -> desk.book().shown(column.reference(), desk.book().outcome(column.reference(), row)));
  }

  @Test
  void opensOnTheDemoWithItsZonesInFront() {
    assertThat(desk.ask(() -> desk.window().frame().getTitle())).isEqualTo("the demo – Zonewright");
    assertThat(desk.ask(() -> desk.window().deck().frontTable())).isEqualTo(Sheets.ZONES);
    assertThat(desk.ask(findings()::getRowCount)).isPositive();
    assertThat(desk.ask(() -> desk.window().messages().sentence())).isEmpty();
  }

  @Test
  void aDesignOpensAtItsFirstColumnsWithACellOfTheFirstZone() {
    JTable grid = (JTable) desk.named("grid " + Sheets.ZONES);
    desk.waitUntil(
        "a cell of the first zone is selected",
        () -> grid.getSelectedRow() == 0 && grid.getSelectedColumn() >= 0);
    Rectangle seen = desk.ask(grid::getVisibleRect);
    Rectangle cell = desk.ask(() -> grid.getCellRect(0, grid.getSelectedColumn(), false));
    assertThat(seen.x).isZero();
    assertThat(seen.contains(cell)).isTrue();
    for (Column column : List.of(Emitters.AREA, Plants.PLANT)) {
      int at =
          desk.ask(() -> grid.convertColumnIndexToView(desk.book().position(column.reference())));
      assertThat(seen.contains(desk.ask(() -> grid.getCellRect(0, at, false))))
          .as(column.name())
          .isTrue();
    }
    Place at = desk.current();
    assertThat(desk.text("result"))
        .isEqualTo(shown(desk.ask(() -> desk.book().schema().column(at.column())), 0));
  }

  @Test
  void inAWideWindowTheFirstThingShownIsARunTime() {
    desk.act(() -> desk.window().frame().setSize(2600, 800));
    desk.act(() -> desk.window().deck().goToStart());
    assertThat(desk.current()).isEqualTo(new Place(Demand.RUN_TIME.reference(), 0));
  }

  @Test
  void whatIsTypedChangesWhatDependsOnItAndTheWorkingFollows() {
    desk.goTo(Emitters.PRECIPITATION_RATE, 0);
    String before = desk.text("result");
    desk.goTo(Emitters.AREA, 0);
    desk.type("1125 ft2");
    desk.goTo(Emitters.PRECIPITATION_RATE, 0);

    assertThat(desk.book().entry(Emitters.AREA.reference(), 0)).isEqualTo(new Entry.Figure(1125));
    assertThat(desk.text("result"))
        .isNotEqualTo(before)
        .isEqualTo(shown(Emitters.PRECIPITATION_RATE, 0));

    desk.click("button Undo");
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 0));
    desk.goTo(Emitters.PRECIPITATION_RATE, 0);
    assertThat(desk.text("result")).isEqualTo(before);
  }

  @Test
  void theMenuNamesTheEditThatUndoAndRedoWouldTouch() {
    assertThat(desk.item(1, 0)).isEqualTo("Undo");
    desk.goTo(Emitters.AREA, 2);
    desk.type("1700");
    assertThat(desk.item(1, 0)).isEqualTo("Undo typing into zone 3, Area");

    desk.press("ctrl Z");
    assertThat(desk.item(1, 0)).isEqualTo("Undo");
    assertThat(desk.item(1, 1)).isEqualTo("Redo typing into zone 3, Area");
    assertThat(desk.ask(() -> desk.window().frame().getTitle())).doesNotStartWith("•");
  }

  @Test
  void switchingUnitsThereAndBackGivesTheSameEntriesAndIsUndone() {
    List<Entry> before = desk.ask(() -> entries(desk.book()));
    desk.choose("Switch to");
    assertThat(desk.book().system()).isEqualTo(UnitSystem.SI);
    assertThat(desk.ask(() -> entries(desk.book()))).isNotEqualTo(before);

    desk.choose("Switch to");
    assertThat(desk.ask(() -> entries(desk.book()))).isEqualTo(before);

    desk.click("button Undo");
    assertThat(desk.book().system()).isEqualTo(UnitSystem.SI);
  }

  @Test
  void aClickOnAFindingGoesToItsCell() {
    Place expected =
        desk.ask(
            () -> {
              var finding = desk.window().openDesign().design().findings().get(0);
              return new Place(finding.column(), finding.row());
            });
    findings();
    desk.clickRow("findings list", 1);

    assertThat(desk.current()).isEqualTo(expected);
  }

  @Test
  void theNextFindingIsOneKeyAwayFromTheGrid() {
    Place first =
        desk.ask(
            () -> {
              var finding = desk.window().openDesign().design().findings().get(0);
              return new Place(finding.column(), finding.row());
            });
    findings();
    desk.goTo(Emitters.AREA, 5);
    desk.press("F8");

    assertThat(desk.current()).isEqualTo(first);
    desk.choose("Back");
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 5));
  }

  @Test
  void anInputOfTheWorkingLeadsUpstreamAndBack() {
    desk.goTo(Emitters.RATE_BY_AREA, 3);
    desk.click("input " + Emitters.AREA.name());
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 3));

    desk.click("Back");
    assertThat(desk.current()).isEqualTo(new Place(Emitters.RATE_BY_AREA.reference(), 3));
  }

  @Test
  void aDefaultTypedOverComesBackAtAPress() {
    desk.goTo(Plants.PLANT_FACTOR, 1);
    assertThat(desk.shows("back to default")).isFalse();
    String usual = desk.text("result");
    desk.type("0.33");
    desk.goTo(Plants.PLANT_FACTOR, 1);
    assertThat(desk.text("result")).isEqualTo("0.33");

    desk.click("back to default");
    assertThat(desk.text("result")).isEqualTo(usual);
    assertThat(desk.shows("back to default")).isFalse();
  }

  @Test
  void f6LeadsFromTheGridToTheWorkingTheFindingsAndThePictureAndBack() {
    desk.goTo(Emitters.RATE_BY_AREA, 3);
    keyboardIn("sheets");
    desk.press("F6");
    keyboardIn("working");
    desk.press("F6");
    keyboardIn("findings");
    desk.press("F6");
    keyboardIn("pictures");
    desk.press("F6");
    keyboardIn("sheets");
  }

  /** The keyboard goes over when the window's thread comes to it. */
  private void keyboardIn(String part) {
    desk.waitUntil("the keyboard is in the " + part, () -> Keyboard.has(desk.named(part)));
  }

  @Test
  void whatToDoAboutAFindingIsNotCutOffAfterAnEdit() {
    JTable list = findings();
    List<Integer> before = heights(list);
    desk.goTo(Emitters.AREA, 3);
    desk.type("about twelve");
    desk.waitUntil(
        "the new finding stands first",
        () -> String.valueOf(list.getValueAt(1, 2)).contains("about twelve"));
    desk.click("button Undo");
    desk.waitUntil(
        "the finding with its cure stands first again",
        () -> !String.valueOf(list.getValueAt(1, 2)).contains("about twelve"));
    assertThat(heights(list)).isEqualTo(before);
  }

  private List<Integer> heights(JTable list) {
    return desk.ask(
        () -> {
          List<Integer> heights = new ArrayList<>();
          for (int row = 0; row < list.getRowCount(); row++) {
            heights.add(list.getRowHeight(row));
          }
          return heights;
        });
  }

  @Test
  void findingsOfASeverityCanBeHidden() {
    JTable list = findings();
    int all = desk.ask(list::getRowCount);
    desk.click("filter note");
    int without = desk.ask(list::getRowCount);
    assertThat(without).isPositive().isLessThan(all);
    desk.click("filter note");
    assertThat(desk.ask(list::getRowCount)).isEqualTo(all);
  }

  @Test
  void deletePressedInTheFindingsLeavesTheGridAlone() {
    desk.goTo(Emitters.AREA, 0);
    desk.press("F6");
    desk.press("F6");
    desk.press("DELETE");

    assertThat(desk.book().journal().toUndo()).isEmpty();
  }
}
