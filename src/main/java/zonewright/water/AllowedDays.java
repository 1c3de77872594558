package zonewright.water;

import static zonewright.trade.Sheets.DAY_RULES;
import static zonewright.trade.Sheets.NIGHTS;
import static zonewright.trade.Sheets.RULES;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.STAGES;
import static zonewright.trade.Sheets.WINDOWS;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the days on which watering is allowed: by the weekdays of the site, and by rules for
 * house numbers and stages. All that hold must allow a day.
 */
public final class AllowedDays {
  public static final String YES = "yes";
  public static final String NO = "no";
  public static final String ALL_NUMBERS = "all";

  /** The weekdays, in their order, each the night that opens on it. */
  public static final List<String> DAY_NAMES =
      List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

  /** Which house numbers a rule speaks of: 1 under the last digits it holds for. */
  public static final ReferenceTable HOUSE_NUMBERS =
      ReferenceTable.read(AllowedDays.class, "house-numbers.csv", "HouseNumbers");

  private static final List<ReferenceTable.Numbers> BY_DIGIT =
      HOUSE_NUMBERS.headings().subList(1, HOUSE_NUMBERS.headings().size() - 2).stream()
          .map(heading -> HOUSE_NUMBERS.numbers(heading, QuantityKind.COUNT))
          .toList();

  private static final List<ReferenceTable.Numbers> BY_DAY =
      DAY_NAMES.stream()
          .map(day -> SiteRules.WEEKDAY_SETS.numbers(day, QuantityKind.COUNT))
          .toList();

  /** The sets of weekdays in the order of what their days are worth. */
  public static final ReferenceTable NUMBERED_SETS = numberedSets();

  public static final Column HOUSE_NUMBER =
      Column.input(SITE, "house-number", "House number", QuantityKind.COUNT)
          .band(RULES)
          .within(Bounds.from(0, 999_999, Units.ONE).wholeNumbers())
          .optional()
          .means(
              "The number of the address, without letters, where local rules name watering days by it.")
          .build();

  public static final Column DIGIT_PLACE =
      Column.calculated(
              SITE,
              "digit-place",
              "Place of its last digit",
              QuantityKind.COUNT,
              Formula.when(HOUSE_NUMBER.given())
                  .then(
                      HOUSE_NUMBER
                          .minus(HOUSE_NUMBER.over(10).roundedDownTo(Units.ONE).times(10))
                          .plus(1))
                  .otherwise(BY_DIGIT.size()))
          .band(RULES)
          .means("Where the last digit of the house number stands in the table HouseNumbers.")
          .source("1 for 0 and so on; the last where there is no house number.")
          .build();

  public static final Column RULE =
      Column.words(DAY_RULES, "rule", "Rule")
          .band(RULES)
          .means("Number or name of the rule.")
          .build();

  public static final Column STAGE =
      Column.choice(DAY_RULES, "stage", "In stage", new WordList.RowsOf(STAGES))
          .band(RULES)
          .optional()
          .means("The stage in which the rule holds; blank where it holds always.")
          .build();

  public static final Column NUMBERS =
      Column.choice(DAY_RULES, "numbers", "House numbers", new WordList.Published(HOUSE_NUMBERS))
          .band(RULES)
          .optional()
          .means(
              "For which house numbers it holds: even, odd or ending in a digit. Blank where it holds for all.")
          .build();

  public static final Column DAYS =
      Column.choice(
              DAY_RULES, "days", "May water on", new WordList.Published(SiteRules.WEEKDAY_SETS))
          .band(RULES)
          .means("The weekdays on which the rule allows watering, such as Tue Sat.")
          .build();

  public static final Column IN_STAGE =
      Column.calculated(
              DAY_RULES,
              "in-stage",
              "Holds in the stage",
              QuantityKind.COUNT,
              Formula.when(STAGE.given())
                  .then(Matching.rows(DroughtStages.IN_FORCE, STAGE).count())
                  .otherwise(1))
          .band(RULES)
          .means("1 where the rule holds in the stage in force, 0 where not.")
          .source("By definition.")
          .build();

