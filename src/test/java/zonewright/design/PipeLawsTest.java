package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.pipes.FlowTest;
import zonewright.pipes.Laterals;
import zonewright.pipes.Losses;
import zonewright.pipes.Mains;
import zonewright.pipes.PipeLimits;
import zonewright.pipes.PipeTables;
import zonewright.pipes.Pressures;
import zonewright.pipes.Supply;
import zonewright.pipes.Together;
import zonewright.pipes.Valves;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Laws of supply and pipes that hold whatever is typed. */
class PipeLawsTest {
  private static final double LAST_BITS = 1e-9;

  private static OneZone zone(UnitSystem system, int heads, double gpm) {
    return OneZone.in(system)
        .type(Facts.ZONE_NAME, "Lawn")
        .type(Supply.AVAILABLE_FLOW, "4000 gpm")
        .type(FlowTest.STATIC_PRESSURE, "90 psi")
        .type(FlowTest.BASIS, FlowTest.DOWNSTREAM)
        .type(FlowTest.FIRST_FLOW, "40 gpm")
        .type(FlowTest.FIRST_PRESSURE, "80 psi")
        .type(Supply.BACKFLOW_LOSS, "5 psi")
        .type(Emitters.AREA, "1000 ft2")
        .type(Emitters.EMITTER, "fixed spray")
        .type(Emitters.EMITTER_COUNT, Integer.toString(heads))
        .type(Emitters.EMITTER_FLOW, gpm + " gpm")
        .type(Losses.VALVE_LOSS, "4 psi")
        .type(Mains.LENGTH, "150 ft")
        .type(Laterals.LENGTH, "100 ft");
  }

  @Property(tries = 60)
  void moreHeadsNeverRaiseTheWorstPressure(
      @ForAll @IntRange(min = 1, max = 40) int heads,
      @ForAll @IntRange(min = 1, max = 20) int more,
      @ForAll @DoubleRange(min = -30, max = 30) double rise,
      @ForAll UnitSystem system) {
    OneZone zone =
        zone(system, heads, 0.8)
            .type(Mains.SIZE, "1-1/4 in")
            .type(Laterals.SIZE, "1 in")
            .type(Laterals.RISE, rise + " ft");
    double before = zone.number(Pressures.WORST_HEAD);
    zone.type(Emitters.EMITTER_COUNT, Integer.toString(heads + more));
    assertThat(zone.number(Pressures.WORST_HEAD)).isLessThanOrEqualTo(before + LAST_BITS);
  }

  @Property(tries = 40)
  void aLargerPipeNeverLosesMoreNorLeavesLess(
      @ForAll @IntRange(min = 1, max = 30) int heads, @ForAll UnitSystem system) {
    for (Column size : List.of(Mains.SIZE, Laterals.SIZE)) {
      OneZone zone = zone(system, heads, 1.1).type(Mains.SIZE, "2 in").type(Laterals.SIZE, "1 in");
      zone.type(Mains.ELBOWS, "6").type(Mains.TEES, "3");
      double least = Double.NEGATIVE_INFINITY;
      for (String next : PipeTables.SIZES.keys().subList(1, 9)) {
        zone.type(size, next);
        double worst = zone.number(Pressures.WORST_HEAD);
        assertThat(worst).as(size.name() + " " + next).isGreaterThanOrEqualTo(least);
        least = worst;
      }
    }
  }

  @Property(tries = 60)
  void theSmallestSizesKeepVelocityPressureAndVariationAndTheNextSmallerDoNot(
      @ForAll @IntRange(min = 2, max = 30) int heads,
      @ForAll @DoubleRange(min = 0.2, max = 1.6) double gpm,
      @ForAll boolean metric,
      @ForAll UnitSystem system) {
    OneZone zone = zone(system, heads, gpm);
    if (metric) {
      zone.type(Mains.KIND, "polyethylene PE 100 SDR 11").type(Laterals.KIND, "PVC-U SDR 21");
    }
    assertThat(zone.outcome(Mains.SMALLEST)).isInstanceOf(Outcome.Words.class);
    assertThat(sound(zone)).isTrue();
    for (Column[] run :
        List.of(
            new Column[] {Mains.SIZE, Mains.SMALLEST, Mains.KIND},
            new Column[] {Laterals.SIZE, Laterals.SMALLEST, Laterals.KIND})) {
      String smallest = ((Outcome.Words) zone.outcome(run[1])).text();
      int step = PipeTables.SIZES.keys().indexOf(smallest);
      String kind = ((Outcome.Words) zone.outcome(run[2])).text();
      assertThat(smallest).endsWith(metric ? " mm" : " in");
      int row = PipeTables.KINDS.position(kind).orElseThrow();
      if (step + 1 > Integer.parseInt(PipeTables.KINDS.text(row, "Least step"))) {
        zone.type(run[0], PipeTables.SIZES.keys().get(step - 1));
        boolean lateral = run[0].equals(Laterals.SIZE);
        boolean stillFine =
            sound(zone)
                && (!lateral
                    || zone.number(Laterals.FRICTION) <= zone.number(Laterals.ROOM) + LAST_BITS);
        assertThat(stillFine).as(run[0].name()).isFalse();
        zone.design().book().undo();
      }
    }
  }

  private static boolean sound(OneZone zone) {
    double most = zone.book().system() == UnitSystem.US ? 5 : 5 * 0.3048;
    return zone.number(Mains.VELOCITY) <= most + LAST_BITS
        && zone.number(Laterals.VELOCITY) <= most + LAST_BITS
        && zone.number(Pressures.LEFT_OVER) >= -LAST_BITS
        && zone.number(Pressures.VARIATION) <= 0.2 + LAST_BITS;
  }

