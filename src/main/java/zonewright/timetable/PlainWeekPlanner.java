package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Makes the timetable of a site whose controller starts programs at set times: the stations of a
 * program share its days, and its start times are the same on each of them.
 *
 * <p>Each program keeps inside the hours that all its nights have open, and two programs keep apart
 * where they ever share a night. One program runs at a time and one valve is open at a time. What
 * the hours, the starts or the programs of the controller do not suffice for is left undone.
 */
public final class PlainWeekPlanner {
  private final NightRules rules;
  private final StartRuns startRuns;
  private final List<TimetableFinding> findings = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();
  private final List<PlainProgram> programs = new ArrayList<>();
  private Calendar calendar;

  /** A program to key in, on its way to one. */
  private static final class Part {
    private final ProgramPart program;
    private int place;
    private final List<WateredZone> zones;

    /** Places in the calendar of the nights on which it should water and those it can. */
    private final List<Integer> due = new ArrayList<>();

    private final List<Integer> nights = new ArrayList<>();
    private List<WateringWindow> hours = List.of();

    /** Its cycles in each of the nights it can water, and those left undone. */
    private List<ValveRun> runs = List.of();

    private List<Undone> undone = List.of();
    private int finish;

    Part(ProgramPart program, List<WateredZone> zones) {
      this.program = program;
      this.zones = ProgramChain.inOrder(zones);
    }
  }

  private PlainWeekPlanner(NightRules rules, StartRuns startRuns) {
    this.rules = rules;
    this.startRuns = startRuns;
  }

  /**
   * Plans the site.
   *
   * @param zones the zones, each in the program it names
   * @param rules what holds for the site; the most valves at once is taken as one
   * @param firstDay the first date of the plan; matters only when a zone waters by dates
   * @param startRuns what a start of a program does
   * @throws java.util.concurrent.CancellationException when the thread is interrupted meanwhile
   */
  public static PlainTimetable plan(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, StartRuns startRuns) {
    PlainTimetable plan = new PlainWeekPlanner(rules, startRuns).run(zones, firstDay);
    Timetable made = plan.timetable();
    if (made.overrunMinutes() == 0) {
      return plan;
    }
    List<Cure> cures = new PlainCures(zones, rules, firstDay, startRuns, made).find();
    return new PlainTimetable(
        new Timetable(made.nights(), made.zones(), made.findings(), cures), plan.programs());
  }

  /** Plans the site, and leaves it to the caller to seek cures. */
  static Timetable withoutCures(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, StartRuns startRuns) {
    return new PlainWeekPlanner(rules, startRuns).run(zones, firstDay).timetable();
  }

  private PlainTimetable run(List<WateredZone> zones, LocalDate firstDay) {
    split(zones);
    List<Waterings> wanted = parts.stream().map(PlainWeekPlanner::together).toList();
    WeekdayChoice.Result choice = WeekdayChoice.choose(wanted, rules);
    findings.addAll(choice.findings());
    calendar = new Calendar(wanted, rules, firstDay, choice.days(), Calendar.weekly(zones));
    for (int day = 0; day < calendar.nights().size(); day++) {
      for (int number : calendar.zonesOn(day, choice.days())) {
        parts.get(number).due.add(day);
      }
    }
    number();
    place();
    programs.sort(
        Comparator.comparingInt(
            program -> program.startMinutes().stream().findFirst().orElse(Integer.MAX_VALUE)));
    List<NightPlan> nights = nights();
    return new PlainTimetable(
        new Timetable(nights, water(zones, nights), findings, List.of()), programs);
  }

  /** Numbers the programs so that those a controller lacks are the ones that ask for least. */
  private void number() {
    List<Integer> order = new ArrayList<>();
    for (int number = 0; number < parts.size(); number++) {
      order.add(number);
    }
    order.sort(Comparator.comparingInt(number -> -minutes(number)));
    for (int i = 0; i < order.size(); i++) {
      parts.get(order.get(i)).place = i + 1;
    }
  }

  private int minutes(int number) {
    Part part = parts.get(number);
    WateringDays days = part.zones.get(0).days();
    return calendar.asked(days, calendar.firstDay(number))
        * part.zones.stream().mapToInt(WateredZone::minutesPerNight).sum();
  }

