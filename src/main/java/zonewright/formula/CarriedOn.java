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
    return sum.left().read(this) || sum.right().read(this);
  }

  @Override
  public Boolean extreme(Formula.Extreme extreme) {
    return extreme.left().read(this) || extreme.right().read(this);
  }

  @Override
  public Boolean rounding(Formula.Rounding rounding) {
    return rounding.operand().read(this);
  }

  @Override
  public Boolean power(Formula.Power power) {
    return power.base().read(this) || power.exponent().read(this);
  }

  @Override
  public Boolean function(Formula.Function function) {
    return function.operand().read(this);
  }

  @Override
  public Boolean measure(Formula.Measure measure) {
    return measure.operand().read(this);
  }

  @Override
  public Boolean choose(Formula.Choose choose) {
    return switch (choose.condition().read(this)) {
      case YES -> choose.then().read(this);
      case NO -> choose.otherwise().read(this);
      case LACKS_A_NUMBER -> true;
      case UNSURE -> choose.then().read(this) && choose.otherwise().read(this);
    };
  }

  @Override
  public Boolean nth(Formula.Nth nth) {
    return nth.position().read(this);
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
    return lacks(lookup.word()) || lookup.position().read(this);
  }

  @Override
  public Boolean lookupCount(Formula.LookupCount lookup) {
    return lacks(lookup.word()) || lookup.limit().read(this);
  }

  @Override
  public Boolean gather(Formula.Aggregate gather) {
    return false;
  }

  @Override
  public Boolean where(Formula.Where where) {
    return where.matching().pairs().stream().anyMatch(pair -> lacks(pair.key()))
        || where.matching().limit().map(limit -> limit.than().read(this)).orElse(false);
  }

  @Override
  public Boolean find(Formula.RowLookup find) {
    return lacks(find.word());
  }

  @Override
  public Boolean pick(Formula.Pick pick) {
    return pick.position().read(this);
  }

  @Override
  public Answer comparison(Condition.Comparison comparison) {
    return comparison.left().read(this) || comparison.right().read(this)
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
    Answer left = joined.left().read(this);
    Answer right = joined.right().read(this);
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
    Answer answer = not.condition().read(this);
    return switch (answer) {
      case YES -> Answer.NO;
      case NO -> Answer.YES;
      case LACKS_A_NUMBER, UNSURE -> answer;
    };
  }
}
