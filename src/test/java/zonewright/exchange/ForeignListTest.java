package zonewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.DecimalSign;
import zonewright.units.UnitSystem;

class ForeignListTest {
  private static ForeignList list(String text) throws ListProblem {
    return ForeignList.of(text.getBytes(StandardCharsets.UTF_8), "list.csv");
  }

  private static Design taken(String text) throws ListProblem {
    Design design = Design.blank(UnitSystem.US);
    ListMatch match = new ListMatch(design.book(), Sheets.ZONES, list(text));
    design.book().start(match.taken().edit());
    return design;
  }

  private static Entry area(Design design, int row) {
    return design.book().entry(Emitters.AREA.reference(), row);
  }

  @Test
  void commasSemicolonsTabsAndALineThatSaysWhich() throws ListProblem {
    for (String delimiter : List.of(",", ";", "\t")) {
      ForeignList read = list("Zone|Where|Area\n1|Lawn|900\n".replace("|", delimiter));
      assertThat(read.headings()).containsExactly("Zone", "Where", "Area");
      assertThat(read.rows()).containsExactly(List.of("1", "Lawn", "900"));
    }
    assertThat(list("sep=;\r\nZone;Area\r\n1;900\r\n").rows()).containsExactly(List.of("1", "900"));
  }

  @Test
  void aByteOrderMarkAndOlderEncodingsAreRead() throws ListProblem {
    String text = "Zone,Where\n1,Pelouse d’été\n";
    byte[] marked = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
    assertThat(ForeignList.of(marked, "a").headings()).containsExactly("Zone", "Where");
    byte[] wide = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
    assertThat(ForeignList.of(wide, "a").rows().get(0)).contains("Pelouse d’été");
    ForeignList older = ForeignList.of(text.getBytes(Charset.forName("windows-1252")), "a");
    assertThat(older.rows().get(0)).contains("Pelouse d’été");
    assertThat(older.notes())
        .anyMatch(note -> note.contains("older encoding"))
        .anyMatch(note -> note.contains("“d’été” in line 2"));
  }

  @Test
  void quotedCellsKeepDelimitersAndLineEnds() throws ListProblem {
    assertThat(list("Zone,Note\n1,\"a, \"\"b\"\"\nc\"\n").rows())
        .containsExactly(List.of("1", "a, \"b\"\nc"));
  }

