package zonewright.workbook.pack;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import zonewright.balance.ZoneRun;
import zonewright.season.SeasonTable;
import zonewright.season.SeasonZone;
import zonewright.sheet.Column;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.workbook.kit.CellStyleName;

/** A season as it is written on its page: the zone, and the cells that its formulas go back to. */
final class SeasonPage {
  /** Where the values stand. */
  static final int VALUE = 4;

  private static final int EXPLAINED = 6;

  final Page page;
  final SeasonZone zone;
  final ZoneRun run;
  final SeasonOfZone of;
  final UnitSystem system;
  final Unit depth;
  String held;
  String allowed;
  String rate;
  String wetted;
  String intake;
  String storage;
  String reaching;
  String part;
  String flow;
  String step;
  String longest;
  String peak;
  String percentStep;
  String least;
  String most;
  String times;
  String before;
  String light;
  String coefficients;
  String weekCycles;
  String weekMinutes;
  int firstDay;
  int lastDay;

  SeasonPage(PackBook pack, Page page, SeasonOfZone of) {
    this.page = page;
    this.of = of;
    zone = of.zone();
    run = of.run();
    system = pack.design().book().system();
    depth = SeasonTable.depthUnit(system);
  }

  double shown(double millimetres) {
    return Units.MILLIMETRE.convert(millimetres, depth);
  }

  String depths() {
    return depth.equals(Units.INCH) ? "0.000" : "0.00";
  }

  String absolute() {
    return new CellReference(page.row(), VALUE, true, true).formatAsString();
  }

  String line(String name, String unit, String means) {
    String cell = absolute();
    label(name);
    page.words(VALUE + 1, unit, CellStyleName.SMALL).across(EXPLAINED, means, CellStyleName.SMALL);
    return cell;
  }

  /** Writes a name over the columns before the value. */
  void label(String name) {
    for (int column = 0; column < VALUE; column++) {
      page.words(column, column == 0 ? name : "", CellStyleName.NAME);
    }
    page.sheet().addMergedRegion(new CellRangeAddress(page.row(), page.row(), 0, VALUE - 1));
  }

  String live(Column column, int row, String means) {
    page.live(VALUE, column, row, CellStyleName.CALCULATED);
    return line(column.name(), column.kind().unit(system).symbol(), means);
  }

  String value(String name, double value, String format, String unit, String means) {
    page.number(VALUE, value, format, CellStyleName.INPUT);
    return line(name, unit, means);
  }

  String formula(
      String name, String formula, double result, String format, String unit, String means) {
    page.formula(VALUE, formula, result, format, CellStyleName.CALCULATED);
    return line(name, unit, means);
  }

  String range(SeasonDay column) {
    return "$%1$s$%2$s:$%1$s$%3$s".formatted(column.letters(), firstDay + 1, lastDay + 1);
  }
}
