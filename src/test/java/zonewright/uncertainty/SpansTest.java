package zonewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.savings.Savings;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.InputRange;

/** Spans over all ranges, held to designs into which numbers of the ranges were typed. */
class SpansTest {
  private static final int ZONES = 4;
  private static final int INPUTS = 5;

  /** Last digits of sums. */
  private static final double SAME = 1e-9;

  private static HowSure sure(RangedGarden garden) {
    return HowSure.of(garden.design().book().snapshot());
  }

  private static boolean holds(HowSure.Span span, double number) {
    double room = SAME * Math.abs(number);
    return number >= span.least() - room && number <= span.greatest() + room;
  }

  /** Every answer that goes steadily is held to; those that do not must say so. */
  private static void held(HowSure sure, Book other, String what) {
    for (int zone = 0; zone < ZONES; zone++) {
      for (Column answer : HowSure.answers()) {
        held(sure.span(answer, zone), other.number(answer.reference(), zone), what + zone);
      }
    }
    for (HowSure.Span span : sure.site()) {
      held(span, other.number(span.column().reference(), 0), what);
    }
  }

  private static void held(HowSure.Span span, double number, String what) {
    boolean none = Double.isNaN(number) || span.none();
    assertThat(none || holds(span, number) || !span.steady())
        .as("%s: %s is %s, %s", what, span.column().name(), number, span)
        .isTrue();
  }

  @Tag(Counts.LONG)
  @ParameterizedTest
  @ValueSource(longs = {8, 22})
  void nothingLiesBeyondASteadySpanWhateverTheInputsAre(long seed) {
    RangedGarden garden = RangedGarden.of(seed, ZONES, INPUTS);
    HowSure sure = sure(garden);
    for (int corner = 0; corner < 1 << INPUTS; corner++) {
      int bits = corner;
      held(sure, garden.with((input, row) -> bits >> input & 1), "corner " + corner + ", zone ");
    }
    Random random = new Random(seed);
    int points = Counts.of(40, 10_000);
    for (int point = 0; point < points; point++) {
      held(sure, garden.with((input, row) -> random.nextDouble()), "point " + point + ", zone ");
    }
  }

  /** Some answers must be steady, or the test above would hold nothing. */
  @Test
  void rateAndRunTimeGoSteadilyAndEachEndIsReached() {
    RangedGarden garden = RangedGarden.of(8, ZONES, INPUTS);
    HowSure sure = sure(garden);
    List<Book> corners =
        IntStream.range(0, 1 << INPUTS)
            .mapToObj(bits -> garden.with((input, row) -> bits >> input & 1))
            .toList();
    for (Column answer : List.of(Emitters.PRECIPITATION_RATE, Demand.RUN_TIME_PER_WEEK)) {
      for (int zone = 0; zone < ZONES; zone++) {
        HowSure.Span span = sure.span(answer, zone);
        int row = zone;
        DoubleSummaryStatistics ends =
            corners.stream()
                .mapToDouble(corner -> corner.number(answer.reference(), row))
                .summaryStatistics();
        assertThat(span.steady()).isTrue();
        assertThat(span.least()).isCloseTo(ends.getMin(), offset(SAME * ends.getMin()));
        assertThat(span.greatest()).isCloseTo(ends.getMax(), offset(SAME * ends.getMax()));
      }
    }
  }

