package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PracticeCommandTest {
  @TempDir private Path folder;

  private static double given(CommandRun run, String name) {
    return run.out()
        .lines()
        .filter(line -> line.strip().startsWith(name + " = "))
        .map(line -> line.substring(line.indexOf('=') + 1).strip().split(" ", 2)[0])
        .mapToDouble(Double::parseDouble)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anExerciseIsSetAnsweredAndMarked() {
    CommandRun set = CommandRun.of("practice", "1", "--seed", "5");
    // 96.25 × gpm ÷ ft²: Ohio State University Extension, Bulletin 912.
    double rate = 96.25 * given(set, "Zone flow") / given(set, "Area");
    CommandRun right = CommandRun.of("practice", "1", "--seed", "5", "--answer", rate + " in/h");
    CommandRun wrong =
        CommandRun.of("practice", "1", "--seed", "5", "--answer", rate / 96.25 + " in/h");

    assertThat(set.out()).contains("Find Rate by area (in/h).").doesNotContain("Answer");
    assertThat(right.code()).isZero();
    assertThat(right.out()).isEqualTo("Right.\n");
    assertThat(wrong.code()).isEqualTo(1);
    assertThat(wrong.out())
        .contains("The factor of the units is missing: 96.25.")
        .contains("Look at this step: Rate by area", "= Zone flow ÷ Area");
  }

  @Test
  void aTopicIsNamedByItsTitleOrNearlySo() {
    assertThat(CommandRun.of("practice", "presure at the worst head").out())
        .startsWith("Pressure at the worst head\n");
    assertThat(CommandRun.of("practice", "--list").out().lines()).hasSize(12);
  }

  @Test
  void aClassGetsASheetAndItsTeacherTheSolutions() {
    CommandRun sheet = CommandRun.of("practice", "--set", "20", "--seed", "7");
    CommandRun again = CommandRun.of("practice", "--set", "20", "--seed", "7");
    CommandRun solved = CommandRun.of("practice", "--set", "20", "--seed", "7", "--solutions");

    assertThat(sheet.out()).isEqualTo(again.out()).contains("20. ").doesNotContain("21. ");
    assertThat(sheet.out()).contains("Answer: ____").doesNotContain("÷");
    assertThat(solved.out().lines().filter(line -> line.contains("Answer: "))).hasSize(20);
    assertThat(sheet.out().lines().filter(line -> line.contains(" = ")).toList())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(solved.out()).contains(line));
  }

  @Test
  void theSheetsArePagesThatCanBeRead() throws IOException {
    Path path = folder.resolve("solutions.pdf");
    CommandRun run =
        CommandRun.of("practice", "--set", "20", "--solutions", "--pdf", path.toString());
    byte[] first = Files.readAllBytes(path);
    CommandRun refused = CommandRun.of("practice", "--set", "20", "--pdf", path.toString());
    CommandRun.of("practice", "--set", "20", "--solutions", "--pdf", path.toString(), "--replace");

    assertThat(run.code()).isZero();
    assertThat(refused.code()).isEqualTo(3);
    assertThat(Files.readAllBytes(path)).isEqualTo(first);
    try (PDDocument document = Loader.loadPDF(first)) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("Solutions, set 1", "20. ", "Rate by area", "96.25 ×");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "astronomy,There is no topic “astronomy”",
    "13,There is no topic “13”",
    "1 --answer fast,is not a number",
    "1 --answer 3gpm,the unit",
    "--set 0,write a number from 1 to 200",
    "--set 5 --answer 3,leave --set and --pdf out",
    "--number 0,write a number from 1 to 200",
    "--set 2 --pdf sheet.txt,end the path in .pdf",
  })
  void whatCannotBeIsASentence(String arguments, String sentence) {
    CommandRun run = CommandRun.of(("practice " + arguments).split(" ", -1));

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(sentence);
  }
}
