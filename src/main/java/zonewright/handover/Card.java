package zonewright.handover;

import java.util.List;

/**
 * What someone keys in for one program, at 100 percent.
 *
 * @param title what to call it
 * @param starts its start times, earliest first, where the controller starts the whole program
 * @param days the nights it waters, in words; empty where they are not known
 * @param stations its stations in the order they run
 * @param misfits what does not fit, a sentence each; said first
 * @param remarks anything else to know, a sentence each
 */
public record Card(
    String title,
    List<String> starts,
    String days,
    List<Station> stations,
    List<String> misfits,
    List<String> remarks) {
  public Card {
    starts = List.copyOf(starts);
    stations = List.copyOf(stations);
    misfits = List.copyOf(misfits);
    remarks = List.copyOf(remarks);
  }

  /** Says whether its stations start by themselves, each at its own times. */
  public boolean stationsStart() {
    return starts.isEmpty() && stations.stream().anyMatch(station -> !station.starts().isEmpty());
  }

  /**
   * One station.
   *
   * @param row its row in the sheet of zones
   * @param zone its name, as on the controller
   * @param place where it is, and what grows there
   * @param minutes minutes to key in for one cycle
   * @param cycles how many cycles a watering day
   * @param soak shortest pause between them, in words
   * @param days its nights in words, or how many days a week
   * @param starts when its cycles start, in words; empty where the program is started
   */
  public record Station(
      int row,
      String zone,
      String place,
      String minutes,
      String cycles,
      String soak,
      String days,
      String starts) {}
}
