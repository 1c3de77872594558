package zonewright.savings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What the present schedule and the meter say, beside what the zones as found need; by hand. */
class PresentUseTest {
  private static final int JANUARY = 0;
  private static final int JULY = 6;

  private Design design;
  private Book book;

  /** Lawn of 30 gpm for 100 minutes a week, and shrubs of 12 gpm for 5; invented. */
  @BeforeEach
  void twoZonesAsFound() {
    design = Design.blank(UnitSystem.US);
    book = design.book();
    type(Climate.PLACE.reference(), 0, "CIMIS zone 5");
    book.perform(design.edits().inserted(Sheets.FOUND, 0, 2));
    for (int row = 0; row < 2; row++) {
      found(Facts.ZONE_NAME, row, List.of("Lawn", "Shrubs").get(row));
      found(Plants.PLANT, row, List.of("cool-season turf", "shrubs (dry climate)").get(row));
      found(Emitters.EMITTER, row, "fixed spray");
      found(Emitters.EMITTER_COUNT, row, List.of("20", "8").get(row));
      found(Emitters.EMITTER_FLOW, row, "1.5 gpm");
      found(Soils.SOIL_TYPE, row, "loam");
      found(Soils.SLOPE, row, "2 %");
      found(Emitters.AREA, row, List.of("1800 ft2", "700 ft2").get(row));
      type(AsFound.PRESENT_MINUTES.reference(), row, List.of("100", "5").get(row));
    }
  }

  private void found(Column column, int row, String text) {
    type(AsFound.of(column), row, text);
  }

  private void type(Reference cell, int row, String text) {
    book.perform(design.edits().typed(cell, row, text));
  }

  private double number(Column column, int row) {
    return book.number(column.reference(), row);
  }

  @Test
  void aWeekIsFlowTimesMinutesAndAMonthItsWeeksTimesTheSeasonalSetting() {
    assertThat(number(AsFound.PRESENT_VOLUME, 0)).isCloseTo(30 * 100, offset(1e-9));
    assertThat(number(AsFound.PRESENT_VOLUME, 1)).isCloseTo(12 * 5, offset(1e-9));
    assertThat(number(Use.PRESENT, JULY)).isCloseTo(3060 * 31 / 7.0, offset(1e-6));
    type(Use.SETTING.reference(), JULY, "120 %");
    type(Use.SETTING.reference(), JANUARY, "0 %");
    assertThat(number(Use.PRESENT, JULY)).isCloseTo(1.2 * 3060 * 31 / 7.0, offset(1e-6));
    assertThat(number(Use.PRESENT, JANUARY)).isZero();
    double year = 0;
    for (int month = 0; month < 12; month++) {
      year += number(Use.PRESENT, month);
    }
    assertThat(number(Savings.YEAR_PRESENT, 0)).isCloseTo(year, offset(1e-6));
    assertThat(number(Savings.OVERWATERED, 0))
        .isCloseTo(year - number(Savings.YEAR_FOUND, 0), offset(1e-6));
  }

  @Test
  void whatTheyNeedFollowsTheClimateMonthByMonth() {
    double week =
        book.number(AsFound.of(ZoneBudget.VOLUME_PER_WEEK), 0)
            + book.number(AsFound.of(ZoneBudget.VOLUME_PER_WEEK), 1);
    double year = 0;
    for (int month = 0; month < 12; month++) {
      assertThat(number(Use.FOUND, month))
          .isCloseTo(week / 7 * number(SiteBudget.PEAK_DAYS_WORTH, month), offset(1e-6));
      year += number(Use.FOUND, month);
    }
    assertThat(number(Use.FOUND, JULY)).isGreaterThan(3 * number(Use.FOUND, JANUARY));
    assertThat(number(Savings.YEAR_FOUND, 0)).isCloseTo(year, offset(1e-6));
  }

  @Test
  void zonesGivenFarTooMuchOrTooLittleAreTold() {
    double need = book.number(AsFound.of(ZoneBudget.VOLUME_PER_WEEK), 0);
    assertThat(number(AsFound.PRESENT_PART, 0)).isCloseTo(3000 / need, offset(1e-9));
    assertThat(lines()).anyMatch(line -> line.contains("Shrubs") && line.contains("is given only"));
    type(AsFound.PRESENT_MINUTES.reference(), 0, Double.toString(Math.rint(1.57 * need / 30)));
    assertThat(lines()).anyMatch(line -> line.contains("Lawn") && line.contains("is given 15"));
    type(AsFound.PRESENT_MINUTES.reference(), 0, Double.toString(Math.rint(need / 30)));
    assertThat(lines()).noneMatch(line -> line.contains("Lawn") && line.contains("is given"));
  }

  @Test
  void theMeterLessOtherUseCountsWhereItIsChosen() {
    type(Use.METERED.reference(), JULY, "20000 gal");
    type(Use.OTHER.reference(), JULY, "3500 gal");
    assertThat(number(Use.METERED_IRRIGATION, JULY)).isCloseTo(16_500, offset(1e-9));
    assertThat(number(Use.BEFORE, JULY)).isEqualTo(number(Use.FOUND, JULY));
    type(Use.BASIS.reference(), 0, Use.BY_SCHEDULE);
    assertThat(number(Use.BEFORE, JULY)).isEqualTo(number(Use.PRESENT, JULY));
    type(Use.BASIS.reference(), 0, Use.BY_METER);
    assertThat(number(Use.BEFORE, JULY)).isCloseTo(16_500, offset(1e-9));
    assertThat(number(Use.BEFORE, JULY)).isNotNaN();
    assertThat(Double.isNaN(number(Use.BEFORE, JANUARY)))
        .as("a month without a reading is not a month without water")
        .isTrue();
  }

  private List<String> lines() {
    return design.findings().stream().map(Finding::line).toList();
  }
}
