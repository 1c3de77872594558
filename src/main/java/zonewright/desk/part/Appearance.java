package zonewright.desk.part;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.SystemInfo;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** The look of all windows: light or dark, and how large the text is. */
public final class Appearance {
  /** Which of the looks a person wants. */
  public enum Choice {
    LIGHT("Light"),
    DARK("Dark"),
    SYSTEM("As the system");

    private final String words;

    Choice(String words) {
      this.words = words;
    }

    /** Returns what a person calls it. */
    public String words() {
      return words;
    }
  }

  /** Text sizes to choose from, before the desktop enlarges them. */
  private static final List<Integer> SIZES = List.of(10, 11, 12, 13, 14, 16, 18, 20, 24);

  private static final int USUAL_SIZE = 12;

  /** Set, so that the tables do not load the desktop's own look only to find that it is not on. */
  private static final String SYSTEM_LOOK = "swing.systemlaf";

  private final UserPreferences memory;
  private Choice choice;
  private int size;

  /** Takes up the look remembered; {@link #install} puts it on. */
  public Appearance(UserPreferences memory) {
    this.memory = memory;
    this.choice = remembered(memory);
    this.size = Math.max(SIZES.get(0), Math.min(24, memory.number("text-size", USUAL_SIZE)));
  }

  /** Says whether somebody's look is that of the desktop. */
  public static boolean followsSystem(UserPreferences memory) {
    return remembered(memory) == Choice.SYSTEM;
  }

  private static Choice remembered(UserPreferences memory) {
    String name = memory.word("look", Choice.SYSTEM.name());
    for (Choice choice : Choice.values()) {
      if (choice.name().equals(name.toUpperCase(Locale.ROOT))) {
        return choice;
      }
    }
    return Choice.SYSTEM;
  }

  /** Puts the look on all windows there are and will be. */
  public void install() {
    FlatLaf.registerCustomDefaultsSource("zonewright.desk");
    if (System.getProperty(SYSTEM_LOOK) == null) {
      System.setProperty(SYSTEM_LOOK, UIManager.getCrossPlatformLookAndFeelClassName());
    }
    boolean dark =
        choice == Choice.DARK || (choice == Choice.SYSTEM && SystemDarkness.isPreferred());
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    Font usual = UIManager.getLookAndFeelDefaults().getFont("defaultFont");
    float points = Math.round(size * usual.getSize2D() / plainSize());
    UIManager.put("defaultFont", usual.deriveFont(points));
    FlatLaf.updateUI();
  }

  /** Returns how large the look makes text on a desktop that enlarges nothing. */
  private static float plainSize() {
    return SystemInfo.isWindows ? 12 : SystemInfo.isMacOS ? 13 : 15;
  }

  /**
   * Gives the title of a part its font. For when the part is filled: to find the font, the look
   * reads all those of the machine.
   */
  public static void title(JComponent title) {
    if (title.getClientProperty(FlatClientProperties.STYLE) == null) {
      title.putClientProperty(FlatClientProperties.STYLE, "font: semibold");
    }
  }

  /** Returns the choice in force. */
  public Choice choice() {
    return choice;
  }

  /** Puts on another look and remembers it. */
  public void choose(Choice wanted) {
    choice = wanted;
    memory.keep("look", wanted.name());
    install();
  }

  /** Makes the text a step larger, or smaller for a negative step; 0 is back to the usual. */
  public void resize(int step) {
    int at = SIZES.indexOf(size) < 0 ? SIZES.indexOf(USUAL_SIZE) : SIZES.indexOf(size);
    size = step == 0 ? USUAL_SIZE : SIZES.get(Math.max(0, Math.min(SIZES.size() - 1, at + step)));
    memory.keep("text-size", size);
    install();
  }
}
