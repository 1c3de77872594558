package zonewright.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.concurrent.CancellationException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import zonewright.budget.Ordinance;
import zonewright.climate.Climate;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.NumberSearch.Goal;
import zonewright.sheet.Place;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** Inputs found for answers, held to what the published equations give when solved by hand. */
class InputFinderTest {
  private final Design garden = Demo.libraryGarden(UnitSystem.US);
  private final Book book = garden.book();

  private static Place cell(Column column, int row) {
    return new Place(column.reference(), row);
  }

  private InputAnswer find(Place input, Place answer, Goal goal, double wanted) {
    return InputFinder.answer(
        book.snapshot(), new InputQuestion(input, answer, goal, wanted), () -> false);
  }

  private InputAnswer.Reached found(Place input, Place answer, Goal goal, double wanted) {
    return (InputAnswer.Reached) find(input, answer, goal, wanted);
  }

  private String refused(Place input, Place answer) {
    return ((InputAnswer.Refused) find(input, answer, Goal.EQUAL, 1)).sentence();
  }

  private void type(Column column, int row, String text) {
    book.perform(garden.edits().typed(column.reference(), row, text));
  }

  private double number(Column column, int row) {
    return book.number(column.reference(), row);
  }

  /** Rate = 96.25 × gpm ÷ ft²: Ohio State University Extension, Bulletin 912, step 11. */
  @Test
  void theAreaForARateIsThatOfTheEquation() {
    InputAnswer.Reached found =
        found(cell(Emitters.AREA, 1), cell(Emitters.RATE_BY_AREA, 1), Goal.EQUAL, 0.5);

    assertThat(found.value()).isCloseTo(96.25 * 37.2 / 0.5, offset(0.01));
    assertThat(found.already()).isFalse();
    assertThat(found.lines())
        .startsWith(
            "zone 2, Area: from 2,250 ft² to 7161 ft²",
            "zone 2, Rate by area: from 1.59 in/h to 0.5 in/h, where 0.5 in/h is wanted")
        .anyMatch(line -> line.contains("96.25 × 37.2 gpm ÷ 7,161 ft²"));
  }

  @Test
  void ofALimitTheEndOfTheRangeIsTakenThatIsNearestToThePresent() {
    InputAnswer.Reached found =
        found(cell(Emitters.AREA, 1), cell(Emitters.RATE_BY_AREA, 1), Goal.AT_MOST, 0.7);

    assertThat(found.value()).isCloseTo(96.25 * 37.2 / 0.7, offset(1.0));
    assertThat(found.lines()).contains("What does: 5115 ft² or more");
  }

  /**
   * Longest cycle = surface storage ÷ (rate − intake), in whole minutes; cycles = run time ÷
   * longest cycle, rounded up: the variables of a public university exercise.
   */
  @Test
  void theIntakeForSoManyCyclesIsThatOfTheEquations() {
    double storage = number(Soils.SURFACE_STORAGE, 6);
    double rate = number(Emitters.WETTED_RATE, 6);
    double minutes = number(Demand.RUN_TIME, 6);
    // Two cycles at most: the longest cycle must come to half of the run time, 84 min, or more.
    double intake = rate - 60 * storage / Math.ceil(minutes / 2);

    InputAnswer.Reached found =
        found(cell(Soils.INTAKE_RATE, 6), cell(CycleAndSoak.CYCLES, 6), Goal.AT_MOST, 2);

    assertThat(book.number(CycleAndSoak.CYCLES.reference(), 6)).isEqualTo(3);
    assertThat(found.value()).isBetween(intake, intake * 1.001);
    assertThat(found.ranges()).hasSize(1);
    assertThat(found.ranges().get(0).from()).isCloseTo(intake, offset(1e-9));
    assertThat(found.lines()).anyMatch(line -> line.matches("What does: [0-9.]+ in/h or more"));
  }

