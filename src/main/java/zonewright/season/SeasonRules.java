package zonewright.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.balance.WateringRule;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.nights.MonthBook;
import zonewright.savings.Use;
import zonewright.sheet.Book;
import zonewright.units.Units;
import zonewright.water.Controller;

/** What can drive the schedule of a design: the same always, by month, by day, and as found. */
public enum SeasonRules {
  FIXED("fixed", "baseline fixed", "The baseline at one percent all the time."),
  MONTHLY(
      "monthly",
      "percent by month",
      "The percent to key in of each month, as the sheet Months has it."),
  DAILY(
      "daily",
      "percent by day",
      "A percent each day: reference ET of the days before, as a part of that of the peak month, in the controller's steps."),
  FOUND(
      "found",
      "as found",
      "The zones of the sheet Found as their controller runs them now, with its seasonal setting of each month.");

  /** Least, most and days of the mean of a percent by day; common practice, no source. */
  private static final double LEAST = 0;

  private static final double MOST = 1.5;
  private static final int DAYS_OF_MEAN = 3;

  private final String word;
  private final String label;
  private final String meaning;

  SeasonRules(String word, String label, String meaning) {
    this.word = word;
    this.label = label;
    this.meaning = meaning;
  }

  /** Returns the word by which commands know it. */
  public String word() {
    return word;
  }

  /** Returns what a person chooses it by. */
  public String label() {
    return label;
  }

  /** Returns what it is, as a sentence. */
  public String meaning() {
    return meaning;
  }

  @Override
  public String toString() {
    return label;
  }

  /** Returns the rule of a word. */
  public static Optional<SeasonRules> named(String word) {
    for (SeasonRules rule : values()) {
      if (rule.word.equalsIgnoreCase(word.strip())) {
        return Optional.of(rule);
      }
    }
    return Optional.empty();
  }

  /** Returns the setting for a design; empty where the design lacks what it needs. */
  public Optional<WateringRule.Setting> setting(Book book) {
    return switch (this) {
      case FIXED -> Optional.of(new WateringRule.Fixed(1));
      case MONTHLY -> {
        List<MonthBook.Month> months = MonthBook.toKeyIn(book);
        yield months.size() < Climate.MONTH_NAMES.size()
            ? Optional.empty()
            : Optional.of(
                new WateringRule.Monthly(months.stream().map(MonthBook.Month::share).toList()));
      }
      case DAILY -> {
        double peak = book.number(Peak.REFERENCE_ET.reference(), 0);
        double step = book.number(Controller.PERCENT_STEP.reference(), 0);
        double reference =
            Peak.REFERENCE_ET.kind().unit(book.system()).convert(peak, Units.MILLIMETRE_PER_DAY);
        yield reference > 0 && step > 0
            ? Optional.of(new WateringRule.Daily(reference, step, LEAST, MOST, DAYS_OF_MEAN))
            : Optional.empty();
      }
      case FOUND -> {
        List<Double> settings = new ArrayList<>();
        for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
          double setting = book.number(Use.SETTING.reference(), month);
          settings.add(Double.isNaN(setting) ? 1 : setting);
        }
        yield Optional.of(new WateringRule.Monthly(settings));
      }
    };
  }

  /** Returns what a design lacks for it, as a sentence. */
  public String lacks() {
    return switch (this) {
      case FIXED -> "The baseline is not known.";
      case MONTHLY -> "The months have no percent to key in yet: see the sheet Months.";
      case DAILY -> "The reference ET of the peak month is not known: see the sheet Site.";
      case FOUND -> "No zone stands on the sheet Found.";
    };
  }
}
