package zonewright.fieldwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import zonewright.units.QuantityText;
import zonewright.water.TuningPercents;

/**
 * Weighs looks at zones against each other.
 *
 * <p>A zone counts by its last look. Where at least half of the zones were looked at and four of
 * five of these lean one way, the cause is common to all: the site. Otherwise single zones are
 * wrong. The shares are common practice, with no source.
 */
final class TuningAdvisor {
  /** Part of the zones that must have been looked at before the whole site is judged. */
  private static final double ENOUGH = 0.5;

  /** Part of the zones looked at that must lean one way to be called nearly all. */
  private static final double NEARLY_ALL = 0.8;

  private static final double LAST_DIGITS = 1e-9;

  private final TuningState state;
  private final SortedMap<Integer, TuningState.Look> last = new TreeMap<>();
  private final SortedMap<Integer, TuningState.Look> twice = new TreeMap<>();

  TuningAdvisor(TuningState state) {
    this.state = state;
    for (TuningState.Look look : state.looks()) {
      TuningState.Look before = last.get(look.zone());
      if (before != null && look.day() < before.day()) {
        continue;
      }
      boolean again =
          before != null && look.day() > before.day() && look.judgement() == before.judgement();
      if (again) {
        twice.put(look.zone(), look);
      } else if (before == null || look.judgement() != before.judgement()) {
        twice.remove(look.zone());
      }
      last.put(look.zone(), look);
    }
  }

  TuningAdvice advice() {
    if (last.isEmpty()) {
      return none(
          TuningAdvice.Kind.NOTHING_YET,
          "Look at the zones and write down what you see.",
          List.of("No verdict waits to be taken into account."));
    }
    boolean enough = last.size() >= state.zones().size() * ENOUGH - LAST_DIGITS;
    if (!enough) {
      return tooFew();
    }
    for (Judgement way : List.of(Judgement.TOO_DRY, Judgement.TOO_WET)) {
      if (leaning(way).size() >= last.size() * NEARLY_ALL - LAST_DIGITS) {
        return site(way);
      }
    }
    List<Integer> wrong = new ArrayList<>(leaning(Judgement.TOO_DRY));
    wrong.addAll(leaning(Judgement.TOO_WET));
    if (wrong.isEmpty()) {
      return none(
          TuningAdvice.Kind.KEEP,
          "Leave everything as it is.",
          List.of("All %s looked at are right.".formatted(zones(last.size()))));
    }
    return zones(
        wrong,
        "%s of %s looked at lean one way or the other: not nearly all, so the site setting would help some and harm others."
            .formatted(wrong.size(), zones(last.size())));
  }

  private List<Integer> leaning(Judgement way) {
    return last.values().stream()
        .filter(look -> look.judgement() == way)
        .map(TuningState.Look::zone)
        .toList();
  }

  private TuningAdvice tooFew() {
    List<Integer> sure =
        twice.values().stream()
            .filter(look -> look.judgement() != Judgement.RIGHT)
            .map(TuningState.Look::zone)
            .toList();
    String few =
        "Only %s of %s were looked at since the last change; the site is judged by at least half."
            .formatted(last.size(), state.zones().size());
    if (sure.isEmpty()) {
      int more = (int) Math.ceil(state.zones().size() * ENOUGH - LAST_DIGITS) - last.size();
      return none(
          TuningAdvice.Kind.LOOK_AT_MORE,
          "Look at %s more before changing anything.".formatted(zones(more)),
          List.of(few, "A single zone is judged alone once it looked the same on two days."));
    }
    return zones(sure, few + " What looked the same on two days is changed all the same.");
  }

  private TuningAdvice site(Judgement way) {
    boolean up = way == Judgement.TOO_DRY;
    List<Integer> leaning = leaning(way);
    List<String> reasons = new ArrayList<>();
    reasons.add(
        "%s of %s looked at are %s: nearly all, so the cause is common to them."
            .formatted(leaning.size(), zones(last.size()), way.word()));
    double off = meanOverMonth(leaning);
    if (up ? off < -state.tolerance() : off > state.tolerance()) {
      reasons.add(
          "The controller showed %s points %s than the month asks: that alone explains it, so the minutes may be right."
              .formatted(points(Math.abs(off)), up ? "less" : "more"));
      return controller(up, reasons);
    }
    Optional<Double> to = moved(state.site(), up);
    if (to.isEmpty()) {
      reasons.add(
          "The site tuning stands at %s, the end of its range: a baseline that far off has another cause."
              .formatted(percent(state.site())));
      return controller(up, reasons);
    }
    SortedMap<Integer, Double> against = adjusted(leaning(way.opposite()), reasons);
    if (!against.isEmpty()) {
      reasons.add(
          "%s the other way: changed for themselves as well.".formatted(names(against.keySet())));
    }
    reasons.add(limit(to.get() - state.site()));
    String sentence =
        "%s the site tuning from %s to %s%s."
            .formatted(
                up ? "Raise" : "Lower",
                percent(state.site()),
                percent(to.get()),
                against.isEmpty() ? "" : ", and set the tuning of " + settings(against));
    return new TuningAdvice(TuningAdvice.Kind.SITE, to, against, sentence, reasons);
  }

