package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COST;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.EXTRAS;
import static zonewright.trade.Sheets.PRICE;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * The price of the job, in the order it is added up: material, labour, equipment, subcontract,
 * allowances and alternates taken; overhead, profit, contingency; tax.
 */
public final class BuildUp {
  public static final Column MATERIAL =
      sum("material", "Material", Parts.MATERIAL.sum(), "Sum over all items.");

  public static final Column HOURS =
      Column.calculated(ESTIMATE, "hours", "Labour hours", QuantityKind.HOURS, Parts.HOURS.sum())
          .band(COST)
          .means("Hours of all items.")
          .source("By definition.")
          .build();

  public static final Column LABOUR =
      sum("labour", "Labour", Parts.LABOUR.sum(), "Sum over all items.");

  public static final Column EQUIPMENT =
      sum("equipment", "Equipment", Extras.AS_EQUIPMENT.sum(), "From the sheet Extras.");

  public static final Column SUBCONTRACT =
      sum("subcontract", "Subcontract", Extras.AS_SUBCONTRACT.sum(), "From the sheet Extras.");

  public static final Column ALLOWANCES =
      sum("allowances", "Allowances", Extras.AS_ALLOWANCE.sum(), "From the sheet Extras.");

  public static final Column ALTERNATES =
      sum(
          "alternates",
          "Alternates taken",
          Extras.AS_ALTERNATE.sum(),
          "Alternates of the sheet Extras that the owner has taken.");

  public static final Column DIRECT =
      sum(
          "direct",
          "Direct cost",
          MATERIAL.plus(LABOUR).plus(EQUIPMENT).plus(SUBCONTRACT).plus(ALLOWANCES).plus(ALTERNATES),
          "All that the job itself costs.");

  private static final Column MORE_ON_MATERIAL = Markups.difference(Markups.MATERIAL, MATERIAL);
  private static final Column MORE_ON_LABOUR = Markups.difference(Markups.LABOUR, LABOUR);
  private static final Column MORE_ON_EQUIPMENT = Markups.difference(Markups.EQUIPMENT, EQUIPMENT);
  private static final Column MORE_ON_SUBCONTRACT =
      Markups.difference(Markups.SUBCONTRACT, SUBCONTRACT);

  public static final Column OVERHEAD =
      Column.calculated(
              ESTIMATE,
              "overhead",
              "Overhead amount",
              QuantityKind.MONEY,
              DIRECT
                  .times(JobFacts.OVERHEAD_SHARE)
                  .plus(MORE_ON_MATERIAL)
                  .plus(MORE_ON_LABOUR)
                  .plus(MORE_ON_EQUIPMENT)
                  .plus(MORE_ON_SUBCONTRACT)
                  .roundedTo(Units.CENT))
          .band(COST)
          .means(
              "Overhead on the direct cost; on material, labour, equipment and subcontracts their own markup where one is typed.")
          .source("By definition, to the smallest amount; half of it goes up.")
          .build();

  public static final Column PROFIT =
      part("profit", "Profit amount", JobFacts.PROFIT_SHARE, DIRECT.plus(OVERHEAD));

  public static final Column CONTINGENCY =
      part(
          "contingency",
          "Contingency amount",
          JobFacts.CONTINGENCY_SHARE,
          DIRECT.plus(OVERHEAD).plus(PROFIT));

  private static final Formula BUILT_UP = DIRECT.plus(OVERHEAD).plus(PROFIT).plus(CONTINGENCY);

  private static final Condition INCLUDED = JobFacts.TAX_ON.is(JobFacts.IN_PRICES);

  public static final Column TAX_INCLUDED =
      sum(
          "tax-included",
          "Tax in the prices",
          Formula.when(INCLUDED)
              .then(BUILT_UP.times(JobFacts.TAX_SHARE).over(one(JobFacts.TAX_SHARE)))
              .otherwise(Formula.zero(QuantityKind.MONEY)),
          "The tax that is in the price already, where prices include it: price × rate ÷ (1 + rate).");

  public static final Column NET_PRICE =
      sum(
          "net-price",
          "Price before tax",
          BUILT_UP.minus(TAX_INCLUDED),
          "Direct cost, overhead, profit and contingency, without the tax in them.");

