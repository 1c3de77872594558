package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import zonewright.timetable.Cure;

/** What would make room in the nights, in words. */
final class CureWords {
  private final NightsPlan plan;
  private final NightNames names;

  CureWords(NightsPlan plan, NightNames names) {
    this.plan = plan;
    this.names = names;
  }

  /** Returns what to do and what it gives, as a clause. */
  String clause(Cure cure) {
    int left = cure.minutesStillMissing();
    return action(cure)
        + (left == 0
            ? ", after which every night is long enough"
            : ", after which " + left + " min are still missing");
  }

  private String action(Cure cure) {
    if (cure instanceof Cure.OtherNights others) {
      List<String> moves = new ArrayList<>();
      for (Cure.Move move : others.moves()) {
        String to = NightWords.day(move.to());
        moves.add(
            names.zone(move.zone()) + " on " + to + " instead of " + NightWords.day(move.from()));
      }
      return "water " + String.join(", ", moves);
    }
    if (cure instanceof Cure.SharedOut shared) {
      return "share the zones out over the nights: " + days(shared.days());
    }
    if (cure instanceof Cure.OneMoreValve more) {
      return "let " + more.rules().mostValvesAtOnce() + " valves run at once";
    }
    if (cure instanceof Cure.WiderWindows wider) {
      return "let " + String.join(", ", wider.shifts().stream().map(CureWords::shift).toList());
    }
    if (cure instanceof Cure.LaterClose later) {
      return "let every night close " + later.minutes() + " min later";
    }
    if (cure instanceof Cure.NoSoak noSoak) {
      return "give "
          + names.zones(noSoak.zones())
          + " emitters of a rate the soil takes in, so that no soak is needed";
    }
    return "use a controller that starts each zone by itself";
  }

  private String days(Map<Long, Set<DayOfWeek>> days) {
    List<String> zones = new ArrayList<>();
    for (NightsInput.Station station : plan.input().stations()) {
      Set<DayOfWeek> own = days.get(station.zone().number());
      if (own != null) {
        zones.add(NightNames.zone(station.sheet()) + " on " + NightWords.weekdays(own));
      }
    }
    return String.join(", ", zones);
  }

  private static String shift(Cure.Shift shift) {
    return "the window of %s %s %s min %s, at %s"
        .formatted(
            NightWords.day(shift.day()),
            shift.closes() ? "close" : "open",
            shift.minutes(),
            shift.closes() ? "later" : "earlier",
            NightWords.time(shift.at()));
  }

  /** Returns what a person would call it, where a setting does it. */
  String name(Cure cure) {
    if (cure instanceof Cure.OtherNights others) {
      return "Move to other nights: "
          + names.zones(others.moves().stream().map(Cure.Move::zone).distinct().toList());
    }
    if (cure instanceof Cure.SharedOut) {
      return "Share the zones out over the nights";
    }
    return cure instanceof Cure.OneMoreValve
        ? "Let one more valve run at once"
        : "Widen the hours by as much";
  }
}
