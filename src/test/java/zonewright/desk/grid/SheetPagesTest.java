package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

class SheetPagesTest {
  private final Design design = Demo.libraryGarden(UnitSystem.US);

  private static PageFormat across() {
    PageFormat format = new PageFormat();
    format.setOrientation(PageFormat.LANDSCAPE);
    return format;
  }

  private SheetPages pages(String table) {
    PrintedGrid paper =
        design.book().schema().table(table).single()
            ? new RecordGrid(design.book(), table).paper()
            : new SheetGrid(design.book(), table).paper();
    return new SheetPages(paper, "Library garden", across());
  }

  /** Returns all words of a page. */
  private static String words(SheetPages pages, int page) throws Exception {
    SVGGraphics2D pen =
        new SVGGraphics2D(
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null));
    assertThat(pages.print(pen, across(), page)).isEqualTo(Printable.PAGE_EXISTS);
    StringWriter text = new StringWriter();
    pen.stream(text);
    return text.toString();
  }

  @Test
  void everyPageNamesTheProjectTheSheetAndItsNumber() throws Exception {
    for (String table : List.of(Sheets.SITE, Sheets.MONTHS, Sheets.ZONES)) {
      SheetPages pages = pages(table);
      int count = pages.getNumberOfPages();
      for (int page = 0; page < count; page++) {
        assertThat(words(pages, page))
            .contains(
                "Library garden",
                design.book().schema().table(table).title(),
                "page " + (page + 1) + " of " + count);
      }
      assertThat(pages.print(null, across(), count)).isEqualTo(Printable.NO_SUCH_PAGE);
    }
  }

  @Test
  void columnsThatDoNotFitGoOnAfterTheNamesOfTheRows() throws Exception {
    SheetPages pages = pages(Sheets.ZONES);
    assertThat(pages.getNumberOfPages()).isGreaterThan(1);
    StringBuilder all = new StringBuilder();
    for (int page = 0; page < pages.getNumberOfPages(); page++) {
      String words = words(pages, page);
      assertThat(words).contains("Reading lawn, north half", "Roof terrace planters");
      all.append(words);
    }
    assertThat(all).contains("Plant type", "Cycles", "Share of");
  }

  @Test
  void fitToTheWidthBringsAllColumnsOnOnePage() throws Exception {
    PrintedGrid paper = new SheetGrid(design.book(), Sheets.MONTHS).paper();
    SheetPages pages = new SheetPages(paper, "Library garden", across(), PageScale.TO_THE_WIDTH);
    assertThat(pages.getNumberOfPages()).isEqualTo(1);
    SheetPages full = new SheetPages(paper, "Library garden", across(), PageScale.FULL);
    assertThat(full.getNumberOfPages()).isGreaterThan(1);
  }

  @Test
  void theLastPageIsAboutAsFullAsTheOthers() throws Exception {
    SheetPages pages = pages(Sheets.ZONES);
    int count = pages.getNumberOfPages();
    List<Integer> words =
        IntStream.range(0, count).map(page -> lengthOf(pages, page)).boxed().toList();
    assertThat(words.get(count - 1) * 2).isGreaterThan(words.get(0));
  }

  private static int lengthOf(SheetPages pages, int page) {
    try {
      return words(pages, page).length();
    } catch (Exception problem) {
      throw new AssertionError(problem);
    }
  }

  @Test
  void chosenColumnsAloneGoOnPaper() throws Exception {
    PrintedGrid paper = new SheetGrid(design.book(), Sheets.ZONES).paper().only(Set.of(5));
    SheetPages pages = new SheetPages(paper, "Library garden", across());
    assertThat(pages.getNumberOfPages()).isEqualTo(1);
    assertThat(words(pages, 0)).contains("Plant type", "Zone").doesNotContain("Cycles");
  }

  @Test
  void thePagesAreSavedAsAFileWithTheSameWords() throws Exception {
    SheetPages pages = pages(Sheets.MONTHS);
    try (PDDocument document = Loader.loadPDF(pages.file())) {
      assertThat(document.getNumberOfPages()).isEqualTo(pages.getNumberOfPages());
      assertThat(new PDFTextStripper().getText(document))
          .contains("Library garden", "Reference", "January");
    }
  }

  @Test
  void rowsThatDoNotFitGoOnBeneathTheSameHeadings() throws Exception {
    List<Integer> zones = IntStream.range(0, 12).boxed().toList();
    for (int i = 0; i < 12; i++) {
      design.book().perform(design.edits().duplicated(Sheets.ZONES, zones));
    }
    SheetPages pages = pages(Sheets.ZONES);
    StringBuilder all = new StringBuilder();
    for (int page = 0; page < pages.getNumberOfPages(); page++) {
      String words = words(pages, page);
      assertThat(words).contains(">Zone<").contains(">Where<");
      all.append(words);
    }
    for (int copy = 2; copy <= 12; copy++) {
      assertThat(all).contains(">7 copy " + copy + "<");
    }
  }
}
