package zonewright.pipes;

import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.SUPPLY;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What to tell a designer about supply, pipes, valves and wires. */
public final class PipeRules {
  /** Chooses the word that a column proposes; nothing where it proposes none. */
  private record Choosing(Column choice, Column proposed) implements Remedy.Maker {
    @Override
    public Optional<Edit> edit(Book book, Reference cell, int row) {
      return book.outcome(proposed.reference(), row) instanceof Outcome.Words words
          ? Optional.of(new Edits(book).set(choice.reference(), row, new Entry.Words(words.text())))
          : Optional.empty();
    }
  }

  private static final Remedy.Maker SMALLEST_MAIN = new Choosing(Mains.SIZE, Mains.SMALLEST);
  private static final Remedy.Maker SMALLEST_LATERAL =
      new Choosing(Laterals.SIZE, Laterals.SMALLEST);
  private static final Remedy.Maker SMALLEST_WIRE =
      new Choosing(Wiring.WIRE_CHOSEN, Wiring.SMALLEST);

  private static final Rule OVER_THE_METER =
      new Rule(
          "meter-over-safe",
          Severity.CHECK,
          SUPPLY,
          Supply.FLOW_AT_ONCE.above(Supply.METER_LIMIT),
          Supply.FLOW_AT_ONCE,
          "draws {0} through the meter at once, it should carry at most {1} (its safe maximum is {2})",
          "run fewer valves at once, or ask the supplier for a larger meter",
          List.of(Supply.FLOW_AT_ONCE, Supply.METER_LIMIT, Supply.SAFE_FLOW));

  private static final Rule SERVICE_TOO_FAST =
      new Rule(
          "service-velocity",
          Severity.CHECK,
          SUPPLY,
          Supply.SERVICE_VELOCITY.above(Supply.SERVICE_MOST_VELOCITY),
          Supply.SERVICE_VELOCITY,
          "moves water at {0} in the service line, {1} is the most it should",
          "run fewer valves at once, or have a larger service line laid",
          List.of(Supply.SERVICE_VELOCITY, Supply.SERVICE_MOST_VELOCITY));

  private static final Rule MAIN_TOO_FAST =
      tooFast("main-velocity", "main", Mains.VELOCITY, Mains.SIZE, SMALLEST_MAIN);

  private static final Rule LATERAL_TOO_FAST =
      tooFast("lateral-velocity", "lateral", Laterals.VELOCITY, Laterals.SIZE, SMALLEST_LATERAL);

  private static Rule tooFast(
      String id, String pipe, Column velocity, Column size, Remedy.Maker maker) {
    return new Rule(
            id,
            Severity.CHECK,
            PIPES,
            velocity.above(PipeLimits.MOST_VELOCITY),
            size,
            "moves water at {0} in the " + pipe + ", {1} is the most it should",
            "lay a larger pipe",
            List.of(velocity, PipeLimits.MOST_VELOCITY))
        .curedBy("Lay the smallest " + pipe + " that will do", maker);
  }

  private static final Rule NOT_MADE_MAIN = notMade("main-not-made", Mains.RUN);
  private static final Rule NOT_MADE_LATERAL = notMade("lateral-not-made", Laterals.RUN);

  private static Rule notMade(String id, PipeRun run) {
    Formula step = PipeTables.step(run.size);
    return new Rule(
        id,
        Severity.WRONG,
        PIPES,
        PipeTables.leastStep(run.kind)
            .above(step)
            .or(PipeTables.greatestStep(run.kind).below(step)),
        run.size,
        "has its " + run.inWords() + " in {0}, for which the table gives no {1}",
        "choose another size or kind, or add the pipe to the sheet Materials",
        List.of(run.size, run.kind));
  }

  private static final Formula NO_PRESSURE = Formula.zero(QuantityKind.PRESSURE);

  private static final Rule PRESSURE_SHORT =
      new Rule(
              "pressure-short",
              Severity.CHECK,
              PIPES,
              Pressures.LEFT_OVER.below(NO_PRESSURE).and(Mains.ROOM.above(NO_PRESSURE)),
              Pressures.WORST_HEAD,
              "leaves the worst head {0} of the {1} it needs",
              "lay a larger main, or see where else the pressure goes",
              List.of(Pressures.WORST_HEAD, Laterals.NEEDED))
          .curedBy("Lay the smallest main that will do", SMALLEST_MAIN);

  private static final Rule NONE_FOR_THE_MAIN =
      new Rule(
          "no-pressure-for-main",
          Severity.CHECK,
          PIPES,
          Mains.ROOM.atMost(NO_PRESSURE),
          Mains.ROOM,
          "leaves the main {0} to lose: no main is wide enough for heads that need {1}",
          "a larger lateral, valve or service line, heads that need less pressure, or a booster pump may help",
          List.of(Mains.ROOM, Laterals.NEEDED));

