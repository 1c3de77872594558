package zonewright.equation;

import java.util.List;
import zonewright.formula.Aggregation;
import zonewright.formula.Comparator;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.units.Dimension;

/** What equations make of all rows of a column, or of those that match this row. */
final class RowsOfColumn {
  private static final List<String> LIMITS = List.of("<=", ">=", "≤", "≥", "<", ">");

  private final KnownColumns columns;
  private final List<EquationReading.Name> names;
  private final List<EquationReading.RowWord> words;

  /**
   * Prepares.
   *
   * @param names takes where limits in quotation marks name columns
   * @param words takes the words in them that should be names of rows
   */
  RowsOfColumn(
      KnownColumns columns, List<EquationReading.Name> names, List<EquationReading.RowWord> words) {
    this.columns = columns;
    this.names = names;
    this.words = words;
  }

  /** Says whether a part names a column of several rows, so that all of them are meant. */
  boolean whole(Part part) {
    return part instanceof Part.Named named && !columns.tableOf(named.column()).single();
  }

  private Column numbers(Part part) throws Misread {
    if (whole(part) && ((Part.Named) part).column().content() == Column.Content.NUMBER) {
      return ((Part.Named) part).column();
    }
    throw new Misread(
        part, "A column of numbers with several rows is needed here, such as Zones.Area.");
  }

  /** Returns what a whole column comes to. */
  Part.Amount all(Functions.Known function, Part.Named named) throws Misread {
    Column column = numbers(named);
    Dimension dimension = column.kind().dimension();
    if (dimension.temperature() != 0 && Functions.aggregation(function) == Aggregation.SUM) {
      throw new Misread(named, "Temperatures are not added up.");
    }
    Formula gathered = column.gathered(Functions.aggregation(function));
    Formula result =
        function == Functions.Known.AVERAGE
            ? gathered.over(column.gathered(Aggregation.COUNT))
            : gathered;
    return Part.Amount.of(result, dimension, named.from(), named.to());
  }

  /** Returns how many rows count of a column's sheet. */
  Part.Amount count(Part part) throws Misread {
    Formula count = numbers(part).gathered(Aggregation.COUNT);
    return Part.Amount.of(count, Dimension.NONE, part.from(), part.to());
  }

  /** Returns how many rows match. */
  Part.Amount countWhere(Part looked, Part criterion) throws Misread {
    Formula count = matching(looked, criterion).count();
    return Part.Amount.of(count, Dimension.NONE, looked.from(), criterion.to());
  }

  /** Returns the sum of a column over the rows that match. */
  Part.Amount sumWhere(Part looked, Part criterion, Part added) throws Misread {
    Column column = numbers(added);
    Matching matching = matching(looked, criterion);
    if (!((Part.Named) looked).column().reference().table().equals(column.reference().table())) {
      throw new Misread(
          added,
          "“%s” and “%s” stand on different sheets, so their rows do not belong together."
              .formatted(((Part.Named) looked).column().name(), column.name()));
    }
    if (column.kind().dimension().temperature() != 0) {
      throw new Misread(added, "Temperatures are not added up.");
    }
    return Part.Amount.of(
        matching.sum(column), column.kind().dimension(), looked.from(), added.to());
  }

  /** Rows with the word of this row, or with a number that keeps to a limit. */
  private Matching matching(Part looked, Part criterion) throws Misread {
    if (!whole(looked)) {
      throw new Misread(looked, "A column with several rows is needed here, such as Zones.Area.");
    }
    Column column = ((Part.Named) looked).column();
    return column.content() == Column.Content.NUMBER
        ? limit(column, criterion)
        : word(column, criterion);
  }

  private Matching word(Column column, Part criterion) throws Misread {
    if (criterion instanceof Part.Named named) {
      TableDefinition table = columns.tableOf(named.column());
      if (columns.reaches(table) && columns.comparable(column, named.column())) {
        return Matching.rows(column, named.column());
      }
    }
    throw new Misread(
        criterion,
        "“%s” holds words: name a column of this row that holds words of the same list."
            .formatted(column.name()));
  }

  /** A limit in quotation marks, as spreadsheets have it: {@code ">12 gpm"}, {@code "<=Area"}. */
  private Matching limit(Column column, Part criterion) throws Misread {
    if (criterion instanceof Part.Quote quote) {
      int begin = quote.words().length() - quote.words().stripLeading().length();
      for (String sign : LIMITS) {
        if (quote.words().startsWith(sign, begin)) {
          Comparator comparator = Combining.comparator(sign);
          return Matching.rowsWith(
              column, comparator, inside(quote, begin + sign.length(), column));
        }
      }
    }
    throw new Misread(
        criterion,
        "“%s” holds numbers: give a limit in quotation marks, as \">%s\" or \"<=%s\"."
            .formatted(column.name(), column.kind().example(), column.name()));
  }

  /** Reads the limit that begins at a letter of words in quotation marks. */
  private Formula inside(Part.Quote quote, int at, Column column) throws Misread {
    EquationReading reading =
        EquationReader.read(quote.words().substring(at), columns, column.kind());
    // a quotation mark in the words was typed twice, and places in the equation are others then
    boolean asTyped = quote.to() - quote.from() - 2 == quote.words().length();
    int from = quote.from() + 1 + at;
    if (reading instanceof EquationReading.Problem problem) {
      throw asTyped
          ? new Misread(
              from + problem.from(), from + problem.to(), problem.sentence(), problem.offers())
          : new Misread(quote, problem.sentence());
    }
    EquationReading.Understood understood = (EquationReading.Understood) reading;
    if (asTyped) {
      understood.names().stream()
          .map(
              each -> new EquationReading.Name(each.column(), from + each.from(), from + each.to()))
          .forEach(names::add);
    }
    understood.words().stream()
        .map(
            each ->
                new EquationReading.RowWord(each.column(), each.word(), quote.from(), quote.to()))
        .forEach(words::add);
    return understood.formula();
  }
}
