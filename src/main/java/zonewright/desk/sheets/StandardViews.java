package zonewright.desk.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.SiteNeed;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.design.AtAGlance;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.emitters.Spacings;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * The columns each kind of user works with most.
 *
 * <p>Written as what is left out, so that a column that comes later is seen until somebody decides
 * otherwise.
 */
public final class StandardViews {
  /** What must be typed and what follows from it, a dozen columns: what a sheet is opened on. */
  public static final String GLANCE = "At a glance";

  /** For who sizes zones and sets run times. */
  public static final String DESIGNER = "Designer";

  /** For who counts, prices and compares. */
  public static final String ESTIMATOR = "Estimator";

  /** For who follows the sums step by step. */
  public static final String STUDENT = "Student";

  /** Nothing left out. */
  public static final String ALL = "All columns";

  /** What only some zones need: other ways to the rate, mixed plants, sites at the margin. */
  private static final Set<Column> SPECIAL_CASES =
      Set.of(
          Plants.DENSITY_FACTOR,
          Plants.MICROCLIMATE_FACTOR,
          Plants.SECOND_PLANT,
          Plants.SECOND_SHARE,
          Plants.MIXED,
          Emitters.RATE_METHOD,
          Emitters.RATE_BY_AREA,
          Emitters.HEAD_SPACING,
          Emitters.ROW_SPACING,
          Spacings.THROW,
          Spacings.PATTERN,
          Spacings.SHARE,
          Spacings.LARGEST_SPACING,
          Spacings.LARGEST_ROWS,
          Emitters.RATE_BY_SPACING,
          Emitters.PLANT_COUNT,
          Emitters.CANOPY,
          Emitters.RATE_BY_CANOPY,
          Emitters.WETTED_WIDTH,
          Emitters.DRIP_RATE,
          Emitters.WETTED_RATE);

  private static final Set<Column> STEPS_BETWEEN =
      Set.of(
          Facts.ZONE_NOTE,
          Plants.PLANT_FACTOR,
          Plants.ROOT_DEPTH,
          Plants.ALLOWED_DEPLETION,
          Emitters.DISTRIBUTION_UNIFORMITY,
          Emitters.IRRIGATION_EFFICIENCY,
          Soils.SURFACE_STORAGE,
          Soils.AVAILABLE_WATER,
          Demand.PEAK_NEED,
          Demand.RUN_TIME_MULTIPLIER,
          Demand.GROSS_DEMAND,
          Demand.DEPLETION_USED,
          SoilLayers.WATER_HELD,
          Demand.DEPLETION_DEPTH,
          Demand.DAYS_NEEDED,
          Demand.LONGEST_GAP,
          CycleAndSoak.APPLIED,
          SiteNeed.COUNTED_COEFFICIENT,
          ZoneBudget.WEIGHTED_AREA,
          CycleAndSoak.MINUTES_GIVEN,
          ZoneBudget.VOLUME_PER_WATERING_DAY);

