package zonewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What to change after looking at the zones, never more than one step at a time.
 *
 * @param kind what the advice comes to
 * @param site the site tuning to set, where it changes
 * @param zones the tuning to set for zones that change, by their place from 0
 * @param sentence what to do, in one sentence
 * @param reasons why, a sentence each
 */
public record TuningAdvice(
    Kind kind,
    Optional<Double> site,
    SortedMap<Integer, Double> zones,
    String sentence,
    List<String> reasons) {
  /** What the advice comes to. */
  public enum Kind {
    /** Nobody has looked yet. */
    NOTHING_YET,
    /** Too little was looked at. */
    LOOK_AT_MORE,
    /** All is well. */
    KEEP,
    /** The tuning of the whole site. */
    SITE,
    /** The tuning of single zones. */
    ZONES,
    /** The controller's climate value, sensor or shut-off before any tuning. */
    CONTROLLER
  }

  public TuningAdvice {
    zones = new TreeMap<>(zones);
    reasons = List.copyOf(reasons);
  }

  /** Says whether there is anything to set. */
  public boolean changes() {
    return site.isPresent() || !zones.isEmpty();
  }

  /** Returns the advice for a state of things. */
  public static TuningAdvice on(TuningState state) {
    return new TuningAdvisor(state).advice();
  }
}
