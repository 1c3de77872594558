package zonewright.desk;

/** What a designer must not forget where water, pressure, trenches and mains wiring are near. */
final class Cautions {
  static final String TITLE = "Cautions";

  static final String TEXT =
      """
      This program works out amounts and times. It does not see the site, and it replaces neither the local code nor a licensed \
      person.

      Drinking water. Every connection to a drinking-water supply needs the backflow prevention that the local authority asks \
      for, put in and tested by those licensed for it.

      Reclaimed or recycled water. Follow the rules of its permit: marking, separation from drinking water, hours, signs, and \
      no spray where people drink, eat or play in it.

      Electricity. Valves run on low voltage, controllers and pumps on the mains. Leave mains wiring to a licensed electrician \
      and switch off before opening anything.

      Trenches. Have buried services located and marked before digging. Deep or loose trenches need shoring.

      Pressure. Let pressure off before opening a line; blow-out with compressed air can injure. Wear eye protection.

      Slopes, walls and buildings. Water that soaks in near a footing, a retaining wall or a steep bank can do harm: ask a \
      geotechnical engineer where in doubt.

      Rules on water. Budgets, watering days and limits differ from place to place and change in droughts. The local \
      authority's own form and figures decide.

      Figures. Tables and defaults are starting points. A flow test, a soil test and a catch-can test of the site come first.\
      """;

  static final String ABOUT =
      """
      Zonewright works out landscape irrigation zone by zone: how much water, how often, in how many cycles, and why.

      Every number can be followed back to what was typed and to the table or equation it comes from. The demo garden is \
      invented.\
      """;

  private Cautions() {}
}
