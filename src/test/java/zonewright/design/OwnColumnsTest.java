package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Columns that the rows of a sheet define, and what is told of them. */
class OwnColumnsTest {
  private Design design;
  private Book book;

  @BeforeEach
  void open() {
    design = Demo.libraryGarden(UnitSystem.US);
    book = design.book();
  }

  private Column own(int row) {
    return OwnColumns.of(book).column(row).orElseThrow();
  }

  private List<String> told() {
    return design.findings().stream()
        .filter(finding -> finding.column().table().equals(Sheets.OWN_COLUMNS))
        .map(Finding::sentence)
        .toList();
  }

  /** 96.25 × gpm ÷ ft² is in/h: Ohio State University Extension, Bulletin 912. */
  @Test
  void itIsCalculatedInBothSystemsWithItsWorking() {
    OwnColumnRows.add(design, "My rate", "Zones", "rate", "Zone flow / Area");
    double flow = book.number(Emitters.ZONE_FLOW.reference(), 1);
    double area = book.number(Emitters.AREA.reference(), 1);
    assertThat(book.number(own(0).reference(), 1)).isEqualTo(96.25 * flow / area);
    assertThat(book.working(own(0).reference(), 1).symbols()).isEqualTo("Zone flow ÷ Area");
    double inches = book.number(own(0).reference(), 1);
    book.perform(design.edits().switched(UnitSystem.SI));
    assertThat(book.number(own(0).reference(), 1)).isCloseTo(25.4 * inches, within());
    book.perform(design.edits().typed(Emitters.AREA.reference(), 1, "100 m2"));
    assertThat(book.number(own(0).reference(), 1)).isNotCloseTo(25.4 * inches, within());
  }

  private static org.assertj.core.data.Percentage within() {
    return org.assertj.core.data.Percentage.withPercentage(1e-9);
  }

  @Test
  void aLimitThatIsBrokenIsAFindingAtItsRowAndColumn() {
    OwnColumnRows.add(
        design, "My flow", "Zones", "flow", "Zone flow", "", "Zones.Area", "Split the zone");
    assertThat(told()).singleElement().asString().contains("an area", "a flow");
    OwnColumnDraft wrong = OwnColumnDraft.of(book, 0);
    OwnColumnDraft right =
        new OwnColumnDraft(
            wrong.name(),
            wrong.sheet(),
            wrong.kind(),
            wrong.equation(),
            "1",
            "1 gpm",
            "20 gpm",
            wrong.note());
    book.perform(right.changed(book, 0));
    assertThat(told()).isEmpty();
    List<Finding> found =
        design.findings().stream()
            .filter(finding -> finding.column().equals(own(0).reference()))
            .toList();
    long above =
        java.util.stream.IntStream.range(0, book.rows(Sheets.ZONES))
            .filter(row -> book.number(Emitters.ZONE_FLOW.reference(), row) > 20)
            .count();
    assertThat(found).hasSize((int) above).isNotEmpty();
    assertThat(found.get(0).sentence())
        .startsWith("My flow is ")
        .endsWith("more than your limit of 20 gpm");
    assertThat(found.get(0).cure()).isEqualTo("Split the zone");
    book.undo();
    assertThat(told()).hasSize(1);
  }

  @Test
  void circlesAreNamedAndTheirColumnsStayWithTheReason() {
    OwnColumnRows.add(design, "First", "Zones", "area", "Area + Second");
    OwnColumnRows.add(design, "Second", "Zones", "area", "Third * 2");
    OwnColumnRows.add(design, "Third", "Zones", "area", "First - 1 ft2");
    OwnColumnRows.add(design, "Rest", "Zones", "area", "Area - First");
    assertThat(told())
        .contains(
            "the equations go in a circle: First → Second → Third → First",
            "the equations go in a circle: Third → First → Second → Third");
    assertThat(told()).hasSize(3);
    Outcome first = book.outcome(own(0).reference(), 0);
    assertThat(first).isInstanceOf(Outcome.Refused.class);
    assertThat(first.sentence()).contains("circle");
    assertThat(book.outcome(own(3).reference(), 0)).isInstanceOf(Outcome.Refused.class);
    book.perform(design.edits().typed(OwnColumnSheet.EQUATION.reference(), 2, "Area"));
    assertThat(told()).isEmpty();
    double area = book.number(Emitters.AREA.reference(), 0);
    assertThat(book.number(own(3).reference(), 0)).isEqualTo(area - 3 * area);
  }

