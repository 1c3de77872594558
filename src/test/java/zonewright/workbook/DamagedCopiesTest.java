package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.TableDefinition;
import zonewright.testing.Counts;

/**
 * Damaged copies of real workbooks: each is read or refused with a sentence, and nothing else
 * happens.
 */
class DamagedCopiesTest {
  private static final int COPIES = Counts.of(60, 10_000);

  /** No copy may hang: a generous guard against loops, on a busy machine too. */
  private static final Duration LONGEST = Duration.ofSeconds(60);

  @TempDir Path folder;

  @Test
  @Tag(Counts.LONG)
  void everyCopyIsReadOrRefusedWithASentence() throws Exception {
    List<byte[]> whole = new ArrayList<>();
    for (String name : List.of("library-garden", "controller-test-zones", "homework")) {
      whole.add(Files.readAllBytes(Path.of("workbooks", name + ".xlsx")));
    }
    whole.add(withoutWhatIsNotRead(whole.get(2)));
    Random random = new Random(Long.getLong("zonewright.seed", 20261125));
    List<String> wrong = new ArrayList<>();
    int refused = 0;
    ExecutorService reader = Executors.newSingleThreadExecutor();
    try {
      for (int i = 0; i < COPIES; i++) {
        byte[] original = whole.get(Math.min(random.nextInt(4 * whole.size()), whole.size() - 1));
        byte[] copy = random.nextInt(4) == 0 ? bytes(original, random) : part(original, random);
        Path file = Files.write(folder.resolve("copy.xlsx"), copy);
        Future<String> outcome = reader.submit(() -> outcome(file));
        String said = outcome.get(LONGEST.toSeconds(), TimeUnit.SECONDS);
        refused += said.startsWith("refused") ? 1 : 0;
        if (said.startsWith("wrong")) {
          wrong.add("copy " + i + ": " + said);
          System.out.println(wrong.get(wrong.size() - 1));
        }
        if (i % 500 == 499) {
          System.out.println(
              "%s copies, %s refused, %s wrong".formatted(i + 1, refused, wrong.size()));
        }
      }
    } finally {
      reader.shutdownNow();
    }
    assertThat(wrong).isEmpty();
    assertThat(refused).as("some copies are past reading").isPositive();
  }

  /** The sheets of the design alone, which are read faster. */
  private static byte[] withoutWhatIsNotRead(byte[] whole) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(whole))) {
      Set<String> read =
          IrrigationSheets.schema().tables().stream()
              .map(TableDefinition::title)
              .collect(Collectors.toSet());
      for (int i = workbook.getNumberOfSheets() - 1; i >= 0; i--) {
        if (!read.contains(workbook.getSheetName(i))) {
          workbook.removeSheetAt(i);
        }
      }
      ByteArrayOutputStream left = new ByteArrayOutputStream();
      workbook.write(left);
      return left.toByteArray();
    }
  }

  private static String outcome(Path file) {
    try {
      DesignFile.read(file);
      return "read";
    } catch (DesignFileException sentence) {
      String said = sentence.getMessage();
      if (said.contains("memory")) {
        return "wrong: a small file, and " + said;
      }
      boolean plain = !said.contains("Exception") && !said.contains("null") && said.endsWith(".");
      return (plain ? "refused: " : "wrong words: ") + said;
    } catch (Throwable escaped) {
      return "wrong: " + escaped;
    }
  }

  /** Spoils the file as a whole: bytes changed, or its end gone. */
  private static byte[] bytes(byte[] original, Random random) {
    if (random.nextInt(4) == 0) {
      return java.util.Arrays.copyOf(original, random.nextInt(original.length));
    }
    byte[] copy = original.clone();
    for (int i = 0; i <= random.nextInt(20); i++) {
      copy[random.nextInt(copy.length)] = (byte) random.nextInt(256);
    }
    return copy;
  }

  /** Spoils one of the parts in the file, which stays a whole archive. */
  private static byte[] part(byte[] original, Random random) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(original))) {
      for (ZipEntry entry; (entry = zip.getNextEntry()) != null; ) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    List<String> names = List.copyOf(parts.keySet());
    String name = names.get(random.nextInt(names.size()));
    if (random.nextInt(10) == 0) {
      parts.remove(name);
    } else {
      parts.put(name, spoilt(parts.get(name), random));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(1);
      for (Map.Entry<String, byte[]> each : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private static final List<String> ODD =
      List.of("1E308", "NaN", "-1", "99999999999", "", "<", "&#0;", "A1:XFD1048576", "#REF!", "=");

  private static byte[] spoilt(byte[] content, Random random) {
    String text = new String(content, StandardCharsets.UTF_8);
    StringBuilder changed = new StringBuilder(text);
    for (int i = 0; i <= random.nextInt(5) && changed.length() > 2; i++) {
      int from = random.nextInt(changed.length() - 1);
      int to = Math.min(changed.length(), from + random.nextInt(40));
      switch (random.nextInt(4)) {
        case 0 -> changed.delete(from, to);
        case 1 -> changed.insert(from, changed.substring(from, to));
        case 2 -> changed.replace(from, to, ODD.get(random.nextInt(ODD.size())));
        default -> value(changed, random);
      }
    }
    return changed.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Puts something odd where a value stands, so that the part stays well formed more often. */
  private static void value(StringBuilder text, Random random) {
    int start = text.indexOf("=\"", random.nextInt(text.length()));
    int end = start < 0 ? -1 : text.indexOf("\"", start + 2);
    if (end > 0) {
      String odd = ODD.get(random.nextInt(ODD.size())).replace("<", "x").replace("&#0;", "y");
      text.replace(start + 2, end, odd);
    }
  }
}
