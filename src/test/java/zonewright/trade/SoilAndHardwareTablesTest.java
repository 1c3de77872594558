package zonewright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class SoilAndHardwareTablesTest {
  private final TradeTable soils = TradeTable.read("soil/soils.csv");
  private final TradeTable water = TradeTable.read("soil/available-water.csv");
  private final TradeTable limits = TradeTable.read("soil/sprinkler-rate-limits.csv");
  private final TradeTable emitters = TradeTable.read("emitters/emitters.csv");
  private final TradeTable pipes = TradeTable.read("pipes/pipes.csv");
  private final TradeTable meters = TradeTable.read("pipes/meters.csv");
  private final TradeTable losses = TradeTable.read("pipes/meter-losses.csv");
  private final TradeTable fittings = TradeTable.read("pipes/fittings.csv");

  private static List<BigDecimal> across(TradeTable table, CSVRecord row, String headingStart) {
    return table.headings().stream()
        .filter(heading -> heading.startsWith(headingStart))
        .map(row::get)
        .map(BigDecimal::new)
        .toList();
  }

  // Source: pairs of the controller test protocol (8th draft, 2008), by secondary quotation.
  @Test
  void intakeAndFlatStorageAreThePublishedPairsAndRiseFromClayToSand() {
    assertThat(soils.rows())
        .extracting(
            row ->
                String.join(
                    " ",
                    row.get("Soil"),
                    row.get("Intake rate (in/h)"),
                    row.get("Surface storage 0-3 % (in)")))
        .containsExactly(
            "clay 0.10 0.20",
            "silty clay 0.15 0.23",
            "clay loam 0.20 0.26",
            "loam 0.35 0.30",
            "sandy loam 0.40 0.33",
            "loamy sand 0.50 0.36",
            "sand 0.60 0.40");
    assertThat(soils.rows().stream().map(row -> new BigDecimal(row.get("Intake rate (in/h)"))))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  // Derived: a steeper surface holds no more standing water than a flatter one.
  @Test
  void aSteeperSlopeNeverHoldsMoreWater() {
    assertThat(soils.rows())
        .allSatisfy(
            row -> {
              List<BigDecimal> storage = across(soils, row, "Surface storage");
              assertThat(storage).hasSize(4).isSortedAccordingTo((a, b) -> b.compareTo(a));
              assertThat(storage).allSatisfy(depth -> assertThat(depth).isPositive());
            });
    assertThat(limits.rows())
        .allSatisfy(
            row ->
                assertThat(across(limits, row, "Slope"))
                    .hasSize(3)
                    .isSortedAccordingTo((a, b) -> b.compareTo(a)));
  }

  // Source: National Cooperative Soil Survey library aqp, estimateAWC: loam of medium organic
  // matter holds 0.18 in/in. Twelve inches to the foot.
  @Test
  void availableWaterIsTwelveTimesTheMiddleOfTheMediumBand() {
    assertThat(soils.number("loam", "Available water (in/ft)"))
        .isEqualByComparingTo(new BigDecimal("0.18").multiply(BigDecimal.valueOf(12)));
    assertThat(soils.rows())
        .allSatisfy(
            row -> {
              BigDecimal least =
                  water.number(row.get("Soil"), "Least 1.5-5 % organic matter (in/in)");
              BigDecimal greatest =
                  water.number(row.get("Soil"), "Greatest 1.5-5 % organic matter (in/in)");
              assertThat(new BigDecimal(row.get("Available water (in/ft)")))
                  .isEqualByComparingTo(least.add(greatest).multiply(BigDecimal.valueOf(6)));
            });
  }

  @Test
  void availableWaterHasTwelveTexturesAndThreeBandsOfLeastAndGreatest() {
    assertThat(water.rows())
        .hasSize(12)
        .allSatisfy(
            row ->
                assertThat(across(water, row, "Least"))
                    .hasSize(3)
                    .zipSatisfy(
                        across(water, row, "Greatest"),
                        (least, greatest) -> assertThat(least).isLessThan(greatest)));
  }

  // Source: USDA table in Landscape Management, 19 March 2018: plants never lower the safe rate.
  @Test
  void bareGroundNeverTakesMoreThanGroundUnderPlants() {
    Function<String, List<CSVRecord>> ofCover =
        cover -> limits.rows().stream().filter(row -> row.get("Cover").equals(cover)).toList();
    assertThat(ofCover.apply("bare"))
        .hasSize(4)
        .zipSatisfy(
            ofCover.apply("covered"),
            (bare, covered) -> {
              assertThat(bare.get("Soil")).isEqualTo(covered.get("Soil"));
              assertThat(across(limits, bare, "Slope"))
                  .zipSatisfy(
                      across(limits, covered, "Slope"),
                      (less, more) -> assertThat(less).isLessThanOrEqualTo(more));
            });
  }

  // Sources: fixed spray 0.65, the least of the EPA WaterSense specification for new homes 1.1;
  // rotor
  // 0.70 from memory; drip 0.70 derived, within 65 to 80 % of field evaluations in California;
  // compensating drip 0.90 derived, the efficiency of the EPA WaterSense Water Budget Tool 2.0;
  // California 23 CCR 490-495: overhead 0.75, drip 0.81.
  @Test
  void emittersStartFromPublishedUniformityAndEfficiency() {
    assertThat(emitters.rows())
        .allSatisfy(
            row -> {
              assertThat(row.get("Applies as")).isIn("overhead", "line", "point");
              assertThat(across(emitters, row, "Distribution").get(0))
                  .isGreaterThan(BigDecimal.ZERO)
                  .isLessThanOrEqualTo(BigDecimal.ONE);
              if (!row.get("Status").equals("common practice")) {
                assertThat(row.get("Irrigation efficiency"))
                    .isEqualTo(row.get("Applies as").equals("overhead") ? "0.75" : "0.81");
              }
            });
    assertThat(
            Stream.of("fixed spray", "rotor", "drip line", "pressure-compensating drip line")
                .map(name -> emitters.row(name).get("Distribution uniformity")))
        .containsExactly("0.65", "0.70", "0.70", "0.90");
  }

  // Derived: inside = outside less two walls. Sources of the spots: Schedule 40 1 in 1.049 in
  // (ASTM D1785); Class 160 2 in 2.193 in (University of Maryland irrigation course table).
  @Test
  void insideDiameterIsOutsideDiameterLessTwoWalls() {
    assertThat(pipes.number("PVC Schedule 40 1 in", "Least-wall inside diameter (in)"))
        .isEqualByComparingTo("1.049");
    assertThat(pipes.number("PVC Class 160 2 in", "Least-wall inside diameter (in)"))
        .isEqualByComparingTo("2.193");
    List<CSVRecord> walled =
        pipes.rows().stream().filter(row -> !row.get("Least wall (in)").isEmpty()).toList();
    assertThat(walled)
        .hasSize(51)
        .allSatisfy(
            row -> {
              BigDecimal outside = new BigDecimal(row.get("Outside diameter (in)"));
              BigDecimal wall = new BigDecimal(row.get("Least wall (in)"));
              assertThat(new BigDecimal(row.get("Least-wall inside diameter (in)")))
                  .as(row.get("Pipe"))
                  .isEqualByComparingTo(outside.subtract(wall.add(wall)));
            });
  }

  // Source: ASTM D2241, wall = outside diameter ÷ ratio, never under 0.060 in (from memory).
  @Test
  void classPipeHasTheWallItsRatioAsksFor() {
    List<CSVRecord> classed =
        pipes.rows().stream().filter(row -> row.get("Class").startsWith("SDR")).toList();
    assertThat(classed)
        .hasSize(15)
        .allSatisfy(
            row -> {
              double ratio = Double.parseDouble(row.get("Class").substring(4, 6));
              double outside = Double.parseDouble(row.get("Outside diameter (in)"));
              assertThat(Double.parseDouble(row.get("Least wall (in)")))
                  .as(row.get("Pipe"))
                  .isCloseTo(Math.max(0.060, outside / ratio), within(0.001));
            });
  }

  // Sources: EPANET 2.2 Users Manual (US EPA, 2020) table 3.2, plastic 140 to 150; public table of
  // Hazen-Williams coefficients, PVC 150, polyethylene 140, copper 130 to 140.
  @Test
  void everyPipeIsAsSmoothAsAPublishedTableSaysItsMaterialIs() {
    for (TradeTable table : List.of(pipes, TradeTable.read("pipes/pipes-metric.csv"))) {
      assertThat(table.rows())
          .allSatisfy(
              row -> {
                String coefficient =
                    switch (row.get("Material")) {
                      case "polyethylene", "copper" -> "140";
                      default -> "150";
                    };
                assertThat(row.get("Hazen-Williams C")).as(row.get("Pipe")).isEqualTo(coefficient);
                assertThat(row.get("Status")).doesNotContain("C from memory");
              });
    }
  }

  // Derived: loss goes with the square of flow, so a larger flow through one meter loses more, and
  // the square law from the safe maximum meets every printed point within 0.5 psi.
  @Test
  void meterLossesGrowWithTheSquareOfFlowUpToTheSafeMaximum() {
    assertThat(losses.rows())
        .allSatisfy(
            row -> {
              String meter = row.get("Meter");
              double most = meters.number(meter, "Safe maximum flow (gpm)").doubleValue();
              double lossAtMost =
                  meters.number(meter, "Pressure loss at safe maximum (psi)").doubleValue();
              double share = Double.parseDouble(row.get("Flow (gpm)")) / most;
              assertThat(share).isGreaterThan(0).isLessThan(1);
              assertThat(Double.parseDouble(row.get("Pressure loss (psi)")))
                  .as(row.get("Meter and flow"))
                  .isCloseTo(lossAtMost * share * share, within(0.5));
            });
    assertThat(
            losses.rows().stream().collect(Collectors.groupingBy(row -> row.get("Meter"))).values())
        .hasSize(5)
        .allSatisfy(
            points ->
                assertThat(points.stream().map(row -> new BigDecimal(row.get("Flow (gpm)"))))
                    .isSorted()
                    .doesNotHaveDuplicates());
  }

  // Source: Pasco, Washington, municipal code 13.30.110: 1 in not over 50 gpm, 1-1/2 in 100 gpm.
  @Test
  void safeMaximumFlowsAgreeWithAMunicipalCode() {
    assertThat(meters.number("1 in", "Safe maximum flow (gpm)")).isEqualByComparingTo("50");
    assertThat(meters.number("1-1/2 in", "Safe maximum flow (gpm)")).isEqualByComparingTo("100");
  }

  @Test
  void aLargerFittingCostsAtLeastAsMuchLength() {
    assertThat(fittings.rows())
        .allSatisfy(
            row -> {
              List<BigDecimal> lengths = across(fittings, row, "Length");
              assertThat(lengths).hasSize(18);
              assertThat(lengths.subList(0, 9)).isSorted().isEqualTo(lengths.subList(9, 18));
            });
  }
}
