package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.design.Sample;
import zonewright.formula.SpreadsheetText;
import zonewright.units.UnitSystem;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheets;

/**
 * Formulas stay short enough to be read in the formula bar. Published standards for spreadsheet
 * models ask for short formulas and one calculation a cell; the figures are our own (common
 * practice, no source).
 */
class FormulaLimitsTest {
  private static final int MEDIAN = 100;
  private static final int NINETY_NINE_OF_A_HUNDRED = 300;
  private static final int LONGEST = 600;
  private static final int DEEPEST = 4;

  /** How a file writes a cell of the same row, which the formula bar shows as [@Heading]. */
  private static final Pattern SAME_ROW = Pattern.compile("\\w+\\[\\[#This Row\\],(\\[.*?\\])\\]");

  private static final Pattern SENTENCE = Pattern.compile("\"[^\"]*[a-z]\\.( [^\"]*)?\"");

  @TempDir Path folder;

  static List<Arguments> samples() {
    List<Arguments> all = new ArrayList<>();
    for (String sample : List.of("library-garden", "campus-retrofit")) {
      for (UnitSystem system : UnitSystem.values()) {
        all.add(Arguments.of(sample, system));
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("samples")
  void formulasCanBeRead(String sample, UnitSystem system) throws Exception {
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(
        Sample.named(sample).orElseThrow().design(system),
        file,
        PackOrder.of(PackSheets.all()),
        Optional.empty());
    List<Integer> lengths = new ArrayList<>();
    List<String> tooLong = new ArrayList<>();
    List<String> tooDeep = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (Cell cell : formulas(file)) {
      String shown = SAME_ROW.matcher(cell.getCellFormula()).replaceAll("[@$1]");
      String place = cell.getSheet().getSheetName() + "!" + cell.getAddress() + " " + shown;
      lengths.add(shown.length());
      if (shown.length() > LONGEST) {
        tooLong.add(place);
      }
      if (SpreadsheetText.depth(shown) > DEEPEST) {
        tooDeep.add(place);
      }
      if (SENTENCE.matcher(shown).find()) {
        sentences.add(place);
      }
    }
    lengths.sort(null);
    assertThat(lengths).hasSizeGreaterThan(1000);
    assertAll(
        () -> assertThat(tooLong).isEmpty(),
        () -> assertThat(tooDeep).isEmpty(),
        () -> assertThat(sentences).isEmpty(),
        () -> assertThat(lengths.get(lengths.size() / 2)).isLessThanOrEqualTo(MEDIAN),
        () ->
            assertThat(lengths.get(lengths.size() * 99 / 100))
                .isLessThanOrEqualTo(NINETY_NINE_OF_A_HUNDRED));
  }

  private static List<Cell> formulas(Path file) throws IOException {
    List<Cell> all = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              all.add(cell);
            }
          }
        }
      }
    }
    return all;
  }
}
