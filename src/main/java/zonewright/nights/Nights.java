package zonewright.nights;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import zonewright.sheet.Book;

/**
 * The timetable of a book, remembered until something it depends on changes.
 *
 * <p>Belongs to the thread of its book. Whoever does not want to wait takes {@link #asked} and
 * {@link #before} to another thread, has the plan made there, and hands it back with {@link
 * #learn}.
 */
public final class Nights {
  /** Enough for going back and forth between a few settings. */
  private static final int MOST_REMEMBERED = 12;

  private final Book book;
  private final Map<NightsProblem, NightsPlan> plans =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<NightsProblem, NightsPlan> eldest) {
          return size() > MOST_REMEMBERED;
        }
      };
  private Optional<NightsPlan> last = Optional.empty();
  private NightsReading.Read read;

  /** Remembers nothing yet. */
  public Nights(Book book) {
    this.book = book;
    book.listen(changes -> read = null);
  }

  private NightsReading.Read read() {
    if (read == null) {
      read = NightsReading.of(book);
    }
    return read;
  }

  /** Returns what the timetable of the book as it is depends on; empty where there is none. */
  public Optional<NightsInput> asked() {
    return read().input();
  }

  /** Returns the plan made last, to hand to the planner. */
  public Optional<NightsPlan> before() {
    return last;
  }

  /** Returns the plan of the book as it is, where it is known already. */
  public Optional<NightsPlan> known() {
    Optional<NightsPlan> found =
        asked()
            .map(now -> plans.computeIfPresent(read().problem(), (any, plan) -> plan.renamed(now)));
    if (found.isPresent()) {
      last = found;
    }
    return found;
  }

  /** Takes a plan made elsewhere. */
  public void learn(NightsPlan plan) {
    plans.put(plan.input().problem(), plan);
    last = Optional.of(plan);
  }

  /** Returns the plan of the book as it is, made now where it is not known; this may take long. */
  public Optional<NightsPlan> plan() {
    Optional<NightsPlan> found = known();
    if (found.isEmpty() && asked().isPresent()) {
      learn(NightsPlanner.plan(asked().get(), last));
      found = last;
    }
    return found;
  }

  /** Returns what keeps zones out, and where the plan is known what it found. */
  public List<NightFinding> findings() {
    List<NightFinding> all = new ArrayList<>(read().findings());
    known().ifPresent(plan -> all.addAll(NightFindings.of(book, plan)));
    return all;
  }

  /** Says whether what the timetable depends on is read, so that asking for it takes no time. */
  public boolean isRead() {
    return read != null;
  }

  /**
   * Returns what hands on what was read of this book to the nights of another that holds the same;
   * large books take long to read. Any thread may run it.
   */
  public Consumer<Nights> reading() {
    NightsReading.Read known = read();
    return other -> other.read = known;
  }

  /** Takes over what another remembers, for a copy of its book. */
  public void learn(Nights other) {
    plans.putAll(other.plans);
    last = other.last;
  }
}