  private String limit(double change) {
    return Math.abs(change) < state.step() - LAST_DIGITS
        ? "That is the end of the range; less than a step was left."
        : "One step of %s points at a time; look again before the next."
            .formatted(points(state.step()));
  }

  private TuningAdvice controller(boolean up, List<String> reasons) {
    reasons.add(
        up
            ? "A peak climate value in the controller above the one of this design, an active rain or freeze shut-off, or a sensor in"
                + " shade or spray makes every zone too dry."
            : "A peak climate value in the controller below the one of this design, a sensor near a hot wall, or a percent added"
                + " in the controller itself makes every zone too wet.");
    return none(
        TuningAdvice.Kind.CONTROLLER,
        "Check the controller's peak climate value, the place of its sensor and its shut-off before changing minutes.",
        reasons);
  }

  private TuningAdvice zones(List<Integer> wrong, String why) {
    List<String> reasons = new ArrayList<>(List.of(why));
    SortedMap<Integer, Double> to = adjusted(wrong, reasons);
    if (to.isEmpty()) {
      return none(
          TuningAdvice.Kind.ZONES,
          "Test %s with catch cans before giving more or less.".formatted(names(wrong)),
          reasons);
    }
    reasons.add(
        "One step of %s points at a time; look again before the next."
            .formatted(points(state.step())));
    return new TuningAdvice(
        TuningAdvice.Kind.ZONES,
        Optional.empty(),
        to,
        "Set the tuning of " + settings(to) + ".",
        reasons);
  }

  /** Returns the new tunings of zones; of those at the end of their range, only the reason. */
  private SortedMap<Integer, Double> adjusted(List<Integer> zones, List<String> reasons) {
    SortedMap<Integer, Double> adjusted = new TreeMap<>();
    for (int zone : zones) {
      double now = state.zones().get(zone).tuning();
      boolean up = last.get(zone).judgement() == Judgement.TOO_DRY;
      Optional<Double> to = moved(now, up);
      if (to.isPresent()) {
        adjusted.put(zone, to.get());
      } else {
        reasons.add(
            "%s stands at %s, the end of its range, and is still %s: look for uneven water, wrong soil or a leak."
                .formatted(name(zone), percent(now), last.get(zone).judgement().word()));
      }
    }
    return adjusted;
  }

  private Optional<Double> moved(double now, boolean up) {
    double to =
        up
            ? Math.min(TuningPercents.MOST, now + state.step())
            : Math.max(TuningPercents.LEAST, now - state.step());
    double tidy = Math.rint(to * 1e6) / 1e6;
    boolean moves = up ? tidy > now + LAST_DIGITS : tidy < now - LAST_DIGITS;
    return moves ? Optional.of(tidy) : Optional.empty();
  }

  private double meanOverMonth(List<Integer> zones) {
    return zones.stream()
        .mapToDouble(zone -> last.get(zone).overMonth())
        .filter(off -> !Double.isNaN(off))
        .average()
        .orElse(0);
  }

  private static TuningAdvice none(TuningAdvice.Kind kind, String sentence, List<String> reasons) {
    return new TuningAdvice(kind, Optional.empty(), new TreeMap<>(), sentence, reasons);
  }

  private String settings(SortedMap<Integer, Double> to) {
    SortedMap<Double, List<Integer>> byPercent = new TreeMap<>(Comparator.reverseOrder());
    to.forEach(
        (zone, percent) -> byPercent.computeIfAbsent(percent, any -> new ArrayList<>()).add(zone));
    List<String> parts = new ArrayList<>();
    for (Map.Entry<Double, List<Integer>> each : byPercent.entrySet()) {
      parts.add(names(each.getValue()) + " to " + percent(each.getKey()));
    }
    return String.join(" and ", parts);
  }

  private String name(int zone) {
    return "Zone " + state.zones().get(zone).name();
  }

  private String names(Iterable<Integer> zones) {
    List<String> names = new ArrayList<>();
    zones.forEach(zone -> names.add(state.zones().get(zone).name()));
    if (names.size() == 1) {
      return "zone " + names.get(0);
    }
    String listed = String.join(", ", names.subList(0, names.size() - 1));
    return "zones " + listed + " and " + names.get(names.size() - 1);
  }

  private static String zones(int count) {
    return count == 1 ? "1 zone" : count + " zones";
  }

  private static String percent(double share) {
    return QuantityText.readable(share * 100, 0) + " %";
  }

  private static String points(double share) {
    return QuantityText.readable(share * 100, 0);
  }
}
