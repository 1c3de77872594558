package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.budget.MonthlyVolume;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * A zone whose need rain covers in every month takes no water, and takes no figure from the site.
 */
class NeverWateredTest {
  private final Design garden = Demo.libraryGarden(UnitSystem.US);

  private void type(Column column, int row, String text) {
    garden.book().perform(garden.edits().typed(column.reference(), row, text));
  }

  private double number(Column column, int row) {
    return garden.book().number(column.reference(), row);
  }

  private void aRainyPlace() {
    type(Rain.METHOD, 0, Rain.SHARE);
    type(Rain.COUNTED_SHARE, 0, "100 %");
    for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
      type(Rain.MONTH_RAIN, month, "2 in");
    }
  }

  private List<String> withoutNumber(String table) {
    TableDefinition definition = garden.book().schema().table(table);
    List<String> missing = new ArrayList<>();
    for (Column column : definition.columns()) {
      for (int row = 0; row < garden.book().rows(table); row++) {
        if (garden.book().outcome(column.reference(), row) instanceof Outcome.Missing
            || garden.book().outcome(column.reference(), row) instanceof Outcome.Refused) {
          missing.add(column.name() + " " + row);
        }
      }
    }
    return missing;
  }

  @Test
  void itTakesNothingAndTheSiteKeepsItsFigures() {
    aRainyPlace();
    List<String> site = withoutNumber(Sheets.SITE);
    List<String> zones = withoutNumber(Sheets.ZONES);
    List<String> monthly = withoutNumber(Sheets.MONTHLY);

    type(Plants.PLANT_FACTOR, 0, "0.05");

    assertThat(number(Demand.NET_DEMAND, 0)).isZero();
    assertThat(number(Demand.RUN_TIME, 0)).isZero();
    assertThat(number(CycleAndSoak.MINUTES_GIVEN, 0)).isZero();
    assertThat(number(ZoneBudget.VOLUME_PEAK_MONTH, 0)).isZero();
    assertThat(number(MonthlyVolume.YEAR, 0)).isZero();
    assertThat(number(MonthlySchedule.PERCENTS.get(6), 0)).isZero();
    assertThat(number(SiteBudget.SITE_YEAR, 0)).isPositive();
    assertThat(withoutNumber(Sheets.SITE)).isEqualTo(site);
    assertThat(withoutNumber(Sheets.ZONES)).isEqualTo(zones);
    assertThat(withoutNumber(Sheets.MONTHLY)).isEqualTo(monthly);
  }
}
