package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SeriesTest {
  private static List<Entry> of(Entry first, Entry second, int count) {
    Series series = Series.of(first, second);
    return IntStream.range(0, count).mapToObj(series::at).toList();
  }

  private static Entry words(String text) {
    return new Entry.Words(text);
  }

  private static Entry figure(double value) {
    return new Entry.Figure(value);
  }

  @Test
  void numbersGoOnByTheirFirstStep() {
    assertThat(of(figure(10), figure(12.5), 4))
        .containsExactly(figure(10), figure(12.5), figure(15), figure(17.5));
    assertThat(of(figure(0.1), figure(0.2), 4)).last().isEqualTo(figure(0.4));
    assertThat(of(figure(7), Entry.BLANK, 3)).containsExactly(figure(7), figure(8), figure(9));
  }

  @Test
  void wordsGoOnByTheNumberInThem() {
    assertThat(of(words("Zone 9"), Entry.BLANK, 3))
        .containsExactly(words("Zone 9"), words("Zone 10"), words("Zone 11"));
    assertThat(of(words("A02"), words("A04"), 4))
        .containsExactly(words("A02"), words("A04"), words("A06"), words("A08"));
    assertThat(of(words("bed 3 north"), words("4 north"), 2))
        .containsExactly(words("bed 3 north"), words("bed 4 north"));
  }

  @Test
  void whatIsNoNumberIsRepeated() {
    assertThat(of(words("loam"), words("clay"), 3))
        .containsExactly(words("loam"), words("loam"), words("loam"));
    assertThat(of(Entry.BLANK, figure(3), 2)).containsExactly(Entry.BLANK, Entry.BLANK);
  }
}
