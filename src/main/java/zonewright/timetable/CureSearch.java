package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tries changes that may make overfull nights fit, each by placing the nights anew. */
final class CureSearch {
  private static final int MOST_MOVES = 3;
  private static final int MOST_ZONES_TRIED = 6;
  private static final int MOST_NIGHTS_TRIED = 2;

  private final List<WateredZone> zones;
  private final SiteRules rules;
  private final Calendar calendar;
  private final List<Set<DayOfWeek>> days;
  private final List<NightPlan> plans;
  private final int missing;

  /** Minutes over, by zones and windows of a night, under the rules as they are. */
  private final Map<List<Object>, Integer> over = new HashMap<>();

  CureSearch(
      List<WateredZone> zones,
      SiteRules rules,
      Calendar calendar,
      List<Set<DayOfWeek>> days,
      List<NightPlan> plans) {
    this.zones = zones;
    this.rules = rules;
    this.calendar = calendar;
    this.days = days;
    this.plans = plans;
    this.missing = missing(zones, rules, days, over);
  }

  /** The cures that help, the smallest change first. */
  List<Cure> find() {
    List<Cure> cures = new ArrayList<>();
    anotherNight().ifPresent(cures::add);
    oneMoreValve().ifPresent(cures::add);
    widerWindow().ifPresent(cures::add);
    splitDays().ifPresent(cures::add);
    noSoak().ifPresent(cures::add);
    cures.sort(Cure.SMALLEST_CHANGE_FIRST);
    return cures;
  }

  /** Minutes over of all different nights together. */
  private int missing(
      List<WateredZone> these,
      SiteRules under,
      List<Set<DayOfWeek>> when,
      Map<List<Object>, Integer> memory) {
    int sum = 0;
    Set<List<Object>> counted = new HashSet<>();
    for (int day = 0; day < calendar.nights().size(); day++) {
      Night night = calendar.nights().get(day);
      List<Integer> numbers = calendar.zonesOn(day, when);
      if (numbers.isEmpty()) {
        continue;
      }
      List<Object> key = List.of(numbers, under.windowsOn(night.weekday()));
      // A change tried here only loosens: a night that fitted before fits still.
      boolean fitted =
          over.getOrDefault(List.of(numbers, rules.windowsOn(night.weekday())), 1) == 0;
      Integer known = fitted ? Integer.valueOf(0) : memory.get(key);
      if (known == null) {
        known = overrun(night, numbers.stream().map(these::get).toList(), under);
        memory.put(key, known);
      }
      if (calendar.weekly() || counted.add(key)) {
        sum += known;
      }
    }
    return sum;
  }

  private int overrun(Night night, List<WateredZone> here, SiteRules under) {
    List<NightPlan> known = plans.stream().filter(plan -> plan.night().equals(night)).toList();
    return NightPlacer.place(night, here, under, known).overrunMinutes();
  }

  private List<NightPlan> overfull() {
    return plans.stream().filter(plan -> plan.overrunMinutes() > 0).toList();
  }

  private static String result(int left) {
    return left == 0 ? " Then everything fits." : " Then " + left + " min are still missing.";
  }

  private Optional<Cure> oneMoreValve() {
    int count = rules.mostValvesAtOnce() + 1;
    int left = missing(zones, rules.withMostValves(count), days, new HashMap<>());
    if (left >= missing) {
      return Optional.empty();
    }
    String sentence = "Let " + count + " valves run at once." + result(left);
    return Optional.of(new Cure(Cure.Kind.ONE_MORE_VALVE, sentence, List.of(), 1, left));
  }

  private Optional<Cure> widerWindow() {
    Map<DayOfWeek, List<WateringWindow>> windows = new EnumMap<>(DayOfWeek.class);
    windows.putAll(rules.windows());
    StringBuilder sentence = new StringBuilder();
    int changes = 0;
    for (DayOfWeek day : DayOfWeek.values()) {
      int needed =
          overfull().stream()
              .filter(plan -> plan.night().weekday() == day)
              .mapToInt(NightPlan::overrunMinutes)
              .max()
              .orElse(0);
      if (needed > 0) {
        changes += widen(day, needed, windows, sentence);
      }
    }
    if (changes == 0) {
      return Optional.empty();
    }
    int left = missing(zones, rules.withWindows(windows), days, new HashMap<>());
    if (left >= missing) {
      return Optional.empty();
    }
    String text = sentence.append(result(left)).toString().strip();
    return Optional.of(new Cure(Cure.Kind.WIDER_WINDOW, text, List.of(), changes, left));
  }

