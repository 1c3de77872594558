package zonewright.formula;

/** One answer for each kind of node; no defaults, so that nothing is forgotten. */
public interface FormulaVisitor<R> {
  R constant(Formula.Constant constant);

  R cell(Formula.Cell cell);

  R arithmetic(Formula.Arithmetic arithmetic);

  R extreme(Formula.Extreme extreme);

  R rounding(Formula.Rounding rounding);

  R power(Formula.Power power);

  R function(Formula.Function function);

  R measure(Formula.Measure measure);

  R choose(Formula.Choose choose);

  R nth(Formula.Nth nth);

  R nothing(Formula.Nothing nothing);

  R lookup(Formula.Lookup lookup);

  R lookupAcross(Formula.LookupAcross lookup);

  R lookupCount(Formula.LookupCount lookup);

  R aggregate(Formula.Aggregate aggregate);

  R where(Formula.Where where);

  R rowLookup(Formula.RowLookup lookup);

  R pick(Formula.Pick pick);
}
