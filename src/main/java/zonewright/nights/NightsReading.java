package zonewright.nights;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import zonewright.budget.SiteBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Severity;
import zonewright.timetable.NightRules;
import zonewright.timetable.StartRuns;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringDays;
import zonewright.timetable.WateringWindow;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.DroughtStages;
import zonewright.water.MonthlySchedule;
import zonewright.water.SiteRules;

/** Reads from the sheets of a design what its timetable depends on. */
final class NightsReading {
  /** Counts dates where no first night is given: a Monday, the first day of a month. */
  static final LocalDate ANY_FIRST_DAY = LocalDate.of(2026, 6, 1);

  private static final int MOST_CYCLES = 96;

  private final Book book;
  private final List<NightFinding> findings = new ArrayList<>();
  private final List<NightsInput.LeftOut> leftOut = new ArrayList<>();
  private int wired;

  /**
   * What was read.
   *
   * @param input the problem with the names; empty where there is none to solve
   * @param problem the problem alone; null where there is none
   * @param findings what keeps zones or nights out of the timetable
   */
  record Read(Optional<NightsInput> input, NightsProblem problem, List<NightFinding> findings) {
    Read {
      findings = List.copyOf(findings);
    }
  }

  private final Reference name;
  private final Reference place;

  private NightsReading(Book book) {
    this.book = book;
    List<Column> columns = book.schema().table(Sheets.ZONES).columns();
    this.name = columns.get(0).reference();
    this.place =
        columns.stream()
            .map(Column::reference)
            .filter(reference -> reference.column().equals("place"))
            .findFirst()
            .orElse(name);
  }

  /** Reads a book as it is now. */
  static Read of(Book book) {
    NightsReading reading = new NightsReading(book);
    Optional<NightsInput> input = reading.input();
    return new Read(input, input.map(NightsInput::problem).orElse(null), reading.findings);
  }

  private Optional<NightsInput> input() {
    Map<DayOfWeek, List<WateringWindow>> windows = windows();
    Optional<NightRules.Clash> clash = NightRules.clash(windows);
    if (clash.isPresent()) {
      add(
          Severity.CHECK,
          NightSheet.CLOSES,
          clash.get().day().getValue() - 1,
          clash.get() instanceof NightRules.Clash.IntoNextDay
              ? "has a window that is still open when that of %s begins"
                  .formatted(NightWords.day(clash.get().day().plus(1)))
              : "has two windows that overlap",
          "close one before the other opens");
      return Optional.empty();
    }
    if (book.rows(Sheets.ZONES) == 0) {
      return Optional.empty();
    }
    if (windows.isEmpty()) {
      add(
          Severity.CHECK,
          NightSheet.WATERED,
          0,
          "like every other night has no window in which water may run, so nothing can be watered",
          "let some nights water, or allow more weekdays on the sheet Site");
      return Optional.empty();
    }
    double flow = book.number(SiteRules.AVAILABLE_FLOW.reference(), 0);
    NightRules rules =
        new NightRules(
            windows,
            whole(plain() ? Controller.PROGRAMS_AT_ONCE : SiteNights.MOST_VALVES, 0, 1),
            flow > 0 ? flow : Double.POSITIVE_INFINITY,
            whole(SiteNights.GAP, 0, 0),
            whole(Controller.STARTS, 0, 4),
            whole(Controller.PROGRAMS, 0, 4),
            whole(Controller.LONGEST_RUN_KEYED, 0, WateringWindow.DAY),
            whole(Controller.MINUTE_STEP, 0, 1));
    double date = book.number(SiteNights.FIRST_NIGHT.reference(), 0);
    List<NightsInput.Station> stations = stations(rules);
    if (stations.isEmpty()) {
      if (book.number(DroughtStages.KEPT.reference(), 0) == 0) {
        add(
            Severity.CHECK,
            DroughtStages.IN_FORCE,
            0,
            "forbids all watering: every zone is short of all it needs",
            "water by hand where the rule lets you, or choose another stage");
      }
      return Optional.empty();
    }
    return Optional.of(
        new NightsInput(
            stations,
            leftOut,
            programs(),
            rules,
            plain(),
            startRuns(),
            Double.isNaN(date) ? ANY_FIRST_DAY : CalendarText.date(date)));
  }

