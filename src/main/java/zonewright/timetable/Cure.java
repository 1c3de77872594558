package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A change that would make nights fit, tried by calculation.
 *
 * @param kind what sort of change
 * @param sentence what to change, and what it gives
 * @param zones names of the zones it touches; empty when it touches the site
 * @param changes how many settings change
 * @param change the settings it changes; none where someone must change the hardware
 * @param minutesStillMissing minutes by which nights would still run over, all nights together; 0
 *     when everything fits
 */
public record Cure(
    Kind kind,
    String sentence,
    List<String> zones,
    int changes,
    Change change,
    int minutesStillMissing) {

  /** The settings as they would be. */
  public sealed interface Change {
    /**
     * Zones that water on other weekdays.
     *
     * @param days the new weekdays by the names of the zones
     */
    record Days(Map<String, Set<DayOfWeek>> days) implements Change {
      /** Keeps a copy. */
      public Days {
        days = Map.copyOf(days);
      }
    }

    /** Other rules of the site. */
    record Rules(NightRules rules) implements Change {}

    /** Nothing that a setting could do. */
    record Hardware() implements Change {}
  }

  /** Sorts of cures; those nearer the top change less. */
  public enum Kind {
    /** A few zones water on another night. */
    ANOTHER_NIGHT,
    /** One more valve open at once. */
    ONE_MORE_VALVE,
    /** A window that closes later or opens earlier. */
    WIDER_WINDOW,
    /** The zones are shared out anew over all open days. */
    SPLIT_DAYS,
    /** Zones that need no soak: emitters whose rate the soil can take. */
    NO_SOAK,
    /** A controller that can start each zone by itself. */
    ANOTHER_CONTROLLER
  }

  /**
   * The order of cures: first those after which everything fits, then those that leave less
   * missing; then settings before hardware, then fewer changed settings, then the order of {@link
   * Kind}.
   */
  static final Comparator<Cure> SMALLEST_CHANGE_FIRST =
      Comparator.comparingInt(Cure::minutesStillMissing)
          .thenComparing(cure -> cure.change() instanceof Change.Hardware)
          .thenComparingInt(Cure::changes)
          .thenComparing(Cure::kind);

  /** Keeps a copy. */
  public Cure {
    zones = List.copyOf(zones);
  }
}
