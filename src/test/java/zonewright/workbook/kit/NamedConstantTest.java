package zonewright.workbook.kit;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Design;
import zonewright.formula.NamedConstant;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * What the numbers with a name are, worked out from the definitions of the units: the inch is 25.4
 * mm, the gallon 231 cubic inches (NIST SP 811); 2.30665872585026 ft of water of 1000 kg/m³ under
 * standard gravity press with 1 psi.
 */
class NamedConstantTest {
  private static final double INCH = 0.0254;
  private static final double FOOT = 12 * INCH;
  private static final double GALLON = 231 * INCH * INCH * INCH;
  private static final double GRAVITY = 9.80665;
  private static final double PSI = 0.45359237 * GRAVITY / (INCH * INCH);
  private static final double FEET_A_PSI = PSI / (1000 * GRAVITY) / FOOT;

  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.])\\d+\\.?\\d*(?:E-?\\d+)?(?![\\w.])");
  private static final Pattern WORDS_AND_HEADINGS = Pattern.compile("\"[^\"]*\"|\\[[^\\[\\]]*\\]");

  private static final Map<NamedConstant, Double> WORKED_OUT =
      new EnumMap<>(
          Map.ofEntries(
              entry(NamedConstant.SQUARE_METRES_A_SQUARE_FOOT, FOOT * FOOT),
              entry(NamedConstant.MILLILITRES_A_CUBIC_INCH, INCH * INCH * INCH * 1e6),
              entry(NamedConstant.LITRES_A_GALLON, GALLON * 1000),
              entry(NamedConstant.CUBIC_METRES_A_GALLON, GALLON),
              entry(NamedConstant.LITRES_A_CUBIC_FOOT, FOOT * FOOT * FOOT * 1000),
              entry(NamedConstant.GALLONS_A_CUBIC_FOOT, FOOT * FOOT * FOOT / GALLON),
              entry(NamedConstant.GALLONS_AN_INCH_DEEP, FOOT * FOOT * INCH / GALLON),
              entry(NamedConstant.SQUARE_FEET_AN_INCH_DEEP, GALLON / (FOOT * FOOT * INCH)),
              entry(NamedConstant.GPM_AT_1_FT_S, FOOT * INCH * INCH * 60 / GALLON),
              entry(NamedConstant.FEET_OF_WATER_A_PSI, FEET_A_PSI),
              entry(NamedConstant.PSI_A_FOOT_OF_WATER, 1 / FEET_A_PSI),
              entry(NamedConstant.HAZEN_WILLIAMS_IN_PSI, 0.2083 / FEET_A_PSI),
              entry(NamedConstant.HAZEN_WILLIAMS_IN_KPA, 0.2083 * 1000 * GRAVITY / 1000),
              entry(NamedConstant.OUTLETS_FIRST_TERM, 1 / 2.852),
              entry(NamedConstant.OUTLETS_THIRD_TERM, Math.sqrt(0.852) / 6),
              entry(NamedConstant.PEAK_SHARE_IN_GALLONS, 0.7 * FOOT * FOOT * INCH / GALLON),
              entry(NamedConstant.HARGREAVES_IN_INCHES, 0.0023 / 25.4),
              entry(NamedConstant.LEAST_WIND, 0.5 * 3600 / (5280 * FOOT)),
              entry(NamedConstant.USUAL_WIND, 2 * 3600 / (5280 * FOOT)),
              entry(NamedConstant.WATERINGS_ON_ODD_DAYS, 7 * 186 / 365.0),
              entry(NamedConstant.WATERINGS_ON_EVEN_DAYS, 7 * 179 / 365.0),
              entry(NamedConstant.PUMPING_ONE_KWH, 3.6e6 / (GALLON * PSI)),
              entry(NamedConstant.GPM_FROM_SQUARES, GALLON * GALLON * 1e6),
              entry(NamedConstant.OHM_A_KM_OF_18_AWG, 7.77 / FOOT),
              entry(NamedConstant.OHM_A_KM_OF_16_AWG, 4.89 / FOOT),
              entry(NamedConstant.OHM_A_KM_OF_14_AWG, 3.07 / FOOT),
              entry(NamedConstant.OHM_A_KM_OF_12_AWG, 1.93 / FOOT),
              entry(NamedConstant.OHM_A_KM_OF_10_AWG, 1.21 / FOOT),
              entry(NamedConstant.ROUND_OPENING, Math.PI / 400)));

  @ParameterizedTest
  @EnumSource
  void eachIsWhatItsDefinitionGives(NamedConstant constant) {
    assertThat(constant.value()).isCloseTo(WORKED_OUT.get(constant), withinPercentage(1e-7));
  }

  @Test
  void everyNameIsUsedAndEveryLongNumberHasOne() {
    Set<String> names = new HashSet<>();
    Set<String> unnamed = new HashSet<>();
    for (UnitSystem system : UnitSystem.values()) {
      Schema schema = Design.blank(system).book().schema();
      WorkbookLayout layout = WorkbookLayout.of(schema, system);
      for (TableDefinition table : schema.tables()) {
        for (SheetColumn column : layout.columns(table)) {
          String text =
              WORDS_AND_HEADINGS
                  .matcher(SpreadsheetText.shown(column.formula().orElse("")))
                  .replaceAll("");
          for (NamedConstant constant : NamedConstant.values()) {
            if (text.contains(constant.title())) {
              names.add(constant.title());
            }
          }
          Matcher numbers = NUMBER.matcher(text);
          while (numbers.find()) {
            String digits = numbers.group().replaceAll("E.*|\\.", "").replaceAll("^0+|0+$", "");
            if (digits.length() > 6) {
              unnamed.add(column.heading() + ": " + numbers.group());
            }
          }
        }
      }
    }
    assertThat(unnamed).isEmpty();
    assertThat(names).hasSize(NamedConstant.values().length);
  }
}
