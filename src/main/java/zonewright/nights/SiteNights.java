package zonewright.nights;

import static zonewright.trade.Sheets.CONTROLLER_ABILITIES;
import static zonewright.trade.Sheets.NIGHT_RULES;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.SITE;

import java.time.LocalDate;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.CalendarText;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.Controller;

/** Columns of the site and its programs that the timetable keeps to. */
public final class SiteNights {
  /** Programs that run at once have a valve open each. */
  private static final Formula AT_ONCE =
      Formula.when(Controller.STARTS_STATIONS).then(1).otherwise(Controller.PROGRAMS_AT_ONCE);

  public static final Column MOST_VALVES =
      Column.defaulted(SITE, "most-valves", "Most valves at once", QuantityKind.COUNT, AT_ONCE)
          .band(CONTROLLER_ABILITIES)
          .within(Bounds.from(1, 1000, Units.ONE).wholeNumbers())
          .means(
              "How many valves may be open at the same time, as far as the flow allows; what the controller and its transformer can do sets the limit."
                  + " It counts where the controller starts each zone by itself; of programs see Programs at once.")
          .source("One, or of programs as many as run at once, unless typed.")
          .build();

  public static final Column GAP =
      Column.defaulted(
              SITE,
              "valve-gap",
              "Gap between valves",
              QuantityKind.MINUTES,
              Formula.amount(0, Units.MINUTE))
          .band(NIGHT_RULES)
          .within(Bounds.from(0, 240, Units.MINUTE).wholeNumbers())
          .means(
              "Whole minutes that pass between the closing of a valve and the opening of the next in its place, for slow valves or a well to recover.")
          .source("None unless typed.")
          .build();

  public static final Column FIRST_NIGHT =
      Column.input(SITE, "first-night", "First night", QuantityKind.DATE)
          .band(NIGHT_RULES)
          .within(
              Bounds.from(
                      CalendarText.days(LocalDate.of(2000, 1, 1)),
                      CalendarText.days(LocalDate.of(2199, 12, 31)),
                      Units.DAY)
                  .wholeNumbers())
          .optional()
          .means(
              "The date of the first night: from it the calendar file starts, and odd dates, even dates and every few days are counted.")
          .build();

  public static final Column START_WISH =
      Column.input(PROGRAMS, "start-wish", "Start no earlier than", QuantityKind.TIME_OF_DAY)
          .band(NIGHT_RULES)
          .within(Bounds.from(0, 24, Units.HOUR))
          .optional()
          .means(
              "A time before which none of its zones should start, such as after an event; it counts on nights that are open then.")
          .build();

  private SiteNights() {}
}