  @Property(tries = 100)
  void anEvenSplitNeverExceedsTheUsableFlowAndUndoTakesItBack(
      @ForAll @IntRange(min = 2, max = 400) int heads,
      @ForAll @DoubleRange(min = 0.1, max = 5) double gpm,
      @ForAll @DoubleRange(min = 5, max = 80) double usable,
      @ForAll UnitSystem system) {
    OneZone zone = zone(system, heads, gpm).type(Supply.AVAILABLE_FLOW, usable + " gpm");
    Book book = zone.book();
    double limit = zone.number(Supply.AVAILABLE_FLOW);
    double area = zone.number(Emitters.AREA);
    double flow = zone.number(Emitters.ZONE_FLOW);
    double rate = zone.number(Emitters.PRECIPITATION_RATE);
    double valves = zone.number(Valves.VALVES_NEEDED);
    assertThat(valves).isGreaterThanOrEqualTo(Math.ceil(flow / limit - 1e-6));
    Map<String, List<Entry>> before =
        Map.of(
            Sheets.ZONES, entries(book, Sheets.ZONES), Sheets.PIPES, entries(book, Sheets.PIPES));
    Edit split = EvenSplit.edit(book, 0).orElse(null);
    assertThat(split != null).isEqualTo(valves > 1);
    if (split == null) {
      return;
    }
    book.perform(split);
    assertThat(book.rows(Sheets.ZONES)).isEqualTo((int) valves);
    double areas = 0;
    double flows = 0;
    double counted = 0;
    Set<String> names = new HashSet<>();
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      double mine = zone.number(Emitters.ZONE_FLOW, row);
      assertThat(mine).isLessThanOrEqualTo(limit * (1 + LAST_BITS));
      assertThat(zone.number(Valves.VALVES_NEEDED, row)).isEqualTo(1);
      assertThat(zone.number(Emitters.PRECIPITATION_RATE, row))
          .isCloseTo(rate, within(LAST_BITS * rate));
      assertThat(book.entry(Mains.LENGTH.reference(), row))
          .isEqualTo(book.entry(Mains.LENGTH.reference(), 0));
      areas += zone.number(Emitters.AREA, row);
      flows += mine;
      counted += zone.number(Emitters.EMITTER_COUNT, row);
      names.add(book.entry(Facts.ZONE_NAME.reference(), row).toString());
    }
    assertThat(areas).isCloseTo(area, within(LAST_BITS * area));
    assertThat(flows).isCloseTo(flow, within(LAST_BITS * flow));
    assertThat(counted).isEqualTo(heads);
    assertThat(names).hasSize((int) valves);
    book.undo();
    for (String table : List.of(Sheets.ZONES, Sheets.PIPES)) {
      assertThat(entries(book, table)).isEqualTo(before.get(table));
    }
  }

  @Property(tries = 60)
  void theMainCarriesTheLargestFlowsThatMayRunTogether(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 1, max = 30) Integer> heads,
      @ForAll @IntRange(min = 1, max = 5) int atOnce,
      @ForAll @IntRange(min = 30, max = 120) int supply,
      @ForAll UnitSystem system) {
    OneZone zone = zone(system, heads.get(0), 1).type(Supply.AVAILABLE_FLOW, supply + " gpm");
    zone.book().perform(zone.design().edits().inserted(Sheets.ZONES, 1, heads.size()));
    for (int row = 1; row < heads.size(); row++) {
      zone.type(Emitters.EMITTER_COUNT, row, heads.get(row).toString());
      zone.type(Emitters.EMITTER_FLOW, row, "1 gpm");
    }
    zone.type(PipeLimits.VALVES_AT_ONCE, Integer.toString(atOnce));
    double gpm = zone.number(Supply.AVAILABLE_FLOW) / supply;
    for (int row = 0; row < heads.size(); row++) {
      List<Integer> others = new ArrayList<>(heads);
      int own = others.remove(row);
      others.sort(Comparator.reverseOrder());
      int together = own + others.stream().limit(atOnce - 1).mapToInt(Integer::intValue).sum();
      assertThat(zone.number(Together.MAIN_FLOW, row) / gpm)
          .isCloseTo(Math.min(supply, together), within(1e-6));
    }
  }

  private static List<Entry> entries(Book book, String table) {
    List<Entry> entries = new ArrayList<>();
    for (int row = 0; row < book.rows(table); row++) {
      for (Column column : book.schema().table(table).columns()) {
        entries.add(book.entry(column.reference(), row));
      }
    }
    return entries;
  }

  @Property(tries = 40)
  void theFlowAtAPressureIsTheFlowAtWhichTheCurveComesToIt(
      @ForAll @DoubleRange(min = 5, max = 85) double wanted, @ForAll UnitSystem system) {
    OneZone zone = zone(system, 10, 1).type(FlowTest.WORKING_PRESSURE, wanted + " psi");
    double flow = zone.number(FlowTest.FLOW_AT_PRESSURE);
    zone.type(Supply.FLOW_AT_ONCE, flow + (system == UnitSystem.US ? " gpm" : " L/min"));
    double drop = zone.number(Supply.SUPPLY_DROP);
    double expected = zone.number(FlowTest.STATIC_PRESSURE) - drop;
    assertThat(expected)
        .isCloseTo(zone.number(FlowTest.WORKING_PRESSURE), within(1e-6 * Math.max(1, expected)));
  }
}
