package zonewright.workbook.pack;

import java.util.Optional;
import zonewright.design.Design;

/**
 * A sheet that is handed over beside the design's own tables.
 *
 * <p>It is made anew at every writing and never read back, so whatever it shows must come from the
 * design.
 */
public interface PackSheet {
  /** Returns its name in commands: small letters and hyphens, such as {@code field-tests}. */
  String word();

  /** Returns its title in the workbook, at most 25 letters, such as {@code Field tests}. */
  String title();

  /** Returns what it is for, in one sentence for whoever chooses among the sheets. */
  String about();

  /** Returns whom it is for. */
  Audience audience();

  /** Says whether it stands in every design file, not only where it is asked for. */
  default boolean standing() {
    return false;
  }

  /** Says whether it stands before the design's tables; the others stand behind them. */
  default boolean leads() {
    return false;
  }

  /** Returns why it cannot be made of a design, as a sentence; nothing where it can. */
  default Optional<String> lacks(Design design) {
    return Optional.empty();
  }

  /**
   * Writes itself: opens one page or several with {@link PackBook#page} and fills them. The title
   * of each page is {@link #title} or starts with it.
   */
  void write(PackBook book);
}
