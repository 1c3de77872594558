package zonewright.water;

import static zonewright.trade.Sheets.RULES;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import java.util.stream.IntStream;
import zonewright.formula.Formula;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;

/** Columns of the dates on which the whole site may water: all of them, odd ones or even ones. */
public final class AllowedDates {
  public static final String ANY = "any dates";
  public static final String ODD = "odd dates";
  public static final String EVEN = "even dates";
  public static final String BY_NUMBER = "as the house number";

  private static final List<String> WORDS = List.of(ANY, ODD, EVEN);

  public static final Column ALLOWED =
      Column.choice(
              SITE,
              "dates",
              "Dates allowed",
              new WordList.Fixed(List.of(ANY, ODD, EVEN, BY_NUMBER)),
              ANY)
          .band(RULES)
          .means(
              "Whether a local rule lets the site water on odd or even dates only; as the house number is odd dates for an odd number and even dates for an"
                  + " even one. Zones on nights of the site follow it.")
          .build();

  public static final Column IN_FORCE =
      Column.calculatedWord(
              SITE,
              "dates-in-force",
              "Dates in force",
              new WordList.Fixed(WORDS),
              Formula.when(ALLOWED.is(BY_NUMBER))
                  .then(Formula.nth(AllowedDays.DIGIT_PLACE, byDigit()))
                  .otherwise(
                      Formula.when(ALLOWED.is(ODD))
                          .then(WORDS.indexOf(ODD))
                          .otherwise(
                              Formula.when(ALLOWED.is(EVEN))
                                  .then(WORDS.indexOf(EVEN))
                                  .otherwise(WORDS.indexOf(ANY)))))
          .band(RULES)
          .means("The dates on which zones without days of their own water.")
          .source("From the dates allowed and the last digit of the house number.")
          .build();

  private static final Rule NUMBER_WANTED =
      new Rule(
          "house-number-wanted-for-dates",
          Severity.CHECK,
          SITE,
          ALLOWED.is(BY_NUMBER).and(AllowedDays.HOUSE_NUMBER.given().negated()),
          AllowedDays.HOUSE_NUMBER,
          "is not given, and the dates allowed go by it: all dates are taken as allowed",
          "type the number of the address",
          List.of());

  private AllowedDates() {}

  /** Returns what to tell a designer about the dates. */
  public static List<Rule> rules() {
    return List.of(NUMBER_WANTED);
  }

  /** From the last digits 0, 1 and so on to no house number at all. */
  private static List<Formula> byDigit() {
    return IntStream.rangeClosed(0, 10)
        .mapToObj(digit -> digit == 10 ? ANY : digit % 2 == 0 ? EVEN : ODD)
        .map(word -> Formula.number(WORDS.indexOf(word)))
        .toList();
  }
}