  /** Cycles go up with the rate where water runs off, and with the run time where it is slow. */
  @Test
  void whatDoesInSeveralRangesIsToldInAll() {
    InputAnswer.Reached found =
        found(cell(Emitters.PRECIPITATION_RATE, 2), cell(CycleAndSoak.CYCLES, 2), Goal.AT_MOST, 2);

    List<NumberSearch.Span> ranges = found.ranges();
    assertThat(ranges).hasSizeGreaterThan(1);
    assertThat(found.lines()).anyMatch(line -> line.startsWith(ranges.size() + " ranges do: "));
    Book copy = new Book(book.schema(), book.snapshot());
    for (double rate = 0.02; rate < 2; rate += 0.00713) {
      double typed = rate;
      copy.start(
          new Edits(copy).set(Emitters.PRECIPITATION_RATE.reference(), 2, new Entry.Figure(rate)));
      boolean holds = copy.number(CycleAndSoak.CYCLES.reference(), 2) <= 2;
      assertThat(ranges.stream().anyMatch(span -> typed >= span.from() && typed <= span.to()))
          .as("at %s in/h", rate)
          .isEqualTo(holds);
    }
  }

  /**
   * California Code of Regulations, Title 23, 492.4: allowed and estimated use are linear in area.
   */
  @Test
  void theTurfThatMeetsTheAllowanceIsThatOfTheOrdinance() {
    type(Plants.PLANT_FACTOR, 0, "0.9");
    type(Emitters.AREA, 0, "60000");
    double factor = number(Ordinance.ADJUSTMENT_FACTOR, 0);
    double others = 0;
    for (int row = 1; row < book.rows(Sheets.ZONES); row++) {
      type(Plants.PLANT_FACTOR, row, "0.2");
      boolean special = number(Ordinance.SPECIAL_AREA, row) > 0;
      double use = number(Plants.PLANT_FACTOR, row) / number(Emitters.IRRIGATION_EFFICIENCY, row);
      others += (special ? 0 : factor - use) * number(Emitters.AREA, row);
    }
    double turf = others / (0.9 / number(Emitters.IRRIGATION_EFFICIENCY, 0) - factor);

    assertThat(number(Ordinance.LEFT_OVER, 0)).isNegative();
    InputAnswer.Reached most =
        found(cell(Emitters.AREA, 0), cell(Ordinance.LEFT_OVER, 0), Goal.AT_LEAST, 0);
    InputAnswer.Reached just =
        found(cell(Emitters.AREA, 0), cell(Ordinance.LEFT_OVER, 0), Goal.EQUAL, 0);

    assertThat(most.value()).isBetween(turf * 0.999, turf);
    assertThat(just.value()).isCloseTo(turf, offset(turf * 1e-3));
  }

  @Test
  void ofWhatHoldsAlreadyNothingIsChanged() {
    InputAnswer.Reached found =
        found(cell(Soils.INTAKE_RATE, 6), cell(CycleAndSoak.CYCLES, 6), Goal.AT_MOST, 3);

    assertThat(found.already()).isTrue();
    assertThat(found.value()).isEqualTo(number(Soils.INTAKE_RATE, 6));
    assertThat(found.lines().get(0))
        .isEqualTo("zone 7, Cycles is 3 already, with zone 7, Intake rate at 0.2 in/h.");
  }

  @Test
  void limitsOfTheInputAreRespectedAndTheNearestIsTold() {
    InputAnswer found =
        find(cell(Plants.PLANT_FACTOR, 6), cell(Plants.PLANT_FACTOR, 6), Goal.EQUAL, 9);
    assertThat(found).isInstanceOf(InputAnswer.Refused.class);

    double most = Plants.PLANT_FACTOR.bounds().orElseThrow().high();
    double at = number(Ordinance.ESTIMATED_USE, 6) / number(Plants.PLANT_FACTOR, 6) * most;
    InputAnswer.OutOfReach none =
        (InputAnswer.OutOfReach)
            find(
                cell(Plants.PLANT_FACTOR, 6),
                cell(Ordinance.ESTIMATED_USE, 6),
                Goal.AT_LEAST,
                at * 1.01);
    assertThat(none.nearest()).isEqualTo(most);
    assertThat(none.sentence())
        .startsWith("None in range (above 0 and at most 2): nothing typed for zone 7, Plant factor")
        .endsWith("The nearest is 121,048 gal, with 2.");
  }

