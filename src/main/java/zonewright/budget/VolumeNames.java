package zonewright.budget;

import static zonewright.trade.Sheets.MONTHLY;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.units.QuantityKind;
import zonewright.water.MonthlySchedule;

/**
 * The names of the volumes of {@link MonthlyVolume}, for columns that it is made of and that look
 * at it in turn.
 */
public final class VolumeNames {
  private VolumeNames() {}

  /** Returns the name of the volume in a month; the zones add theirs up by it. */
  static Reference month(int month) {
    return new Reference(
        MONTHLY,
        MonthlySchedule.id("volume", month),
        MonthlySchedule.name("Volume", month),
        QuantityKind.VOLUME);
  }

  /** Returns the name of the volume of the year. */
  static Reference year() {
    return new Reference(MONTHLY, "volume-year", "Volume a year", QuantityKind.VOLUME);
  }

  /** Returns the names of all twelve. */
  static List<Reference> months() {
    return IntStream.rangeClosed(1, Climate.MONTH_NAMES.size())
        .mapToObj(VolumeNames::month)
        .toList();
  }

  /**
   * Returns the water that all zones of a table take in a month, so that zones as found and as
   * proposed are added up alike.
   *
   * @param month the number of the month
   * @param there the column of the table that stands for one of these
   */
  public static Formula ofAllZones(Term month, UnaryOperator<Reference> there) {
    return Formula.nth(month, months().stream().map(there).map(Reference::sum).toList());
  }
}
