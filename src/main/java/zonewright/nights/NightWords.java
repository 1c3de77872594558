package zonewright.nights;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import zonewright.timetable.Night;
import zonewright.timetable.NightPlan;
import zonewright.units.CalendarText;
import zonewright.water.AllowedDays;

/** Nights and minutes of nights in words. */
public final class NightWords {
  private static final int MOST_DATES = 6;

  private NightWords() {}

  /** Returns the time of a minute counted from midnight of the night's day, as {@code 02:15}. */
  public static String time(int minute) {
    return CalendarText.time(CalendarText.timeOfDay(minute));
  }

  /** Returns the name of a weekday. */
  public static String day(DayOfWeek day) {
    return AllowedDays.DAY_NAMES.get(day.getValue() - 1);
  }

  /** Returns the names of weekdays, from Monday on. */
  static String days(Set<DayOfWeek> days) {
    return String.join(", ", new TreeSet<>(days).stream().map(NightWords::day).toList());
  }

  /** Returns days counted, such as {@code 1 day}. */
  static String counted(int days) {
    return days == 1 ? "1 day" : days + " days";
  }

  /** Returns what to call a night: its weekday, with the date where there is one. */
  public static String label(Night night) {
    return day(night.weekday()) + night.date().map(day -> " " + day).orElse("");
  }

  /** Returns a weekday as in sets of weekdays, such as {@code Mon}. */
  public static String shortName(DayOfWeek day) {
    return day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  /** Returns a set of weekdays as in the table of such sets, such as {@code Mon Wed Fri}. */
  public static String weekdays(Set<DayOfWeek> days) {
    List<String> names = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      if (days.contains(day)) {
        names.add(shortName(day));
      }
    }
    return String.join(" ", names);
  }

  /** Returns nights in a few words: weekdays, or the first dates and how many more. */
  public static String nights(List<Night> nights) {
    if (nights.stream().anyMatch(night -> night.date().isPresent())) {
      List<String> dates =
          nights.stream().map(night -> night.date().orElseThrow().toString()).toList();
      int more = dates.size() - MOST_DATES;
      return more > 1
          ? String.join(", ", dates.subList(0, MOST_DATES)) + " and " + more + " more"
          : String.join(", ", dates);
    }
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    nights.forEach(night -> days.add(night.weekday()));
    return days.size() == DayOfWeek.values().length ? "every night" : weekdays(days);
  }

  /** Returns some minutes as times, such as {@code 22:00, 23:10}. */
  public static String times(List<Integer> minutes) {
    return String.join(", ", minutes.stream().map(NightWords::time).toList());
  }

  /** Returns a sentence with a capital in front. */
  public static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  /** Returns the hours of a night, such as {@code 22:00 to 06:00}. */
  public static String hours(NightPlan night) {
    return night.windows().stream()
        .map(window -> time(window.startMinute()) + " to " + time(window.endMinute()))
        .collect(Collectors.joining(" and "));
  }

  /** Returns when a night with runs is done, and how near that is to the least there can be. */
  public static String result(NightPlan night) {
    boolean over = night.overrunMinutes() > 0;
    boolean all = night.undone().isEmpty();
    boolean least = night.lengthMinutes() == night.boundMinutes();
    return (all ? "done at " : "with room for all done at ")
        + time(night.finishMinute())
        + " after "
        + length(night.lengthMinutes())
        + (over ? ", " + length(night.overrunMinutes()) + " more than there is" : "")
        + (least
            ? ", which no arrangement beats"
            : ", proven to take at least " + length(night.boundMinutes()));
  }

  /** Returns which zones find no room in a night and with how many minutes; empty where all do. */
  public static String noRoom(NightPlan night, NightNames names) {
    List<String> zones = new ArrayList<>();
    night
        .undoneMinutes()
        .forEach((zone, minutes) -> zones.add(names.zone(zone) + " (" + minutes + " min)"));
    return String.join(", ", zones);
  }

  /** Returns minutes as hours and minutes, such as {@code 5 h 12 min}. */
  public static String length(int minutes) {
    String rest = minutes % 60 + " min";
    return minutes < 60
        ? rest
        : minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + rest;
  }
}
