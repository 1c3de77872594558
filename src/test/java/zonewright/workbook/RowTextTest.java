package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.InputSource;

/** Whatever somebody pastes into a cell, the part of the file stays one that can be read. */
class RowTextTest {
  private static String read(String escaped) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader("<t>" + escaped + "</t>")))
        .getDocumentElement()
        .getTextContent();
  }

  @ParameterizedTest
  @CsvSource({"Lawn & <beds>, Lawn & <beds>", "a\u0000b\u000bc, a?b?c", "😀 x, 😀 x"})
  void aPersonReadsWhatWasTyped(String typed, String back) throws Exception {
    assertThat(read(RowText.escaped(typed))).isEqualTo(back);
  }

  @Property
  void anyTextCanBeReadAgainLetterForLetterOrAsAQuestionMark(@ForAll String typed)
      throws Exception {
    String back = read(RowText.escaped(typed));
    assertThat(back).hasSameSizeAs(typed);
    for (int i = 0; i < typed.length(); i++) {
      assertThat(back.charAt(i)).isIn(typed.charAt(i), '?');
    }
  }
}