  @Test
  void inputsOfWholeNumbersStayWhole() {
    type(Emitters.ZONE_FLOW, 0, "");
    type(Emitters.EMITTER_COUNT, 0, "10");
    type(Emitters.EMITTER_FLOW, 0, "1.3 gpm");

    InputAnswer.Reached found =
        found(cell(Emitters.EMITTER_COUNT, 0), cell(Emitters.ZONE_FLOW, 0), Goal.AT_MOST, 9);
    assertThat(found.value()).isEqualTo(Math.floor(9 / 1.3));
    assertThat(find(cell(Emitters.EMITTER_COUNT, 0), cell(Emitters.ZONE_FLOW, 0), Goal.EQUAL, 9))
        .isInstanceOf(InputAnswer.OutOfReach.class);
  }

  @Test
  void aBlankInputIsFoundToo() {
    type(Emitters.AREA, 0, "");
    InputAnswer.Reached found =
        found(cell(Emitters.AREA, 0), cell(Emitters.RATE_BY_AREA, 0), Goal.EQUAL, 1);

    assertThat(found.value()).isCloseTo(96.25 * 37.2, offset(0.01));
    assertThat(found.lines().get(0)).startsWith("zone 1, Area: from blank to ");
  }

  @Test
  void whatCannotBeAskedIsRefusedInASentence() {
    assertThat(refused(cell(CycleAndSoak.CYCLES, 0), cell(CycleAndSoak.CYCLES, 1)))
        .startsWith("zone 1, Cycles is calculated, so nothing is typed there; choose an input");
    assertThat(refused(cell(Soils.SOIL_TYPE, 0), cell(CycleAndSoak.CYCLES, 0)))
        .isEqualTo("zone 1, Soil holds words; only numbers can be found.");
    assertThat(refused(cell(Emitters.AREA, 0), cell(Climate.PLACE, 0)))
        .endsWith("holds words; choose an answer that is a number.");
    assertThat(refused(cell(Emitters.AREA, 0), cell(Emitters.AREA, 1)))
        .isEqualTo(
            "zone 2, Area is typed and follows from nothing; choose an answer that is calculated.");
    assertThat(refused(cell(Emitters.AREA, 0), cell(CycleAndSoak.CYCLES, 1)))
        .isEqualTo("zone 2, Cycles stays 2 whatever zone 1, Area is.");
    assertThat(refused(cell(Soils.SLOPE, 0), cell(Emitters.RATE_BY_AREA, 0)))
        .contains(
            "Rate by area stays 1.59 in/h whatever zone 1, Slope is; it follows from other inputs, such as")
        .contains("Area");
  }

  @Test
  void anAnswerThatIsTypedOverIsToldSo() {
    type(Emitters.PRECIPITATION_RATE, 0, "1.2");

    assertThat(refused(cell(Emitters.AREA, 0), cell(Emitters.PRECIPITATION_RATE, 0)))
        .isEqualTo(
            "zone 1, Precipitation rate stays 1.2 in/h whatever zone 1, Area is, for it is typed over; clear it first.");
  }

