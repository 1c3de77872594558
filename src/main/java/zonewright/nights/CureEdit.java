package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.timetable.Cure;
import zonewright.timetable.NightRules;
import zonewright.timetable.WateringWindow;
import zonewright.units.CalendarText;

/**
 * Types the settings that a cure asks for.
 *
 * @param cure what should change
 * @param from what the timetable was made from
 */
record CureEdit(Cure cure, NightsInput from) implements Remedy.Maker {
  @Override
  public Optional<Edit> edit(Book book, Reference cell, int row) {
    boolean same =
        NightsReading.of(book)
            .input()
            .filter(now -> now.problem().equals(from.problem()))
            .isPresent();
    if (!same) {
      return Optional.empty();
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    if (cure instanceof Cure.OtherNights others) {
      ZonePatterns.move(book, others.days(), parts);
    } else if (cure instanceof Cure.SharedOut shared) {
      ZonePatterns.move(book, shared.days(), parts);
    } else if (cure instanceof Cure.OneMoreValve more) {
      rules(more.rules(), edits, parts);
    } else if (cure instanceof Cure.WiderWindows wider) {
      rules(wider.rules(), edits, parts);
    } else if (cure instanceof Cure.LaterClose later) {
      rules(later.rules(), edits, parts);
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(new Edit.Several("cure", parts));
  }

  private void rules(NightRules then, Edits edits, List<Edit> parts) {
    if (then.mostValvesAtOnce() != from.rules().mostValvesAtOnce()) {
      Entry count = new Entry.Figure(then.mostValvesAtOnce());
      parts.add(edits.set(SiteNights.MOST_VALVES.reference(), 0, count));
    }
    for (DayOfWeek day : DayOfWeek.values()) {
      List<WateringWindow> windows = then.windowsOn(day);
      if (windows.isEmpty() || windows.equals(from.rules().windowsOn(day))) {
        continue;
      }
      int row = day.getValue() - 1;
      window(windows.get(0), NightSheet.OPENS.reference(), NightSheet.CLOSES.reference())
          .forEach((column, time) -> parts.add(edits.set(column, row, time)));
      if (windows.size() > 1) {
        window(
                windows.get(1),
                NightSheet.OPENS_AGAIN.reference(),
                NightSheet.CLOSES_AGAIN.reference())
            .forEach((column, time) -> parts.add(edits.set(column, row, time)));
      }
    }
  }

  private static Map<Reference, Entry> window(
      WateringWindow window, Reference opens, Reference closes) {
    return Map.of(
        opens, new Entry.Figure(CalendarText.timeOfDay(window.startMinute())),
        closes, new Entry.Figure(CalendarText.timeOfDay(window.endMinute())));
  }
}
