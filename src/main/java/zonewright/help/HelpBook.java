package zonewright.help;

import static zonewright.help.HelpPage.escaped;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.design.IrrigationSheets;
import zonewright.equation.EquationReader;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/** All help pages: written ones, and those made from the declarations. */
public final class HelpBook {
  /** The file of the table of contents. */
  public static final String CONTENTS = "index.html";

  /** The file of the page on keys. */
  public static final String KEYS = "keys.html";

  /** The file of the page on columns of one's own. */
  public static final String OWN_COLUMNS = "own-columns.html";

  /** Where the functions stand on that page. */
  private static final String FUNCTIONS = "<!-- functions -->";

  private static final String ASKING = "asking.html";

  /** Where the units stand on the page on asking. */
  private static final String UNITS = "<!-- units -->";

  private static final Map<String, String> WRITTEN = new LinkedHashMap<>();

  static {
    WRITTEN.put("size-a-zone", "How to size a zone");
    WRITTEN.put("weather-files", "The weather of any place");
    WRITTEN.put("flow-pipes-pressure", "Flow, pipes and pressure");
    WRITTEN.put("cycle-and-soak", "Cycle and soak");
    WRITTEN.put("how-sure", "How sure, and what to measure first");
    WRITTEN.put("nights", "The nights");
    WRITTEN.put("weather-based-controller", "The baseline of a weather-based controller");
    WRITTEN.put("season", "A season, day by day");
    WRITTEN.put("in-the-field", "In the field: testing, handing over, tuning");
    WRITTEN.put("budget", "Reading the budget");
    WRITTEN.put("pricing", "Pricing a job, proving a retrofit");
    WRITTEN.put("alternatives", "Alternatives of a design");
    WRITTEN.put("office", "Tables of your own, and the office's workbook");
    WRITTEN.put("asking", "Asking, and practising");
    WRITTEN.put("own-columns", "Columns of your own");
    WRITTEN.put("saving", "Saving, and what a crash leaves");
    WRITTEN.put("keys", "Keys");
    WRITTEN.put("cautions", "Cautions");
  }

  private HelpBook() {}

  /** Returns the pages, the table of contents first. */
  public static List<HelpPage> pages() {
    return titles().keySet().stream().map(file -> page(file).orElseThrow()).toList();
  }

  /** Returns the titles of all pages by their files, the table of contents first. */
  public static Map<String, String> titles() {
    Map<String, String> titles = new LinkedHashMap<>();
    titles.put(CONTENTS, "Zonewright help");
    WRITTEN.forEach((name, title) -> titles.put(name + ".html", title));
    IrrigationSheets.schema()
        .tables()
        .forEach(table -> titles.put(ColumnPages.file(table.id()), ColumnPages.title(table)));
    titles.put(TablePages.PUBLISHED, "Published tables");
    titles.put(TablePages.CHECKS, "Reference checks");
    return titles;
  }

  /** Returns the page of a file, made anew from the declarations; none where there is none. */
  public static Optional<HelpPage> page(String file) {
    String title = titles().get(file);
    if (title == null) {
      return Optional.empty();
    }
    String picture =
        IrrigationSheets.schema().tables().stream()
            .map(TableDefinition::id)
            .filter(table -> file.equals(ColumnPages.file(table)))
            .map(table -> "sheet-" + table)
            .findFirst()
            .orElse("");
    return Optional.of(new HelpPage(file, title, body(file), picture));
  }

  private static String body(String file) {
    if (file.equals(CONTENTS)) {
      return contents();
    }
    if (file.equals(TablePages.PUBLISHED)) {
      return TablePages.published();
    }
    if (file.equals(TablePages.CHECKS)) {
      return TablePages.checks();
    }
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      if (file.equals(ColumnPages.file(table.id()))) {
        return new ColumnPages(IrrigationSheets.schema()).body(table);
      }
    }
    String written = written(file.replace(".html", ""));
    return switch (file) {
      case ASKING -> written.replace(UNITS, TablePages.units());
      case OWN_COLUMNS -> written.replace(FUNCTIONS, functions());
      default -> written;
    };
  }

  private static String functions() {
    StringBuilder rows = new StringBuilder();
    EquationReader.functions()
        .forEach(
            (form, gives) ->
                rows.append("<tr><td><code>")
                    .append(escaped(form))
                    .append("</code></td><td>")
                    .append(escaped(gives))
                    .append("</td></tr>\n"));
    return rows.toString();
  }

  /** Returns what the help says of one column, a part of the page of its sheet. */
  public static String section(Column column) {
    return new ColumnPages(IrrigationSheets.schema()).section(column);
  }

  /** Returns where a link of a page leads, if it leads to a column. */
  public static Optional<Column> linked(String link) {
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      for (Column column : table.columns()) {
        if (link.equals(ColumnPages.file(table.id()) + "#" + column.reference().column())) {
          return Optional.of(column);
        }
      }
    }
    return Optional.empty();
  }

  /** Returns the file of the page on the columns of a sheet. */
  public static String fileOf(String table) {
    return ColumnPages.file(table);
  }

  /** Writes all pages into a folder, which is made if need be. */
  public static void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (HelpPage page : pages()) {
      Files.writeString(folder.resolve(page.file()), page.html(folder), StandardCharsets.UTF_8);
    }
  }

  private static String contents() {
    StringBuilder body = new StringBuilder("<ul>\n");
    titles()
        .forEach(
            (file, title) -> {
              if (!file.equals(CONTENTS)) {
                body.append("<li><a href=\"")
                    .append(file)
                    .append("\">")
                    .append(escaped(title))
                    .append("</a></li>\n");
              }
            });
    return body.append("</ul>").toString();
  }

  private static String written(String name) {
    try (InputStream stream = HelpBook.class.getResourceAsStream(name + ".html")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
