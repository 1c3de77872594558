package zonewright.nights;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.timetable.NightRules;
import zonewright.timetable.WateringDays;
import zonewright.trade.Sheets;
import zonewright.water.AllowedDates;
import zonewright.water.Controller;
import zonewright.water.Demand;
import zonewright.water.WateringPattern;

/** The days on which zones water, and their places in the order wished for. */
final class ZonePatterns {
  private final Book book;
  private final NightRules rules;

  ZonePatterns(Book book, NightRules rules) {
    this.book = book;
    this.rules = rules;
  }

  /**
   * Returns when a zone waters that can go {@code apart} days without; empty where its pattern
   * lacks something.
   */
  Optional<WateringDays> days(int row, int apart) {
    String own = word(WateringPattern.PATTERN, row);
    String dates = word(AllowedDates.IN_FORCE, 0);
    boolean datesOfTheSite = own.equals(WateringPattern.SITE) && !dates.equals(AllowedDates.ANY);
    String pattern = datesOfTheSite ? dates : own;
    return switch (pattern) {
      case WateringPattern.OWN ->
          weekdays(word(WateringPattern.OWN_DAYS, row)).map(WateringDays.OnWeekdays::new);
      case WateringPattern.INTERVAL -> {
        double every = book.number(WateringPattern.EVERY.reference(), row);
        yield Double.isNaN(every)
            ? Optional.empty()
            : Optional.of(new WateringDays.EveryFewDays((int) every));
      }
      case WateringPattern.ODD -> Optional.of(new WateringDays.OddDates());
      case WateringPattern.EVEN -> Optional.of(new WateringDays.EvenDates());
      case WateringPattern.SITE -> Optional.of(onSiteNights(row, apart));
      default -> Optional.empty();
    };
  }

  /** Returns what keeps the controller from choosing such days, if anything. */
  Optional<NightsInput.LeftOut.Why> cannot(WateringDays days) {
    String patterns = word(Controller.DAY_PATTERNS, 0);
    boolean all = patterns.equals(Controller.ALL_PATTERNS);
    boolean can = true;
    if (days instanceof WateringDays.EveryFewDays) {
      can = all || patterns.equals(Controller.WEEKDAYS_AND_INTERVALS);
    } else if (days instanceof WateringDays.OddDates || days instanceof WateringDays.EvenDates) {
      can = all || patterns.equals(Controller.WEEKDAYS_AND_DATES);
    }
    return can ? Optional.empty() : Optional.of(NightsInput.LeftOut.Why.OTHER_DAYS);
  }

  private WateringDays onSiteNights(int row, int apart) {
    int needed = (int) book.number(Demand.WATERINGS_A_WEEK.reference(), row);
    double real = book.number(Demand.LONGEST_GAP.reference(), row);
    // A gap that the watering days themselves leave too long is told with the zone.
    int gap = Double.isNaN(real) ? apart : Math.max(apart, (int) real);
    return new WateringDays.ChooseWeekdays(needed, Math.min(7, gap), rules.openDays());
  }

  private static Optional<Set<DayOfWeek>> weekdays(String set) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (List.of(set.split(" ", -1)).contains(NightWords.shortName(day))) {
        days.add(day);
      }
    }
    return days.isEmpty() ? Optional.empty() : Optional.of(days);
  }

  private String word(Column column, int row) {
    double position = book.number(column.reference(), row);
    return Double.isNaN(position) ? "" : book.choices(column).get((int) position);
  }

  /** Returns the place a zone should have in the order, where that costs no time. */
  OptionalInt order(int row) {
    double place = book.number(WateringPattern.ORDER.reference(), row);
    return Double.isNaN(place) ? OptionalInt.empty() : OptionalInt.of((int) place);
  }

  /** Adds the edits that let zones water on other weekdays; each is known by its number. */
  static void move(Book book, Map<Long, Set<DayOfWeek>> days, List<Edit> parts) {
    Edits edits = new Edits(book);
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      Set<DayOfWeek> then = days.get(book.contents().row(Sheets.ZONES, row).id());
      if (then != null) {
        Entry own = new Entry.Words(WateringPattern.OWN);
        Entry set = new Entry.Words(NightWords.weekdays(then));
        parts.add(edits.set(WateringPattern.PATTERN.reference(), row, own));
        parts.add(edits.set(WateringPattern.OWN_DAYS.reference(), row, set));
      }
    }
  }
}
