package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.PIPE;

import java.util.List;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of pipes the designer adds to those that are tabulated. */
public final class OwnPipes {
  public static final Column NAME =
      Column.words(MATERIALS, "name", "Pipe")
          .band(PIPE)
          .means(
              "Name and size of a pipe of your own, as it should appear in lists: one row a size.")
          .build();

  public static final Column INSIDE =
      Column.input(MATERIALS, "inside", "Inside diameter", QuantityKind.DIAMETER)
          .band(PIPE)
          .within(Bounds.above(0, 48, Units.INCH))
          .means(
              "Inside diameter. Friction goes with nearly its fifth power: take it from the maker's sheet, not from the nominal size.")
          .build();

  public static final Column COEFFICIENT =
      Column.defaulted(
              MATERIALS, "coefficient", "Hazen–Williams C", QuantityKind.FACTOR, number(150))
          .band(PIPE)
          .decimals(0, 0)
          .within(Bounds.from(40, 165, Units.ONE))
          .means(
              "Smoothness of the pipe: 150 for PVC, 140 for polyethylene and copper, 100 and less for old"
                  + " iron.")
          .source(
              "150 for plastic: Illinois Administrative Code title 77 part 906; 140 to 150 for plastic: EPANET 2.2 Users Manual, table"
                  + " 3.2 (both verified).")
          .build();

  public static final Column RATED =
      Column.input(MATERIALS, "rated-pressure", "Rated pressure", QuantityKind.PRESSURE)
          .band(PIPE)
          .within(Bounds.above(0, 1000, Units.POUND_PER_SQUARE_INCH))
          .optional()
          .means(
              "Working pressure the pipe is rated for. Static pressure above it is a finding; leave room for surge as well.")
          .build();

  public static final Column ORIGIN =
      Column.words(MATERIALS, "origin", "Where from")
          .band(PIPE)
          .optional()
          .means("Where the figures come from.")
          .build();

  private OwnPipes() {}

  /** Returns the columns of the sheet in their order. */
  public static List<Column> columns() {
    return List.of(NAME, INSIDE, COEFFICIENT, RATED, ORIGIN);
  }
}