  private boolean plain() {
    return !Controller.STATION_STARTS.equals(word(Controller.KIND, 0));
  }

  private StartRuns startRuns() {
    if (keepsSoaks()) {
      return StartRuns.CYCLES_AND_SOAKS;
    }
    return Controller.STATIONS_DUE.equals(word(Controller.START_RUNS, 0))
        ? StartRuns.STATIONS_STILL_DUE
        : StartRuns.EVERY_STATION;
  }

  private boolean keepsSoaks() {
    return Controller.CYCLES_AND_SOAKS.equals(word(Controller.KIND, 0));
  }

  private Map<DayOfWeek, List<WateringWindow>> windows() {
    Map<DayOfWeek, List<WateringWindow>> all = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      int row = day.getValue() - 1;
      if (Double.isNaN(book.number(NightSheet.MINUTES_OPEN.reference(), row))) {
        continue;
      }
      List<WateringWindow> windows = new ArrayList<>();
      window(NightSheet.FIRST_OPENS, NightSheet.FIRST_MINUTES, row).ifPresent(windows::add);
      window(NightSheet.SECOND_OPENS, NightSheet.SECOND_MINUTES, row).ifPresent(windows::add);
      if (!windows.isEmpty()) {
        all.put(day, windows);
      }
    }
    return FewerNights.of(all, whole(AllowedDays.BY_RULE, 0, DayOfWeek.values().length));
  }

  /** A window of a night as far as water may run in it. */
  private Optional<WateringWindow> window(Column opens, Column minutes, int row) {
    int open = whole(minutes, row, 0);
    int from = open == 0 ? 0 : minute(opens, row);
    return open == 0
        ? Optional.empty()
        : Optional.of(new WateringWindow(from, (from + open) % WateringWindow.DAY));
  }

  private int minute(Column column, int row) {
    return CalendarText.minuteOfDay(book.number(column.reference(), row));
  }

  private int whole(Column column, int row, int otherwise) {
    double number = book.number(column.reference(), row);
    return Double.isNaN(number) ? otherwise : (int) Math.round(number);
  }

  private String word(Column column, int row) {
    double position = book.number(column.reference(), row);
    return Double.isNaN(position) ? "" : book.choices(column).get((int) position);
  }

  private List<NightsInput.Station> stations(NightRules rules) {
    List<NightsInput.Station> stations = new ArrayList<>();
    ZonePatterns patterns = new ZonePatterns(book, rules);
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      if (book.counts(Sheets.ZONES, row)) {
        station(row, patterns).ifPresent(stations::add);
      }
    }
    List<NightsInput.LeftOut> lacking =
        leftOut.stream()
            .filter(zone -> zone.why() == NightsInput.LeftOut.Why.LACKS_FIGURES)
            .toList();
    if (!lacking.isEmpty()) {
      add(
          Severity.NOTE,
          CycleAndSoak.CYCLES,
          lacking.get(0).sheet().row(),
          lacking.size() == 1
              ? "is not in the timetable: its cycles, minutes or flow are not known yet"
              : "and %s more are not in the timetable: their cycles, minutes or flow are not known yet"
                  .formatted(lacking.size() - 1),
          "fill what they need");
    }
    return stations;
  }

  private Optional<NightsInput.Station> station(int row, ZonePatterns patterns) {
    OptionalInt program = program(row);
    NightsInput.SheetZone sheet =
        new NightsInput.SheetZone(
            row,
            text(name, row),
            text(place, row),
            program.isEmpty() ? WateredZone.NO_PROGRAM : id(Sheets.PROGRAMS, program.getAsInt()),
            book.number(Demand.NEED_PER_WEEK.reference(), row));
    double cycles = book.number(CycleAndSoak.CYCLES.reference(), row);
    double minutes = book.number(CycleAndSoak.CYCLE_MINUTES.reference(), row);
    double flow = book.number(Emitters.ZONE_FLOW.reference(), row);
    double daysAWeek = book.number(MonthlySchedule.DAYS.reference(), row);
    if (Double.isNaN(cycles + minutes + flow + daysAWeek)) {
      return leaveOut(sheet, NightsInput.LeftOut.Why.LACKS_FIGURES, OptionalInt.empty());
    }
    if (cycles < 1 || minutes < 1) {
      return leaveOut(sheet, NightsInput.LeftOut.Why.NO_WATER, OptionalInt.of(0));
    }
    double soak = book.number(CycleAndSoak.SOAK.reference(), row);
    double rest = cycles == 1 || Double.isNaN(soak) ? 0 : soak;
    if (cycles > MOST_CYCLES || minutes > WateringWindow.DAY || rest > WateringWindow.DAY) {
      add(
          Severity.CHECK,
          CycleAndSoak.CYCLES,
          row,
          "cannot be watered in a night: it wants %s cycles of %s min with soaks of %s min, and is left out of the timetable"
              .formatted((long) cycles, (long) minutes, (long) rest),
          "water it on more days, or use emitters with a lower precipitation rate");
      return leaveOut(
          sheet,
          NightsInput.LeftOut.Why.TOO_LONG,
          OptionalInt.of((int) Math.round(cycles * minutes * daysAWeek)));
    }
    double interval = book.number(Demand.LONGEST_INTERVAL.reference(), row);
    int apart = Double.isNaN(interval) ? 7 : (int) Math.max(1, Math.min(31, interval));
    Optional<WateringDays> days = patterns.days(row, apart);
    if (days.isEmpty()) {
      return leaveOut(sheet, NightsInput.LeftOut.Why.LACKS_DAYS, OptionalInt.empty());
    }
    int given = (int) Math.round(book.number(CycleAndSoak.MINUTES_GIVEN.reference(), row));
    Optional<NightsInput.LeftOut.Why> cannot = patterns.cannot(days.get());
    if (wired == whole(Controller.STATIONS, 0, Integer.MAX_VALUE)) {
      cannot = Optional.of(NightsInput.LeftOut.Why.OVER_STATIONS);
    }
    if (cannot.isPresent()) {
      return leaveOut(sheet, cannot.get(), OptionalInt.of((int) Math.round(given * daysAWeek)));
    }
    wired++;
    WateredZone zone =
        new WateredZone(
            id(Sheets.ZONES, row),
            sheet.program(),
            patterns.order(row),
            (int) cycles,
            (int) minutes,
            (int) rest,
            flow,
            days.get(),
            (int) (cycles * minutes) - given,
            program.isEmpty() ? OptionalInt.empty() : wish(program.getAsInt()));
    return Optional.of(
        new NightsInput.Station(
            zone, sheet, book.number(Demand.RUN_TIME_PER_WEEK.reference(), row)));
  }

  private Optional<NightsInput.Station> leaveOut(
      NightsInput.SheetZone sheet, NightsInput.LeftOut.Why why, OptionalInt minutes) {
    leftOut.add(new NightsInput.LeftOut(sheet, why, minutes));
    return Optional.empty();
  }

  private long id(String table, int row) {
    return book.contents().row(table, row).id();
  }

  private String text(Reference column, int row) {
    return book.entry(column, row) instanceof Entry.Words words ? words.text() : "";
  }

  /** The row of a zone's program. */
  private OptionalInt program(int row) {
    double program = book.number(SiteBudget.ZONE_PROGRAM.reference(), row);
    return program < book.rows(Sheets.PROGRAMS)
        ? OptionalInt.of((int) program)
        : OptionalInt.empty();
  }

  private OptionalInt wish(int program) {
    double wish = book.number(SiteNights.START_WISH.reference(), program);
    return Double.isNaN(wish)
        ? OptionalInt.empty()
        : OptionalInt.of(CalendarText.minuteOfDay(wish));
  }

  private Map<Long, NightsInput.Program> programs() {
    Map<Long, NightsInput.Program> programs = new HashMap<>();
    for (int row = 0; row < book.rows(Sheets.PROGRAMS); row++) {
      String called = text(SiteBudget.PROGRAM.reference(), row);
      programs.put(id(Sheets.PROGRAMS, row), new NightsInput.Program(row, called));
    }
    return programs;
  }

  private void add(Severity severity, Column column, int row, String sentence, String cure) {
    findings.add(
        new NightFinding(severity, column.reference(), row, sentence, cure, Optional.empty()));
  }
}
