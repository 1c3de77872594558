package zonewright.uncertainty;

import java.util.List;
import zonewright.sheet.Column;

/**
 * Says of which answers the ends are sure: those that go one way with each of their inputs, as far
 * as was tried. An answer in steps goes one way only where nothing else takes steps or moves both
 * sides of a quotient.
 */
final class Steadiness {
  private final List<Column> answers;
  private final Trials trials;
  private final Profile[][] profiles;
  private final double[][][] ends;

  /**
   * Looks at what was found.
   *
   * @param profiles what each input alone does to each answer of zones
   * @param ends what each of them comes to at the corner that makes it least, and at the other
   */
  Steadiness(List<Column> answers, Trials trials, Profile[][] profiles, double[][][] ends) {
    this.answers = answers;
    this.trials = trials;
    this.profiles = profiles;
    this.ends = ends;
  }

  /** Says it of an answer of a zone. */
  boolean ofZone(int answer, int zone) {
    Spans spans = trials.ofZones();
    return !spans.moves(answer, zone)
        || (!spans.missing[answer][zone]
            && onePeak()
            && SureAnswer.IN_STEPS.getOrDefault(answers.get(answer), List.of()).stream()
                .noneMatch(other -> spans.moves(answers.indexOf(other), zone))
            && oneWay(profiles, answer, zone)
            && within(spans, answer, zone, ends[answer][0][zone], ends[answer][1][zone]));
  }

  /**
   * Says it of an answer of the site.
   *
   * @param zones the answer of zones it goes with
   * @param alone what each input alone does to the answers of the site
   * @param least what it comes to at the corner that makes it least
   * @param greatest what it comes to at the other
   */
  boolean ofSite(int answer, int zones, Profile[][] alone, double least, double greatest) {
    boolean steady = !trials.ofSite().missing[answer][0] && onePeak();
    for (int zone = 0; zone < trials.zones(); zone++) {
      steady &= Double.isNaN(trials.ofZones().held[zones][zone]) || ofZone(zones, zone);
    }
    return steady
        && oneWay(alone, answer, 0)
        && within(trials.ofSite(), answer, 0, least, greatest);
  }

  private static boolean oneWay(Profile[][] profiles, int answer, int row) {
    boolean steady = true;
    for (Profile[] input : profiles) {
      steady &= input[answer].steady(row);
    }
    return steady;
  }

  /** Where rain counts, all zones together decide the peak month; then they move each other. */
  private boolean onePeak() {
    Spans site = trials.ofSite();
    int month = site.held.length - 1;
    return Double.isNaN(site.held[month][0]) || !site.moves(month, 0);
  }

  /** Says whether nothing tried lies beyond the corners. */
  private static boolean within(Spans spans, int answer, int row, double least, double greatest) {
    return !Spans.above(least, spans.least[answer][row])
        && !Spans.above(spans.greatest[answer][row], greatest);
  }
}
