package zonewright.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import zonewright.equation.EquationReader;
import zonewright.equation.EquationReading;
import zonewright.equation.KindWords;
import zonewright.equation.KnownColumns;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Schema;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/** Reads the rows of the sheet of one's own columns into columns, limits and what is wrong. */
final class OwnColumnReading {
  /** How the identifiers of columns of one's own begin, which no declared one does. */
  static final String OWN = "own-";

  /** A definition that says enough to be a column. */
  private record Said(
      int row, OwnColumnDraft draft, String name, TableDefinition table, QuantityKind kind) {
    Reference reference() {
      String id = OWN + name.toLowerCase(Locale.ROOT);
      return new Reference(table.id(), id, name, kind);
    }
  }

  private final Schema schema;
  private final List<Said> all = new ArrayList<>();
  private final List<String> names;
  private final Map<Integer, OwnColumns.Wrong> wrong = new HashMap<>();
  private final Map<Reference, Formula> formulas = new LinkedHashMap<>();
  private final Map<Integer, Column> columns = new TreeMap<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<OwnColumns.NamedRow> words = new ArrayList<>();
  private final Map<String, KnownColumns> known = new HashMap<>();

  OwnColumnReading(Schema schema, List<OwnColumnDraft> rows) {
    this.schema = schema;
    this.names = rows.stream().map(OwnColumnDraft::name).toList();
    Set<String> taken = new LinkedHashSet<>();
    for (int row = 0; row < rows.size(); row++) {
      said(row, rows.get(row), taken).ifPresent(all::add);
    }
    all.forEach(this::read);
    all.forEach(this::refuseCircle);
    all.forEach(this::make);
    all.forEach(this::limit);
  }

  Map<Integer, Column> columns() {
    return columns;
  }

  List<OwnColumns.NamedRow> words() {
    return words;
  }

  List<Rule> rules() {
    return rules;
  }

  Map<Integer, OwnColumns.Wrong> wrong() {
    return wrong;
  }

  private void wrong(int row, Reference column, String sentence) {
    wrong.putIfAbsent(row, new OwnColumns.Wrong(column, sentence));
  }

  private void wrong(Said said, Reference cell, EquationReading.Problem problem) {
    wrong.putIfAbsent(
        said.row(), new OwnColumns.Wrong(cell, problem.sentence(), Optional.of(problem)));
  }

  private Optional<Said> said(int row, OwnColumnDraft draft, Set<String> taken) {
    String name = draft.name().replaceAll("\\s+", " ");
    Optional<TableDefinition> table =
        schema.tables().stream()
            .filter(each -> each.title().equals(draft.sheet()))
            .filter(each -> OwnColumnDraft.sheets().contains(each.title()))
            .findFirst();
    Optional<QuantityKind> kind = KindWords.named(draft.kind());
    if (name.isEmpty() || table.isEmpty() || kind.isEmpty()) {
      // what is blank, or no word of the list, is found like in any other sheet
      return Optional.empty();
    }
    Optional<String> refused = OwnColumnName.refused(name, table.get(), names);
    if (refused.isEmpty() && !taken.add(table.get().id() + " " + OwnColumnName.letters(name))) {
      refused = Optional.of("“%s” is defined above already; give it another name".formatted(name));
    }
    if (refused.isPresent()) {
      wrong(row, OwnColumnSheet.NAME.reference(), refused.get());
      return Optional.empty();
    }
    return Optional.of(new Said(row, draft, name, table.get(), kind.get()));
  }

  /** The columns an equation of a sheet can name; those defined here are known by name only. */
  private KnownColumns known(TableDefinition home) {
    return known.computeIfAbsent(
        home.id(),
        any -> {
          Map<String, List<Column>> further = new HashMap<>();
          for (Said said : all) {
            Formula open = Formula.zero(said.kind()).minus(Formula.zero(said.kind()));
            further
                .computeIfAbsent(said.table().id(), none -> new ArrayList<>())
                .add(column(said, open));
          }
          return new KnownColumns(schema, further, home.id(), Synonyms::of);
        });
  }

