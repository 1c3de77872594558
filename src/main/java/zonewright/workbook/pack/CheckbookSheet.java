package zonewright.workbook.pack;

import java.util.Optional;
import org.apache.poi.ss.util.CellReference;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.SoilDays;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.design.Design;
import zonewright.season.SeasonTable;
import zonewright.units.CalendarText;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.workbook.kit.CellStyleName;

/**
 * The checkbook of one zone for the peak month, to be filled in by hand: each evening's deficit is
 * the one before, and water use, less rain and irrigation. A second page has the answers and their
 * working.
 */
final class CheckbookSheet implements PackSheet {
  private static final String METHOD =
      "The deficit of an evening is that of the evening before, less the irrigation of the night, less the rain, and more by what plants use."
          + " It is never below 0: what is more goes below the roots. Water when it would pass the allowed depletion.";

  @Override
  public String word() {
    return "checkbook";
  }

  @Override
  public String title() {
    return "Checkbook";
  }

  @Override
  public String about() {
    return "The checkbook method for students: a month of one zone to fill in, and on a second page the working of each cell.";
  }

  @Override
  public Audience audience() {
    return Audience.OFFICE;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return SeasonOfZone.lacks(design);
  }

  @Override
  public void write(PackBook pack) {
    Optional<SeasonOfZone> found = SeasonOfZone.of(pack.design(), pack.zone());
    if (found.isEmpty()) {
      pack.page(title(), false, 60)
          .title("Checkbook", lacks(pack.design()).orElse("No zone can be followed."));
      return;
    }
    Page page = pack.page(title(), false, 12, 12, 12, 12, 16, 16);
    Page answers = pack.page(title() + " answers", false, 12, 12, 12, 12, 16, 40);
    fill(pack, page, found.get(), false);
    fill(pack, answers, found.get(), true);
  }

  private void fill(PackBook pack, Page page, SeasonOfZone of, boolean answered) {
    UnitSystem system = pack.design().book().system();
    String unit = SeasonTable.depthUnit(system).symbol();
    int decimals = SeasonTable.depthDecimals(system);
    String format = "0." + "0".repeat(decimals);
    SoilDays soil = of.run().scheduled();
    DaysOfWeather days = of.season().weather().days();
    String peak = pack.design().book().outcome(Peak.MONTH.reference(), 0).text();
    int month = Math.max(0, Climate.MONTH_NAMES.indexOf(peak));
    int first = 0;
    while (days.month(first) != month) {
      first++;
    }
    double held = rounded(of.zone().soil().totalAvailable(), system, decimals);
    double before =
        rounded(first == 0 ? soil.before() : soil.depletion(first - 1), system, decimals);
    page.title(
        (answered ? "Checkbook, the answers: " : "Checkbook to fill in: ")
            + of.zone().withPlace()
            + ", "
            + Climate.MONTH_NAMES.get(month),
        METHOD);
    line(page, "Held between field capacity and wilting point", held, unit, format);
    line(
        page,
        "Allowed depletion",
        rounded(of.zone().soil().readilyAvailable(), system, decimals),
        unit,
        format);
    int start = page.row();
    line(page, "Deficit on the evening before", before, unit, format);
    page.next();
    if (answered) {
      page.headings(
          "Day",
          "Water use (" + unit + ")",
          "Rain (" + unit + ")",
          "Irrigation (" + unit + ")",
          "Deficit in the evening (" + unit + ")",
          "Working");
    } else {
      page.headings(
          "Day",
          "Water use (" + unit + ")",
          "Rain (" + unit + ")",
          "Irrigation (" + unit + ")",
          "Deficit in the evening (" + unit + ")",
          "Your answer");
    }
    page.repeated();
    double deficit = before;
    for (int day = first; day < days.size() && days.month(day) == month; day++) {
      double use = rounded(soil.need(day), system, decimals);
      double rain = rounded(soil.rain(day), system, decimals);
      double water = rounded(soil.irrigation(day), system, decimals);
      double last = deficit;
      deficit = Math.max(0, Math.max(0, last - water) - rain) + use;
      int row = page.row();
      String previous =
          day == first
              ? new CellReference(start, 4, true, true).formatAsString()
              : new CellReference(row - 1, 4, false, true).formatAsString();
      page.number(0, CalendarText.days(days.date(day)), "d\\ mmm", CellStyleName.TABLE)
          .number(1, use, format, CellStyleName.TABLE)
          .number(2, rain, format, CellStyleName.TABLE)
          .number(3, water, format, CellStyleName.TABLE);
      if (answered) {
        page.formula(
                4,
                "MAX(0,MAX(0,%s-$D%s)-$C%s)+$B%s".formatted(previous, row + 1, row + 1, row + 1),
                deficit,
                format,
                CellStyleName.TOTAL)
            .words(5, working(last, water, rain, use, deficit, decimals), CellStyleName.SMALL);
      } else {
        page.words(4, "", CellStyleName.INPUT)
            .formula(
                5,
                "IF(ISNUMBER($E%1$s),IF(ABS($E%1$s-'%2$s'!$E%1$s)<%3$s,\"right\",\"look again\"),\"\")"
                    .formatted(row + 1, title() + " answers", tolerance(decimals)),
                "",
                CellStyleName.TABLE);
      }
      page.next();
    }
  }

  private static String tolerance(int decimals) {
    return decimals == 2 ? "0.015" : "0.15";
  }

  private static String working(
      double last, double water, double rain, double use, double now, int decimals) {
    StringBuilder words = new StringBuilder(number(last, decimals));
    if (water > 0) {
      words.append(" − ").append(number(water, decimals));
    }
    if (water > last) {
      words.append(", not below 0");
    }
    if (rain > 0) {
      words.append(" − ").append(number(rain, decimals));
      words.append(rain > Math.max(0, last - water) ? ", not below 0" : "");
    }
    return words
        .append(" + ")
        .append(number(use, decimals))
        .append(" = ")
        .append(number(now, decimals))
        .toString();
  }

  private static String number(double value, int decimals) {
    return QuantityText.fixed(value, decimals);
  }

  private static double rounded(double millimetres, UnitSystem system, int decimals) {
    double value = Units.MILLIMETRE.convert(millimetres, SeasonTable.depthUnit(system));
    double power = Math.pow(10, decimals);
    return Math.round(value * power) / power;
  }

  private static void line(Page page, String name, double value, String unit, String format) {
    page.words(0, name, CellStyleName.NAME)
        .number(4, value, format, CellStyleName.TOTAL)
        .words(5, unit, CellStyleName.SMALL)
        .next();
  }
}
