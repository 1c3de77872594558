package zonewright.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RunTotals;
import zonewright.balance.WateringRule;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.nights.MonthBook;
import zonewright.nights.NightsPlan;
import zonewright.savings.Use;
import zonewright.sheet.Book;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.water.Demand;

/** Seasons of the demo garden, whose figures are invented, held against its own sheets. */
class SeasonTest {
  private static final WateringRule FIXED = WateringRule.of(new WateringRule.Fixed(1));

  private static Design demo() {
    return Demo.libraryGarden(UnitSystem.US);
  }

  private static SeasonZones zones(Design design) {
    NightsPlan plan = design.nights().plan().orElseThrow();
    return SeasonReading.proposed(design.book(), plan);
  }

  /** Four weeks, each day of which asks what a mean day of the peak month asks. */
  private static SeasonWeather peak(Book book) {
    double et =
        Peak.REFERENCE_ET
            .kind()
            .unit(book.system())
            .convert(book.number(Peak.REFERENCE_ET.reference(), 0), Units.MILLIMETRE_PER_DAY);
    double[] days = new double[28];
    Arrays.fill(days, et);
    return new SeasonWeather(
        new DaysOfWeather(LocalDate.of(2023, 7, 3), days, new double[28], new double[28]),
        true,
        "peak");
  }

  /** 100 percent in the peak month gives what the sheets say, and plants get what they need. */
  @Test
  void aHundredPercentInThePeakReproducesThePeak() {
    Design design = demo();
    Book book = design.book();
    Season season = new Season(zones(design), peak(book), FIXED, 1);
    int followed = 0;
    for (ZoneResult result : season.results()) {
      int row = result.zone().row();
      if (result.zone().partly().isEmpty()) {
        double gallons = book.number(ZoneBudget.VOLUME_PER_WEEK.reference(), row);
        double litres = QuantityKind.VOLUME.unit(book.system()).convert(gallons, Units.LITRE);
        assertThat(result.litres()).isEqualTo(4 * litres, within(1e-6));
        double need =
            QuantityKind.DAILY_DEPTH
                .unit(book.system())
                .convert(book.number(Demand.NET_DEMAND.reference(), row), Units.MILLIMETRE_PER_DAY);
        assertThat(result.whole().need()).isEqualTo(28 * need, within(1e-9));
        double given = result.whole().reaching() * result.zone().application().scheduled();
        assertThat(given).isGreaterThan(28 * need - 1e-9);
        double asked = book.number(Demand.RUN_TIME_PER_WEEK.reference(), row);
        assertThat(given / (28 * need))
            .isEqualTo(result.whole().minutes() / (4 * asked), within(1e-9));
        followed++;
      }
    }
    assertThat(followed).isEqualTo(11);
    assertThat(season.results().get(0).whole().adequacy()).isEqualTo(1, within(1e-9));
  }

  /**
   * The slope of the demo gets 44 of its 99 minutes, and the season says so before anything else.
   */
  @Test
  void aZoneThatIsPlacedInPartIsShortForThat() {
    Design design = demo();
    Season season =
        new Season(
            zones(design), SeasonWeather.of(design.book()).weather().orElseThrow(), FIXED, 1);
    assertThat(season.zones().remarks())
        .containsExactly(
            "Zone 11 is followed with 44 of its 99 min a week, for the timetable has no room for more.");
    assertThat(SeasonFindings.of(season))
        .anySatisfy(
            finding -> {
              assertThat(finding.where()).isEqualTo("zone 11");
              assertThat(finding.sentence()).startsWith("is short in July: plants get 4");
              assertThat(finding.cure()).contains("44 of its 99 min a week");
            });
  }

  /** What a finding says a change would give, the change gives. */
  @Test
  void curesWereTried() {
    Design design = demo();
    Season season =
        new Season(
            zones(design),
            SeasonWeather.of(design.book()).weather().orElseThrow(),
            WateringRule.of(SeasonRules.DAILY.setting(design.book()).orElseThrow()),
            1);
    SeasonFinding loses =
        SeasonFindings.of(season).stream()
            .filter(finding -> finding.where().equals("zone 4"))
            .findFirst()
            .orElseThrow();
    SeasonZone zone = season.zones().zones().get(3);
    RunTotals often = season.result(zone.with(zone.baseline().daily()), 1).whole();
    assertThat(loses.cure())
        .contains(
            "over all days, would lose %.0f %%"
                .formatted(100 * (often.excess() - often.runningOff())));
    assertThat(often.excess()).isLessThan(season.results().get(3).whole().excess());
  }

  @Test
  void ofYearsTheShortOnesAreCounted() {
    Design design = demo();
    // Ten cool years, of which six have a hot August.
    double[] et = new double[3652];
    LocalDate first = LocalDate.of(2011, 1, 1);
    for (int day = 0; day < et.length; day++) {
      LocalDate date = first.plusDays(day);
      boolean hot = date.getMonthValue() == 8 && date.getYear() >= 2015;
      et[day] = hot ? 9 : 3;
    }
    SeasonWeather weather =
        new SeasonWeather(
            new DaysOfWeather(first, et, new double[et.length], new double[et.length]),
            false,
            "made up");
    Season season = new Season(zones(design), weather, FIXED, 1);
    assertThat(season.years()).isEqualTo(10, within(0.01));
    assertThat(SeasonFindings.of(season))
        .anySatisfy(
            finding -> {
              assertThat(finding.where()).isEqualTo("zone 1");
              assertThat(finding.sentence()).startsWith("is short in 6 of 10 Augusts: ");
              assertThat(finding.cure())
                  .contains("more minutes a week, spread over all days, give ");
            });
  }