  @Test
  void anAnswerThatDoesNotAriseSaysWhyNot() {
    assertThat(refused(cell(Emitters.PRECIPITATION_RATE, 9), cell(CycleAndSoak.LONGEST_CYCLE, 6)))
        .startsWith("zone 7, Longest cycle stays 29 min whatever zone 10, Precipitation rate is");
    type(Soils.INTAKE_RATE, 9, "20 in/h");
    assertThat(refused(cell(Soils.SLOPE, 9), cell(CycleAndSoak.LONGEST_CYCLE, 9)))
        .isEqualTo(
            "zone 10, Longest cycle has no number here: "
                + book.outcome(CycleAndSoak.LONGEST_CYCLE.reference(), 9).sentence());
  }

  @Test
  void anAnswerThatLacksSomethingSaysWhat() {
    type(Emitters.ZONE_FLOW, 0, "");
    type(Emitters.EMITTER_COUNT, 0, "");

    assertThat(refused(cell(Emitters.AREA, 0), cell(Emitters.RATE_BY_AREA, 0)))
        .startsWith("zone 1, Rate by area has no number yet; it needs zone 1,");
  }

  @Test
  void unitsThatDoNotFitAreRefused() {
    Place cycles = cell(CycleAndSoak.CYCLES, 0);
    Place rate = cell(Emitters.RATE_BY_AREA, 0);

    assertThat(InputQuestion.wanted(book, cycles, "3 gal"))
        .isInstanceOf(QuantityText.Unreadable.class);
    assertThat(InputQuestion.wanted(book, rate, "25.4 mm/h")).isEqualTo(new QuantityText.Read(1));
  }

  @Test
  void findingsThatComeAreTold() {
    InputAnswer.Reached found =
        found(
            cell(Emitters.PRECIPITATION_RATE, 2), cell(CycleAndSoak.CYCLES, 2), Goal.AT_LEAST, 40);

    assertThat(found.lines())
        .contains("1 finding comes by it:")
        .anyMatch(line -> line.contains("needs 40 cycles a day, the controller starts at most 4"));
  }

  @Test
  void aSearchCanBeStopped() {
    InputQuestion question =
        new InputQuestion(cell(Emitters.AREA, 0), cell(Emitters.RATE_BY_AREA, 0), Goal.EQUAL, 0.5);

    assertThatThrownBy(() -> InputFinder.answer(book.snapshot(), question, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  @Property(tries = 25)
  void typingWhatWasFoundGivesWhatWasWantedAndNothingElseWasTouched(
      @ForAll @IntRange(min = 0, max = 11) int row,
      @ForAll @DoubleRange(min = 0.2, max = 3) double times,
      @ForAll Goal goal,
      @ForAll boolean metric) {
    Design design = Demo.libraryGarden(metric ? UnitSystem.SI : UnitSystem.US);
    Book own = design.book();
    double before = own.number(Demand.RUN_TIME_PER_WEEK.reference(), row);
    double wanted = before * times;
    BookSnapshot held = own.snapshot();

    InputAnswer answer =
        InputFinder.answer(
            held,
            new InputQuestion(
                cell(Emitters.PRECIPITATION_RATE, row),
                cell(Demand.RUN_TIME_PER_WEEK, row),
                goal,
                wanted),
            () -> false);

    assertThat(own.number(Demand.RUN_TIME_PER_WEEK.reference(), row)).isEqualTo(before);
    assertThat(own.journal().toUndo()).isEmpty();
    InputAnswer.Reached reached = (InputAnswer.Reached) answer;
    own.perform(reached.edit(own));
    double after = own.number(Demand.RUN_TIME_PER_WEEK.reference(), row);
    switch (goal) {
      case EQUAL -> assertThat(after).isCloseTo(wanted, offset(1e-6 * wanted));
      case AT_MOST -> assertThat(after).isLessThanOrEqualTo(wanted * (1 + 1e-9));
      case AT_LEAST -> assertThat(after).isGreaterThanOrEqualTo(wanted * (1 - 1e-9));
    }
    if (!reached.already()) {
      own.undo();
      assertThat(own.number(Demand.RUN_TIME_PER_WEEK.reference(), row)).isEqualTo(before);
    }
  }
}
