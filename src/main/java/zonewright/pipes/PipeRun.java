package zonewright.pipes;

import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.PRESSURE_CLASS;

import java.util.List;
import java.util.Locale;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** The columns that a main line and a lateral have in common, under their own names. */
final class PipeRun {
  private final String id;
  private final String name;
  private final String band;

  final Column kind;
  final Column size;
  final Column own;
  final Column length;
  final Column rise;

  PipeRun(String id, String name, String band, String usualKind, String runs) {
    this.id = id;
    this.name = name;
    this.band = band;
    kind =
        Column.choice(
                PIPES,
                id + "-pipe",
                name + " pipe",
                new WordList.Fixed(PipeTables.KINDS.keys()),
                usualKind)
            .band(band)
            .means("Kind of pipe, with its diameters in the table PipeDiameters.")
            .build();
    size =
        Column.choice(PIPES, id + "-size", name + " size", new WordList.Published(PipeTables.SIZES))
            .band(band)
            .optional()
            .means(
                "Nominal size. Left blank, the smallest that keeps velocity and pressure counts.")
            .build();
    own =
        Column.choice(
                PIPES, id + "-own-pipe", name + " of your own", new WordList.RowsOf(MATERIALS))
            .band(band)
            .optional()
            .means("A pipe of the sheet Materials, in place of a tabulated kind and size.")
            .build();
    length =
        Column.input(PIPES, id + "-length", name + " length", QuantityKind.PIPE_LENGTH)
            .band(band)
            .within(Bounds.from(0, 20_000, Units.FOOT))
            .optional()
            .means("Length of pipe " + runs + ".")
            .build();
    rise =
        Column.defaulted(
                PIPES,
                id + "-rise",
                name + " rise",
                QuantityKind.LENGTH,
                Formula.zero(QuantityKind.LENGTH))
            .band(band)
            .within(Bounds.from(-1000, 1000, Units.FOOT))
            .means(
                "How much higher its end lies than its beginning; where it falls, a negative number.")
            .source("As level unless typed over.")
            .build();
  }

  /** The length added for fittings, as a part of the length. */
  Formula fittingsShare() {
    return PipeLimits.FITTINGS_SHARE.times(length);
  }

  Column fittings(Term usual, String means, String source) {
    return Column.defaulted(
            PIPES, id + "-fittings", name + " fittings", QuantityKind.PIPE_LENGTH, usual)
        .band(band)
        .within(Bounds.from(0, 20_000, Units.FOOT))
        .means(means)
        .source(source)
        .build();
  }

  /** The diameter that keeps the velocity, or the given one if that is larger. */
  Column leastInside(Term flow, Term byPressure, String means) {
    return Column.calculated(
            PIPES,
            id + "-least-inside",
            name + " least inside diameter",
            QuantityKind.DIAMETER,
            Formula.larger(Hydraulics.diameterAt(flow, PipeLimits.MOST_VELOCITY), byPressure))
        .band(band)
        .means(means)
        .source(
            "The larger of two: from the greatest velocity, and from Hazen–Williams solved for the diameter.")
        .build();
  }

  /** How many sizes of the kind come before the first that is wide enough. */
  Column tooSmall(Column leastInside) {
    Formula count =
        PipeTables.leastStep(kind)
            .minus(1)
            .plus(Formula.countBelow(kind, PipeTables.DIAMETERS, leastInside));
    Formula all =
        Formula.when(PipeTables.widest(kind).below(leastInside))
            .then(PipeTables.SIZES.size())
            .otherwise(count);
    return Column.calculated(
            PIPES, id + "-sizes-too-small", name + " sizes too small", QuantityKind.COUNT, all)
        .band(band)
        .means(
            "How many of the nominal sizes come before the first that will do: too small, or not made in this kind of pipe. All of them where none will do.")
        .source("By counting in the table PipeDiameters.")
        .build();
  }

  Column proposed(Column tooSmall) {
    return Column.calculatedWord(
            PIPES,
            id + "-smallest-size",
            name + " smallest size",
            new WordList.Published(PipeTables.SIZES),
            Formula.when(tooSmall.atLeast(PipeTables.greatestStep(kind)))
                .then(
                    Formula.refused(
                        "none",
                        "no size of this kind of pipe is large enough; see what draws so much"))
                .otherwise(tooSmall))
        .band(band)
        .means("The smallest size of this kind of pipe that keeps velocity and pressure.")
        .source("By counting in the table PipeDiameters.")
        .build();
  }

