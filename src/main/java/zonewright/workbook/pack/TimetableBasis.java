package zonewright.workbook.pack;

import java.util.List;
import org.apache.poi.ss.util.CellReference;
import zonewright.budget.SiteBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.nights.NightSheet;
import zonewright.nights.SiteNights;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.water.AllowedDates;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;
import zonewright.water.WateringPattern;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.Styles;

/**
 * What a timetable was made from, line by line: what it was then, what it is now, and whether the
 * two are the same, so that a workbook tells by itself whether its timetable is still right.
 */
final class TimetableBasis {
  private static final List<Column> FACTS =
      List.of(
          SiteNights.MOST_VALVES,
          SiteNights.GAP,
          Controller.STARTS,
          Controller.PROGRAMS,
          Controller.PROGRAMS_AT_ONCE,
          Controller.STATIONS,
          Controller.LONGEST_RUN_KEYED,
          Controller.DAY_PATTERNS,
          SiteRules.AVAILABLE_FLOW,
          SiteNights.FIRST_NIGHT,
          Controller.KIND,
          Controller.START_RUNS,
          SiteNights.START_WISH,
          AllowedDays.BY_RULE,
          AllowedDates.IN_FORCE,
          NightSheet.FIRST_OPENS,
          NightSheet.FIRST_MINUTES,
          NightSheet.MINUTES_OPEN,
          NightSheet.SECOND_OPENS,
          NightSheet.SECOND_MINUTES,
          CycleAndSoak.CYCLES,
          CycleAndSoak.CYCLE_MINUTES,
          CycleAndSoak.SOAK,
          Emitters.ZONE_FLOW,
          Demand.LONGEST_INTERVAL,
          Demand.WATERING_DAYS,
          Demand.WATERINGS_A_WEEK,
          SiteBudget.ZONE_PROGRAM,
          WateringPattern.PATTERN,
          WateringPattern.OWN_DAYS,
          WateringPattern.EVERY,
          WateringPattern.ORDER);

  private static final int OF = 0;
  private static final int ROW = 2;
  private static final int FACT = 3;
  private static final int THEN = 4;
  private static final int SAME = 5;
  private static final int NOW = 7;

  private final Page page;
  private final Book book;
  private final Live live;

  TimetableBasis(Page page, PackBook pack) {
    this.page = page;
    this.book = pack.design().book();
    this.live = pack.live();
  }

  /** Writes the lines; returns the formula that says how many are not the same any more. */
  String write() {
    page.band("What it was made from");
    page.across(
        "Lines in which “Same” is 0 changed after the timetable was made.", CellStyleName.PLAIN);
    page.headings("Of", "", "Row", "What", "When made", "Same", "", "Now");
    int first = page.row();
    rows(book.schema().table(Sheets.ZONES));
    rows(book.schema().table(SiteNights.START_WISH.reference().table()));
    // What does not stand in the workbook cannot change there.
    for (Column fact : FACTS.stream().filter(live::has).toList()) {
      for (int row = 0; row < book.rows(fact.reference().table()); row++) {
        line(fact, row);
      }
    }
    String same = range(first, page.row() - 1);
    return "ROWS(%1$s)-SUM(%1$s)".formatted(same);
  }

  private static String range(int first, int last) {
    return new CellReference(first, SAME, true, true).formatAsString()
        + ":"
        + new CellReference(last, SAME, true, true).formatAsString();
  }

  private void rows(TableDefinition table) {
    if (!live.has(table.columns().get(0))) {
      return;
    }
    String names = live.all(table.columns().get(0));
    page.words(OF, table.title(), CellStyleName.TABLE)
        .words(FACT, "rows", CellStyleName.TABLE)
        .number(THEN, book.rows(table.id()), "0", CellStyleName.TABLE)
        .formula(NOW, "ROWS(" + names + ")", book.rows(table.id()), "0", CellStyleName.TABLE);
    same();
  }

  private void line(Column fact, int row) {
    TableDefinition table = book.schema().table(fact.reference().table());
    String cell = live.at(fact, row);
    if (table.single()) {
      page.words(OF, table.title(), CellStyleName.TABLE);
    } else {
      page.words(OF, Live.result(book, table.columns().get(0), row).words(), CellStyleName.TABLE);
      cell = live.ofRowNamed(fact, page.cell(OF));
    }
    if (live.identified(fact)) {
      page.number(ROW, Live.identity(book, fact, row), "0", CellStyleName.TABLE);
      cell = live.ofIdentity(fact, page.cell(ROW));
    }
    page.words(FACT, fact.heading(book.system()), CellStyleName.TABLE);
    double number = book.number(fact.reference(), row);
    if (fact.content() == Column.Content.NUMBER && !Double.isNaN(number)) {
      page.number(THEN, number, Styles.format(fact, book.system()), CellStyleName.TABLE);
    } else {
      page.words(THEN, words(fact, row), CellStyleName.TABLE);
    }
    page.live(NOW, fact, row, cell, CellStyleName.TABLE);
    same();
  }

  private void same() {
    page.formula(
        SAME,
        "IF(%s=%s,1,0)".formatted(page.cell(THEN), page.cell(NOW)),
        1,
        "0",
        CellStyleName.TABLE);
    page.next();
  }

  /** The words a cell of the page shows for what is no number. */
  private String words(Column fact, int row) {
    Outcome outcome = book.outcome(fact.reference(), row);
    if (fact.content() != Column.Content.NUMBER && outcome instanceof Outcome.Words words) {
      return words.text();
    }
    return fact.content() != Column.Content.NUMBER && outcome instanceof Outcome.Blank ? "" : "–";
  }
}