  /** Zones by program, and where those of one do not go together, by days and cycles. */
  private void split(List<WateredZone> zones) {
    Map<Long, Map<Object, List<WateredZone>>> all = new LinkedHashMap<>();
    for (WateredZone zone : zones) {
      if (zone.flow() <= rules.availableFlow()) {
        all.computeIfAbsent(zone.program(), any -> new LinkedHashMap<>())
            .computeIfAbsent(rhythm(zone), any -> new ArrayList<>())
            .add(zone);
      }
    }
    all.forEach(
        (program, groups) -> {
          int number = 1;
          for (List<WateredZone> group : groups.values()) {
            ProgramPart part = new ProgramPart(program, number++);
            parts.add(new Part(part, group));
          }
          if (groups.size() > 1) {
            List<WateredZone> examples =
                groups.values().stream().map(group -> group.get(0)).toList();
            findings.add(new TimetableFinding.ProgramSplit(program, examples));
          }
        });
  }

  /** What all stations of a program must have in common. */
  private Object rhythm(WateredZone zone) {
    Object days =
        zone.days() instanceof WateringDays.ChooseWeekdays free ? free.daysNeeded() : zone.days();
    return startRuns == StartRuns.EVERY_STATION ? List.of(days, zone.cycles()) : days;
  }

  /** A program's waterings, for the choice of its days. */
  private static Waterings together(Part part) {
    WateringDays days = part.zones.get(0).days();
    if (days instanceof WateringDays.ChooseWeekdays free) {
      int gap = free.longestGap();
      Set<DayOfWeek> allowed = new LinkedHashSet<>(free.allowed());
      for (WateredZone zone : part.zones) {
        WateringDays.ChooseWeekdays other = (WateringDays.ChooseWeekdays) zone.days();
        gap = Math.min(gap, other.longestGap());
        allowed.retainAll(other.allowed());
      }
      days =
          new WateringDays.ChooseWeekdays(
              free.daysNeeded(), gap, allowed.isEmpty() ? free.allowed() : allowed);
    }
    int minutes = part.zones.stream().mapToInt(WateredZone::minutesPerNight).sum();
    return new Waterings(part.program, days, minutes);
  }

  /** Places the programs that the controller has and that find a night. */
  private void place() {
    List<Part> placed = new ArrayList<>();
    List<PlainWeekPlacer.Program> asked = new ArrayList<>();
    for (Part part : parts) {
      chooseHours(part);
      if (part.place > rules.mostPrograms()) {
        leaveOut(part);
      } else if (!part.nights.isEmpty()) {
        Chain chain = ProgramChain.of(part.zones, part.hours, rules.gapMinutes());
        asked.add(new PlainWeekPlacer.Program(chain, part.nights, part.hours));
        placed.add(part);
      }
    }
    int[][] starts = PlainWeekPlacer.place(asked, rules.gapMinutes());
    for (int i = 0; i < placed.size(); i++) {
      keyIn(placed.get(i), starts[i], asked.get(i).chain());
    }
  }

  /** The hours that the nights of a program have in common; nights that share none are left out. */
  private void chooseHours(Part part) {
    boolean told = false;
    for (int night : part.due) {
      DayOfWeek day = calendar.nights().get(night).weekday();
      List<WateringWindow> both =
          part.nights.isEmpty() ? rules.windowsOn(day) : common(part.hours, rules.windowsOn(day));
      if (!both.isEmpty()) {
        part.hours = both;
        part.nights.add(night);
      } else if (!told) {
        DayOfWeek first = calendar.nights().get(part.nights.get(0)).weekday();
        findings.add(new TimetableFinding.NoCommonHours(part.program, first, day));
        told = true;
      }
    }
  }

  private static List<WateringWindow> common(
      List<WateringWindow> some, List<WateringWindow> others) {
    List<WateringWindow> both = new ArrayList<>();
    for (WateringWindow one : some) {
      for (WateringWindow other : others) {
        int from = Math.max(one.startMinute(), other.startMinute());
        int to = Math.min(one.endMinute(), other.endMinute());
        if (from < to && from < WateringWindow.DAY) {
          both.add(new WateringWindow(from, to));
        }
      }
    }
    return both;
  }

  private void leaveOut(Part part) {
    List<Undone> undone = new ArrayList<>();
    for (WateredZone zone : part.zones) {
      for (int cycle = 1; cycle <= zone.cycles(); cycle++) {
        undone.add(new Undone(zone, cycle, Undone.Why.OVER_PROGRAMS, OptionalInt.empty()));
      }
    }
    part.undone = undone;
    add(part, List.of(), List.of(), 0);
  }

