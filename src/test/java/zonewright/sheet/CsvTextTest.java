package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CsvTextTest {
  /** RFC 4180, section 2: quotes around commas, quotes and line breaks; quotes doubled. */
  @Test
  void cellsAreQuotedAsTheStandardSays() {
    assertThat(CsvText.line(List.of("a", "b,c", "say \"no\"", "two\nlines", "")))
        .isEqualTo("a,\"b,c\",\"say \"\"no\"\"\",\"two\nlines\",\r\n");
  }

  /** The characters that OWASP's page on CSV injection names. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "＝1"})
  void wordsThatWouldStartAFormulaAreMadeHarmless(String words) {
    assertThat(CsvText.harmless(words)).isEqualTo("'" + words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Front lawn", "3 - 4", "a=b", "½ acre"})
  void otherWordsStayAsTheyAre(String words) {
    assertThat(CsvText.harmless(words)).isEqualTo(words);
  }
}
