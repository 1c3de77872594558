package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.Zonewright;
import zonewright.testing.Counts;

/** Commands in a process of their own that has next to no memory. */
class LittleMemoryTest {
  @TempDir private Path folder;

  private record Ended(int code, String out, String err) {}

  private Ended with(int megabytes, List<String> arguments) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + megabytes + "m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Zonewright.class.getName()));
    command.addAll(arguments);
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
  }

  @Test
  @Tag(Counts.LONG)
  void itIsASentenceAndTheProgramsOwnFault() throws Exception {
    String garden = Path.of("workbooks", "library-garden.xlsx").toString();
    Path list = folder.resolve("list.csv");
    Files.writeString(
        list,
        "Item,Price\n" + "Pipe of some length and kind,1.25\n".repeat(400_000),
        StandardCharsets.UTF_8);
    String priced = folder.resolve("priced.xlsx").toString();
    List<List<String>> commands =
        List.of(
            List.of("prices", "--book", list.toString(), "--into", priced),
            List.of("prices", "--book", garden, "--into", priced),
            List.of("import", list.toString(), priced),
            List.of("calculate", garden),
            List.of("findings", garden),
            List.of("timetable", garden),
            List.of("write", priced, "--from", garden));
    for (List<String> arguments : commands.subList(0, Counts.of(1, commands.size()))) {
      Ended ended = with(24, arguments);
      assertThat(ended.code()).as("%s: %s", arguments, ended.err()).isEqualTo(4);
      assertThat(ended.err()).contains("memory").doesNotContain("Error", "Exception", "\tat ");
      assertThat(Path.of(priced)).doesNotExist();
    }
  }
}
