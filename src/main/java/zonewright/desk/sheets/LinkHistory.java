package zonewright.desk.sheets;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Predicate;
import zonewright.sheet.Place;

/** The cells a person came from by following links, the last first. */
public final class LinkHistory {
  private static final int LONGEST = 200;

  private final Deque<Place> behind = new ArrayDeque<>();

  /** Notes that a link leads away from a cell. */
  public void leaves(Place place) {
    if (!place.equals(behind.peek())) {
      behind.push(place);
    }
    if (behind.size() > LONGEST) {
      behind.removeLast();
    }
  }

  /** Returns the last cell that is still there, and forgets it. */
  public Optional<Place> back(Predicate<Place> there) {
    while (!behind.isEmpty()) {
      Place place = behind.pop();
      if (there.test(place)) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  /** Says whether there is nowhere to go back to. */
  public boolean isEmpty() {
    return behind.isEmpty();
  }

  /** Forgets all. */
  public void clear() {
    behind.clear();
  }
}
