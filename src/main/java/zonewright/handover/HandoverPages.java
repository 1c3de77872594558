package zonewright.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import zonewright.budget.SiteBudget;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.ForClient;
import zonewright.fieldwork.FirstWeeks;
import zonewright.formula.Outcome;
import zonewright.nights.MonthBook;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.paper.Paper;
import zonewright.paper.PaperSize;
import zonewright.paper.PaperTable;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityText;
import zonewright.water.TuningPercents;

/** Writes the handover pack of a design as pages to print. */
public final class HandoverPages {
  private static final String FOOT =
      "Made with Zonewright. Local codes, the maker's instructions and licensed people come first.";

  private final Design design;
  private final Book book;

  private HandoverPages(Design design) {
    this.design = design;
    this.book = design.book();
  }

  /**
   * Returns the file, a PDF; the same design makes the same file to the byte. It is made from what
   * goes to a client and knows nothing else.
   */
  public static byte[] of(Design office) {
    Design design = ForClient.of(office);
    HandoverPages pages = new HandoverPages(design);
    try (Paper paper = pages.paper("handover")) {
      pages.cards(paper);
      design.nights().plan().ifPresent(plan -> pages.zones(paper, plan));
      pages.facts(paper);
      pages.months(paper);
      pages.checklist(paper);
      return paper.file();
    }
  }

  /** Returns the pages to key in by alone, one a program, as {@link #of} has them first. */
  public static byte[] cardsOf(Design office) {
    HandoverPages pages = new HandoverPages(ForClient.of(office));
    try (Paper paper = pages.paper("cards")) {
      pages.cards(paper);
      return paper.file();
    }
  }

  /**
   * Returns the page on what to do after the first weeks, for whoever looks after the garden: what
   * was seen, with room for what is seen next, and the three choices.
   */
  public static byte[] firstWeeksOf(Design office) {
    HandoverPages pages = new HandoverPages(office);
    try (Paper paper = pages.paper("after the first weeks")) {
      pages.firstWeeks(paper);
      return paper.file();
    }
  }

  private void firstWeeks(Paper paper) {
    FirstWeeks weeks = FirstWeeks.of(book);
    paper.page("After the first weeks", FirstWeeks.BEGIN);
    int number = 1;
    for (FirstWeeks.Choice choice : weeks.choices()) {
      paper.heading(number++ + "   " + choice.when());
      paper.sentences(choice.then(), 11);
      if (choice.chosen()) {
        paper.box("This is where things stand", weeks.now());
      }
    }
    if (weeks.choices().stream().noneMatch(FirstWeeks.Choice::chosen)) {
      paper.space(10);
      paper.box("This is where things stand", weeks.now());
    }
    PaperTable table =
        new PaperTable()
            .strong("Zone", 10)
            .words("Where", 30)
            .number("Tuning", 10)
            .words("Seen so far", 24)
            .words("Dry, right or wet", 26);
    for (FirstWeeks.Zone zone : weeks.zones()) {
      table.row(
          List.of(
              zone.name(),
              zone.place(),
              zone.tuning(),
              zone.day().isEmpty() ? "" : zone.day() + " " + zone.seen(),
              ""));
    }
    paper.space(10);
    paper.table(table, 12, 8, 0);
  }

  private Paper paper(String what) {
    String project = words(Facts.PROJECT_NAME, 0, "Irrigation");
    PaperSize size = PaperSize.of(book.system());
    return new Paper(size, project + ": " + what, project, FOOT);
  }

  private void cards(Paper paper) {
    Cards.of(design).forEach(card -> card(paper, card));
  }

  private String words(Column column, int row, String otherwise) {
    return book.outcome(column.reference(), row) instanceof Outcome.Words words
        ? words.text()
        : otherwise;
  }

  private String shown(Column column, int row) {
    Outcome outcome = book.outcome(column.reference(), row);
    return outcome.lacks() || outcome instanceof Outcome.Blank
        ? "?"
        : book.shown(column.reference(), outcome);
  }

  private void card(Paper paper, Card card) {
    paper.page(
        card.title(), "Key in these minutes and leave the controller at 100 percent. " + tuning());
    if (!card.misfits().isEmpty()) {
      paper.box("This does not fit", card.misfits());
    }
    if (!card.ways().isEmpty()) {
      paper.box("Ways out, the cheapest first", card.ways());
    }
    if (card.stations().isEmpty()) {
      return;
    }
    if (!card.days().isEmpty()) {
      paper.large("Days", card.days());
    }
    if (!card.starts().isEmpty()) {
      paper.large(
          card.starts().size() == 1 ? "Start time" : "Start times",
          String.join("     ", card.starts()));
    }
    boolean own = card.stationsStart();
    boolean days =
        card.days().isEmpty()
            || card.stations().stream().anyMatch(each -> !each.days().equals(card.days()));
    PaperTable table =
        new PaperTable()
            .strong("Station", 10)
            .words("Where", own ? 20 : 32)
            .strongNumber(card.keepsSoaks() ? "Run time (min)" : "Minutes a cycle", 11)
            .strongNumber(card.keepsSoaks() ? "Longest cycle" : "Cycles", 9)
            .number("Soak, at least", 11);
    if (own) {
      table.strong("Starts", 24);
    }
    if (days) {
      table.words("Days", 16);
    }
    boolean lacks = card.stations().stream().anyMatch(each -> !each.lacks().isEmpty());
    if (lacks) {
      table.words("", 18);
    }
    int above = -1;
    for (Card.Station station : card.stations()) {
      boolean again = station.row() == above;
      above = station.row();
      List<String> cells =
          new ArrayList<>(
              List.of(
                  again ? "" : station.zone(),
                  again ? "" : station.place(),
                  station.minutes(),
                  station.cycles(),
                  station.soak()));
      if (own) {
        cells.add(station.starts());
      }
      if (days) {
        cells.add(station.days());
      }
      if (lacks) {
        cells.add(station.lacks());
      }
      table.row(cells);
    }
    paper.table(table, 16, 8, 100 + 36.0 * card.remarks().size());
    if (!card.finish().isEmpty()) {
      paper.sentences("Done at " + card.finish() + ".", 13);
    }
    card.remarks().forEach(remark -> paper.sentences(remark, 10.5));
    List<String> percents = MonthBook.toKeyIn(book).stream().map(MonthBook.Month::percent).toList();
    if (!percents.isEmpty()) {
      paper.sentences("Percent of the months: " + String.join(", ", percents) + ".", 10.5);
    }
  }

