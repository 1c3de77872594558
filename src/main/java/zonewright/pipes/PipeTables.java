package zonewright.pipes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import zonewright.formula.Cells;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.formula.Term;
import zonewright.units.QuantityKind;

/**
 * Published sizes and losses, arranged as formulas look them up: pipe by kind with its sizes
 * across, meters with their points across, fittings by size.
 */
public final class PipeTables {
  private static final String INSIDE = "Least-wall inside diameter (in)";
  private static final String STEP = "Step";
  private static final String LEAST = "Least step";
  private static final String GREATEST = "Greatest step";
  private static final String FIRST_ROW = "First row";
  private static final String COEFFICIENT = "Hazen-Williams C";
  private static final String RATED = "Rated pressure (psi)";
  private static final String CLASS = "Class";
  private static final String SOURCE = "Source";
  private static final String STATUS = "Status";

  /** The most sizes a kind of pipe is tabulated in. */
  private static final int MOST_SIZES = 9;

  private static final int DECIMALS_OF_AN_INCH = 6;
  private static final BigDecimal MILLIMETRES = new BigDecimal("25.4");

  /** Every size of every kind of pipe, by name: sizes of a kind follow each other. */
  public static final ReferenceTable EVERY_PIPE = everyPipe();

  private static final ReferenceTable EVERY_FITTING =
      ReferenceTable.read(PipeTables.class, "fittings.csv", "EveryFitting");
  private static final ReferenceTable METER_LIMITS =
      ReferenceTable.read(PipeTables.class, "meters.csv", "MeterLimits");
  private static final ReferenceTable METER_POINTS =
      ReferenceTable.read(PipeTables.class, "meter-losses.csv", "MeterPoints");

  /**
   * Nominal sizes, in steps from the smallest, with lengths of pipe that lose what a fitting does.
   */
  public static final ReferenceTable SIZES = sizes();

  /** Kinds of pipe with the inside diameters of their sizes, the smallest first. */
  public static final ReferenceTable KINDS = kinds();

  /** Water meters with the losses tabulated for them. */
  public static final ReferenceTable METERS = meters();

  /** Kinds of backflow device with a usual loss. */
  public static final ReferenceTable BACKFLOW =
      ReferenceTable.read(PipeTables.class, "backflow.csv", "Backflow");

  /** Wires with the resistance of a length. */
  public static final ReferenceTable WIRES =
      ReferenceTable.read(PipeTables.class, "wires.csv", "Wires");

  /** What the sheet of valves starts with. */
  public static final ReferenceTable VALVES =
      ReferenceTable.read(PipeTables.class, "valve-losses.csv", "ValveLosses");

  /** Inside diameters of a kind's sizes, the smallest first; the last again and again. */
  static final List<ReferenceTable.Numbers> DIAMETERS =
      IntStream.rangeClosed(1, MOST_SIZES)
          .mapToObj(at -> KINDS.numbers(diameterHeading(at), QuantityKind.DIAMETER))
          .toList();

  private static final int METER_COLUMNS = 6;

  /** Flows for which a meter's loss is known, nothing first; the safe maximum again and again. */
  static final List<ReferenceTable.Numbers> METER_FLOWS =
      IntStream.rangeClosed(0, METER_COLUMNS)
          .mapToObj(at -> METERS.numbers(flowHeading(at), QuantityKind.FLOW))
          .toList();

  /** The losses at {@link #METER_FLOWS}. */
  static final List<ReferenceTable.Numbers> METER_LOSSES =
      IntStream.rangeClosed(0, METER_COLUMNS)
          .mapToObj(at -> METERS.numbers(lossHeading(at), QuantityKind.PRESSURE))
          .toList();

  private PipeTables() {}

  /** Returns the tables that formulas look things up in. */
  public static List<ReferenceTable> all() {
    return List.of(SIZES, KINDS, EVERY_PIPE, METERS, BACKFLOW, WIRES);
  }

  /** Returns how many steps a size is from the smallest, counted from 1. */
  static Formula step(Cells size) {
    return SIZES.numbers(STEP, QuantityKind.COUNT).of(size);
  }

  /** Returns the length of straight pipe that loses as much as one fitting of a size. */
  static Formula fitting(Cells size, String fitting) {
    return SIZES.numbers(fitting + " (ft)", QuantityKind.LENGTH).of(size);
  }

  /**
   * Returns which size of those a kind is made in has a step, counted from 1; none where it is not
   * made.
   */
  static Formula place(Cells kind, Term step) {
    return Formula.when(step.above(greatestStep(kind)).or(step.below(leastStep(kind))))
        .then(notMade())
        .otherwise(step.plus(1).minus(leastStep(kind)));
  }

  /** Returns the inside diameter of a kind of pipe in one of its sizes, counted from 1. */
  static Formula diameterMade(Cells kind, Term place) {
    return Formula.lookup(kind, DIAMETERS, place);
  }

  /** Returns what stands where a kind of pipe is not made in a size. */
  static Formula notMade() {
    return Formula.doesNotApply("not made", "This kind of pipe is not tabulated in this size.");
  }

