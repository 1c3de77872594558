package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command given a design that a password protects asks whoever sits at the terminal. */
class PasswordPromptTest {
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
  private Path secret;

  @BeforeEach
  void protectADesign() throws Exception {
    Path open = folder.resolve("open.xlsx");
    assertThat(CommandRun.of("write", open.toString(), "--sample", "homework").code()).isZero();
    secret = folder.resolve("secret.xlsx");
    Encryptor lock = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
    lock.confirmPassword("water");
    try (POIFSFileSystem parts = new POIFSFileSystem()) {
      try (OutputStream stream = lock.getDataStream(parts)) {
        Files.copy(open, stream);
      }
      try (OutputStream stream = Files.newOutputStream(secret)) {
        parts.writeFilesystem(stream);
      }
    }
  }

  /** Somebody who types one word after the other, and then nothing. */
  private CommandRun typing(List<String> words, String... arguments) {
    Deque<String> left = new ArrayDeque<>(words);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal =
        asked -> {
          asked.print("Password: ");
          return Optional.ofNullable(left.poll());
        };
    int code =
        new Program(new PrintWriter(out), new PrintWriter(err), NOWHERE, terminal).run(arguments);
    assertThat(left).as("words nobody asked for").isEmpty();
    return new CommandRun(code, out.toString(), err.toString(), List.of());
  }

  @Test
  void theWordOpensTheDesign() {
    CommandRun run = typing(List.of("water"), "calculate", secret.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("Zones");
    assertThat(run.err()).startsWith("Password: ").doesNotContain("water");
  }

  @Test
  void anotherWordIsToldAndAskedForAgainThreeTimesInAll() {
    CommandRun second = typing(List.of("wine", "water"), "calculate", secret.toString());
    assertThat(second.code()).isZero();
    String wrong = "That is not the password of " + secret + ".";
    assertThat(second.err()).startsWith("Password: " + wrong);
    CommandRun never = typing(List.of("wine", "beer", "milk"), "calculate", secret.toString());
    assertThat(never.code()).isEqualTo(3);
    assertThat(List.of(never.err().strip().split("Password: ", -1))).hasSize(4).endsWith(wrong);
    assertThat(never.out()).isEmpty();
  }

  @Test
  void whereNobodySitsAtATerminalOrTypesNothingItIsSaid() {
    CommandRun nothing = typing(List.of(), "calculate", secret.toString());
    assertThat(nothing.code()).isEqualTo(3);
    assertThat(nothing.err())
        .contains(
            secret
                + " is protected by a password; open it in the window, or give the command at a terminal, where it is asked for.");
  }

  @Test
  void whatIsWrittenOverAProtectedDesignStaysProtected() throws IOException {
    CommandRun run =
        typing(
            List.of("water"), "write", secret.toString(), "--from", secret.toString(), "--replace");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(Files.readAllBytes(secret)).startsWith(0xD0, 0xCF, 0x11, 0xE0);
    assertThat(typing(List.of("water"), "calculate", secret.toString()).code()).isZero();
  }
}
