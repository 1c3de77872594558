package zonewright.desk.part;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.sheet.Severity;
import zonewright.sheet.Tint;

/**
 * Contrast as the Web Content Accessibility Guidelines 2.1 of the W3C define it: at least 4.5 for
 * words (criterion 1.4.3) and 3 for marks (1.4.11).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PaletteTest {
  static List<FlatLaf> looks() {
    return List.of(new FlatLightLaf(), new FlatDarkLaf());
  }

  private static double brightness(Color color) {
    return 0.2126 * part(color.getRed())
        + 0.7152 * part(color.getGreen())
        + 0.0722 * part(color.getBlue());
  }

  private static double part(int of255) {
    double share = of255 / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static double contrast(Color one, Color other) {
    double first = brightness(one);
    double second = brightness(other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  @Test
  void blackOnWhiteIsTwentyOneAsTheGuidelinesSay() {
    assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21.0);
  }

  @ParameterizedTest
  @MethodSource("looks")
  void wordsCanBeReadOnEveryGround(FlatLaf look) {
    FlatLaf.setup(look);
    Palette palette = Palette.current();
    for (Color ground :
        List.of(
            palette.paper(),
            palette.inputGround(),
            palette.defaultGround(),
            palette.headingGround())) {
      assertThat(contrast(palette.ink(), ground)).isGreaterThan(4.5);
      assertThat(contrast(palette.ink(), palette.selected(ground))).isGreaterThan(4.5);
      assertThat(contrast(palette.softInk(), ground)).isGreaterThan(4.5);
      assertThat(contrast(palette.muted(), ground)).isGreaterThan(4.5);
      assertThat(contrast(palette.severity(Severity.WRONG), ground)).isGreaterThan(4.5);
    }
    for (int place = 0; place < 8; place++) {
      assertThat(contrast(palette.ink(), palette.band(place))).isGreaterThan(4.5);
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void marksStandOutFromEveryGround(FlatLaf look) {
    FlatLaf.setup(look);
    Palette palette = Palette.current();
    for (Color ground : List.of(palette.paper(), palette.inputGround(), palette.defaultGround())) {
      for (Severity severity : Severity.values()) {
        assertThat(contrast(palette.severity(severity), ground)).isGreaterThan(3);
      }
      assertThat(contrast(palette.strongAccent(), ground)).isGreaterThan(3);
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void coloursOfOnesOwnAreLegibleAndToldApartInGrey(FlatLaf look) {
    FlatLaf.setup(look);
    Palette palette = Palette.current();
    List<Color> grounds = new ArrayList<>(List.of(palette.paper()));
    for (Tint tint : Tint.values()) {
      palette.tint(tint).ifPresent(grounds::add);
    }
    assertThat(grounds).hasSize(5);
    for (Color ground : grounds) {
      assertThat(contrast(palette.ink(), ground)).isGreaterThan(4.5);
      assertThat(contrast(palette.ink(), palette.selected(ground))).isGreaterThan(4.5);
      for (Color other : grounds) {
        // lightness L* of the International Commission on Illumination; 5 is seen side by side
        assertThat(Math.abs(lightness(ground) - lightness(other)))
            .satisfiesAnyOf(
                apart -> assertThat(ground).isEqualTo(other),
                apart -> assertThat(apart).isGreaterThan(4.4));
      }
    }
  }

  private static double lightness(Color color) {
    return 116 * Math.cbrt(brightness(color)) - 16;
  }
}
