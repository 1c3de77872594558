package zonewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import zonewright.emitters.Emitters;
import zonewright.nights.MonthBook;
import zonewright.nights.NightNames;
import zonewright.nights.NightWords;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.ScheduleCard;
import zonewright.nights.ScheduleCards;
import zonewright.nights.WaysOut;
import zonewright.nights.ZoneShare;
import zonewright.nights.ZoneStarts;
import zonewright.sheet.Book;
import zonewright.sheet.CsvText;
import zonewright.timetable.NightPlan;
import zonewright.timetable.Undone;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;
import zonewright.units.QuantityText;

/** A timetable as text; every string ends its own line. */
final class TimetableText {
  private final Book book;
  private final NightsPlan plan;
  private final NightNames names;
  private final List<ZoneShare> shares;

  TimetableText(Book book, NightsPlan plan) {
    this.book = book;
    this.plan = plan;
    this.names = new NightNames(plan);
    this.shares = ZoneShare.of(plan);
  }

  /** Returns the nights one after another, for people. */
  List<String> lines(Optional<Double> share) {
    List<String> lines = new ArrayList<>();
    share.ifPresent(
        value ->
            lines.add(
                "At %s percent of the peak month.%n"
                    .formatted(QuantityText.fixed(value * 100, 0))));
    for (NightPlan night : plan.timetable().nights()) {
      lines.add("%s%s%n".formatted(lines.isEmpty() ? "" : "%n".formatted(), head(night)));
      if (!night.runs().isEmpty()) {
        table(night).lines().forEach(line -> lines.add(line + System.lineSeparator()));
      }
      if (!night.undone().isEmpty()) {
        lines.add("No room for %s.%n".formatted(NightWords.noRoom(night, names)));
      }
    }
    lines.add("%n%s%n".formatted(ZoneShare.summary(shares)));
    zones().lines().forEach(line -> lines.add(line + System.lineSeparator()));
    return lines;
  }

  /** Every zone of the design, placed or not. */
  private TextTable zones() {
    String period = " min " + ZoneShare.period(plan);
    TextTable table = new TextTable();
    table.column("Zone", false);
    table.column("Where", false);
    table.column("Program", false);
    table.column("Asks for," + period, true);
    table.column("Placed", true);
    table.column("Not placed", true);
    table.column("Short of need", true);
    table.column("Days", false);
    table.column("Starts", false);
    table.column("", false);
    Map<Integer, ZoneStarts> starts = ZoneStarts.of(plan);
    for (ZoneShare share : shares) {
      ZoneStarts own = starts.getOrDefault(share.sheet().row(), ZoneStarts.NEVER);
      String why = share.why().isEmpty() ? "" : ": " + share.why();
      table.row(
          List.of(
              CsvText.harmless(share.sheet().name()),
              CsvText.harmless(share.sheet().place()),
              CsvText.harmless(names.program(share.sheet().program())),
              number(share.asked()),
              String.valueOf(share.placed()),
              number(share.undone()),
              share.missingWords(),
              own.days(),
              own.starts(),
              share.state().word() + why));
    }
    return table;
  }

  private static String number(OptionalInt minutes) {
    return minutes.isPresent() ? String.valueOf(minutes.getAsInt()) : "?";
  }

  private static String head(NightPlan night) {
    return NightWords.label(night.night())
        + ", "
        + NightWords.hours(night)
        + ": "
        + (night.isEmpty() ? "nothing waters" : NightWords.result(night))
        + ".";
  }

  private TextTable table(NightPlan night) {
    TextTable table = new TextTable();
    table.column("Opens", false);
    table.column("Closes", false);
    table.column("Zone", false);
    table.column("Where", false);
    table.column("Program", false);
    table.column("Cycle", false);
    table.column("Minutes", true);
    table.column(Emitters.ZONE_FLOW.heading(book.system()), true);
    for (ValveRun run : night.runs()) {
      table.row(cells(run, false));
    }
    return table;
  }

  private List<String> cells(ValveRun run, boolean exact) {
    List<String> cells = new ArrayList<>();
    cells.add(NightWords.time(run.startMinute()));
    cells.add(NightWords.time(run.endMinute()));
    cells.addAll(about(run.zone(), run.cycle(), exact));
    return cells;
  }

