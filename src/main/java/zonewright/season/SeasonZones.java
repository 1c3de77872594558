package zonewright.season;

import java.util.ArrayList;
import java.util.List;

/**
 * The zones of a design as the season sees them.
 *
 * @param zones those that can be followed
 * @param leftOut those that cannot
 * @param schedule what they run, in words
 */
public record SeasonZones(List<SeasonZone> zones, List<LeftOut> leftOut, String schedule) {
  /** Keeps copies. */
  public SeasonZones {
    zones = List.copyOf(zones);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * A zone that cannot be followed.
   *
   * @param row its row
   * @param name what to call it
   * @param why what it lacks, as the end of a sentence
   */
  public record LeftOut(int row, String name, String why) {}

  /**
   * Returns which zones are left out and which get only a part of their minutes, a sentence each.
   */
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    for (LeftOut zone : leftOut) {
      remarks.add(
          "%s is left out: %s."
              .formatted(
                  zone.name().isEmpty() ? "A zone without a name" : "Zone " + zone.name(),
                  zone.why()));
    }
    for (SeasonZone zone : zones) {
      if (!zone.partly().isEmpty()) {
        remarks.add(
            "Zone %s is followed with %s, for the timetable has no room for more."
                .formatted(zone.name(), zone.partly()));
      }
    }
    return remarks;
  }
}
