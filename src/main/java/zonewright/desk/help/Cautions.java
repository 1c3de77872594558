package zonewright.desk.help;

import java.awt.Window;
import java.util.stream.Collectors;
import zonewright.design.Caution;
import zonewright.desk.part.TextPage;

/** What a designer must not forget where water, pressure, trenches and mains wiring are near. */
public final class Cautions {
  static final String TITLE = "Cautions";

  static final String TEXT =
      "This program works out amounts and times. It does not see the site, and it replaces neither the local code nor a"
          + " licensed person.\n\n"
          + Caution.all().stream()
              .map(caution -> caution.topic() + ". " + caution.sentences())
              .collect(Collectors.joining("\n\n"));

  static final String ABOUT =
      """
      Zonewright works out landscape irrigation zone by zone: how much water, how often, in how many cycles, and why.

      Every number can be followed back to what was typed and to the table or equation it comes from. The demo garden is \
      invented.\
      """;

  private Cautions() {}

  /** Shows the cautions. */
  public static void open(Window owner) {
    TextPage.open(owner, TITLE, TEXT, 560);
  }

  /** Shows what the program is. */
  public static void openAbout(Window owner) {
    TextPage.open(owner, "About Zonewright", ABOUT, 280);
  }
}