  public static final Column AT_HOUSE =
      Column.calculated(
              DAY_RULES,
              "at-house",
              "Holds for the number",
              QuantityKind.COUNT,
              Formula.when(NUMBERS.given())
                  .then(Formula.lookup(NUMBERS, BY_DIGIT, DIGIT_PLACE))
                  .otherwise(1))
          .band(RULES)
          .means("1 where the rule speaks of the house number of the site, 0 where not.")
          .source("From the last digit; without a house number only rules for all hold.")
          .build();

  public static final Column HOLDS =
      Column.calculated(
              DAY_RULES,
              "holds",
              "Holds here",
              QuantityKind.COUNT,
              Formula.when(DAYS.given()).then(IN_STAGE.times(AT_HOUSE)).otherwise(0))
          .band(RULES)
          .means("1 where the rule holds for this site now, 0 where not.")
          .source("By definition; a rule without weekdays holds nowhere.")
          .build();

  /** For each weekday 1 where a rule that holds leaves it out, Monday first. */
  public static final List<Column> CLOSES =
      IntStream.range(0, DAY_NAMES.size()).mapToObj(AllowedDays::closes).toList();

  public static final Column ASKS_NUMBER =
      Column.calculated(
              DAY_RULES,
              "asks-number",
              "Asks for the number",
              QuantityKind.COUNT,
              Formula.when(NUMBERS.given().and(NUMBERS.is(ALL_NUMBERS).negated()))
                  .then(IN_STAGE)
                  .otherwise(0))
          .band(RULES)
          .means("1 where it depends on the house number whether the rule holds now.")
          .source("By definition.")
          .build();

  public static final Column NUMBER =
      Column.input(NIGHTS, "number", "Day of the week", QuantityKind.COUNT)
          .band(WINDOWS)
          .within(Bounds.from(1, 7, Units.ONE).wholeNumbers())
          .means("Its day's place in the week, Monday the first.")
          .source("ISO 8601 numbers the days so.")
          .build();

  public static final Column FORBIDDEN =
      Column.calculated(
              NIGHTS,
              "forbidden",
              "Rules against it",
              QuantityKind.COUNT,
              Formula.nth(NUMBER, CLOSES.stream().map(Column::sum).toList()))
          .band(WINDOWS)
          .means("How many rules of the sheet DayRules that hold now leave out the day.")
          .source("By counting.")
          .build();

  public static final Column NEXT_FORBIDDEN =
      Column.calculated(
              NIGHTS,
              "next-forbidden",
              "Rules against the next day",
              QuantityKind.COUNT,
              Formula.when(NUMBER.atLeast(DAY_NAMES.size()))
                  .then(FORBIDDEN.inRow(1))
                  .otherwise(FORBIDDEN.inRow(NUMBER.plus(1))))
          .band(WINDOWS)
          .means(
              "How many rules that hold now leave out the day after: where there is one, the night ends at midnight.")
          .source("By definition; Monday comes after Sunday.")
          .build();

  public static final Column ALLOWED =
      Column.calculatedWord(
              NIGHTS,
              "allowed",
              "Allowed",
              new WordList.Fixed(List.of(YES, NO)),
              Formula.smaller(
                  Formula.number(1),
                  FORBIDDEN.plus(
                      Formula.when(SiteRules.WEEKDAYS.given())
                          .then(
                              Formula.number(1)
                                  .minus(Formula.lookup(SiteRules.WEEKDAYS, BY_DAY, NUMBER)))
                          .otherwise(0))))
          .band(WINDOWS)
          .means(
              "Whether the weekdays allowed on the site have the day among them, and no rule of the sheet DayRules leaves it out.")
          .source("From the weekdays allowed and the rules; any day where neither is given.")
          .build();

  public static final Column WORTH =
      Column.calculated(
              NIGHTS,
              "worth",
              "Number of the day",
              QuantityKind.COUNT,
              Formula.when(ALLOWED.is(YES))
                  .then(Formula.number(2).power(NUMBER.minus(1)))
                  .otherwise(0))
          .band(WINDOWS)
          .means(
              "1 for Monday, 2 for Tuesday, 4 for Wednesday and so on where the day is allowed: their sum says which set of weekdays is in force.")
          .source("By definition.")
          .build();