  @Test
  void whatIsIncompleteOrTakenIsToldAndNothingIsLost() {
    OwnColumnRows.add(design, "Alone", "Zones", "area");
    OwnColumnRows.add(design, "area", "Zones", "area", "Area");
    OwnColumnRows.add(design, "Twice", "Zones", "area", "Area");
    OwnColumnRows.add(design, "twice", "Zones", "area", "Area");
    OwnColumnRows.add(design, "Twice", "Months", "depth", "Reference ET");
    OwnColumnRows.add(design, "No [brackets]", "Zones", "area", "Area");
    OwnColumnRows.add(design, "No kind", "Zones", "", "Area");
    assertThat(told())
        .contains(
            "“Alone” has no equation yet, such as Zone flow / Area",
            "Zones has a column “Area” already; give yours another name",
            "“twice” is defined above already; give it another name",
            "Kind is blank")
        .anyMatch(sentence -> sentence.contains("no other signs"));
    assertThat(book.schema().table(Sheets.MONTHS).columns())
        .extracting(Column::name)
        .contains("Twice");
    assertThat(book.rows(Sheets.OWN_COLUMNS)).isEqualTo(7);
  }

  @Test
  void anotherNameIsCarriedOverIntoTheEquations() {
    OwnColumnRows.add(design, "Big", "Zones", "area", "Area * 2");
    OwnColumnRows.add(design, "More", "Zones", "area", "Big + [big] + Zones.Big", "", "Big * 9");
    OwnColumnRows.add(design, "All", "Site", "area", "SUM(Zones.[Big])");
    OwnColumnDraft draft = OwnColumnDraft.of(book, 0);
    OwnColumnDraft renamed =
        new OwnColumnDraft(
            "Twice × area", draft.sheet(), draft.kind(), draft.equation(), "", "", "", "");
    book.perform(renamed.changed(book, 0));
    assertThat(OwnColumnDraft.of(book, 1).equation())
        .isEqualTo("[Twice × area] + [Twice × area] + Zones.[Twice × area]");
    assertThat(OwnColumnDraft.of(book, 1).most()).isEqualTo("[Twice × area] * 9");
    assertThat(OwnColumnDraft.of(book, 2).equation()).isEqualTo("SUM(Zones.[Twice × area])");
    assertThat(told()).isEmpty();
    book.undo();
    assertThat(OwnColumnDraft.of(book, 2).equation()).isEqualTo("SUM(Zones.[Big])");
  }

  @Test
  void aDraftSaysWhatItWouldGiveAndChangesNothing() {
    OwnColumnDraft draft = new OwnColumnDraft("Half", "Zones", "area", "Area / 2", "", "", "", "");
    OwnColumnDraft.Judged judged = draft.judged(book, Optional.empty(), 2);
    assertThat(judged).isInstanceOf(OwnColumnDraft.Fine.class);
    assertThat(((OwnColumnDraft.Fine) judged).shown()).startsWith("zone 3: ").endsWith(" ft²");
    assertThat(book.rows(Sheets.OWN_COLUMNS)).isZero();
    assertThat(book.schema()).isSameAs(IrrigationSheets.schema());
  }

  @Test
  void everySheetTakesOne() {
    for (String sheet : OwnColumnDraft.sheets()) {
      OwnColumnRows.add(design, "Own of " + sheet, sheet, "plain number", "1 + 1");
    }
    assertThat(told()).isEmpty();
    for (TableDefinition table : book.schema().tables()) {
      List<Column> columns = table.columns();
      if (OwnColumnDraft.sheets().contains(table.title())) {
        Column last = columns.get(columns.size() - 1);
        assertThat(last.name()).isEqualTo("Own of " + table.title());
        for (int row = 0; row < book.rows(table.id()); row++) {
          assertThat(book.number(last.reference(), row)).isEqualTo(2);
        }
      }
    }
  }

  @Test
  void aClientGetsNoneOfThem() {
    OwnColumnRows.addSome(design);
    Book theirs = ForClient.of(design).book();
    assertThat(theirs.schema()).isSameAs(IrrigationSheets.schema());
    assertThat(theirs.rows(Sheets.OWN_COLUMNS)).isZero();
  }
}
