package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ArrangementTest {
  @Test
  void comesBackFromItsText() {
    Arrangement arrangement =
        new Arrangement(
            List.of(
                new Arrangement.Shown("zone", 0),
                new Arrangement.Shown("own-cost a year", 0),
                new Arrangement.Shown("own-a b", 90),
                new Arrangement.Shown("area", 120)),
            1);
    assertThat(Arrangement.read(arrangement.text())).contains(arrangement);
  }

  @Test
  void isNotReadFromAnythingElse() {
    for (String text : List.of("", "2", "x zone", "1 zone=wide", "  ")) {
      assertThat(Arrangement.read(text)).as(text).isEmpty();
    }
  }
}
