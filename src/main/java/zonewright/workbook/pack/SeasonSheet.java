package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import zonewright.balance.RunTotals;
import zonewright.design.Design;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.Units;
import zonewright.workbook.kit.Charts;

/** A season of one zone as live formulas, a row a day: the balance of FAO-56 chapter 8. */
final class SeasonSheet implements PackSheet {
  private static final String USED_COLOUR = "2F86A8";
  private static final String ALLOWED_COLOUR = "B3261E";
  private static final String WATER_COLOUR = "7FB58A";
  private static final int CHART_ROWS = 18;

  @Override
  public String word() {
    return "season";
  }

  @Override
  public String title() {
    return "Season";
  }

  @Override
  public String about() {
    return "A season of one zone day by day, as live formulas and as a chart: what its soil holds, gets and loses.";
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
    Page page =
        pack.page(title(), true, 11, 9, 8, 8, 9, 8, 9, 9, 9, 8, 8, 8, 9, 9, 8, 9, 8, 8, 8, 8);
    Optional<SeasonOfZone> found = SeasonOfZone.of(pack.design(), pack.zone());
    if (found.isEmpty()) {
      page.title("A season, day by day", lacks(pack.design()).orElse("No zone can be followed."));
      return;
    }
    SeasonPage season = new SeasonPage(pack, page, found.get());
    page.title(
            "A season, day by day: " + season.zone.withPlace(),
            found.get().season().weather().origin()
                + " The schedule is what the timetable placed, driven by a percent by day; yellow cells may be changed.")
        .restingOnClimate();
    SeasonBasis.write(season);
    sums(season);
    int top = page.breakHere().row();
    for (int row = 0; row < CHART_ROWS; row++) {
      page.next();
    }
    SeasonDays.write(season);
    chart(season, top);
  }

  /** The sums stand above the days, with what the program itself found beside them. */
  private static void sums(SeasonPage season) {
    Page page = season.page;
    RunTotals whole = season.of.season().results().get(0).whole();
    int sums = 7;
    int size = season.of.season().weather().days().size();
    season.firstDay = page.row() + 1 + sums + 1 + CHART_ROWS + 1 + 1;
    season.lastDay = season.firstDay + size - 1;
    page.band("What it comes to");
    String need =
        sum(season, "Need", "SUM(%s)", SeasonDay.NEED, season.shown(whole.need()), season.depths());
    String taken =
        sum(
            season,
            "Taken",
            "SUM(%s)",
            SeasonDay.TAKEN,
            season.shown(whole.need() - whole.deficit()),
            season.depths());
    season.formula(
        "Adequacy",
        "IF(%1$s=0,1,%2$s/%1$s)".formatted(need, taken),
        whole.adequacy(),
        "0.0%",
        "",
        "The part of the need that was met.");
    String reaching =
        sum(
            season,
            "Irrigation",
            "SUM(%s)*" + season.part,
            SeasonDay.REACHING,
            season.shown(whole.reaching() * season.zone.application().scheduled()),
            season.depths());
    String lost =
        "(SUM(%s)*%s+SUM(%s))"
            .formatted(
                season.range(SeasonDay.RUN_OFF), season.part, season.range(SeasonDay.DRAINED));
    season.formula(
        "Excess",
        "IF(%1$s=0,0,%2$s/%1$s)".formatted(reaching, lost),
        whole.excess(),
        "0.0%",
        "",
        "Irrigation that ran off or went below the roots, of all irrigation.");
    sum(season, "Days below allowed", "SUM(%s)", SeasonDay.BELOW, whole.daysBelow(), "0");
    Unit volume = QuantityKind.VOLUME.unit(season.system);
    season.formula(
        "Water",
        "SUM(%s)*%s".formatted(season.range(SeasonDay.MINUTES), season.flow),
        Units.LITRE.convert(whole.minutes() * season.zone.application().flow(), volume),
        "#,##0",
        volume.symbol(),
        "Minutes × flow.");
    page.next();
  }

  private static String sum(
      SeasonPage season, String name, String formula, SeasonDay of, double result, String format) {
    boolean count = of == SeasonDay.BELOW;
    return season.formula(
        name,
        formula.formatted(season.range(of)),
        result,
        format,
        count ? "days" : season.depth.symbol(),
        "Of the days below.");
  }

  /** The chart stands above the days; it is made once they are there. */
  private static void chart(SeasonPage season, int top) {
    Page page = season.page;
    CellRangeAddress dates = cells(season, SeasonDay.DATE);
    Charts.barsAndLines(
        page.sheet(),
        new Charts.Place(0, top, SeasonDay.values().length, top + CHART_ROWS - 1),
        "Used up of what the soil holds, and water that soaks in",
        season.depth.symbol(),
        dates,
        List.of(new Charts.Series("Soaks in", cells(season, SeasonDay.SOAKS_IN), WATER_COLOUR)),
        List.of(
            new Charts.Series("Used up", cells(season, SeasonDay.USED), USED_COLOUR),
            new Charts.Series("Allowed", allowedCells(season), ALLOWED_COLOUR)));
  }

  private static CellRangeAddress cells(SeasonPage season, SeasonDay column) {
    return new CellRangeAddress(season.firstDay, season.lastDay, column.place, column.place);
  }

  /** The allowed depletion stands once more beside each day, for the chart. */
  private static CellRangeAddress allowedCells(SeasonPage season) {
    int column = SeasonDay.values().length;
    return new CellRangeAddress(season.firstDay, season.lastDay, column, column);
  }
}
