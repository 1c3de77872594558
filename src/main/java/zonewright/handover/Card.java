package zonewright.handover;

import java.util.List;

/**
 * What someone keys in for one program, at 100 percent.
 *
 * @param title what to call it
 * @param starts its start times, earliest first, where the controller starts the whole program
 * @param days the nights it waters, in words; empty where they are not known
 * @param stations its stations in the order they run
 * @param finish when the last station is done; empty where the controller does not start the
 *     program
 * @param keepsSoaks whether the controller is given each station's whole run time, its longest
 *     cycle and its soak, and keeps them
 * @param misfits what does not fit, a sentence each; said first
 * @param ways what would let it fit, a sentence each, the cheapest first
 * @param remarks anything else to know, a sentence each
 */
public record Card(
    String title,
    List<String> starts,
    String days,
    List<Station> stations,
    String finish,
    boolean keepsSoaks,
    List<String> misfits,
    List<String> ways,
    List<String> remarks) {
  public Card {
    starts = List.copyOf(starts);
    stations = List.copyOf(stations);
    misfits = List.copyOf(misfits);
    ways = List.copyOf(ways);
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
   * @param minutes minutes to key in
   * @param cycles how many cycles a watering day, or where the controller keeps them the longest
   * @param soak shortest pause between them, in words
   * @param days its nights in words, or how many days a week
   * @param starts when its cycles start, in words; empty where the program is started
   * @param lacks what it gets too little, in words; empty where it gets all
   */
  public record Station(
      int row,
      String zone,
      String place,
      String minutes,
      String cycles,
      String soak,
      String days,
      String starts,
      String lacks) {}
}
