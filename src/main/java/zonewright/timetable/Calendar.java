package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The days a plan covers and which zones water on each: one week that repeats, or eight weeks of
 * dates.
 */
final class Calendar {
  private static final int DATED_DAYS = Timetable.DATED_WEEKS * DayOfWeek.values().length;

  private final List<Waterings> zones;
  private final NightRules rules;
  private final List<Night> nights = new ArrayList<>();
  private final boolean weekly;

  /** For a zone that waters every few days, its first day; otherwise unused. */
  private final int[] phase;

  Calendar(
      List<Waterings> zones,
      NightRules rules,
      LocalDate firstDay,
      List<Set<DayOfWeek>> days,
      boolean weekly) {
    this.zones = zones;
    this.rules = rules;
    this.weekly = weekly;
    this.phase = new int[zones.size()];
    if (weekly) {
      for (DayOfWeek day : DayOfWeek.values()) {
        nights.add(Night.weekly(day));
      }
    } else {
      for (int i = 0; i < DATED_DAYS; i++) {
        nights.add(Night.dated(firstDay.plusDays(i)));
      }
      choosePhases(days);
    }
  }

  /** True when the plan is one week that repeats. */
  boolean weekly() {
    return weekly;
  }

  List<Night> nights() {
    return nights;
  }

  /**
   * Numbers of the zones that water on the given day of the plan, when the weekdays are as given;
   * none on a closed day.
   */
  List<Integer> zonesOn(int day, List<Set<DayOfWeek>> days) {
    List<Integer> result = new ArrayList<>();
    if (!rules.windowsOn(nights.get(day).weekday()).isEmpty()) {
      for (int i = 0; i < zones.size(); i++) {
        if (due(i, day, days)) {
          result.add(i);
        }
      }
    }
    return result;
  }

  /** The nights on which each zone waters. */
  List<List<Night>> nightsOfEach(List<Set<DayOfWeek>> days) {
    List<List<Night>> nightsOf = new ArrayList<>();
    zones.forEach(zone -> nightsOf.add(new ArrayList<>()));
    for (int day = 0; day < nights.size(); day++) {
      for (int zone : zonesOn(day, days)) {
        nightsOf.get(zone).add(nights.get(day));
      }
    }
    return nightsOf;
  }

  /** True when the zone's own rule asks for water on that day, open or not. */
  boolean due(int zone, int day, List<Set<DayOfWeek>> days) {
    WateringDays rule = zones.get(zone).days();
    return byWeekday(rule)
        ? days.get(zone).contains(nights.get(day).weekday())
        : onDate(rule, day, phase[zone]);
  }

  private boolean onDate(WateringDays rule, int day, int first) {
    if (rule instanceof WateringDays.EveryFewDays interval) {
      return day % interval.days() == first;
    }
    boolean odd = nights.get(day).date().orElseThrow().getDayOfMonth() % 2 == 1;
    return odd == rule instanceof WateringDays.OddDates;
  }

  /** The first day of a zone that waters every few days. */
  int firstDay(int zone) {
    return phase[zone];
  }

  /**
   * How often in the days of the plan a rule asks for water, on open days or not.
   *
   * @param first the first day, where it asks for water every few days
   */
  int asked(WateringDays rule, int first) {
    int weeks = nights.size() / DayOfWeek.values().length;
    if (rule instanceof WateringDays.OnWeekdays fixed) {
      return weeks * fixed.weekdays().size();
    }
    if (rule instanceof WateringDays.ChooseWeekdays free) {
      return weeks * free.daysNeeded();
    }
    return (int) IntStream.range(0, nights.size()).filter(day -> onDate(rule, day, first)).count();
  }

  /** True where all zones water by weekdays, so that a week says all. */
  static boolean weekly(List<WateredZone> zones) {
    return zones.stream().allMatch(zone -> byWeekday(zone.days()));
  }

  private static boolean byWeekday(WateringDays days) {
    return days instanceof WateringDays.OnWeekdays || days instanceof WateringDays.ChooseWeekdays;
  }

  /**
   * First days so that the nights are even: the largest zones first, each where it adds least to
   * the squares of the loads.
   */
  private void choosePhases(List<Set<DayOfWeek>> days) {
    long[] load = new long[nights.size()];
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      if (zones.get(i).days() instanceof WateringDays.EveryFewDays) {
        open.add(i);
      } else {
        addTo(load, i, days);
      }
    }
    open.sort((a, b) -> zones.get(b).minutes() - zones.get(a).minutes());
    for (int zone : open) {
      int interval = ((WateringDays.EveryFewDays) zones.get(zone).days()).days();
      int minutes = zones.get(zone).minutes();
      double least = Double.POSITIVE_INFINITY;
      int best = 0;
      for (int first = 0; first < interval; first++) {
        double cost = 0;
        for (int day = first; day < load.length; day += interval) {
          // A closed day is a watering lost: worth more than any crowding.
          boolean closed = rules.windowsOn(nights.get(day).weekday()).isEmpty();
          cost += closed ? 1e12 : 2.0 * load[day] * minutes + (double) minutes * minutes;
        }
        if (cost < least) {
          least = cost;
          best = first;
        }
      }
      phase[zone] = best;
      addTo(load, zone, days);
    }
  }

  private void addTo(long[] load, int zone, List<Set<DayOfWeek>> days) {
    for (int day = 0; day < load.length; day++) {
      if (due(zone, day, days)) {
        load[day] += zones.get(zone).minutes();
      }
    }
  }
}