  private void zones(Paper paper, NightsPlan plan) {
    List<ZoneShare> shares = ZoneShare.of(plan);
    paper.page(
        "What the nights give each zone",
        "Minutes "
            + ZoneShare.period(plan)
            + ", every zone of the design. "
            + ZoneShare.summary(shares));
    PaperTable table =
        new PaperTable()
            .strong("Zone", 10)
            .words("Where", 28)
            .number("Asks for", 11)
            .number("Placed", 11)
            .number("Not placed", 12)
            .words("", 30);
    for (ZoneShare share : shares) {
      table.row(
          List.of(
              share.sheet().name(),
              share.sheet().place(),
              minutes(share.asked()),
              String.valueOf(share.placed()),
              minutes(share.undone()),
              share.why().isEmpty() ? share.state().word() : share.why()));
    }
    paper.table(table, 13, 8, 0);
  }

  private static String minutes(OptionalInt minutes) {
    return minutes.isPresent() ? String.valueOf(minutes.getAsInt()) : "?";
  }

  private String tuning() {
    double site = book.number(TuningPercents.SITE_TUNING.reference(), 0);
    if (Double.isNaN(site) || site == 1) {
      return "They are the baseline of the peak month.";
    }
    return "A site tuning of %s %% is in them already."
        .formatted(QuantityText.readable(site * 100, 0));
  }

  private void facts(Paper paper) {
    facts(paper, "plants and soil", ControllerFacts.plantsAndSoil());
    facts(paper, "water", ControllerFacts.water());
  }

  private void facts(Paper paper, String head, List<Column> columns) {
    paper.page(
        "For a weather-based controller: " + head,
        "What such a controller asks, zone by zone. Key in either these facts or the minutes of the cards, never both.");
    PaperTable table = new PaperTable().strong("Zone", 8);
    for (Column column : columns) {
      boolean number = column.content() == Column.Content.NUMBER;
      if (number) {
        table.number(column.heading(book.system()), 10);
      } else {
        table.words(column.name(), 20);
      }
    }
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      if (!book.counts(Sheets.ZONES, row)) {
        continue;
      }
      List<String> cells = new ArrayList<>();
      cells.add(words(Facts.ZONE_NAME, row, ""));
      for (Column column : columns) {
        cells.add(bare(column, row));
      }
      table.row(cells);
    }
    paper.table(table, 12, 8, 0);
  }

  /** A cell without its unit, which stands in the heading. */
  private String bare(Column column, int row) {
    return book.outcome(column.reference(), row) instanceof Outcome.Amount amount
        ? column.shown(amount.value(), book.system())
        : shown(column, row);
  }

  private void months(Paper paper) {
    paper.page(
        "Peak climate value and months",
        "The baseline is made for the peak month; a weather-based controller scales it by the weather.");
    paper.large("Peak climate value", shown(Peak.REFERENCE_ET, 0));
    paper.sentences(PeakOrigin.of(design), 11);
    paper.sentences(
        "Controllers call it by many names: historical or peak evapotranspiration of the site. Where one asks for another period, convert"
            + " it; a wrong value makes every zone too dry or too wet alike.",
        11);
    paper.heading("What the months ask of the baseline");
    PaperTable table =
        new PaperTable()
            .strong("Month", 20)
            .strongNumber("Percent", 12)
            .number(SiteBudget.MONTH_VOLUME.heading(book.system()), 18)
            .number(Climate.DAILY_REFERENCE_ET.heading(book.system()), 22);
    for (int row = 0; row < book.rows(Sheets.MONTHS); row++) {
      table.row(
          List.of(
              words(Climate.MONTH, row, ""),
              bare(SiteBudget.PERCENT, row),
              bare(SiteBudget.MONTH_VOLUME, row),
              bare(Climate.DAILY_REFERENCE_ET, row)));
    }
    paper.table(table, 13, 9, 90);
    paper.sentences(
        "After the first days, the controller's percents should come near these in a mean year; write some down each month and compare."
            + " Should the controller or its sensor fail, set the plain minutes of the cards to the month's percent by hand until it is"
            + " repaired. A percent changes minutes only; where days or cycles change too, work the schedule out anew.",
        11);
  }

  private void checklist(Paper paper) {
    paper.page(
        "Commissioning", "Tick and initial what is done. What does not apply is struck out.");
    for (Commissioning part : Commissioning.all()) {
      paper.heading(part.part());
      part.things().forEach(paper::tick);
    }
    paper.heading("Take care");
    paper.sentences(
        "Mains voltage, pressure and drinking water can injure. Switch off and let pressure off before opening anything; have buried"
            + " lines located before digging; leave backflow prevention and mains wiring to those licensed for them. Recycled water"
            + " follows its permit: marking, signs, hours, no spray where people drink, eat or play.",
        10.5);
    paper.signatures(List.of("Set up by", "Owner or operator", "Date"));
  }
}
