package zonewright.nights;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
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
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;

/** Reads from the sheets of a design what its timetable depends on. */
final class NightsReading {
  /** Counts dates where no first night is given: a Monday, the first day of a month. */
  static final LocalDate ANY_FIRST_DAY = LocalDate.of(2026, 6, 1);

  private static final int MOST_CYCLES = 96;

  private final Book book;
  private final List<NightFinding> findings = new ArrayList<>();

  /**
   * What was read.
   *
   * @param input the problem; empty where there is none to solve
   * @param findings what keeps zones or nights out of the timetable
   */
  record Read(Optional<NightsInput> input, List<NightFinding> findings) {
    Read {
      findings = List.copyOf(findings);
    }
  }

  private final Reference name;
  private final Reference place;

  private NightsReading(Book book) {
    this.book = book;
    List<Column> columns = book.blueprint().table(Sheets.ZONES).columns();
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
    return new Read(reading.input(), reading.findings);
  }

  private Optional<NightsInput> input() {
    Map<DayOfWeek, List<WateringWindow>> windows = windows();
    Optional<NightRules.Clash> clash = NightRules.clash(windows);
    if (clash.isPresent()) {
      add(
          Severity.CHECK,
          NightSheet.CLOSES,
          clash.get().day().getValue() - 1,
          "has windows that overlap: " + lower(clash.get().sentence()),
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
            whole(SiteNights.MOST_VALVES, 0, 1),
            flow > 0 ? flow : Double.POSITIVE_INFINITY,
            whole(SiteNights.GAP, 0, 0),
            whole(SiteRules.MOST_CYCLES, 0, 4),
            Set.of());
    double date = book.number(SiteNights.FIRST_NIGHT.reference(), 0);
    List<NightsInput.Station> stations = stations(rules);
    if (stations.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new NightsInput(
            stations,
            rules,
            SiteNights.PROGRAM_STARTS.equals(word(SiteNights.CONTROLLER, 0)),
            SiteNights.STATIONS_DUE.equals(word(SiteNights.START_RUNS, 0))
                ? StartRuns.STATIONS_STILL_DUE
                : StartRuns.EVERY_STATION,
            Double.isNaN(date) ? ANY_FIRST_DAY : CalendarText.date(date)));
  }

  private Map<DayOfWeek, List<WateringWindow>> windows() {
    Map<DayOfWeek, List<WateringWindow>> all = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      int row = day.getValue() - 1;
      if (Double.isNaN(book.number(NightSheet.MINUTES_OPEN.reference(), row))) {
        continue;
      }
      List<WateringWindow> windows = new ArrayList<>();
      windows.add(window(NightSheet.OPENS, NightSheet.CLOSES, row));
      if (!(book.entry(NightSheet.OPENS_AGAIN.reference(), row) instanceof Entry.Blank)) {
        windows.add(window(NightSheet.OPENS_AGAIN, NightSheet.CLOSES_AGAIN, row));
      }
      all.put(day, windows);
    }
    return all;
  }

  private WateringWindow window(Column opens, Column closes, int row) {
    return new WateringWindow(minute(opens, row), minute(closes, row));
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
    Map<String, OptionalInt> wishes = wishes();
    ZonePatterns patterns = new ZonePatterns(book, rules);
    int lacking = 0;
    int firstLacking = -1;
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      if (!book.counts(Sheets.ZONES, row)) {
        continue;
      }
      double cycles = book.number(CycleAndSoak.CYCLES.reference(), row);
      double minutes = book.number(CycleAndSoak.CYCLE_MINUTES.reference(), row);
      double flow = book.number(Emitters.ZONE_FLOW.reference(), row);
      double days = book.number(Demand.WATERING_DAYS.reference(), row);
      if (Double.isNaN(cycles + minutes + flow + days)) {
        lacking++;
        firstLacking = firstLacking < 0 ? row : firstLacking;
      } else if (cycles >= 1 && minutes >= 1) {
        station(row, (int) cycles, (int) minutes, flow, wishes, patterns).ifPresent(stations::add);
      }
    }
    if (lacking > 0) {
      add(
          Severity.NOTE,
          CycleAndSoak.CYCLES,
          firstLacking,
          lacking == 1
              ? "is not in the timetable: its cycles, minutes or flow are not known yet"
              : "and %s more are not in the timetable: their cycles, minutes or flow are not known yet"
                  .formatted(lacking - 1),
          "fill what they need");
    }
    return stations;
  }

  private Optional<NightsInput.Station> station(
      int row,
      int cycles,
      int minutes,
      double flow,
      Map<String, OptionalInt> wishes,
      ZonePatterns patterns) {
    double soak = book.number(CycleAndSoak.SOAK.reference(), row);
    int rest = cycles == 1 || Double.isNaN(soak) ? 0 : (int) soak;
    if (cycles > MOST_CYCLES || minutes > WateringWindow.DAY || rest > WateringWindow.DAY) {
      add(
          Severity.CHECK,
          CycleAndSoak.CYCLES,
          row,
          "cannot be watered in a night: it wants %s cycles of %s min with soaks of %s min, and is left out of the timetable"
              .formatted(cycles, minutes, rest),
          "water it on more days, or use emitters with a lower precipitation rate");
      return Optional.empty();
    }
    String own = text(name, row);
    String program = word(SiteBudget.ZONE_PROGRAM, row);
    double interval = book.number(Demand.LONGEST_INTERVAL.reference(), row);
    int apart = Double.isNaN(interval) ? 7 : (int) Math.max(1, Math.min(31, interval));
    Optional<WateringDays> days = patterns.days(row, apart);
    if (days.isEmpty()) {
      return Optional.empty();
    }
    WateredZone zone =
        new WateredZone(
            "zone " + own,
            program,
            patterns.order(row),
            cycles,
            minutes,
            rest,
            flow,
            days.get(),
            wishes.getOrDefault(program, OptionalInt.empty()));
    return Optional.of(new NightsInput.Station(zone, row, own, text(place, row), apart));
  }

  private String text(Reference column, int row) {
    return book.entry(column, row) instanceof Entry.Words words ? words.text() : "";
  }

  private Map<String, OptionalInt> wishes() {
    Map<String, OptionalInt> wishes = new HashMap<>();
    for (int row = 0; row < book.rows(Sheets.PROGRAMS); row++) {
      double wish = book.number(SiteNights.START_WISH.reference(), row);
      String name = text(SiteBudget.PROGRAM.reference(), row);
      if (!Double.isNaN(wish) && !name.isEmpty()) {
        wishes.put(name, OptionalInt.of(CalendarText.minuteOfDay(wish)));
      }
    }
    return wishes;
  }

  private static String lower(String sentence) {
    String plain = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    return plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1);
  }

  private void add(Severity severity, Column column, int row, String sentence, String cure) {
    findings.add(
        new NightFinding(severity, column.reference(), row, sentence, cure, Optional.empty()));
  }
}
