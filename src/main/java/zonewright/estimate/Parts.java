package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COST;
import static zonewright.trade.Sheets.CREWS;
import static zonewright.trade.Sheets.CURRENCIES;
import static zonewright.trade.Sheets.ITEM;
import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.QUANTITY;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.pipes.PipeTables;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the price book: items with their price and hours, what each is counted by, and what
 * that comes to for this job.
 */
public final class Parts {
  public static final Column ITEM_NAME =
      Column.words(PARTS, "item", "Item").band(ITEM).means("What is bought or done.").build();

  public static final Column SKU =
      Column.words(PARTS, "sku", "SKU")
          .band(ITEM)
          .optional()
          .means("The supplier's number of the item; a price book read again finds the item by it.")
          .build();

  public static final Column SUPPLIER =
      Column.words(PARTS, "supplier", "Supplier")
          .band(ITEM)
          .optional()
          .means("Who sells it.")
          .build();

  public static final Column SECTION =
      Column.choice(PARTS, "section", "Section", Counted.SECTION_LIST, Counted.OTHER)
          .band(ITEM)
          .means("The part of the estimate the item belongs to.")
          .build();

  public static final Column UNIT =
      Column.words(PARTS, "unit", "Sold by")
          .band(ITEM)
          .optional()
          .means("What the price is for, such as each, ft, roll; it is only printed.")
          .build();

  public static final Column PRICE =
      Column.input(PARTS, "price", "Price", QuantityKind.MONEY)
          .band(ITEM)
          .within(Bounds.from(0, 10_000_000, Units.MONEY))
          .optional()
          .means("What one of it costs, without tax. Leave it blank until you know it.")
          .build();

  public static final Column PRICE_IN =
      Column.choice(PARTS, "price-in", "Price in", new WordList.RowsOf(CURRENCIES))
          .band(ITEM)
          .optional()
          .means(
              "The currency of the price, of the sheet Currencies. Left blank, it is that of the job.")
          .build();

  public static final Column HOURS_EACH =
      Column.defaulted(PARTS, "hours-each", "Labour hours each", QuantityKind.HOURS, noHours())
          .band(ITEM)
          .within(Bounds.from(0, 10_000, Units.HOUR))
          .decimals(3, 3)
          .inFull()
          .means("Hours of one worker to fit one of it.")
          .source("None unless typed.")
          .build();

  public static final Column CREW =
      Column.choice(PARTS, "crew", "Crew", new WordList.RowsOf(CREWS))
          .band(ITEM)
          .optional()
          .means("Who does it, of the sheet Crews. Left blank, the labour rate of the job counts.")
          .build();

  static final String TAXED = "yes";
  static final String UNTAXED = "no";

  public static final Column TAXABLE =
      Column.choice(PARTS, "taxable", "Taxable", new WordList.Fixed(List.of(TAXED, UNTAXED)), TAXED)
          .band(ITEM)
          .means(
              "Whether its material bears tax, where tax is on material; local tax law decides what is exempt.")
          .build();

  public static final Column NOTE =
      Column.words(PARTS, "note", "Supplier note")
          .band(ITEM)
          .optional()
          .means("Where it comes from, how long it takes, from when the price is.")
          .build();

  public static final Column COUNTED_BY =
      Column.choice(PARTS, "counted-by", "Counted by", Counted.WORD_LIST)
          .band(QUANTITY)
          .optional()
          .means(
              "What the number needed follows from. Leave it blank where you type the count yourself.")
          .build();

  public static final Column WHICH =
      Column.choice(PARTS, "which", "Which", Counted.WHICH_LIST, Counted.NEW)
          .band(QUANTITY)
          .means(
              "Which of it counts: what is new, all that is needed, what is kept, or what is taken out of use.")
          .build();

  public static final Column COUNTED_IN =
      Column.choice(PARTS, "counted-in", "Counted in", Counted.UNIT_LIST, Counted.EACH)
          .band(QUANTITY)
          .means(
              "The unit of the count: each for things, ft or m for lengths, ft² or m² for areas.")
          .build();