  private void keyIn(Part part, int[] starts, Chain chain) {
    int gap = rules.gapMinutes();
    int closes = part.hours.get(part.hours.size() - 1).endMinute();
    FittingCard fitting = new FittingCard(part.zones, starts, gap, closes, rules.mostStarts());
    List<PlainProgram.Station> stations = fitting.stations();
    part.runs = FittingCard.runs(stations, starts, gap);
    part.undone = fitting.undone(stations);
    for (int pass = 0; pass < starts.length; pass++) {
      part.finish = Math.max(part.finish, starts[pass] + chain.minutes(pass));
    }
    int used = stations.stream().mapToInt(PlainProgram.Station::starts).max().orElse(0);
    List<Integer> keyed = new ArrayList<>();
    for (int pass = 0; pass < used; pass++) {
      keyed.add(starts[pass]);
    }
    add(part, keyed, stations, closes);
    int longest = ImpossibleZones.longestStretch(part.hours);
    if (chain.minutes(0) > longest) {
      findings.add(new TimetableFinding.StartOverWindow(part.program, chain.minutes(0), longest));
    }
    for (PlainProgram.Station station : stations) {
      int free =
          WateringWindow.DAY
              - (starts[station.starts() - 1] - starts[0])
              - station.zone().minutesPerCycle();
      if (station.starts() > 1 && free < station.zone().soakMinutes()) {
        findings.add(new TimetableFinding.RestBetweenNights(station.zone()));
      }
    }
  }

  private void add(
      Part part, List<Integer> starts, List<PlainProgram.Station> stations, int closes) {
    List<Night> nights = part.nights.stream().map(night -> calendar.nights().get(night)).toList();
    PlainProgram.Asked asked =
        new PlainProgram.Asked(part.zones, part.zones.get(0).cycles(), part.finish, closes);
    programs.add(new PlainProgram(part.program, part.place, starts, stations, nights, asked));
  }

  private List<NightPlan> nights() {
    List<NightPlan> plans = new ArrayList<>();
    for (int day = 0; day < calendar.nights().size(); day++) {
      Night night = calendar.nights().get(day);
      List<WateringWindow> windows = rules.windowsOn(night.weekday());
      if (!windows.isEmpty()) {
        int here = day;
        plans.add(
            night(night, windows, parts.stream().filter(p -> p.nights.contains(here)).toList()));
      }
    }
    return plans;
  }

  private NightPlan night(Night night, List<WateringWindow> windows, List<Part> here) {
    List<ValveRun> runs = new ArrayList<>();
    List<Undone> undone = new ArrayList<>();
    List<List<WateredZone>> placed = new ArrayList<>();
    int opens = windows.get(0).startMinute();
    int finish = opens;
    for (Part part : here) {
      runs.addAll(part.runs);
      undone.addAll(part.undone);
      finish = Math.max(finish, part.finish);
      if (part.finish > 0) {
        placed.add(part.zones);
      }
    }
    runs.sort(Comparator.comparingInt(ValveRun::startMinute));
    int bound = placed.isEmpty() ? opens : ProgramChain.bound(placed, windows, rules.gapMinutes());
    return new NightPlan(night, windows, runs, undone, runs, finish, Math.min(bound, finish));
  }

  private List<ZoneWater> water(List<WateredZone> zones, List<NightPlan> plans) {
    Map<Long, Integer> partOf = new HashMap<>();
    for (int number = 0; number < parts.size(); number++) {
      for (WateredZone zone : parts.get(number).zones) {
        partOf.put(zone.number(), number);
      }
    }
    WaterBalance balance = new WaterBalance(plans);
    for (WateredZone zone : zones) {
      Integer number = partOf.get(zone.number());
      if (number == null) {
        balance.add(zone, calendar.asked(zone.days(), 0), List.of(), Undone.Why.OVER_FLOW);
        continue;
      }
      Part part = parts.get(number);
      List<Night> nights = part.nights.stream().map(night -> calendar.nights().get(night)).toList();
      int asked = calendar.asked(zone.days(), calendar.firstDay(number));
      balance.add(zone, asked, nights, lost(part));
    }
    return balance.zones();
  }

  private static Undone.Why lost(Part part) {
    return part.due.size() > part.nights.size()
        ? Undone.Why.NO_COMMON_HOURS
        : Undone.Why.CLOSED_NIGHTS;
  }
}
