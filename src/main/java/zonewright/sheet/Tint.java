package zonewright.sheet;

/**
 * A colour a person gives to cells to find them again. Each differs from the others in lightness
 * too, so that they are told apart in grey; words stay legible on all of them.
 */
public enum Tint {
  NONE("No colour", 0xFFFFFF, 0x000000),
  YELLOW("Yellow", 0xFDE897, 0x6C5C2B),
  GREEN("Green", 0xA1E0B0, 0x31583C),
  BLUE("Blue", 0x79C5ED, 0x004A6A),
  VIOLET("Violet", 0xCD94C5, 0x2F1537);

  private final String words;
  private final int light;
  private final int dark;

  Tint(String words, int light, int dark) {
    this.words = words;
    this.light = light;
    this.dark = dark;
  }

  /** Returns what a menu calls it. */
  public String words() {
    return words;
  }

  /** Returns red, green and blue of it under dark words, on a screen and in the workbook. */
  public int light() {
    return light;
  }

  /** Returns red, green and blue of it under light words. */
  public int dark() {
    return dark;
  }
}