  private void read(Said said) {
    if (said.draft().equation().isEmpty()) {
      wrong(
          said.row(),
          OwnColumnSheet.EQUATION.reference(),
          "“%s” has no equation yet, such as Zone flow / Area".formatted(said.name()));
      return;
    }
    EquationReading reading =
        EquationReader.read(said.draft().equation(), known(said.table()), said.kind());
    if (reading instanceof EquationReading.Understood understood) {
      formulas.put(said.reference(), understood.formula());
      words(said, OwnColumnSheet.EQUATION.reference(), understood);
    } else {
      wrong(said, OwnColumnSheet.EQUATION.reference(), (EquationReading.Problem) reading);
    }
  }

  private void words(Said said, Reference cell, EquationReading.Understood understood) {
    understood.words().forEach(word -> words.add(new OwnColumns.NamedRow(said.row(), cell, word)));
  }

  /** Of a circle every column is refused, each with the way around from itself. */
  private void refuseCircle(Said said) {
    List<Reference> way = new ArrayList<>();
    if (circle(said.reference(), said.reference(), way, new LinkedHashSet<>())) {
      List<String> names = new ArrayList<>(List.of(said.name()));
      way.forEach(each -> names.add(each.name()));
      wrong(
          said.row(),
          OwnColumnSheet.EQUATION.reference(),
          "the equations go in a circle: " + String.join(" → ", names));
    }
  }

  private boolean circle(Reference from, Reference back, List<Reference> way, Set<Reference> seen) {
    Formula formula = formulas.get(from);
    if (formula == null) {
      return false;
    }
    Dependencies needs = Dependencies.of(formula);
    Set<Reference> all = new LinkedHashSet<>(needs.cells());
    all.addAll(needs.columns());
    for (Reference need : all) {
      way.add(need);
      if (need.equals(back) || (seen.add(need) && circle(need, back, way, seen))) {
        return true;
      }
      way.remove(way.size() - 1);
    }
    return false;
  }

  private void make(Said said) {
    OwnColumns.Wrong because = wrong.get(said.row());
    Formula formula =
        because == null
            ? formulas.get(said.reference())
            : Formula.refused("no equation", "On the sheet Own columns: " + because.sentence());
    columns.put(said.row(), column(said, formula));
  }

  private static Column column(Said said, Formula formula) {
    Column.Builder column =
        Column.calculated(
                said.table().id(), said.reference().column(), said.name(), said.kind(), formula)
            .band(Sheets.OWN)
            .means(
                "A column of your own"
                    + (said.draft().note().isEmpty() ? "." : ": " + said.draft().note()))
            .source("Your equation: " + said.draft().equation());
    return said.draft()
        .digits()
        .map(digits -> column.decimals(digits, digits))
        .orElse(column)
        .build();
  }

  private void limit(Said said) {
    limit(said, said.draft().least(), OwnColumnSheet.AT_LEAST.reference(), Comparator.BELOW);
    limit(said, said.draft().most(), OwnColumnSheet.AT_MOST.reference(), Comparator.ABOVE);
  }

  private void limit(Said said, String typed, Reference cell, Comparator broken) {
    if (typed.isEmpty()) {
      return;
    }
    EquationReading reading = EquationReader.read(typed, known(said.table()), said.kind());
    if (reading instanceof EquationReading.Problem problem) {
      wrong(said, cell, problem);
      return;
    }
    EquationReading.Understood understood = (EquationReading.Understood) reading;
    words(said, cell, understood);
    Column column = columns.get(said.row());
    rules.add(
        new Rule(
            column.reference().key() + "." + cell.column(),
            Severity.CHECK,
            said.table().id(),
            new Condition.Comparison(broken, column.asFormula(), understood.formula()),
            column,
            "%s is {0}, %s than your limit of %s"
                .formatted(
                    template(said.name()),
                    broken == Comparator.BELOW ? "less" : "more",
                    template(typed)),
            template(said.draft().note()),
            List.of(column)));
  }

  /** What a person wrote, for a sentence in which braces stand for values. */
  private static String template(String words) {
    return words.replace('{', '(').replace('}', ')');
  }
}
