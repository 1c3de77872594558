package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.Column;
import zonewright.sheet.Remark;
import zonewright.sheet.Tint;
import zonewright.trade.Sheets;
import zonewright.water.Demand;

/** Notes and colours of one's own, by key and by menu. */
@Tag("window")
@CacioTest
class DeskRemarksTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private Remark remark(Column column, int row) {
    return desk.ask(() -> desk.book().remark(column.reference(), row));
  }

  private void choose(Tint tint) {
    desk.act(
        () -> {
          for (MenuElement part : MenuSelectionManager.defaultManager().getSelectedPath()) {
            for (MenuElement each : part.getSubElements()) {
              if (("colour " + tint).equals(each.getComponent().getName())) {
                ((JMenuItem) each).doClick(0);
              }
            }
          }
          MenuSelectionManager.defaultManager().clearSelectedPath();
        });
  }

  private JTable grid() {
    return (JTable) desk.named("grid " + Sheets.ZONES);
  }

  private Set<Color> painted(Column column, int row) {
    desk.goTo(Facts.ZONE_NAME, 11);
    desk.goTo(column, 11);
    return desk.ask(
        () -> {
          JTable grid = grid();
          Rectangle cell = grid.getCellRect(row, grid.getSelectedColumn(), false);
          BufferedImage image =
              new BufferedImage(grid.getWidth(), grid.getHeight(), BufferedImage.TYPE_INT_RGB);
          grid.paint(image.getGraphics());
          Set<Color> colours = new HashSet<>();
          for (int x = cell.x; x < cell.x + cell.width; x++) {
            for (int y = cell.y; y < cell.y + cell.height; y++) {
              colours.add(new Color(image.getRGB(x, y)));
            }
          }
          return colours;
        });
  }

  @Test
  void aNoteIsWrittenShownAndTakenBack() {
    desk.goTo(Demand.RUN_TIME, 2);
    desk.press("shift F2");
    desk.waitUntil("the form is there", () -> desk.dialogIsOpen("note"));
    desk.act(() -> desk.inDialog("note", "note words").requestFocus());
    desk.write("seems long");
    desk.press("ctrl ENTER");
    assertThat(remark(Demand.RUN_TIME, 2).note()).isEqualTo("seems long");
    desk.goTo(Demand.RUN_TIME, 2);
    assertThat(
            desk.ask(() -> desk.shown("working page").getAccessibleContext()).getAccessibleName())
        .contains("Run time");
    assertThat(prose()).contains("seems long");
    assertThat(tip(2)).contains("seems long");
    desk.press("ctrl Z");
    assertThat(remark(Demand.RUN_TIME, 2)).isEqualTo(Remark.NONE);
    assertThat(prose()).doesNotContain("seems long");
  }

  private String prose() {
    return desk.ask(
        () -> {
          StringBuilder all = new StringBuilder();
          for (java.awt.Component part :
              ((java.awt.Container) desk.shown("working page")).getComponents()) {
            if (part instanceof javax.swing.text.JTextComponent text) {
              all.append(text.getText()).append('\n');
            }
          }
          return all.toString();
        });
  }

  private String tip(int row) {
    return desk.ask(
        () -> {
          JTable grid = grid();
          Rectangle cell = grid.getCellRect(row, grid.getSelectedColumn(), false);
          return grid.getToolTipText(
              new MouseEvent(grid, MouseEvent.MOUSE_MOVED, 0, 0, cell.x + 5, cell.y + 5, 0, false));
        });
  }

  @Test
  void wholeRowsAreColouredAlsoWhereColumnsAreHidden() {
    desk.goTo(Emitters.AREA, 1);
    desk.press("shift SPACE");
    desk.press("ctrl shift K");
    choose(Tint.GREEN);
    assertThat(
            desk.ask(
                () ->
                    desk.book().contents().row(Sheets.ZONES, 1).remarks().size()
                        == desk.book().schema().table(Sheets.ZONES).columns().size()))
        .isTrue();
    assertThat(painted(Emitters.AREA, 1)).contains(new Color(Tint.GREEN.light()));
    assertThat(painted(Emitters.AREA, 2)).doesNotContain(new Color(Tint.GREEN.light()));
    desk.press("ctrl Z");
    assertThat(remark(Emitters.AREA, 1)).isEqualTo(Remark.NONE);
  }

  @Test
  void marksOfTheProgramAreSeenOnAColour() {
    desk.goTo(Emitters.AREA, 0);
    desk.type("-5");
    Set<Color> before = painted(Emitters.AREA, 0);
    desk.goTo(Emitters.AREA, 0);
    desk.press("ctrl shift K");
    choose(Tint.BLUE);
    Set<Color> after = painted(Emitters.AREA, 0);
    assertThat(after).contains(new Color(Tint.BLUE.light())).containsAll(before);
  }

  @Test
  void aOneRowSheetTakesThemToo() {
    desk.goTo(Facts.PREPARED_BY, 0);
    desk.press("ctrl shift K");
    choose(Tint.YELLOW);
    assertThat(remark(Facts.PREPARED_BY, 0).tint()).isEqualTo(Tint.YELLOW);
    desk.press("shift F2");
    desk.waitUntil("the form is there", () -> desk.dialogIsOpen("note"));
    desk.act(() -> desk.dialogField("note", "note words").setText("initials"));
    desk.clickInDialog("note", "note Keep");
    assertThat(remark(Facts.PREPARED_BY, 0)).isEqualTo(new Remark("initials", Tint.YELLOW));
  }
}
