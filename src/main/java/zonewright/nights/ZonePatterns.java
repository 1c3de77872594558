package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.timetable.NightRules;
import zonewright.timetable.WateringDays;
import zonewright.water.Demand;

/** The days on which zones water, and their places in the order wished for. */
final class ZonePatterns {
  private final Book book;
  private final NightRules rules;
  private final List<NightFinding> findings = new ArrayList<>();

  ZonePatterns(Book book, NightRules rules) {
    this.book = book;
    this.rules = rules;
  }

  /** Returns when a zone waters that can go {@code apart} days without. */
  WateringDays days(int row, int apart) {
    int needed = (int) book.number(Demand.WATERING_DAYS.reference(), row);
    double real = book.number(Demand.LONGEST_GAP.reference(), row);
    // A gap that the watering days themselves leave too long is told with the zone.
    int gap = Double.isNaN(real) ? apart : Math.max(apart, (int) real);
    return new WateringDays.ChooseWeekdays(needed, Math.min(7, gap), rules.openDays());
  }

  /** Returns the place a zone should have in the order, where that costs no time. */
  OptionalInt order(int row) {
    return OptionalInt.empty();
  }

  /** Adds the edits that let zones water on other weekdays, by their names in the timetable. */
  static void move(
      Book book, NightsInput from, Map<String, Set<DayOfWeek>> days, List<Edit> parts) {}

  /** Returns what was noticed. */
  List<NightFinding> findings() {
    return List.copyOf(findings);
  }
}
