package zonewright.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Changes;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;

/** The design on the desk, the file it belongs to, and who wants to hear of it. */
final class OpenDesign {
  private final List<Runnable> onReplaced = new ArrayList<>();
  private final List<Consumer<Changes>> onChanged = new ArrayList<>();
  private final List<Runnable> onNamed = new ArrayList<>();
  private Design design;
  private Optional<Path> file = Optional.empty();
  private String usualName = "";
  private Runnable hearing = () -> {};

  OpenDesign(Design first, String name) {
    design = first;
    usualName = name;
    hear(first);
  }

  private void hear(Design heard) {
    hearing.run();
    hearing = heard.book().listen(changes -> onChanged.forEach(each -> each.accept(changes)));
  }

  /** Hears when another design lies on the desk. */
  void onReplaced(Runnable listener) {
    onReplaced.add(listener);
  }

  /** Hears of each edit, once. */
  void onChanged(Consumer<Changes> listener) {
    onChanged.add(listener);
  }

  /** Hears when the design has another name, or was saved. */
  void onNamed(Runnable listener) {
    onNamed.add(listener);
  }

  /** Puts another design on the desk. */
  void replace(Design other, Optional<Path> itsFile, String name) {
    design = other;
    file = itsFile;
    usualName = name;
    hear(other);
    onReplaced.forEach(Runnable::run);
    onNamed.forEach(Runnable::run);
  }

  /** Notes that the design was saved as it was when {@code last} was its last edit. */
  void saved(Path where, Optional<Edit> last) {
    file = Optional.of(where);
    book().journal().saved(last);
    onNamed.forEach(Runnable::run);
  }

  /** Tells those who show the name and whether all is saved. */
  void saidAnew() {
    onNamed.forEach(Runnable::run);
  }

  Design design() {
    return design;
  }

  Book book() {
    return design.book();
  }

  /** Returns the file it was read from or saved to. */
  Optional<Path> file() {
    return file;
  }

  /** Returns what to call it. */
  String name() {
    return file.map(path -> path.getFileName().toString()).orElse(usualName);
  }

  boolean unsaved() {
    return book().journal().unsaved();
  }

  /** Says whether a cell is still there. */
  boolean holds(Place place) {
    return place.row() >= 0 && place.row() < book().rows(place.column().table());
  }
}