  public static final Column EMITTER =
      Column.choice(PARTS, "emitter", "Emitter", new WordList.Published(Emitters.KINDS))
          .band(QUANTITY)
          .optional()
          .means(
              "Count only this kind of emitter; needed where the item is counted by emitters or drip line.")
          .build();

  public static final Column PIPE =
      Column.choice(PARTS, "pipe", "Pipe", new WordList.Published(PipeTables.EVERY_PIPE))
          .band(QUANTITY)
          .optional()
          .means(
              "Count only pipe, or fittings, of this kind and size; left blank, of all sizes. For items counted by lateral, main or"
                  + " their fittings.")
          .build();

  public static final Column OWN_PIPE =
      Column.choice(PARTS, "own-pipe", "Pipe of your own", new WordList.RowsOf(MATERIALS))
          .band(QUANTITY)
          .optional()
          .means(
              "Count only this pipe of the sheet Materials, or its fittings, in place of a tabulated kind and size.")
          .build();

  public static final Column WIRE =
      Column.choice(PARTS, "wire-size", "Wire size", new WordList.Published(PipeTables.WIRES))
          .band(QUANTITY)
          .optional()
          .means(
              "Count only station wire of this size; left blank, of all sizes. Common wire is one size for all valves, the thickest of"
                  + " them or thicker.")
          .build();

  static final SizeCount.Words WORDS =
      new SizeCount.Words(
          COUNTED_BY.reference(),
          COUNTED_IN.reference(),
          PIPE.reference(),
          OWN_PIPE.reference(),
          WIRE.reference());

  private static final SizeCount SIZE = SizeCount.of(WORDS);

  public static final Column OF_A_SIZE = SIZE.way();

  public static final Column AMOUNT =
      Column.defaulted(PARTS, "amount", "Amount each", QuantityKind.FACTOR, number(1))
          .band(QUANTITY)
          .within(Bounds.from(0, 1_000_000, Units.ONE))
          .decimals(3, 3)
          .inFull()
          .means("How much of the item goes with one of what is counted: 2 connectors a valve.")
          .source("One unless typed.")
          .build();

  public static final Column WASTE =
      Column.defaulted(PARTS, "waste", "Waste", QuantityKind.SHARE, number(0))
          .band(QUANTITY)
          .within(Bounds.from(0, 2, Units.ONE))
          .decimals(1, 1)
          .inFull()
          .means("What is bought beyond what is fitted, as a part of it.")
          .source("None unless typed.")
          .build();

  public static final Column PACK =
      Column.defaulted(PARTS, "pack", "Pack", QuantityKind.FACTOR, number(1))
          .band(QUANTITY)
          .within(Bounds.from(0.01, 1_000_000, Units.ONE))
          .means(
              "How many come in a pack, a roll or a length: quantities are rounded up to whole packs.")
          .source("One unless typed.")
          .build();

  private static final CountOf COUNT_OF =
      new CountOf(
          COUNTED_BY.reference(),
          WHICH.reference(),
          COUNTED_IN.reference(),
          EMITTER.reference(),
          Optional.of(SIZE));

  public static final Column NEEDED = COUNT_OF.column("needed", "Needed", COUNT_OF.needed());

  public static final Column KEPT = COUNT_OF.column("kept", "Kept", COUNT_OF.kept());

  public static final Column NEW = COUNT_OF.column("new", "New", COUNT_OF.fresh());

  public static final Column REMOVED = COUNT_OF.column("removed", "Removed", COUNT_OF.removed());

  public static final Column COUNT =
      Column.defaulted(
              PARTS,
              "count",
              "Count",
              QuantityKind.FACTOR,
              COUNT_OF.chosen(NEEDED, KEPT, NEW, REMOVED))
          .band(QUANTITY)
          .within(Bounds.from(0, 100_000_000, Units.ONE))
          .decimals(1, 1)
          .means("How many there are of what the item is counted by, unless you type it.")
          .source("By definition.")
          .build();

  public static final Column INSTALLED =
      Column.calculated(PARTS, "installed", "Fitted", QuantityKind.FACTOR, COUNT.times(AMOUNT))
          .band(QUANTITY)
          .decimals(1, 1)
          .means("How much of the item is fitted, without waste.")
          .source("By definition.")
          .build();

