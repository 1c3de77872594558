package zonewright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.pipes.Laterals;
import zonewright.pipes.Mains;
import zonewright.pipes.OwnPipes;
import zonewright.pipes.Supply;
import zonewright.pipes.Wiring;
import zonewright.retrofit.PipeTakeoff;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** Pipe, fittings and wire counted off the sheet Pipes, as a person would count them on a plan. */
class PipeTakeoffTest {
  private Design design;
  private Book book;

  /** Valves at 100, 150 and 150 ft along one main; invented. */
  @BeforeEach
  void threeZones() {
    design = Design.blank(UnitSystem.US);
    book = design.book();
    book.perform(design.edits().inserted(ZONES, 0, 3));
    type(Supply.AVAILABLE_FLOW, 0, "30 gpm");
    for (int row = 0; row < 3; row++) {
      type(Facts.ZONE_NAME, row, "Zone " + (row + 1));
      type(Emitters.EMITTER, row, "fixed spray");
      type(Emitters.EMITTER_COUNT, row, "8");
      type(Emitters.EMITTER_FLOW, row, "1 gpm");
      type(Laterals.LENGTH, row, List.of("60 ft", "40 ft", "80 ft").get(row));
      type(Laterals.SIZE, row, List.of("1 in", "3/4 in", "1 in").get(row));
      type(Mains.LENGTH, row, List.of("100 ft", "150 ft", "150 ft").get(row));
      type(Mains.SIZE, row, List.of("1 in", "1-1/4 in", "1 in").get(row));
      type(Wiring.RUN, row, List.of("120 ft", "170 ft", "170 ft").get(row));
    }
    type(Laterals.COUNT, 2, "2");
  }

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  private int item(String by, String in, String pipe) {
    int row = book.rows(PARTS);
    book.perform(design.edits().inserted(PARTS, row, 1));
    type(Parts.ITEM_NAME, row, by + " " + pipe);
    type(Parts.COUNTED_BY, row, by);
    type(Parts.COUNTED_IN, row, in);
    type(Parts.PIPE, row, pipe);
    type(Parts.PRICE, row, "1");
    return row;
  }

  private double count(int row) {
    return book.number(Parts.COUNT.reference(), row);
  }

