package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Makes the timetable of a site whose controller starts programs at set times: the stations of a
 * program share its days, and its start times are the same on each of them.
 *
 * <p>Each program keeps inside the hours that all its nights have open, and two programs keep apart
 * where they ever share a night, unless the controller runs two at once and the flow feeds the
 * largest stations of both. A program has one valve open at a time. Where a program asks for more
 * starts than it may have, or for starts on both sides of midnight, a second program of the
 * controller takes them. What the hours, the starts or the programs of the controller do not
 * suffice for is left undone.
 */
public final class PlainWeekPlanner {
  private static final List<WateringWindow> UNTIL_MIDNIGHT =
      List.of(new WateringWindow(0, WateringWindow.DAY));

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
    private Optional<Chain> chain = Optional.empty();
    private int finish;

    Part(ProgramPart program, List<WateredZone> zones) {
      this.program = program;
      this.zones = ProgramChain.inOrder(zones);
    }

    int closes() {
      return hours.get(hours.size() - 1).endMinute();
    }
  }

  /**
   * What of a part is keyed in.
   *
   * @param first with which of the starts each of its programs begins
   * @param startsKept for how many starts there are programs
   */
  private record Keyed(
      Part part, List<Integer> starts, List<Integer> first, int startsKept, PartCard card) {}

  private PlainWeekPlanner(NightRules rules, StartRuns startRuns) {
    this.rules = rules;
    this.startRuns = startRuns;
  }

  /**
   * Plans the site.
   *
   * @param zones the zones, each in the program it names
   * @param rules what holds for the site; where more than one valve may be open at once, two
   *     programs may run at once
   * @param firstDay the first date of the plan; matters only when a zone waters by dates
   * @param startRuns what a start of a program does
   * @throws java.util.concurrent.CancellationException when the thread is interrupted meanwhile
   */
  public static PlainTimetable plan(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, StartRuns startRuns) {
    PlainTimetable plan = best(zones, rules, firstDay, startRuns);
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
    return best(zones, rules, firstDay, startRuns).timetable();
  }

  /** The first plan after which nothing is left undone, or the one that leaves least. */
  private static PlainTimetable best(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, StartRuns startRuns) {
    PlainTimetable best = null;
    Set<List<WateredZone>> tried = new HashSet<>();
    for (FewerPrograms.Aim aim : FewerPrograms.aims(rules, zones.size())) {
      PlainWeekPlanner planner = new PlainWeekPlanner(rules, startRuns);
      List<WateredZone> then = planner.keyedTogether(zones, aim);
      if (tried.add(then)) {
        PlainTimetable plan = planner.run(then, firstDay);
        best = best == null || undone(plan) < undone(best) ? plan : best;
      }
      if (undone(best) == 0) {
        return best;
      }
    }
    return best;
  }

  private static int undone(PlainTimetable plan) {
    return plan.timetable().zones().stream().mapToInt(ZoneWater::minutesUndone).sum();
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

  /** The zones, changed where the controller would else lack programs for those the flow feeds. */
  private List<WateredZone> keyedTogether(List<WateredZone> zones, FewerPrograms.Aim aim) {
    List<WateredZone> fed = zones.stream().filter(this::fed).toList();
    Iterator<WateredZone> then = FewerPrograms.of(fed, rules, startRuns, aim, findings).iterator();
    return zones.stream().map(zone -> fed(zone) ? then.next() : zone).toList();
  }

  private boolean fed(WateredZone zone) {
    return zone.flow() <= rules.availableFlow();
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
      if (fed(zone)) {
        all.computeIfAbsent(zone.program(), any -> new LinkedHashMap<>())
            .computeIfAbsent(FewerPrograms.rhythm(zone, startRuns), any -> new ArrayList<>())
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
    for (Part part : parts) {
      chooseHours(part);
      if (part.place > rules.mostPrograms()) {
        leaveOut(part);
      } else if (!part.nights.isEmpty()) {
        part.chain = Optional.of(chain(part));
        placed.add(part);
      }
    }
    placed.sort(Comparator.comparingInt(part -> part.place));
    // Starts on one side of midnight take fewer programs, on both sides they take less of the
    // hours.
    List<Keyed> oneSide = keyed(placed, true);
    List<Keyed> bothSides = keyed(placed, false);
    boolean more = minutes(bothSides) > minutes(oneSide);
    (more ? bothSides : oneSide).forEach(this::keyIn);
  }

  private Chain chain(Part part) {
    return startRuns == StartRuns.CYCLES_AND_SOAKS
        ? ProgramChain.ofOneStart(part.zones, part.hours, rules.gapMinutes(), rules.longestRun())
        : ProgramChain.of(part.zones, part.hours, rules.gapMinutes());
  }

  private List<Keyed> keyed(List<Part> placed, boolean oneSide) {
    List<PlainWeekPlacer.Program> asked = new ArrayList<>();
    for (Part part : placed) {
      asked.add(
          new PlainWeekPlacer.Program(
              part.chain.orElseThrow(),
              part.nights,
              part.hours,
              oneSide && !everyNight(part),
              part.zones.stream().mapToDouble(WateredZone::flow).max().orElse(0)));
    }
    int[][] starts = PlainWeekPlacer.place(asked, rules);
    int free = rules.mostPrograms() - parts.size();
    List<Keyed> keyed = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      Keyed one = keyed(placed.get(i), starts[i], 1 + Math.max(0, free));
      free -= one.first().size() - 1;
      keyed.add(one);
    }
    return keyed;
  }

  private Keyed keyed(Part part, int[] starts, int most) {
    List<Integer> first = KeyedStarts.programs(starts, everyNight(part), rules.mostStarts());
    int kept = first.size() > most ? first.get(most) : starts.length;
    PartCard card =
        startRuns == StartRuns.CYCLES_AND_SOAKS
            ? new FittingSoaks(
                part.zones, starts[0], rules.gapMinutes(), part.closes(), rules.longestRun())
            : new FittingCard(part.zones, starts, rules.gapMinutes(), part.closes(), kept);
    return new Keyed(
        part,
        Arrays.stream(starts).boxed().toList(),
        first.subList(0, Math.min(most, first.size())),
        kept,
        card);
  }

  private boolean everyNight(Part part) {
    return part.nights.size() == calendar.nights().size();
  }

  /** Minutes of watering in all nights. */
  private static long minutes(List<Keyed> keyed) {
    return keyed.stream()
        .mapToLong(one -> (long) one.card().minutes() * one.part().nights.size())
        .sum();
  }

  /** The hours that the nights of a program have in common; nights that share none are left out. */
  private void chooseHours(Part part) {
    boolean told = false;
    WateringDays days = part.zones.get(0).days();
    boolean onDates =
        days instanceof WateringDays.OddDates || days instanceof WateringDays.EvenDates;
    for (int night : part.due) {
      DayOfWeek day = calendar.nights().get(night).weekday();
      // What starts after midnight of an odd date would start on an even one.
      List<WateringWindow> open =
          onDates ? common(UNTIL_MIDNIGHT, rules.windowsOn(day)) : rules.windowsOn(day);
      List<WateringWindow> both = part.nights.isEmpty() ? open : common(part.hours, open);
      if (!both.isEmpty()) {
        part.hours = both;
        part.nights.add(night);
      } else if (!told && !part.nights.isEmpty()) {
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
    programs.add(
        new PlainProgram(
            part.program,
            part.place,
            List.of(),
            List.of(),
            List.of(),
            nights(part),
            asked(part, 0, 0)));
  }

  private List<Night> nights(Part part) {
    return part.nights.stream().map(night -> calendar.nights().get(night)).toList();
  }

  private PlainProgram.Asked asked(Part part, int kept, int closes) {
    int starts = part.chain.map(Chain::cycles).orElse(part.zones.get(0).cycles());
    return new PlainProgram.Asked(part.zones, starts, kept, part.finish, closes);
  }

  private void keyIn(Keyed keyed) {
    Part part = keyed.part();
    Chain chain = part.chain.orElseThrow();
    List<Integer> starts = keyed.starts();
    part.runs = keyed.card().runs();
    part.undone = keyed.card().undone();
    for (int pass = 0; pass < starts.size(); pass++) {
      part.finish = Math.max(part.finish, starts.get(pass) + chain.minutes(pass));
    }
    for (int number = 0; number < keyed.first().size(); number++) {
      int from = keyed.first().get(number);
      int to =
          number + 1 < keyed.first().size() ? keyed.first().get(number + 1) : keyed.startsKept();
      add(keyed, number, from, to);
    }
    int longest = ImpossibleZones.longestStretch(part.hours);
    if (chain.minutes(0) > longest) {
      findings.add(new TimetableFinding.StartOverWindow(part.program, chain.minutes(0), longest));
    }
    restBetweenNights(part);
  }

  /** Adds the program of the controller that takes the starts from one to another. */
  private void add(Keyed keyed, int number, int from, int to) {
    Part part = keyed.part();
    boolean oneStart = startRuns == StartRuns.CYCLES_AND_SOAKS;
    List<PlainProgram.Station> stations = new ArrayList<>();
    int last = from;
    for (PlainProgram.Station station : keyed.card().stations()) {
      int end = oneStart ? to : Math.min(station.cycles(), to);
      if (end > from) {
        int cycles = oneStart ? station.cycles() : end - from;
        stations.add(new PlainProgram.Station(station.zone(), cycles));
        last = Math.max(last, end);
      }
    }
    if (number > 0 && stations.isEmpty()) {
      return;
    }
    List<Integer> starts = keyed.starts().subList(from, last);
    PlainProgram.Asked asked =
        number == 0
            ? asked(part, keyed.startsKept(), part.closes())
            : new PlainProgram.Asked(List.of(), 0, 0, 0, part.closes());
    ProgramPart program = part.program;
    int place = part.place;
    if (number > 0) {
      long others = programs.stream().filter(PlainWeekPlanner::second).count();
      place = parts.size() + (int) others + 1;
      program = new ProgramPart(program.program(), place);
    }
    List<ValveRun> runs =
        part.runs.stream()
            .filter(run -> oneStart || (run.cycle() > from && run.cycle() <= to))
            .toList();
    programs.add(new PlainProgram(program, place, starts, stations, runs, nights(part), asked));
  }

  /** Says whether a program takes starts of another that has no room for them. */
  private static boolean second(PlainProgram program) {
    return program.asked().zones().isEmpty();
  }

  private void restBetweenNights(Part part) {
    Map<WateredZone, List<ValveRun>> byZone = new LinkedHashMap<>();
    part.runs.forEach(run -> byZone.computeIfAbsent(run.zone(), any -> new ArrayList<>()).add(run));
    byZone.forEach(
        (zone, runs) -> {
          int first = runs.get(0).startMinute();
          int last = runs.stream().mapToInt(ValveRun::endMinute).max().orElse(first);
          if (runs.size() > 1 && WateringWindow.DAY - (last - first) < zone.soakMinutes()) {
            findings.add(new TimetableFinding.RestBetweenNights(zone));
          }
        });
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
    List<Chain> placed = new ArrayList<>();
    int opens = windows.get(0).startMinute();
    int finish = opens;
    for (Part part : here) {
      runs.addAll(part.runs);
      undone.addAll(part.undone);
      finish = Math.max(finish, part.finish);
      part.chain.ifPresent(placed::add);
    }
    runs.sort(Comparator.comparingInt(ValveRun::startMinute));
    int bound = placed.isEmpty() ? opens : ProgramChain.bound(placed, windows, rules);
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
      int asked = calendar.asked(zone.days(), calendar.firstDay(number));
      balance.add(zone, asked, nights(part), lost(part));
    }
    return balance.zones();
  }

  private static Undone.Why lost(Part part) {
    return part.due.size() > part.nights.size()
        ? Undone.Why.NO_COMMON_HOURS
        : Undone.Why.CLOSED_NIGHTS;
  }
}
