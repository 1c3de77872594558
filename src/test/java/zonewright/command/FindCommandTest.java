package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The input found for an answer, by command. */
class FindCommandTest {
  @TempDir private Path folder;

  /** 96.25 × 37.2 gpm ÷ 0.5 in/h = 7,161 ft²: Ohio State University Extension, Bulletin 912. */
  @Test
  void theInputIsFoundAndWrittenIntoAnotherFile() {
    Path into = folder.resolve("other.xlsx");

    CommandRun run =
        CommandRun.of(
            "find",
            "Area",
            "of",
            "2",
            "so",
            "that",
            "Rate by area",
            "of",
            "2",
            "is",
            "0.5 in/h",
            "--into",
            into.toString());

    assertThat(run.code()).isZero();
    assertThat(run.firstLine()).isEqualTo("zone 2, Area: from 2,250 ft² to 7161 ft²");
    assertThat(run.out()).endsWith("Written: " + into + "\n");
    CommandRun there =
        CommandRun.of("calculate", into.toString(), "--columns", "Zone,Area,Rate by area");
    assertThat(there.out()).containsPattern("2 +7,161 +0.50");
    CommandRun again =
        CommandRun.of(
            "find", "Area of 2 so that Rate by area of 2 is 0.5", "--into", into.toString());
    assertThat(again.code()).isEqualTo(ExitCode.FILE);
    assertThat(again.err()).contains("--replace");
  }

  @Test
  void aWholeSentenceAndALimitAreUnderstood() {
    CommandRun run =
        CommandRun.of("find", "intake rate of 7 so that cycles of 7 is at most 2", "--units", "si");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("zone 7, Cycles: from 3 to 2, where at most 2 is wanted", "mm/h or more");
  }

  @Test
  void whereNoneDoesTheScriptIsTold() {
    Path into = folder.resolve("none.xlsx");

    CommandRun run =
        CommandRun.of(
            "find",
            "Plant factor of 7 so that Net demand of 7 is at least 9 in/day",
            "--into",
            into.toString());

    assertThat(run.code()).isEqualTo(ExitCode.FOUND);
    assertThat(run.out())
        .startsWith("None in range (above 0 and at most 2): nothing typed for zone 7, Plant");
    assertThat(Files.exists(into)).isFalse();
  }

  @Test
  void whatCannotBeUnderstoodIsAnsweredInASentence() {
    assertThat(problem("find Area of 2")).startsWith("What is to be found is not said. Write");
    assertThat(problem("find Area so that Cycles of 2 is 3"))
        .startsWith("Zones has many rows; say of which zone, as \"Area\" of 1.");
    assertThat(problem("find Area of 77 so that Cycles of 2 is 3"))
        .startsWith("There is no zone “77”; did you mean “7”?");
    assertThat(problem("find Area of 2 so that Rate by area of 2 is 3 gal"))
        .contains("“3 gal”: the unit “gal”");
    assertThat(problem("find Cycles of 2 so that Rate by area of 2 is 3"))
        .startsWith("zone 2, Cycles is calculated");
    assertThat(problem("find Area of 1 so that Cycles of 2 is 3"))
        .startsWith("zone 2, Cycles stays 2 whatever zone 1, Area is.");
  }

  private static String problem(String sentence) {
    String[] words = sentence.split(" ", 2);
    CommandRun run = CommandRun.of(words[0], words[1]);
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    return run.err().replaceFirst("No file is named.*\n", "");
  }
}
