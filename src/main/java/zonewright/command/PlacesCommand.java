package zonewright.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.climate.PlaceFinder;

/** Lists places of published reference evapotranspiration, by name or by distance. */
@Command(
    name = "places",
    header = "List the places with published reference ET, by name, state or distance.",
    description = {
      "",
      "Names words to look for in the name, state or country; none for all places. Zones of a map are found by name only.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright places california",
      "  zonewright places --near 38.1,-121.3",
      "",
      "Where the nearest is far or its weather another, take measured weather instead: see the command weather."
    })
final class PlacesCommand extends Task {
  @Parameters(arity = "0..*", paramLabel = "WORD", description = "Words of the name or region.")
  private List<String> words = List.of();

  @Option(
      names = "--near",
      paramLabel = "LAT,LONG",
      description = "Order by the distance to this point, in degrees; south and west are negative.")
  private Optional<String> near = Optional.empty();

  @Override
  public Integer call() {
    PrintWriter out = out();
    List<PlaceFinder.Found> named = PlaceFinder.named(String.join(" ", words));
    List<PlaceFinder.Found> found =
        near.map(point -> nearest(point).stream().filter(each -> holds(named, each)).toList())
            .orElse(named);
    if (found.isEmpty()) {
      throw new Complaint(
          ExitCode.USAGE,
          "No place is called so; the command places without words lists all of them.");
    }
    TextTable table = new TextTable();
    table.column("Place", false);
    table.column("Region", false);
    if (near.isPresent()) {
      table.column("Distance", true);
    }
    table.column("Source", false);
    for (PlaceFinder.Found each : found) {
      table.row(
          near.isPresent()
              ? List.of(each.place(), each.region(), each.distance(), each.origin())
              : List.of(each.place(), each.region(), each.origin()));
    }
    table.lines().forEach(out::println);
    return ExitCode.FINE;
  }

  private static boolean holds(List<PlaceFinder.Found> places, PlaceFinder.Found place) {
    return places.stream().anyMatch(each -> each.place().equals(place.place()));
  }

  private static List<PlaceFinder.Found> nearest(String point) {
    String[] parts = point.strip().split("\\s*[,;\\s]\\s*");
    Optional<double[]> read = parts.length == 2 ? read(parts) : Optional.empty();
    double[] degrees =
        read.orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "“"
                        + point
                        + "” is no point; write latitude and longitude in degrees, as in 38.1,-121.3"));
    return PlaceFinder.nearest(degrees[0], degrees[1]);
  }

  private static Optional<double[]> read(String[] parts) {
    try {
      double latitude = Double.parseDouble(parts[0]);
      double longitude = Double.parseDouble(parts[1]);
      boolean good = Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
      return good ? Optional.of(new double[] {latitude, longitude}) : Optional.empty();
    } catch (NumberFormatException noNumber) {
      return Optional.empty();
    }
  }
}