  private static final Rule VARIES =
      new Rule(
              "pressure-varies",
              Severity.CHECK,
              PIPES,
              Pressures.VARIATION
                  .above(PipeLimits.VARIATION_SHARE)
                  .and(Laterals.ROOM.above(NO_PRESSURE)),
              Pressures.VARIATION,
              "has pressures that lie {0} apart from first head to last, {1} is the most they should: near heads give more than far ones",
              "lay a larger lateral, or use heads that regulate pressure",
              List.of(Pressures.VARIATION, PipeLimits.VARIATION_SHARE))
          .curedBy("Lay the smallest lateral that will do", SMALLEST_LATERAL);

  private static final Rule TOO_STEEP =
      new Rule(
          "lateral-too-steep",
          Severity.CHECK,
          PIPES,
          Laterals.ROOM.atMost(NO_PRESSURE),
          Laterals.RISE,
          "has a lateral that climbs {0}, which alone takes more pressure than may vary between heads that need {1}",
          "run laterals along the slope, use heads that regulate pressure, or more valves",
          List.of(Laterals.RISE, Laterals.NEEDED));

  private static final List<String> DRIP =
      Emitters.KINDS.keys().stream().filter(kind -> kind.contains("drip")).toList();

  private static final Condition BURSTING =
      Emitters.EMITTER.is(DRIP).and(firstHeadAbove(Formula.number(2.5)));

  private static final Rule DRIP_BURSTS =
      new Rule(
          "drip-pressure",
          Severity.WRONG,
          PIPES,
          BURSTING,
          Pressures.FIRST_HEAD,
          "gives drip {0}, made for {1}: more than 2.5 times as much blows fittings and emitters off (common practice, no source)",
          "set a pressure regulator behind the valve and type its setting under Regulated to",
          List.of(Pressures.FIRST_HEAD, Laterals.NEEDED));

  private static final Rule MISTING =
      new Rule(
          "pressure-high",
          Severity.NOTE,
          PIPES,
          firstHeadAbove(Formula.number(1.5)).and(BURSTING.negated()),
          Pressures.FIRST_HEAD,
          "gives its first head {0}, made for {1}: sprays mist and drift, drip may leak",
          "regulate the pressure at the valve or use heads that do",
          List.of(Pressures.FIRST_HEAD, Laterals.NEEDED));

  private static final Rule WIRE_TOO_THIN =
      new Rule(
              "wire-too-thin",
              Severity.CHECK,
              PIPES,
              Wiring.DROP.above(PipeLimits.MOST_VOLTAGE_DROP),
              Wiring.WIRE_CHOSEN,
              "loses {0} on its wires, {1} is the most: the valve may not open",
              "lay a thicker wire; wiring rules and a licensed electrician decide",
              List.of(Wiring.DROP, PipeLimits.MOST_VOLTAGE_DROP))
          .curedBy("Lay the smallest wire that will do", SMALLEST_WIRE);

  private static final Rule NO_PROTECTION =
      new Rule(
          "no-backflow-device",
          Severity.CHECK,
          SUPPLY,
          FlowTest.STATIC_PRESSURE.given().and(Supply.BACKFLOW_DEVICE.given().negated()),
          Supply.BACKFLOW_DEVICE,
          "names no backflow device",
          "a sprinkler system on drinking water needs one; plumbing code and water supplier say which and who tests it",
          List.of());

  private static final Rule STATIC_HIGH =
      new Rule(
          "static-pressure-high",
          Severity.NOTE,
          SUPPLY,
          FlowTest.STATIC_PRESSURE
              .above(Formula.amount(80, Units.POUND_PER_SQUARE_INCH))
              .and(Supply.REGULATED.given().negated()),
          FlowTest.STATIC_PRESSURE,
          "has a static pressure of {0}; plumbing codes commonly ask for a regulator above 80 psi",
          "set a pressure regulator at the connection and type what it is set to",
          List.of(FlowTest.STATIC_PRESSURE));

  private PipeRules() {}

  private static Condition firstHeadAbove(Term times) {
    return Pressures.FIRST_HEAD.above(times.times(Laterals.NEEDED));
  }

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> all() {
    List<Rule> rules = new ArrayList<>();
    rules.add(ValveLosses.OUT_OF_ORDER);
    rules.add(NOT_MADE_MAIN);
    rules.add(NOT_MADE_LATERAL);
    rules.addAll(PressureClass.rules());
    rules.add(DRIP_BURSTS);
    rules.add(NO_PROTECTION);
    rules.add(OVER_THE_METER);
    rules.add(SERVICE_TOO_FAST);
    rules.add(PRESSURE_SHORT);
    rules.add(NONE_FOR_THE_MAIN);
    rules.add(VARIES);
    rules.add(TOO_STEEP);
    rules.add(MAIN_TOO_FAST);
    rules.add(LATERAL_TOO_FAST);
    rules.add(WIRE_TOO_THIN);
    rules.add(STATIC_HIGH);
    rules.add(MISTING);
    return List.copyOf(rules);
  }
}
