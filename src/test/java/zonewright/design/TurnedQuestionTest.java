package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

class TurnedQuestionTest {
  private static final ColumnFinder FINDER =
      Synonyms.finder(IrrigationSheets.schema(), Sheets.ZONES);

  private static Column column(String name) {
    return ((ColumnFinder.One) FINDER.find(name)).column();
  }

  private static Optional<TurnedQuestion.Answer> answer(String asked, String given) {
    Map<Column, String> values = new LinkedHashMap<>();
    for (String pair : given.split(";", -1)) {
      String[] sides = pair.split("=", 2);
      values.put(column(sides[0].strip()), sides[1].strip());
    }
    return TurnedQuestion.answer(column(asked), values, UnitSystem.US, IrrigationSheets.schema());
  }

  private static double number(TurnedQuestion.Answer answer) {
    return ((Outcome.Amount) answer.question().outcome()).value();
  }

  /**
   * The first two turn examples round that are printed: Ohio State University Extension, Bulletin
   * 912, step 11 (9.6 gpm on 1444 ft² is 0.64 in/h). The others were solved by hand.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Area | Precipitation rate=.64 in/h; Zone flow=9.6 gpm | 1443.75",
        "Zone flow | Precipitation rate=.64 in/h; Area=1444 ft2 | 9.60166",
        "Distribution uniformity | Run-time multiplier=1.25 | 0.666667",
        "Head spacing | Rate by spacing=0.9625 in/h; Flow each=2 gpm; Row spacing=10 ft | 20",
        "Net demand | Run time needed a week=84 min; Precipitation rate=1 in/h; RTM=1.25 | 0.16",
      })
  void anEquationIsSolvedForWhatIsAsked(String asked, String given, double expected) {
    TurnedQuestion.Answer answer = answer(asked, given).orElseThrow();

    assertThat(answer.found()).isEmpty();
    assertThat(number(answer)).isCloseTo(expected, within(expected * 1e-5));
    assertThat(answer.question().steps())
        .anyMatch(step -> TurnedQuestion.isSolved(step.column()) && !step.symbols().isEmpty());
  }

  /** 0.4085 gpm over the square of inches is ft/s: 5 ft/s of 20 gpm want 1.278 in (by hand). */
  @Test
  void aNumberIsSearchedWhereTheUnknownStandsTwice() {
    TurnedQuestion.Answer answer =
        answer("Main inside diameter", "Main velocity=5 ft/s; Flow in the main at once=20 gpm")
            .orElseThrow();

    assertThat(answer.found()).contains("1.278 in");
    assertThat(number(answer)).isCloseTo(5, within(1e-5));
  }

  @Test
  void whereManyNumbersGiveTheSameThatIsSaid() {
    TurnedQuestion.Answer answer =
        answer("Surface storage", "Longest cycle=9 min; PR=1.6 in/h; Intake rate=.3 in/h")
            .orElseThrow();

    assertThat(answer.found().orElseThrow()).endsWith(", one of many");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Slope | Precipitation rate=1 in/h",
        "Area | Zone flow=9.6 gpm",
        "Area | Precipitation rate=.64 in/h",
        "Distribution uniformity | Run-time multiplier=9",
      })
  void whatDoesNotFollowIsNotAnswered(String asked, String given) {
    assertThat(answer(asked, given)).isEmpty();
  }

  @Property(tries = 8)
  void thereAndBackIsTheSame(
      @ForAll @DoubleRange(min = 1, max = 60) double flow,
      @ForAll @DoubleRange(min = 600, max = 9000) double area) {
    Map<Column, String> given = Map.of(column("Zone flow"), flow + "", column("Area"), area + "");
    Question there = new Question(column("Precipitation rate"), given, UnitSystem.US);
    double rate = ((Outcome.Amount) there.outcome()).value();
    TurnedQuestion.Answer back =
        answer("Area", "Precipitation rate=" + rate + ";Zone flow=" + flow).orElseThrow();

    assertThat(number(back)).isCloseTo(area, within(area * 1e-9));
  }
}
