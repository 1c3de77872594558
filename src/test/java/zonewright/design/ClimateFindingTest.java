package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.savings.Use;
import zonewright.sheet.Book;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What nobody knows yet is said as soon as something waits for it, and no sooner. */
class ClimateFindingTest {
  private static List<String> said(Design design, String words) {
    return design.findings().stream()
        .map(Finding::line)
        .filter(line -> line.contains(words))
        .toList();
  }

  @Test
  void aZoneWithoutAClimateIsSaidAndAPlaceEndsIt() {
    Design design = Design.blank(UnitSystem.US);
    Book book = design.book();
    assertThat(said(design, "the climate is not known")).isEmpty();

    book.perform(new Edits(book).appended(Sheets.ZONES, List.of(List.of(new Entry.Blank()))));
    assertThat(said(design, "the climate is not known")).isEmpty();

    book.perform(new Edits(book).typed(Emitters.AREA.reference(), 0, "1200"));
    assertThat(said(design, "the climate is not known"))
        .singleElement()
        .asString()
        .startsWith("Site: the climate is not known")
        .contains("choose the climate place");
    assertThat(ClimateFinding.sentence(book)).get().asString().startsWith("The climate is not");

    String place = book.choices(Climate.PLACE).get(0);
    book.perform(new Edits(book).typed(Climate.PLACE.reference(), 0, place));
    assertThat(said(design, "the climate is not known")).isEmpty();
    assertThat(ClimateFinding.sentence(book)).isEmpty();
  }

  @Test
  void elevenMonthsAreNoClimateAndTwelveAre() {
    Design design = Design.blank(UnitSystem.US);
    Book book = design.book();
    book.perform(new Edits(book).inserted(Sheets.ZONES, 0, 1));
    for (int month = 0; month < 12; month++) {
      assertThat(said(design, "the climate is not known")).hasSize(1);
      book.perform(new Edits(book).typed(Climate.REFERENCE_ET.reference(), month, "4 in"));
    }
    assertThat(said(design, "the climate is not known")).isEmpty();
  }

  @Test
  void aMeterNobodyReadIsSaidForEachMonthOnceSavingsAreHeldAgainstIt() {
    Design design = Design.blank(UnitSystem.US);
    Book book = design.book();
    assertThat(said(design, "metered water")).isEmpty();
    book.perform(new Edits(book).typed(Use.BASIS.reference(), 0, Use.BY_METER));
    assertThat(said(design, "has no metered water")).hasSize(12);
    book.perform(new Edits(book).typed(Use.METERED.reference(), 6, "0"));
    assertThat(said(design, "has no metered water")).hasSize(11);
  }
}
