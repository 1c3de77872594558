package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.MonthlySchedule;

/** What is wrong with a zone is told where it arises, not by each column that rests on it. */
class FindingsToldOnceTest {
  private static final Pattern REFUSAL = Pattern.compile("because=([^\\]]*), fault=true");

  @Test
  void waterThatRunsOffAtOnceIsTheZonesFindingAndNotTheMonthsToo() {
    Design garden = Demo.libraryGarden(UnitSystem.US);
    garden.book().perform(garden.edits().typed(Soils.SURFACE_STORAGE.reference(), 0, "0.001"));

    assertThat(garden.findings())
        .filteredOn(finding -> finding.sentence().contains("water runs off before"))
        .singleElement()
        .matches(finding -> finding.row() == 0)
        .matches(finding -> finding.column().equals(CycleAndSoak.MOST_MINUTES.reference()));
    for (Column cycles : List.of(CycleAndSoak.CYCLES, MonthlySchedule.CYCLES)) {
      assertThat(garden.book().outcome(cycles.reference(), 0))
          .as("the cell still says why")
          .isInstanceOf(Outcome.Refused.class);
    }
  }

  /** Of two kinds of pipe each may be too small by itself. */
  @Test
  void noTwoColumnsOfAZoneRefuseForTheSameReason() {
    Schema schema = IrrigationSheets.schema();
    Map<String, List<String>> columns = new TreeMap<>();
    for (TableDefinition table : schema.tables()) {
      for (Column column : table.columns()) {
        String formula = column.formula().map(Object::toString).orElse("");
        Matcher refusal = REFUSAL.matcher(formula);
        while (schema.sameRows(table.id(), Sheets.ZONES) && refusal.find()) {
          columns
              .computeIfAbsent(refusal.group(1), any -> new ArrayList<>())
              .add(table.id() + " " + column.name());
        }
      }
    }
    assertThat(columns).hasSizeGreaterThan(3);
    columns.remove("no size of this kind of pipe is large enough; see what draws so much");
    assertThat(columns).allSatisfy((reason, where) -> assertThat(where).hasSize(1));
  }
}
