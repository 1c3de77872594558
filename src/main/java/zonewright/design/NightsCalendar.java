package zonewright.design;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import zonewright.nights.CalendarFile;
import zonewright.nights.NightFinding;
import zonewright.nights.NightsPlan;
import zonewright.nights.SiteNights;
import zonewright.sheet.Entry;
import zonewright.units.CalendarText;

/** The timetable of a design as a calendar file, and why there is none. */
public final class NightsCalendar {
  /** What a timetable by dates lacks for a calendar, as a sentence. */
  public static final String WITHOUT_FIRST_NIGHT =
      "Some zones water by dates: type the first night on the sheet Site, so that the calendar can"
          + " tell them.";

  private NightsCalendar() {}

  /**
   * Returns the text of the calendar file (RFC 5545); none where the timetable goes by dates and
   * the design does not say which night is the first, see {@link #WITHOUT_FIRST_NIGHT}.
   *
   * @param clock says today, from which a weekly timetable counts where the design says nothing
   */
  public static Optional<String> text(Design design, NightsPlan plan, Clock clock) {
    double typed = design.book().number(SiteNights.FIRST_NIGHT.reference(), 0);
    if (Double.isNaN(typed) && !plan.weekly()) {
      return Optional.empty();
    }
    LocalDate first = Double.isNaN(typed) ? LocalDate.now(clock) : CalendarText.date(typed);
    return Optional.of(CalendarFile.of(plan, project(design), first, clock.instant()));
  }

  private static String project(Design design) {
    return design.book().entry(Facts.PROJECT_NAME.reference(), 0) instanceof Entry.Words words
        ? words.text()
        : "Irrigation design without a name";
  }

  /** Returns why a design has no timetable, as a sentence. */
  public static String whyNone(Design design) {
    List<NightFinding> findings = design.nights().findings();
    if (findings.isEmpty()) {
      return "There is no timetable: no zone has its cycles, minutes and flow yet.";
    }
    NightFinding first = findings.get(0);
    String where = design.book().cellName(first.column(), first.row()).row();
    String cure = first.cure().isEmpty() ? "" : "; " + first.cure();
    return "There is no timetable: " + where + " " + first.sentence() + cure + ".";
  }
}
