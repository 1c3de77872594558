package zonewright.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import zonewright.formula.Condition.ConditionReading;
import zonewright.units.QuantityKind;

/**
 * Lists what a formula of plain numbers needs before a spreadsheet may calculate it. Of a choice
 * that is what its condition needs and what both of its outcomes need.
 */
final class SpreadsheetNeeds implements Reading<Set<Need>>, ConditionReading<Set<Need>> {
  /** Below this is every number, and no text: for criteria that only numbers meet. */
  private static final String ANY_NUMBER = "\"<9E+307\"";

  private final SpreadsheetNames names;

  SpreadsheetNeeds(SpreadsheetNames names) {
    this.names = names;
  }

  /** Returns what is known to be good once a condition is known to hold, or not to. */
  Set<Need> known(Condition condition, boolean holds) {
    if (condition instanceof Condition.Given given && holds) {
      return good(given.cell());
    }
    if (condition instanceof Condition.Not not) {
      return known(not.condition(), !holds);
    }
    if (condition instanceof Condition.Joined joined && joined.both() == holds) {
      return union(known(joined.left(), holds), known(joined.right(), holds));
    }
    return Set.of();
  }

  private static Set<Need> union(Set<Need> left, Set<Need> right) {
    Set<Need> both = new LinkedHashSet<>(left);
    both.addAll(right);
    return both;
  }

  private Set<Need> good(Reference reference) {
    return reference.kind() == QuantityKind.CHOICE ? word(reference) : number(reference);
  }

  private Set<Need> number(Reference reference) {
    String cell = names.cell(reference);
    return placed(reference, List.of(cell), range(reference, cell));
  }

  /** A need of a cell; where it stands in a row that must be found first, that too. */
  private Set<Need> placed(Reference reference, List<String> counted, List<String> tests) {
    String place = names.place(reference).orElse(null);
    if (place == null) {
      return Set.of(new Need(reference, counted, tests, 0));
    }
    Set<Need> needs = new LinkedHashSet<>();
    needs.add(new Need(reference, List.of(), List.of("ISNUMBER(" + place + ")"), 0));
    needs.add(new Need(reference, counted, tests, 1));
    return needs;
  }

  private Set<Need> word(Reference reference) {
    String cell = names.cell(reference);
    return names
        .words(reference)
        .map(words -> placed(reference, List.of(), List.of(among(cell, words))))
        .orElse(Set.of());
  }

  private static String among(String cell, SpreadsheetNames.Words words) {
    if (words instanceof SpreadsheetNames.Words.InCells list) {
      return list.typed()
          ? "SUMPRODUCT((%s=%s)*(%s<>\"\"))>0".formatted(list.name(), cell, list.name())
          : "COUNTIF(" + list.name() + "," + cell + ")>0";
    }
    List<String> each =
        ((SpreadsheetNames.Words.These) words)
            .words().stream().map(word -> cell + "=" + SpreadsheetText.quoted(word)).toList();
    return each.size() == 1 ? each.get(0) : "OR(" + String.join(",", each) + ")";
  }

  private List<String> range(Reference reference, String cell) {
    SpreadsheetNames.Range range = names.range(reference).orElse(null);
    if (range == null) {
      return List.of();
    }
    List<String> tests = new ArrayList<>();
    tests.add(cell + (range.lowIncluded() ? ">=" : ">") + SpreadsheetText.number(range.low()));
    tests.add(cell + "<=" + SpreadsheetText.number(range.high()));
    if (range.whole()) {
      // N makes words a zero, which fails the test: INT of words would be an error.
      tests.add(cell + "=INT(N(" + cell + "))");
    }
    return range.typedOnly()
        ? List.of(
            "OR(" + SpreadsheetText.isFormula(cell) + ",AND(" + String.join(",", tests) + "))")
        : tests;
  }

  /** Returns pairs of column and criterion, each led by a comma, that only good numbers meet. */
  private String criteria(Reference reference) {
    String column = names.column(reference);
    return names
        .range(reference)
        .map(
            range ->
                ",%s,\"%s%s\",%s,\"<=%s\""
                    .formatted(
                        column,
                        range.lowIncluded() ? ">=" : ">",
                        SpreadsheetText.number(range.low()),
                        column,
                        SpreadsheetText.number(range.high())))
        .orElse("," + column + "," + ANY_NUMBER);
  }

