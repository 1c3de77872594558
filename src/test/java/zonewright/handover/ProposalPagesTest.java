package zonewright.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.estimate.BuildUp;
import zonewright.estimate.EstimateRules;
import zonewright.estimate.Extras;
import zonewright.estimate.JobFacts;
import zonewright.estimate.ProposalFacts;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.testing.Cents;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** The proposal as a firm sends it. All of it is invented. */
class ProposalPagesTest {
  private final Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
  private final Book book = design.book();

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  @BeforeEach
  void said() {
    type(ProposalFacts.CLIENT, 0, "Hill College");
    type(ProposalFacts.NUMBER, 0, "26-014");
    type(ProposalFacts.DATE, 0, "2026-03-02");
    type(ProposalFacts.VALID, 0, "30");
    type(ProposalFacts.SCOPE, 0, "Trenching by hand near trees; Walk-through with the owner");
    type(ProposalFacts.EXCLUDED, 0, "Permits; repair of paving");
    type(ProposalFacts.DEPOSIT_SHARE, 0, "30 %");
    type(ProposalFacts.PROGRESS_SHARE, 0, "33.333 %");
    type(ProposalFacts.TERMS, 0, "One year on workmanship; due in 30 days");
    type(ProposalFacts.SIGNED_BY, 0, "A. Designer");
    type(JobFacts.TAX_SHARE, 0, "8.125 %");
    type(JobFacts.TAX_ON, 0, JobFacts.ON_PRICE);
    int extra = book.rows(Sheets.EXTRAS);
    book.perform(design.edits().inserted(Sheets.EXTRAS, extra, 2));
    type(Extras.LABEL, extra, "Second rain sensor");
    type(Extras.KIND, extra, Extras.ALTERNATE);
    type(Extras.AMOUNT, extra, "310");
    type(Extras.LABEL, extra + 1, "Rock");
    type(Extras.KIND, extra + 1, Extras.ALLOWANCE);
    type(Extras.AMOUNT, extra + 1, "500");
  }

  private String text() throws Exception {
    try (PDDocument document = Loader.loadPDF(ProposalPages.of(design))) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static BigDecimal amount(String text, String line) {
    Matcher found =
        Pattern.compile("(?m)^" + line + ".*?([\\d,]+\\.\\d\\d)( [A-Z]+)?\\s*$").matcher(text);
    assertThat(found.find()).as(line + " in " + text).isTrue();
    return new BigDecimal(found.group(1).replace(",", ""));
  }

  @Test
  void itSaysWhatAFirmSays() throws Exception {
    assertThat(text())
        .contains("Hill College", "26-014", "2026-03-02", "Valid for days", "30")
        .contains("Trenching by hand near trees", "Walk-through with the owner")
        .contains("Zone 1:", "Parts of the work: ")
        .contains("Not included", "Permits", "Repair of paving")
        .contains("Second rain sensor: adds", "Rock.")
        .contains("One year on workmanship", "Due in 30 days")
        .contains("For the office: A. Designer", "Accepted: Hill College")
        .contains("Water and money saved", "Water a year before")
        .containsPattern("Page 1 of \\d");
  }

  @Test
  void itAddsUpOnThePageToThePrintedTotal() throws Exception {
    String text = text();
    BigDecimal total = amount(text, "Price (?=\\d)");
    assertThat(total).isEqualTo(Cents.of(book.number(BuildUp.TOTAL.reference(), 0)));
    assertThat(amount(text, "The work as described, before tax").add(amount(text, "Tax")))
        .isEqualTo(total);
    assertThat(
            amount(text, "Due on order, 30 %")
                .add(amount(text, "Due during the work, 33.333 %"))
                .add(amount(text, "Due when the work is done")))
        .isEqualTo(total);
  }

  @Test
  void withoutWordsOfTheOfficeThereIsNoEmptyPart() throws Exception {
    for (Column column : ProposalFacts.columns()) {
      if (column.takesEntries()) {
        type(column, 0, "");
      }
    }
    assertThat(text())
        .contains("Scope of work", "Price", "Accepted")
        .doesNotContain("Not included", "Payments", "Terms");
  }

  @Test
  void paymentsOfMoreThanThePriceAreAFinding() {
    type(ProposalFacts.PROGRESS_SHARE, 0, "80 %");
    List<String> lines = new ArrayList<>();
    design.findings().forEach(finding -> lines.add(finding.line()));
    assertThat(lines).anyMatch(line -> line.contains("30 % on order and 80 % during the work"));
    assertThat(EstimateRules.all()).contains(EstimateRules.PAID_TOO_MUCH);
  }

  @Test
  void theSameDesignMakesTheSameFile() {
    assertThat(ProposalPages.of(design)).isEqualTo(ProposalPages.of(design));
  }
}
