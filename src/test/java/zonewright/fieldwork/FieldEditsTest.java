package zonewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.TuningPercents;

/** What one step in the field changes, and that undo takes it back. */
class FieldEditsTest {
  private final Design design = Demo.libraryGarden(UnitSystem.US);

  @BeforeEach
  void withoutFieldwork() {
    for (String table : List.of(Sheets.TESTS, Sheets.CANS, Sheets.VERDICTS, Sheets.CONTROLLER)) {
      int rows = design.book().rows(table);
      design.book().start(design.edits().removed(table, 0, rows));
    }
  }

  private void type(Column column, int row, String text) {
    design.book().start(design.edits().typed(column.reference(), row, text));
  }

  private double number(Column column, int row) {
    return design.book().number(column.reference(), row);
  }

  private String words(Column column, int row) {
    return design.book().shown(column.reference(), outcome(column.reference(), row));
  }

  private Outcome outcome(Reference column, int row) {
    return design.book().outcome(column, row);
  }

  private void test(int row, String zone) {
    design.book().start(design.edits().inserted(Sheets.TESTS, row, 1));
    type(CatchTests.ZONE, row, zone);
    type(CatchTests.MINUTES, row, "12");
    type(CatchTests.OPENING_ACROSS, row, "4 in");
  }

  private void pasted(int test) {
    List<List<String>> block = List.of(List.of("20", "", "24 mL"), List.of("30", "28", "0"));
    design.book().perform(CanGrid.pasted(design.book(), test, block).orElseThrow());
  }

  @Test
  void aPastedGridBecomesCansWithPlaces() {
    test(0, "1");
    type(CatchTests.SPACING_ACROSS, 0, "5 ft");
    type(CatchTests.SPACING_UP, 0, "8 ft");
    pasted(0);
    assertThat(design.book().rows(Sheets.CANS)).isEqualTo(5);
    assertThat(number(Cans.ACROSS, 1)).isEqualTo(10);
    assertThat(number(Cans.UP, 1)).as("the first line is the far row").isEqualTo(8);
    assertThat(number(Cans.VOLUME, 4)).as("0 is a can that caught nothing").isZero();
    assertThat(number(CatchTests.COUNT, 0)).isEqualTo(5);
    design.book().undo();
    assertThat(design.book().rows(Sheets.CANS)).isZero();
    pasted(0);
    pasted(0);
    assertThat(design.findings()).noneMatch(finding -> finding.line().contains("same name"));
  }

  @Test
  void anEmptyGridOrATestWithoutNameMakesNoCans() {
    test(0, "1");
    assertThat(CanGrid.pasted(design.book(), 0, List.of(List.of(" ", "")))).isEmpty();
    type(CatchTests.NAME, 0, "");
    assertThat(CanGrid.pasted(design.book(), 0, List.of(List.of("4")))).isEmpty();
  }

  @Test
  void aTestInUseIsItsZonesSourceUntilUndone() {
    type(Emitters.DISTRIBUTION_UNIFORMITY, 0, "77 %");
    double usualRate = number(Emitters.PRECIPITATION_RATE, 0);
    test(0, "1");
    test(1, "1");
    pasted(0);
    pasted(1);
    assertThat(number(Emitters.PRECIPITATION_RATE, 0)).isEqualTo(usualRate);
    design.book().perform(TestUse.use(design.book(), 0).orElseThrow());
    assertThat(number(Emitters.PRECIPITATION_RATE, 0))
        .isEqualTo(number(CatchTests.RATE, 0))
        .isNotEqualTo(usualRate);
    assertThat(number(Emitters.DISTRIBUTION_UNIFORMITY, 0))
        .isEqualTo(number(CatchTests.LOW_QUARTER, 0));
    design.book().perform(TestUse.use(design.book(), 1).orElseThrow());
    assertThat(TestUse.inUse(design.book(), 0)).isFalse();
    assertThat(TestUse.inUse(design.book(), 1)).isTrue();
    design.book().undo();
    design.book().undo();
    assertThat(number(Emitters.PRECIPITATION_RATE, 0)).isEqualTo(usualRate);
    assertThat(number(Emitters.DISTRIBUTION_UNIFORMITY, 0)).isEqualTo(0.77);
    design.book().redo();
    design.book().perform(TestUse.drop(design.book(), 0).orElseThrow());
    assertThat(number(Emitters.PRECIPITATION_RATE, 0)).isEqualTo(usualRate);
    assertThat(TestUse.drop(design.book(), 0)).isEmpty();
  }

  @Test
  void theFindingOfATestPutsItToUse() {
    test(0, "1");
    pasted(0);
    Finding finding =
        design.findings().stream()
            .filter(each -> each.line().contains("does not go by it"))
            .findFirst()
            .orElseThrow();
    design.book().perform(finding.mend(design.book()).orElseThrow());
    assertThat(TestUse.inUse(design.book(), 0)).isTrue();
    assertThat(design.findings()).noneMatch(each -> each.line().contains("does not go by it"));
  }

  @Test
  void aZoneByTestWithoutATestIsAFinding() {
    type(Emitters.RATE_METHOD, 0, Emitters.BY_TEST);
    assertThat(design.findings())
        .anyMatch(finding -> finding.line().contains("no test of it is in use"));
  }

  private void looks(String verdict, int from, int to, String date) {
    for (int zone = from; zone <= to; zone++) {
      int row = design.book().rows(Sheets.VERDICTS);
      design.book().start(design.edits().inserted(Sheets.VERDICTS, row, 1));
      type(Verdicts.DATE, row, date);
      type(Verdicts.ZONE, row, Integer.toString(zone));
      type(Verdicts.VERDICT, row, verdict);
    }
  }

