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
    assertThat(zones).hasSize(3);
    for (CSVRecord zone : zones) {
      for (int month = 0; month < 12; month++) {
        BigDecimal hundredths = month(zone, month).movePointRight(2);
        assertThat(hundredths.remainder(BigDecimal.valueOf(DAYS.get(month))))
            .as("%s, %s", zone.get("Place"), MONTHS.get(month))
            .isEqualByComparingTo("0");
      }
    }
  }

  // Every bundled place is Californian; the band for its peak is wide, common practice, no source.
  @Test
  void everyPlaceHasItsPeakInANorthernSummer() {
    assertThat(climate.rows())
        .allSatisfy(
            place -> {
              int peak = 0;
              for (int month = 1; month < 12; month++) {
                peak = month(place, month).compareTo(month(place, peak)) > 0 ? month : peak;
              }
              assertThat(MONTHS.get(peak)).isIn("May", "Jun", "Jul", "Aug");
              assertThat(month(place, peak)).isBetween(new BigDecimal("4"), new BigDecimal("16"));
            });
  }

  // Sources: City of Vacaville code Table 14.27.030.A (July 8.2 in, year 52.3 in); annual totals of
  // Fresno 51.1 in and Ventura 43.5 in, 23 CCR chapter 2.7 Appendix A.
  @Test
  void figuresReadInThePublishedTablesStandAsPrinted() {
    assertThat(climate.number("Vacaville", "Jul (in)")).isEqualByComparingTo("8.2");
    assertThat(climate.number("Vacaville", "Annual (in)")).isEqualByComparingTo("52.3");
    assertThat(climate.number("Fresno", "Annual (in)")).isEqualByComparingTo("51.1");
    assertThat(climate.number("Ventura", "Annual (in)")).isEqualByComparingTo("43.5");
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
  // cool-season turf 0.8 (from memory).
  @Test
  void coolSeasonTurfDiffersByBasis() {
    assertThat(factors.rows())
        .filteredOn(row -> row.get("Plant").equals("cool-season turf"))
        .filteredOn(row -> !row.get("Condition").contains("initial"))
        .extracting(row -> row.get("Basis") + " " + row.get("Typical"))
        .containsExactlyInAnyOrder("FAO-56 Kc 0.95", "ASABE S623 0.8");
  }

  private static List<BigDecimal> stated(CSVRecord row) {
    return Stream.of("Low", "Typical", "High")
        .map(row::get)
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .toList();
  }
}
