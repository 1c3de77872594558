package zonewright.desk.part;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Changes;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;
import zonewright.workbook.KeptFile;

/** The design on the desk, the file it belongs to, and who wants to hear of it. */
public final class OpenDesign {
  private final List<Runnable> onReplaced = new ArrayList<>();
  private final List<Consumer<Changes>> onChanged = new ArrayList<>();
  private final List<Runnable> onNamed = new ArrayList<>();
  private final Supplier<Design> first;
  private Design design;
  private Optional<Path> file = Optional.empty();
  private Optional<KeptFile> kept = Optional.empty();
  private String usualName = "";
  private Runnable hearing = () -> {};

  public OpenDesign(Design first, String name) {
    this(() -> first, name);
  }

  /** Begins with a design that is asked for, and waited for, when it is first wanted. */
  public OpenDesign(Supplier<Design> first, String name) {
    this.first = first;
    usualName = name;
  }

  private void hear(Design heard) {
    hearing.run();
    hearing = heard.book().listen(changes -> onChanged.forEach(each -> each.accept(changes)));
  }

  /** Hears when another design lies on the desk. */
  public void onReplaced(Runnable listener) {
    onReplaced.add(listener);
  }

  /** Hears of each edit, once. */
  public void onChanged(Consumer<Changes> listener) {
    onChanged.add(listener);
  }

  /** Hears when the design has another name, or was saved. */
  public void onNamed(Runnable listener) {
    onNamed.add(listener);
  }

  /** Puts a new design on the desk, which came from no file. */
  public void replace(Design other, String name) {
    replace(other, Optional.empty(), Optional.empty(), name);
  }

  /** Puts a design on the desk that was read from a file. */
  public void replace(Design other, Path itsFile, KeptFile itsContent, String name) {
    replace(other, Optional.of(itsFile), Optional.of(itsContent), name);
  }

  /** Puts a design on the desk, with its file and what that holds beside it, if any. */
  public void replace(
      Design other, Optional<Path> itsFile, Optional<KeptFile> itsContent, String name) {
    design = other;
    kept = itsContent;
    file = itsFile;
    usualName = name;
    hear(other);
    onReplaced.forEach(Runnable::run);
    onNamed.forEach(Runnable::run);
  }

  /** Notes that the design was saved as it was when {@code last} was its last edit. */
  public void saved(Path where, KeptFile content, Optional<Edit> last) {
    kept = Optional.of(content);
    file = Optional.of(where);
    book().journal().saved(last);
    onNamed.forEach(Runnable::run);
  }

  /** Tells those who show the name and whether all is saved. */
  public void saidAnew() {
    onNamed.forEach(Runnable::run);
  }

  public Design design() {
    if (design == null) {
      design = first.get();
      hear(design);
    }
    return design;
  }

  public Book book() {
    return design().book();
  }

  /** Returns the file it was read from or saved to. */
  public Optional<Path> file() {
    return file;
  }

  /** Returns the content of that file, for what is a person's own in it. */
  public Optional<KeptFile> kept() {
    return kept;
  }

  /** Returns what to call it. */
  public String name() {
    return file.map(path -> path.getFileName().toString()).orElse(usualName);
  }

  public boolean unsaved() {
    return book().journal().unsaved();
  }

  /** Says whether a cell is still there. */
  public boolean holds(Place place) {
    return book().schema().has(place.column())
        && place.row() >= 0
        && place.row() < book().rows(place.column().table());
  }
}
