package zonewright.handover;

import java.util.List;

/**
 * What to go through on the day a controller is set up, in the order of the work. Common practice
 * of the trade; the maker's instructions and the local code come first.
 *
 * @param part what the things have in common
 * @param things what to do or look at, each ticked and initialled
 */
public record Commissioning(String part, List<String> things) {
  private static final List<Commissioning> ALL =
      List.of(
          new Commissioning(
              "Before anything is wired",
              List.of(
                  "Power to the controller is off and cannot come back by accident; mains wiring is done by a licensed electrician.",
                  "The backflow device is in place, and its test by a licensed person is on file.",
                  "The supply is flushed, the filter is clean, static pressure is read and written down.",
                  "Each valve's wire is labelled with its station, and the labels match the cards of this pack.")),
          new Commissioning(
              "Sensor and shut-off",
              List.of(
                  "The weather sensor stands in full sun all day and in open rain, away from walls and paving that heat it.",
                  "No spray or drift of any zone reaches the sensor.",
                  "The rain shut-off was tripped by hand while a zone ran: the zone stopped, and ran again once it was set back.",
                  "Where it freezes: the freeze shut-off is on and was tested in the same way.")),
          new Commissioning(
              "Settings",
              List.of(
                  "Date, time, place and units of the controller are right.",
                  "The peak climate value is keyed in as this pack gives it.",
                  "The facts of every zone are keyed in, or the minutes of the program cards at 100 percent; never both.",
                  "The controller's own percent adjustment stands at 100; all old programs and start times are erased.",
                  "Watering days and hours keep to the local rules.")),
          new Commissioning(
              "Every zone, by hand from the controller",
              List.of(
                  "It opens and closes; no head is blocked, tilted or sunken; nothing sprays on paving, walls or people.",
                  "Flow and pressure are read and near what the design expects; readings that are not go to the inspection list.",
                  "No water runs off within the longest cycle on the card.")),
          new Commissioning(
              "Leaving it",
              List.of(
                  "The cards hang beside the controller, and the owner was shown how to stop all watering and shut the main valve.",
                  "The owner knows that the controller needs some days to collect weather before its percents can be judged.",
                  "A day in the second or third week is fixed to look at every zone and write down: too dry, right, too wet.",
                  "Winter and drought: who drains the system, and who follows the authority's orders.")));

  public Commissioning {
    things = List.copyOf(things);
  }

  /** Returns all parts in the order of the work. */
  public static List<Commissioning> all() {
    return ALL;
  }
}
