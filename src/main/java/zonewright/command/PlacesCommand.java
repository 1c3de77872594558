package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.climate.PlaceFinder;
import zonewright.design.Design;
import zonewright.design.PlaceTaken;
import zonewright.design.WeatherTaken;

/** Lists places whose reference evapotranspiration is known, and takes one into a design. */
@Command(
    name = "places",
    header = "List the places whose reference ET is known, by name, state or distance; take one.",
    description = {
      "",
      "Names words to look for in the name, state or country; none for all places. Zones of a map are found by name only."
          + " Published months go before those worked out from the weather of a place, which are usually within"
          + " some 10 to 15 %% of them (common practice, no source).",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright places california",
      "  zonewright places --near 38.1,-121.3",
      "  zonewright places oklahoma city --into garden.xlsx --from garden.xlsx --replace",
      "",
      "Where the nearest is far or its weather another, take measured weather instead: see the command weather."
    })
final class PlacesCommand extends Task {
  private static final int NEAREST = 10;

  @Mixin private DesignSource source;

  @Parameters(arity = "0..*", paramLabel = "WORD", description = "Words of the name or region.")
  private List<String> words = List.of();

  @Option(
      names = "--near",
      paramLabel = "LAT,LONG",
      description = "Order by the distance to this point, in degrees; south and west are negative.")
  private Optional<String> near = Optional.empty();

  @Option(names = "--all", description = "With --near: list all, not only the nearest.")
  private boolean everyOne;

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description =
          "Where to write a design with the place in it: the only one found, or the nearest; ends in .xlsx.")
  private Optional<Path> into = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "DESIGN",
      description = "The design to take the place into; an empty one unless given.")
  private Optional<Path> from = Optional.empty();

  @Option(names = "--replace", description = "Replace files that are there already.")
  private boolean replace;

  @Override
  public Integer call() {
    into.ifPresent(path -> DesignFiles.mayWrite(path, replace));
    List<PlaceFinder.Found> named = PlaceFinder.named(String.join(" ", words));
    List<PlaceFinder.Found> found =
        near.map(point -> nearest(point).stream().filter(each -> holds(named, each)).toList())
            .orElse(named);
    if (found.isEmpty()) {
      throw new Complaint(
          ExitCode.USAGE,
          "No place is called so; the command places without words lists all of them.");
    }
    if (into.isPresent()) {
      take(found, into.get());
    } else {
      list(found);
    }
    return ExitCode.FINE;
  }

  private void take(List<PlaceFinder.Found> found, Path path) {
    String name = String.join(" ", words).strip();
    PlaceFinder.Found place =
        found.stream()
            .filter(each -> each.place().equalsIgnoreCase(name))
            .findFirst()
            .orElse(found.get(0));
    if (near.isEmpty() && found.size() > 1 && !place.place().equalsIgnoreCase(name)) {
      throw new Complaint(
          ExitCode.USAGE,
          "%s and %s are both called so; say more of the name, or --near."
              .formatted(called(place), called(found.get(1))));
    }
    Design design = source.designOrBlank(from, err());
    WeatherTaken.typedOver(design.book())
        .filter(told -> place.weather().isPresent())
        .ifPresent(err()::println);
    design.book().perform(PlaceTaken.edit(design.book(), place));
    DesignFiles.save(design, path, source.kept(), err());
    out().println("Written: %s, with reference ET of %s".formatted(path, called(place)));
  }

  private static String called(PlaceFinder.Found place) {
    return "%s (%s)".formatted(place.place(), place.region());
  }

  /** The sources, many places have the same, stand below by their numbers. */
  private void list(List<PlaceFinder.Found> all) {
    List<PlaceFinder.Found> found = all.subList(0, Math.min(all.size(), most()));
    List<String> sources = found.stream().map(PlaceFinder.Found::origin).distinct().toList();
    TextTable table = new TextTable();
    table.column("Place", false);
    table.column("Region", false);
    if (near.isPresent()) {
      table.column("Distance", true);
    }
    table.column("Reference ET", false);
    table.column("Source", true);
    for (PlaceFinder.Found each : found) {
      List<String> cells = new ArrayList<>(List.of(each.place(), each.region()));
      near.ifPresent(point -> cells.add(each.distance()));
      cells.add(each.kind());
      cells.add(String.valueOf(1 + sources.indexOf(each.origin())));
      table.row(cells);
    }
    table.lines().forEach(out()::println);
    out().println();
    for (int at = 0; at < sources.size(); at++) {
      out().println("Source %s: %s".formatted(at + 1, sources.get(at)));
    }
    if (all.size() > found.size()) {
      out()
          .println(
              "These are the nearest %s of %s; --all lists the others too."
                  .formatted(found.size(), all.size()));
    }
  }

  private int most() {
    return near.isPresent() && !everyOne ? NEAREST : Integer.MAX_VALUE;
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
