package zonewright.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/**
 * The help pages are whole: every column has its place, every link leads somewhere, every check
 * holds.
 */
class HelpBookTest {
  private static final Pattern LINK = Pattern.compile("href=\"([^\"#]*)(?:#([^\"]*))?\"");
  private static final Pattern PLACE = Pattern.compile("id=\"([^\"]*)\"");

  private static final Path FOLDER = Path.of("help");

  private final List<HelpPage> pages = HelpBook.pages();

  @Tag("release")
  @Test
  void thePageOfEverySheetOpensWithItsPictureInBothLooks() {
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      String html = HelpBook.page(HelpBook.fileOf(table.id())).orElseThrow().html(FOLDER);
      assertThat(html)
          .as("take the pictures anew, see DEVELOPERS.md")
          .contains("images/sheet-" + table.id() + "-light.png")
          .contains("images/sheet-" + table.id() + "-dark.png");
    }
  }

  @Test
  void whereThereAreNoPicturesNoneIsPointedTo(@TempDir Path elsewhere) throws IOException {
    HelpBook.write(elsewhere);
    assertThat(Files.readString(elsewhere.resolve(HelpBook.fileOf(Sheets.ZONES))))
        .doesNotContain("<img");
  }

  @Test
  void everyLinkLeadsToAPlaceThatIsThere() {
    Map<String, Set<String>> places = new HashMap<>();
    for (HelpPage page : pages) {
      Set<String> found = new HashSet<>();
      PLACE.matcher(page.html(FOLDER)).results().forEach(place -> found.add(place.group(1)));
      places.put(page.file(), found);
    }
    List<String> broken = new ArrayList<>();
    for (HelpPage page : pages) {
      Matcher links = LINK.matcher(page.html(FOLDER));
      while (links.find()) {
        String file = links.group(1).isEmpty() ? page.file() : links.group(1);
        boolean there =
            places.containsKey(file)
                && (links.group(2) == null || places.get(file).contains(links.group(2)));
        if (!there) {
          broken.add(page.file() + " → " + links.group());
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void everyColumnSaysWhatItMeansAndWhereItComesFrom() {
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      for (Column column : table.columns()) {
        assertThat(column.meaning()).as(column.reference().key()).isNotBlank();
        if (column.formula().isPresent() && column.usualWord().isEmpty()) {
          assertThat(column.source()).as(column.reference().key()).isNotBlank();
        }
      }
    }
  }

  @Test
  void everyReferenceCheckOnThePageHolds() {
    HelpPage checks =
        pages.stream()
            .filter(page -> page.file().equals("reference-checks.html"))
            .findFirst()
            .orElseThrow();
    assertThat(checks.body()).contains("<td>yes</td>").doesNotContain("<td>no</td>");
  }

  @Test
  void thePagesAreWrittenTheSameEachTime(@TempDir Path first, @TempDir Path second)
      throws IOException {
    HelpBook.write(first);
    HelpBook.write(second);
    for (HelpPage page : pages) {
      assertThat(first.resolve(page.file())).hasSameBinaryContentAs(second.resolve(page.file()));
    }
  }

  @Tag("release")
  @Test
  void theFolderHelpHoldsThesePagesAsTheyAre() throws IOException {
    for (HelpPage page : pages) {
      Path file = FOLDER.resolve(page.file());
      assertThat(file).as("make the release anew: .ci/release").exists();
      assertThat(Files.readString(file)).as(page.file()).isEqualTo(page.html(FOLDER));
    }
  }
}
