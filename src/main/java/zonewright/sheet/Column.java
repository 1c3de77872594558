package zonewright.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import zonewright.formula.Cells;
import zonewright.formula.Formula;
import zonewright.formula.PrintedText;
import zonewright.formula.Reference;
import zonewright.formula.Rewriter;
import zonewright.formula.Term;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/**
 * A column, declared once: what it is called, what it holds, how it is calculated, what it means
 * and where that comes from.
 *
 * <p>Grid, workbook, working and help all read this. The identifier never changes; the name may.
 */
public final class Column implements Cells {
  /** Where the cells come from. */
  public enum Role {
    /** Typed. */
    INPUT,
    /** Calculated unless typed over. */
    DEFAULTED,
    /** Calculated. */
    CALCULATED
  }

  /** What the cells hold. */
  public enum Content {
    NUMBER,
    CHOICE,
    WORDS
  }

  private final Reference reference;
  private final Role role;
  private final Content content;
  private final Formula formula;
  private final Bounds bounds;
  private final WordList words;
  private final String band;
  private final String meaning;
  private final String source;
  private final int usDecimals;
  private final int siDecimals;
  private final boolean inFull;
  private final boolean optional;
  private final Reference origin;
  private final double greatest;
  private final String beyond;
  private final List<String> formerNames;

  private Column(Builder said) {
    reference = said.reference;
    role = said.role;
    content = said.content;
    formula = said.formula;
    bounds = said.bounds;
    words = said.words;
    band = said.band;
    meaning = said.meaning;
    source = said.source;
    usDecimals = said.usDecimals;
    siDecimals = said.siDecimals;
    inFull = said.inFull;
    optional = said.optional;
    origin = said.origin;
    greatest = said.greatest;
    beyond = said.beyond;
    formerNames = said.formerNames;
  }

  /** What is said of a column in its declaration; {@link #build} ends it. */
  public static final class Builder {
    private final Reference reference;
    private final Role role;
    private final Content content;
    private final Formula formula;
    private Bounds bounds;
    private WordList words;
    private String band = "";
    private String meaning = "";
    private String source = "";
    private int usDecimals = -1;
    private int siDecimals = -1;
    private boolean inFull;
    private boolean optional;
    private Reference origin;
    private double greatest = Double.POSITIVE_INFINITY;
    private String beyond = "";
    private List<String> formerNames = List.of();

    private Builder(Reference reference, Role role, Content content, Formula formula) {
      this.reference = reference;
      this.role = role;
      this.content = content;
      this.formula = formula;
    }

    private Builder words(WordList list) {
      words = list;
      return this;
    }

    /** Takes over all that was said of another column but its name, role and formula. */
    private Builder like(Column other) {
      words = other.words;
      bounds = other.bounds;
      band = other.band;
      meaning = other.meaning;
      source = other.source;
      usDecimals = other.usDecimals;
      siDecimals = other.siDecimals;
      inFull = other.inFull;
      optional = other.optional;
      origin = other.origin;
      greatest = other.greatest;
      beyond = other.beyond;
      formerNames = other.formerNames;
      return this;
    }

    /** Names the cell of a one-row sheet that says where these values come from. */
    public Builder originIn(Column teller) {
      origin = teller.reference();
      return this;
    }

    /** Sets the range of inputs. */
    public Builder within(Bounds range) {
      bounds = range;
      return this;
    }

    /** Sets the group of columns it stands in. */
    public Builder band(String name) {
      band = name;
      return this;
    }

    /** Sets what it means, in a sentence or two for a designer. */
    public Builder means(String sentences) {
      meaning = sentences;
      return this;
    }

    /** Sets where the equation or the figure comes from, and what that is worth. */
    public Builder source(String citation) {
      source = citation;
      return this;
    }

    /** Sets the decimals shown, in place of those usual for the kind. */
    public Builder decimals(int us, int si) {
      usDecimals = us;
      siDecimals = si;
      return this;
    }

