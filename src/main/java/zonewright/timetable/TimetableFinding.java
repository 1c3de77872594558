package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Something about a site's nights that the designer should know, as data. */
public sealed interface TimetableFinding {
  /** None of the weekdays on which it may water is open. */
  record NoOpenDay(Subject subject, Set<DayOfWeek> days) implements TimetableFinding {
    /** Keeps a copy. */
    public NoOpenDay {
      days = Set.copyOf(days);
    }
  }

  /** Some of the weekdays that were fixed are closed; the others are kept. */
  record ClosedDays(Subject subject, Set<DayOfWeek> closed, Set<DayOfWeek> kept)
      implements TimetableFinding {
    /** Keeps copies. */
    public ClosedDays {
      closed = Set.copyOf(closed);
      kept = Set.copyOf(kept);
    }
  }

  /** Fewer days are open than are needed. */
  record TooFewDays(Subject subject, int needed, int open) implements TimetableFinding {}

  /**
   * The waterings are further apart than they may be.
   *
   * @param longest most days from one watering to the next that it can take
   * @param days how many days a week it waters
   * @param waits days it waits on the best choice of so many days
   * @param enough how many of its allowed days would do; none where no choice of them does
   */
  record GapTooLong(Subject subject, int longest, int days, int waits, OptionalInt enough)
      implements TimetableFinding {}

  /** Of the dates on which a zone should water, some fall on closed days. */
  record LostDates(WateredZone zone, int lost, int due) implements TimetableFinding {}

  /** One cycle is longer than every window of the night. */
  record CycleOverWindow(WateredZone zone, DayOfWeek day, int longest)
      implements TimetableFinding {}

  /** The zone's cycles and soaks alone outlast the night. */
  record SpanOverWindow(WateredZone zone, DayOfWeek day, int needed, int given)
      implements TimetableFinding {}

  /** One start of a program is longer than every window of its nights. */
  record StartOverWindow(ProgramPart program, int minutes, int longest)
      implements TimetableFinding {}

  /**
   * Stations of one program need other days or cycles; it is keyed in as several.
   *
   * @param examples the first station of each part
   */
  record ProgramSplit(long program, List<WateredZone> examples) implements TimetableFinding {
    /** Keeps a copy. */
    public ProgramSplit {
      examples = List.copyOf(examples);
    }
  }

  /**
   * Stations are keyed in with other days or cycles than the sheet has, so that the programs of the
   * controller suffice; they get no less water.
   *
   * @param zones as they are keyed in
   */
  record KeyedTogether(long program, List<WateredZone> zones) implements TimetableFinding {
    /** Keeps a copy. */
    public KeyedTogether {
      zones = List.copyOf(zones);
    }
  }

  /** A night shares no hours with those before it, and the program starts alike on all of them. */
  record NoCommonHours(ProgramPart program, DayOfWeek first, DayOfWeek other)
      implements TimetableFinding {}

  /** The soak before the next night's first cycle is not kept. */
  record RestBetweenNights(WateredZone zone) implements TimetableFinding {}

  /** Over the week's end a zone may start before its soak has passed. */
  record RestOverWeeksEnd() implements TimetableFinding {}
}
