package zonewright.formula;

import java.util.List;
import zonewright.units.Dimension;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * A calculation as a small immutable tree.
 *
 * <p>As declared it knows dimensions but no unit system; {@link Expressed} turns it into plain
 * numbers with the factors that a unit system needs. Both are trees of the same kinds, so every
 * reading serves both.
 */
public sealed interface Formula extends Term {
  @Override
  default Formula asFormula() {
    return this;
  }

  /**
   * Asks a visitor; every kind of node has its own answer, so that a new kind does not compile
   * until each visitor knows it.
   */
  <R> R accept(FormulaVisitor<R> visitor);

  /** A number in its unit. */
  record Constant(double value, Unit unit) implements Formula {
    public Constant {
      if (Double.isNaN(value) || Double.isInfinite(value)) {
        throw new IllegalArgumentException("a constant is a number, not " + value);
      }
    }

    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.constant(this);
    }
  }

  /** The cell of the same row, or the one cell of a one-row table. */
  record Cell(Reference reference) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.cell(this);
    }
  }

  /** A sum, difference, product or quotient. */
  record Arithmetic(Operator operator, Formula left, Formula right) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.arithmetic(this);
    }
  }

  /** The smaller or the larger of two. */
  record Extreme(boolean largest, Formula left, Formula right) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.extreme(this);
    }
  }

  /** A whole number of {@code unit}; see {@link Numbers}. */
  record Rounding(RoundingWay way, Formula operand, Unit unit) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.rounding(this);
    }
  }

  /** A power; both sides are pure numbers and the base is 0 or more. */
  record Power(Formula base, Formula exponent) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.power(this);
    }
  }

  /** A function of one number; see {@link FunctionKind}. */
  record Function(FunctionKind kind, Formula operand) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.function(this);
    }
  }

  /**
   * How many of {@code unit} the operand is: a pure number, for equations that prescribe their
   * units.
   */
  record Measure(Formula operand, Unit unit) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.measure(this);
    }
  }

  /** One of two, by a condition. The branch not taken does not count: it may lack what it needs. */
  record Choose(Condition condition, Formula then, Formula otherwise) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.choose(this);
    }
  }

  /** The {@code position}-th of several, counted from 1. The others do not count. */
  record Nth(Formula position, List<Formula> options) implements Formula {
    public Nth {
      options = List.copyOf(options);
    }

    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.nth(this);
    }
  }

  /**
   * No number, on purpose.
   *
   * @param shown the short words that stand in the cell, such as {@code no limit}
   * @param because one sentence of why
   * @param fault whether something is wrong (the cell is refused) or the question just does not
   *     arise
   */
  record Nothing(String shown, String because, boolean fault) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.nothing(this);
    }
  }

  /** The number that a reference table gives for the word in a cell. */
  record Lookup(Reference word, ReferenceTable.Numbers column) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.lookup(this);
    }
  }

  /**
   * The number in the row of a word and in the {@code position}-th of several neighbouring columns,
   * counted from 1.
   */
  record LookupAcross(Reference word, List<ReferenceTable.Numbers> columns, Formula position)
      implements Formula {
    public LookupAcross {
      columns = List.copyOf(columns);
    }

    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.lookupAcross(this);
    }
  }

  /** How many of several neighbouring columns hold less than a limit in the row of a word. */
  record LookupCount(Reference word, List<ReferenceTable.Numbers> columns, Formula limit)
      implements Formula {
    public LookupCount {
      columns = List.copyOf(columns);
    }

    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.lookupCount(this);
    }
  }

  /** One number from a whole column of another table. */
  record Aggregate(Aggregation aggregation, Reference column) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.aggregate(this);
    }
  }

  /**
   * One number from those rows of a table, another or this one, that match this row; made by {@link
   * Matching}.
   */
  record Where(WhereKind kind, Reference column, Matching matching) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.where(this);
    }
  }

  /**
   * The number in the row of another table that has the name chosen in {@code word}; the first such
   * row. {@code word} is a choice among the names of that table.
   */
  record RowLookup(Reference column, Reference word) implements Formula {
    /** Written out: what a record makes by itself is slow at its first use, which is each start. */
    @Override
    public boolean equals(Object other) {
      return other instanceof RowLookup that
          && column.equals(that.column)
          && word.equals(that.word);
    }

    @Override
    public int hashCode() {
      return 31 * column.hashCode() + word.hashCode();
    }

    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.rowLookup(this);
    }
  }

  /** The number in the {@code position}-th row of another table's column, counted from 1. */
  record Pick(Reference column, Formula position) implements Formula {
    @Override
    public <R> R accept(FormulaVisitor<R> visitor) {
      return visitor.pick(this);
    }
  }

  /** Returns a pure number. */
  static Formula number(double value) {
    return new Constant(value, Units.ONE);
  }

  /** Returns a number of {@code unit}. */
  static Formula amount(double value, Unit unit) {
    return new Constant(value, unit);
  }

  /** Returns nothing of the amount {@code kind} measures: 0 in, 0 gpm. */
  static Formula zero(QuantityKind kind) {
    return new Constant(0, kind.unit(UnitSystem.US));
  }

  /** Returns the smaller. */
  static Formula smaller(Term left, Term right) {
    return new Extreme(false, left.asFormula(), right.asFormula());
  }

  /** Returns the larger. */
  static Formula larger(Term left, Term right) {
    return new Extreme(true, left.asFormula(), right.asFormula());
  }

  /** Returns the {@code position}-th of several, counted from 1. */
  static Formula nth(Term position, List<? extends Term> options) {
    return new Nth(position.asFormula(), options.stream().map(Term::asFormula).toList());
  }

  /** Returns the number for the word in a cell, in the {@code position}-th of several columns. */
  static Formula lookup(Cells word, List<ReferenceTable.Numbers> columns, Term position) {
    return new LookupAcross(word.reference(), columns, position.asFormula());
  }

  /**
   * Returns how many of several columns hold less than a limit in the row of the word in a cell.
   */
  static Formula countBelow(Cells word, List<ReferenceTable.Numbers> columns, Term limit) {
    return new LookupCount(word.reference(), columns, limit.asFormula());
  }

  /** Returns a cell without a number where the question does not arise. */
  static Formula doesNotApply(String shown, String because) {
    return new Nothing(shown, because, false);
  }

  /** Returns a cell that is refused, with the reason. */
  static Formula refused(String shown, String because) {
    return new Nothing(shown, because, true);
  }

  /** Starts a choice. */
  static When when(Condition condition) {
    return new When(condition);
  }

  /** A condition that waits for its two outcomes. */
  record When(Condition condition) {
    /** Returns the condition with its first outcome. */
    public Then then(Term term) {
      return new Then(condition, term.asFormula());
    }

    /** Returns the condition with a pure number as its first outcome. */
    public Then then(double value) {
      return then(number(value));
    }
  }

  /** A condition with its first outcome. */
  record Then(Condition condition, Formula then) {
    /** Returns the whole choice. */
    public Formula otherwise(Term term) {
      return new Choose(condition, then, term.asFormula());
    }

    /** Returns the whole choice, with a pure number as its second outcome. */
    public Formula otherwise(double value) {
      return otherwise(number(value));
    }
  }

  /** Returns what the whole is made of, or refuses a tree that adds unlike things. */
  default Dimension dimension() {
    return DimensionCheck.of(this);
  }
}
