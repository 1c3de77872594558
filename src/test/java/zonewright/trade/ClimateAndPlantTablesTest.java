package zonewright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ClimateAndPlantTablesTest {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
  private static final List<Integer> DAYS = List.of(31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31);

  private final TradeTable climate = TradeTable.read("climate/reference-et.csv");
  private final TradeTable plants = TradeTable.read("plants/plants.csv");
  private final TradeTable factors = TradeTable.read("plants/plant-factors.csv");

  private static BigDecimal month(CSVRecord place, int month) {
    return new BigDecimal(place.get(MONTHS.get(month) + " (in)"));
  }

  // Printed tables round each month and the year on their own; common practice, no source.
  @Test
  void theMonthsOfEveryPlaceAddUpToItsYear() {
    assertThat(climate.rows())
        .allSatisfy(
            place -> {
              BigDecimal sum =
                  Stream.iterate(0, month -> month + 1)
                      .limit(12)
                      .map(month -> month(place, month))
                      .reduce(BigDecimal.ZERO, BigDecimal::add);
              assertThat(sum)
                  .as(place.get("Place"))
                  .isCloseTo(
                      new BigDecimal(place.get("Annual (in)")), within(new BigDecimal("0.35")));
              if (place.get("Status").contains("annual computed from columns")) {
                assertThat(sum).isEqualByComparingTo(place.get("Annual (in)"));
              }
            });
  }

  // Derived from the 1999 zones map: its monthly figures are daily means printed to 0.01 in,
  // multiplied by the days of the month.
  @Test
  void zonesOfTheStateMapAreWholeHundredthsOfAnInchADay() {
    List<CSVRecord> zones =
        climate.rows().stream().filter(row -> row.get("Place").startsWith("CIMIS zone")).toList();
    assertThat(zones).hasSize(18);
    for (CSVRecord zone : zones) {
      for (int month = 0; month < 12; month++) {
        BigDecimal hundredths = month(zone, month).movePointRight(2);
        assertThat(hundredths.remainder(BigDecimal.valueOf(DAYS.get(month))))
            .as("%s, %s", zone.get("Place"), MONTHS.get(month))
            .isEqualByComparingTo("0");
      }
    }
  }

  // The band for the peak is wide, common practice, no source.
  @Test
  void everyNorthAmericanPlaceHasItsPeakInANorthernSummer() {
    List<CSVRecord> american =
        climate.rows().stream()
            .filter(place -> place.get("Region").matches("(California|Utah).*"))
            .toList();
    assertThat(american)
        .hasSize(22)
        .allSatisfy(
            place -> {
              int peak = 0;
              for (int month = 1; month < 12; month++) {
                peak = month(place, month).compareTo(month(place, peak)) > 0 ? month : peak;
              }
              assertThat(MONTHS.get(peak)).isIn("May", "Jun", "Jul", "Aug", "Sep");
              assertThat(month(place, peak)).isBetween(new BigDecimal("4"), new BigDecimal("16"));
            });
  }

  // 25.4 mm to the inch. What the source printed stands beside what was made of it.
  @Test
  void figuresPrintedInOtherUnitsStandBesideTheInchesMadeOfThem() {
    List<CSVRecord> metric =
        climate.rows().stream().filter(place -> !printed(place).isEmpty()).toList();
    assertThat(metric).extracting(place -> place.get("Region")).contains("Angola", "Thailand");
    for (CSVRecord place : metric) {
      String[] words = printed(place).split(" ");
      assertThat(words).as(place.get("Place")).hasSize(13);
      assertThat(words[12]).isIn("mm/day", "mm/month");
      for (int month = 0; month < 12; month++) {
        int days = words[12].equals("mm/day") ? DAYS.get(month) : 1;
        double inches = Double.parseDouble(words[month]) * days / 25.4;
        assertThat(month(place, month).doubleValue())
            .as("%s, %s", place.get("Place"), MONTHS.get(month))
            .isCloseTo(inches, within(0.00501));
      }
    }
  }

  private static String printed(CSVRecord place) {
    return place.get("As printed where not in inches a month");
  }

  // Sources: City of Vacaville code Table 14.27.030.A (2022); FAO Irrigation and Drainage Paper 56
  // (1998) figure 18 (Cabinda, October); the fact sheet of Utah State University Extension named in
  // the table (Moab, July).
  @Test
  void figuresReadInThePublishedTablesStandAsPrinted() {
    assertThat(climate.number("Vacaville", "Jul (in)")).isEqualByComparingTo("8.2");
    assertThat(climate.number("Vacaville", "Annual (in)")).isEqualByComparingTo("52.3");
    assertThat(climate.number("Lagoon Valley", "Jul (in)")).isEqualByComparingTo("7.8");
    assertThat(climate.number("Lagoon Valley", "Annual (in)")).isEqualByComparingTo("45.2");
    assertThat(climate.number("Moab", "Jul (in)")).isEqualByComparingTo("9.03");
    assertThat(printed(climate.row("Cabinda")).split(" ", -1)[9]).isEqualTo("3.1");
  }

  // What nobody read in print is not listed.
  @Test
  void noPlaceRestsOnMemory() {
    assertThat(climate.rows())
        .allSatisfy(
            place -> assertThat(place.get("Status")).contains("verified").doesNotContain("memory"));
  }

  // Greatest factor of any source bundled: microclimate factor 1.4, Costello et al. (2000).
  @Test
  void plantFactorsAreBetweenNothingAndOneAndFourTenthsTimesReferenceEt() {
    assertThat(plants.rows())
        .allSatisfy(
            plant ->
                assertThat(new BigDecimal(plant.get("Plant factor")))
                    .isBetween(new BigDecimal("0.05"), new BigDecimal("1.4")));
    assertThat(factors.rows())
        .allSatisfy(
            row -> {
              List<BigDecimal> stated = stated(row);
              assertThat(stated).isNotEmpty().isSorted();
              assertThat(stated)
                  .allSatisfy(
                      value -> assertThat(value).isBetween(BigDecimal.ZERO, new BigDecimal("1.4")));
            });
  }

  @Test
  void theFactorAPlantStartsWithIsInTheReferenceListUnderTheSameBasis() {
    assertThat(plants.rows())
        .allSatisfy(
            plant -> {
              String name = plant.get("Plant").replaceFirst(" \\(.*\\)$", "");
              BigDecimal factor = new BigDecimal(plant.get("Plant factor"));
              assertThat(factors.rows())
                  .as(plant.get("Plant"))
                  .anyMatch(
                      row ->
                          row.get("Plant").equals(name)
                              && row.get("Basis").equals(plant.get("Basis"))
                              && stated(row).stream().anyMatch(v -> v.compareTo(factor) == 0));
            });
  }

  // Sources: FAO-56 (1998) Table 22, depletion of turf 0.40 and 0.50, and its limits 0.1 to 0.8 for
  // an adjusted depletion fraction; UF/IFAS AE144, most turf roots in the top 12 in.
  @Test
  void rootsAndDepletionKeepToTheHandbook() {
    assertThat(plants.number("cool-season turf", "Allowed depletion")).isEqualByComparingTo("0.40");
    assertThat(plants.number("warm-season turf", "Allowed depletion")).isEqualByComparingTo("0.50");
    assertThat(plants.rows())
        .allSatisfy(
            plant -> {
              assertThat(new BigDecimal(plant.get("Allowed depletion")))
                  .isBetween(new BigDecimal("0.1"), new BigDecimal("0.8"));
              BigDecimal depth = new BigDecimal(plant.get("Root depth (in)"));
              assertThat(depth).isBetween(new BigDecimal("6"), new BigDecimal("48"));
              if (plant.get("Group").equals("turf")) {
                assertThat(depth).isLessThanOrEqualTo(new BigDecimal("12"));
              }
            });
  }

  // Sources: FAO-56 (1998) Table 12, cool-season turf middle stage 0.95; ANSI/ASABE S623.1-2017,
  // cool-season turf 0.8, the same in the EPA WaterSense Water Budget Tool 2.0 (2025).
  @Test
  void coolSeasonTurfDiffersByBasis() {
    assertThat(factors.rows())
        .filteredOn(row -> row.get("Plant").equals("cool-season turf"))
        .filteredOn(row -> !row.get("Condition").contains("initial"))
        .extracting(row -> row.get("Basis") + " " + row.get("Typical"))
        .containsExactlyInAnyOrder("FAO-56 Kc 0.95", "ASABE S623 0.8");
  }

  // Source: WUCOLS IV User Manual (University of California), Categories of Water Needs: high 70 to
  // 90, moderate 40 to 60, low 10 to 30 and very low under 10 % of reference evapotranspiration.
  @Test
  void waterUseCategoriesHaveTheRangesOfTheirManual() {
    assertThat(factors.rows())
        .filteredOn(row -> row.get("Basis").startsWith("WUCOLS"))
        .extracting(row -> row.get("Plant") + " " + row.get("Low") + "-" + row.get("High"))
        .containsExactlyInAnyOrder(
            "high water use 0.7-0.9",
            "moderate water use 0.4-0.6",
            "low water use 0.1-0.3",
            "very low water use 0-0.1");
  }

  // Source: EPA WaterSense Water Budget Tool 2.0 (2025), Reference Equations and Data B94:C100.
  @Test
  void turfAndDesertPlantsHaveTheFactorsOfTheBudgetTool() {
    assertThat(plants.number("cool-season turf", "Plant factor")).isEqualByComparingTo("0.8");
    assertThat(plants.number("warm-season turf", "Plant factor")).isEqualByComparingTo("0.6");
    assertThat(plants.number("desert plants", "Plant factor")).isEqualByComparingTo("0.3");
  }

  private static List<BigDecimal> stated(CSVRecord row) {
    return Stream.of("Low", "Typical", "High")
        .map(row::get)
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .toList();
  }
}
