package zonewright.uncertainty;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.climate.RecordedWeather;
import zonewright.climate.WeatherSite;
import zonewright.emitters.Emitters;
import zonewright.emitters.FieldTested;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.water.InputRange;

/**
 * What published tables say that an input lies between, where a design takes it from a table. They
 * do not count where somebody typed or tested a value: then only its own range does.
 */
final class PublishedRanges {
  /** What an input lies between, in the unit of its column, and who says so. */
  record Published(double least, double greatest, String origin) {}

  private static final ReferenceTable RANGES =
      ReferenceTable.read(PublishedRanges.class, "published-ranges.csv", "Ranges");

  private static final ReferenceTable WATER =
      ReferenceTable.read(Soils.class, "available-water.csv", "AvailableWater");

  /** By how much of itself the allowed depletion may be less on clay and more on sand. */
  private static final double BY_TEXTURE = 0.1;

  /** How an input's range is found in a row, where nothing was typed there. */
  private static final Map<Reference, BiFunction<PublishedRanges, Integer, Optional<Published>>>
      FOUND =
          Map.of(
              Soils.INTAKE_RATE.reference(), PublishedRanges::intake,
              Soils.AVAILABLE_WATER.reference(), PublishedRanges::water,
              Plants.PLANT_FACTOR.reference(), PublishedRanges::factor,
              Plants.ROOT_DEPTH.reference(), PublishedRanges::roots,
              Plants.ALLOWED_DEPLETION.reference(), PublishedRanges::depletion,
              Emitters.WETTED_WIDTH.reference(), PublishedRanges::wetted,
              Emitters.DISTRIBUTION_UNIFORMITY.reference(), PublishedRanges::uniformity);

  private final Book book;
  private final UnitSystem system;
  private final PlantFactorRanges factors = new PlantFactorRanges();

  PublishedRanges(Book book) {
    this.book = book;
    this.system = book.system();
  }

  /** Returns the published range of an input in a row of its table; none where there is none. */
  Optional<Published> of(InputRange range, int row) {
    if (range.ofSite()) {
      return range.equals(InputRange.REFERENCE_ET) ? climate() : Optional.empty();
    }
    var found = FOUND.get(range.input().reference());
    return found == null || typed(range.input(), row) ? Optional.empty() : found.apply(this, row);
  }

  private boolean typed(Column column, int row) {
    return !(book.entry(column.reference(), row) instanceof Entry.Blank);
  }

  private Optional<String> word(Column column, int row) {
    return book.outcome(column.reference(), row) instanceof Outcome.Words words
        ? Optional.of(words.text())
        : Optional.empty();
  }

  private Optional<Published> intake(int row) {
    return word(Soils.SOIL_TYPE, row)
        .flatMap(soil -> listed(Soils.INTAKE_RATE, soil).map(found -> compacted(found, soil, row)));
  }

  /** Compaction takes the same part of both ends as of the rate in the table. */
  private Published compacted(Published found, String soil, int row) {
    double rate =
        Soils.TEXTURES
            .numbers("Intake rate (in/h)", QuantityKind.RATE)
            .value(Soils.TEXTURES.position(soil).orElseThrow(), system);
    double left = book.number(Soils.INTAKE_RATE.reference(), row) / rate;
    return new Published(found.least * left, found.greatest * left, found.origin);
  }

  private Optional<Published> water(int row) {
    if (typed(Soils.FIELD_CAPACITY, row)) {
      return Optional.empty();
    }
    return word(Soils.SOIL_TYPE, row).map(WATER::position).filter(OptionalInt::isPresent).stream()
        .mapToInt(OptionalInt::getAsInt)
        .mapToObj(
            at ->
                new Published(
                    storage("Least 1.5-5 % organic matter (in/in)", at),
                    storage("Greatest 1.5-5 % organic matter (in/in)", at),
                    WATER.origin(at)))
        .findFirst();
  }