  /** The step of the size that is laid: the one chosen, or else the smallest that will do. */
  Column laidStep(Column tooSmall) {
    return Column.calculated(
            PIPES,
            id + "-laid-step",
            name + " step of the size laid",
            QuantityKind.COUNT,
            Formula.when(own.given())
                .then(0)
                .otherwise(
                    Formula.when(size.given())
                        .then(PipeTables.step(size))
                        .otherwise(
                            Formula.when(tooSmall.atLeast(PipeTables.greatestStep(kind)))
                                .then(
                                    Formula.doesNotApply(
                                        "none", "No size of this kind of pipe is large enough."))
                                .otherwise(tooSmall.plus(1)))))
        .band(band)
        .means(
            "The size chosen, or else the smallest that will do, as its step in the table Fittings; 0 for a pipe of your own.")
        .source("By definition.")
        .build();
  }

  /** Which of the sizes that its kind is made in a size is, given by its step. */
  Column place(String size, Column step) {
    return Column.calculated(
            PIPES,
            id + "-" + size.replace(' ', '-') + "-place",
            name + " place of the size " + size,
            QuantityKind.COUNT,
            Formula.when(own.given())
                .then(Formula.doesNotApply("own pipe", "A pipe of your own is laid."))
                .otherwise(PipeTables.place(kind, step)))
        .band(band)
        .means("Which size it is of those this kind of pipe is made in, the smallest first.")
        .source("By counting in the table PipeDiameters.")
        .build();
  }

  /** The kind and size of pipe, given the place of the size among those of the kind. */
  Column laidPipe(Column place, String means) {
    return Column.calculatedWord(
            PIPES,
            id + "-laid-pipe",
            name + " laid",
            new WordList.Published(PipeTables.EVERY_PIPE),
            PipeTables.position(kind, place))
        .band(band)
        .means(means)
        .source("Table PipeSizes.")
        .build();
  }

  /** The inside diameter, given the place of the size that is laid. */
  Column inside(Column place) {
    return Column.defaulted(
            PIPES,
            id + "-inside",
            name + " inside diameter",
            QuantityKind.DIAMETER,
            Formula.when(own.given())
                .then(OwnPipes.INSIDE.inRowOf(own))
                .otherwise(PipeTables.diameterMade(kind, place)))
        .band(band)
        .within(Bounds.above(0, 48, Units.INCH))
        .means(
            "Inside diameter of the pipe of your own, or of the size chosen, or else of the smallest size that will do.")
        .source(
            "Table PipeDiameters: outside diameter less twice the least wall, which the published friction tables match.")
        .build();
  }

  Column coefficient() {
    return Column.defaulted(
            PIPES,
            id + "-coefficient",
            name + " C",
            QuantityKind.FACTOR,
            Formula.when(own.given())
                .then(OwnPipes.COEFFICIENT.inRowOf(own))
                .otherwise(PipeTables.coefficient(kind)))
        .band(band)
        .decimals(0, 0)
        .within(Bounds.from(40, 165, Units.ONE))
        .means("Hazen–Williams coefficient: how smooth the pipe is inside.")
        .source("Table PipeDiameters, by row, or the sheet Materials.")
        .build();
  }

  /** What the pipe that is laid may be exposed to. */
  Column rated(Column laidPipe) {
    return Column.defaulted(
            PIPES,
            id + "-rated",
            name + " rated pressure",
            QuantityKind.PRESSURE,
            Formula.when(own.given())
                .then(OwnPipes.RATED.inRowOf(own))
                .otherwise(PipeTables.ratedPressure(laidPipe)))
        .band(PRESSURE_CLASS)
        .within(Bounds.above(0, 2000, Units.POUND_PER_SQUARE_INCH))
        .decimals(0, 0)
        .means(
            "Pressure the pipe of the "
                + inWords()
                + " is rated for, in water of room temperature; type over it what is printed on the pipe. Warm pipe bears less, PVC"
                + " half as much at 110 °F.")
        .source("Table PipeSizes, by row, or the sheet Materials.")
        .build();
  }

  Column velocity(Term flow, Column inside) {
    return Column.calculated(
            PIPES,
            id + "-velocity",
            name + " velocity",
            QuantityKind.SPEED,
            Hydraulics.velocity(flow, inside))
        .band(band)
        .means("Speed of the water where the pipe carries all its flow.")
        .source(Hydraulics.VELOCITY)
        .build();
  }

  Column friction(Column fittings, Term flow, Column inside, Column coefficient, String means) {
    return Column.calculated(
            PIPES,
            id + "-friction",
            name + " friction",
            QuantityKind.PRESSURE,
            Hydraulics.friction(length.plus(fittings), flow, inside, coefficient))
        .band(band)
        .decimals(2, 1)
        .means(means)
        .source(Hydraulics.HAZEN_WILLIAMS)
        .build();
  }

  List<Column> chosen() {
    return List.of(kind, size, own, length, rise);
  }

  /** What it is called within a sentence. */
  String inWords() {
    return name.toLowerCase(Locale.ROOT);
  }
}
