package zonewright.sheet;

/**
 * What a person put on a cell that nothing is calculated from.
 *
 * @param note the words; empty where there are none
 * @param tint the colour
 */
public record Remark(String note, Tint tint) {
  /** A cell as it is without anybody's remark. */
  public static final Remark NONE = new Remark("", Tint.NONE);

  /** Returns the remark with other words. */
  public Remark noted(String words) {
    return new Remark(words.strip(), tint);
  }

  /** Returns the remark in another colour. */
  public Remark tinted(Tint wanted) {
    return new Remark(note, wanted);
  }

  /** Returns what it is in words, for who compares two; empty where there is none. */
  public String inWords() {
    String colour = tint == Tint.NONE ? "" : tint.words();
    return note.isEmpty() || colour.isEmpty() ? note + colour : note + " (" + colour + ")";
  }
}
