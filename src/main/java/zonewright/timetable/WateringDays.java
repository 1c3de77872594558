package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** On which days a zone waters. */
public sealed interface WateringDays {

  /** The weekdays the designer fixed. */
  record OnWeekdays(Set<DayOfWeek> weekdays) implements WateringDays {
    /** Keeps a copy; at least one day. */
    public OnWeekdays {
      Require.that(!weekdays.isEmpty(), "A zone needs at least one weekday to water on.");
      weekdays = Collections.unmodifiableSet(EnumSet.copyOf(weekdays));
    }
  }

  /**
   * Weekdays to be chosen so that nights are even.
   *
   * @param daysNeeded watering days a week, 1 to 7
   * @param longestGap most days from one watering to the next, 1 to 7, over the week's end too
   * @param allowed weekdays to choose from
   */
  record ChooseWeekdays(int daysNeeded, int longestGap, Set<DayOfWeek> allowed)
      implements WateringDays {
    /** Checks the ranges and keeps a copy. */
    public ChooseWeekdays {
      Require.between(daysNeeded, 1, 7, "Watering days a week");
      Require.between(longestGap, 1, 7, "The longest gap between waterings in days");
      Require.that(!allowed.isEmpty(), "At least one weekday must be allowed.");
      allowed = Collections.unmodifiableSet(EnumSet.copyOf(allowed));
    }
  }

  /** Every so many days, whatever the weekday. The first day is chosen so that nights are even. */
  record EveryFewDays(int days) implements WateringDays {
    /** Checks the range, 1 to 31 days. */
    public EveryFewDays {
      Require.between(days, 1, 31, "The interval between waterings in days");
    }
  }

  /**
   * Odd dates: the 1st, 3rd, 5th and so on. After a month of 31 days two odd dates follow each
   * other.
   */
  record OddDates() implements WateringDays {}

  /** Even dates: the 2nd, 4th, 6th and so on. */
  record EvenDates() implements WateringDays {}
}
