package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A night, named by the day its windows belong to.
 *
 * @param weekday that day's weekday
 * @param date its date, when the plan runs by dates; a weekly plan has none
 */
public record Night(DayOfWeek weekday, Optional<LocalDate> date) {
  /** A night of every week. */
  public static Night weekly(DayOfWeek weekday) {
    return new Night(weekday, Optional.empty());
  }

  /** The night of one date. */
  public static Night dated(LocalDate date) {
    return new Night(date.getDayOfWeek(), Optional.of(date));
  }

  /** The night a day later. */
  public Night next() {
    return new Night(weekday.plus(1), date.map(day -> day.plusDays(1)));
  }
}
