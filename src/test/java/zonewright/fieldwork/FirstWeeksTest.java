package zonewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.sheet.Edit;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.TuningPercents;

/** The three choices after the first weeks, each brought about by what is seen. */
class FirstWeeksTest {
  private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

  private final Design design = withoutVerdicts();

  private static Design withoutVerdicts() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    int rows = design.book().rows(Sheets.VERDICTS);
    design.book().perform(design.edits().removed(Sheets.VERDICTS, 0, rows));
    return design;
  }

  private void seen(int zone, Judgement seen) {
    design.book().perform(FirstWeeks.looked(design.book(), zone, DAY, Optional.of(seen)));
  }

  private void all(Judgement seen) {
    for (int zone = 0; zone < design.book().rows(Sheets.ZONES); zone++) {
      seen(zone, seen);
    }
  }

  private List<Boolean> chosen() {
    return FirstWeeks.of(design.book()).choices().stream().map(FirstWeeks.Choice::chosen).toList();
  }

  @Test
  void nothingSeenChoosesNothing() {
    assertThat(chosen()).containsExactly(false, false, false);
    assertThat(FirstWeeks.of(design.book()).now().get(0)).contains("write down what you see");
  }

  @Test
  void everythingTooDryMovesTheSettingOfTheSite() {
    all(Judgement.TOO_DRY);
    assertThat(chosen()).containsExactly(true, false, false);
    FirstWeeks weeks = FirstWeeks.of(design.book());
    assertThat(weeks.advice().site()).isPresent();
    assertThat(weeks.choices().get(0).then()).contains("stands at 100 %", "50 % to 150 %");
  }

  @Test
  void twoZonesTooWetChangeThoseTwo() {
    all(Judgement.RIGHT);
    seen(1, Judgement.TOO_WET);
    seen(4, Judgement.TOO_WET);
    assertThat(chosen()).containsExactly(false, true, false);
    assertThat(FirstWeeks.of(design.book()).advice().zones()).containsOnlyKeys(1, 4);
  }

  @Test
  void aSettingAtItsEndPointsToTheClimate() {
    design.book().perform(design.edits().typed(TuningPercents.SITE_TUNING.reference(), 0, "150 %"));
    all(Judgement.TOO_DRY);
    assertThat(chosen()).containsExactly(false, false, true);
    FirstWeeks weeks = FirstWeeks.of(design.book());
    assertThat(weeks.choices().get(2).then()).contains("The climate chosen was wrong");
    assertThat(weeks.advice().changes()).isFalse();
    assertThat(String.join(" ", weeks.now())).contains("150 %, the end of its range");
  }

  @Test
  void aSecondLookOfTheDayTakesThePlaceOfTheFirstAndCanBeTakenBack() {
    seen(2, Judgement.TOO_DRY);
    seen(2, Judgement.RIGHT);
    assertThat(design.book().rows(Sheets.VERDICTS)).isEqualTo(1);
    FirstWeeks.Zone zone = FirstWeeks.of(design.book()).zones().get(2);
    assertThat(zone.seen()).isEqualTo("right");
    assertThat(zone.day()).isEqualTo("2026-07-01");
    Edit back = FirstWeeks.looked(design.book(), 2, DAY, Optional.empty());
    design.book().perform(back);
    assertThat(design.book().rows(Sheets.VERDICTS)).isZero();
    assertThat(FirstWeeks.looked(design.book(), 2, DAY, Optional.empty()).changesNothing())
        .isTrue();
  }
}
