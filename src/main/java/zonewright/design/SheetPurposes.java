package zonewright.design;

import static java.util.Map.entry;

import java.util.Map;
import zonewright.trade.Sheets;

/** What each sheet is for: one sentence or two, for the window, the help and whoever is new. */
final class SheetPurposes {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          entry(Sheets.SITE, "Facts and results that hold for the whole design."),
          entry(
              Sheets.MONTHS,
              "Reference ET and rain of each month, and what the design makes of them. Fills itself"
                  + " once the site has a climate place."),
          entry(
              Sheets.WEATHER,
              "Temperature, humidity, wind and sun by month, where reference ET is calculated from"
                  + " weather. Stays empty otherwise."),
          entry(
              Sheets.RECORD,
              "What years of measured weather come to: each month and the hottest days, as mean and as"
                  + " what was not exceeded in 5, 8 and 9 years of 10. Filled from a weather file."),
          entry(
              Sheets.ZONES,
              "One row for each zone: what grows there, on what soil, watered by what; and the run"
                  + " time, cycles and water that follow."),
          entry(
              Sheets.MONTHLY,
              "Run time, cycles, soak and water of each zone in the month shown, and what each month asks."),
          entry(
              Sheets.RANGES,
              "What the inputs of each zone lie between, where they are not known for sure. Stays empty where the"
                  + " published ranges will do."),
          entry(Sheets.PROGRAMS, "The programs of the controller and what each of them uses."),
          entry(
              Sheets.SUPPLY,
              "What the connection can give: pressure, flow test, meter, service line, backflow"
                  + " device."),
          entry(
              Sheets.PIPES,
              "Flow, pipe, wire and pressure of each zone, from the connection to the worst head."),
          entry(Sheets.VALVES, "Losses of the valves to choose among; replace them by your own."),
          entry(
              Sheets.MATERIALS,
              "Pipes of your own, to choose on the sheet Pipes beside the standard ones."),
          entry(
              Sheets.STAGES,
              "Stages of a drought as the local rule names them: days a week, cut and hours. One of them is"
                  + " chosen on the sheet Site."),
          entry(
              Sheets.DAY_RULES,
              "Weekdays on which a local rule allows watering: for all, by house number, or in a stage"
                  + " alone."),
          entry(
              Sheets.OWN_COLUMNS,
              "Columns of your own on any sheet: a name, a kind and an equation. They are calculated,"
                  + " shown with their working, printed and saved like the others."),
          entry(Sheets.NIGHTS, "When watering is allowed: each night of the week and its windows."),
          entry(
              Sheets.ZONE_NIGHTS,
              "On which nights each zone waters, its weekdays and the gap between waterings."),
          entry(
              Sheets.TESTS,
              "Catch-can tests made on the site. The uniformity measured takes the place of the"
                  + " assumed one."),
          entry(Sheets.CANS, "What each catch can of a test held."),
          entry(
              Sheets.INSPECTION,
              "What was seen on a walk through the site, to be mended before anything is tuned."),
          entry(
              Sheets.CONTROLLER,
              "Percentages a weather-based controller showed, beside what the months ask for."),
          entry(
              Sheets.VERDICTS,
              "How zones looked after some weeks, too wet or too dry, from which tuning follows."),
          entry(
              Sheets.FOUND,
              "The zones as they were found, for a retrofit. Stays empty for a new garden."),
          entry(
              Sheets.TAKEOFF,
              "What each zone needs to be built; of a retrofit, what is kept, new and removed."),
          entry(Sheets.COUNTS, "The takeoff added up over the site."),
          entry(
              Sheets.PARTS,
              "The price book: what is bought or done, its price and hours, and by which rule it is"
                  + " counted."),
          entry(
              Sheets.CREWS,
              "Crews of people with two rates, for items whose labour costs otherwise than the"
                  + " job's labour rate."),
          entry(
              Sheets.CURRENCIES,
              "Other currencies in which suppliers price, and what they are worth in that of the"
                  + " job."),
          entry(Sheets.SECTIONS, "The parts of the estimate and what each comes to."),
          entry(
              Sheets.EXTRAS,
              "Equipment, subcontracts, allowances and alternates that no rule counts."),
          entry(Sheets.ESTIMATE, "Rates of the job, and its price from material to tax."),
          entry(
              Sheets.SAVINGS,
              "What the job saves: water, sewer and energy bills before and after, and whether it"
                  + " pays."),
          entry(Sheets.USE, "Water by month: metered, as found and proposed."),
          entry(Sheets.RATES, "What water costs, tier by tier."),
          entry(Sheets.REBATES, "Rebates: by which rule, how much and at most."),
          entry(Sheets.CASES, "Three ways things may turn out, and what each pays."),
          entry(Sheets.YEARS, "Cash year by year in each of the cases."),
          entry(
              Sheets.OWN_PLANTS,
              "Plants of your own, to choose beside those that come with the program."),
          entry(
              Sheets.OWN_EMITTERS,
              "Emitters of your own, to choose beside the kinds that come with the program."),
          entry(
              Sheets.OWN_SOILS,
              "Soils of your own, as a soil report has them, to choose beside the textures."),
          entry(
              Sheets.ALTERNATIVES,
              "Other ways to do this garden, beside the design; one of them may stand on the sheets."),
          entry(
              Sheets.CHANGES,
              "What each alternative does otherwise than the design, cell by cell."));

  private SheetPurposes() {}

  /** Returns what a sheet is for. */
  static String of(String table) {
    String words = WORDS.get(table);
    if (words == null) {
      throw new IllegalArgumentException("nobody says what the sheet " + table + " is for");
    }
    return words;
  }
}
