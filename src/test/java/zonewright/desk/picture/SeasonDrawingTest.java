package zonewright.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.balance.WateringRule;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.season.Season;
import zonewright.season.SeasonReading;
import zonewright.season.SeasonWeather;
import zonewright.units.UnitSystem;

/** The pictures of a season as files, large and small. */
class SeasonDrawingTest {
  private static Season season(UnitSystem system) {
    Design design = Demo.libraryGarden(system);
    return new Season(
        SeasonReading.proposed(design.book(), design.nights().plan().orElseThrow()),
        SeasonWeather.of(design.book()).weather().orElseThrow(),
        WateringRule.of(new WateringRule.Fixed(1)),
        1);
  }

  private static int colours(Drawing drawing, Dimension size, Path folder) throws Exception {
    Path file = folder.resolve(size.width + ".png");
    PictureFile.write(drawing, size, file);
    BufferedImage image = ImageIO.read(file.toFile());
    Set<Integer> colours = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x += 2) {
      for (int y = 0; y < image.getHeight(); y += 2) {
        colours.add(image.getRGB(x, y));
      }
    }
    return colours.size();
  }

  @Test
  void theyAreDrawnInAnySize(@TempDir Path folder) throws Exception {
    Season season = season(UnitSystem.SI);
    Drawing zone =
        new SeasonDrawing(season, season.zones().zones().get(10), "fixed", 2001, UnitSystem.SI);
    Drawing all = new SeasonGlance(season, "fixed", 2001);
    for (Drawing drawing : new Drawing[] {zone, all, new BesideEachOther("both", zone, all)}) {
      assertThat(colours(drawing, new Dimension(900, 420), folder)).isGreaterThan(20);
      assertThat(colours(drawing, new Dimension(120, 60), folder)).isGreaterThan(2);
    }
    Path svg = folder.resolve("season.svg");
    PictureFile.write(zone, new Dimension(800, 400), svg);
    assertThat(Files.readString(svg)).contains("allowed depletion", "wilting point");
  }

  @Test
  void theySayWhatTheyShow() {
    Season season = season(UnitSystem.US);
    Drawing zone =
        new SeasonDrawing(season, season.zones().zones().get(10), "fixed", 2001, UnitSystem.US);
    assertThat(zone.title()).isEqualTo("Zone 11, West slope ground cover, fixed");
    assertThat(zone.inWords())
        .startsWith("Plants get 76 % of what they need")
        .contains(" of 365 days", " in comes as irrigation");
    assertThat(new SeasonGlance(season, "fixed", 2001).inWords())
        .contains("of 12 zones fall below the allowed depletion", "the driest gets 76 %");
  }
}