  /** A depth in a depth, as a depth in a foot of soil or a metre of it. */
  private double storage(String heading, int at) {
    double inAnInch = Double.parseDouble(WATER.text(at, heading));
    return Units.INCH_PER_FOOT.convert(12 * inAnInch, QuantityKind.STORAGE.unit(system));
  }

  private Optional<Published> factor(int row) {
    return typed(Plants.SECOND_PLANT, row)
        ? Optional.empty()
        : word(Plants.PLANT, row).flatMap(factors::of);
  }

  private Optional<Published> roots(int row) {
    return word(Plants.PLANT, row).flatMap(plant -> listed(Plants.ROOT_DEPTH, plant));
  }

  private Optional<Published> depletion(int row) {
    double held = book.number(Plants.ALLOWED_DEPLETION.reference(), row);
    return Optional.of(
        new Published(
            held * (1 - BY_TEXTURE),
            Math.min(1, held * (1 + BY_TEXTURE)),
            "FAO-56 (1998) page 167: 5 to 10 % less in fine soils and more in coarse ones (verified)"));
  }

  private Optional<Published> wetted(int row) {
    return word(Emitters.EMITTER, row)
        .filter(emitter -> emitter.contains("drip"))
        .flatMap(drip -> listed(Emitters.WETTED_WIDTH, ""));
  }

  private Optional<Published> uniformity(int row) {
    return book.number(FieldTested.TESTS_IN_USE.reference(), row) >= 1
        ? Optional.empty()
        : word(Emitters.EMITTER, row)
            .flatMap(emitter -> listed(Emitters.DISTRIBUTION_UNIFORMITY, emitter));
  }

  /** Returns the row of the table for an input and a word; none where nothing was published. */
  private Optional<Published> listed(Column input, String of) {
    return IntStream.range(0, RANGES.size())
        .filter(at -> RANGES.text(at, "Input").equals(input.name()))
        .filter(at -> RANGES.text(at, "Of").equals(of))
        .mapToObj(
            at ->
                new Published(
                    number(at, "Least", input), number(at, "Greatest", input), RANGES.origin(at)))
        .findFirst();
  }

  private double number(int at, String heading, Column input) {
    Unit unit = Units.named(RANGES.text(at, "Unit")).orElseThrow();
    return unit.convert(Double.parseDouble(RANGES.text(at, heading)), input.kind().unit(system));
  }

  /** Returns what the reference ET of the months lies between, as a part of what they have. */
  private Optional<Published> climate() {
    String method = word(WeatherSite.ET_METHOD, 0).orElse("");
    return method.equals(WeatherSite.DESCRIPTION)
        ? word(WeatherSite.DESCRIBED_CLIMATE, 0).map(PublishedRanges::described)
        : method.equals(WeatherSite.RECORD) ? recorded() : Optional.empty();
  }

  /** A climate that is only described: the design takes the top of its range. */
  private static Published described(String climate) {
    int at = WeatherSite.DESCRIPTIONS.position(climate).orElseThrow();
    return new Published(
        daily("Least (mm/day)", at) / daily("Greatest (mm/day)", at),
        1,
        WeatherSite.DESCRIPTIONS.origin(at));
  }

  /** Years that were measured say themselves how far they differ. */
  private Optional<Published> recorded() {
    double used = year(RecordedWeather.USED);
    double least = year(RecordedWeather.MEAN) / used;
    double greatest = year(RecordedWeather.IN_NINE) / used;
    return Double.isNaN(least + greatest)
        ? Optional.empty()
        : Optional.of(
            new Published(
                least,
                greatest,
                "the sheet Record: from the mean of the years to what was not exceeded in 9 of 10 (derived)"));
  }

  private double year(Column column) {
    return IntStream.range(0, Climate.MONTH_NAMES.size())
        .mapToDouble(month -> book.number(column.reference(), month))
        .sum();
  }

  private static double daily(String heading, int at) {
    return Double.parseDouble(WeatherSite.DESCRIPTIONS.text(at, heading));
  }
}
