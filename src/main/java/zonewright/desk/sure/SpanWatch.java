package zonewright.desk.sure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.uncertainty.CellSpan;
import zonewright.uncertainty.HowSure;
import zonewright.uncertainty.SureWords;
import zonewright.uncertainty.TypedRange;

/**
 * Knows what cells lie between, for whoever shows them. Nothing is tried before somebody looks at a
 * cell that rests on a range somebody typed; then it is found out away from the window's thread,
 * for all zones, and kept until the next edit.
 */
public final class SpanWatch {
  private static final int PAUSE_MILLIS = 200;

  private final OpenDesign open;
  private final Inquiry trials = new Inquiry("spans of cells", PAUSE_MILLIS, this::begin);
  private final List<Runnable> listeners = new ArrayList<>();
  private final Set<Column> wanted = new LinkedHashSet<>();
  private Optional<HowSure> known = Optional.empty();

  public SpanWatch(OpenDesign open) {
    this.open = open;
    open.onChanged(changes -> forget());
    open.onReplaced(this::forget);
  }

  /** Hears when something is known of cells that were asked for. */
  public void onKnown(Runnable listener) {
    listeners.add(listener);
  }

  private void forget() {
    trials.drop();
    wanted.clear();
    known = Optional.empty();
  }

  /**
   * Returns what is said of a cell: the range somebody typed for it, or what it lies between over
   * the ranges below it; blank where there is none, or while it is found out.
   */
  public String told(Place place) {
    String typed = TypedRange.at(open.book(), place).map(TypedRange::told).orElse("");
    Optional<CellSpan> span = CellSpan.of(open.book(), place);
    if (!typed.isEmpty() || span.isEmpty()) {
      return typed;
    }
    Column column = span.get().column();
    if (known.filter(sure -> sure.tells(column)).isEmpty() && wanted.add(column)) {
      trials.soon();
    }
    return known
        .filter(sure -> sure.tells(column))
        .map(sure -> new SureWords(sure).cell(span.get()))
        .orElse("");
  }

  private void begin() {
    BookSnapshot snapshot = open.book().snapshot();
    Set<Column> further = Set.copyOf(wanted);
    trials.ask(
        mine -> {
          HowSure sure = HowSure.of(snapshot, further, mine::dropped, done -> {});
          mine.tell(
              () -> {
                known = Optional.of(sure);
                listeners.forEach(Runnable::run);
              });
        });
  }

  /** Finds out no more. */
  public void close() {
    trials.close();
  }
}
