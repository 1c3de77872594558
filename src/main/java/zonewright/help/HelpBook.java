package zonewright.help;

import static zonewright.help.HelpPage.escaped;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.design.IrrigationSheets;

/** All help pages: written ones, and those made from the declarations. */
public final class HelpBook {
  private static final Map<String, String> WRITTEN = new LinkedHashMap<>();

  static {
    WRITTEN.put("size-a-zone", "How to size a zone");
    WRITTEN.put("cycle-and-soak", "Cycle and soak");
    WRITTEN.put("weather-based-controller", "The baseline of a weather-based controller");
    WRITTEN.put("budget", "Reading the budget");
    WRITTEN.put("pricing", "Pricing a job, proving a retrofit");
    WRITTEN.put("cautions", "Cautions");
  }

  private HelpBook() {}

  /** Returns the pages, the table of contents first. */
  public static List<HelpPage> pages() {
    List<HelpPage> pages = new ArrayList<>();
    WRITTEN.forEach((name, title) -> pages.add(new HelpPage(name + ".html", title, written(name))));
    pages.addAll(new ColumnPages(IrrigationSheets.blueprint()).pages());
    pages.add(TablePages.published());
    pages.add(TablePages.checks());
    pages.add(0, contents(pages));
    return List.copyOf(pages);
  }

  /** Writes all pages into a folder, which is made if need be. */
  public static void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (HelpPage page : pages()) {
      Files.writeString(folder.resolve(page.file()), page.html(), StandardCharsets.UTF_8);
    }
  }

  private static HelpPage contents(List<HelpPage> pages) {
    StringBuilder body = new StringBuilder("<ul>\n");
    for (HelpPage page : pages) {
      body.append("<li><a href=\"")
          .append(page.file())
          .append("\">")
          .append(escaped(page.title()))
          .append("</a></li>\n");
    }
    return new HelpPage("index.html", "Zonewright help", body.append("</ul>").toString());
  }

  private static String written(String name) {
    try (InputStream stream = HelpBook.class.getResourceAsStream(name + ".html")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
