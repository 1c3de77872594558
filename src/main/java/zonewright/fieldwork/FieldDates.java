package zonewright.fieldwork;

import java.time.LocalDate;
import zonewright.sheet.Bounds;
import zonewright.units.CalendarText;
import zonewright.units.Units;

/** Which days can be days of work on a site: no slip of a century, no number taken for a date. */
final class FieldDates {
  static final Bounds ANY =
      Bounds.from(
              CalendarText.days(LocalDate.of(2000, 1, 1)),
              CalendarText.days(LocalDate.of(2199, 12, 31)),
              Units.CLOCK)
          .wholeNumbers();

  private FieldDates() {}
}
