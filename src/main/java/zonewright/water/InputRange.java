package zonewright.water;

import static zonewright.trade.Sheets.HOW_SURE;
import static zonewright.trade.Sheets.RANGES;
import static zonewright.trade.Sheets.SITE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * An input that may be known only as a range: the number in its cell stays the best guess, and two
 * columns beside it hold what it lies between.
 *
 * @param input the column of the best guess: of zones, or of the months
 * @param least the column of the least value it may have; blank where none was typed
 * @param greatest the column of the greatest
 */
public record InputRange(Column input, Column least, Column greatest) {
  /** Says of which zone the ranges are. */
  public static final Column ZONE =
      Column.words(RANGES, "zone", "Zone").band(HOW_SURE).means("The zone.").build();

  /** Inputs of a zone that somebody estimates, reads in a table or measures. */
  public static final List<InputRange> OF_ZONES =
      Stream.of(
              Emitters.AREA,
              Plants.PLANT_FACTOR,
              Plants.DENSITY_FACTOR,
              Plants.MICROCLIMATE_FACTOR,
              Plants.ROOT_DEPTH,
              Plants.ALLOWED_DEPLETION,
              Emitters.EMITTER_FLOW,
              Emitters.ZONE_FLOW,
              Emitters.HEAD_SPACING,
              Emitters.ROW_SPACING,
              Emitters.CANOPY,
              Emitters.PRECIPITATION_RATE,
              Emitters.WETTED_WIDTH,
              Emitters.DISTRIBUTION_UNIFORMITY,
              Emitters.IRRIGATION_EFFICIENCY,
              Soils.SLOPE,
              Soils.INTAKE_RATE,
              Soils.SURFACE_STORAGE,
              Soils.AVAILABLE_WATER)
          .map(InputRange::ofZone)
          .toList();

  public static final InputRange REFERENCE_ET = ofMonths(Climate.REFERENCE_ET);
  public static final InputRange RAIN = ofMonths(Rain.MONTH_RAIN);

  /** Inputs that hold for all zones, as parts of what stands in each month. */
  public static final List<InputRange> OF_SITE = List.of(REFERENCE_ET, RAIN);

  /** Inputs whose headings are no words for a sentence. */
  private static final Map<Reference, String> SAID =
      Map.of(
          Emitters.EMITTER_FLOW.reference(), "flow of an emitter",
          Emitters.WETTED_WIDTH.reference(), "width that drip wets",
          Emitters.CANOPY.reference(), "width of the canopies");

  /** The greatest part of a month's value that may be typed. */
  private static final double MOST = 5;

  private static InputRange ofZone(Column input) {
    return new InputRange(input, end(input, "least"), end(input, "greatest"));
  }

  private static Column end(Column input, String which) {
    Bounds bounds = input.bounds().orElseThrow();
    return Column.input(RANGES, id(input, which), name(input, which), input.kind())
        .band(input.band())
        .within(bounds)
        .decimals(input.decimals(UnitSystem.US), input.decimals(UnitSystem.SI))
        .optional()
        .means(
            ("The %s value that the zone's %s may have. The number on the sheet Zones stays the best guess, which the design rests on. Blank:"
                    + " that number, or the published range where there is one and nothing was typed there.")
                .formatted(which, lower(input)))
        .build();
  }

  private static InputRange ofMonths(Column input) {
    return new InputRange(input, part(input, "least"), part(input, "greatest"));
  }

  private static Column part(Column input, String which) {
    return Column.input(SITE, id(input, which), name(input, which), QuantityKind.SHARE)
        .band(HOW_SURE)
        .within(Bounds.from(0, MOST, Units.ONE))
        .optional()
        .means(
            "The %s part of the %s of the sheet Months that there may be, in all months alike: 90 %% where it may be a tenth less. Blank: as it stands."
                .formatted(which, lower(input)))
        .build();
  }

  private static String id(Column input, String which) {
    return input.reference().column() + "-" + which;
  }

  private static String name(Column input, String which) {
    return which.substring(0, 1).toUpperCase(Locale.ROOT) + which.substring(1) + " " + lower(input);
  }

  /** Returns the name of an input within a sentence. */
  private static String lower(Column input) {
    String name = input.name();
    boolean initials = name.length() > 1 && Character.isUpperCase(name.charAt(1));
    return initials ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** Returns what a person calls the input within a sentence, such as "intake rate". */
  public String words() {
    return SAID.getOrDefault(input.reference(), lower(input));
  }

  /** Says whether it holds for all zones, as a part of what stands in each month. */
  public boolean ofSite() {
    return least.reference().table().equals(SITE);
  }

  /** Returns all ranges: those of zones, then those of the site. */
  public static List<InputRange> all() {
    return Stream.concat(OF_ZONES.stream(), OF_SITE.stream()).toList();
  }

  /** Returns the range of an input; none for a column of which none can be given. */
  public static Optional<InputRange> of(Reference input) {
    return all().stream().filter(each -> each.input.reference().equals(input)).findFirst();
  }

  /** Returns the columns of the sheet Ranges in their order. */
  public static List<Column> columns() {
    List<Column> columns = new ArrayList<>(List.of(ZONE));
    OF_ZONES.forEach(range -> columns.addAll(List.of(range.least, range.greatest)));
    return columns;
  }

  /** Returns what to tell a designer: ranges that do not hold the number the design rests on. */
  public static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>();
    for (InputRange range : OF_ZONES) {
      rules.add(
          range.outside(
              range.input.below(range.least), range.least, "below the least it may be, {1}"));
      rules.add(
          range.outside(
              range.input.above(range.greatest),
              range.greatest,
              "above the greatest it may be, {1}"));
    }
    for (InputRange range : OF_SITE) {
      rules.add(range.astray(range.least.above(1), range.least, "above 100 %"));
      rules.add(range.astray(range.greatest.below(1), range.greatest, "below 100 %"));
    }
    return rules;
  }

  private Rule outside(Condition when, Column end, String how) {
    return new Rule(
        end.reference().column() + "-passed",
        Severity.CHECK,
        RANGES,
        when,
        end,
        "has {0} as its %s, %s".formatted(words(), how),
        "type a range that holds the number of the sheet Zones, or another number there",
        List.of(input, end));
  }

  private Rule astray(Condition when, Column end, String how) {
    return new Rule(
        end.reference().column() + "-passed",
        Severity.CHECK,
        SITE,
        when,
        end,
        "has {0} for its %s, which is %s and leaves out what the months hold"
            .formatted(end.name().toLowerCase(Locale.ROOT), how),
        "type a range that holds 100 %",
        List.of(end));
  }
}
