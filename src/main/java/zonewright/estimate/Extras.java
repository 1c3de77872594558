package zonewright.estimate;

import static zonewright.trade.Sheets.COST;
import static zonewright.trade.Sheets.EXTRAS;
import static zonewright.trade.Sheets.ITEM;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of what is not counted off the zones: machines, subcontracts, allowances, alternates. */
public final class Extras {
  public static final String EQUIPMENT = "equipment";
  public static final String SUBCONTRACT = "subcontract";
  public static final String ALLOWANCE = "allowance";
  public static final String ALTERNATE = "alternate";

  public static final String USUAL = "as usual";
  public static final String IN = "in";
  public static final String OUT = "out";

  public static final Column LABEL =
      Column.words(EXTRAS, "label", "Extra").band(ITEM).means("What it is.").build();

  public static final Column KIND =
      Column.choice(
              EXTRAS,
              "kind",
              "Kind",
              new WordList.Fixed(List.of(EQUIPMENT, SUBCONTRACT, ALLOWANCE, ALTERNATE)))
          .band(ITEM)
          .means(
              "Equipment: machines, hired or your own. Subcontract: others' work. Allowance: a sum set aside for what is not"
                  + " settled. Alternate: something the owner may choose instead or as well.")
          .build();

  public static final Column AMOUNT =
      Column.input(EXTRAS, "amount", "Amount", QuantityKind.MONEY)
          .band(COST)
          .within(Bounds.from(-100_000_000, 100_000_000, Units.MONEY))
          .means("Its cost, before overhead and profit. An alternate that saves money is below 0.")
          .build();

  public static final Column INCLUDED =
      Column.choice(
              EXTRAS, "included", "Included", new WordList.Fixed(List.of(USUAL, IN, OUT)), USUAL)
          .band(COST)
          .means("As usual, alternates are out of the price and all else is in it.")
          .build();

  public static final Column NOTE =
      Column.words(EXTRAS, "note", "Note")
          .band(ITEM)
          .optional()
          .means("Anything worth remembering.")
          .build();

  public static final Column COUNTS =
      Column.calculated(
              EXTRAS,
              "counts",
              "In the price",
              QuantityKind.MONEY,
              Formula.when(left())
                  .then(Formula.zero(QuantityKind.MONEY))
                  .otherwise(AMOUNT.roundedTo(Units.CENT)))
          .band(COST)
          .means("What of it counts, to the smallest amount of the currency.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column AS_EQUIPMENT = of("as-equipment", "Of it equipment", EQUIPMENT);

  public static final Column AS_SUBCONTRACT =
      of("as-subcontract", "Of it subcontract", SUBCONTRACT);

  public static final Column AS_ALLOWANCE = of("as-allowance", "Of it allowance", ALLOWANCE);

  public static final Column AS_ALTERNATE = of("as-alternate", "Of it alternate", ALTERNATE);

  private Extras() {}

  private static Condition left() {
    Condition out = INCLUDED.is(OUT);
    Condition usual = INCLUDED.is(USUAL);
    return out.or(usual.and(KIND.is(ALTERNATE)));
  }

  private static Column of(String id, String name, String kind) {
    return Column.calculated(
            EXTRAS,
            id,
            name,
            QuantityKind.MONEY,
            Formula.when(KIND.is(kind)).then(COUNTS).otherwise(Formula.zero(QuantityKind.MONEY)))
        .band(COST)
        .means("What counts, if it is of this kind; else nothing.")
        .source("By definition.")
        .build();
  }
}