    /**
     * Lets what is typed show all its decimals, so that a sum with it can be checked on paper.
     * Money and prices that are typed always do.
     */
    public Builder inFull() {
      inFull = true;
      return this;
    }

    /**
     * Sets words to show in place of numbers from {@code least} on, such as for a limit that is
     * none. Formulas go on with the number.
     */
    public Builder wordsFrom(double least, String instead) {
      greatest = least;
      beyond = instead;
      return this;
    }

    /** Names what the column was called in files that may still be there. */
    public Builder formerly(String... names) {
      formerNames = List.of(names);
      return this;
    }

    /** Says that a blank cell is nothing to complain about. */
    public Builder optional() {
      optional = true;
      return this;
    }

    /** Returns the column; refuses a formula that adds unlike things or gives another quantity. */
    public Column build() {
      if (formula != null) {
        check();
      }
      return new Column(this);
    }

    private void check() {
      try {
        // words in the place of a number fit every kind
        boolean number = !(formula instanceof Formula.Nothing);
        if (number && !formula.dimension().equals(reference.kind().dimension())) {
          throw new IllegalArgumentException(
              "the formula gives %s, the column holds %s"
                  .formatted(
                      formula.dimension().inWords(), reference.kind().dimension().inWords()));
        }
      } catch (IllegalArgumentException problem) {
        throw new IllegalArgumentException(reference.name() + ": " + problem.getMessage(), problem);
      }
    }
  }

  /** Declares numbers that are typed. */
  public static Builder input(String table, String id, String name, QuantityKind kind) {
    return new Builder(new Reference(table, id, name, kind), Role.INPUT, Content.NUMBER, null);
  }

  /** Declares numbers that follow from {@code equation} unless they are typed over. */
  public static Builder defaulted(
      String table, String id, String name, QuantityKind kind, Term equation) {
    return new Builder(
        new Reference(table, id, name, kind), Role.DEFAULTED, Content.NUMBER, equation.asFormula());
  }

  /** Declares numbers that are always {@code usual} unless they are typed over. */
  public static Builder defaulted(
      String table, String id, String name, QuantityKind kind, double usual) {
    return defaulted(table, id, name, kind, Formula.number(usual));
  }

  /** Declares numbers that follow from {@code equation}. */
  public static Builder calculated(
      String table, String id, String name, QuantityKind kind, Term equation) {
    return new Builder(
        new Reference(table, id, name, kind),
        Role.CALCULATED,
        Content.NUMBER,
        equation.asFormula());
  }

  /** Declares words taken from a list. */
  public static Builder choice(String table, String id, String name, WordList words) {
    Reference reference = new Reference(table, id, name, QuantityKind.CHOICE);
    return new Builder(reference, Role.INPUT, Content.CHOICE, null).words(words);
  }

  /** Declares words taken from a short list, {@code usual} where none is chosen. */
  public static Builder choice(
      String table, String id, String name, WordList.Fixed words, String usual) {
    int position = words.words().indexOf(usual);
    if (position < 0) {
      throw new IllegalArgumentException(name + " cannot usually be " + usual);
    }
    Reference reference = new Reference(table, id, name, QuantityKind.CHOICE);
    return new Builder(reference, Role.DEFAULTED, Content.CHOICE, Formula.number(position))
        .words(words);
  }

  /**
   * Declares a word of a list that follows from {@code equation}, which gives its position counted
   * from 0.
   */
  public static Builder calculatedWord(
      String table, String id, String name, WordList words, Term equation) {
    Reference reference = new Reference(table, id, name, QuantityKind.CHOICE);
    return new Builder(reference, Role.CALCULATED, Content.CHOICE, equation.asFormula())
        .words(words);
  }

  /** Declares free words. */
  public static Builder words(String table, String id, String name) {
    Reference reference = new Reference(table, id, name, QuantityKind.CHOICE);
    return new Builder(reference, Role.INPUT, Content.WORDS, null);
  }

