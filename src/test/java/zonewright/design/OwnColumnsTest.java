package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.budget.SiteBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Remark;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Tint;
import zonewright.soil.Soils;
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
  void aCircleOverSeveralSheetsIsNamed() {
    OwnColumnRows.add(design, "Part", "Zones", "share", "Zone flow / All flow");
    OwnColumnRows.add(design, "All flow", "Site", "flow", "SUM(Programs.Flow of it)");
    OwnColumnRows.add(
        design, "Flow of it", "Programs", "flow", "SUMIF(Zones.Program; Program; Zones.Back)");
    OwnColumnRows.add(design, "Back", "Zones", "flow", "Part * 1 gpm");
    assertThat(told())
        .hasSize(4)
        .contains("the equations go in a circle: Back → Part → All flow → Flow of it → Back");
    OwnColumnRows.add(design, "Itself", "Zones", "area", "Itself + Area");
    assertThat(told()).contains("the equations go in a circle: Itself → Itself");
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
  void aColumnThatMovesToAnotherSheetLeavesItsNotesAndIsMissedWhereItStood() {
    OwnColumnRows.add(design, "Limit", "Zones", "area", "900 ft2");
    OwnColumnRows.add(design, "Rest", "Zones", "area", "Area - Zones.Limit");
    book.perform(new Edits(book).noted(own(0).reference(), 1, "a guess"));
    book.perform(new Edits(book).typed(OwnColumnSheet.SHEET, 0, "Site"));
    assertThat(OwnColumnDraft.of(book, 1).equation()).isEqualTo("Area - Zones.Limit");
    assertThat(told()).singleElement().asString().startsWith("There is no column “Zones.Limit”");
    assertThat(book.contents().row(Sheets.ZONES, 1).remarks()).isEmpty();
    book.undo();
    assertThat(told()).isEmpty();
    assertThat(book.remark(own(0).reference(), 1).note()).isEqualTo("a guess");
  }

  private static void rename(Book book, int row, String name) {
    book.perform(new Edits(book).typed(OwnColumnSheet.NAME.reference(), row, name));
  }

  @Test
  void equationsFollowANameThatIsTypedOnTheSheetAlsoWhereTwoAreExchanged() {
    OwnColumnRows.add(design, "Big area", "Zones", "area", "Area * 2");
    OwnColumnRows.add(design, "Other", "Zones", "area", "Area * 3");
    OwnColumnRows.add(
        design,
        "More",
        "Zones",
        "area",
        "big   area + zones.[ Other ] + SUMIF(Area; \">=Big area\"; Area)");
    rename(book, 0, "Large");
    assertThat(OwnColumnDraft.of(book, 2).equation())
        .isEqualTo("[Large] + zones.[ Other ] + SUMIF(Area; \">=[Large]\"; Area)");
    Edits edits = new Edits(book);
    book.perform(
        new Edit.Several(
            "exchange",
            List.of(
                edits.typed(OwnColumnSheet.NAME.reference(), 0, "Other"),
                edits.typed(OwnColumnSheet.NAME.reference(), 1, "Large"))));
    assertThat(OwnColumnDraft.of(book, 2).equation())
        .isEqualTo("[Other] + zones.[ Large ] + SUMIF(Area; \">=[Other]\"; Area)");
    assertThat(told()).isEmpty();
    book.undo();
    book.undo();
    assertThat(OwnColumnDraft.of(book, 2).equation()).startsWith("big   area");
  }

  @Test
  void notesAndColoursGoWithAColumnAndItsRows() {
    OwnColumnRows.add(design, "First", "Zones", "area", "Area * 2");
    OwnColumnRows.add(design, "Second", "Zones", "area", "Area * 3");
    Edits edits = new Edits(book);
    Remark wanted = new Remark("seems much", Tint.BLUE);
    book.perform(edits.noted(own(1).reference(), 2, wanted.note()));
    book.perform(edits.tinted(List.of(own(1).reference()), List.of(2), wanted.tint()));
    rename(book, 1, "Renamed");
    assertThat(book.remark(own(1).reference(), 2)).isEqualTo(wanted);
    book.perform(edits.removed(Sheets.OWN_COLUMNS, 0, 1));
    assertThat(book.remark(own(0).reference(), 2)).isEqualTo(wanted);
    book.perform(edits.inserted(Sheets.ZONES, 0, 1));
    assertThat(book.remark(own(0).reference(), 3)).isEqualTo(wanted);
    book.perform(edits.typed(OwnColumnSheet.KIND.reference(), 0, ""));
    book.perform(edits.typed(OwnColumnSheet.KIND.reference(), 0, "area"));
    assertThat(book.remark(own(0).reference(), 3)).as("its kind was changed").isEqualTo(wanted);
    book.perform(OwnColumnDraft.removed(book, 0));
    OwnColumnRows.add(design, "Renamed", "Zones", "area", "Area");
    assertThat(book.remark(own(0).reference(), 3)).as("another column").isEqualTo(Remark.NONE);
    book.undo();
    book.undo();
    assertThat(book.remark(own(0).reference(), 3)).isEqualTo(wanted);
    while (book.journal().toUndo().isPresent()) {
      book.undo();
    }
    assertThat(book.snapshot().sameEntries(Demo.libraryGarden(UnitSystem.US).book().snapshot()))
        .isTrue();
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

  @Test
  void namesOfRowsCanBeComparedAndAreToldWhereNoRowHasThem() {
    OwnColumnRows.add(design, "In it", "Zones", "plain number", "IF(Program = \"B\"; 1; 0)");
    OwnColumnRows.add(design, "July", "Site", "plain number", "IF(Month shown = \"july\"; 1; 0)");
    assertThat(told()).isEmpty();
    Edits edits = new Edits(book);
    book.perform(edits.typed(SiteBudget.ZONE_PROGRAM.reference(), 0, "B"));
    book.perform(edits.typed(SiteBudget.ZONE_PROGRAM.reference(), 1, "A"));
    assertThat(List.of(in(0), in(1))).containsExactly(1.0, 0.0);
    assertThat(book.working(own(0).reference(), 0).symbols()).contains("Program is B");
    book.perform(edits.reordered(Sheets.PROGRAMS, "other way round", List.of(1, 0)));
    assertThat(List.of(in(0), in(1))).as("rows moved").containsExactly(1.0, 0.0);
    Reference programs = book.schema().table(Sheets.PROGRAMS).columns().get(0).reference();
    book.perform(edits.typed(programs, 0, "Lawns"));
    assertThat(told())
        .singleElement()
        .asString()
        .startsWith("“Program” is never “B”; it may be \"");
    assertThat(in(1)).isZero();
    assertThat(book.outcome(own(0).reference(), 0))
        .as("its program is gone, as for every column that asks")
        .isInstanceOf(Outcome.Refused.class);
    book.perform(edits.typed(SiteBudget.ZONE_PROGRAM.reference(), 0, "Lawns"));
    assertThat(in(0)).isZero();
    book.perform(
        edits.typed(OwnColumnSheet.EQUATION.reference(), 0, "IF(Program = \"lawns\"; 1; 0)"));
    assertThat(told()).isEmpty();
    assertThat(List.of(in(0), in(1))).containsExactly(1.0, 0.0);
  }

  private double in(int zone) {
    return book.number(own(0).reference(), zone);
  }

  @Test
  void rowsOfOnesOwnOfATableOfTheTradeCanBeComparedToo() {
    book.perform(
        new Edits(book)
            .appended(
                Sheets.OWN_SOILS,
                List.of(List.of(Entry.words("Fill from the site"), Entry.words("loam")))));
    book.perform(new Edits(book).typed(Soils.SOIL_TYPE.reference(), 2, "fill from the site"));
    OwnColumnRows.add(
        design, "On it", "Zones", "plain number", "IF(Soil = \"Fill from the site\"; 1; 0)");
    OwnColumnRows.add(design, "Twice", "Zones", "plain number", "2 * On it");
    assertThat(told()).isEmpty();
    assertThat(List.of(in(1), in(2))).containsExactly(0.0, 1.0);
    book.perform(new Edits(book).typed(OwnColumnSheet.NAME.reference(), 0, "There"));
    assertThat(OwnColumnDraft.of(book, 1).equation()).isEqualTo("2 * [There]");
    Reference name = book.schema().table(Sheets.OWN_SOILS).columns().get(0).reference();
    book.perform(new Edits(book).typed(name, 0, "Imported fill"));
    assertThat(told())
        .singleElement()
        .asString()
        .startsWith("“Soil” is never “Fill from the site”; it may be ");
    assertThat(book.outcome(own(0).reference(), 1)).isInstanceOf(Outcome.Refused.class);
  }

  @Test
  void aDraftSaysAtOnceThatNoRowHasAName() {
    OwnColumnDraft draft =
        new OwnColumnDraft(
            "In it", "Zones", "plain number", "IF(Program = \"C\"; 1; 0)", "", "", "", "");
    OwnColumnDraft.Not not = (OwnColumnDraft.Not) draft.judged(book, Optional.empty(), 0);
    assertThat(not.sentence()).startsWith("“Program” is never “C”; it may be \"A\"");
    assertThat(not.place().orElseThrow().offers()).contains("\"A\"", "\"B\"");
    assertThat(draft.equation().substring(not.place().get().from(), not.place().get().to()))
        .isEqualTo("\"C\"");
  }
}