  private static final Set<Column> PRICED =
      Set.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          Facts.ZONE_NOTE,
          SiteBudget.ZONE_PROGRAM,
          Emitters.AREA,
          Plants.PLANT,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.EMITTER_FLOW,
          Emitters.ZONE_FLOW,
          Emitters.PRECIPITATION_RATE,
          Demand.WATERING_DAYS,
          Demand.RUN_TIME,
          CycleAndSoak.CYCLES);

  private static final Set<String> NEITHER_PRICED_NOR_BUILT =
      Set.of(
          Sheets.ZONE,
          Sheets.PLANTS,
          Sheets.APPLICATION,
          Sheets.SOIL,
          Sheets.SOIL_WATER,
          Sheets.SALINE_WATER,
          Sheets.SCHEDULE,
          Sheets.DRYING_OUT);

  /** Bands that most zones need nothing of. */
  private static final Set<String> SELDOM =
      Set.of(Sheets.SOIL_WATER, Sheets.SALINE_WATER, Sheets.DRYING_OUT, Sheets.ALLOWANCES);

  /** For who orders what an estimate counts. */
  public static final String BUYER = "Buyer";

  /** For who walks through a garden and writes down what is there. */
  public static final String WALK = "On the walk";

  /** For who sets the controller month by month. */
  public static final String SEASONAL = "Seasonal settings";

  /** For who answers for the water of the year. */
  public static final String WATER = "Water of the year";

  /** What is looked at on other sheets by who uses them: a name, and the columns after it. */
  private static final Map<String, Map<String, List<String>>> BY_USER =
      Map.of(
          Sheets.PARTS,
          Map.of(
              ESTIMATOR,
              List.of(
                  "Item",
                  "Section",
                  "Sold by",
                  "Price",
                  "Labour hours each",
                  "Crew",
                  "Counted by",
                  "Which",
                  "Counted in",
                  "Count",
                  "Waste",
                  "Quantity",
                  "Material",
                  "Labour",
                  "Cost"),
              BUYER,
              List.of(
                  "Item",
                  "SKU",
                  "Supplier",
                  "Sold by",
                  "Pack",
                  "Quantity",
                  "Price",
                  "Material",
                  "Supplier note")),
          Sheets.FOUND,
          Map.of(
              WALK,
              List.of(
                  "Zone",
                  "Where",
                  "Area",
                  "Plant type",
                  "Emitter",
                  "Emitters",
                  "Flow each",
                  "Soil",
                  "Slope",
                  "Minutes a week at present",
                  "Note"),
              ESTIMATOR,
              List.of(
                  "Zone",
                  "Becomes",
                  "Where",
                  "What changes",
                  "Plant type",
                  "Plant type proposed",
                  "Emitter",
                  "Emitter proposed",
                  "Emitters",
                  "Emitters proposed",
                  "Zone flow",
                  "Zone flow proposed",
                  "Valves",
                  "Volume a year",
                  "Volume a year proposed")),
          Sheets.MONTHLY,
          Map.of(
              SEASONAL,
              List.of(
                  "Zone",
                  "Percent",
                  "Watering days",
                  "Run time",
                  "Cycles",
                  "Minutes a cycle",
                  "Shortest soak",
                  "Percent …"),
              WATER,
              List.of("Zone", "Volume", "Volume …", "Volume a year"),
              STUDENT,
              List.of("Zone", "Coefficient …", "Net demand …", "Greatest need", "Percent …")));

  /** A sheet of more columns has a view for each group of them. */
  private static final int WIDE = 20;

  private StandardViews() {}

  /**
   * Returns the standard views of a sheet by name, that it is opened on first: for each the
   * identifiers of its columns. A wide sheet has one for each group of its columns, too.
   */
  public static Map<String, List<String>> of(TableDefinition table) {
    Map<String, List<String>> views = new LinkedHashMap<>();
    List<Column> opening = AtAGlance.opening(table);
    if (!opening.isEmpty()) {
      views.put(GLANCE, opening.stream().map(column -> column.reference().column()).toList());
    }
    if (table.id().equals(Sheets.ZONES)) {
      views.put(DESIGNER, ids(table, StandardViews::forDesigner));
      views.put(ESTIMATOR, ids(table, StandardViews::forEstimator));
      views.put(STUDENT, ids(table, StandardViews::forStudent));
    }
    views.put(ALL, ids(table, column -> true));
    new TreeMap<>(BY_USER.getOrDefault(table.id(), Map.of()))
        .forEach(
            (view, names) ->
                views.put(view, ids(table, column -> named(column, names) || own(column))));
    if (table.columns().size() > WIDE) {
      Column names = table.columns().get(0);
      for (Column column : table.columns()) {
        String band = column.band();
        views.computeIfAbsent(
            band, any -> ids(table, each -> each.equals(names) || each.band().equals(band)));
      }
    }
    return views;
  }

  /** A column of one's own stands in every view of its sheet. */
  private static boolean own(Column column) {
    return column.role() == Column.Role.CALCULATED && column.band().equals(Sheets.OWN);
  }

  /** Says whether a column is named, itself or, by an ellipsis, with all twelve months. */
  private static boolean named(Column column, List<String> names) {
    String name = column.name();
    int last = name.lastIndexOf(' ') + 1;
    boolean month = Climate.MONTH_NAMES.contains(name.substring(last));
    return names.contains(name) || (month && names.contains(name.substring(0, last) + "…"));
  }

  private static List<String> ids(TableDefinition table, Predicate<Column> shown) {
    return table.columns().stream()
        .filter(shown)
        .map(column -> column.reference().column())
        .toList();
  }

  private static boolean forDesigner(Column column) {
    return !SPECIAL_CASES.contains(column)
        && !STEPS_BETWEEN.contains(column)
        && !SELDOM.contains(column.band());
  }

  private static boolean forEstimator(Column column) {
    if (PRICED.contains(column)) {
      return true;
    }
    boolean step =
        Set.of(
                ZoneBudget.WEIGHTED_AREA,
                CycleAndSoak.MINUTES_GIVEN,
                Ordinance.SPECIAL,
                Ordinance.SPECIAL_AREA,
                Ordinance.ZONE_FACTOR,
                Ordinance.REGULAR_WEIGHTED,
                Ordinance.ABOVE_SHARE)
            .contains(column);
    return !NEITHER_PRICED_NOR_BUILT.contains(column.band()) && !step;
  }

  private static boolean forStudent(Column column) {
    return !SPECIAL_CASES.contains(column)
        && !column.equals(Facts.ZONE_NOTE)
        && !SELDOM.contains(column.band());
  }
}