  @Test
  void aRainSensorIsProposedOnlyWhereItHelps() {
    Design design = demo();
    SeasonWeather weather = SeasonWeather.of(design.book()).weather().orElseThrow();
    WateringRule daily = WateringRule.of(SeasonRules.DAILY.setting(design.book()).orElseThrow());
    Season without = new Season(zones(design), weather, daily, 1);
    assertThat(SeasonFindings.of(without).stream().map(SeasonFinding::cure).toList())
        .anySatisfy(cure -> assertThat(cure).startsWith("add a rain sensor"));
    WateringRule sensing =
        new WateringRule(
            daily.setting(),
            Optional.empty(),
            Optional.of(new WateringRule.RainSensor(6, 3)),
            OptionalDouble.empty(),
            0,
            11);
    Season with = new Season(zones(design), weather, sensing, 1);
    assertThat(with.litres()).isLessThan(without.litres());
    assertThat(SeasonFindings.of(with).stream().map(SeasonFinding::cure).toList())
        .noneSatisfy(cure -> assertThat(cure).startsWith("add a rain sensor"));
  }

  @Test
  void aZoneThatLacksSomethingIsLeftOutByName() {
    Design design = demo();
    Book book = design.book();
    book.perform(new Edits(book).set(Emitters.AREA.reference(), 2, Entry.BLANK));
    SeasonZones zones = zones(design);
    assertThat(zones.zones()).hasSize(11);
    assertThat(zones.remarks().get(0)).startsWith("Zone 3 is left out: ");
  }

  @Test
  void withoutAClimateThereIsNoYear() {
    SeasonWeather.FromMonths none = SeasonWeather.of(Design.blank(UnitSystem.SI).book());
    assertThat(none.weather()).isEmpty();
    assertThat(none.problem()).contains("reference ET of January is not known");
  }

  @Test
  void rulesComeFromTheSheets() {
    Book book = demo().book();
    assertThat(SeasonRules.MONTHLY.setting(book))
        .contains(
            new WateringRule.Monthly(
                MonthBook.toKeyIn(book).stream().map(MonthBook.Month::share).toList()));
    assertThat(SeasonRules.MONTHLY.setting(Design.blank(UnitSystem.US).book())).isEmpty();
    assertThat(SeasonRules.DAILY.setting(Design.blank(UnitSystem.US).book())).isEmpty();
  }

  /** A month's water costs what the sheet Use says it does. */
  @Test
  void moneyIsThatOfTheSheetRates() {
    Book book = Sample.named("campus-retrofit").orElseThrow().design(UnitSystem.US).book();
    WaterPrice price = WaterPrice.of(book).orElseThrow();
    for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
      double gallons = book.number(Use.AFTER.reference(), month);
      double cost =
          book.number(Use.COST_AFTER.reference(), month)
              - book.number(Use.COST_OTHER.reference(), month);
      double litres = Units.GALLON.convert(gallons, Units.LITRE);
      assertThat(price.cost(month, litres)).isEqualTo(cost, within(0.011));
    }
  }

  /**
   * The zones as found give the water of the sheet Found: minutes a week by the month's setting.
   */
  @Test
  void asFoundGivesThePresentWater() {
    Book book = Sample.named("campus-retrofit").orElseThrow().design(UnitSystem.US).book();
    SeasonZones found = SeasonReading.found(book);
    assertThat(found.zones()).isNotEmpty();
    WateringRule rule = WateringRule.of(SeasonRules.FOUND.setting(book).orElseThrow());
    Season season = new Season(found, SeasonWeather.of(book).weather().orElseThrow(), rule, 1);
    double present = 0;
    for (int month = 0; month < 12; month++) {
      present += book.number(Use.PRESENT.reference(), month);
    }
    double gallons = Units.LITRE.convert(season.litres(), Units.GALLON);
    assertThat(gallons).isEqualTo(present, within(0.03 * present));
  }

  @Test
  void everyTableHasACellForEachHeading() {
    Design design = demo();
    Season season =
        new Season(
            zones(design), SeasonWeather.of(design.book()).weather().orElseThrow(), FIXED, 1);
    for (SeasonTable table :
        List.of(
            SeasonTable.ofZones(season, UnitSystem.SI),
            SeasonTable.ofDays(season, season.zones().zones().get(0), UnitSystem.US))) {
      assertThat(table.rows()).isNotEmpty();
      assertThat(table.rows()).allSatisfy(row -> assertThat(row).hasSameSizeAs(table.headings()));
      assertThat(table.headings()).allSatisfy(each -> assertThat(each.meaning()).endsWith("."));
    }
  }
}
