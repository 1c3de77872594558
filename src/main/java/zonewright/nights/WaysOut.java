package zonewright.nights;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import zonewright.climate.Peak;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.timetable.WateringDays;
import zonewright.timetable.WateringWindow;
import zonewright.units.CalendarText;
import zonewright.units.QuantityText;
import zonewright.water.Controller;
import zonewright.water.Demand;

/**
 * What would let a schedule fit that does not: each way is tried on a copy of the design, planned
 * anew, and told with what it leaves undone. Settings come before another month's percent, and that
 * before hardware.
 */
public final class WaysOut {
  private static final int MOST_TOLD = 3;
  private static final int MOST_ZONES = 120;
  private static final int HOURS_STEP = 30;
  private static final int MOST_HOURS_LATER = 240;
  private static final int MOST_MORE = 4;
  private static final double LITTLE_LESS = 0.7;

  private final Book book;
  private final NightsInput input;
  private final int now;
  private final List<Integer> lacking = new ArrayList<>();
  private final List<Way> ways = new ArrayList<>();

  /**
   * A way out: what to do, what it costs beside others, the minutes a week left undone, and the
   * settings that do it, where it is done by settings alone.
   */
  private record Way(
      String action, int cost, int left, Optional<Function<Book, List<Edit>>> typed) {}

  /**
   * A way out as it is told.
   *
   * @param sentence what to do, and what comes of it
   * @param edit what does it in a design like that it was found for; none where it takes more than
   *     settings
   */
  public record Told(String sentence, Optional<Function<Book, Edit>> edit) {}

  private WaysOut(Book book, NightsPlan plan) {
    this.book = book;
    this.input = plan.input();
    this.now = undone(plan);
    for (ZoneShare share : ZoneShare.of(plan)) {
      if (!share.whole() && share.asked().isPresent()) {
        lacking.add(share.sheet().row());
      }
    }
  }

  /**
   * Returns up to three ways, a sentence each, those after which everything fits first and of these
   * the cheapest; none where everything fits, or of designs too large to try.
   *
   * @param book the design the plan was made from; it stays as it is
   */
  public static List<Told> of(Book book, NightsPlan plan) {
    WaysOut out = new WaysOut(book, plan);
    if (out.now == 0 || plan.input().stations().size() > MOST_ZONES) {
      return List.of();
    }
    out.moreDays();
    out.widerHours();
    out.otherMonth();
    if (plan.input().plain()) {
      out.more(Controller.PROGRAMS, input -> input.rules().mostPrograms(), "programs");
      out.more(Controller.STARTS, input -> input.rules().mostStarts(), "starts a program");
      out.otherKind();
    }
    out.lowerRate();
    return out.ways.stream()
        .sorted(Comparator.comparing((Way way) -> way.left() > 0).thenComparingInt(Way::cost))
        .limit(MOST_TOLD)
        .map(
            way ->
                new Told(
                    out.sentence(way),
                    way.typed()
                        .map(typed -> trial -> new Edit.Several(way.action(), typed.apply(trial)))))
        .toList();
  }

  /** Returns the same as sentences only. */
  public static List<String> sentences(Book book, NightsPlan plan) {
    return of(book, plan).stream().map(Told::sentence).toList();
  }

  private String sentence(Way way) {
    return way.action()
        + (way.left() == 0
            ? ": then everything fits."
            : ": then %s min a week stay undone instead of %s.".formatted(way.left(), now));
  }

  private static int undone(NightsPlan plan) {
    int weeks = plan.weekly() ? 1 : plan.timetable().nights().size() / 7;
    int sum = ZoneShare.of(plan).stream().mapToInt(share -> share.undone().orElse(0)).sum();
    return sum / Math.max(1, weeks);
  }

  /** What is left undone when something is typed; none where there is then no timetable. */
  private OptionalInt left(Function<Book, List<Edit>> typed) {
    Book trial = book.another(book.snapshot());
    trial.start(new Edit.Several("trial", typed.apply(trial)));
    return left(NightsReading.of(trial).input());
  }

  private OptionalInt left(Optional<NightsInput> then) {
    return then.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(undone(NightsPlanner.plan(then.get(), Optional.empty())));
  }

  /** Takes a way where it helps; returns whether everything fits then. */
  private boolean take(String action, int cost, OptionalInt left) {
    return take(action, cost, left, Optional.empty());
  }

  /** Tries settings, and takes them where they help; returns whether everything fits then. */
  private boolean take(String action, int cost, Function<Book, List<Edit>> typed) {
    return take(action, cost, left(typed), Optional.of(typed));
  }

  private boolean take(
      String action, int cost, OptionalInt left, Optional<Function<Book, List<Edit>>> typed) {
    if (left.isPresent() && left.getAsInt() < now) {
      Optional<Way> before = ways.stream().filter(way -> way.cost() == cost).findFirst();
      if (before.isEmpty() || left.getAsInt() < before.get().left()) {
        before.ifPresent(ways::remove);
        ways.add(new Way(action, cost, left.getAsInt(), typed));
      }
    }
    return left.isPresent() && left.getAsInt() == 0;
  }