  /** Returns the greatest inside diameter of a kind of pipe. */
  static Formula widest(Cells kind) {
    return DIAMETERS.get(MOST_SIZES - 1).of(kind);
  }

  /** Returns the coefficient of a kind of pipe. */
  static Formula coefficient(Cells kind) {
    return KINDS.numbers(COEFFICIENT, QuantityKind.FACTOR).of(kind);
  }

  /** Returns the step of the smallest size a kind of pipe is tabulated in. */
  static Formula leastStep(Cells kind) {
    return KINDS.numbers(LEAST, QuantityKind.COUNT).of(kind);
  }

  /** Returns the step of the largest size a kind of pipe is tabulated in. */
  static Formula greatestStep(Cells kind) {
    return KINDS.numbers(GREATEST, QuantityKind.COUNT).of(kind);
  }

  /**
   * Returns where in {@link #EVERY_PIPE} one of the sizes of a kind stands, counted from 0.
   *
   * @param place which of them, counted from 1
   */
  static Formula position(Cells kind, Term place) {
    return KINDS.numbers(FIRST_ROW, QuantityKind.COUNT).of(kind).plus(place).minus(1);
  }

  /** Returns the most a meter may carry. */
  static Formula safeFlow(Cells meter) {
    return METERS.numbers("Safe maximum flow (gpm)", QuantityKind.FLOW).of(meter);
  }

  private static String diameterHeading(int at) {
    return "Inside diameter of size " + at + " (in)";
  }

  private static String flowHeading(int at) {
    return "Flow " + at + " (gpm)";
  }

  private static String lossHeading(int at) {
    return "Loss " + at + " (psi)";
  }

  /** Returns the pressure a pipe of the table is rated for. */
  static Formula ratedPressure(Cells pipe) {
    return EVERY_PIPE.numbers(RATED, QuantityKind.PRESSURE).of(pipe);
  }

  /** Returns the kinds that are joined over fittings put into the pipe, which narrow its bore. */
  static List<String> kindsWithInserts() {
    return KINDS.keys().stream()
        .filter(
            kind -> EVERY_PIPE.text(firstRow(kind), CLASS).startsWith("inside diameter controlled"))
        .toList();
  }

  private static int firstRow(String kind) {
    return Integer.parseInt(KINDS.text(KINDS.position(kind).orElseThrow(), FIRST_ROW));
  }

