package zonewright.desk.picture;

import java.util.Optional;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.nights.NightsPlan;
import zonewright.timetable.NightPlan;
import zonewright.trade.Sheets;

/** The longest night of the timetable. */
final class NightPicture implements Picture {
  private static final String WORKING = "The timetable is being worked out.";

  /** So many are read on another thread before there is anything to draw. */
  private static final int MANY_ZONES = 400;

  @Override
  public String id() {
    return "longest-night";
  }

  @Override
  public String name() {
    return "The longest night";
  }

  @Override
  public Subject subject() {
    return Subject.whole(Sheets.NIGHTS);
  }

  @Override
  public Drawing of(Design design, int row) {
    if (design.book().rows(Sheets.ZONES) > MANY_ZONES && !design.nights().isRead()) {
      return Drawing.saying(name(), WORKING);
    }
    Optional<NightsPlan> plan = design.nights().known();
    Optional<NightPlan> night = plan.flatMap(NightsPlan::longestNight);
    if (night.isEmpty()) {
      return Drawing.saying(
          name(),
          design.nights().asked().isPresent()
              ? WORKING
              : "There is no timetable yet: it takes zones with cycles, minutes and flow, and nights"
                  + " that water.");
    }
    return NightDrawing.whole(plan.get(), night.get(), flowUnit(design));
  }

  /** Returns the unit of flows in a design. */
  static String flowUnit(Design design) {
    return Emitters.ZONE_FLOW.kind().unit(design.book().system()).symbol();
  }
}