  public static final Column TAX =
      sum(
          "tax",
          "Tax amount",
          Formula.when(INCLUDED)
              .then(TAX_INCLUDED)
              .otherwise(
                  Formula.when(JobFacts.TAX_ON.is(JobFacts.ON_MATERIAL))
                      .then(Parts.TAXED_MATERIAL.sum())
                      .otherwise(NET_PRICE)
                      .times(JobFacts.TAX_SHARE)),
          "Tax on top of the price, or in it where prices include it.");

  public static final Column TOTAL =
      sum("total", "Price", NET_PRICE.plus(TAX), "What the owner pays.");

  public static final Column ALLOWANCES_PRICE =
      Column.calculated(
              ESTIMATE,
              "allowances-price",
              "Allowances in the price",
              QuantityKind.MONEY,
              charged(ALLOWANCES))
          .band(PRICE)
          .means(
              "What the allowances come to in the price, with overhead, profit, contingency and tax: what to tell the owner of them.")
          .source(
              "By definition; half of the smallest amount goes up. Tax on material alone is not in it.")
          .build();

  public static final Column ALTERNATE_PRICE =
      Column.calculated(
              EXTRAS,
              "alternate-price",
              "Price to the owner",
              QuantityKind.MONEY,
              charged(Extras.AMOUNT))
          .band(PRICE)
          .means(
              "What it adds to the price, with overhead, profit, contingency and tax: what to tell the owner of an alternate.")
          .source(
              "By definition; half of the smallest amount goes up. Tax on material alone is not in it.")
          .build();

  private BuildUp() {}

  /** Returns what an owner is charged for a cost. */
  private static Formula charged(Column cost) {
    return cost.times(one(JobFacts.OVERHEAD_SHARE))
        .times(one(JobFacts.PROFIT_SHARE))
        .times(one(JobFacts.CONTINGENCY_SHARE))
        .times(
            Formula.when(JobFacts.TAX_ON.is(JobFacts.ON_PRICE))
                .then(one(JobFacts.TAX_SHARE))
                .otherwise(1))
        .roundedTo(Units.CENT);
  }

  private static Formula one(Column share) {
    return number(1).plus(share);
  }

  /** Columns of the sheet Estimate, in their order. */
  public static List<Column> estimateColumns() {
    return new ArrayList<>(
        List.of(
            JobFacts.CURRENCY,
            JobFacts.LABOUR_RATE,
            JobFacts.OVERHEAD_SHARE,
            Markups.MATERIAL,
            Markups.LABOUR,
            Markups.EQUIPMENT,
            Markups.SUBCONTRACT,
            JobFacts.PROFIT_SHARE,
            JobFacts.CONTINGENCY_SHARE,
            JobFacts.TAX_SHARE,
            JobFacts.TAX_ON,
            JobFacts.CONTROLLERS,
            JobFacts.CONTROLLERS_KEPT,
            JobFacts.SENSORS,
            JobFacts.SENSORS_KEPT,
            HOURS,
            MATERIAL,
            LABOUR,
            EQUIPMENT,
            SUBCONTRACT,
            ALLOWANCES,
            ALTERNATES,
            DIRECT,
            MORE_ON_MATERIAL,
            MORE_ON_LABOUR,
            MORE_ON_EQUIPMENT,
            MORE_ON_SUBCONTRACT,
            OVERHEAD,
            PROFIT,
            CONTINGENCY,
            TAX_INCLUDED,
            NET_PRICE,
            TAX,
            TOTAL,
            ALLOWANCES_PRICE));
  }

  /** Columns of the sheet Extras, in their order. */
  public static List<Column> extraColumns() {
    return List.of(
        Extras.LABEL,
        Extras.KIND,
        Extras.NOTE,
        Extras.AMOUNT,
        Extras.INCLUDED,
        Extras.COUNTS,
        Extras.AS_EQUIPMENT,
        Extras.AS_SUBCONTRACT,
        Extras.AS_ALLOWANCE,
        Extras.AS_ALTERNATE,
        ALTERNATE_PRICE);
  }

  private static Column sum(String id, String name, Term formula, String means) {
    return Column.calculated(ESTIMATE, id, name, QuantityKind.MONEY, formula.roundedTo(Units.CENT))
        .band(COST)
        .means(means)
        .source("By definition; the sum of rounded amounts.")
        .build();
  }

  private static Column part(String id, String name, Column share, Term of) {
    return Column.calculated(
            ESTIMATE, id, name, QuantityKind.MONEY, of.times(share).roundedTo(Units.CENT))
        .band(COST)
        .means(share.meaning())
        .source("By definition, to the smallest amount; half of it goes up.")
        .build();
  }
}
