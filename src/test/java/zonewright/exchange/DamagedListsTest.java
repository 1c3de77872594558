package zonewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.estimate.PriceBook;
import zonewright.sheet.Entry;
import zonewright.sheet.ListText;
import zonewright.sheet.Row;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Damaged lists: each is taken, or refused with a sentence, and no number comes of nothing. */
class DamagedListsTest {
  /** Invented lists of zones and of prices, as different programs write them. */
  private static final List<String> WHOLE =
      List.of(
          lines(
              "Zone,Where,Area (ft²),Plants,Slope",
              "1,\"Lawn, north\",2250,cool-season turf,2 %",
              "2,Beds,620.5,annual flowers,",
              "3,Bank,\"1,800\",ground cover,14 %"),
          lines("Zone;Fläche (m²);Kopf l/min", "1;209,03;5,5", "2;1.250,5;1,25", "3;57;3"),
          lines(
              "sep=\t",
              "Zone\tArea (ft²)\tEmitter flow (gpm)",
              "1\t900\t1.5",
              "2\t1e3\t0.9",
              "",
              "3\t340\t.5"),
          lines(
              "Item,Unit,Price,Category",
              "Valve 1 in,each,\"1,250.00\",valves",
              "Pipe 1 in,ft,0.85,pipe",
              "\"Nozzle \"\"fan\"\"\",each,4.2,heads"));

  private static final List<Charset> LETTERS =
      List.of(
          StandardCharsets.UTF_8,
          Charset.forName("windows-1252"),
          StandardCharsets.UTF_16LE,
          StandardCharsets.UTF_16BE);

  private static final List<String> ODD =
      List.of("\"", "\n", "\r", "\t", ";", ",", "\0", "1,250", "1.250", "NaN", "0x1p3", "12d");

  private static String lines(String... each) {
    return String.join("\n", each) + "\n";
  }

  @Test
  @Tag(Counts.LONG)
  void everyListIsTakenOrRefusedWithASentence() {
    Random random = new Random(20261127);
    List<String> wrong = new ArrayList<>();
    int refused = 0;
    int count = Counts.of(60, 2000);
    for (int i = 0; i < count; i++) {
      byte[] list = damaged(random);
      try {
        List<String> said = new ArrayList<>();
        zones(list).ifPresent(said::add);
        refused += said.size();
        prices(list).ifPresent(said::add);
        for (String sentence : said) {
          if (sentence.contains("Exception")
              || sentence.contains("null")
              || !sentence.endsWith(".")) {
            wrong.add("list " + i + ": " + sentence);
          }
        }
      } catch (RuntimeException | AssertionError escaped) {
        wrong.add("list " + i + ": " + escaped);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(refused).as("some are past reading").isBetween(1, count - 1);
  }

  private static Optional<String> prices(byte[] content) {
    Design design = Design.blank(UnitSystem.US);
    try {
      design.book().perform(new PriceBook(design.book()).edit(ListText.of(content, "book.csv")));
      return Optional.empty();
    } catch (ListText.Problem | PriceBook.Unreadable sentence) {
      return Optional.of(sentence.getMessage());
    }
  }

  private static Optional<String> zones(byte[] content) {
    Design design = Design.blank(UnitSystem.US);
    ForeignList list;
    try {
      list = ForeignList.of(content, "list.csv");
    } catch (ListProblem sentence) {
      return Optional.of(sentence.getMessage());
    }
    ListMatch match = new ListMatch(design.book(), Sheets.ZONES, list);
    match.guess();
    ListMatch.Taken taken = match.taken();
    int before = design.book().rows(Sheets.ZONES);
    design.book().perform(taken.edit());
    assertThat(design.book().rows(Sheets.ZONES) - before).isEqualTo(list.rows().size());
    for (int i = 0; i < list.rows().size(); i++) {
      Row row = design.book().contents().row(Sheets.ZONES, before + i);
      boolean digits = String.join("", list.rows().get(i)).chars().anyMatch(Character::isDigit);
      for (int at = 0; at < design.book().schema().table(Sheets.ZONES).columns().size(); at++) {
        assertThat(digits || !(row.entry(at) instanceof Entry.Figure))
            .as("a number where no digit stands: %s", list.rows().get(i))
            .isTrue();
      }
    }
    return Optional.empty();
  }

  private static byte[] damaged(Random random) {
    StringBuilder text = new StringBuilder(WHOLE.get(random.nextInt(WHOLE.size())));
    for (int i = random.nextInt(4); i > 0; i--) {
      int at = random.nextInt(text.length());
      int end = Math.min(text.length(), at + random.nextInt(12));
      switch (random.nextInt(3)) {
        case 0 -> text.delete(at, Math.max(at, Math.min(end, text.length() - 1)));
        case 1 -> text.insert(at, text.substring(at, end));
        default -> text.insert(at, ODD.get(random.nextInt(ODD.size())));
      }
    }
    Charset charset = LETTERS.get(random.nextInt(LETTERS.size()));
    boolean marked = charset.name().startsWith("UTF-16") && random.nextInt(4) > 0;
    byte[] bytes = ((marked ? "\uFEFF" : "") + text).getBytes(charset);
    if (random.nextInt(3) == 0) {
      bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
    }
    for (int i = random.nextInt(3); i > 0 && bytes.length > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
