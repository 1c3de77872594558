package zonewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.water.TuningPercents;

/** The advice on tuning against a table of situations that was written before it. */
class TuningAdviceTest {
  private static final Map<String, TuningAdvice.Kind> KINDS =
      Map.of(
          "site", TuningAdvice.Kind.SITE,
          "zones", TuningAdvice.Kind.ZONES,
          "controller", TuningAdvice.Kind.CONTROLLER,
          "look", TuningAdvice.Kind.LOOK_AT_MORE,
          "keep", TuningAdvice.Kind.KEEP,
          "nothing yet", TuningAdvice.Kind.NOTHING_YET);

  static List<CSVRecord> situations() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader =
        new InputStreamReader(
            TuningAdviceTest.class.getResourceAsStream("tuning-situations.csv"),
            StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    }
  }

  @ParameterizedTest
  @MethodSource("situations")
  void saysWhatTheTableOfSituationsSays(CSVRecord situation) {
    TuningState state =
        state(
            Integer.parseInt(situation.get("Zones")),
            percent(situation.get("Site")),
            percent(situation.get("Zone 1")),
            looks(situation.get("Looks"), percent(situation.get("Shown less month"))));
    TuningAdvice advice = TuningAdvice.on(state);
    assertThat(advice.kind()).as(advice.toString()).isEqualTo(KINDS.get(situation.get("Advice")));
    String site = situation.get("Site after");
    assertThat(advice.site())
        .isEqualTo(site.isEmpty() ? Optional.empty() : Optional.of(percent(site)));
    assertThat(advice.zones()).isEqualTo(settings(situation.get("Zones after")));
    assertThat(advice.sentence()).endsWith(".");
    assertThat(advice.reasons()).isNotEmpty().allMatch(reason -> reason.endsWith("."));
  }

  private static double percent(String text) {
    return text.isEmpty() ? Double.NaN : Integer.parseInt(text) / 100.0;
  }

  private static TuningState state(
      int zones, double site, double first, List<TuningState.Look> looks) {
    List<TuningState.Zone> list = new ArrayList<>();
    for (int i = 0; i < zones; i++) {
      list.add(new TuningState.Zone(Integer.toString(i + 1), i == 0 ? first : 1));
    }
    return new TuningState(list, site, looks, 0.1, 0.2);
  }

  private static List<TuningState.Look> looks(String text, double overMonth) {
    List<TuningState.Look> looks = new ArrayList<>();
    int zone = 0;
    Matcher part = Pattern.compile("(\\d+) (\\w+)").matcher(text);
    while (part.find()) {
      for (int i = 0; i < Integer.parseInt(part.group(1)); i++) {
        Matcher word = Pattern.compile("dry|wet|right").matcher(part.group(2));
        for (int day = 46000; word.find(); day += 7) {
          looks.add(new TuningState.Look(zone, day, judgement(word.group()), overMonth));
        }
        zone++;
      }
    }
    return looks;
  }

  private static Judgement judgement(String word) {
    return Judgement.of(word.equals("right") ? word : "too " + word).orElseThrow();
  }

  private static SortedMap<Integer, Double> settings(String text) {
    SortedMap<Integer, Double> settings = new TreeMap<>();
    Matcher part = Pattern.compile("(\\d+)(?:-(\\d+))?=(\\d+)").matcher(text);
    while (part.find()) {
      int from = Integer.parseInt(part.group(1));
      int to = part.group(2) == null ? from : Integer.parseInt(part.group(2));
      for (int zone = from; zone <= to; zone++) {
        settings.put(zone - 1, percent(part.group(3)));
      }
    }
    return settings;
  }

  @Test
  void aZoneCountsByItsLastLookWhateverTheOrderTheyWereWrittenIn() {
    List<TuningState.Look> looks =
        List.of(
            new TuningState.Look(0, 46010, Judgement.RIGHT, Double.NaN),
            new TuningState.Look(0, 46000, Judgement.TOO_DRY, Double.NaN),
            new TuningState.Look(1, 46000, Judgement.TOO_DRY, Double.NaN),
            new TuningState.Look(1, 46010, Judgement.RIGHT, Double.NaN));
    assertThat(TuningAdvice.on(state(2, 1, 1, looks)).kind()).isEqualTo(TuningAdvice.Kind.KEEP);
  }

  @Test
  void twoLooksOnTheSameDayAreOne() {
    TuningState.Look look = new TuningState.Look(0, 46000, Judgement.TOO_DRY, Double.NaN);
    assertThat(TuningAdvice.on(state(20, 1, 1, List.of(look, look))).kind())
        .isEqualTo(TuningAdvice.Kind.LOOK_AT_MORE);
  }

  @Test
  void namesZonesAndPercentsInItsSentence() {
    TuningAdvice advice = TuningAdvice.on(state(20, 1, 1, looks("2 dry 17 right 1 wet", 0)));
    assertThat(advice.sentence())
        .isEqualTo("Set the tuning of zones 1 and 2 to 110 % and zone 20 to 90 %.");
  }

  /** Never more than a step, never out of the range, never the wrong way. */
  @Property(tries = 400)
  void changesByAtMostAStepWithinTheRange(
      @ForAll @IntRange(min = 1, max = 30) int zones,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double site,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double step,
      @ForAll List<@IntRange(max = 89) Integer> seen) {
    List<TuningState.Zone> list = new ArrayList<>();
    for (int i = 0; i < zones; i++) {
      list.add(new TuningState.Zone("z" + i, 0.5 + i / 30.0));
    }
    List<TuningState.Look> looks = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      Judgement judgement = List.of(Judgement.values()).get(seen.get(i) % 3);
      looks.add(new TuningState.Look(seen.get(i) % zones, 46000 + i, judgement, Double.NaN));
    }
    TuningAdvice advice = TuningAdvice.on(new TuningState(list, site, looks, step, 0.2));
    advice.site().ifPresent(to -> within(site, to, step));
    advice.zones().forEach((zone, to) -> within(list.get(zone).tuning(), to, step));
    assertThat(advice.changes()).isEqualTo(advice.site().isPresent() || !advice.zones().isEmpty());
  }

  private static void within(double from, double to, double step) {
    assertThat(to).isBetween(TuningPercents.LEAST, TuningPercents.MOST);
    assertThat(Math.abs(to - from)).isBetween(1e-9, step + 1e-6);
  }
}
