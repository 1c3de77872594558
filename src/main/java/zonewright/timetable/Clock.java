package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Collection;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Days and times as words in findings. */
final class Clock {
  private Clock() {}

  static String name(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  static String names(Collection<DayOfWeek> days) {
    return new TreeSet<>(days).stream().map(Clock::name).collect(Collectors.joining(", "));
  }

  static String time(int minute) {
    int day = Math.floorMod(minute, WateringWindow.DAY);
    return String.format(Locale.ROOT, "%02d:%02d", day / 60, day % 60);
  }
}