  @Test
  void lateralsAreCountedBySizeWithEachBranch() {
    assertThat(count(item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 1 in")))
        .as("60 and two of 80")
        .isEqualTo(60 + 2 * 80);
    assertThat(count(item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 3/4 in"))).isEqualTo(40);
    assertThat(count(item(Counted.LATERAL, Counted.FOOT, ""))).isEqualTo(260);
    assertThat(count(item(Counted.LATERAL, Counted.METRE, "PVC Class 200 3/4 in")))
        .isCloseTo(40 * 0.3048, offset(1e-9));
  }

  @Test
  void theMainIsOneLineAsLargeAsWhatLiesBeyondAsksFor() {
    assertThat(count(item(Counted.MAIN, Counted.FOOT, ""))).as("to the farthest").isEqualTo(150);
    assertThat(count(item(Counted.MAIN, Counted.FOOT, "PVC Schedule 40 1-1/4 in")))
        .as("the second zone asks for it, and its water passes the first 100 ft")
        .isEqualTo(150);
    type(Mains.SIZE, 0, "2 in");
    assertThat(count(1)).as("behind the first zone").isEqualTo(50);
    assertThat(count(item(Counted.MAIN, Counted.FOOT, "PVC Schedule 40 2 in"))).isEqualTo(100);
  }

  @Test
  void fittingsAreCountedOneForEachHeadAndEachValve() {
    int laterals = item(Counted.LATERAL_FITTINGS, Counted.EACH, "");
    assertThat(count(laterals))
        .as("8 and 8; two laterals of 4, and the tee where they part")
        .isEqualTo(8 + 8 + 9);
    int mains = item(Counted.MAIN_FITTINGS, Counted.EACH, "");
    assertThat(count(mains)).as("a tee for each valve").isEqualTo(3);
    for (int row = 0; row < 3; row++) {
      type(Mains.ELBOWS, row, List.of("2", "3", "3").get(row));
    }
    assertThat(count(mains)).as("the third elbow once").isEqualTo(3 + 3);
  }

  @Test
  void wireIsCountedByTheRunAndTheCommonWireByTheLongest() {
    assertThat(count(item(Counted.WIRE, Counted.FOOT, ""))).isEqualTo(120 + 170 + 170);
    assertThat(count(item(Counted.COMMON_WIRE, Counted.FOOT, ""))).isEqualTo(170);
  }

  private int wire(String size) {
    int row = item(Counted.WIRE, Counted.FOOT, "");
    type(Parts.WIRE, row, size);
    return row;
  }

  @Test
  void wireIsCountedByTheSizeChosenOrTheThinnestThatWillDo() {
    int thin = wire("18 AWG");
    assertThat(book.outcome(PipeTakeoff.WIRE_SIZE.reference(), 0))
        .isEqualTo(new Outcome.Words("18 AWG"));
    assertThat(count(thin)).as("short runs: all of it thin").isEqualTo(120 + 170 + 170);
    type(Wiring.WIRE_CHOSEN, 1, "14 AWG");
    assertThat(count(thin)).isEqualTo(120 + 170);
    assertThat(lines())
        .anyMatch(line -> line.contains("is to get 170 ft of 14 AWG") && line.contains("no item"));
    assertThat(count(wire("14 AWG"))).isEqualTo(170);
    assertThat(lines()).noneMatch(line -> line.contains("14 AWG"));
    double ofZones = 0;
    for (int row = 0; row < 3; row++) {
      ofZones += book.number(ZoneCosts.COST_OF_ZONE.reference(), row);
    }
    assertThat(ofZones).isCloseTo(460, offset(0.02));
    assertThat(book.number(ZoneCosts.COST_OF_ZONE.reference(), 1)).isEqualTo(170);
  }

  @Test
  void anItemCountedByHandLeavesTheZonesTheirCost() {
    item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 1 in");
    wire("18 AWG");
    book.perform(design.edits().inserted(PARTS, 2, 1));
    type(Parts.ITEM_NAME, 2, "Sleeve under the drive");
    type(Parts.COUNT, 2, "3");
    type(Parts.PRICE, 2, "40");
    assertThat(book.number(Parts.OF_A_SIZE.reference(), 2)).isZero();
    assertThat(book.number(BuildUp.DIRECT.reference(), 0)).isEqualTo(220 + 460 + 120);
    assertThat(book.number(ZoneCosts.COST_OF_ZONE.reference(), 0)).isEqualTo(60 + 120);
    assertThat(book.number(ZoneCosts.NOT_ALLOTTED.reference(), 0)).isEqualTo(120);
  }

  @Test
  void aPipeOfOnesOwnIsCountedByItsName() {
    book.perform(design.edits().inserted(MATERIALS, 0, 1));
    type(OwnPipes.NAME, 0, "Hose, 30 mm");
    type(OwnPipes.INSIDE, 0, "30 mm");
    type(Laterals.OWN, 1, "Hose, 30 mm");
    type(Mains.OWN, 2, "Hose, 30 mm");
    int lateral = item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 3/4 in");
    assertThat(count(lateral)).isZero();
    assertThat(lines()).anyMatch(line -> line.contains("is to get 40 ft of Hose, 30 mm"));
    int own = item(Counted.LATERAL, Counted.FOOT, "");
    type(Parts.OWN_PIPE, own, "Hose, 30 mm");
    assertThat(count(own)).isEqualTo(40);
    assertThat(lines()).noneMatch(line -> line.contains("ft of Hose"));
    int main = item(Counted.MAIN, Counted.FOOT, "");
    type(Parts.OWN_PIPE, main, "Hose, 30 mm");
    assertThat(count(main)).as("half of the last 50 ft, which two zones share").isEqualTo(25);
    assertThat(count(item(Counted.MAIN, Counted.FOOT, "PVC Schedule 40 1-1/4 in")))
        .as("nearer reaches keep the size the tabulated ones ask for")
        .isEqualTo(125);
    assertThat(book.number(ZoneCosts.COST_OF_ZONE.reference(), 1))
        .as("its own 40 ft of lateral and its 25 ft of main")
        .isEqualTo(65);
  }

  @Test
  void whatIsTypedOnTakeoffCountsInstead() {
    int row = item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 1 in");
    type(PipeTakeoff.LENGTH, 0, "75 ft");
    assertThat(count(row)).isEqualTo(75 + 2 * 80);
    type(PipeTakeoff.LENGTH, 0, "");
    assertThat(count(row)).isEqualTo(60 + 2 * 80);
  }

  @Test
  void withoutASizeChosenTheSmallestThatWillDoIsLaid() {
    type(Laterals.SIZE, 0, "");
    assertThat(book.outcome(PipeTakeoff.PIPE.reference(), 0))
        .isEqualTo(
            new Outcome.Words(
                "PVC Class 200 "
                    + ((Outcome.Words) book.outcome(Laterals.SMALLEST.reference(), 0)).text()));
  }

  @Test
  void whatIsPricedAndNotKnownOrInNoItemIsAFinding() {
    item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 1 in");
    item(Counted.MAIN, Counted.FOOT, "");
    assertThat(lines())
        .anyMatch(
            line ->
                line.contains("is to get 40 ft of PVC Class 200 3/4 in")
                    && line.contains("no item of the price book counts that size"))
        .noneMatch(line -> line.contains("is not known, and items"));
    type(Laterals.LENGTH, 0, "");
    type(Mains.LENGTH, 1, "");
    assertThat(lines())
        .anyMatch(line -> line.contains("lateral pipe is not known"))
        .anyMatch(line -> line.contains("main run is not known"));
    item(Counted.LATERAL, Counted.FOOT, "");
    assertThat(lines()).noneMatch(line -> line.contains("counts that size"));
  }

  private List<String> lines() {
    return design.findings().stream().map(Finding::line).toList();
  }

  @Property(tries = 60)
  void sizesAddUpToAllPipeAndZonesToTheCostOfIt(@ForAll long seed) {
    threeZones();
    Random random = new Random(seed);
    List<String> sizes = List.of("3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in");
    for (int row = 0; row < 3; row++) {
      type(Laterals.SIZE, row, sizes.get(random.nextInt(5)));
      type(Mains.SIZE, row, sizes.get(random.nextInt(5)));
      type(Mains.LENGTH, row, (1 + random.nextInt(3)) * 50 + " ft");
    }
    List<Integer> laterals = new ArrayList<>();
    List<Integer> mains = new ArrayList<>();
    for (String size : sizes) {
      laterals.add(item(Counted.LATERAL, Counted.FOOT, "PVC Class 200 " + size));
      mains.add(item(Counted.MAIN, Counted.FOOT, "PVC Schedule 40 " + size));
    }
    double main = 0;
    for (int row = 0; row < 3; row++) {
      main = Math.max(main, book.number(Mains.LENGTH.reference(), row));
    }
    assertThat(laterals.stream().mapToDouble(this::count).sum()).isCloseTo(260, offset(1e-9));
    assertThat(mains.stream().mapToDouble(this::count).sum()).isCloseTo(main, offset(1e-9));
    double ofZones = 0;
    for (int row = 0; row < 3; row++) {
      ofZones += book.number(ZoneCosts.COST_OF_ZONE.reference(), row);
    }
    assertThat(ofZones)
        .as("all of it is allotted, but for the cents of rounding")
        .isCloseTo(book.number(BuildUp.DIRECT.reference(), 0), offset(0.02));
  }
}
