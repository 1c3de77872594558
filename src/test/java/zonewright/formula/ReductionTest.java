package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import zonewright.units.QuantityKind;

/** What is left of formulas where a column is blank in every row gives the same as the whole. */
class ReductionTest {
  private static final Reference BLANK = number("blank");
  private static final Reference TYPED = number("typed");
  private static final Reference WORD = new Reference("zones", "word", "Word", QuantityKind.CHOICE);
  private static final Formula ONE = Formula.number(1);
  private static final Formula TWO = Formula.number(2);
  private static final Condition LACKS = new Condition.Given(BLANK);
  private static final Condition HAS = new Condition.Given(TYPED);

  private final Reduction reduction =
      new Reduction(
          Set.of(BLANK)::contains,
          Set.of(BLANK, WORD)::contains,
          column -> Optional.empty(),
          Set.of("tests")::contains);

  private static Reference number(String name) {
    return new Reference("zones", name, name, QuantityKind.FACTOR);
  }

  private static Formula cell(Reference column) {
    return new Formula.Cell(column);
  }

  private static Formula choice(Condition condition, Formula then, Formula otherwise) {
    return new Formula.Choose(condition, then, otherwise);
  }

  private void nothing(Formula formula) {
    assertThat(Reduction.isNothing(reduction.of(formula))).isTrue();
  }

  @Test
  void whatNeedsABlankCellIsNoNumber() {
    nothing(cell(BLANK));
    nothing(cell(TYPED).plus(cell(BLANK)));
    nothing(Formula.larger(ONE, cell(BLANK).times(2)));
    nothing(choice(new Condition.WordIs(WORD, List.of("x")), ONE, TWO));
    nothing(choice(new Condition.Comparison(Comparator.ABOVE, cell(BLANK), ONE), ONE, TWO));
    assertThat(reduction.of(cell(TYPED).plus(1))).isEqualTo(cell(TYPED).plus(1));
  }

  @Test
  void theWayThatIsTakenIsLeft() {
    assertThat(reduction.of(choice(LACKS, cell(BLANK), cell(TYPED)))).isEqualTo(cell(TYPED));
    assertThat(reduction.of(choice(LACKS.negated(), cell(TYPED), cell(BLANK))))
        .isEqualTo(cell(TYPED));
    assertThat(reduction.of(ONE.plus(choice(LACKS, TWO, cell(TYPED)))))
        .isEqualTo(ONE.plus(cell(TYPED)));
    assertThat(reduction.of(choice(HAS, cell(TYPED), cell(BLANK))))
        .isInstanceOfSatisfying(
            Formula.Choose.class,
            left -> assertThat(Reduction.isNothing(left.otherwise())).isTrue());
  }

  @Test
  void ofConditionsThatAreJoinedThePartThatIsKnownGoes() {
    assertThat(reduction.of(choice(LACKS.or(HAS), ONE, TWO))).isEqualTo(choice(HAS, ONE, TWO));
    assertThat(reduction.of(choice(LACKS.or(LACKS), ONE, TWO))).isEqualTo(TWO);
    nothing(choice(LACKS.and(HAS), ONE, cell(BLANK)));
    assertThat(reduction.asked()).isEmpty();
  }

  /** Both must be so and one is not: still the other may hold what is no good. */
  @Test
  void aPartThatMayBeNoGoodIsStillAskedFor() {
    assertThat(reduction.of(choice(LACKS.and(HAS), ONE, TWO))).isEqualTo(TWO);
    assertThat(reduction.asked()).containsExactly(BLANK);
  }

  @Test
  void aTableWithoutRowsHasASumOfNothingAndNoLargest() {
    Reference of = new Reference("tests", "rate", "rate", QuantityKind.COUNT);
    Reference zone = new Reference("tests", "zone", "zone", QuantityKind.CHOICE);
    Matching same = new Matching(List.of(new Matching.Pair(zone, WORD)), Optional.empty());
    assertThat(reduction.of(new Formula.Where(WhereKind.COUNT, of, same)))
        .isEqualTo(Formula.number(0));
    nothing(new Formula.Where(WhereKind.LARGEST, of, same));
    nothing(new Formula.Aggregate(Aggregation.LARGEST, of));
    assertThat(reduction.of(new Formula.Aggregate(Aggregation.SUM, of)))
        .isEqualTo(Formula.zero(QuantityKind.COUNT));
  }
}
