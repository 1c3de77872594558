package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.sheet.BookSnapshot;
import zonewright.water.Controller;
import zonewright.water.Demand;

/** What the box of a card promises comes true when it is typed. */
class WaysOutTest {
  private final Garden garden = new Garden();

  private List<String> ways() {
    return WaysOut.sentences(garden.design().book(), garden.plan());
  }

  @Test
  void aWayAfterWhichEverythingFitsKeepsItsWord() {
    assertThat(garden.plan().complete()).isFalse();
    BookSnapshot before = garden.design().book().snapshot();
    List<String> ways = ways();
    assertThat(garden.design().book().snapshot().tables()).isEqualTo(before.tables());
    assertThat(ways)
        .hasSizeBetween(1, 3)
        .first()
        .isEqualTo("Water on more days, zone 11 on 3 days a week: then everything fits.");
    garden.type(Demand.WATERING_DAYS, 10, "3");
    assertThat(garden.plan().complete()).isTrue();
    assertThat(ways()).isEmpty();
  }

  @Test
  void whatIsDoneBySettingsIsDoneByOneEdit() {
    WaysOut.Told first = WaysOut.of(garden.design().book(), garden.plan()).get(0);
    garden.take(first.edit().orElseThrow().apply(garden.design().book()));
    assertThat(garden.plan().complete()).isTrue();
    assertThat(WaysOut.of(garden.design().book(), garden.plan())).isEmpty();
  }

  @Test
  void hoursThatAreTooShortAreWidened() {
    garden.type(Controller.KIND, 0, Controller.CYCLES_AND_SOAKS);
    assertThat(garden.plan().complete()).isTrue();
    garden.typeAll(NightSheet.OPENS, "22:00").typeAll(NightSheet.CLOSES, "00:30");
    assertThat(garden.plan().complete()).isFalse();
    String way =
        ways().stream()
            .filter(each -> each.startsWith("Let every night close "))
            .findFirst()
            .orElseThrow();
    String left = way.replaceAll(".* then ", "").replaceAll(" min a week.*", "");
    int minutes = 0;
    for (int later = 30; later <= 240; later += 30) {
      minutes = way.contains("close " + NightWords.length(later) + " later") ? later : minutes;
    }
    garden.typeAll(NightSheet.CLOSES, NightWords.time(30 + minutes));
    int undone =
        ZoneShare.of(garden.plan()).stream().mapToInt(each -> each.undone().orElse(0)).sum();
    assertThat(undone).isEqualTo(left.equals("everything fits.") ? 0 : Integer.parseInt(left));
  }
}
