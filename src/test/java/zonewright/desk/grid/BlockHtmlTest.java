package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class BlockHtmlTest {
  @Test
  void aTableOfAPageBecomesCells() {
    String page =
        "<html><body><p>before</p><table><tr><th>Zone</th><th>Area</th></tr>"
            + "<tr><td><b>1</b></td><td>900&nbsp;ft&sup2;</td></tr></table></body></html>";
    List<List<String>> cells = BlockHtml.read(page);
    assertThat(cells).hasSize(2);
    assertThat(cells.get(0)).containsExactly("Zone", "Area");
    assertThat(cells.get(1).get(0)).isEqualTo("1");
    assertThat(cells.get(1).get(1)).startsWith("900").endsWith("ft²");
  }

  @Test
  void aPageWithoutATableHasNoCells() {
    assertThat(BlockHtml.read("<p>only words</p>")).isEmpty();
  }

  @Test
  void whatIsWrittenReadsBack() {
    List<List<String>> cells =
        List.of(List.of("a < b & c", "85 m²"), List.of("", "\"quoted\""), List.of("1", "2"));
    assertThat(BlockHtml.read(BlockHtml.write(cells))).isEqualTo(cells);
  }
}