  /**
   * Closes the day's last window later, as far as the next day's first lets it, then opens the
   * first earlier.
   */
  private int widen(
      DayOfWeek day,
      int needed,
      Map<DayOfWeek, List<WateringWindow>> windows,
      StringBuilder sentence) {
    List<WateringWindow> today = new ArrayList<>(windows.get(day));
    WateringWindow first = today.get(0);
    WateringWindow last = today.get(today.size() - 1);
    List<WateringWindow> next = rules.windowsOn(day.plus(1));
    List<WateringWindow> before = windows.getOrDefault(day.minus(1), List.of());
    int latest = last.startMinute() + WateringWindow.DAY;
    latest = Math.min(latest, first.startMinute() + WateringWindow.DAY);
    if (!next.isEmpty()) {
      latest = Math.min(latest, next.get(0).startMinute() + WateringWindow.DAY);
    }
    int later = Math.max(0, Math.min(needed, latest - last.endMinute()));
    int earliest =
        before.isEmpty()
            ? 0
            : Math.max(0, before.get(before.size() - 1).endMinute() - WateringWindow.DAY);
    earliest = Math.max(earliest, last.endMinute() + later - WateringWindow.DAY);
    int earlier = Math.max(0, Math.min(needed - later, first.startMinute() - earliest));
    if (later > 0) {
      int closes = last.endMinute() + later;
      today.set(today.size() - 1, new WateringWindow(last.startMinute(), closes));
      sentence.append(change(day, "close", later, "later", closes));
    }
    if (earlier > 0) {
      int opens = first.startMinute() - earlier;
      today.set(0, new WateringWindow(opens, today.get(0).endMinute()));
      sentence.append(change(day, "open", earlier, "earlier", opens));
    }
    windows.put(day, today);
    return later + earlier > 0 ? 1 : 0;
  }

  private static String change(DayOfWeek day, String verb, int minutes, String way, int at) {
    return " Let the window of "
        + Clock.name(day)
        + " "
        + verb
        + " "
        + minutes
        + " min "
        + way
        + ", at "
        + Clock.time(at)
        + ".";
  }

  private Optional<Cure> anotherNight() {
    List<Set<DayOfWeek>> now = new ArrayList<>(days);
    int left = missing;
    StringBuilder sentence = new StringBuilder();
    Set<String> moved = new LinkedHashSet<>();
    for (int move = 0; move < MOST_MOVES && left > 0; move++) {
      int bestZone = -1;
      Set<DayOfWeek> bestDays = Set.of();
      String bestWords = "";
      for (NightPlan plan : overfull()) {
        DayOfWeek from = plan.night().weekday();
        for (int zone : movable(plan, now)) {
          for (DayOfWeek to : targets(zone, from, now)) {
            Set<DayOfWeek> changed = moved(now.get(zone), from, to);
            List<Set<DayOfWeek>> trial = new ArrayList<>(now);
            trial.set(zone, changed);
            int then = missing(zones, rules, trial, over);
            if (then < left) {
              left = then;
              bestZone = zone;
              bestDays = changed;
              bestWords =
                  zones.get(zone).name()
                      + " on "
                      + Clock.name(to)
                      + " instead of "
                      + Clock.name(from);
            }
          }
        }
      }
      if (bestZone < 0) {
        break;
      }
      now.set(bestZone, bestDays);
      moved.add(zones.get(bestZone).name());
      sentence.append(sentence.isEmpty() ? "Water " : ", ").append(bestWords);
    }
    if (moved.isEmpty()) {
      return Optional.empty();
    }
    String text = sentence.append('.').append(result(left)).toString();
    return Optional.of(
        new Cure(Cure.Kind.ANOTHER_NIGHT, text, List.copyOf(moved), moved.size(), left));
  }

