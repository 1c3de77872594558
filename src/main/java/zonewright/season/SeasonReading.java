package zonewright.season;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import zonewright.balance.Application;
import zonewright.balance.Baseline;
import zonewright.balance.RootZone;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringDays;
import zonewright.timetable.ZoneWater;
import zonewright.trade.Sheets;
import zonewright.units.Unit;
import zonewright.units.Units;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.MonthlySchedule;
import zonewright.water.SiteRules;

/** Reads from the sheets of a design, and its timetable, what its season depends on. */
public final class SeasonReading {
  /** A run that starts from this minute of its night's day on waters the next day. */
  private static final int NOON = 12 * 60;

  private final Book book;
  private final String table;
  private final UnaryOperator<Reference> at;
  private final List<SeasonZone> zones = new ArrayList<>();
  private final List<SeasonZones.LeftOut> leftOut = new ArrayList<>();

  private SeasonReading(Book book, String table, UnaryOperator<Reference> at) {
    this.book = book;
    this.table = table;
    this.at = at;
  }

  /** What keeps a zone out. */
  private static final class Lacking extends Exception {
    private static final long serialVersionUID = 1L;

    Lacking(String why) {
      super(why);
    }
  }

  /**
   * Returns the zones of a design with the runs that its timetable places.
   *
   * @param plan the timetable of the book as it is
   */
  public static SeasonZones proposed(Book book, NightsPlan plan) {
    SeasonReading reading = new SeasonReading(book, Sheets.ZONES, reference -> reference);
    Map<Long, ZoneWater> waters = new HashMap<>();
    plan.timetable().zones().forEach(water -> waters.put(water.zone().number(), water));
    Map<Integer, ZoneShare> shares =
        ZoneShare.of(plan).stream()
            .collect(Collectors.toMap(share -> share.sheet().row(), share -> share));
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      if (book.counts(Sheets.ZONES, row)) {
        ZoneWater water = waters.get(book.contents().row(Sheets.ZONES, row).id());
        int at = row;
        ZoneShare share = shares.get(at);
        reading.take(
            row,
            share == null || share.whole()
                ? ""
                : share.placed()
                    + " of its "
                    + share.asked().orElse(0)
                    + " min "
                    + ZoneShare.period(plan),
            () -> {
              if (water == null) {
                String why = share == null ? "it is not in the timetable" : share.why();
                throw new Lacking(why.isEmpty() ? "it asks for no water" : why);
              }
              return reading.placed(water, plan);
            });
      }
    }
    return new SeasonZones(
        reading.zones, reading.leftOut, "the runs of the timetable as it stands");
  }

  /**
   * Returns the zones as found, with the minutes of a week that their controller runs at present.
   */
  public static SeasonZones found(Book book) {
    SeasonReading reading =
        new SeasonReading(
            book,
            Sheets.FOUND,
            reference ->
                new Reference(
                    Sheets.FOUND, reference.column(), reference.name(), reference.kind()));
    for (int row = 0; row < book.rows(Sheets.FOUND); row++) {
      if (book.counts(Sheets.FOUND, row)) {
        int zone = row;
        reading.take(row, "", () -> reading.present(zone));
      }
    }
    return new SeasonZones(
        reading.zones,
        reading.leftOut,
        "the minutes a week of the sheet Found on its watering days, in cycles short enough not to run off: how many were found stands nowhere, and this speaks for what was found");
  }

  private interface Runs {
    Baseline baseline() throws Lacking;
  }

  private void take(int row, String partly, Runs runs) {
    List<Column> columns = book.schema().table(table).columns();
    String name = text(columns.get(0).reference(), row);
    String place =
        columns.stream()
            .map(Column::reference)
            .filter(reference -> reference.column().equals("place"))
            .findFirst()
            .map(reference -> text(reference, row))
            .orElse("");
    try {
      zones.add(
          new SeasonZone(row, name, place, soil(row), application(row), runs.baseline(), partly));
    } catch (Lacking problem) {
      leftOut.add(new SeasonZones.LeftOut(row, name, problem.getMessage()));
    }
  }

  private RootZone soil(int row) throws Lacking {
    List<Double> coefficients = new ArrayList<>();
    for (Column month : MonthlySchedule.COEFFICIENTS) {
      coefficients.add(number(month, row, Units.ONE));
    }
    double allowed = number(Demand.DEPLETION_USED, row, Units.ONE);
    return new RootZone(
        number(SoilLayers.WATER_HELD, row, Units.MILLIMETRE),
        Math.min(0.99, allowed),
        coefficients);
  }

  private Application application(int row) throws Lacking {
    double uniformity = 1;
    double scheduled = 1;
    double reaching = 1;
    boolean byEfficiency =
        SiteRules.BY_EFFICIENCY.equals(word(SiteRules.GROSS_METHOD.reference(), 0))
            && !Emitters.BY_TEST.equals(word(at.apply(Emitters.RATE_METHOD.reference()), row));
    if (byEfficiency) {
      reaching = number(Emitters.IRRIGATION_EFFICIENCY, row, Units.ONE);
    } else {
      uniformity = number(Emitters.DISTRIBUTION_UNIFORMITY, row, Units.ONE);
      scheduled = 1 / number(Demand.RUN_TIME_MULTIPLIER, row, Units.ONE);
    }
    return new Application(
        number(Emitters.PRECIPITATION_RATE, row, Units.MILLIMETRE_PER_HOUR),
        number(Emitters.WETTED_RATE, row, Units.MILLIMETRE_PER_HOUR),
        number(Soils.INTAKE_RATE, row, Units.MILLIMETRE_PER_HOUR),
        number(Soils.SURFACE_STORAGE, row, Units.MILLIMETRE),
        reaching,
        uniformity,
        scheduled,
        number(Emitters.ZONE_FLOW, row, Units.LITRE_PER_MINUTE));
  }

  /** The runs of a zone in a timetable, with the days that its rule says. */
  private Baseline placed(ZoneWater water, NightsPlan plan) throws Lacking {
    WateredZone zone = water.zone();
    Map<DayOfWeek, int[]> byWeekday = new EnumMap<>(DayOfWeek.class);
    Map<DayOfWeek, Boolean> open = new EnumMap<>(DayOfWeek.class);
    Optional<int[]> first = Optional.empty();
    boolean evening = false;
    for (NightPlan night : plan.timetable().nights()) {
      List<ValveRun> runs =
          night.runs().stream()
              .filter(run -> run.zone().number() == zone.number())
              .sorted(Comparator.comparingInt(ValveRun::startMinute))
              .toList();
      open.put(night.night().weekday(), true);
      if (!runs.isEmpty()) {
        int[] minutes = runs.stream().mapToInt(ValveRun::minutes).toArray();
        byWeekday.putIfAbsent(night.night().weekday(), minutes);
        first = first.isEmpty() ? Optional.of(minutes) : first;
        evening |= runs.get(0).startMinute() >= NOON;
      }
    }
    if (first.isEmpty()) {
      throw new Lacking("nothing of it fits into the nights");
    }
    boolean dates =
        !(zone.days() instanceof WateringDays.OnWeekdays
            || zone.days() instanceof WateringDays.ChooseWeekdays);
    List<int[]> week = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      int[] run = dates && open.containsKey(day) ? first.get() : byWeekday.get(day);
      week.add(run == null ? new int[0] : run);
    }
    Baseline baseline =
        Baseline.weekly(week, number(Controller.MINUTE_STEP.reference(), 0, Units.MINUTE));
    if (zone.days() instanceof WateringDays.OddDates) {
      baseline = baseline.onOddDates();
    } else if (zone.days() instanceof WateringDays.EvenDates) {
      baseline = baseline.onEvenDates();
    } else if (zone.days() instanceof WateringDays.EveryFewDays every) {
      int from = (int) water.nights().get(0).date().orElseThrow().toEpochDay();
      baseline = baseline.everyFewDays(every.days(), from);
    }
    if (Controller.CYCLES_AND_SOAKS.equals(word(Controller.KIND.reference(), 0))) {
      baseline = baseline.divided(zone.minutesPerCycle());
    }
    return evening ? baseline.fromTheEvening() : baseline;
  }

  /** The minutes of a week that are run at present, spread over the watering days. */
  private Baseline present(int row) throws Lacking {
    if (book.entry(AsFound.PRESENT_MINUTES.reference(), row) instanceof Entry.Blank) {
      throw new Lacking("its minutes a week at present are not noted on the sheet Found");
    }
    double minutes = number(AsFound.PRESENT_MINUTES.reference(), row, Units.MINUTE);
    int days = (int) Math.round(number(Demand.WATERING_DAYS, row, Units.ONE));
    int[] aDay = {(int) Math.round(minutes / days)};
    boolean[] waters = new boolean[7];
    IntStream.range(0, days).forEach(day -> waters[day * 7 / days] = true);
    List<int[]> week =
        IntStream.range(0, 7).mapToObj(day -> waters[day] ? aDay : new int[0]).toList();
    Baseline baseline = Baseline.weekly(week, 1);
    double longest = book.number(at.apply(CycleAndSoak.LONGEST_CYCLE.reference()), row);
    return longest >= 1 ? baseline.divided(longest) : baseline;
  }

  private double number(Column column, int row, Unit unit) throws Lacking {
    return number(at.apply(column.reference()), row, unit);
  }

  private double number(Reference reference, int row, Unit unit) throws Lacking {
    Outcome outcome = book.outcome(reference, row);
    if (outcome instanceof Outcome.Amount amount) {
      return reference.kind().unit(book.system()).convert(amount.value(), unit);
    }
    String why = outcome.sentence();
    throw new Lacking(reference.name() + " is not known" + (why.isEmpty() ? "" : ": " + why));
  }

  private String text(Reference column, int row) {
    return book.entry(column, row) instanceof Entry.Words words ? words.text() : "";
  }

  private String word(Reference reference, int row) {
    double position = book.number(reference, row);
    return Double.isNaN(position)
        ? ""
        : book.choices(book.schema().column(reference)).get((int) position);
  }
}
