package zonewright.desk.picture;

import zonewright.design.Design;

/**
 * A kind of picture of a design. Has no state of its own, so one of each kind is enough.
 *
 * <p>To add one, implement this and put it into {@link Pictures}; the window offers it where it
 * fits, and exports it, by itself.
 */
public interface Picture {
  /** Returns an identifier to remember a choice by; never changes. */
  String id();

  /** Returns what a person chooses it by, such as {@code Water standing on the soil}. */
  String name();

  /** Returns what it is a picture of. */
  Subject subject();

  /**
   * Returns the picture of a design as it is now.
   *
   * <p>Called on the event thread after every edit while the picture is shown, so it must take no
   * longer than a millisecond or two with thousands of rows; what takes longer is worked out
   * elsewhere and only read here. Where there is nothing to draw, return {@link Drawing#saying}
   * with a sentence why.
   *
   * @param row the row it is of, counted from 0 and always one that is there; 0 where it is a
   *     picture of the whole design
   */
  Drawing of(Design design, int row);

  /**
   * What a picture is of.
   *
   * @param sheet identifier of the sheet beside which it is offered first
   * @param ofRow whether it is of the row selected there; else it is of the whole design and
   *     offered beside the other sheets too
   */
  record Subject(String sheet, boolean ofRow) {
    /** Returns a picture of the selected row of a sheet; offered there only. */
    public static Subject row(String sheet) {
      return new Subject(sheet, true);
    }

    /** Returns a picture of the whole design, offered beside every sheet, and first beside one. */
    public static Subject whole(String sheet) {
      return new Subject(sheet, false);
    }
  }
}
