package zonewright.desk.sheets;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/** What a designer has in mind with a sheet: the sheets that are looked at together. */
public enum SheetGroup {
  SITE(
      1,
      "Site",
      "The place, its climate and its weather, and other ways to do the garden",
      Sheets.SITE,
      Sheets.MONTHS,
      Sheets.WEATHER,
      Sheets.RECORD),
  ZONES(
      2,
      "Zones",
      "What each zone needs, month by month and by program",
      Sheets.ZONES,
      Sheets.MONTHLY,
      Sheets.PROGRAMS),
  SUPPLY(
      3,
      "Supply",
      "Where the water comes from, and what pressure is left at the last head",
      Sheets.SUPPLY,
      Sheets.PIPES,
      Sheets.VALVES,
      Sheets.MATERIALS),
  NIGHTS(
      4,
      "Nights",
      "When watering is allowed, and when each zone waters",
      Sheets.NIGHTS,
      Sheets.ZONE_NIGHTS,
      Sheets.STAGES,
      Sheets.DAY_RULES),
  FIELD(
      5,
      "Field",
      "Tests, inspections and tuning once the garden is there",
      Sheets.TESTS,
      Sheets.CANS,
      Sheets.INSPECTION,
      Sheets.CONTROLLER,
      Sheets.VERDICTS),
  RETROFIT(
      6, "Retrofit", "The zones as found, and what is kept and new", Sheets.FOUND, Sheets.TAKEOFF),
  ESTIMATE(
      7,
      "Estimate",
      "Parts, labour and the price",
      Sheets.ESTIMATE,
      Sheets.COUNTS,
      Sheets.PARTS,
      Sheets.CREWS,
      Sheets.CURRENCIES,
      Sheets.SECTIONS,
      Sheets.EXTRAS),
  SAVINGS(
      8,
      "Savings",
      "Whether the work pays: bills, rebates and years",
      Sheets.SAVINGS,
      Sheets.USE,
      Sheets.RATES,
      Sheets.REBATES,
      Sheets.CASES,
      Sheets.YEARS),
  OWN(
      9,
      "Own",
      "Alternatives, ranges, columns and tables of your own",
      Sheets.ALTERNATIVES,
      Sheets.CHANGES,
      Sheets.RANGES,
      Sheets.OWN_COLUMNS,
      Sheets.OWN_PLANTS,
      Sheets.OWN_EMITTERS,
      Sheets.OWN_SOILS);

  private final int digit;
  private final String words;
  private final String about;

  /** Identifiers with a blank between them: a constant should hold nothing that could change. */
  private final String tables;

  SheetGroup(int digit, String words, String about, String... tables) {
    this.digit = digit;
    this.words = words;
    this.about = about;
    this.tables = String.join(" ", tables);
  }

  /** Returns what a person calls it. */
  public String words() {
    return words;
  }

  /** Returns what its sheets are for, in a sentence without a full stop. */
  public String about() {
    return about;
  }

  /** Returns the identifiers of its sheets in their order. */
  public List<String> tables() {
    return List.of(tables.split(" ", -1));
  }

  /** Returns the digit that brings it to the front, together with the key for commands. */
  public int digit() {
    return digit;
  }

  /** Returns the group of a sheet; that of the site for a sheet nobody has placed. */
  public static SheetGroup of(String table) {
    return Arrays.stream(values())
        .filter(group -> group.tables().contains(table))
        .findFirst()
        .orElse(SITE);
  }

  /** Returns the title of a sheet as words: in a workbook it has to be one. */
  public static String caption(TableDefinition table) {
    String title = table.title();
    String apart = title.replaceAll("(?<=\\p{Lower})(?=\\p{Upper})", " ");
    return apart.substring(0, 1) + apart.substring(1).toLowerCase(Locale.ROOT);
  }
}
