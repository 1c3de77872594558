package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.formula.Outcome;
import zonewright.nights.NightSheet;
import zonewright.sheet.Column;
import zonewright.sketch.Sketch;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Days and hours that rules allow, read off the rules by hand. The rules are invented. */
class AllowedDaysTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  private void rule(String stage, String numbers, String days) {
    int row = sketch.design().book().rows(Sheets.DAY_RULES);
    sketch.design().book().perform(sketch.design().edits().inserted(Sheets.DAY_RULES, row, 1));
    sketch.type(AllowedDays.RULE, row, "rule " + (row + 1));
    sketch.type(AllowedDays.STAGE, row, stage).type(AllowedDays.NUMBERS, row, numbers);
    sketch.type(AllowedDays.DAYS, row, days);
  }

  private void stage(String name) {
    int row = sketch.design().book().rows(Sheets.STAGES);
    sketch.design().book().perform(sketch.design().edits().inserted(Sheets.STAGES, row, 1));
    sketch.type(DroughtStages.STAGE, row, name);
  }

  private String weekdays() {
    return sketch.outcome(AllowedDays.IN_FORCE).text();
  }

  private String time(Column column) {
    return CalendarText.time(sketch.design().book().number(column.reference(), 0));
  }

  @ParameterizedTest
  @CsvSource({"14, Tue Sat", "10, Tue Sat", "7, Wed Sun", "1201, Wed Sun", "0, Tue Sat"})
  void evenAndOddNumbersHaveTheirDays(String number, String days) {
    rule("", "even", "Tue Sat");
    rule("", "odd", "Wed Sun");
    sketch.type(AllowedDays.HOUSE_NUMBER, number);
    assertThat(weekdays()).isEqualTo(days);
    assertThat(sketch.read(AllowedDays.BY_RULE, Units.ONE)).isEqualTo(2);
  }

  @Test
  void theLastDigitNamesTheDay() {
    for (int digit = 0; digit <= 9; digit++) {
      rule("", "ending in " + digit, List.of("Mon", "Tue", "Wed", "Thu", "Fri").get(digit / 2));
    }
    List<String> days = new ArrayList<>();
    for (int number = 120; number < 130; number++) {
      sketch.type(AllowedDays.HOUSE_NUMBER, String.valueOf(number));
      days.add(weekdays());
    }
    assertThat(days)
        .containsExactly("Mon", "Mon", "Tue", "Tue", "Wed", "Wed", "Thu", "Thu", "Fri", "Fri");
  }

  @Test
  void everyRuleThatHoldsMustAllowADay() {
    stage("Stage 1");
    sketch.type(SiteRules.WEEKDAYS, "Mon Tue Wed Thu Fri");
    rule("", "all", "Tue Thu Sat");
    rule("Stage 1", "", "Thu Sun");
    assertThat(weekdays()).isEqualTo("Tue Thu");
    sketch.type(DroughtStages.IN_FORCE, "Stage 1");
    assertThat(weekdays()).isEqualTo("Thu");
  }

  @Test
  void noDayLeftIsSaidWhereTheDaysAre() {
    rule("", "all", "Tue");
    sketch.type(SiteRules.WEEKDAYS, "Mon");
    assertThat(sketch.outcome(AllowedDays.IN_FORCE))
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            refused -> assertThat(refused.toString()).contains("no day in common"));
    assertThat(sketch.design().findings())
        .anyMatch(finding -> finding.line().contains("no day in common"));
  }

  @Test
  void withoutAHouseNumberRulesByNumberDoNotCountAndThatIsSaid() {
    rule("", "even", "Tue Sat");
    assertThat(weekdays()).isEqualTo("Mon Tue Wed Thu Fri Sat Sun");
    assertThat(sketch.design().findings())
        .anyMatch(finding -> finding.line().contains("none of those counts"));
    sketch.type(AllowedDays.HOUSE_NUMBER, "12b");
    assertThat(sketch.outcome(AllowedDays.HOUSE_NUMBER)).isInstanceOf(Outcome.Refused.class);
  }

  /**
   * Windows of 24 hours and the hours cut off them, counted by hand; what comes after the hours in
   * the same window does not count.
   */
  @ParameterizedTest
  @CsvSource({
    // opens, closes, no water from, until, opens in force, minutes, cut off
    "22:00, 06:00, 10:00, 18:00, 22:00, 480, 0",
    "17:00, 06:00, 10:00, 18:00, 18:00, 720, 60",
    "22:00, 11:30, 10:00, 18:00, 22:00, 720, 90",
    "09:00, 20:00, 10:00, 18:00, 09:00, 60, 600",
    "11:00, 17:00, 10:00, 18:00, 18:00, 0, 360",
    "10:00, 18:00, 10:00, 18:00, 18:00, 0, 480",
    "18:00, 10:00, 10:00, 18:00, 18:00, 960, 0",
    "22:00, 06:00, 12:00, 12:00, 22:00, 480, 0",
    "09:00, 15:00, 12:00, 12:00, 09:00, 360, 0",
  })
  void hoursWithoutWaterAreCutOffTheWindows(
      String opens,
      String closes,
      String from,
      String until,
      String inForce,
      double minutes,
      double cut) {
    sketch.type(NightSheet.OPENS, opens).type(NightSheet.CLOSES, closes);
    sketch.type(DroughtStages.NO_WATER_FROM, from).type(DroughtStages.NO_WATER_UNTIL, until);
    assertThat(time(NightSheet.FIRST_OPENS)).isEqualTo(inForce);
    assertThat(sketch.read(NightSheet.MINUTES_OPEN, Units.MINUTE)).isEqualTo(minutes);
    assertThat(sketch.read(NightSheet.MINUTES_FORBIDDEN, Units.MINUTE)).isEqualTo(cut);
    assertThat(sketch.design().findings().stream().anyMatch(f -> f.line().contains("cut off")))
        .isEqualTo(cut > 0);
  }

  /** A rule's Tuesday ends at midnight, unless Wednesday is allowed too. */
  @Test
  void aNightEndsAtMidnightWhereARuleLeavesOutTheNextDay() {
    int tuesday = 1;
    assertThat(sketch.read(NightSheet.MINUTES_OPEN, tuesday, Units.MINUTE)).isEqualTo(480);
    rule("", "all", "Tue Wed Sat");
    assertThat(sketch.read(NightSheet.MINUTES_OPEN, tuesday, Units.MINUTE)).isEqualTo(480);
    assertThat(sketch.read(NightSheet.MINUTES_OPEN, tuesday + 1, Units.MINUTE)).isEqualTo(120);
    assertThat(sketch.read(NightSheet.MINUTES_FORBIDDEN, tuesday + 1, Units.MINUTE)).isEqualTo(360);
    assertThat(sketch.design().findings())
        .anyMatch(finding -> finding.line().contains("open at 00:00"));
    sketch.type(NightSheet.OPENS, tuesday + 1, "00:00");
    assertThat(sketch.read(NightSheet.MINUTES_OPEN, tuesday + 1, Units.MINUTE)).isEqualTo(360);
  }

  @Test
  void hoursOverMidnightAreRefusedWithWhatToDo() {
    sketch.type(DroughtStages.NO_WATER_FROM, "22:00").type(DroughtStages.NO_WATER_UNTIL, "06:00");
    assertThat(sketch.outcome(DroughtStages.CLOSED_UNTIL).toString())
        .contains("end before they begin", "sheet Nights");
  }

  @Test
  void theHoursOfAStageTakeThePlaceOfTheSites() {
    sketch.type(DroughtStages.NO_WATER_FROM, "10:00").type(DroughtStages.NO_WATER_UNTIL, "18:00");
    stage("Stage 1");
    sketch.type(DroughtStages.IN_FORCE, "Stage 1");
    assertThat(time(DroughtStages.CLOSED_FROM)).isEqualTo("10:00");
    sketch.type(DroughtStages.STAGE_FROM, "08:00");
    assertThat(time(DroughtStages.CLOSED_FROM)).isEqualTo("08:00");
    assertThat(time(DroughtStages.CLOSED_UNTIL)).isEqualTo("18:00");
  }
}