  /**
   * Zones of the night that water by weekdays: first the smallest that would free enough, then the
   * largest.
   */
  private List<Integer> movable(NightPlan plan, List<Set<DayOfWeek>> now) {
    int needed = plan.overrunMinutes();
    List<Integer> result = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      if (now.get(i).contains(plan.night().weekday())) {
        result.add(i);
      }
    }
    Comparator<Integer> enoughFirst =
        Comparator.comparing(i -> zones.get(i).minutesPerNight() < needed);
    result.sort(
        enoughFirst.thenComparing(
            i -> {
              int minutes = zones.get(i).minutesPerNight();
              return minutes < needed ? -minutes : minutes;
            }));
    return result.subList(0, Math.min(MOST_ZONES_TRIED, result.size()));
  }

  private List<DayOfWeek> targets(int zone, DayOfWeek from, List<Set<DayOfWeek>> now) {
    Set<DayOfWeek> has = now.get(zone);
    WateringDays rule = zones.get(zone).days();
    int gap = WeekdayChoice.longestGap(has);
    Set<DayOfWeek> allowed = EnumSet.copyOf(rules.openDays());
    if (rule instanceof WateringDays.ChooseWeekdays free) {
      gap = Math.max(gap, free.longestGap());
      allowed.retainAll(free.allowed());
    }
    List<DayOfWeek> result = new ArrayList<>();
    for (DayOfWeek day : allowed) {
      if (!has.contains(day) && WeekdayChoice.longestGap(moved(has, from, day)) <= gap) {
        result.add(day);
      }
    }
    result.sort(Comparator.comparingInt(this::room).reversed());
    return result.subList(0, Math.min(MOST_NIGHTS_TRIED, result.size()));
  }

  /** Minutes left between the finish and the close of the fullest night of this weekday. */
  private int room(DayOfWeek day) {
    return plans.stream()
        .filter(plan -> plan.night().weekday() == day)
        .mapToInt(plan -> plan.closesMinute() - plan.finishMinute())
        .min()
        .orElse(0);
  }

  private static Set<DayOfWeek> moved(Set<DayOfWeek> days, DayOfWeek from, DayOfWeek to) {
    EnumSet<DayOfWeek> changed = EnumSet.copyOf(days);
    changed.remove(from);
    changed.add(to);
    return changed;
  }

  private Optional<Cure> splitDays() {
    List<WateredZone> free = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      Set<DayOfWeek> has = days.get(i);
      boolean fixed = zones.get(i).days() instanceof WateringDays.OnWeekdays && !has.isEmpty();
      free.add(
          fixed
              ? zones
                  .get(i)
                  .withDays(
                      new WateringDays.ChooseWeekdays(
                          has.size(), WeekdayChoice.longestGap(has), rules.openDays()))
              : zones.get(i));
    }
    List<Set<DayOfWeek>> spread = WeekdayChoice.choose(free, rules).days();
    List<String> changed = new ArrayList<>();
    StringBuilder sentence = new StringBuilder("Share the zones out over the days:");
    for (int i = 0; i < zones.size(); i++) {
      if (!spread.get(i).equals(days.get(i))) {
        changed.add(zones.get(i).name());
        sentence
            .append(' ')
            .append(zones.get(i).name())
            .append(" on ")
            .append(Clock.names(spread.get(i)))
            .append(';');
      }
    }
    int left = changed.isEmpty() ? missing : missing(zones, rules, spread, over);
    if (left >= missing) {
      return Optional.empty();
    }
    sentence.setCharAt(sentence.length() - 1, '.');
    String text = sentence.append(result(left)).toString();
    return Optional.of(new Cure(Cure.Kind.SPLIT_DAYS, text, changed, changed.size(), left));
  }

  private Optional<Cure> noSoak() {
    Set<Integer> soaking = new LinkedHashSet<>();
    for (NightPlan plan : overfull()) {
      for (int i = 0; i < zones.size(); i++) {
        WateredZone zone = zones.get(i);
        boolean here = plan.runs().stream().anyMatch(run -> run.zone().equals(zone));
        if (here && zone.cycles() > 1 && zone.soakMinutes() > 0) {
          soaking.add(i);
        }
      }
    }
    List<Integer> candidates = new ArrayList<>(soaking);
    candidates.sort(Comparator.comparingInt(i -> -zones.get(i).shortestSpan()));
    List<List<Integer>> trials = new ArrayList<>();
    candidates.stream().limit(MOST_ZONES_TRIED).forEach(i -> trials.add(List.of(i)));
    if (candidates.size() > 1) {
      trials.add(candidates);
    }
    Optional<Cure> best = Optional.empty();
    for (List<Integer> trial : trials) {
      List<WateredZone> changed = new ArrayList<>(zones);
      trial.forEach(i -> changed.set(i, zones.get(i).withoutSoak()));
      int left = missing(changed, rules, days, new HashMap<>());
      if (left < best.map(Cure::minutesStillMissing).orElse(missing)) {
        List<String> names = trial.stream().map(i -> zones.get(i).name()).toList();
        String sentence =
            "Give "
                + String.join(", ", names)
                + " emitters of a rate the soil takes in, so that no soak is needed."
                + result(left);
        best = Optional.of(new Cure(Cure.Kind.NO_SOAK, sentence, names, names.size(), left));
      }
    }
    return best;
  }
}