  @Test
  void aDecimalCommaIsRecognisedByTheWholeList() throws ListProblem {
    Design design = taken("Zone;Area (m²)\n1;1.250,5\n2;92,90304\n3;1.500\n");
    assertThat(((Entry.Figure) area(design, 1)).value()).isEqualTo(1000);
    assertThat(((Entry.Figure) area(design, 0)).value())
        .isCloseTo(1250.5 / 0.09290304, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(((Entry.Figure) area(design, 2)).value())
        .isCloseTo(1500 / 0.09290304, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void aNumberThatCanBeReadTwoWaysIsToldWithItsLineAndNotTaken() throws ListProblem {
    for (UnitSystem system : UnitSystem.values()) {
      ListMatch match =
          new ListMatch(
              Design.blank(system).book(),
              Sheets.ZONES,
              list("Zone;Area\n\n1;900\n2;1,250\n3;1.250\n"));
      ListMatch.Taken taken = match.taken();
      assertThat(taken.notes())
          .anyMatch(
              note ->
                  note.startsWith(
                      "Line 4, Area: “1,250” can be read two ways; write 1250 or 1.250"))
          .anyMatch(note -> note.startsWith("Line 5, Area: “1.250” can be read two ways"));
      assertThat(match.entry(1, 1)).isInstanceOf(Entry.Unreadable.class);
      match.decimals(Optional.of(DecimalSign.COMMA));
      assertThat(match.entry(1, 1)).isEqualTo(new Entry.Figure(1.25));
      assertThat(match.entry(1, 2)).isEqualTo(new Entry.Figure(1250));
      match.decimals(Optional.of(DecimalSign.POINT));
      assertThat(match.entry(1, 1)).isEqualTo(new Entry.Figure(1250));
      assertThat(match.entry(1, 2)).isEqualTo(new Entry.Figure(1.25));
    }
  }

  @Test
  void anotherColumnOfNumbersTellsTheDecimalSignButNoWordsDo() throws ListProblem {
    assertThat(area(taken("Zone;Area;Zone flow\n1;1,250;12,5\n"), 0))
        .isEqualTo(new Entry.Figure(1.25));
    assertThat(area(taken("Zone;Area;Zone flow\n1;1,250;12.5\n"), 0))
        .isEqualTo(new Entry.Figure(1250));
    assertThat(area(taken("Zone;Area;Note\n1.2;1,250;3.5 inches\n"), 0))
        .isInstanceOf(Entry.Unreadable.class);
  }

  @Test
  void aColumnThatShowsBothSignsTellsSoAndTakesNothingInDoubt() throws ListProblem {
    Design design = Design.blank(UnitSystem.US);
    ListMatch match =
        new ListMatch(design.book(), Sheets.ZONES, list("Zone;Area\n1;12,5\n2;12.5\n3;1,250\n"));
    assertThat(match.taken().notes())
        .anyMatch(note -> note.startsWith("Area: some numbers have a decimal comma"))
        .anyMatch(note -> note.startsWith("Line 4, Area: “1,250” can be read two ways"));
    assertThat(match.entry(1, 0)).isEqualTo(new Entry.Figure(12.5));
    assertThat(match.entry(1, 1)).isEqualTo(new Entry.Figure(12.5));
  }

  /** Programs write numbers with a point where commas part the cells. */
  @Test
  void whereCommasPartTheCellsAPointStandsBeforeDecimals() throws ListProblem {
    assertThat(area(taken("Zone,Area\n1,1.250\n"), 0)).isEqualTo(new Entry.Figure(1.25));
    assertThat(area(taken("Zone,Area\n1,\"1,250\"\n"), 0)).isInstanceOf(Entry.Unreadable.class);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "Zone,Where\n1,Lawn\n2,\"North bed\n3,South\n",
        "Zone,Where\n1,Lawn\n2,\"North bed\n3,\"South\"\n",
        "Zone,Where\n1,Lawn\n2,\"3/4\" valve\n"
      })
  void anUnclosedQuotationMarkIsToldWithItsLine(String text) {
    assertThatThrownBy(() -> list(text))
        .isInstanceOf(ListProblem.class)
        .hasMessageContaining("quotation mark in line 3 that is not closed");
  }

  @Test
  void lettersInNoKnownEncodingAreToldWithTheirLine() {
    byte[] odd = "Zone,Where\n1,Lawn\n2,Gr".getBytes(StandardCharsets.US_ASCII);
    byte[] dos = java.util.Arrays.copyOf(odd, odd.length + 2);
    dos[odd.length] = (byte) 0x81;
    dos[odd.length + 1] = 'n';
    assertThatThrownBy(() -> ForeignList.of(dos, "zones.csv"))
        .isInstanceOf(ListProblem.class)
        .hasMessageContaining("first in line 3")
        .hasMessageContaining("save it as CSV in UTF-8");
    byte[] marked = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'Z', '\n', (byte) 0xC3};
    assertThatThrownBy(() -> ForeignList.of(marked, "zones.csv"))
        .hasMessageContaining("first in line 2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0x1p3", "12d", "12f", "NaN", "0x10", "1_000", "1e999", "Infinity"})
  void whatOnlyAProgrammerTakesForANumberIsNone(String text) throws ListProblem {
    ListMatch match =
        new ListMatch(
            Design.blank(UnitSystem.US).book(), Sheets.ZONES, list("Zone,Area\n1," + text + "\n"));
    assertThat(match.entry(1, 0)).isInstanceOf(Entry.Unreadable.class);
    assertThat(match.taken().notes()).anyMatch(note -> note.startsWith("Line 2, Area: “" + text));
  }

  @Test
  void plainNumbersThatLookLikePartsOfOneAreReadAsPercentAndTold() throws ListProblem {
    Design design = Design.blank(UnitSystem.US);
    ListMatch match =
        new ListMatch(design.book(), Sheets.ZONES, list("Zone,Slope\n1,0.05\n2,0.1\n"));
    assertThat(match.taken().notes())
        .anyMatch(note -> note.startsWith("Slope: plain numbers were read as percent"));
    assertThat(match.entry(1, 0)).isEqualTo(new Entry.Figure(0.0005));
  }

  @Test
  void unitsInHeadingsAndCellsArePercentIncluded() throws ListProblem {
    Design design = taken("zone , AREA (ft²),Zone flow (L/min),Slope (%)\n1,900,45.424941408,4\n");
    assertThat(area(design, 0)).isEqualTo(new Entry.Figure(900));
    assertThat(design.book().number(Emitters.ZONE_FLOW.reference(), 0)).isEqualTo(12);
    assertThat(design.book().number(Soils.SLOPE.reference(), 0)).isEqualTo(0.04);
  }

  @Test
  void whatCannotBeReadIsKeptAndTold() throws ListProblem {
    Design design = Design.blank(UnitSystem.US);
    ListMatch match =
        new ListMatch(design.book(), Sheets.ZONES, list("Zone,Area\n1,about ten\n2,5,extra\n"));
    ListMatch.Taken taken = match.taken();
    design.book().start(taken.edit());
    assertThat(area(design, 0)).isInstanceOf(Entry.Unreadable.class);
    assertThat(taken.notes())
        .anyMatch(note -> note.startsWith("Line 2, Area: "))
        .anyMatch(note -> note.contains("Line 3") && note.contains("extra"));
  }

  @Test
  void wordsThatLookLikeFormulasStayWords() throws ListProblem {
    Design design = taken("Zone,Note\n1,=HYPERLINK(\"x\")\n2,'@home\n");
    assertThat(design.book().entry(Facts.ZONE_NOTE.reference(), 0))
        .isEqualTo(new Entry.Words("=HYPERLINK(\"x\")"));
    assertThat(design.book().entry(Facts.ZONE_NOTE.reference(), 1))
        .isEqualTo(new Entry.Words("@home"));
  }

  @Test
  void columnsThatMatchNothingAreNamedAndSuggestionsMade() throws ListProblem {
    Design design = Design.blank(UnitSystem.US);
    ListMatch match =
        new ListMatch(design.book(), Sheets.ZONES, list("Zone,Soil typ,Phone,Empty\n1,loam,5,\n"));
    assertThat(match.unmatched()).containsExactly(1, 2);
    assertThat(match.suggestions(1)).contains(Soils.SOIL_TYPE);
    match.set(1, Soils.SOIL_TYPE);
    assertThat(match.unmatched()).containsExactly(2);
  }

  @Test
  void badListsAreASentence() {
    assertThatThrownBy(() -> list("\n\n"))
        .isInstanceOf(ListProblem.class)
        .hasMessageContaining("nothing");
    assertThatThrownBy(() -> ForeignList.of(new byte[] {'P', 'K', 3, 4, 0, 0}, "x.csv"))
        .isInstanceOf(ListProblem.class)
        .hasMessageContaining("save it as CSV");
    assertThatThrownBy(() -> list("Zone\n" + "1\n".repeat(ForeignList.MOST_ROWS + 1)))
        .isInstanceOf(ListProblem.class)
        .hasMessageContaining("rows");
  }
}