  private List<String> withWhole(Reference reference, String test, String rows) {
    boolean whole =
        names.range(reference).stream().anyMatch(range -> range.whole() && !range.typedOnly());
    String column = names.column(reference);
    return whole
        ? List.of(test, "SUMPRODUCT(%s*(%s<>INT(%s)))=0".formatted(rows, column, column))
        : List.of(test);
  }

  @Override
  public Set<Need> constant(Formula.Constant constant) {
    return Set.of();
  }

  @Override
  public Set<Need> cell(Formula.Cell cell) {
    return good(cell.reference());
  }

  @Override
  public Set<Need> arithmetic(Formula.Arithmetic sum) {
    return union(sum.left().read(this), sum.right().read(this));
  }

  @Override
  public Set<Need> extreme(Formula.Extreme extreme) {
    return union(extreme.left().read(this), extreme.right().read(this));
  }

  @Override
  public Set<Need> rounding(Formula.Rounding rounding) {
    return rounding.operand().read(this);
  }

  @Override
  public Set<Need> power(Formula.Power power) {
    return union(power.base().read(this), power.exponent().read(this));
  }

  @Override
  public Set<Need> function(Formula.Function function) {
    return function.operand().read(this);
  }

  @Override
  public Set<Need> measure(Formula.Measure measure) {
    return measure.operand().read(this);
  }

  @Override
  public Set<Need> choose(Formula.Choose choose) {
    Set<Need> both = new LinkedHashSet<>(choose.then().read(this));
    both.retainAll(choose.otherwise().read(this));
    return union(choose.condition().read(this), both);
  }

  @Override
  public Set<Need> nth(Formula.Nth nth) {
    Set<Need> all = new LinkedHashSet<>(nth.options().get(0).read(this));
    nth.options().forEach(option -> all.retainAll(option.read(this)));
    Set<Need> needs = union(nth.position().read(this), all);
    String position = SpreadsheetText.inside(nth.position(), names);
    Set<Reference> of = Dependencies.of(nth.position()).cells();
    if (!of.isEmpty()) {
      List<String> within = List.of(position + ">=1", position + "<" + (nth.options().size() + 1));
      needs.add(new Need(of.iterator().next(), List.of(), within, 1));
    }
    return needs;
  }

  @Override
  public Set<Need> nothing(Formula.Nothing nothing) {
    return Set.of();
  }

  @Override
  public Set<Need> lookup(Formula.Lookup lookup) {
    String found = SpreadsheetText.found(lookup, names);
    boolean gaps = !lookup.column().complete();
    return gaps
        ? union(word(lookup.word()), Set.of(new Need(lookup.word(), List.of(found), List.of(), 1)))
        : word(lookup.word());
  }

  @Override
  public Set<Need> lookupAcross(Formula.LookupAcross lookup) {
    Set<Need> needs = union(word(lookup.word()), lookup.position().read(this));
    String position = SpreadsheetText.inside(lookup.position(), names);
    String at = position + ">=1";
    needs.add(new Need(lookup.word(), List.of(), List.of(at), 1));
    if (lookup.columns().stream().anyMatch(column -> !column.complete())) {
      String found = SpreadsheetText.found(lookup, names);
      needs.add(new Need(lookup.word(), List.of(found), List.of(), 2));
    }
    return needs;
  }

  @Override
  public Set<Need> gather(Formula.Gather gather) {
    Reference reference = gather.column();
    String column = names.column(reference);
    boolean sum = gather.gathering() == Gathering.SUM;
    if (names.range(reference).stream().anyMatch(SpreadsheetNames.Range::typedOnly)) {
      String rows = sum ? "(" + names.rowNames(reference) + "<>\"\")" : "1";
      return Set.of(numbers(reference, rows, 0));
    }
    if (sum) {
      String rows = names.rowNames(reference);
      String test = "COUNTA(%s)=COUNTIFS(%s,\"<>\"%s)".formatted(rows, rows, criteria(reference));
      return Set.of(
          new Need(reference, List.of(), withWhole(reference, test, "(" + rows + "<>\"\")"), 0));
    }
    String good =
        names.range(reference).isPresent()
            ? "COUNTIFS(" + criteria(reference).substring(1) + ")"
            : "COUNT(" + column + ")";
    String test = "%s=ROWS(%s)".formatted(good, column);
    return Set.of(
        new Need(reference, List.of(), withWhole(reference, test, "ISNUMBER(" + column + ")"), 0));
  }