  private static Edit set(Book trial, Column column, int row, double number) {
    return new Edits(trial).set(column.reference(), row, new Entry.Figure(number));
  }

  private void moreDays() {
    int open = input.rules().openDays().size();
    for (int more = 1; more < open; more++) {
      int by = more;
      List<String> zones = new ArrayList<>();
      List<Integer> rows = new ArrayList<>();
      for (NightsInput.Station station : input.stations()) {
        int row = station.sheet().row();
        boolean chosen = station.zone().days() instanceof WateringDays.ChooseWeekdays;
        if (lacking.contains(row) && chosen && days(row) + more <= open) {
          rows.add(row);
          zones.add("%s on %s".formatted(NightNames.zone(station.sheet()), days(row) + more));
        }
      }
      if (rows.isEmpty()) {
        return;
      }
      boolean fits =
          take(
              "Water on more days, " + String.join(", ", zones) + " days a week",
              1,
              trial ->
                  rows.stream()
                      .map(row -> set(trial, Demand.WATERING_DAYS, row, days(row) + by))
                      .toList());
      if (fits) {
        return;
      }
    }
  }

  private int days(int row) {
    return (int) book.number(Demand.WATERING_DAYS.reference(), row);
  }

  private void widerHours() {
    for (int later = HOURS_STEP; later <= MOST_HOURS_LATER; later += HOURS_STEP) {
      int by = later;
      boolean fits =
          take(
              "Let every night close " + NightWords.length(later) + " later",
              2,
              trial -> {
                List<Edit> edits = new ArrayList<>();
                input
                    .rules()
                    .openDays()
                    .forEach(
                        day -> {
                          int closes = input.rules().windowsOn(day).get(0).endMinute() + by;
                          edits.add(
                              set(
                                  trial,
                                  NightSheet.CLOSES,
                                  day.getValue() - 1,
                                  CalendarText.timeOfDay(closes % WateringWindow.DAY)));
                        });
                return edits;
              });
      if (fits) {
        return;
      }
    }
  }

  /** The first month after the peak at whose percent everything fits. */
  private void otherMonth() {
    List<MonthBook.Month> months = MonthBook.months(book);
    String peak = book.outcome(Peak.MONTH.reference(), 0).text();
    int at = -1;
    for (int i = 0; i < months.size(); i++) {
      at = months.get(i).name().equals(peak) ? i : at;
    }
    for (int i = 1; at >= 0 && i < months.size(); i++) {
      MonthBook.Month month = months.get((at + i) % months.size());
      OptionalInt left = left(MonthBook.input(book, month.share()));
      if (month.share() < 1 && left.isPresent() && left.getAsInt() == 0) {
        String percent = QuantityText.fixed(month.share() * 100, 0);
        take(
            "Give no more than %s asks for, %s %% of the peak month"
                .formatted(month.name(), percent),
            month.share() >= LITTLE_LESS ? 3 : 7,
            left);
        return;
      }
    }
  }

  private void more(Column column, Function<NightsInput, Integer> has, String what) {
    for (int more = 1; more <= MOST_MORE; more++) {
      int then = has.apply(input) + more;
      OptionalInt left = left(trial -> List.of(set(trial, column, 0, then)));
      if (take("Have a controller with %s %s".formatted(then, what), 4, left)) {
        return;
      }
    }
  }

  private void otherKind() {
    if (book.outcome(Controller.KIND.reference(), 0).text().equals(Controller.CYCLES_AND_SOAKS)) {
      return;
    }
    Entry kind = new Entry.Words(Controller.CYCLES_AND_SOAKS);
    take(
        "Have a controller that keeps cycles and soaks by station",
        5,
        left(trial -> List.of(new Edits(trial).set(Controller.KIND.reference(), 0, kind))));
  }

  /** Emitters that put on no faster than the soil takes in, for zones that lack water and soak. */
  private void lowerRate() {
    List<Integer> rows = new ArrayList<>();
    List<String> zones = new ArrayList<>();
    for (NightsInput.Station station : input.stations()) {
      if (lacking.contains(station.sheet().row()) && station.zone().cycles() > 1) {
        rows.add(station.sheet().row());
        zones.add(NightNames.zone(station.sheet()));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    OptionalInt left =
        left(
            trial -> {
              List<Edit> edits = new ArrayList<>();
              for (int row : rows) {
                double rate = book.number(Emitters.PRECIPITATION_RATE.reference(), row);
                double wetted = book.number(Emitters.WETTED_RATE.reference(), row);
                double less = book.number(Soils.INTAKE_RATE.reference(), row) / wetted;
                double flow = book.number(Emitters.ZONE_FLOW.reference(), row);
                edits.add(set(trial, Emitters.PRECIPITATION_RATE, row, rate * less));
                edits.add(set(trial, Emitters.ZONE_FLOW, row, flow * less));
              }
              return edits;
            });
    take(
        "Give %s emitters of a rate the soil takes in".formatted(String.join(", ", zones)),
        6,
        left);
  }
}
