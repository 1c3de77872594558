package zonewright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type, and what becomes of it. */
class QuantityTextTest {
  private static double read(String text, QuantityKind kind, UnitSystem system) {
    QuantityText.Reading reading = QuantityText.read(text, kind, system);
    assertThat(reading).as("%s", text).isInstanceOf(QuantityText.Read.class);
    return ((QuantityText.Read) reading).value();
  }

  private static String refusal(String text, QuantityKind kind, UnitSystem system) {
    QuantityText.Reading reading = QuantityText.read(text, kind, system);
    assertThat(reading).as("%s", text).isInstanceOf(QuantityText.Unreadable.class);
    return ((QuantityText.Unreadable) reading).sentence();
  }

  @ParameterizedTest(name = "“{0}” as {1} in {2} is {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // Plain numbers are in the unit of the system.
        "12|AREA|US|12",
        "12|AREA|SI|12",
        "+12|AREA|US|12",
        "-3.5|LENGTH|US|-3.5",
        "−3.5|LENGTH|US|-3.5",
        "0|DEPTH|US|0",
        ".5|DEPTH|US|0.5",
        "5.|DEPTH|US|5",
        "1e3|AREA|US|1000",
        "2.5E-3|DEPTH|SI|0.0025",
        // A yard is 3 ft, a gallon 231 in³, an acre 43,560 ft² (NIST Handbook 44, appendix C).
        "2 yd²|AREA|US|18",
        "1 sq yd|AREA|SI|0.83612736",
        "1 yd³|VOLUME|SI|764.554857984",
        "231 cu yd|VOLUME|US|46656",
        "1 ac-ft|VOLUME|SI|1233481.83754752",
        "1 acre-foot|VOLUME|SI|1233481.83754752",
        "1 cfs|FLOW|SI|1699.01079552",
        "2.31 ccf|VOLUME|US|1728",
        "1.75 in/week|DAILY_DEPTH|US|0.25",
        "14 mm/wk|DAILY_DEPTH|SI|2",
        "1:4|SLOPE|US|0.25",
        "45°|SLOPE|US|1",
        "33 %|SLOPE|US|0.33",
        // Units of either system, in any spelling people use.
        "12 gpm|FLOW|US|12",
        "12gpm|FLOW|SI|45.424941408",
        "45.424941408 L/min|FLOW|US|12",
        "2 L/h|FLOW|SI|0.03333333333333333",
        "60 gph|FLOW|US|1",
        "900 ft2|AREA|US|900",
        "900 ft²|AREA|US|900",
        "900 SQ FT|AREA|US|900",
        "1 acre|AREA|US|43560",
        "1 ha|AREA|SI|10000",
        "6 mm|DEPTH|SI|6",
        "25.4 mm|DEPTH|US|1",
        "4 ft|DEPTH|US|48",
        "2 h|MINUTES|US|120",
        "90 s|MINUTES|SI|1.5",
        "48 h|DAYS|US|2",
        "60 psi|PRESSURE|US|60",
        "4 bar|PRESSURE|SI|400",
        "0.18 in/in|STORAGE|US|2.16",
        // Fractions.
        "3/4 in|DEPTH|US|0.75",
        "3/4|DEPTH|US|0.75",
        "1 1/2 in|DEPTH|US|1.5",
        "1-1/2|DEPTH|US|1.5",
        "12 5/8 in|DEPTH|US|12.625",
        "-1/2|LENGTH|US|-0.5",
        // Feet and inches.
        "5 ft 6 in|LENGTH|US|5.5",
        "5'6\"|LENGTH|US|5.5",
        "5′ 6″|LENGTH|US|5.5",
        "5 ft 6 in|LENGTH|SI|1.6764",
        "5 ft 6 1/2 in|DEPTH|US|66.5",
        // Decimal commas and thousands set apart.
        "1,5|DEPTH|US|1.5",
        "1,5|DEPTH|SI|1.5",
        "0,250|DEPTH|SI|0.25",
        "1,250|AREA|US|1250",
        "1,250.5|AREA|US|1250.5",
        "1,250.5|AREA|SI|1250.5",
        "1,250,000|AREA|SI|1250000",
        "1.250,5|AREA|SI|1250.5",
        "1.250,5|AREA|US|1250.5",
        "1.250.000|AREA|SI|1250000",
        "1 250|AREA|SI|1250",
        "1 250,5 m²|AREA|SI|1250.5",
        "12 345 678|AREA|US|12345678",
        "1'250|AREA|SI|1250",
        "1 250|AREA|SI|1250",
        // Shares: always a percent; how large a number is says nothing about its unit.
        "70|SHARE|US|0.7",
        "70 %|SHARE|US|0.7",
        "70%|SHARE|SI|0.7",
        "70 percent|SHARE|US|0.7",
        "0.7|SHARE|US|0.007",
        "0.7 %|SHARE|US|0.007",
        "1|SHARE|US|0.01",
        "2|SHARE|US|0.02",
        "0.5|SHARE|US|0.005",
        "8 1/2|SHARE|US|0.085",
        "1 %|SHARE|US|0.01",
        "0.5 %|SHARE|US|0.005",
        "28.5|SHARE|US|0.285",
        // Slopes: always a percent.
        "6|SLOPE|US|0.06",
        "0.5|SLOPE|US|0.005",
        "1|SLOPE|US|0.01",
        "0.5 %|SLOPE|US|0.005",
        "14.3|SLOPE|US|0.143",
        // But a fraction alone is rise over run.
        "1/50|SLOPE|SI|0.02",
        "1/2 %|SLOPE|SI|0.005",
        ".05|SLOPE|US|0.0005",
        // Ratios as the trade writes them: the 1 is the rise, letters say it otherwise.
        "4:1|SLOPE|US|0.25",
        "1:4|SLOPE|US|0.25",
        "2:1|SLOPE|SI|0.5",
        "1 : 50|SLOPE|SI|0.02",
        "1 in 50|SLOPE|SI|0.02",
        "4H:1V|SLOPE|US|0.25",
        "1V:4H|SLOPE|US|0.25",
        "3h : 2v|SLOPE|US|0.6666666666666666",
        "2.5:1|SLOPE|US|0.4",
        "1/4 in/ft|SLOPE|US|0.020833333333333332",
        // Angles: rise over run is the tangent.
        "45°|SLOPE|US|1",
        "14°|SLOPE|US|0.249328002843",
        "14 deg|SLOPE|SI|0.249328002843",
        "26°34'|SLOPE|US|0.500035245013",
        // Latitudes in degrees, minutes and seconds, north or south.
        "38.5|ANGLE|US|38.5",
        "38.5°|ANGLE|US|38.5",
        "45°43'|ANGLE|US|45.7166666667",
        "45°43′ N|ANGLE|SI|45.7166666667",
        "45° 43' 12\"|ANGLE|US|45.72",
        "N 45°43'|ANGLE|US|45.7166666667",
        "33°54' S|ANGLE|US|-33.9",
        "-33°54'|ANGLE|US|-33.9",
        "33.9 S|ANGLE|US|-33.9",
        "33.9° south|ANGLE|SI|-33.9",
      })
  void readsWhatPeopleType(String text, QuantityKind kind, UnitSystem system, double expected) {
    assertThat(read(text, kind, system)).isEqualTo(expected);
  }

  @ParameterizedTest(name = "“{0}” as {1} in {2} is refused: {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "12 gpm|AREA|US|“12 gpm”: the unit “gpm” is none of an area; write for example 900 ft² or 85 m²",
        "6 in|RATE|US|“6 in”: the unit “in” is none of a rate; write for example 1.5 in/h or 38 mm/h",
        "70 %|FACTOR|US|“70 %”: the unit “%” is none of a factor; write for example 0.8",
        "45°|FACTOR|US|“45°”: the unit “°” is none of a factor; write for example 0.8",
        "45°|SHARE|US|“45°”: the unit “°” is none of a share; write for example 70 %",
        "2 in/ft|ANGLE|US|“2 in/ft”: the unit “in/ft” is none of an angle; write for example 38.5° or 38°30'",
        "7/10|SHARE|US|“7/10” can be read two ways; write 70 % or 0.7 %",
        "3:2|SLOPE|US|“3:2” can be read two ways; write for example 3H:1V, 1V:3H or a percent",
        "3H:2H|SLOPE|US|“3H:2H” can be read two ways; write for example 3H:1V, 1V:3H or a percent",
        "1:0|SLOPE|US|“1:0” divides by zero",
        "90°|SLOPE|US|“90°” is no slope; write an angle below 90°, a percent or a ratio such as 4:1",
        "45°60'|ANGLE|US|“45°60'” is no angle; minutes and seconds stay below 60, as in 38°30'",
        "-33 S|ANGLE|US|“-33 S” is no latitude; write for example 38°30' N, or -33.9° for one in the south",
        "12d|AREA|US|“12d”: the unit “d” is none of an area; write for example 900 ft² or 85 m²",
        "12 furlongs|LENGTH|US|“12 furlongs”: the unit “furlongs” is not known here; write a length such as 15 ft or 4.5 m",
        "1,250|AREA|SI|“1,250” can be read two ways; write 1250 or 1.250",
        "about twelve|FLOW|US|“about twelve” is not a number; write a flow such as 12 gpm or 45 L/min",
        "abc|AREA|SI|“abc” is not a number; write an area such as 900 ft² or 85 m²",
        "1/0|DEPTH|US|“1/0” divides by zero",
        "1 2|COUNT|US|“1 2” is not a number",
        "1..2|COUNT|US|“1..2” is not a number",
        "1.2.3|COUNT|US|“1.2.3” is not a number",
        "1,2,3|COUNT|US|“1,2,3” is not a number",
        "1e999|AREA|US|“1e999” is too large a number",
        "1e308 acre|AREA|US|“1e308 acre” is too large a number",
      })
  void refusesWithASentenceThatSaysWhatIsWrong(
      String text, QuantityKind kind, UnitSystem system, String sentence) {
    assertThat(refusal(text, kind, system)).isEqualTo(sentence);
  }

  @ParameterizedTest(name = "“{0}”")
  @ValueSource(
      strings = {
        "",
        " ",
        "NaN",
        "Infinity",
        "-Infinity",
        "∞",
        "e5",
        "1e",
        "--1",
        "+-1",
        "1/",
        "/2",
        "%",
        ".",
        ",",
        "-",
        "5 ft 6",
        "0x10",
        "0x1p3",
        "１２",
        "1e99999",
        "=1+1",
        "#N/A",
        "null",
        "1d"
      })
  void neverReadsANumberOutOfWhatIsNone(String text) {
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(refusal(text, QuantityKind.AREA, system)).isNotBlank();
    }
  }

  @Test
  void aNumberThatOverflowsAnyWayItIsWrittenIsRefused() {
    String huge = "9".repeat(400);
    for (String text :
        new String[] {
          huge, huge + "/3", "1 " + huge + "/7", huge + " ft 1 in", "1e308", huge + " %"
        }) {
      assertThat(refusal(text, QuantityKind.LENGTH, UnitSystem.US)).isNotBlank();
    }
  }

  @Test
  void veryLongTextIsRefusedAndDoesNoHarm() {
    for (String part : new String[] {"1", "1,000", "1 ", "1/2 ", "x", "ft ", ",000", "'000"}) {
      String text = "1" + part.repeat(20_000);
      assertThat(refusal(text, QuantityKind.LENGTH, UnitSystem.SI)).isNotBlank();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1234567.5|1|1,234,567.5",
        "-1234567.5|0|-1,234,568",
        "999.5|0|1,000",
        "-0.04|1|0.0",
        "0.125|2|0.13",
      })
  void groupsThousandsAndRoundsHalvesUp(double value, int decimals, String shown) {
    assertThat(QuantityText.grouped(value, decimals)).isEqualTo(shown);
  }
}
