package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.desk.sheets.LinkHistory;
import zonewright.emitters.Emitters;
import zonewright.sheet.Place;

class LinkHistoryTest {
  private final LinkHistory trail = new LinkHistory();
  private final Place first = new Place(Emitters.AREA.reference(), 0);
  private final Place second = new Place(Emitters.AREA.reference(), 7);

  @Test
  void leadsBackTheWayOneCame() {
    trail.leaves(first);
    trail.leaves(second);

    assertThat(trail.back(place -> true)).contains(second);
    assertThat(trail.back(place -> true)).contains(first);
    assertThat(trail.back(place -> true)).isEmpty();
  }

  @Test
  void passesOverCellsThatAreGone() {
    trail.leaves(first);
    trail.leaves(second);

    assertThat(trail.back(place -> place.row() < 3)).contains(first);
    assertThat(trail.isEmpty()).isTrue();
  }
}
