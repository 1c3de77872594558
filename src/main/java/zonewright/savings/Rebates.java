package zonewright.savings;

import static zonewright.trade.Sheets.BILL;
import static zonewright.trade.Sheets.ITEM;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.QUANTITY;
import static zonewright.trade.Sheets.REBATES;

import java.util.List;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.estimate.CountOf;
import zonewright.estimate.Counted;
import zonewright.estimate.Parts;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of what a water supplier pays towards the job: so much for each thing, up to a cap. */
public final class Rebates {
  public static final Column LABEL =
      Column.words(REBATES, "label", "Rebate").band(ITEM).means("What it is for.").build();

  public static final Column COUNTED_BY =
      Column.choice(REBATES, "counted-by", "Counted by", new WordList.Fixed(Counted.WORDS))
          .band(QUANTITY)
          .optional()
          .means(
              "What the rebate is paid for. Leave it blank where you type the count yourself: by job for a fixed sum.")
          .build();

  public static final Column WHICH =
      Column.choice(REBATES, "which", "Which", new WordList.Fixed(Counted.WHICH), Counted.NEW)
          .band(QUANTITY)
          .means("Which of it counts: new, needed, kept or taken out of use.")
          .build();

  public static final Column COUNTED_IN =
      Column.choice(
              REBATES, "counted-in", "Counted in", new WordList.Fixed(Counted.UNITS), Counted.EACH)
          .band(QUANTITY)
          .means("The unit the rule pays by: each, ft or m, ft² or m².")
          .build();

  public static final Column EMITTER =
      Column.choice(REBATES, "emitter", "Emitter", new WordList.Published(Emitters.KINDS))
          .band(QUANTITY)
          .optional()
          .means("Count only this kind; needed where the rule pays by emitters or drip line.")
          .build();

  private static final CountOf COUNT_OF =
      new CountOf(
          COUNTED_BY.reference(),
          WHICH.reference(),
          COUNTED_IN.reference(),
          EMITTER.reference(),
          Optional.empty());

  public static final Column NEEDED = COUNT_OF.column("needed", "Needed", COUNT_OF.needed());

  public static final Column KEPT = COUNT_OF.column("kept", "Kept", COUNT_OF.kept());

  public static final Column NEW = COUNT_OF.column("new", "New", COUNT_OF.fresh());

  public static final Column REMOVED = COUNT_OF.column("removed", "Removed", COUNT_OF.removed());

  public static final Column COUNT =
      Column.defaulted(
              REBATES,
              "count",
              "Count",
              QuantityKind.FACTOR,
              COUNT_OF.chosen(NEEDED, KEPT, NEW, REMOVED))
          .band(QUANTITY)
          .within(Bounds.from(0, 1e9, Units.ONE))
          .decimals(1, 1)
          .means("How many the rebate is paid for, unless you type it.")
          .source("By definition.")
          .build();

  public static final Column EACH =
      Column.input(REBATES, "each", "Paid for each", QuantityKind.MONEY)
          .band(BILL)
          .within(Bounds.from(0, 1e8, Units.MONEY))
          .optional()
          .means("What the rule pays for one.")
          .build();

  public static final Column MOST =
      Column.input(REBATES, "most", "Paid for at most", QuantityKind.FACTOR)
          .band(BILL)
          .within(Bounds.from(0, 1e9, Units.ONE))
          .decimals(1, 1)
          .optional()
          .means(
              "The most the rule pays for, counted as above. Leave it blank where it pays for all.")
          .build();

  public static final Column OF_COST =
      Column.input(REBATES, "of-cost", "At most of the cost", QuantityKind.SHARE)
          .band(BILL)
          .within(Bounds.from(0, 1, Units.ONE))
          .decimals(1, 1)
          .inFull()
          .optional()
          .means("The part of a cost the rule pays at most. Leave it blank where it looks at none.")
          .build();

  public static final Column COST_OF =
      Column.choice(REBATES, "cost-of", "Cost of", new WordList.RowsOf(PARTS))
          .band(BILL)
          .optional()
          .means(
              "The item of the sheet Parts whose material and labour that is a part of. Left blank, it is the cost of the job.")
          .build();

  public static final Column CAP =
      Column.input(REBATES, "cap", "At most", QuantityKind.MONEY)
          .band(BILL)
          .within(Bounds.from(0, 1e9, Units.MONEY))
          .optional()
          .means("The most the rule pays. Leave it blank where there is no cap.")
          .build();

  public static final Column COUNT_PAID =
      Column.calculated(
              REBATES,
              "count-paid",
              "Count paid",
              QuantityKind.FACTOR,
              Formula.when(MOST.given()).then(Formula.smaller(MOST, COUNT)).otherwise(COUNT))
          .band(BILL)
          .decimals(1, 1)
          .means("How many the rule pays for: no more than its most.")
          .source("By definition.")
          .build();

  public static final Column WHOLE_COST =
      Column.calculated(
              REBATES,
              "whole-cost",
              "That cost",
              QuantityKind.MONEY,
              Formula.when(OF_COST.given().negated())
                  .then(Formula.zero(QuantityKind.MONEY))
                  .otherwise(
                      Formula.when(COST_OF.given())
                          .then(Parts.LINE.inRowOf(COST_OF))
                          .otherwise(JobCost.COST)))
          .band(BILL)
          .means("The cost of which the rule pays a part at most; nothing where it looks at none.")
          .source("The sheet Parts, or the cost of the job.")
          .build();

  public static final Column BY_COST =
      Column.calculated(
              REBATES,
              "by-cost",
              "Within the cost",
              QuantityKind.MONEY,
              Formula.when(OF_COST.given())
                  .then(
                      Formula.smaller(OF_COST.times(WHOLE_COST).roundedTo(Units.CENT), uncapped()))
                  .otherwise(uncapped()))
          .band(BILL)
          .means("What is paid for the count, and no more than the part of the cost.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column AMOUNT =
      Column.calculated(
              REBATES,
              "amount",
              "Amount",
              QuantityKind.MONEY,
              Formula.when(CAP.given()).then(Formula.smaller(CAP, BY_COST)).otherwise(BY_COST))
          .band(BILL)
          .means("What is paid, to the smallest amount of the currency, and no more than the cap.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column NOTE =
      Column.words(REBATES, "note", "Note")
          .band(ITEM)
          .optional()
          .means(
              "The program, its conditions, when it ends: most want to agree before work begins.")
          .build();

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    return List.of(
        LABEL,
        NOTE,
        COUNTED_BY,
        WHICH,
        COUNTED_IN,
        EMITTER,
        NEEDED,
        KEPT,
        NEW,
        REMOVED,
        COUNT,
        EACH,
        MOST,
        OF_COST,
        COST_OF,
        CAP,
        COUNT_PAID,
        WHOLE_COST,
        BY_COST,
        AMOUNT);
  }

  private Rebates() {}

  private static Formula uncapped() {
    return COUNT_PAID.times(EACH).roundedTo(Units.CENT);
  }
}
