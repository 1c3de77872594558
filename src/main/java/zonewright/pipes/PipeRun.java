package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.PRESSURE_CLASS;

import java.util.List;
import java.util.Locale;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
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
            .means("Kind of pipe, with its diameters in the table PipeDiameters.");
    size =
        Column.choice(PIPES, id + "-size", name + " size", new WordList.Published(PipeTables.SIZES))
            .band(band)
            .optional()
            .means(
                "Nominal size. Left blank, the smallest that keeps velocity and pressure counts.");
    own =
        Column.choice(
                PIPES, id + "-own-pipe", name + " of your own", new WordList.RowsOf(MATERIALS))
            .band(band)
            .optional()
            .means("A pipe of the sheet Materials, in place of a tabulated kind and size.");
    length =
        Column.input(PIPES, id + "-length", name + " length", QuantityKind.PIPE_LENGTH)
            .band(band)
            .within(Bounds.from(0, 20_000, Units.FOOT))
            .optional()
            .means("Length of pipe " + runs + ".");
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
            .source("As level unless typed over.");
  }

  /** The length added for fittings, as a part of the length. */
  Formula fittingsShare() {
    return PipeLimits.FITTINGS_SHARE.cell().times(length.cell());
  }

  Column fittings(Formula usual, String means, String source) {
    return Column.defaulted(
            PIPES, id + "-fittings", name + " fittings", QuantityKind.PIPE_LENGTH, usual)
        .band(band)
        .within(Bounds.from(0, 20_000, Units.FOOT))
        .means(means)
        .source(source);
  }

  /** The diameter that keeps the velocity, or the given one if that is larger. */
  Column leastInside(Formula flow, Formula byPressure, String means) {
    return Column.calculated(
            PIPES,
            id + "-least-inside",
            name + " least inside diameter",
            QuantityKind.DIAMETER,
            Formula.larger(
                Hydraulics.diameterAt(flow, PipeLimits.MOST_VELOCITY.cell()), byPressure))
        .band(band)
        .means(means)
        .source(
            "The larger of two: from the greatest velocity, and from Hazen–Williams solved for the diameter.");
  }

  /** How many sizes of the kind come before the first that is wide enough. */
  Column tooSmall(Column leastInside) {
    Formula count = PipeTables.leastStep(kind.reference()).minus(number(1));
    for (ReferenceTable.Numbers diameter : PipeTables.DIAMETERS) {
      count =
          count.plus(
              Formula.when(new Formula.Lookup(kind.reference(), diameter).below(leastInside.cell()))
                  .then(number(1))
                  .otherwise(number(0)));
    }
    Formula all =
        Formula.when(PipeTables.widest(kind.reference()).below(leastInside.cell()))
            .then(number(PipeTables.SIZES.size()))
            .otherwise(count);
    return Column.calculated(
            PIPES, id + "-sizes-too-small", name + " sizes too small", QuantityKind.COUNT, all)
        .band(band)
        .means(
            "How many of the nominal sizes come before the first that will do: too small, or not made in this kind of pipe. All of them where none will do.")
        .source("By counting in the table PipeDiameters.");
  }

  Column proposed(Column tooSmall) {
    return Column.calculatedWord(
            PIPES,
            id + "-smallest-size",
            name + " smallest size",
            new WordList.Published(PipeTables.SIZES),
            Formula.when(tooSmall.cell().atLeast(PipeTables.greatestStep(kind.reference())))
                .then(
                    Formula.refused(
                        "none",
                        "no size of this kind of pipe is large enough; see what draws so much"))
                .otherwise(tooSmall.cell()))
        .band(band)
        .means("The smallest size of this kind of pipe that keeps velocity and pressure.")
        .source("By counting in the table PipeDiameters.");
  }

  /** The step of the size that is laid: the one chosen, or else the smallest that will do. */
  Column laidStep(Column tooSmall) {
    return Column.calculated(
            PIPES,
            id + "-laid-step",
            name + " step of the size laid",
            QuantityKind.COUNT,
            Formula.when(given(own))
                .then(number(0))
                .otherwise(
                    Formula.when(given(size))
                        .then(PipeTables.step(size.reference()))
                        .otherwise(
                            Formula.when(
                                    tooSmall
                                        .cell()
                                        .atLeast(PipeTables.greatestStep(kind.reference())))
                                .then(
                                    Formula.doesNotApply(
                                        "none", "No size of this kind of pipe is large enough."))
                                .otherwise(tooSmall.cell().plus(number(1))))))
        .band(band)
        .means(
            "The size chosen, or else the smallest that will do, as its step in the table Fittings; 0 for a pipe of your own.")
        .source("By definition.");
  }

  /** The kind and size of pipe, given the step of the size. */
  Column laidPipe(Column step, String means) {
    return Column.calculatedWord(
            PIPES,
            id + "-laid-pipe",
            name + " laid",
            new WordList.Published(PipeTables.EVERY_PIPE),
            Formula.when(given(own))
                .then(Formula.doesNotApply("own pipe", "A pipe of your own is laid."))
                .otherwise(PipeTables.positionMade(kind.reference(), step.cell())))
        .band(band)
        .means(means)
        .source("Table PipeSizes.");
  }

  Column inside(Column tooSmall) {
    return Column.defaulted(
            PIPES,
            id + "-inside",
            name + " inside diameter",
            QuantityKind.DIAMETER,
            Formula.when(given(own))
                .then(new Formula.Find(OwnPipes.INSIDE.reference(), own.reference()))
                .otherwise(
                    Formula.when(given(size))
                        .then(
                            PipeTables.diameter(
                                kind.reference(), PipeTables.step(size.reference())))
                        .otherwise(
                            Formula.when(
                                    tooSmall
                                        .cell()
                                        .atLeast(PipeTables.greatestStep(kind.reference())))
                                .then(
                                    Formula.doesNotApply(
                                        "none", "No size of this kind of pipe is large enough."))
                                .otherwise(
                                    PipeTables.diameterMade(
                                        kind.reference(), tooSmall.cell().plus(number(1)))))))
        .band(band)
        .within(Bounds.above(0, 48, Units.INCH))
        .means(
            "Inside diameter of the pipe of your own, or of the size chosen, or else of the smallest size that will do.")
        .source(
            "Table PipeDiameters: outside diameter less twice the least wall, which the published friction tables match.");
  }

  Column coefficient() {
    return Column.defaulted(
            PIPES,
            id + "-coefficient",
            name + " C",
            QuantityKind.FACTOR,
            Formula.when(given(own))
                .then(new Formula.Find(OwnPipes.COEFFICIENT.reference(), own.reference()))
                .otherwise(PipeTables.coefficient(kind.reference())))
        .band(band)
        .decimals(0, 0)
        .within(Bounds.from(40, 165, Units.ONE))
        .means("Hazen–Williams coefficient: how smooth the pipe is inside.")
        .source("Table PipeDiameters, by row, or the sheet Materials.");
  }

  /** What the pipe that is laid may be exposed to. */
  Column rated(Column laidPipe) {
    return Column.defaulted(
            PIPES,
            id + "-rated",
            name + " rated pressure",
            QuantityKind.PRESSURE,
            Formula.when(given(own))
                .then(new Formula.Find(OwnPipes.RATED.reference(), own.reference()))
                .otherwise(PipeTables.ratedPressure(laidPipe.reference())))
        .band(PRESSURE_CLASS)
        .within(Bounds.above(0, 2000, Units.POUND_PER_SQUARE_INCH))
        .decimals(0, 0)
        .means(
            "Pressure the pipe of the "
                + inWords()
                + " is rated for, in water of room temperature; type over it what is printed on the pipe. Warm pipe bears less, PVC"
                + " half as much at 110 °F.")
        .source("Table PipeSizes, by row, or the sheet Materials.");
  }

  Column velocity(Formula flow, Column inside) {
    return Column.calculated(
            PIPES,
            id + "-velocity",
            name + " velocity",
            QuantityKind.SPEED,
            Hydraulics.velocity(flow, inside.cell()))
        .band(band)
        .means("Speed of the water where the pipe carries all its flow.")
        .source(Hydraulics.VELOCITY);
  }

  Column friction(Column fittings, Formula flow, Column inside, Column coefficient, String means) {
    return Column.calculated(
            PIPES,
            id + "-friction",
            name + " friction",
            QuantityKind.PRESSURE,
            Hydraulics.friction(
                length.cell().plus(fittings.cell()), flow, inside.cell(), coefficient.cell()))
        .band(band)
        .decimals(2, 1)
        .means(means)
        .source(Hydraulics.HAZEN_WILLIAMS);
  }

  static Condition given(Column column) {
    return new Condition.Given(column.reference());
  }

  List<Column> chosen() {
    return List.of(kind, size, own, length, rise);
  }

  /** What it is called within a sentence. */
  String inWords() {
    return name.toLowerCase(Locale.ROOT);
  }
}
