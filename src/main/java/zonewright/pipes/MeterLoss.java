package zonewright.pipes;

import java.util.List;
import zonewright.formula.Cells;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.ReferenceTable;
import zonewright.formula.Term;
import zonewright.units.Units;

/** The loss of a water meter between the flows it is tabulated for. */
final class MeterLoss {
  static final String SOURCE =
      "Between the flows of the table Meters by the square of the flow, as loss goes (common practice); the table is the AWWA"
          + " standard loss on a public page, verified (secondary).";

  private MeterLoss() {}

  /** Returns how many of the flows tabulated for a meter lie below a flow. */
  static Formula flowsBelow(Cells meter, Term flow) {
    return below(meter, PipeTables.METER_FLOWS, flow);
  }

  /** Returns how many of the losses tabulated for a meter lie below a pressure. */
  static Formula lossesBelow(Cells meter, Term loss) {
    return below(meter, PipeTables.METER_LOSSES, loss);
  }

  private static Formula below(Cells meter, List<ReferenceTable.Numbers> points, Term value) {
    return Formula.countBelow(meter, points.subList(1, points.size()), value);
  }

  /**
   * Returns the loss at a flow; refused above the safe maximum.
   *
   * @param below how many tabulated flows lie below it
   */
  static Formula at(Cells meter, Term flow, Term below) {
    Formula flowBefore = flowAt(meter, below.plus(1));
    Formula flowAfter = flowAt(meter, below.plus(2));
    Formula lossBefore = lossAt(meter, below.plus(1));
    Formula lossAfter = lossAt(meter, below.plus(2));
    Formula share =
        squared(flow)
            .minus(squared(flowBefore))
            .over(squared(flowAfter).minus(squared(flowBefore)));
    return Formula.when(flow.above(PipeTables.safeFlow(meter)))
        .then(
            Formula.refused(
                "over the meter",
                "the flow is above the safe maximum of the meter; choose a larger meter or run less at once"))
        .otherwise(lossBefore.plus(lossAfter.minus(lossBefore).times(share)));
  }

  /**
   * Returns the flow at which a meter loses so much, at most its safe maximum.
   *
   * @param below how many tabulated losses lie below it
   */
  static Formula flowFor(Cells meter, Term loss, Term below) {
    Formula flowBefore = flowAt(meter, below.plus(1));
    Formula flowAfter = flowAt(meter, below.plus(2));
    Formula lossBefore = lossAt(meter, below.plus(1));
    Formula lossAfter = lossAt(meter, below.plus(2));
    Formula share = loss.minus(lossBefore).over(lossAfter.minus(lossBefore));
    Formula squares =
        squared(flowBefore).plus(squared(flowAfter).minus(squared(flowBefore)).times(share));
    Formula gpm = Formula.amount(1, Units.GALLON_PER_MINUTE);
    return Formula.when(below.atLeast(PipeTables.METER_FLOWS.size() - 1.0))
        .then(PipeTables.safeFlow(meter))
        .otherwise(gpm.times(squares.over(gpm.times(gpm)).apply(FunctionKind.SQUARE_ROOT)));
  }

  private static Formula squared(Term flow) {
    return flow.times(flow);
  }

  private static Formula flowAt(Cells meter, Term position) {
    return Formula.lookup(meter, PipeTables.METER_FLOWS, position);
  }

  private static Formula lossAt(Cells meter, Term position) {
    return Formula.lookup(meter, PipeTables.METER_LOSSES, position);
  }
}
