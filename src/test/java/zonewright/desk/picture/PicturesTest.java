package zonewright.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.sheet.TableDefinition;
import zonewright.timetable.NightPlan;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.SiteRules;

class PicturesTest {
  private static final Dimension SIZE = new Dimension(520, 300);

  static List<Picture> all() {
    return Pictures.all();
  }

  @Test
  void eachHasAnIdentifierOfItsOwn() {
    Set<String> ids = new HashSet<>();
    Pictures.all().forEach(picture -> assertThat(ids.add(picture.id())).isTrue());
  }

  @Test
  void theSheetsOwnPicturesAreOfferedFirstAndThoseOfOtherRowsNotAtAll() {
    for (TableDefinition table : Design.blank(UnitSystem.US).book().schema().tables()) {
      List<Picture> offered = Pictures.beside(table.id());
      assertThat(offered).doesNotHaveDuplicates();
      assertThat(offered)
          .allMatch(
              picture ->
                  !picture.subject().ofRow() || picture.subject().sheet().equals(table.id()));
      List<Boolean> own =
          offered.stream().map(picture -> picture.subject().sheet().equals(table.id())).toList();
      assertThat(own.lastIndexOf(true))
          .isLessThanOrEqualTo(own.contains(false) ? own.indexOf(false) : own.size());
    }
  }

  @ParameterizedTest
  @EnumSource
  void eachSaysInWordsWhatItShowsOrWhyItShowsNothing(UnitSystem system) {
    for (Picture picture : Pictures.all()) {
      Drawing full = picture.of(Demo.libraryGarden(system), 0);
      assertThat(full.title()).startsWith(picture.name());
      assertThat(full.inWords()).isNotBlank();
    }
  }

  @Test
  void oneBadZoneBlanksNoPictureOfTheSite() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), 2, "big"));
    for (String id : List.of("year", "shares")) {
      Picture picture =
          Pictures.all().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
      Drawing drawing = picture.of(design, 0);
      assertThat(drawing.title()).endsWith("without zone 3");
      assertThat(drawing.inWords()).doesNotContain("big").doesNotContain("not a number");
    }
  }

  /**
   * Zones over the flow, without an area and on a night too short: each has a line or its words.
   */
  @Test
  void theNightsLeaveNoZoneOut() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    design.book().perform(design.edits().typed(SiteRules.AVAILABLE_FLOW.reference(), 0, "20 gpm"));
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), 7, ""));
    NightsPlan plan = design.nights().plan().orElseThrow();
    List<ZoneShare> nowhere =
        ZoneShare.of(plan).stream()
            .filter(share -> share.state() == ZoneShare.State.NOT_PLACED)
            .toList();
    assertThat(nowhere).hasSizeGreaterThan(2);
    Set<String> shown = new HashSet<>();
    for (NightPlan night : plan.timetable().nights()) {
      List<NightChart.Line> lines = NightChart.lines(plan, night);
      lines.forEach(line -> shown.add(line.label()));
      for (ZoneShare share : nowhere) {
        assertThat(lines)
            .anyMatch(
                line ->
                    line.label().contains(share.sheet().place())
                        && line.note().equals(share.why()));
      }
      assertThat(NightDrawing.whole(plan, night, "gpm").inWords())
          .contains(nowhere.size() + " not placed");
    }
    assertThat(shown).hasSize(design.book().rows(Sheets.ZONES));
  }

  @ParameterizedTest
  @MethodSource("all")
  void eachIsWrittenAsPngThatIsNotEmpty(Picture picture, @TempDir Path folder) throws Exception {
    Path file = folder.resolve("picture.png");
    PictureFile.write(picture.of(Demo.libraryGarden(UnitSystem.US), 2), SIZE, file);
    BufferedImage image = ImageIO.read(file.toFile());
    Set<Integer> colours = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x += 3) {
      for (int y = 0; y < image.getHeight(); y += 3) {
        colours.add(image.getRGB(x, y));
      }
    }
    assertThat(colours).hasSizeGreaterThan(8);
  }

  @ParameterizedTest
  @MethodSource("all")
  void eachIsWrittenAsSvgWithItsTitleAndWords(Picture picture, @TempDir Path folder)
      throws Exception {
    Path file = folder.resolve("picture.SVG");
    Drawing drawing = picture.of(Demo.libraryGarden(UnitSystem.SI), 2);
    PictureFile.write(drawing, SIZE, file);
    Document read =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(
                new ByteArrayInputStream(
                    Files.readString(file)
                        .replaceFirst("<!DOCTYPE[^>]*>", "")
                        .getBytes(StandardCharsets.UTF_8)));
    assertThat(read.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(read.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo(drawing.title());
    assertThat(read.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo(drawing.inWords());
    assertThat(
            read.getElementsByTagName("path").getLength()
                + read.getElementsByTagName("text").getLength()
                + read.getElementsByTagName("line").getLength())
        .isPositive();
  }

  @ParameterizedTest
  @MethodSource("all")
  void eachPaintsInAnySizeAndOfADesignWithNothingInIt(Picture picture) throws Exception {
    Design blank = Design.blank(UnitSystem.US);
    blank.book().perform(blank.edits().inserted("zones", 0, 1));
    for (Design design : List.of(blank, Demo.libraryGarden(UnitSystem.US))) {
      Drawing drawing = picture.of(design, 0);
      for (Dimension size : List.of(new Dimension(1, 1), new Dimension(90, 40), SIZE)) {
        assertThat(PictureFile.png(drawing, size)).isNotEmpty();
      }
    }
  }

  static List<Drawing> ofWeather() {
    List<Double> low = java.util.Collections.nCopies(12, 1.0);
    List<Double> high = List.of(2.0, 2.5, 4.0, 5.0, 6.0, 7.0, 8.0, 7.0, 6.0, 4.0, 2.0, 1.5);
    return List.of(
        new YearBandDrawing(
            "years",
            "in",
            List.of(
                new YearBandDrawing.Line("driest 2003", high),
                new YearBandDrawing.Line("middle 2001", high),
                new YearBandDrawing.Line("wettest 2002", low)),
            low,
            high),
        new HottestWeeksDrawing(
            "weeks",
            "in",
            List.of(
                new HottestWeeksDrawing.Week(LocalDate.of(2001, 7, 30), 2.1),
                new HottestWeeksDrawing.Week(LocalDate.of(2002, 6, 30), 2.4))),
        new NeedCalendarDrawing("days", "in a day", List.of(high, low)));
  }

  @ParameterizedTest
  @MethodSource("ofWeather")
  void thoseOfWeatherSayAndPaintWhatTheyShowInAnySize(Drawing drawing) throws Exception {
    assertThat(drawing.inWords()).matches(".*(2\\.4|8|55).*");
    for (Dimension size : List.of(new Dimension(1, 1), new Dimension(90, 40), SIZE)) {
      assertThat(PictureFile.png(drawing, size)).isNotEmpty();
      assertThat(PictureFile.svg(drawing, size)).isNotEmpty();
    }
  }
}
