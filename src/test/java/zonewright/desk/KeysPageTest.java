package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.InputEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.help.HelpBook;

/** The page on keys tells every key that a menu shows. */
@Tag("window")
@CacioTest
class KeysPageTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private static void gather(JMenu menu, List<KeyStroke> keys) {
    for (int at = 0; at < menu.getItemCount(); at++) {
      JMenuItem item = menu.getItem(at);
      if (item instanceof JMenu inner) {
        gather(inner, keys);
      } else if (item != null && item.getAccelerator() != null) {
        keys.add(item.getAccelerator());
      }
    }
  }

  private static String words(KeyStroke key) {
    Map<String, String> names =
        Map.ofEntries(
            Map.entry("SEMICOLON", ";"),
            Map.entry("PLUS", "Plus"),
            Map.entry("MINUS", "Minus"),
            Map.entry("SPACE", "Space"),
            Map.entry("DELETE", "Delete"),
            Map.entry("LEFT", "Left"),
            Map.entry("RIGHT", "Right"),
            Map.entry("UP", "Up"),
            Map.entry("DOWN", "Down"),
            Map.entry("PAGE_UP", "PageUp"),
            Map.entry("PAGE_DOWN", "PageDown"),
            Map.entry("PERIOD", "Period"),
            Map.entry("COMMA", "Comma"));
    String[] parts = key.toString().split(" ", -1);
    String last = parts[parts.length - 1];
    int held = key.getModifiers();
    return ((held & InputEvent.CTRL_DOWN_MASK) != 0 ? "Ctrl+" : "")
        + ((held & InputEvent.ALT_DOWN_MASK) != 0 ? "Alt+" : "")
        + ((held & InputEvent.SHIFT_DOWN_MASK) != 0 ? "Shift+" : "")
        + names.getOrDefault(last, last);
  }

  @Test
  void everyKeyOfAMenuStandsOnThePage() {
    String page = HelpBook.page(HelpBook.KEYS).orElseThrow().body();
    List<KeyStroke> keys = new ArrayList<>();
    desk.act(
        () -> {
          JMenuBar bar = desk.window().frame().getJMenuBar();
          for (int menu = 0; menu < bar.getMenuCount(); menu++) {
            gather(bar.getMenu(menu), keys);
          }
        });
    assertThat(keys).hasSizeGreaterThan(30);
    assertThat(keys.stream().map(KeysPageTest::words).filter(word -> !word.matches("Ctrl\\+[1-8]")))
        .allSatisfy(word -> assertThat(page).contains(word));
  }

  @Test
  void theMenuOpensThePage() {
    desk.choose("Keys");
    assertThat(
            desk.ask(
                () ->
                    java.util.Arrays.stream(java.awt.Window.getWindows())
                        .anyMatch(
                            window ->
                                "column guide".equals(window.getName()) && window.isShowing())))
        .isTrue();
    desk.act(
        () ->
            java.util.Arrays.stream(java.awt.Window.getWindows())
                .filter(window -> "column guide".equals(window.getName()))
                .forEach(window -> window.setVisible(false)));
  }

  @Test
  void whatWasTypedOnAnySheetIsFoundAndReplaced() {
    desk.press("ctrl S");
    desk.choose("Find on all sheets");
    desk.act(() -> desk.dialogField("find everywhere", "find on all sheets").setText("lawn"));
    desk.waitUntil(
        "cells are found",
        () ->
            ((javax.swing.JList<?>) desk.inDialog("find everywhere", "found on all sheets"))
                    .getModel()
                    .getSize()
                > 0);
    desk.act(() -> desk.dialogField("find everywhere", "replace on all sheets").setText("grass"));
    desk.act(
        () ->
            ((javax.swing.JButton) desk.inDialog("find everywhere", "replace all on all sheets"))
                .doClick());
    assertThat(
            desk.ask(
                () ->
                    desk.book().outcome(zonewright.design.Facts.ZONE_PLACE.reference(), 0).text()))
        .contains("grass");
    assertThat(desk.ask(() -> desk.book().journal().toUndo().orElseThrow().name()))
        .contains("replacement");
    desk.act(() -> desk.inDialog("find everywhere", "find on all sheets").requestFocus());
    desk.act(
        () ->
            javax.swing.SwingUtilities.getWindowAncestor(
                    desk.inDialog("find everywhere", "find on all sheets"))
                .setVisible(false));
  }

  @Test
  void columnsAreTickedInOneList() {
    desk.act(
        () ->
            desk.window()
                .deck()
                .front()
                .action(zonewright.desk.grid.GridAction.CHOOSE_COLUMNS)
                .actionPerformed(null));
    javax.swing.JList<?> list =
        (javax.swing.JList<?>) desk.ask(() -> desk.inDialog("column chooser", "columns to show"));
    desk.act(() -> desk.dialogField("column chooser", "find columns").setText("plant factor"));
    boolean before = shown();
    desk.act(() -> list.setSelectedIndex(1));
    desk.act(
        () ->
            list.getActionForKeyStroke(KeyStroke.getKeyStroke("SPACE"))
                .actionPerformed(new java.awt.event.ActionEvent(list, 0, "")));
    assertThat(shown()).isNotEqualTo(before);
    desk.act(() -> javax.swing.SwingUtilities.getWindowAncestor(list).setVisible(false));
  }

  private boolean shown() {
    return desk.ask(
        () ->
            desk.window()
                .deck()
                .front()
                .grid()
                .orElseThrow()
                .columns()
                .isShown(zonewright.plants.Plants.PLANT_FACTOR));
  }
}
