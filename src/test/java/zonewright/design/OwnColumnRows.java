package zonewright.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;

/** Defines columns of one's own in a design, as somebody who fills their sheet in. */
public final class OwnColumnRows {
  private OwnColumnRows() {}

  /**
   * Adds one.
   *
   * @param cells what stands in its row: name, sheet, kind, equation, least, most, note; fewer
   *     leave the others blank
   */
  public static void add(Design design, String... cells) {
    List<Entry> entries = new ArrayList<>();
    for (String cell : Arrays.copyOf(cells, 7)) {
      entries.add(cell == null || cell.isEmpty() ? Entry.BLANK : new Entry.Words(cell));
    }
    // decimals are left as usual for the kind
    entries.add(4, Entry.BLANK);
    design.book().perform(design.edits().appended(Sheets.OWN_COLUMNS, List.of(entries)));
  }

  /** Adds some that use much of what the language has: invented wishes of a designer. */
  public static void addSome(Design design) {
    add(design, "Cost a year", "Zones", "money", "Water price * Volume a year / 1 gal");
    add(design, "Water price", "Site", "money", "0.0125");
    add(design, "Share of the flow", "Zones", "share", "Zone flow / SUM(Zone flow)", "", "30 %");
    add(
        design,
        "Half runs",
        "Zones",
        "time in minutes",
        "IF(Run time a week > 30 min; CEILING(Run time a week / 2; 5 min); \"short\")");
    add(design, "Mean area", "Site", "area", "AVERAGE(Zones.Area)");
    add(design, "Zones of it", "Programs", "whole number", "COUNTIF(Zones.Program; Program)");
    add(design, "Off the mean", "Zones", "area", "ROUND(Area - Mean area; 10 ft2)");
    add(
        design,
        "Loam or not",
        "Zones",
        "plain number",
        "IF(OR(Soil = \"loam\"; Soil = \"sandy loam\"); 1; SQRT(Area in ft2) ^ 0.5)");
    add(design, "First program", "Zones", "plain number", "IF(Program = \"A\"; 1; 0)");
    add(design, "Summer", "Site", "plain number", "IF(Month shown = \"July\"; 1; 0)");
    add(design, "Half", "Months", "depth", "IF(Month = \"May\"; Reference ET / 2; Reference ET)");
  }
}
