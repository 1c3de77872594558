package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.MAIN_LINE;
import static zonewright.trade.Sheets.PIPES;

import java.util.List;
import zonewright.formula.Comparator;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/**
 * Columns of the reach of the main that each zone adds: the mains of all zones are taken to lie in
 * one trench, so that pipe is counted once although the water of many zones passes it.
 */
public final class Reaches {
  private static final Column DRAWN =
      Column.calculated(
              PIPES,
              "main-drawn",
              "Main drawn",
              QuantityKind.PIPE_LENGTH,
              Formula.when(Mains.LENGTH.given())
                  .then(Mains.LENGTH)
                  .otherwise(Formula.zero(QuantityKind.PIPE_LENGTH)))
          .band(MAIN_LINE)
          .means("Length of the main; nothing where none is typed.")
          .source("By definition.")
          .build();

  /** Zones whose main ends before this one's. */
  private static final Matching NEARER = Matching.rowsWith(DRAWN, Comparator.BELOW, DRAWN);

  private static final Matching NO_FARTHER = Matching.rowsWith(DRAWN, Comparator.AT_MOST, DRAWN);

  private static final Matching NO_NEARER = Matching.rowsWith(DRAWN, Comparator.AT_LEAST, DRAWN);

  private static final Column SHORTER =
      Column.calculated(
              PIPES, "shorter-mains", "Mains shorter than this", QuantityKind.COUNT, NEARER.count())
          .band(MAIN_LINE)
          .means("How many zones have a main that ends before this one's.")
          .source("By counting.")
          .build();

  public static final Column ALIKE =
      Column.calculated(
              PIPES,
              "main-ends-alike",
              "Mains that end here",
              QuantityKind.COUNT,
              NO_FARTHER.count().minus(SHORTER))
          .band(MAIN_LINE)
          .means("How many zones have a main of this length; they share its last reach.")
          .source("By counting.")
          .build();

  public static final Column REACH =
      Column.calculated(
              PIPES,
              "main-reach",
              "Reach of main",
              QuantityKind.PIPE_LENGTH,
              Mains.LENGTH.minus(nearer(DRAWN, QuantityKind.LENGTH)).over(ALIKE))
          .band(MAIN_LINE)
          .means(
              "What this zone adds to the main: its length less the longest that ends before it, shared by zones that end alike.")
          .source("All mains taken to lie along one line; common practice, no source.")
          .build();

  public static final Column ELBOWS =
      Column.calculated(
              PIPES,
              "main-reach-elbows",
              "Elbows of the reach",
              QuantityKind.COUNT,
              Formula.larger(
                      number(0), Mains.ELBOWS.minus(nearer(Mains.ELBOWS, QuantityKind.COUNT)))
                  .over(ALIKE))
          .band(MAIN_LINE)
          .decimals(1, 1)
          .means("Elbows of the main that no zone before this one has counted.")
          .source("All mains taken to lie along one line; common practice, no source.")
          .build();

  public static final Column STEP =
      Column.calculated(
              PIPES,
              "main-reach-step",
              "Step of size of the reach",
              QuantityKind.COUNT,
              NO_NEARER.largest(Mains.LAID_STEP))
          .band(MAIN_LINE)
          .means("The largest size that this zone and those beyond it ask for, as its step.")
          .source("By definition: the water of the zones beyond passes here.")
          .build();

  private static final Column PLACE = Mains.RUN.place("of the reach", STEP);

  public static final Column PIPE =
      Mains.RUN.laidPipe(
          PLACE,
          "Pipe of the reach: of the zone's kind, and as large as this zone and those beyond it ask for.");

  private Reaches() {}

  private static Formula nearer(Column column, QuantityKind kind) {
    return Formula.when(SHORTER.atMost(0))
        .then(Formula.zero(kind))
        .otherwise(NEARER.largest(column));
  }

  static List<Column> columns() {
    return List.of(DRAWN, SHORTER, ALIKE, REACH, ELBOWS, STEP, PLACE, PIPE);
  }
}
