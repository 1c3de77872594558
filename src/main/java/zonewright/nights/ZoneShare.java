package zonewright.nights;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import zonewright.timetable.Undone;
import zonewright.timetable.ZoneWater;

/**
 * What a zone of the sheet gets from the nights of a plan. Every zone that counts has one, whether
 * it is placed or not.
 *
 * @param sheet the zone
 * @param state how much of it is placed
 * @param asked minutes of watering it asks for in the time of the plan; none where they are not
 *     known
 * @param placed minutes of it that are placed
 * @param inNoNight minutes that are not even among those a night has no room for; -1 where they are
 *     not known
 * @param why what keeps the rest out, in words; empty where there is none
 * @param needed minutes that its plants need in the time of the plan, before rounding; not a number
 *     where they are not known
 */
public record ZoneShare(
    NightsInput.SheetZone sheet,
    State state,
    OptionalInt asked,
    int placed,
    int inNoNight,
    String why,
    double needed) {
  private static final double ROUNDING = 1e-6;

  /** How much of a zone is placed. */
  public enum State {
    PLACED("placed"),
    IN_PART("placed in part"),
    NOT_PLACED("not placed"),
    /** It asks for no water, so there is nothing to place. */
    NO_WATER("asks for no water");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** Returns the words a person reads. */
    public String word() {
      return word;
    }
  }

  /** Says whether it gets all it asks for. */
  public boolean whole() {
    return state == State.PLACED || state == State.NO_WATER;
  }

  /** Returns the minutes left undone; none where what it asks for is not known. */
  public OptionalInt undone() {
    return asked.isPresent() ? OptionalInt.of(asked.getAsInt() - placed) : OptionalInt.empty();
  }

  /** Returns the minutes it is short of what its plants need; 0 where that is not known. */
  public double missing() {
    double missing = needed - placed;
    return missing > ROUNDING ? missing : 0;
  }

  /** Returns what part of the need is missing, 0 to 1. */
  public double missingShare() {
    return missing() == 0 ? 0 : missing() / needed;
  }

  /** Returns the zones short of their need, the one that lacks the greatest part first. */
  public static List<ZoneShare> suffering(List<ZoneShare> shares) {
    return shares.stream()
        .filter(share -> share.missing() > 0)
        .sorted(
            Comparator.comparingDouble(ZoneShare::missingShare)
                .thenComparingDouble(ZoneShare::missing)
                .reversed())
        .toList();
  }

  /** Returns what is missing as a person reads it, such as {@code 40 %}; empty where nothing is. */
  public String missingWords() {
    return missing() == 0 ? "" : Math.max(1, Math.round(missingShare() * 100)) + " %";
  }

  /** Returns all zones of a plan in the order of the sheet. */
  public static List<ZoneShare> of(NightsPlan plan) {
    NightNames names = new NightNames(plan);
    List<ZoneShare> shares = new ArrayList<>();
    plan.timetable().zones().forEach(zone -> shares.add(of(zone, names, plan.weeks())));
    plan.input().leftOut().forEach(zone -> shares.add(of(zone, plan)));
    shares.sort(Comparator.comparingInt(share -> share.sheet().row()));
    return shares;
  }

  private static ZoneShare of(ZoneWater water, NightNames names, int weeks) {
    State state =
        water.undone().isEmpty()
            ? State.PLACED
            : water.minutesPlaced() == 0 ? State.NOT_PLACED : State.IN_PART;
    List<String> why = new ArrayList<>();
    water
        .undone()
        .forEach(
            (reason, minutes) ->
                why.add(
                    state == State.NOT_PLACED && water.undone().size() == 1
                        ? words(reason)
                        : minutes + " min: " + words(reason)));
    NightsInput.SheetZone sheet = names.sheet(water.zone());
    return new ZoneShare(
        sheet,
        state,
        OptionalInt.of(water.minutesAsked()),
        water.minutesPlaced(),
        (water.waterings() - water.nights().size()) * water.zone().minutesPerNight(),
        String.join("; ", why),
        sheet.needAWeek() * weeks);
  }

  private static ZoneShare of(NightsInput.LeftOut zone, NightsPlan plan) {
    OptionalInt asked = zone.minutesAsked();
    if (asked.isPresent()) {
      asked = OptionalInt.of(asked.getAsInt() * plan.weeks());
    }
    double needed = zone.sheet().needAWeek() * plan.weeks();
    boolean needsNone = zone.why() == NightsInput.LeftOut.Why.NO_WATER;
    return new ZoneShare(
        zone.sheet(),
        needsNone ? State.NO_WATER : State.NOT_PLACED,
        asked,
        0,
        asked.orElse(-1),
        switch (zone.why()) {
          case NO_WATER -> needed > 0 ? "the stage leaves it none" : "";
          case LACKS_FIGURES -> "its cycles, minutes or flow are not known yet";
          case LACKS_DAYS -> "its days are not known yet";
          case TOO_LONG -> "its cycles and soaks fit no night";
          case OTHER_DAYS -> "the controller cannot choose its days";
          case OVER_STATIONS -> "the controller has too few stations";
        },
        needed);
  }

  /** Returns what stands in the way of water, in words. */
  public static String words(Undone.Why why) {
    return switch (why) {
      case OVER_FLOW -> "it alone draws more than the available flow";
      case CLOSED_NIGHTS -> "too few of its nights are open";
      case NO_COMMON_HOURS -> "the nights of its program have no hours in common";
      case AFTER_CLOSE -> "the nights are too short";
      case OVER_STARTS -> "the controller has too few starts";
      case OVER_LONGEST_RUN -> "the controller lets a station run no longer";
      case OVER_PROGRAMS -> "the controller has too few programs";
    };
  }

  /** Returns the time that the minutes of a plan are of, such as {@code a week}. */
  public static String period(NightsPlan plan) {
    return plan.weekly() ? "a week" : "in the dates of the plan";
  }

  /** Returns what it gets as a clause, such as {@code zone 3, lawn: 24 of 36 min a week placed}. */
  public String line(NightsPlan plan) {
    String zone = NightNames.withPlace(sheet) + ": ";
    return switch (state) {
      case PLACED -> zone + placed + " min " + period(plan) + " placed";
      case IN_PART ->
          zone
              + placed
              + " of "
              + asked.orElse(placed)
              + " min "
              + period(plan)
              + " placed; not placed "
              + why;
      case NOT_PLACED -> zone + "not placed, " + why;
      case NO_WATER -> zone + "asks for no water";
    };
  }

  /** Returns how many zones are placed, as a sentence. */
  public static String summary(List<ZoneShare> shares) {
    long part = shares.stream().filter(share -> share.state() == State.IN_PART).count();
    long none = shares.stream().filter(share -> share.state() == State.NOT_PLACED).count();
    if (part + none == 0) {
      return "Every zone is placed.";
    }
    List<String> counts = new ArrayList<>();
    counts.add(shares.size() - part - none + " placed");
    if (part > 0) {
      counts.add(part + " placed in part");
    }
    if (none > 0) {
      counts.add(none + " not placed");
    }
    return "Of "
        + shares.size()
        + (shares.size() == 1 ? " zone " : " zones ")
        + String.join(", ", counts)
        + ".";
  }
}