  /** The pipes with what each is rated for beside its sizes. */
  private static ReferenceTable everyPipe() {
    ReferenceTable sizes = everySize();
    ReferenceTable ratings =
        ReferenceTable.read(PipeTables.class, "pipe-ratings.csv", "PipeRatings");
    List<String> headings = new ArrayList<>(sizes.headings());
    headings.add(headings.indexOf(SOURCE), RATED);
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < sizes.size(); row++) {
      int pipe = row;
      int rating = ratings.position(sizes.keys().get(row)).orElseThrow();
      rows.add(
          headings.stream()
              .map(
                  heading ->
                      switch (heading) {
                        case RATED -> ratings.text(rating, RATED);
                        case SOURCE, STATUS ->
                            sizes.text(pipe, heading)
                                + "; rated pressure: "
                                + ratings.text(rating, heading);
                        default -> sizes.text(pipe, heading);
                      })
              .toList());
    }
    return ReferenceTable.arranged("PipeSizes", headings, rows);
  }

  /** The pipes sized in inches, and below them those sized in millimetres. */
  private static ReferenceTable everySize() {
    ReferenceTable inches = ReferenceTable.read(PipeTables.class, "pipes.csv", "Inches");
    ReferenceTable metric = ReferenceTable.read(PipeTables.class, "pipes-metric.csv", "Metric");
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < inches.size(); row++) {
      int at = row;
      rows.add(inches.headings().stream().map(heading -> inches.text(at, heading)).toList());
    }
    for (int row = 0; row < metric.size(); row++) {
      BigDecimal outside = new BigDecimal(metric.text(row, "Outside diameter (mm)"));
      BigDecimal wall = new BigDecimal(metric.text(row, "Least wall (mm)"));
      int at = row;
      rows.add(
          inches.headings().stream()
              .map(
                  heading ->
                      switch (heading) {
                        case "Outside diameter (in)" -> inInches(outside);
                        case "Least wall (in)" -> inInches(wall);
                        case INSIDE -> inInches(outside.subtract(wall.add(wall)));
                        case "Average inside diameter (in)" -> "";
                        default -> metric.text(at, heading);
                      })
              .toList());
    }
    return ReferenceTable.arranged("EverySize", inches.headings(), rows);
  }

  private static String inInches(BigDecimal millimetres) {
    return millimetres
        .divide(MILLIMETRES, DECIMALS_OF_AN_INCH, RoundingMode.HALF_UP)
        .toPlainString();
  }

  private static ReferenceTable sizes() {
    List<String> lengths =
        EVERY_FITTING.headings().stream()
            .filter(heading -> heading.startsWith("Length at"))
            .toList();
    List<String> headings = new ArrayList<>(List.of("Size", STEP));
    EVERY_FITTING.keys().forEach(fitting -> headings.add(fitting + " (ft)"));
    headings.addAll(List.of(SOURCE, STATUS));
    List<List<String>> rows = new ArrayList<>();
    for (String heading : lengths) {
      List<String> row = new ArrayList<>();
      row.add(heading.replaceAll("Length at (.*) size \\(ft\\)", "$1"));
      row.add(Integer.toString(rows.size() + 1));
      for (int fitting = 0; fitting < EVERY_FITTING.size(); fitting++) {
        row.add(EVERY_FITTING.text(fitting, heading));
      }
      row.add(EVERY_FITTING.text(0, SOURCE));
      row.add(EVERY_FITTING.text(0, STATUS));
      rows.add(row);
    }
    return ReferenceTable.arranged("Fittings", headings, rows);
  }

  private static ReferenceTable kinds() {
    List<String> sizes = SIZES.keys();
    List<String> headings =
        new ArrayList<>(List.of("Pipe", COEFFICIENT, LEAST, GREATEST, FIRST_ROW));
    IntStream.rangeClosed(1, MOST_SIZES).forEach(at -> headings.add(diameterHeading(at)));
    headings.addAll(List.of(SOURCE, STATUS));
    Map<String, List<Integer>> byKind = new LinkedHashMap<>();
    for (int row = 0; row < EVERY_PIPE.size(); row++) {
      String size = EVERY_PIPE.text(row, "Nominal size");
      String pipe = EVERY_PIPE.keys().get(row);
      byKind
          .computeIfAbsent(
              pipe.substring(0, pipe.length() - size.length()).strip(), any -> new ArrayList<>())
          .add(row);
    }
    List<List<String>> rows = new ArrayList<>();
    byKind.forEach((kind, pipes) -> rows.add(kind(kind, pipes, sizes)));
    return ReferenceTable.arranged("PipeDiameters", headings, rows);
  }

  private static List<String> kind(String kind, List<Integer> pipes, List<String> sizes) {
    List<String> inside = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    for (int pipe : pipes) {
      inside.add(EVERY_PIPE.text(pipe, INSIDE));
      steps.add(sizes.indexOf(EVERY_PIPE.text(pipe, "Nominal size")) + 1);
    }
    List<String> row = new ArrayList<>();
    row.add(kind);
    row.add(EVERY_PIPE.text(pipes.get(0), COEFFICIENT));
    row.add(Integer.toString(steps.get(0)));
    row.add(Integer.toString(steps.get(steps.size() - 1)));
    row.add(Integer.toString(pipes.get(0)));
    for (int at = 0; at < MOST_SIZES; at++) {
      row.add(inside.get(Math.min(at, inside.size() - 1)));
    }
    row.add(distinct(pipes, SOURCE));
    row.add(distinct(pipes, STATUS));
    return row;
  }

  private static String distinct(List<Integer> pipes, String heading) {
    return String.join(
        "; or ", pipes.stream().map(row -> EVERY_PIPE.text(row, heading)).distinct().toList());
  }

  private static ReferenceTable meters() {
    List<String> headings = new ArrayList<>(List.of("Meter", "Safe maximum flow (gpm)"));
    IntStream.rangeClosed(0, METER_COLUMNS).forEach(at -> headings.add(flowHeading(at)));
    IntStream.rangeClosed(0, METER_COLUMNS).forEach(at -> headings.add(lossHeading(at)));
    headings.addAll(List.of(SOURCE, STATUS));
    List<List<String>> rows = new ArrayList<>();
    for (int meter = 0; meter < METER_LIMITS.size(); meter++) {
      rows.add(meter(meter));
    }
    return ReferenceTable.arranged("Meters", headings, rows);
  }

  /** A meter with fewer points than columns has its last one in all that are left. */
  private static List<String> meter(int meter) {
    String size = METER_LIMITS.keys().get(meter);
    String most = METER_LIMITS.text(meter, "Safe maximum flow (gpm)");
    List<String> flows = new ArrayList<>(List.of("0"));
    List<String> losses = new ArrayList<>(List.of("0"));
    for (int point = 0; point < METER_POINTS.size(); point++) {
      if (METER_POINTS.text(point, "Meter").equals(size)) {
        flows.add(METER_POINTS.text(point, "Flow (gpm)"));
        losses.add(METER_POINTS.text(point, "Pressure loss (psi)"));
      }
    }
    flows.add(most);
    losses.add(METER_LIMITS.text(meter, "Pressure loss at safe maximum (psi)"));
    List<String> row = new ArrayList<>(List.of(size, most));
    for (List<String> points : List.of(flows, losses)) {
      for (int at = 0; at <= METER_COLUMNS; at++) {
        row.add(points.get(Math.min(at, points.size() - 1)));
      }
    }
    row.add(METER_LIMITS.text(meter, SOURCE));
    row.add(METER_LIMITS.text(meter, STATUS));
    return row;
  }
}
