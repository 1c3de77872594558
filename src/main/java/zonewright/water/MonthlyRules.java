package zonewright.water;

import static zonewright.trade.Sheets.MONTHLY;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;

/** What to tell a designer about months in which a zone needs more than its baseline gives. */
final class MonthlyRules {
  private MonthlyRules() {}

  /** Returns a rule for each month, January first. */
  static List<Rule> all() {
    return IntStream.rangeClosed(1, Climate.MONTH_NAMES.size())
        .mapToObj(MonthlyRules::abovePeak)
        .toList();
  }

  private static Rule abovePeak(int month) {
    Column percent = MonthlySchedule.PERCENTS.get(month - 1);
    return new Rule(
            MonthlySchedule.id("above-peak", month),
            Severity.CHECK,
            MONTHLY,
            percent.above(1),
            percent,
            "asks {0} of its baseline in %s; it needs most in {1}"
                .formatted(Climate.MONTH_NAMES.get(month - 1)),
            "set its percent for that month by hand, or have each zone's baseline made for its own peak month",
            List.of(percent, MonthlySchedule.OWN_PEAK))
        .curedBy("Make each baseline for the zone's own peak month", MonthlyRules::zoneByZone);
  }

  private static Optional<Edit> zoneByZone(Book book, Reference cell, int row) {
    return Optional.of(
        new Edits(book).set(Peak.BASELINE.reference(), 0, new Entry.Words(Peak.OF_EACH_ZONE)));
  }
}