  @Override
  public Set<Need> where(Formula.Where where) {
    Matching matching = where.matching();
    Set<Need> needs = new LinkedHashSet<>();
    for (Matching.Pair pair : matching.pairs()) {
      needs.addAll(key(pair.key()));
    }
    if (matching.limit().isPresent()) {
      Matching.Limit limit = matching.limit().get();
      needs.addAll(limit.than().read(this));
      needs.add(numbers(limit.column(), SpreadsheetRows.matching(where, false, names), 1));
    }
    if (where.kind() != WhereKind.COUNT) {
      needs.add(numbers(where.column(), SpreadsheetRows.matching(where, true, names), 1));
    }
    return needs;
  }

  /** A word of this row, or its name, which may be any. */
  private Set<Need> key(Reference key) {
    return names.words(key).isPresent()
        ? word(key)
        : placed(key, List.of(), List.of(names.cell(key) + "<>\"\""));
  }

  /** All rows of {@code rows}, a product that is 1 where a row counts, have a good number. */
  private Need numbers(Reference column, String rows, int level) {
    String test = "SUMPRODUCT(%s*(1-%s))=0".formatted(rows, SpreadsheetRows.good(column, names));
    return new Need(column, List.of(), withWhole(column, test, rows), level);
  }

  @Override
  public Set<Need> find(Formula.Find find) {
    Set<Need> needs = new LinkedHashSet<>(word(find.word()));
    needs.addAll(held(find.column(), SpreadsheetText.found(find, names)));
    return needs;
  }

  /** What was found in another table is good to calculate with. */
  private Set<Need> held(Reference column, String found) {
    return Set.of(
        column.kind() == QuantityKind.CHOICE
            ? new Need(column, List.of(), List.of(found + "<>\"\""), 2)
            : new Need(column, List.of(found), range(column, found), 2));
  }

  @Override
  public Set<Need> pick(Formula.Pick pick) {
    Set<Need> needs = new LinkedHashSet<>(pick.position().read(this));
    Reference reference = pick.column();
    if (!(pick.position() instanceof Formula.Gather)) {
      String at = SpreadsheetText.inside(pick.position(), names) + ">=1";
      needs.add(new Need(reference, List.of(), List.of(at), 1));
    }
    needs.addAll(held(reference, SpreadsheetText.found(pick, names)));
    return needs;
  }

  @Override
  public Set<Need> comparison(Condition.Comparison comparison) {
    return union(comparison.left().read(this), comparison.right().read(this));
  }

  @Override
  public Set<Need> wordIs(Condition.WordIs wordIs) {
    return word(wordIs.word());
  }

  @Override
  public Set<Need> given(Condition.Given given) {
    String cell = names.cell(given.cell());
    String blank = names.defaulted(given.cell()) ? SpreadsheetText.isFormula(cell) : cell + "=\"\"";
    List<String> fine = new ArrayList<>();
    for (Need need : good(given.cell())) {
      need.counted().forEach(each -> fine.add("COUNT(" + each + ")=1"));
      fine.addAll(need.tests());
    }
    if (fine.isEmpty()) {
      return Set.of();
    }
    String good = fine.size() == 1 ? fine.get(0) : "AND(" + String.join(",", fine) + ")";
    return Set.of(new Need(given.cell(), List.of(), List.of("OR(" + blank + "," + good + ")"), 0));
  }

  @Override
  public Set<Need> joined(Condition.Joined joined) {
    return union(joined.left().read(this), joined.right().read(this));
  }

  @Override
  public Set<Need> not(Condition.Not not) {
    return not.condition().read(this);
  }
}