  public static final Column BOUGHT =
      Column.calculated(
              PARTS,
              "bought",
              "Quantity",
              QuantityKind.FACTOR,
              INSTALLED.times(number(1).plus(WASTE)).over(PACK).roundedUpTo(Units.ONE).times(PACK))
          .band(QUANTITY)
          .decimals(1, 1)
          .means("How much is bought: with waste, in whole packs.")
          .source("Fitted × (1 + waste), rounded up to whole packs.")
          .build();

  public static final Column MATERIAL =
      Column.calculated(
              PARTS,
              "material",
              "Material",
              QuantityKind.MONEY,
              Formula.when(PRICE_IN.given())
                  .then(BOUGHT.times(PRICE).times(Currencies.WORTH.inRowOf(PRICE_IN)))
                  .otherwise(BOUGHT.times(PRICE))
                  .roundedTo(Units.CENT))
          .band(COST)
          .means("Quantity times price, in the currency of the job, to the smallest amount of it.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column HOURS =
      Column.calculated(PARTS, "hours", "Hours", QuantityKind.HOURS, INSTALLED.times(HOURS_EACH))
          .band(COST)
          .decimals(2, 2)
          .means("Labour of what is fitted; waste is not fitted.")
          .source("By definition.")
          .build();

  public static final Column TAXED_MATERIAL =
      Column.calculated(
              PARTS,
              "taxed-material",
              "Taxed material",
              QuantityKind.MONEY,
              Formula.when(TAXABLE.is(UNTAXED))
                  .then(Formula.zero(QuantityKind.MONEY))
                  .otherwise(MATERIAL))
          .band(COST)
          .means("The material, if it bears tax; else nothing.")
          .source("By definition.")
          .build();

  public static final Column RATE =
      Column.calculated(
              PARTS,
              "rate",
              "Rate an hour",
              QuantityKind.PRICE_PER_HOUR,
              Formula.when(HOURS.atMost(noHours()))
                  .then(Formula.doesNotApply("no labour", "The item takes no hours."))
                  .otherwise(
                      Formula.when(CREW.given())
                          .then(Crews.RATE.inRowOf(CREW))
                          .otherwise(JobFacts.LABOUR_RATE)))
          .band(COST)
          .decimals(4, 4)
          .means(
              "What an hour of its labour costs: that of its crew, or the labour rate of the job.")
          .source("By definition.")
          .build();

  public static final Column LABOUR =
      Column.calculated(
              PARTS,
              "labour",
              "Labour",
              QuantityKind.MONEY,
              Formula.when(HOURS.atMost(noHours()))
                  .then(Formula.zero(QuantityKind.MONEY))
                  .otherwise(HOURS.times(RATE).roundedTo(Units.CENT)))
          .band(COST)
          .means("Hours times the rate of an hour, to the smallest amount of the currency.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column LINE =
      Column.calculated(PARTS, "line", "Cost", QuantityKind.MONEY, MATERIAL.plus(LABOUR))
          .band(COST)
          .means("Material and labour of the item, before overhead.")
          .source("By definition.")
          .build();

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                ITEM_NAME,
                SECTION,
                UNIT,
                PRICE,
                PRICE_IN,
                HOURS_EACH,
                CREW,
                TAXABLE,
                SKU,
                SUPPLIER,
                NOTE,
                COUNTED_BY,
                WHICH,
                COUNTED_IN,
                EMITTER,
                PIPE,
                OWN_PIPE,
                WIRE,
                AMOUNT,
                WASTE,
                PACK));
    columns.addAll(SIZE.columns());
    columns.addAll(
        List.of(
            NEEDED,
            KEPT,
            NEW,
            REMOVED,
            COUNT,
            INSTALLED,
            BOUGHT,
            MATERIAL,
            TAXED_MATERIAL,
            HOURS,
            RATE,
            LABOUR,
            LINE));
    return columns;
  }

  private Parts() {}

  private static Formula noHours() {
    return Formula.amount(0, Units.HOUR);
  }
}
