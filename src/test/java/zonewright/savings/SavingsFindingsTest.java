package zonewright.savings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static zonewright.trade.Sheets.CREWS;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.REBATES;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.estimate.Counted;
import zonewright.estimate.Crews;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.plants.Plants;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** What an owner is told about rebates and savings, and what nobody needs to hear. */
class SavingsFindingsTest {
  private final Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
  private final Book book = design.book();

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  private int rebate(String label) {
    int row = book.rows(REBATES);
    book.perform(design.edits().inserted(REBATES, row, 1));
    type(Rebates.LABEL, row, label);
    return row;
  }

  private List<String> lines() {
    return design.findings().stream().map(Finding::line).toList();
  }

  private List<Finding> of(String table) {
    return design.findings().stream()
        .filter(finding -> finding.column().table().equals(table))
        .toList();
  }

  @Test
  void rebatesOverTheCostAreAFinding() {
    assertThat(lines()).noneMatch(line -> line.contains("are more than the job costs"));
    int row = rebate("All of it");
    type(Rebates.COUNT, row, "1");
    type(Rebates.EACH, row, "1000000");
    assertThat(lines()).anyMatch(line -> line.contains("are more than the job costs"));
    type(Rebates.CAP, row, "500");
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(500);
    assertThat(lines()).noneMatch(line -> line.contains("are more than the job costs"));
  }

  /** 60 at 4.00 is 240.00; for 50 it is 200.00; half of 12 × 25.55 = 306.60 is 153.30. */
  @Test
  void aRebateKeepsToItsMostAndToAPartOfTheCost() {
    int item = book.rows(PARTS);
    book.perform(design.edits().inserted(PARTS, item, 1));
    type(Parts.ITEM_NAME, item, "Nozzle, box of five");
    type(Parts.PRICE, item, "25.55");
    type(Parts.COUNT, item, "12");
    int row = rebate("Nozzles");
    type(Rebates.COUNT, row, "60");
    type(Rebates.EACH, row, "4");
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(240);
    type(Rebates.MOST, row, "50");
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(200);
    type(Rebates.OF_COST, row, "50 %");
    type(Rebates.COST_OF, row, "Nozzle, box of five");
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(153.30);
    type(Rebates.CAP, row, "100");
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(100);
    type(Rebates.CAP, row, "");
    type(Rebates.COST_OF, row, "");
    type(Savings.COST, 0, "300.01");
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(150.01);
  }

  @Test
  void labourOfNoCrewAndTaxOnWhatIsExemptAreFindings() {
    type(JobFacts.LABOUR_RATE, 0, "");
    assertThat(lines()).anyMatch(line -> line.contains("an hour has no price"));
    book.perform(design.edits().inserted(CREWS, 0, 1));
    type(Crews.CREW_NAME, 0, "Pipe crew");
    type(Crews.LEADER_RATE, 0, "80");
    assertThat(lines())
        .noneMatch(line -> line.contains("an hour has no price"))
        .anyMatch(line -> line.contains("of labour and no crew"));
    type(JobFacts.LABOUR_RATE, 0, "60");
    assertThat(lines()).noneMatch(line -> line.contains("of labour and no crew"));

    type(Parts.TAXABLE, 0, "no");
    assertThat(lines()).noneMatch(line -> line.contains("is not taxable"));
    type(JobFacts.TAX_ON, 0, JobFacts.ON_PRICE);
    assertThat(lines()).anyMatch(line -> line.contains("is not taxable, but tax is on the whole"));
  }

  @Test
  void aPaybackBeyondTheLifeIsAFinding() {
    assertThat(lines()).noneMatch(line -> line.contains("beyond its life"));
    type(Savings.COST, 0, "900000");
    assertThat(lines()).anyMatch(line -> line.contains("beyond its life of 15"));
  }

  @Test
  void aTypedCountWithoutWordsIsQuiet() {
    int row = rebate("Fixed sum");
    type(Rebates.COUNT, row, "1");
    type(Rebates.EACH, row, "250");
    assertThat(of(REBATES)).isEmpty();
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(250);
    int item = book.rows(PARTS);
    book.perform(design.edits().inserted(PARTS, item, 1));
    type(Parts.ITEM_NAME, item, "Counted by hand");
    type(Parts.PRICE, item, "3");
    type(Parts.COUNT, item, "7");
    assertThat(of(PARTS)).isEmpty();
    assertThat(book.number(Parts.MATERIAL.reference(), item)).isEqualTo(21);
  }

  @Test
  void aRebateThatSaysTooLittleIsAFinding() {
    int row = rebate("Some day");
    assertThat(of(REBATES))
        .extracting(Finding::sentence)
        .singleElement()
        .asString()
        .contains("does not say what is paid");
    type(Rebates.EACH, row, "30");
    assertThat(of(REBATES))
        .extracting(Finding::sentence)
        .singleElement()
        .asString()
        .contains("neither what it is counted by");
    type(Rebates.COUNT, row, "2");
    assertThat(of(REBATES)).isEmpty();
  }

  @Test
  void anItemThatSaysNothingYetIsQuiet() {
    book.perform(design.edits().inserted(PARTS, book.rows(PARTS), 2));
    assertThat(of(PARTS)).isEmpty();
  }

  @Test
  void turfReplacedIsWhatTurfWasFoundLessWhatIsProposed() {
    double found = 0;
    for (int row = 0; row < book.rows(FOUND); row++) {
      if (isTurf(AsFound.of(Plants.PLANT), row)) {
        found += book.number(AsFound.of(Emitters.AREA), row);
      }
    }
    double proposed = 0;
    for (int row = 0; row < book.rows("zones"); row++) {
      if (isTurf(Plants.PLANT.reference(), row)) {
        proposed += book.number(Emitters.AREA.reference(), row);
      }
    }
    assertThat(found).as("the campus gives some turf up").isGreaterThan(proposed);
    int row = rebate("Turf replaced");
    type(Rebates.COUNTED_BY, row, Counted.TURF);
    type(Rebates.WHICH, row, Counted.REMOVED);
    type(Rebates.COUNTED_IN, row, Counted.SQUARE_FOOT);
    type(Rebates.EACH, row, "2");
    assertThat(book.number(Rebates.COUNT.reference(), row)).isEqualTo(found - proposed);
    assertThat(book.number(Rebates.AMOUNT.reference(), row)).isEqualTo(2 * (found - proposed));
    type(Rebates.COUNTED_IN, row, Counted.SQUARE_METRE);
    assertThat(book.number(Rebates.COUNT.reference(), row))
        .isCloseTo((found - proposed) * 0.3048 * 0.3048, offset(1e-6));
    assertThat(of(REBATES)).isEmpty();
  }

  private boolean isTurf(zonewright.formula.Reference plant, int row) {
    return book.shown(plant, book.outcome(plant, row)).contains("turf");
  }
}
