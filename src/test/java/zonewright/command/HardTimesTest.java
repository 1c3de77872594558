package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person at a terminal is told by a disk, a memory or a language setting in the way. */
class HardTimesTest {
  private static final Window NOWHERE =
      new Window() {
        @Override
        public boolean possible() {
          return false;
        }

        @Override
        public void open(Optional<Path> file) {
          throw new AssertionError("there is no window");
        }
      };

  @TempDir private Path folder;

  @Test
  void whatDoesNotFitOnADiskIsAnError() throws IOException {
    StringWriter err = new StringWriter();
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int count) throws IOException {
            throw new IOException("No space left on device");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    int code = new Program(new PrintWriter(full), new PrintWriter(err), NOWHERE).run("columns");
    assertThat(code).isEqualTo(3);
    assertThat(err.toString())
        .contains("What was asked for could not be put out to its end: the disk is full");
    Path device = Path.of("/dev/full");
    if (Files.exists(device)) {
      try (FileOutputStream stream = new FileOutputStream(device.toFile())) {
        PrintWriter out = new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
        assertThat(new Program(out, new PrintWriter(err), NOWHERE).run("columns")).isEqualTo(3);
      }
    }
  }

  @Test
  void noMemoryIsASentenceAndTheProgramsOwnFault() {
    StringWriter err = new StringWriter();
    Writer small =
        new Writer() {
          @Override
          public void write(char[] text, int from, int count) {
            throw new OutOfMemoryError("for this test");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    int code = new Program(new PrintWriter(small), new PrintWriter(err), NOWHERE).run("columns");
    assertThat(code).isEqualTo(4);
    assertThat(err.toString().strip())
        .isEqualTo("There is not enough memory for this; close other programs and try again.");
  }

  @Test
  void aNameThatThisLanguageSettingCannotWriteIsASentence() {
    CommandRun run = CommandRun.of("calculate", "garden\0.xlsx");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("cannot be the name of a file here")
        .contains("LC_ALL=C.UTF-8")
        .doesNotContain("Exception");
  }

  @Test
  void aPipeInTheFileSystemIsNoDesign() throws Exception {
    Path pipe = folder.resolve("pipe.xlsx");
    try {
      Process made = new ProcessBuilder("mkfifo", pipe.toString()).start();
      Assumptions.assumeTrue(made.waitFor(10, TimeUnit.SECONDS) && made.exitValue() == 0);
    } catch (IOException noPipesHere) {
      Assumptions.abort("no named pipes here");
    }
    CommandRun read = CommandRun.of("calculate", pipe.toString());
    assertThat(read.code()).isEqualTo(3);
    assertThat(read.err().strip()).isEqualTo(pipe + " is no ordinary file.");
    CommandRun written = CommandRun.of("write", pipe.toString(), "--replace");
    assertThat(written.code()).isEqualTo(3);
    assertThat(written.err()).contains(pipe + " is no ordinary file; save under another name.");
    assertThat(Files.isRegularFile(pipe)).isFalse();
  }
}
