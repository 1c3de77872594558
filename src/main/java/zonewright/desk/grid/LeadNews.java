package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Tells who wants to hear it which cell has the focus: once for each cell, not for each event. */
final class LeadNews {
  private final Supplier<Optional<CellPlace>> lead;
  private final List<Consumer<CellPlace>> listeners = new ArrayList<>();
  private Optional<CellPlace> told = Optional.empty();

  LeadNews(Supplier<Optional<CellPlace>> lead) {
    this.lead = lead;
  }

  void listen(Consumer<CellPlace> listener) {
    listeners.add(listener);
  }

  /** Looks where the focus is; to be called whenever it may have moved. */
  void look() {
    Optional<CellPlace> now = lead.get();
    if (!now.equals(told)) {
      told = now;
      now.ifPresent(place -> listeners.forEach(listener -> listener.accept(place)));
    }
  }
}
