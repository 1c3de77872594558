package zonewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.nights.NightWords;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.ScheduleCard;
import zonewright.nights.ScheduleCards;
import zonewright.sheet.Book;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.units.QuantityText;

/** A timetable as text; every string ends its own line. */
final class TimetableText {
  private final Book book;
  private final NightsPlan plan;

  TimetableText(Book book, NightsPlan plan) {
    this.book = book;
    this.plan = plan;
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
    }
    return lines;
  }

  private static String head(NightPlan night) {
    return night.night().label()
        + ", "
        + NightWords.hours(night)
        + ": "
        + (night.runs().isEmpty() ? "nothing waters" : NightWords.result(night))
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
    NightsInput.Station station = plan.stations().get(run.zone().name());
    String cycle = run.zone().cycles() == 1 ? "1" : run.cycle() + " of " + run.zone().cycles();
    return List.of(
        NightWords.time(run.startMinute()),
        NightWords.time(run.endMinute()),
        CsvText.harmless(station.name()),
        CsvText.harmless(station.place()),
        CsvText.harmless(run.zone().program()),
        cycle,
        String.valueOf(run.endMinute() - run.startMinute()),
        exact
            ? QuantityText.exact(run.zone().flow())
            : QuantityText.fixed(run.zone().flow(), Emitters.ZONE_FLOW.decimals(book.system())));
  }

  /** Returns every opening of a valve, for other programs. */
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
                Emitters.ZONE_FLOW.heading(book.system()))));
    for (NightPlan night : plan.timetable().nights()) {
      for (ValveRun run : night.runs()) {
        List<String> cells = new ArrayList<>(List.of(night.night().label()));
        cells.addAll(cells(run, true));
        lines.add(CsvText.line(cells));
      }
    }
    return lines;
  }

  /** Returns what to key in, program by program. */
  List<String> cards() {
    List<String> lines = new ArrayList<>();
    for (ScheduleCard card : ScheduleCards.of(plan)) {
      lines.add(
          "%s%s: %s; percent at 100%n"
              .formatted(lines.isEmpty() ? "" : "%n".formatted(), card.title(), card.nights()));
      if (card.startsProgram()) {
        lines.add("Start times: %s%n".formatted(String.join(", ", card.starts())));
      }
      TextTable table = new TextTable();
      table.column("Station", false);
      table.column("Where", false);
      table.column("Minutes a cycle", true);
      table.column("Cycles", true);
      table.column("Soak at least (min)", true);
      table.column("Nights", false);
      table.column(card.startsProgram() ? "Will run at" : "Start times", false);
      for (ScheduleCard.Line line : card.lines()) {
        table.row(
            List.of(
                line.station().name(),
                line.station().place(),
                String.valueOf(line.minutes()),
                String.valueOf(line.cycles()),
                line.cycles() > 1 ? String.valueOf(line.soak()) : "",
                line.nights(),
                String.join(", ", line.starts())));
      }
      table.lines().forEach(line -> lines.add(line + System.lineSeparator()));
    }
    return lines;
  }
}
