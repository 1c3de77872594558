package zonewright.sheet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** The edits done and taken back, without limit. */
public final class EditHistory {
  private final Deque<Edit> done = new ArrayDeque<>();
  private final Deque<Edit> undone = new ArrayDeque<>();
  private Edit saved;

  /** Notes an edit that was done; what had been taken back before is gone. */
  void note(Edit edit) {
    done.push(edit);
    undone.clear();
  }

  /** Returns the edit to take back next. */
  public Optional<Edit> toUndo() {
    return Optional.ofNullable(done.peek());
  }

  /** Returns the edit to do again next. */
  public Optional<Edit> toRedo() {
    return Optional.ofNullable(undone.peek());
  }

  /** Returns the last switch of units that was done and not taken back. */
  Optional<Edit.SwitchUnits> lastSwitch() {
    return done.stream()
        .filter(Edit.SwitchUnits.class::isInstance)
        .map(Edit.SwitchUnits.class::cast)
        .findFirst();
  }

  void undo() {
    undone.push(done.pop());
  }

  void redo() {
    done.push(undone.pop());
  }

  /** Notes that the book as it is now has been saved. */
  public void saved() {
    saved(toUndo());
  }

  /** Notes that the book was saved as it was when {@code last} was the edit to take back next. */
  public void saved(Optional<Edit> last) {
    saved = last.orElse(null);
  }

  /** Notes that the book as it is now stands in no file: it was brought back after a crash. */
  public void neverSaved() {
    saved = new Edit.SetCells("what was brought back", List.of());
  }

  /**
   * Says whether the book differs from what was saved: by which edit came last, not by how many.
   */
  public boolean unsaved() {
    return done.peek() != saved;
  }
}
