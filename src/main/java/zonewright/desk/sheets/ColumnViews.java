package zonewright.desk.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.desk.grid.Arrangement;
import zonewright.desk.part.UserPreferences;
import zonewright.sheet.TableDefinition;

/** The ways to look at the columns of each sheet: standard ones, one's own, and the last. */
public final class ColumnViews {
  private static final String BY_NAME = "view ";

  private final UserPreferences memory;

  /** A way to look at the columns of a sheet, under a name. */
  public record View(String name, Arrangement arrangement, boolean own) {}

  public ColumnViews(UserPreferences memory) {
    this.memory = memory;
  }

  /** Returns all views of a sheet, the standard ones first. */
  public List<View> of(TableDefinition table, int frozen) {
    List<View> views = new ArrayList<>();
    StandardViews.of(table)
        .forEach((name, ids) -> views.add(new View(name, Arrangement.of(ids, frozen), false)));
    views.addAll(own(table));
    return views;
  }

  private List<View> own(TableDefinition table) {
    List<View> views = new ArrayList<>();
    for (String line : memory.word("views-" + table.id(), "").split("\n", -1)) {
      int tab = line.indexOf('\t');
      if (tab > 0) {
        Arrangement.read(line.substring(tab + 1))
            .ifPresent(found -> views.add(new View(line.substring(0, tab), found, true)));
      }
    }
    return views;
  }

  private void keepOwn(TableDefinition table, List<View> views) {
    StringBuilder text = new StringBuilder();
    for (View view : views) {
      text.append(view.name()).append('\t').append(view.arrangement().text()).append('\n');
    }
    memory.keep("views-" + table.id(), text.toString());
  }

  /** Keeps an arrangement as a view of one's own, in place of one of the same name. */
  public void keep(TableDefinition table, String name, Arrangement arrangement) {
    String plain = name.replaceAll("\\s+", " ").strip();
    List<View> views = new ArrayList<>(own(table));
    views.removeIf(view -> view.name().equals(plain));
    views.add(new View(plain, arrangement, true));
    keepOwn(table, views);
  }

  /** Forgets a view of one's own. */
  public void forget(TableDefinition table, String name) {
    List<View> views = new ArrayList<>(own(table));
    views.removeIf(view -> view.name().equals(name));
    keepOwn(table, views);
  }

  /** Returns the view that shows just these columns so, if there is one. */
  public Optional<View> matching(TableDefinition table, int frozen, Arrangement shown) {
    List<View> views = of(table, frozen);
    return views.stream()
        .filter(view -> view.arrangement().equals(shown))
        .findFirst()
        .or(
            () ->
                views.stream().filter(view -> sameColumns(view.arrangement(), shown)).findFirst());
  }

  private static boolean sameColumns(Arrangement one, Arrangement other) {
    return ids(one).equals(ids(other));
  }

  private static List<String> ids(Arrangement arrangement) {
    return arrangement.columns().stream().map(Arrangement.Shown::id).toList();
  }

  /** Returns the arrangement in which a sheet was left, or the first of its views. */
  public Arrangement last(TableDefinition table, int frozen) {
    String kept = memory.word("columns-" + table.id(), "");
    List<View> views = of(table, frozen);
    return views.stream()
        .filter(view -> kept.equals(BY_NAME + view.name()))
        .map(View::arrangement)
        .findFirst()
        .or(() -> Arrangement.read(kept))
        .orElse(views.get(0).arrangement());
  }

  /**
   * Remembers in which arrangement a sheet is: a view by its name, so that columns which come with
   * a later version are seen in it.
   */
  public void keepLast(TableDefinition table, int frozen, Arrangement shown) {
    String text =
        of(table, frozen).stream()
            .filter(view -> view.arrangement().equals(shown))
            .map(view -> BY_NAME + view.name())
            .findFirst()
            .orElse(shown.text());
    memory.keep("columns-" + table.id(), text);
  }
}
