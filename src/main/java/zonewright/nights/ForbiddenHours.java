package zonewright.nights;

import java.time.DayOfWeek;
import java.util.Optional;
import zonewright.sheet.Book;
import zonewright.timetable.Cure;
import zonewright.timetable.NightRules;
import zonewright.timetable.WateringWindow;
import zonewright.water.AllowedDays;
import zonewright.water.DroughtStages;

/** The hours and days on which rules let no water run, which no cure may open. */
final class ForbiddenHours {
  private final Book book;
  private final double from;
  private final double until;

  ForbiddenHours(Book book) {
    this.book = book;
    this.from = book.number(DroughtStages.CLOSED_FROM.reference(), 0);
    this.until = book.number(DroughtStages.CLOSED_UNTIL.reference(), 0);
  }

  /** Says whether a cure keeps out of them. */
  boolean leave(Cure cure) {
    Optional<NightRules> then = Optional.empty();
    if (cure instanceof Cure.WiderWindows wider) {
      then = Optional.of(wider.rules());
    } else if (cure instanceof Cure.LaterClose later) {
      then = Optional.of(later.rules());
    }
    return then.stream()
        .flatMap(rules -> rules.openDays().stream().map(day -> keeps(rules, day)))
        .allMatch(kept -> kept);
  }

  private boolean keeps(NightRules rules, DayOfWeek day) {
    double against = book.number(AllowedDays.NEXT_FORBIDDEN.reference(), day.getValue() - 1);
    return rules.windowsOn(day).stream()
        .allMatch(
            window ->
                !meets(window, 0)
                    && !meets(window, WateringWindow.DAY)
                    && !(against > 0 && window.endMinute() > WateringWindow.DAY));
  }

  private boolean meets(WateringWindow window, int later) {
    return from < until
        && window.startMinute() < until + later
        && window.endMinute() > from + later;
  }
}
