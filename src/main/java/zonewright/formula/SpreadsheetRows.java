package zonewright.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * Which rows of a table match this one, as products of comparisons that are 1 or 0 row by row: they
 * take words as they are, where criteria would read signs in them.
 */
final class SpreadsheetRows {
  private SpreadsheetRows() {}

  /**
   * Returns the product of what must be so.
   *
   * @param limited whether the limit counts too
   */
  static String matching(Formula.Where where, boolean limited, SpreadsheetNames names) {
    Matching matching = where.matching();
    List<String> factors = new ArrayList<>();
    factors.add("(" + names.rowNames(where.column()) + "<>\"\")");
    for (Matching.Pair pair : matching.pairs()) {
      factors.add("(" + names.column(pair.word()) + "=" + names.cell(pair.key()) + ")");
    }
    Matching.Limit limit = limited ? matching.limit().orElse(null) : null;
    if (limit != null) {
      String than = SpreadsheetText.inside(limit.than(), names);
      factors.add("(" + names.column(limit.column()) + limit.comparator().typed() + than + ")");
    }
    return factors.size() == 1 ? factors.get(0) + "*1" : String.join("*", factors);
  }

  /** Returns the product that is 1 in rows of a column whose number is good to calculate with. */
  static String good(Reference column, SpreadsheetNames names) {
    String cells = names.column(column);
    String number = "ISNUMBER(" + cells + ")";
    SpreadsheetNames.Range range = names.range(column).orElse(null);
    if (range == null) {
      return number;
    }
    String within =
        "(%s%s%s)*(%s<=%s)"
            .formatted(
                cells,
                range.lowIncluded() ? ">=" : ">",
                SpreadsheetText.number(range.low()),
                cells,
                SpreadsheetText.number(range.high()));
    return range.typedOnly()
        ? "%s*((%s+%s)>0)".formatted(number, SpreadsheetText.isFormula(cells), within)
        : number + "*" + within;
  }
}
