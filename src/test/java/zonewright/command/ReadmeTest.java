package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the README shows of the command line is what the program prints. */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Pattern BLOCK = Pattern.compile("```\n\\$ zonewright (.*)\n((?s:.*?))```");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  record Example(String command, List<String> lines) {
    @Override
    public String toString() {
      return command;
    }
  }

  static Stream<Example> examples() throws IOException {
    String text = Files.readString(README, StandardCharsets.UTF_8);
    return BLOCK
        .matcher(text)
        .results()
        .map(found -> new Example(found.group(1), found.group(2).stripTrailing().lines().toList()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void theProgramPrintsWhatIsShown(Example example) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(example.command());
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    CommandRun run = CommandRun.of(words.toArray(String[]::new));
    String printed = run.out() + run.err();
    int from = 0;
    for (String line : example.lines()) {
      if (line.equals("…")) {
        continue;
      }
      int at = printed.indexOf(line, from);
      assertThat(at).as("“%s” is printed, in its turn, among:%n%s", line, printed).isNotNegative();
      from = at + line.length();
    }
  }

  @Test
  void everyCommandIsInTheTable() throws IOException {
    String text = Files.readString(README, StandardCharsets.UTF_8);
    String help = CommandRun.of("--help").out();
    List<String> commands =
        Pattern.compile("^ {2}([a-z]+) ", Pattern.MULTILINE)
            .matcher(help.substring(help.indexOf("Commands:")))
            .results()
            .map(found -> found.group(1))
            .toList();
    assertThat(commands)
        .hasSizeGreaterThan(5)
        .allSatisfy(word -> assertThat(text).contains("| `" + word + "` |"));
  }
}