  /**
   * Returns a calculated column as one of inputs, under the same name: for a value that is known
   * and need not be calculated.
   */
  Column asInput() {
    return takesEntries() ? this : typed();
  }

  /** Returns the same column without its equation. */
  Column typed() {
    Builder input = new Builder(reference, Role.INPUT, content, null).like(this);
    boolean unbounded = content == Content.NUMBER && bounds == null && !kind().mayBeNegative();
    return (unbounded ? input.within(Bounds.atLeast(0, kind().unit(UnitSystem.US))) : input)
        .build();
  }

  /** Returns the same column with another equation, and where that comes from. */
  Column turned(Formula equation, String said) {
    Builder turned = new Builder(reference, Role.DEFAULTED, content, equation).like(this);
    return turned.source(said).build();
  }

  /** Returns the same column with another list to choose from and another equation. */
  Column with(UnaryOperator<WordList> list, UnaryOperator<Formula> equation) {
    WordList otherList = words == null ? null : list.apply(words);
    Formula otherFormula = formula == null ? null : equation.apply(formula);
    return Objects.equals(otherList, words) && Objects.equals(otherFormula, formula)
        ? this
        : new Builder(reference, role, content, otherFormula).like(this).words(otherList).build();
  }

  /** Returns the same column, showing money for a currency of other decimals than two. */
  Column withMoneyOf(int decimals) {
    int shown = Math.max(0, decimals(UnitSystem.US) - 2 + decimals);
    return kind().isMoney() && decimals != 2
        ? new Builder(reference, role, content, formula).like(this).decimals(shown, shown).build()
        : this;
  }

  /** Says whether it was said how many decimals it shows. */
  boolean saysDecimals() {
    return usDecimals >= 0;
  }

  /**
   * Returns the same column in another table: formulas that mean cells of {@code from} mean cells
   * of that one.
   *
   * <p>For a table that holds the same kind of rows a second time, such as zones before and after a
   * change; every column the formula means in those tables must be moved there too.
   *
   * @param instead what stands in place of cells that are not moved there
   */
  public Column movedTo(String table, Set<String> from, Map<Reference, Formula> instead) {
    Reference there = new Reference(table, reference.column(), reference.name(), kind());
    Formula moved =
        formula == null
            ? null
            : Rewriter.formula(formula, cell -> moved(cell, table, from), instead);
    return new Builder(there, role, content, moved).like(this).build();
  }

  private static Reference moved(Reference cell, String table, Set<String> from) {
    return from.contains(cell.table())
        ? new Reference(table, cell.column(), cell.name(), cell.kind())
        : cell;
  }

  /** Returns what the column was called in files that may still be there. */
  public List<String> formerNames() {
    return formerNames;
  }

  /** Returns the cell that says where these values come from, for those that need saying so. */
  public Optional<Reference> originIn() {
    return Optional.ofNullable(origin);
  }

  /** Returns the name formulas use. */
  @Override
  public Reference reference() {
    return reference;
  }

  /** Returns what a person calls it, without unit. */
  public String name() {
    return reference.name();
  }

  /**
   * Returns the heading with the unit of the system, such as {@code Area (ft²)}; percent stands in
   * the cells.
   */
  public String heading(UnitSystem system) {
    String symbol = content == Content.NUMBER ? kind().unit(system).symbol() : "";
    boolean said =
        (kind() == QuantityKind.MINUTES && name().startsWith("Minutes"))
            || (kind() == QuantityKind.DAYS && name().startsWith("Days"));
    return symbol.isEmpty() || said ? name() : name() + " (" + symbol + ")";
  }

  /** Returns the kind of its numbers. */
  public QuantityKind kind() {
    return reference.kind();
  }

  /** Returns where its cells come from. */
  public Role role() {
    return role;
  }

  /** Returns what its cells hold. */
  public Content content() {
    return content;
  }

  /** Returns how it is calculated. */
  public Optional<Formula> formula() {
    return Optional.ofNullable(formula);
  }

