package zonewright.formula;

/**
 * Says of a formula that has no number in a row whether it surely lacks it because a cell it reads
 * there does: then the fault lies upstream, and nothing is to be said here.
 *
 * <p>Knows which way a condition goes where that only depends on what is given. Where it cannot
 * tell, it says no, and whoever asks looks closer.
 */
public final class CarriedOn
    implements FormulaVisitor<Boolean>, Condition.ConditionVisitor<CarriedOn.Answer> {
  private final Cells row;

  /** What a row holds, in numbers. */
  public interface Cells {
    /** Returns the number in a cell of this row, or of a one-row table; or not-a-number. */
    double number(Reference cell);

    /** Says whether something was entered in an input cell. */
    boolean given(Reference cell);
  }

  /** What is known of a condition. */
  enum Answer {
    YES,
    NO,
    LACKS_A_NUMBER,
    UNSURE
  }

  /** Makes a reader of formulas in a row. */
  public CarriedOn(Cells row) {
    this.row = row;
  }

  private boolean lacks(Reference cell) {
    return Double.isNaN(row.number(cell));
  }

  @Override
  public Boolean constant(Formula.Constant constant) {
    return false;
  }

  @Override
  public Boolean cell(Formula.Cell cell) {
    return lacks(cell.reference());
  }

  @Override
  public Boolean arithmetic(Formula.Arithmetic sum) {
    return sum.left().accept(this) || sum.right().accept(this);
  }

  @Override
  public Boolean extreme(Formula.Extreme extreme) {
    return extreme.left().accept(this) || extreme.right().accept(this);
  }

  @Override
  public Boolean rounding(Formula.Rounding rounding) {
    return rounding.operand().accept(this);
  }

  @Override
  public Boolean power(Formula.Power power) {
    return power.base().accept(this) || power.exponent().accept(this);
  }

  @Override
  public Boolean function(Formula.Function function) {
    return function.operand().accept(this);
  }

  @Override
  public Boolean measure(Formula.Measure measure) {
    return measure.operand().accept(this);
  }

  @Override
  public Boolean choose(Formula.Choose choose) {
    return switch (choose.condition().accept(this)) {
      case YES -> choose.then().accept(this);
      case NO -> choose.otherwise().accept(this);
      case LACKS_A_NUMBER -> true;
      case UNSURE -> choose.then().accept(this) && choose.otherwise().accept(this);
    };
  }

  @Override
  public Boolean nth(Formula.Nth nth) {
    return nth.position().accept(this);
  }

  @Override
  public Boolean nothing(Formula.Nothing nothing) {
    return false;
  }

  @Override
  public Boolean lookup(Formula.Lookup lookup) {
    return lacks(lookup.word());
  }

  @Override
  public Boolean lookupAcross(Formula.LookupAcross lookup) {
    return lacks(lookup.word()) || lookup.position().accept(this);
  }

  @Override
  public Boolean lookupCount(Formula.LookupCount lookup) {
    return lacks(lookup.word()) || lookup.limit().accept(this);
  }

  @Override
  public Boolean aggregate(Formula.Aggregate aggregate) {
    return false;
  }

  @Override
  public Boolean where(Formula.Where where) {
    return where.matching().pairs().stream().anyMatch(pair -> lacks(pair.key()))
        || where.matching().limit().map(limit -> limit.than().accept(this)).orElse(false);
  }

  @Override
  public Boolean rowLookup(Formula.RowLookup lookup) {
    return lacks(lookup.word());
  }

  @Override
  public Boolean pick(Formula.Pick pick) {
    return pick.position().accept(this);
  }

  @Override
  public Answer comparison(Condition.Comparison comparison) {
    return comparison.left().accept(this) || comparison.right().accept(this)
        ? Answer.LACKS_A_NUMBER
        : Answer.UNSURE;
  }

  @Override
  public Answer wordIs(Condition.WordIs wordIs) {
    return lacks(wordIs.word()) ? Answer.LACKS_A_NUMBER : Answer.UNSURE;
  }

  @Override
  public Answer given(Condition.Given given) {
    if (!row.given(given.cell())) {
      return Answer.NO;
    }
    return lacks(given.cell()) ? Answer.LACKS_A_NUMBER : Answer.YES;
  }

  @Override
  public Answer joined(Condition.Joined joined) {
    Answer left = joined.left().accept(this);
    Answer right = joined.right().accept(this);
    if (left == Answer.LACKS_A_NUMBER || right == Answer.LACKS_A_NUMBER) {
      return Answer.LACKS_A_NUMBER;
    }
    Answer decisive = joined.both() ? Answer.NO : Answer.YES;
    if (left == decisive || right == decisive) {
      return decisive;
    }
    return left == Answer.UNSURE || right == Answer.UNSURE ? Answer.UNSURE : left;
  }

  @Override
  public Answer not(Condition.Not not) {
    Answer answer = not.condition().accept(this);
    return switch (answer) {
      case YES -> Answer.NO;
      case NO -> Answer.YES;
      case LACKS_A_NUMBER, UNSURE -> answer;
    };
  }
}