  @Test
  void adviceIsTakenInOneStepThatLeavesItsHistory() {
    looks("too dry", 1, 10, "2026-06-03");
    looks("right", 11, 12, "2026-06-03");
    double minutes = number(Demand.RUN_TIME_PER_WEEK, 0);
    double days = number(Demand.WATERING_DAYS, 0);
    double interval = number(Demand.LONGEST_INTERVAL, 0);
    TuningAdvice advice = TuningAdvice.on(Tuning.state(design.book()));
    assertThat(advice.kind()).isEqualTo(TuningAdvice.Kind.SITE);
    Edit edit = Tuning.applied(design.book(), advice, LocalDate.of(2026, 6, 4)).orElseThrow();
    design.book().perform(edit);
    assertThat(number(TuningPercents.SITE_TUNING, 0)).isEqualTo(1.1);
    assertThat(number(Demand.RUN_TIME_PER_WEEK, 0)).isCloseTo(minutes * 1.1, within(1e-9));
    assertThat(number(Demand.WATERING_DAYS, 0)).as("never the days").isEqualTo(days);
    assertThat(number(Demand.LONGEST_INTERVAL, 0)).isEqualTo(interval);
    assertThat(number(CycleAndSoak.CYCLES, 0) * number(CycleAndSoak.CYCLE_MINUTES, 0))
        .isGreaterThanOrEqualTo(number(Demand.RUN_TIME, 0));
    assertThat(words(Verdicts.DONE, 0)).isEqualTo("2026-06-04: site 100 % to 110 %");
    assertThat(Tuning.waiting(design.book())).isEmpty();
    assertThat(design.findings()).noneMatch(finding -> finding.where().equals("Tuning log:"));
    design.book().undo();
    assertThat(number(TuningPercents.SITE_TUNING, 0)).isEqualTo(1);
    assertThat(Tuning.waiting(design.book())).hasSize(12);
  }

  @Test
  void singleZonesAreSetAloneAndTheOthersNote() {
    looks("too wet", 3, 3, "2026-06-03");
    looks("right", 4, 12, "2026-06-03");
    Finding finding =
        design.findings().stream()
            .filter(each -> each.where().equals("Tuning log:"))
            .findFirst()
            .orElseThrow();
    Optional<Edit> edit = finding.mend(design.book());
    design.book().perform(edit.orElseThrow());
    assertThat(number(TuningPercents.ZONE_TUNING, 2)).isEqualTo(0.9);
    assertThat(number(TuningPercents.SITE_TUNING, 0)).isEqualTo(1);
    assertThat(words(Verdicts.DONE, 0)).endsWith(": zone 100 % to 90 %");
    assertThat(words(Verdicts.DONE, 1)).endsWith(": not changed");
  }

  @Test
  void theLogWithoutAZoneOrADateWaitsForThem() {
    design.book().start(design.edits().inserted(Sheets.VERDICTS, 0, 1));
    type(Verdicts.VERDICT, 0, "too dry");
    assertThat(Tuning.waiting(design.book())).isEmpty();
    assertThat(design.findings())
        .anyMatch(finding -> finding.line().contains("Date is blank"))
        .anyMatch(finding -> finding.line().contains("Zone is blank"));
  }

  @Test
  void aControllerThatStraysForAMonthIsAFinding() {
    for (int day = 1; day <= 3; day++) {
      int row = day - 1;
      design.book().start(design.edits().inserted(Sheets.CONTROLLER, row, 1));
      type(Watching.DATE, row, "2026-07-0" + day);
      type(Watching.SHOWN, row, day == 3 ? "0 %" : "60 %");
    }
    assertThat(words(Watching.MONTH, 0)).isEqualTo("July");
    assertThat(number(Watching.MEAN, 6)).isCloseTo(0.4, within(1e-12));
    assertThat(design.findings())
        .anyMatch(finding -> finding.line().contains("the controller showed 40 % on average"))
        .anyMatch(finding -> finding.line().contains("shut-off was active"));
    type(Watching.DATE, 2, "2026-12-03");
    assertThat(design.findings())
        .as("two readings say nothing of a month")
        .noneMatch(finding -> finding.line().contains("on average"));
  }

  @Test
  void openUrgentItemsAndOddFlowsAreFindingsUntilDone() {
    design
        .book()
        .start(design.edits().removed(Sheets.INSPECTION, 0, design.book().rows(Sheets.INSPECTION)));
    design.book().start(design.edits().inserted(Sheets.INSPECTION, 0, 2));
    type(Inspection.WHAT, 0, "leak");
    type(Inspection.PRIORITY, 0, Inspection.URGENT);
    type(Inspection.WHAT, 1, "flow reading");
    type(Inspection.ZONE, 1, "4");
    type(Inspection.FLOW, 1, "36 gpm");
    assertThat(design.findings())
        .anyMatch(finding -> finding.line().contains("leak is urgent and not done"))
        .anyMatch(finding -> finding.line().contains("more than the 30 gpm expected"));
    type(Inspection.DONE, 0, "yes");
    type(Inspection.DONE, 1, "yes");
    assertThat(design.findings())
        .noneMatch(finding -> finding.column().table().equals(Sheets.INSPECTION));
  }

  @Test
  void emptySheetsOfTheFieldSayNothing() {
    Design blank = Design.blank(UnitSystem.SI);
    List<String> field =
        List.of(Sheets.TESTS, Sheets.CANS, Sheets.INSPECTION, Sheets.CONTROLLER, Sheets.VERDICTS);
    assertThat(blank.findings()).noneMatch(finding -> field.contains(finding.column().table()));
    assertThat(blank.findings()).noneMatch(finding -> finding.where().equals("Tuning log:"));
  }
}