  @Test
  void anAnswerInStepsThatGoesUpAndDownSaysSo() {
    RangedGarden garden = RangedGarden.of(5, ZONES, INPUTS);
    HowSure sure = sure(garden);
    SureWords words = new SureWords(sure);
    HowSure.Span span = sure.span(ZoneBudget.VOLUME_PER_WEEK, 0);

    assertThat(span.steady()).isFalse();
    assertThat(words.zone(0))
        .anyMatch(
            line -> line.startsWith("Volume a week") && line.contains("(not steadily: as tried)"));
    assertThat(words.row(0).get(HowSure.answers().indexOf(ZoneBudget.VOLUME_PER_WEEK) + 1))
        .endsWith("*");
    assertThat(words.mark()).contains("whole steps", "%,d designs".formatted(sure.tried()));
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 5})
  void aWiderRangeNeverNarrowsASpan(long seed) {
    RangedGarden garden = RangedGarden.of(seed, ZONES, INPUTS);
    HowSure narrow = sure(garden);
    Book book = garden.design().book();
    for (InputRange range : garden.uncertain()) {
      for (int row = 0; row < (range.ofSite() ? 1 : ZONES); row++) {
        double least = book.number(range.least().reference(), row);
        if (!Double.isNaN(least)) {
          book.start(
              garden
                  .design()
                  .edits()
                  .set(range.least().reference(), row, new Entry.Figure(least * 0.8)));
        }
      }
    }
    HowSure wide = sure(garden);
    for (int zone = 0; zone < ZONES; zone++) {
      for (Column answer : HowSure.answers()) {
        HowSure.Span before = narrow.span(answer, zone);
        HowSure.Span after = wide.span(answer, zone);
        if (after.steady() && !before.none()) {
          assertThat(holds(after, before.least()) && holds(after, before.greatest()))
              .as("zone %s, %s: %s, %s", zone, answer.name(), before, after)
              .isTrue();
        }
      }
    }
  }

  @Test
  void withoutARangeThereIsNoSpan() {
    RangedGarden garden = RangedGarden.of(3, ZONES, 0);
    HowSure sure = sure(garden);
    Book book = garden.design().book();

    assertThat(sure.ranges()).isEmpty();
    assertThat(sure.measurements()).isEmpty();
    for (int zone = 0; zone < ZONES; zone++) {
      for (Column answer : HowSure.answers()) {
        HowSure.Span span = sure.span(answer, zone);
        double number = book.number(answer.reference(), zone);
        boolean noSoak = answer.equals(CycleAndSoak.SOAK) && Double.isNaN(number);
        assertThat(List.of(span.held(), span.least(), span.greatest()))
            .as(answer.name())
            .containsOnly(noSoak ? 0 : number);
      }
    }
    assertThat(sure.site()).allMatch(HowSure.Span::single).allMatch(HowSure.Span::steady);
    assertThat(new SureWords(sure).toMeasure(0).get(0)).startsWith("Nothing to measure here");
  }

  @Test
  void usAndMetricAreTheSame() {
    RangedGarden garden = RangedGarden.of(5, ZONES, INPUTS);
    HowSure us = sure(garden);
    Design design = Design.of(garden.design().book().snapshot());
    design.book().start(design.edits().switched(UnitSystem.SI));
    HowSure metric = HowSure.of(design.book().snapshot());
    for (int zone = 0; zone < ZONES; zone++) {
      for (Column answer : HowSure.answers()) {
        same(us.span(answer, zone), metric.span(answer, zone));
      }
    }
    for (int at = 0; at < us.site().size(); at++) {
      same(us.site().get(at), metric.site().get(at));
    }
  }

  private static void same(HowSure.Span us, HowSure.Span metric) {
    Column column = us.column();
    assertThat(metric.none()).as(column.name()).isEqualTo(us.none());
    if (us.none()) {
      return;
    }
    assertThat(metric.steady()).as(column.name()).isEqualTo(us.steady());
    assertThat(metric.least())
        .as(column.name())
        .isCloseTo(inMetric(column, us.least()), offset(SAME * Math.abs(metric.least())));
    assertThat(metric.greatest())
        .as(column.name())
        .isCloseTo(inMetric(column, us.greatest()), offset(SAME * Math.abs(metric.greatest())));
  }

  private static double inMetric(Column column, double number) {
    return column.kind().unit(UnitSystem.US).convert(number, column.kind().unit(UnitSystem.SI));
  }

  @Test
  void theDesignStaysAsItIsAndTheAnswerIsTheSameAgain() {
    RangedGarden garden = RangedGarden.of(3, ZONES, INPUTS);
    Book book = garden.design().book();
    BookSnapshot before = book.snapshot();

    HowSure first = sure(garden);
    HowSure second = sure(garden);

    assertThat(book.snapshot().sameEntries(before)).isTrue();
    assertThat(book.journal().toUndo()).isEmpty();
    assertThat(new SureWords(second).site()).isEqualTo(new SureWords(first).site());
  }

  @Test
  void itStopsWhenToldToAndSaysHowFarItIs() {
    BookSnapshot snapshot = RangedGarden.of(3, ZONES, INPUTS).design().book().snapshot();
    AtomicInteger times = new AtomicInteger();

    assertThatThrownBy(
            () -> HowSure.of(snapshot, Set.of(), () -> times.incrementAndGet() > 3, done -> {}))
        .isInstanceOf(CancellationException.class);
    double[] last = {0};
    HowSure.of(
        snapshot,
        Set.of(),
        () -> false,
        done -> {
          assertThat(done).isBetween(last[0], 1.0);
          last[0] = done;
        });
    assertThat(last[0]).isGreaterThan(0.9);
  }

  /** A row somebody left blank has no answers, and does no harm to the others. */
  @Test
  void aBlankZoneAndOneInTheMakingHaveNoSpans() {
    RangedGarden garden = RangedGarden.of(5, ZONES, INPUTS);
    Design design = garden.design();
    HowSure before = sure(garden);
    design.book().start(design.edits().inserted(Sheets.ZONES, ZONES, 2));
    RangedGarden.type(design, Emitters.AREA, ZONES, "500");
    blank(design, ZONES + 1);
    HowSure after = sure(garden);

    assertThat(after.zones()).hasSize(ZONES + 1);
    assertThat(after.span(CycleAndSoak.CYCLES, ZONES).none()).isTrue();
    assertThat(new SureWords(after).zone(ZONES)).contains("Cycles: not known yet.");
    for (Column answer : List.of(Emitters.PRECIPITATION_RATE, Demand.RUN_TIME_PER_WEEK)) {
      assertThat(after.span(answer, 0).greatest())
          .isCloseTo(before.span(answer, 0).greatest(), offset(SAME));
    }
  }

  private static void blank(Design design, int zone) {
    List<Reference> all =
        design.book().schema().table(Sheets.ZONES).columns().stream()
            .map(Column::reference)
            .toList();
    design.book().start(design.edits().cleared(all, List.of(zone)));
  }

  @Test
  void theSentenceOfAZoneNamesWhatNarrowsItMost() {
    Design design = Worked.zone("1.6", "0.25").design();
    RangedGarden.type(design, Soils.INTAKE_RATE, 0, "0.35");
    RangedGarden.type(
        design, InputRange.of(Soils.INTAKE_RATE.reference()).orElseThrow().least(), 0, "0.2");
    RangedGarden.type(
        design, InputRange.of(Soils.INTAKE_RATE.reference()).orElseThrow().greatest(), 0, "0.5");
    HowSure sure = HowSure.of(design.book().snapshot());

    assertThat(new SureWords(sure).toMeasure(0).get(0))
        .isEqualTo(
            "Measure the intake rate (intake test): cycles lie between 2 and 3 by it alone; nothing else moves them.");
    assertThat(sure.measurements().get(0).measurement().name()).isEqualTo("Intake test");
    assertThat(sure.measurements().get(0).cycles()).isEqualTo(1);
  }

  /**
   * By hand: 60 × 0.25 ÷ (1.6 − 0.35) is a longest cycle of 12 min, so 22 min go in 2 cycles, and
   * so do 24; with an intake of 0.3 in/h it is 11 min, and 22 min still go in 2, but 24 in 3.
   */
  @Test
  void aStepThatOnlySeveralInputsMakeTogetherIsFound() {
    Design design =
        Worked.zone("1.6", "0.25")
            .type(Soils.INTAKE_RATE, "0.35")
            .type(least(Soils.INTAKE_RATE), "0.3")
            .type(greatest(Plants.PLANT_FACTOR), "1.09")
            .design();
    HowSure sure = HowSure.of(design.book().snapshot());

    HowSure.Span cycles = sure.span(CycleAndSoak.CYCLES, 0);
    assertThat(sure.parts(CycleAndSoak.CYCLES, 0)).isEmpty();
    assertThat(List.of(cycles.least(), cycles.greatest())).containsExactly(2.0, 3.0);
    assertThat(cycles.steady()).isTrue();
    assertThat(new SureWords(sure).toMeasure(0).get(0))
        .endsWith("but no input moves them by itself.");
    assertThat(sure.measurements())
        .as("neither measurement narrows them alone")
        .allMatch(each -> each.cycles() == 0);
  }

  private static Column least(Column input) {
    return InputRange.of(input.reference()).orElseThrow().least();
  }

  private static Column greatest(Column input) {
    return InputRange.of(input.reference()).orElseThrow().greatest();
  }

  /** The weather is that of all zones, whichever stands first: 22 min, and 18 with 80 % of it. */
  @Test
  void theWeatherIsWorthMeasuringAlsoWhereTheFirstRowIsBlank() {
    Worked zone = Worked.zone("1.6", "0.25").type(least(Climate.REFERENCE_ET), "80 %");
    Narrowing known = weather(zone.sure());
    Design design = zone.design();
    design.book().start(design.edits().inserted(Sheets.ZONES, 0, 1));
    blank(design, 0);

    assertThat(known.waterShare()).isCloseTo(4 / 22.0, offset(SAME));
    assertThat(weather(HowSure.of(design.book().snapshot()))).isEqualTo(known);
  }

  private static Narrowing weather(HowSure sure) {
    return sure.measurements().stream()
        .filter(each -> each.measurement().name().equals("Weather of the place"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * A yearly allowance rests on areas on both sides; each zone counts by what it is above its
   * share.
   */
  @Test
  void whatIsLeftOfAnAllowanceIsHeldByEveryCornerOfAreasAndFactors() {
    RangedGarden garden = RangedGarden.of(2, ZONES, 0);
    Design design = garden.design();
    for (int zone = 0; zone < ZONES; zone++) {
      range(design, Emitters.AREA, zone, 0.8, 1.2);
    }
    HowSure.Span left =
        sure(garden).site().stream()
            .filter(span -> span.column().equals(Ordinance.LEFT_OVER))
            .findFirst()
            .orElseThrow();

    assertThat(left.steady()).isTrue();
    double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int corner = 0; corner < 1 << ZONES; corner++) {
      Design other = Design.of(design.book().snapshot());
      for (int zone = 0; zone < ZONES; zone++) {
        double held = design.book().number(Emitters.AREA.reference(), zone);
        double area = held * ((corner >> zone & 1) == 1 ? 1.2 : 0.8);
        other
            .book()
            .start(other.edits().set(Emitters.AREA.reference(), zone, new Entry.Figure(area)));
      }
      double number = other.book().number(Ordinance.LEFT_OVER.reference(), 0);
      ends[0] = Math.min(ends[0], number);
      ends[1] = Math.max(ends[1], number);
    }
    assertThat(left.least()).isCloseTo(ends[0], offset(1e-6 * Math.abs(ends[0])));
    assertThat(left.greatest()).isCloseTo(ends[1], offset(1e-6 * Math.abs(ends[1])));
  }

  private static void range(Design design, Column input, int row, double least, double greatest) {
    InputRange range = InputRange.of(input.reference()).orElseThrow();
    double held = design.book().number(input.reference(), row);
    design
        .book()
        .start(design.edits().set(range.least().reference(), row, new Entry.Figure(held * least)));
    design
        .book()
        .start(
            design
                .edits()
                .set(range.greatest().reference(), row, new Entry.Figure(held * greatest)));
  }

  @Test
  void rangesOfTheSiteDoNoHarmWhereThereAreNoZonesYet() {
    Design design = Design.blank(UnitSystem.US);
    RangedGarden.type(design, Climate.PLACE, 0, "CIMIS zone 4");
    RangedGarden.type(design, least(Climate.REFERENCE_ET), 0, "80 %");

    HowSure sure = HowSure.of(design.book().snapshot());
    assertThat(sure.zones()).isEmpty();
    assertThat(sure.measurements()).isEmpty();
  }

  /** Any number of a zone can be asked along, and the usual ones stay what they are. */
  @Test
  void whatIsAskedAlongChangesNothingElse() {
    Design design = Worked.zone("1.6", "0.25").design();
    HowSure plain = HowSure.of(design.book().snapshot());
    HowSure more =
        HowSure.of(
            design.book().snapshot(),
            Set.of(CycleAndSoak.LONGEST_CYCLE, CycleAndSoak.CYCLES, SiteBudget.SITE_WEEK),
            () -> false,
            done -> {});

    for (Column answer : HowSure.answers()) {
      assertThat(more.span(answer, 0)).isEqualTo(plain.span(answer, 0));
    }
    assertThat(more.site()).isEqualTo(plain.site());
    assertThat(plain.tells(CycleAndSoak.LONGEST_CYCLE)).isFalse();
    HowSure.Span longest = more.span(CycleAndSoak.LONGEST_CYCLE, 0);
    assertThat(List.of(longest.least(), longest.greatest()))
        .as("those at the two published ends of the intake of loam")
        .containsExactly(
            Math.floor(60 * 0.25 / (1.6 - 5 / 25.4)), Math.floor(60 * 0.25 / (1.6 - 20 / 25.4)));
  }

  /** Where water has a price, what it costs is told; the sample's rates are invented. */
  @Test
  void theBillOfAYearIsToldWhereWaterHasAPrice() {
    HowSure sure = HowSure.of(Sample.CAMPUS_RETROFIT.design(UnitSystem.US).book().snapshot());

    assertThat(sure.site())
        .filteredOn(span -> span.column().equals(Savings.BILL_AFTER))
        .singleElement()
        .matches(span -> span.least() < span.held() && span.held() < span.greatest());
    assertThat(HowSure.of(RangedGarden.of(3, ZONES, 0).design().book().snapshot()).site())
        .noneMatch(span -> span.column().equals(Savings.BILL_AFTER));
  }

  @Test
  void theSiteTakesTheSumOfItsZones() {
    HowSure sure = sure(RangedGarden.of(3, ZONES, INPUTS));
    HowSure.Span week = sure.site().get(0);

    assertThat(week.column()).isEqualTo(SiteBudget.SITE_WEEK);
    double most = 0;
    for (int zone = 0; zone < ZONES; zone++) {
      most += sure.span(ZoneBudget.VOLUME_PER_WEEK, zone).greatest();
    }
    assertThat(week.greatest()).isBetween(week.held(), most * (1 + SAME));
  }
}
