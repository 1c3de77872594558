package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.desk.file.SheetChoice;
import zonewright.desk.grid.GridAction;
import zonewright.desk.help.Cautions;
import zonewright.desk.list.ListForm;
import zonewright.desk.part.Prose;
import zonewright.exchange.ForeignList;
import zonewright.exchange.ListMatch;
import zonewright.exchange.ListProblem;
import zonewright.trade.Sheets;
import zonewright.workbook.pack.PackSheets;

/** Whoever does not see the window must be told what each thing in it is. */
@Tag("window")
@CacioTest
class AccessibleNamesTest {
  /** Roles of what a person acts on; what only holds other things needs no name. */
  private static final Set<AccessibleRole> ACTED_ON =
      Set.of(
          AccessibleRole.PUSH_BUTTON,
          AccessibleRole.TOGGLE_BUTTON,
          AccessibleRole.CHECK_BOX,
          AccessibleRole.RADIO_BUTTON,
          AccessibleRole.COMBO_BOX,
          AccessibleRole.TEXT,
          AccessibleRole.TABLE,
          AccessibleRole.LIST,
          AccessibleRole.SLIDER,
          AccessibleRole.PAGE_TAB,
          AccessibleRole.PAGE_TAB_LIST,
          AccessibleRole.MENU,
          AccessibleRole.MENU_ITEM,
          AccessibleRole.CANVAS,
          AccessibleRole.FRAME);

  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private static void nameless(Accessible of, String path, List<String> found) {
    AccessibleContext context = of.getAccessibleContext();
    AccessibleRole role = context.getAccessibleRole();
    String name = context.getAccessibleName();
    boolean arrow = of instanceof javax.swing.plaf.basic.BasicArrowButton;
    // the arrow of a list and the cross in a field can be reached by the mouse only; keys do
    // without
    boolean partOfList = path.contains("combo box") || path.contains("> text ");
    boolean prose = of instanceof Prose prosa && !prosa.isFocusable();
    if (ACTED_ON.contains(role)
        && !arrow
        && !prose
        && !partOfList
        && (name == null || name.isBlank())) {
      found.add(path + " > " + role + " " + of.getClass().getSimpleName());
    }
    if (of instanceof JTable) {
      return;
    }
    for (int i = 0; i < context.getAccessibleChildrenCount(); i++) {
      Accessible child = context.getAccessibleChild(i);
      if (child != null) {
        nameless(child, path + " > " + role + " " + name, found);
      }
    }
  }

  private List<String> nameless() {
    return desk.ask(
        () -> {
          List<String> found = new ArrayList<>();
          nameless(desk.window().frame(), "", found);
          return found;
        });
  }

  @Test
  void everythingAPersonActsOnHasAName() {
    assertThat(nameless()).isEmpty();
  }

  @Test
  void soHaveTheLinesThatAskSomething() {
    for (GridAction which : List.of(GridAction.FILTER, GridAction.SORT, GridAction.REPLACE)) {
      desk.choose(which.label());
      assertThat(nameless()).as("%s", which).isEmpty();
    }
    desk.act(() -> desk.window().deck().tools().keepView());
    assertThat(nameless()).isEmpty();
  }

  private Optional<Window> other() {
    return Arrays.stream(Window.getWindows())
        .filter(window -> window.isShowing() && window instanceof Dialog)
        .findFirst();
  }

  private List<String> namelessIn(Runnable opening) {
    EventQueue.invokeLater(opening);
    desk.waitUntil("a window of its own", () -> other().isPresent());
    List<String> found =
        desk.ask(
            () -> {
              List<String> all = new ArrayList<>();
              nameless((Accessible) other().orElseThrow(), "", all);
              return all;
            });
    desk.act(() -> other().orElseThrow().dispose());
    desk.waitUntil("it is closed", () -> other().isEmpty());
    return found;
  }

  private ListMatch list() {
    try {
      return new ListMatch(
          desk.book(), Sheets.ZONES, ForeignList.pasted("Station\tPhone\n1\t555 0101\n"));
    } catch (ListProblem problem) {
      throw new IllegalStateException(problem);
    }
  }

  @Test
  void soHaveAllWindowsThatOpen() {
    DeskWindow window = desk.window();
    Map<String, Runnable> windows = new LinkedHashMap<>();
    windows.put("nights", () -> desk.item("The nights").doClick(0));
    windows.put("season", () -> desk.item("A season").doClick(0));
    desk.goTo(zonewright.soil.Soils.INTAKE_RATE, 6);
    windows.put("input", () -> desk.item("Find the input …").doClick(0));
    windows.put("help", () -> desk.item("What this column means").doClick(0));
    windows.put("cautions", () -> Cautions.open(window.frame()));
    windows.put("about", () -> Cautions.openAbout(window.frame()));
    windows.put("pages", () -> desk.item("Print the sheet").doClick(0));
    windows.put("start", () -> desk.item("New …").doClick(0));
    windows.put("sheets", () -> SheetChoice.ask(window.frame(), PackSheets.all()));
    windows.put(
        "list", () -> ListForm.open(window.frame(), "a list", desk.book(), list(), any -> {}));
    windows.forEach((name, opening) -> assertThat(namelessIn(opening)).as(name).isEmpty());
  }
}
