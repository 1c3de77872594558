package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The text that spreadsheet programs exchange; common practice, there is no standard for it. */
class BlockTextTest {
  @Test
  void tabsPartCellsAndLineEndsPartRows() {
    assertThat(BlockText.read("1\t2\r\n3\t4\r\n"))
        .containsExactly(List.of("1", "2"), List.of("3", "4"));
  }

  @Test
  void blankCellsAndBlankLinesKeepTheirPlace() {
    assertThat(BlockText.read("a\t\tc\n\n\td\n"))
        .containsExactly(List.of("a", "", "c"), List.of(""), List.of("", "d"));
  }

  @Test
  void quotationMarksKeepTabsLineEndsAndDoubledMarksInACell() {
    assertThat(BlockText.read("\"two\nlines\"\t\"a\ttab\"\t\"6\"\" pot\"\n"))
        .containsExactly(List.of("two\nlines", "a\ttab", "6\" pot"));
  }

  @Test
  void aMarkForInchesIsNoQuotation() {
    assertThat(BlockText.read("3/4\"\t1 1/2\"\n")).containsExactly(List.of("3/4\"", "1 1/2\""));
  }

  @Test
  void anUnpairedMarkLosesNothing() {
    assertThat(BlockText.read("\"open\tend")).isNotEmpty();
    assertThat(BlockText.read("\"open\tend").toString()).contains("open").contains("end");
  }

  @Test
  void nothingIsNoCells() {
    assertThat(BlockText.read("")).isEmpty();
  }

  @Property
  void whatIsWrittenReadsBack(
      @ForAll @Size(min = 1, max = 4) List<@Size(min = 1, max = 4) List<Sign>> rows) {
    List<List<String>> cells =
        rows.stream().map(row -> row.stream().map(sign -> sign.text).toList()).toList();
    assertThat(BlockText.read(BlockText.write(cells))).isEqualTo(cells);
  }

  /** Cells that are hard to write. */
  enum Sign {
    PLAIN("lawn"),
    NUMBER("1,200.5"),
    BLANK(""),
    TAB("a\tb"),
    LINES("a\nb"),
    MARK("3/4\""),
    MARKS("\"said\""),
    SPACES(" a ");

    private final String text;

    Sign(String text) {
      this.text = text;
    }
  }
}