  /** Returns how it is calculated, in names and signs. */
  public Optional<String> equation() {
    return formula().map(any -> PrintedText.of(any, kind()));
  }

  /** Returns the range of inputs. */
  public Optional<Bounds> bounds() {
    return Optional.ofNullable(bounds);
  }

  /** Returns where the words of a choice come from. */
  public Optional<WordList> words() {
    return Optional.ofNullable(words);
  }

  /** Returns the word that stands where none is chosen; none for other columns. */
  public Optional<String> usualWord() {
    boolean usual = role == Role.DEFAULTED && content == Content.CHOICE;
    return usual && formula instanceof Formula.Constant constant
        ? Optional.of(((WordList.Fixed) words).words().get((int) constant.value()))
        : Optional.empty();
  }

  /** Returns the group it stands in. */
  public String band() {
    return band;
  }

  /** Returns what it means. */
  public String meaning() {
    return meaning;
  }

  /** Returns what it means and, where a number is typed whose unit is no matter of course, how. */
  public String help() {
    String how = takesEntries() && content == Content.NUMBER ? kind().howTyped() : "";
    return how.isEmpty() ? meaning : (meaning + " " + how).strip();
  }

  /** Returns where it comes from. */
  public String source() {
    return source;
  }

  /** Returns how many decimals it shows; of a percent, of the percent. */
  public int decimals(UnitSystem system) {
    int own = system == UnitSystem.US ? usDecimals : siDecimals;
    return own >= 0 ? own : kind().decimals(system);
  }

  /** Returns whether a number that has more decimals than usual shows them. */
  public boolean inFull() {
    return takesEntries() && (inFull || kind().isMoney());
  }

  /**
   * Returns how many decimals {@code value} shows: those it has where they are shown in full, as
   * long as they come to an end; of a percent, of the percent.
   */
  public int decimals(UnitSystem system, double value) {
    int usual = decimals(system);
    return inFull() ? QuantityText.decimals(value, kind(), usual) : usual;
  }

  /** Returns the words shown in place of {@code value}; none where the number itself is shown. */
  public Optional<String> wordsFor(double value) {
    return value >= greatest ? Optional.of(beyond) : Optional.empty();
  }

  /** Returns the number from which on words are shown; infinite where there is none. */
  public double wordsFrom() {
    return greatest;
  }

  /**
   * Returns a number of this column as it stands in a cell, without a unit but the percent sign, or
   * the words in its place.
   */
  public String shown(double value, UnitSystem system) {
    return wordsFor(value)
        .orElseGet(() -> QuantityText.shown(value, kind(), decimals(system, value)));
  }

  /** Says whether a person types into it. */
  public boolean takesEntries() {
    return role != Role.CALCULATED;
  }

  /** Says whether a blank cell is nothing to complain about. */
  public boolean isOptional() {
    return optional || role == Role.DEFAULTED;
  }

  /**
   * Says whether another column is declared just as this one: name, equation, list, limits and
   * decimals are the same.
   */
  boolean declaredLike(Column other) {
    return equals(other)
        && name().equals(other.name())
        && kind() == other.kind()
        && role == other.role
        && content == other.content
        && Objects.equals(formula, other.formula)
        && Objects.equals(bounds, other.bounds)
        && Objects.equals(words, other.words)
        && band.equals(other.band)
        && meaning.equals(other.meaning)
        && source.equals(other.source)
        && usDecimals == other.usDecimals
        && siDecimals == other.siDecimals
        && inFull == other.inFull
        && optional == other.optional
        && Objects.equals(origin, other.origin)
        && greatest == other.greatest
        && beyond.equals(other.beyond);
  }

  /** A column is who it is by its reference: a design may declare it otherwise than the program. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Column that && reference.equals(that.reference);
  }

  @Override
  public int hashCode() {
    return reference.hashCode();
  }

  @Override
  public String toString() {
    return reference.key();
  }
}
