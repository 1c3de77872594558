package zonewright.uncertainty;

import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import zonewright.plants.Plants;

/**
 * What published tables say that the factor of a plant lies between: the range of its water use
 * category, or else what the published bases differ by.
 */
final class PlantFactorRanges {
  private final Map<String, Optional<PublishedRanges.Published>> known = new HashMap<>();
  private final List<CSVRecord> factors = CsvLines.of(Plants.class, "plant-factors.csv");

  /** Returns the range of a plant type; none where all that was published is one figure. */
  Optional<PublishedRanges.Published> of(String plant) {
    return known.computeIfAbsent(plant, this::found);
  }

  private Optional<PublishedRanges.Published> found(String plant) {
    int at = Plants.TYPES.position(plant).orElseThrow();
    String basis = Plants.TYPES.text(at, "Basis");
    return factors.stream()
        .filter(line -> line.get("Plant").equals(plant) && line.get("Basis").equals(basis))
        .filter(line -> !line.get("Low").isEmpty() && !line.get("High").isEmpty())
        .filter(line -> Double.parseDouble(line.get("Low")) > 0)
        .map(
            line ->
                new PublishedRanges.Published(
                    Double.parseDouble(line.get("Low")),
                    Double.parseDouble(line.get("High")),
                    line.get("Source") + " (" + line.get("Status") + ")"))
        .findFirst()
        .or(() -> byBases(at));
  }

  private static Optional<PublishedRanges.Published> byBases(int at) {
    DoubleSummaryStatistics bases =
        IntStream.range(0, Plants.TYPES.headings().size())
            .mapToObj(Plants.TYPES.headings()::get)
            .filter(heading -> heading.startsWith("By ") || heading.equals("Plant factor"))
            .mapToDouble(heading -> Double.parseDouble(Plants.TYPES.text(at, heading)))
            .summaryStatistics();
    return bases.getMin() < bases.getMax()
        ? Optional.of(
            new PublishedRanges.Published(
                bases.getMin(),
                bases.getMax(),
                "what the published bases of the table Plants differ by (derived)"))
        : Optional.empty();
  }
}
