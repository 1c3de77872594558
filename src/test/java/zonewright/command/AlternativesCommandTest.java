package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Alternatives of a design by command, from one file to the next. */
class AlternativesCommandTest {
  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void copy() {
    file = folder.resolve("garden.xlsx");
    CommandRun run =
        CommandRun.of(
            "alternatives",
            "--sample",
            "homework",
            "--copy",
            "Less turf",
            "--into",
            file.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("Less turf").endsWith("Written: " + file + "\n");
  }

  private CommandRun run(String... words) {
    String[] all = new String[words.length + 5];
    System.arraycopy(
        new String[] {"alternatives", "--from", file.toString(), "--into", file.toString()},
        0,
        all,
        0,
        5);
    System.arraycopy(words, 0, all, 5, words.length);
    String[] replacing = java.util.Arrays.copyOf(all, all.length + 1);
    replacing[all.length] = "--replace";
    return CommandRun.of(replacing);
  }

  private void set(String value) {
    CommandRun run =
        CommandRun.of("set", file.toString(), "--from", file.toString(), "--replace", value);
    assertThat(run.err()).isEmpty();
  }

  private String area() {
    return CommandRun.of("calculate", file.toString(), "--columns", "Zone,Area", "--csv").out();
  }

  @Test
  void whatIsSetWhileItIsInHandIsItsOwnAlsoInTheFile() {
    String before = area();
    set("Zones: Area=500 ft2");
    assertThat(area()).contains("500");
    assertThat(CommandRun.of("alternatives", "--from", file.toString(), "--changes", "--csv").out())
        .contains("Alternative,Sheet,Row,Column,The design,In the alternative")
        .contains("Less turf,Zones,1,Area,2000 ft²,500 ft²");
    assertThat(run("--work-in", "The design").code()).isZero();
    assertThat(area()).isEqualTo(before);
    assertThat(run("--take", "less turf", "--keep", "First idea").code()).isZero();
    assertThat(area()).contains("500");
    assertThat(run("--remove", "First idea").code()).isZero();
  }

  @Test
  void figuresStandSideBySideAndWhatDiffersIsMarked() {
    set("Area of 1=500 ft2");
    set("Figures compared=Area of 1; Zones: Slope of 1; Precipitation rate");
    CommandRun run = CommandRun.of("alternatives", "--from", file.toString());
    assertThat(run.out()).containsPattern("Area of 1 +2,000 ft² +\\* 500 ft²");
    assertThat(run.out()).containsPattern("Zones: Slope of 1 +[\\d.]+ % +[\\d.]+ %");
    assertThat(run.err())
        .contains(
            "Precipitation rate does not add up over rows; say of which, as “Precipitation rate of"
                + " 1”.");
  }

  @Test
  void whatCannotBeDoneIsSaidAndNothingIsWritten() {
    assertThat(run("--take", "Nothing of the sort").err())
        .contains("There is no alternative “Nothing of the sort”; there are Less turf.");
    assertThat(run("--copy", "less turf").err()).contains("choose another name");
    assertThat(run("--remove", "Less turf", "--keep", "X").err())
        .contains("--keep goes with --take.");
    assertThat(CommandRun.of("alternatives", "--sample", "homework", "--remove", "A").err())
        .contains("The design has no alternatives; --copy makes one.");
  }
}
