package zonewright.emitters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * Shares of the diameter of throw: squares by course slides on sprinkler spacing (verified,
 * secondary), equilateral triangles from memory; rows of triangles at half of √3.
 */
class SpacingsTest {
  private final Design design = Design.blank(UnitSystem.US);
  private final Book book = design.book();

  private void type(Column column, String text) {
    book.perform(new Edits(book).typed(column.reference(), 0, text));
  }

  @ParameterizedTest
  @CsvSource({
    "square, 0, 33.0, 33.0", // 0.55 × 60
    "square, 1, 30.0, 30.0",
    "square, 2, 27.0, 27.0",
    "triangular, 0, 36.0, 31.176", // 0.60 × 60, × 0.866
    "triangular, 1, 33.0, 28.578",
    "triangular, 2, 30.0, 25.98",
  })
  void spacingFollowsFromThrowPatternAndWind(String pattern, int wind, double head, double rows) {
    book.perform(new Edits(book).inserted(Sheets.ZONES, 0, 1));
    type(Spacings.THROW, "30 ft");
    type(Spacings.PATTERN, pattern);
    type(Spacings.WIND, Spacings.SHARES.keys().get(wind));
    assertThat(book.number(Spacings.LARGEST_SPACING.reference(), 0)).isCloseTo(head, offset(1e-9));
    assertThat(book.number(Spacings.LARGEST_ROWS.reference(), 0)).isCloseTo(rows, offset(1e-9));
  }

  @Test
  void headsTooFarApartAreAFindingOnceTheirThrowIsKnown() {
    book.perform(new Edits(book).inserted(Sheets.ZONES, 0, 1));
    type(Emitters.HEAD_SPACING, "34 ft");
    assertThat(lines()).noneMatch(line -> line.contains("the most for the throw"));
    type(Spacings.THROW, "30 ft");
    type(Spacings.PATTERN, Spacings.SQUARE);
    assertThat(lines())
        .anyMatch(line -> line.contains("has a head spacing of 34 ft, and 33 ft is the most"));
    type(Emitters.HEAD_SPACING, "33 ft");
    assertThat(lines()).noneMatch(line -> line.contains("the most for the throw"));
  }

  private List<String> lines() {
    return design.findings().stream().map(Finding::line).toList();
  }
}
