package zonewright.desk.task;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** A part of the window that is made when it is first wanted, so that the start need not wait. */
public final class LazyPart<T> {
  private final Supplier<T> making;
  private Optional<T> made = Optional.empty();

  public LazyPart(Supplier<T> making) {
    this.making = making;
  }

  /** Returns the part, made now where it was not wanted before. */
  public T get() {
    T part = made.orElseGet(making);
    made = Optional.of(part);
    return part;
  }

  /** Does something to the part where it was made already. */
  public void ifMade(Consumer<T> does) {
    made.ifPresent(does);
  }
}
