package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PROPOSAL;

import java.util.List;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What the office says on its proposal, in its own words, and how the price is paid. */
public final class ProposalFacts {
  private static final String SEVERAL = " Set several apart by semicolons.";

  public static final Column CLIENT = words("client", "Client", "Who the proposal is for.");

  public static final Column NUMBER =
      words("proposal-number", "Proposal number", "The office's own number of the proposal.");

  public static final Column DATE =
      Column.input(ESTIMATE, "proposal-date", "Proposal date", QuantityKind.DATE)
          .band(PROPOSAL)
          .optional()
          .means("The day the proposal is made.")
          .build();

  public static final Column VALID =
      Column.input(ESTIMATE, "valid-days", "Valid for days", QuantityKind.COUNT)
          .band(PROPOSAL)
          .within(Bounds.from(1, 3650, Units.ONE).wholeNumbers())
          .optional()
          .means("How many days from its date the price stands.")
          .build();

  public static final Column SCOPE =
      words("scope", "Scope of work", "What is done, beside the list of zones." + SEVERAL);

  public static final Column EXCLUDED =
      words("excluded", "Not included", "What the price does not cover." + SEVERAL);

  public static final Column DEPOSIT_SHARE =
      share("deposit-share", "Paid on order", "Part of the price that is due with the order.");

  public static final Column PROGRESS_SHARE =
      share(
          "progress-share",
          "Paid during the work",
          "Part of the price that is due during the work; the terms say when.");

  public static final Column TERMS =
      words(
          "terms", "Terms", "Warranty, payment and other terms, as the office has them." + SEVERAL);

  public static final Column SIGNED_BY =
      words("signed-by", "Signed by", "Who signs for the office.");

  public static final Column DEPOSIT =
      due("deposit", "Due on order", BuildUp.TOTAL.times(DEPOSIT_SHARE));

  public static final Column PROGRESS =
      due("progress", "Due during the work", BuildUp.TOTAL.times(PROGRESS_SHARE));

  public static final Column REST =
      due("rest", "Due when the work is done", BuildUp.TOTAL.minus(DEPOSIT).minus(PROGRESS));

  private ProposalFacts() {}

  /** Columns of the sheet Estimate, in their order. */
  public static List<Column> columns() {
    return List.of(
        CLIENT,
        NUMBER,
        DATE,
        VALID,
        SCOPE,
        EXCLUDED,
        DEPOSIT_SHARE,
        PROGRESS_SHARE,
        TERMS,
        SIGNED_BY,
        DEPOSIT,
        PROGRESS,
        REST);
  }

  private static Column words(String id, String name, String means) {
    return Column.words(ESTIMATE, id, name)
        .band(PROPOSAL)
        .optional()
        .means(means + " It is printed on the proposal.")
        .build();
  }

  private static Column share(String id, String name, String means) {
    return Column.defaulted(ESTIMATE, id, name, QuantityKind.SHARE, number(0))
        .band(PROPOSAL)
        .within(Bounds.from(0, 1, Units.ONE))
        .decimals(0, 0)
        .inFull()
        .means(means)
        .source("None unless typed.")
        .build();
  }

  private static Column due(String id, String name, Term amount) {
    return Column.calculated(ESTIMATE, id, name, QuantityKind.MONEY, amount.roundedTo(Units.CENT))
        .band(PROPOSAL)
        .means("A part of the price; the three add up to it.")
        .source(
            "By definition, to the smallest amount of the currency; what rounding leaves is in the last.")
        .build();
  }
}