  public static final Column IN_FORCE =
      Column.calculatedWord(
              SITE,
              "weekdays-in-force",
              "Weekdays in force",
              new WordList.Published(NUMBERED_SETS),
              Formula.when(WORTH.sum().atMost(0))
                  .then(
                      Formula.refused(
                          "no day left",
                          "the weekdays allowed and the rules that hold have no day in common; allow a day on Site, or see which rules of the sheet DayRules hold"))
                  .otherwise(WORTH.sum().minus(1)))
          .band(RULES)
          .means("The weekdays on which the site may water now, by its own weekdays and all rules.")
          .source("The set whose days are worth that much together.")
          .build();

  public static final Column BY_RULE =
      Column.calculated(
              SITE,
              "days-by-rule",
              "Days a week by rule",
              QuantityKind.COUNT,
              Formula.smaller(
                  DroughtStages.DAYS,
                  Formula.when(HOLDS.sum().atMost(0))
                      .then(7)
                      .otherwise(NUMBERED_SETS.numbers("Days", QuantityKind.COUNT).of(IN_FORCE))))
          .band(RULES)
          .means(
              "Most days a week that the stage in force and the rules that hold leave; whatever days a zone is given, it waters on no more.")
          .source("The fewer of both; 7 where neither says anything.")
          .build();

  /** Longest gap between waterings with 1 to 7 days a week. */
  public static final List<Column> LONGEST_GAPS =
      IntStream.rangeClosed(1, 7).mapToObj(AllowedDays::gap).toList();

  private static final Rule NUMBER_WANTED =
      new Rule(
          "house-number-wanted",
          Severity.CHECK,
          SITE,
          ASKS_NUMBER.sum().above(0).and(HOUSE_NUMBER.given().negated()),
          HOUSE_NUMBER,
          "is not given, and rules of the sheet DayRules name days by it: none of those counts",
          "type the number of the address",
          List.of());

  private static Column closes(int day) {
    return Column.calculated(
            DAY_RULES,
            "closes-" + (day + 1),
            "Closes " + DAY_NAMES.get(day),
            QuantityKind.COUNT,
            Formula.when(DAYS.given())
                .then(HOLDS.times(Formula.number(1).minus(BY_DAY.get(day).of(DAYS))))
                .otherwise(0))
        .band(RULES)
        .means("1 where the rule holds here and now and does not allow the day.")
        .source("By definition.")
        .build();
  }

  private static Column gap(int days) {
    String heading = "Longest gap with " + days + " (days)";
    return Column.calculated(
            SITE,
            "longest-gap-" + days,
            "Longest gap, watering " + (days == 1 ? "1 day" : days + " days"),
            QuantityKind.DAYS,
            NUMBERED_SETS.numbers(heading, QuantityKind.DAYS).of(IN_FORCE))
        .band(RULES)
        .means(
            "Days from one watering to the next at the widest place of the week, with the best choice of up to so many of the"
                + " weekdays in force.")
        .source("By counting, over the week's end too; with any day in force, evenly spread days.")
        .build();
  }

  private static ReferenceTable numberedSets() {
    ReferenceTable sets = SiteRules.WEEKDAY_SETS;
    List<List<String>> rows = new ArrayList<>();
    IntStream.range(0, sets.size())
        .boxed()
        .sorted(Comparator.comparingInt(AllowedDays::worth))
        .forEach(
            row ->
                rows.add(
                    sets.headings().stream().map(heading -> sets.text(row, heading)).toList()));
    return ReferenceTable.arranged("WeekdaysByNumber", sets.headings(), rows);
  }

  private static int worth(int row) {
    return IntStream.range(0, DAY_NAMES.size())
        .map(day -> Integer.parseInt(SiteRules.WEEKDAY_SETS.text(row, DAY_NAMES.get(day))) << day)
        .sum();
  }

  /** Returns the columns of a rule in their order. */
  public static List<Column> ofRule() {
    return Stream.concat(
            Stream.of(RULE, STAGE, NUMBERS, DAYS, IN_STAGE, AT_HOUSE, HOLDS, ASKS_NUMBER),
            CLOSES.stream())
        .toList();
  }

  /** Returns what to tell a designer about the days. */
  public static List<Rule> rules() {
    return List.of(NUMBER_WANTED);
  }

  private AllowedDays() {}
}
