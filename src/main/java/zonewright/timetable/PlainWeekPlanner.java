package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
 * <p>Programs that ever share a night are placed together, as if all of them ran in it, inside the
 * hours that all their nights have open. So start times hold on every night, whichever of the
 * programs runs in it. Programs that share no night are placed each by themselves.
 */
public final class PlainWeekPlanner {
  private final NightRules rules;
  private final StartRuns startRuns;
  private final List<Finding> findings = new ArrayList<>();

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
    return new PlainWeekPlanner(rules, startRuns).run(zones, firstDay);
  }

  private PlainTimetable run(List<WateredZone> zones, LocalDate firstDay) {
    List<List<WateredZone>> programs = programs(zones);
    List<WateredZone> asZones = programs.stream().map(PlainWeekPlanner::asZone).toList();
    WeekdayChoice.Result choice = WeekdayChoice.choose(asZones, rules);
    findings.addAll(choice.findings().stream().map(PlainWeekPlanner::ofProgram).toList());
    Calendar calendar = new Calendar(asZones, rules, firstDay, choice.days());
    List<List<Integer>> byNight = new ArrayList<>();
    for (int day = 0; day < calendar.nights().size(); day++) {
      byNight.add(calendar.zonesOn(day, choice.days()));
    }
    List<PlainProgram> cards = new ArrayList<>();
    List<ValveRun> runs = new ArrayList<>();
    for (Set<Integer> group : groups(byNight)) {
      place(group, programs, calendar, byNight, cards, runs);
    }
    cards.sort(Comparator.comparingInt(program -> program.card().startMinutes().get(0)));
    List<NightPlan> nights = nights(programs, calendar, byNight, runs);
    findings.addAll(tooShort(nights));
    return new PlainTimetable(
        new Timetable(nights, zoneNights(zones, programs, calendar, byNight), findings, List.of()),
        cards);
  }

  /** Zones by program, and where those of one want different days, by days. */
  private List<List<WateredZone>> programs(List<WateredZone> zones) {
    Map<String, Map<Object, List<WateredZone>>> byName = new LinkedHashMap<>();
    for (WateredZone zone : zones) {
      if (zone.flow() <= rules.availableFlow()) {
        byName
            .computeIfAbsent(zone.program(), name -> new LinkedHashMap<>())
            .computeIfAbsent(rhythm(zone.days()), any -> new ArrayList<>())
            .add(zone);
      } else {
        findings.add(
            Finding.of(
                Finding.Kind.OVER_AVAILABLE_FLOW,
                zone,
                zone.name() + " alone draws more than the available flow and is left out."));
      }
    }
    List<List<WateredZone>> result = new ArrayList<>();
    byName.forEach(
        (name, parts) -> {
          int number = 1;
          for (List<WateredZone> part : parts.values()) {
            String own = number == 1 ? name : name + " (" + number + ")";
            result.add(part.stream().map(zone -> zone.inProgram(own)).toList());
            number++;
          }
          if (parts.size() > 1) {
            findings.add(split(name, parts.values().stream().map(p -> p.get(0)).toList()));
          }
        });
    return result;
  }

  private static Finding split(String name, List<WateredZone> examples) {
    List<String> wants = new ArrayList<>();
    for (WateredZone zone : examples) {
      wants.add(zone.name() + " " + inWords(zone.days()));
    }
    return Finding.ofSite(
        Finding.Kind.PROGRAM_SPLIT,
        "Stations of program "
            + name
            + " want different days ("
            + String.join(", ", wants)
            + "), and a program has one set: key it in as "
            + examples.size()
            + " programs, or give them the same days.");
  }

  private static Object rhythm(WateringDays days) {
    return days instanceof WateringDays.ChooseWeekdays free ? free.daysNeeded() : days;
  }

  private static String inWords(WateringDays days) {
    if (days instanceof WateringDays.ChooseWeekdays free) {
      return free.daysNeeded() + (free.daysNeeded() == 1 ? " day" : " days") + " a week";
    }
    if (days instanceof WateringDays.OnWeekdays fixed) {
      return "on " + Clock.names(fixed.weekdays());
    }
    if (days instanceof WateringDays.EveryFewDays interval) {
      return interval.days() == 1 ? "every day" : "every " + interval.days() + " days";
    }
    return days instanceof WateringDays.OddDates ? "on odd dates" : "on even dates";
  }

  /** A program as one long run, for the choice of its days. */
  private static WateredZone asZone(List<WateredZone> stations) {
    int minutes = stations.stream().mapToInt(WateredZone::minutesPerNight).sum();
    WateringDays days = stations.get(0).days();
    if (days instanceof WateringDays.ChooseWeekdays free) {
      int gap = free.longestGap();
      Set<DayOfWeek> allowed = new LinkedHashSet<>(free.allowed());
      for (WateredZone zone : stations) {
        WateringDays.ChooseWeekdays other = (WateringDays.ChooseWeekdays) zone.days();
        gap = Math.min(gap, other.longestGap());
        allowed.retainAll(other.allowed());
      }
      days =
          new WateringDays.ChooseWeekdays(
              free.daysNeeded(), gap, allowed.isEmpty() ? free.allowed() : allowed);
    }
    String program = stations.get(0).program();
    return new WateredZone(
        program.isBlank() ? "without a name" : program,
        program,
        OptionalInt.empty(),
        1,
        Math.min(WateringWindow.DAY, minutes),
        0,
        0,
        days);
  }

  private static Finding ofProgram(Finding finding) {
    return Finding.ofSite(finding.kind(), "Program " + finding.sentence());
  }

  /** Programs that share nights, directly or by way of others. */
  private static List<Set<Integer>> groups(List<List<Integer>> byNight) {
    List<Set<Integer>> groups = new ArrayList<>();
    for (List<Integer> night : byNight) {
      if (night.isEmpty()) {
        continue;
      }
      Set<Integer> merged = new LinkedHashSet<>(night);
      List<Set<Integer>> apart = new ArrayList<>();
      for (Set<Integer> group : groups) {
        if (group.stream().anyMatch(night::contains)) {
          merged.addAll(group);
        } else {
          apart.add(group);
        }
      }
      groups = apart;
      groups.add(merged);
    }
    return groups;
  }

  private void place(
      Set<Integer> group,
      List<List<WateredZone>> programs,
      Calendar calendar,
      List<List<Integer>> byNight,
      List<PlainProgram> cards,
      List<ValveRun> runs) {
    List<WateredZone> stations = new ArrayList<>();
    List<Integer> inOrder = group.stream().sorted().toList();
    inOrder.forEach(number -> stations.addAll(programs.get(number)));
    Map<String, Integer> numbers = new LinkedHashMap<>();
    inOrder.forEach(number -> numbers.put(programs.get(number).get(0).program(), number));
    Set<DayOfWeek> open = new LinkedHashSet<>();
    for (int day = 0; day < byNight.size(); day++) {
      if (byNight.get(day).stream().anyMatch(group::contains)) {
        open.add(calendar.nights().get(day).weekday());
      }
    }
    Night common = Night.weekly(open.iterator().next());
    List<WateringWindow> hours = commonWindows(open, common.weekday());
    ProgramPlan plan =
        PlainControllerPlanner.plan(
            common,
            stations,
            new NightRules(
                Map.of(common.weekday(), hours),
                1,
                rules.availableFlow(),
                rules.gapMinutes(),
                rules.mostStarts(),
                Set.of()),
            startRuns);
    plan.findings().stream()
        .filter(finding -> finding.kind() != Finding.Kind.NIGHT_TOO_SHORT)
        .forEach(findings::add);
    runs.addAll(plan.night().runs());
    for (ProgramCard card : plan.cards()) {
      int number = numbers.get(card.program());
      List<Night> nights = new ArrayList<>();
      for (int day = 0; day < byNight.size(); day++) {
        if (byNight.get(day).contains(number)) {
          nights.add(calendar.nights().get(day));
        }
      }
      cards.add(new PlainProgram(card, programs.get(number).get(0).days(), nights));
      restOverDays(card, hours);
    }
  }

  /** A start on the next day must leave the soak of the last one its time. */
  private void restOverDays(ProgramCard card, List<WateringWindow> hours) {
    int first = card.startMinutes().get(0);
    int last = card.startMinutes().get(card.startMinutes().size() - 1);
    for (ProgramCard.Station station : card.stations()) {
      int free = WateringWindow.DAY - (last - first) - station.minutes();
      if (station.starts() > 1 && free < station.zone().soakMinutes()) {
        findings.add(
            Finding.of(
                Finding.Kind.REST_BETWEEN_NIGHTS,
                station.zone(),
                station.zone().name()
                    + " starts again a night later before its soak of "
                    + station.zone().soakMinutes()
                    + " min is over. Close the window of "
                    + hours.get(hours.size() - 1).minutes()
                    + " min sooner, or water on fewer days."));
      }
    }
  }

  /** The hours that all these days have open; those of the first where there are none. */
  private List<WateringWindow> commonWindows(Set<DayOfWeek> days, DayOfWeek first) {
    List<WateringWindow> common = rules.windowsOn(first);
    for (DayOfWeek day : days) {
      List<WateringWindow> both = new ArrayList<>();
      for (WateringWindow one : common) {
        for (WateringWindow other : rules.windowsOn(day)) {
          int from = Math.max(one.startMinute(), other.startMinute());
          int to = Math.min(one.endMinute(), other.endMinute());
          if (from < to && from < WateringWindow.DAY) {
            both.add(new WateringWindow(from, to));
          }
        }
      }
      if (both.isEmpty()) {
        findings.add(
            Finding.ofSite(
                Finding.Kind.NO_COMMON_HOURS,
                Clock.name(day)
                    + " and "
                    + Clock.name(first)
                    + " have no hours in common, and a program starts at the same times on all its"
                    + " days. Give both nights windows that overlap."));
        return rules.windowsOn(first);
      }
      common = both;
    }
    return common;
  }

  private List<NightPlan> nights(
      List<List<WateredZone>> programs,
      Calendar calendar,
      List<List<Integer>> byNight,
      List<ValveRun> all) {
    List<NightPlan> plans = new ArrayList<>();
    for (int day = 0; day < byNight.size(); day++) {
      Night night = calendar.nights().get(day);
      List<WateringWindow> windows = rules.windowsOn(night.weekday());
      if (windows.isEmpty()) {
        continue;
      }
      List<WateredZone> here = new ArrayList<>();
      byNight.get(day).forEach(number -> here.addAll(programs.get(number)));
      Set<WateredZone> set = new LinkedHashSet<>(here);
      List<ValveRun> runs = all.stream().filter(run -> set.contains(run.zone())).toList();
      int opens = windows.get(0).startMinute();
      int finish = runs.stream().mapToInt(ValveRun::endMinute).max().orElse(opens);
      int bound =
          here.isEmpty() ? opens : PlainControllerPlanner.bound(night, here, rules, startRuns);
      plans.add(new NightPlan(night, windows, runs, finish, Math.min(bound, finish)));
    }
    return plans;
  }

  private static List<Finding> tooShort(List<NightPlan> nights) {
    List<Finding> found = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      nights.stream()
          .filter(night -> night.night().weekday() == day && night.overrunMinutes() > 0)
          .max(Comparator.comparingInt(NightPlan::overrunMinutes))
          .ifPresent(night -> found.add(TimetablePlanner.tooShort(night, true)));
    }
    return found;
  }

  private static List<ZoneNights> zoneNights(
      List<WateredZone> zones,
      List<List<WateredZone>> programs,
      Calendar calendar,
      List<List<Integer>> byNight) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (int number = 0; number < programs.size(); number++) {
      for (WateredZone station : programs.get(number)) {
        numbers.put(station.name(), number);
      }
    }
    List<ZoneNights> result = new ArrayList<>();
    for (WateredZone zone : zones) {
      List<Night> nights = new ArrayList<>();
      Integer number = numbers.get(zone.name());
      for (int day = 0; number != null && day < byNight.size(); day++) {
        if (byNight.get(day).contains(number)) {
          nights.add(calendar.nights().get(day));
        }
      }
      result.add(new ZoneNights(zone, nights));
    }
    return result;
  }
}
