package zonewright.design;

import java.util.List;

/**
 * What must not be forgotten where water, pressure, trenches and mains wiring are near; shown by
 * window and workbook alike.
 *
 * @param topic what it is about, a word or a few
 * @param sentences what to mind
 */
public record Caution(String topic, String sentences) {
  private static final List<Caution> ALL =
      List.of(
          new Caution(
              "Drinking water",
              "Every connection to a drinking-water supply needs the backflow prevention that the local authority asks for, put in"
                  + " and tested by those licensed for it."),
          new Caution(
              "Reclaimed or recycled water",
              "Follow the rules of its permit: marking, separation from drinking water, hours, signs, and no spray where people"
                  + " drink, eat or play in it."),
          new Caution(
              "Electricity",
              "Valves run on low voltage, controllers and pumps on the mains. Leave mains wiring to a licensed electrician and"
                  + " switch off before opening anything."),
          new Caution(
              "Trenches",
              "Have buried services located and marked before digging. Deep or loose trenches need shoring."),
          new Caution(
              "Pressure",
              "Let pressure off before opening a line; blow-out with compressed air can injure. Wear eye protection."),
          new Caution(
              "Frost",
              "Where it freezes, the system must be drained or blown out before winter, at a pressure its parts can bear."),
          new Caution(
              "Slopes, walls and buildings",
              "Water that soaks in near a footing, a retaining wall or a steep bank can do harm: ask a geotechnical engineer where"
                  + " in doubt."),
          new Caution(
              "Rules on water",
              "Budgets, watering days and limits differ from place to place and change in droughts. The local authority's own form"
                  + " and figures decide."),
          new Caution(
              "Figures",
              "Tables and defaults are starting points. A flow test, a soil test and a catch-can test of the site come first. The"
                  + " results replace neither the local code nor a licensed person."));

  /** Returns all of them in the order in which they should be read. */
  public static List<Caution> all() {
    return ALL;
  }
}
