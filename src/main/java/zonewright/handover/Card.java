package zonewright.handover;

import java.util.List;

/**
 * What someone keys in for one program, at 100 percent.
 *
 * @param program its name
 * @param starts its start times, earliest first; empty where they are not known
 * @param days the days it waters, in words
 * @param stations its stations in the order they run
 * @param remarks anything else to know, a sentence each
 */
public record Card(
    String program,
    List<String> starts,
    String days,
    List<Station> stations,
    List<String> remarks) {
  public Card {
    starts = List.copyOf(starts);
    stations = List.copyOf(stations);
    remarks = List.copyOf(remarks);
  }

  /**
   * One station.
   *
   * @param zone its name, as on the controller
   * @param place where it is, and what grows there
   * @param minutes minutes to key in for one cycle
   * @param cycles how many cycles a watering day
   * @param soak shortest pause between them, in words
   * @param days watering days a week
   */
  public record Station(
      String zone, String place, String minutes, String cycles, String soak, String days) {}
}
