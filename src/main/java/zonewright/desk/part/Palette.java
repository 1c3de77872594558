package zonewright.desk.part;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.function.Function;
import javax.swing.LookAndFeel;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import zonewright.sheet.Severity;
import zonewright.sheet.Tint;

/**
 * The colours of the program, all mixed from those of the look and feel in use, so that light and
 * dark keep the same order of emphasis.
 *
 * <p>Ask {@link #current} at each painting; for the event thread only.
 */
public final class Palette {
  private static final Map<LookAndFeel, Palette> KNOWN = new WeakHashMap<>();

  /** Hues, in degrees, of groups of columns in their order: neighbours are easy to tell apart. */
  private static final int[] BAND_HUES = {215, 135, 195, 32, 265, 180, 95, 345};

  private final boolean dark;
  private final Color paper;
  private final Color ink;
  private final Color accent;
  private final Map<Integer, Color> bands = new HashMap<>();

  private final Color water;
  private final Color limit;
  private final Color muted;
  private final Color softInk;
  private final Color line;
  private final Color strongLine;
  private final Color inputGround;
  private final Color defaultGround;

  private Palette(Function<String, Color> colors, boolean dark) {
    this.dark = dark;
    Color ground = solid(colors.apply("Table.background"), Color.WHITE);
    Color words = solid(colors.apply("Table.foreground"), Color.BLACK);
    // the usual dark ground and its words are too close to one another for words that stand back
    paper = dark ? mix(Color.BLACK, ground, 0.28) : ground;
    ink = dark ? mix(Color.WHITE, words, 0.40) : words;
    accent = solid(colors.apply("Component.accentColor"), new Color(0x26, 0x75, 0xBF));
    water = solid(colors.apply("Zonewright.water"), new Color(0x2f, 0x86, 0xa8));
    limit = solid(colors.apply("Zonewright.limit"), new Color(0xb3, 0x26, 0x1e));
    muted = mix(ink, paper, dark ? 0.82 : 0.66);
    softInk = mix(ink, paper, dark ? 0.90 : 0.80);
    line = mix(ink, paper, dark ? 0.14 : 0.10);
    strongLine = mix(ink, paper, dark ? 0.34 : 0.26);
    Color sand = dark ? new Color(0xE8C46A) : new Color(0xE9B949);
    inputGround = mix(sand, paper, dark ? 0.06 : 0.11);
    defaultGround = mix(inputGround, paper, 0.45);
  }

  private static Color solid(Color found, Color otherwise) {
    return found == null ? otherwise : new Color(found.getRGB());
  }

  /** Returns the colours for the look and feel in use. */
  public static Palette current() {
    return KNOWN.computeIfAbsent(
        UIManager.getLookAndFeel(), any -> new Palette(UIManager::getColor, FlatLaf.isLafDark()));
  }

  /** Returns the colours for what goes on paper: the light ones, whichever look is in use. */
  public static Palette onPaper() {
    UIDefaults defaults = new FlatLightLaf().getDefaults();
    return new Palette(defaults::getColor, false);
  }

  /** Returns {@code share} (0 to 1) of one colour with the rest of another. */
  public static Color mix(Color one, Color other, double share) {
    return new Color(
        part(one.getRed(), other.getRed(), share),
        part(one.getGreen(), other.getGreen(), share),
        part(one.getBlue(), other.getBlue(), share));
  }

  private static int part(int one, int other, double share) {
    return (int) Math.round(one * share + other * (1 - share));
  }

  /** Says whether the look and feel is a dark one. */
  public boolean dark() {
    return dark;
  }

  /** Returns the ground of calculated cells. */
  public Color paper() {
    return paper;
  }

  /** Returns the colour of what counts. */
  public Color ink() {
    return ink;
  }

  /** Returns the colour of words that stand back. */
  public Color muted() {
    return muted;
  }

  /** Returns the colour of values that nobody typed but that could be typed over. */
  public Color softInk() {
    return softInk;
  }

  /** Returns the colour of lines between cells. */
  public Color line() {
    return line;
  }

  /** Returns the colour of lines between groups. */
  public Color strongLine() {
    return strongLine;
  }

  /** Returns the colour of what is selected or acted on. */
  public Color accent() {
    return accent;
  }

  /** Returns the colour of the frame around the cell that has the focus. */
  public Color strongAccent() {
    return dark ? mix(Color.WHITE, accent, 0.35) : accent;
  }

  /** Returns the ground of cells a person types into. */
  public Color inputGround() {
    return inputGround;
  }

  /** Returns the ground of cells that may be typed over. */
  public Color defaultGround() {
    return defaultGround;
  }

  /** Returns the ground of headings and row numbers. */
  public Color headingGround() {
    return mix(ink, paper, dark ? 0.07 : 0.035);
  }

  /** Returns the ground of cells in a person's colour; none where they have none. */
  public Optional<Color> tint(Tint tint) {
    return tint == Tint.NONE
        ? Optional.empty()
        : Optional.of(new Color(dark ? tint.dark() : tint.light()));
  }

  /** Returns a ground as it looks while selected. */
  public Color selected(Color ground) {
    return mix(accent, ground, dark ? 0.30 : 0.15);
  }

  /** Returns the ground of the heading of a group, by its place among the groups. */
  public Color band(int place) {
    return bands.computeIfAbsent(place, this::bandGround);
  }

  private Color bandGround(int place) {
    float hue = BAND_HUES[Math.floorMod(place, BAND_HUES.length)] / 360f;
    Color strong = Color.getHSBColor(hue, dark ? 0.45f : 0.55f, dark ? 0.85f : 0.70f);
    return mix(strong, paper, dark ? 0.26 : 0.20);
  }

  /** Returns the colour of water, as a line. */
  public Color water() {
    return water;
  }

  /** Returns the colour of water, as a body. */
  public Color waterBody() {
    return mix(water, paper, dark ? 0.24 : 0.20);
  }

  /** Returns the colour of a limit that must not be passed. */
  public Color limit() {
    return limit;
  }

  /** Returns the ground of a time in which something goes on. */
  public Color busy() {
    return mix(accent, paper, dark ? 0.18 : 0.13);
  }

  /** Returns the colour of the bars or lines of one kind in a picture, by its place. */
  public Color series(int place) {
    float hue = BAND_HUES[Math.floorMod(place, BAND_HUES.length)] / 360f;
    return Color.getHSBColor(hue, dark ? 0.42f : 0.58f, dark ? 0.80f : 0.62f);
  }

  /** Returns the colour of a mark that stands for a finding. */
  public Color severity(Severity severity) {
    return switch (severity) {
      case WRONG -> dark ? new Color(0xFFA49C) : new Color(0xB3261E);
      case MISSING -> dark ? new Color(0xFFC56B) : new Color(0x9A5B00);
      case CHECK -> dark ? new Color(0xC9A7FF) : new Color(0x7A3DB8);
      case NOTE -> muted();
    };
  }
}
