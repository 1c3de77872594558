package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A change that would make nights fit, tried by calculation. */
public sealed interface Cure {
  /** How many settings change. */
  int changes();

  /** Minutes by which nights would still run over, all nights together; 0 when everything fits. */
  int minutesStillMissing();

  /**
   * A few zones water on another night.
   *
   * @param moves the moves, one after another
   * @param days the weekdays of the zones moved, by their numbers
   */
  record OtherNights(List<Move> moves, Map<Long, Set<DayOfWeek>> days, int minutesStillMissing)
      implements Cure {
    /** Keeps copies. */
    public OtherNights {
      moves = List.copyOf(moves);
      days = Map.copyOf(days);
    }

    @Override
    public int changes() {
      return days.size();
    }
  }

  /** A zone that waters on one weekday instead of another. */
  record Move(WateredZone zone, DayOfWeek from, DayOfWeek to) {}

  /**
   * One more valve open at once.
   *
   * @param rules the rules as they would be
   */
  record OneMoreValve(NightRules rules, int minutesStillMissing) implements Cure {
    @Override
    public int changes() {
      return 1;
    }
  }

  /**
   * Windows that close later or open earlier.
   *
   * @param shifts the times that change
   * @param rules the rules as they would be
   */
  record WiderWindows(List<Shift> shifts, NightRules rules, int minutesStillMissing)
      implements Cure {
    /** Keeps a copy. */
    public WiderWindows {
      shifts = List.copyOf(shifts);
    }

    @Override
    public int changes() {
      return (int) shifts.stream().map(Shift::day).distinct().count();
    }
  }

  /**
   * A time of a window that changes.
   *
   * @param day the night
   * @param closes whether it is the closing time, put later; else the opening, put earlier
   * @param minutes by how much
   * @param at the time then, counted from the day's midnight
   */
  record Shift(DayOfWeek day, boolean closes, int minutes, int at) {}

  /**
   * All nights close later alike.
   *
   * @param minutes by how much, as far as the nights let it
   * @param rules the rules as they would be
   */
  record LaterClose(int minutes, NightRules rules, int changes, int minutesStillMissing)
      implements Cure {}

  /**
   * The zones are shared out anew over all open days.
   *
   * @param days the weekdays of the zones that change, by their numbers, in the order of the zones
   */
  record SharedOut(Map<Long, Set<DayOfWeek>> days, int minutesStillMissing) implements Cure {
    /** Keeps a copy in the same order. */
    public SharedOut {
      days = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(days));
    }

    @Override
    public int changes() {
      return days.size();
    }
  }

  /** Zones that need no soak: emitters whose rate the soil can take. */
  record NoSoak(List<WateredZone> zones, int minutesStillMissing) implements Cure {
    /** Keeps a copy. */
    public NoSoak {
      zones = List.copyOf(zones);
    }

    @Override
    public int changes() {
      return zones.size();
    }
  }

  /** A controller that can start each zone by itself. */
  record OtherController(int minutesStillMissing) implements Cure {
    @Override
    public int changes() {
      return 1;
    }
  }

  /** Says whether someone must change the hardware; a setting does not do it. */
  default boolean ofHardware() {
    return this instanceof NoSoak || this instanceof OtherController;
  }

  /**
   * The order of cures: first those after which everything fits, then those that leave less
   * missing; then settings before hardware, then fewer changed settings.
   */
  Comparator<Cure> SMALLEST_CHANGE_FIRST =
      Comparator.comparingInt(Cure::minutesStillMissing)
          .thenComparing(Cure::ofHardware)
          .thenComparingInt(Cure::changes);
}