  private List<String> about(WateredZone zone, int cycle, boolean exact) {
    NightsInput.SheetZone sheet = names.sheet(zone);
    return List.of(
        CsvText.harmless(sheet.name()),
        CsvText.harmless(sheet.place()),
        CsvText.harmless(names.program(names.part(zone))),
        zone.cycles() == 1 ? "1" : cycle + " of " + zone.cycles(),
        String.valueOf(zone.minutesPerCycle()),
        exact
            ? QuantityText.exact(zone.flow())
            : QuantityText.fixed(zone.flow(), Emitters.ZONE_FLOW.decimals(book.system())));
  }

  /**
   * Returns every opening of a valve, for other programs; what finds no place is a line without
   * times, with its reason.
   */
  List<String> csv() {
    List<String> lines = new ArrayList<>();
    lines.add(
        CsvText.line(
            List.of(
                "Night",
                "Opens",
                "Closes",
                "Zone",
                "Where",
                "Program",
                "Cycle",
                "Minutes",
                Emitters.ZONE_FLOW.heading(book.system()),
                "Not placed because")));
    for (NightPlan night : plan.timetable().nights()) {
      String label = NightWords.label(night.night());
      for (ValveRun run : night.runs()) {
        List<String> cells = new ArrayList<>(List.of(label));
        cells.addAll(cells(run, true));
        cells.add("");
        lines.add(CsvText.line(cells));
      }
      for (Undone each : night.undone()) {
        List<String> cells = new ArrayList<>(List.of(label, "", ""));
        cells.addAll(about(each.zone(), each.cycle(), true));
        cells.add(ZoneShare.words(each.why()));
        lines.add(CsvText.line(cells));
      }
    }
    for (ZoneShare share : shares) {
      if (share.inNoNight() != 0) {
        lines.add(CsvText.line(inNoNight(share)));
      }
    }
    return lines;
  }

  private List<String> inNoNight(ZoneShare share) {
    return List.of(
        "",
        "",
        "",
        CsvText.harmless(share.sheet().name()),
        CsvText.harmless(share.sheet().place()),
        CsvText.harmless(names.program(share.sheet().program())),
        "",
        share.inNoNight() < 0 ? "" : String.valueOf(share.inNoNight()),
        "",
        share.why());
  }

  /** Returns what to key in, program by program. */
  List<String> cards() {
    List<String> lines = new ArrayList<>();
    List<String> ways = WaysOut.sentences(book, plan);
    for (ScheduleCard card : ScheduleCards.of(plan)) {
      lines.add(
          "%s%s: %s; percent at 100%n"
              .formatted(
                  lines.isEmpty() ? "" : "%n".formatted(),
                  card.title(),
                  card.days().isEmpty() ? "nothing to key in" : card.days()));
      if (!card.misfits().isEmpty()) {
        lines.add("DOES NOT FIT%n".formatted());
        card.misfits().forEach(misfit -> lines.add("  %s%n".formatted(misfit)));
        ways.forEach(way -> lines.add("  Way out: %s%n".formatted(way)));
      }
      if (!card.lines().isEmpty()) {
        if (!card.starts().isEmpty()) {
          lines.add(
              "Start times: %s; done at %s%n"
                  .formatted(String.join(", ", card.starts()), card.finish()));
        }
        table(card).lines().forEach(line -> lines.add(line + System.lineSeparator()));
        if (!card.rounding().isEmpty()) {
          lines.add("%s%n".formatted(card.rounding()));
        }
      }
    }
    List<String> percents = MonthBook.toKeyIn(book).stream().map(MonthBook.Month::percent).toList();
    if (!percents.isEmpty()) {
      lines.add("%nPercent of the months: %s%n".formatted(String.join(", ", percents)));
    }
    return lines;
  }

  private static TextTable table(ScheduleCard card) {
    boolean keepsSoaks = card.way() == ScheduleCard.Way.CYCLE_AND_SOAK;
    TextTable table = new TextTable();
    table.column("Station", false);
    table.column("Where", false);
    table.column(keepsSoaks ? "Run time (min)" : "Minutes a cycle", true);
    table.column(keepsSoaks ? "Longest cycle (min)" : "Cycles", true);
    table.column("Soak at least (min)", true);
    table.column("Days", false);
    table.column(card.starts().isEmpty() ? "Start times" : "Will run at", false);
    table.column("", false);
    for (ScheduleCard.Line line : card.lines()) {
      table.row(
          List.of(
              line.zone().name(),
              line.zone().place(),
              String.valueOf(line.minutes()),
              String.valueOf(keepsSoaks ? line.longestCycle() : line.cycles()),
              line.soak() > 0 ? String.valueOf(line.soak()) : "",
              line.days(),
              String.join(", ", line.starts()),
              line.lacks()));
    }
    return table;
  }
}
