package zonewright.design;

import static zonewright.trade.Sheets.PROJECT;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONE;
import static zonewright.trade.Sheets.ZONES;

import zonewright.sheet.Column;

/** Columns that say what the design is about; nothing is calculated from them. */
public final class Facts {
  public static final Column PROJECT_NAME =
      Column.words(SITE, "project", "Project")
          .band(PROJECT)
          .means("What the project is called.")
          .build();

  public static final Column LOCATION =
      Column.words(SITE, "location", "Location")
          .band(PROJECT)
          .optional()
          .means("Where the site is, in words.")
          .build();

  public static final Column PREPARED_BY =
      Column.words(SITE, "prepared-by", "Prepared by")
          .band(PROJECT)
          .optional()
          .means("Who answers for the design.")
          .build();

  public static final Column OFFICE =
      Column.words(SITE, "office", "Office's workbook")
          .band(PROJECT)
          .optional()
          .means("The workbook of the office whose tables and rules the design took last.")
          .build();

  public static final Column ZONE_NAME =
      Column.words(ZONES, "zone", "Zone")
          .band(ZONE)
          .means(
              "Number or name of the zone, as on the controller. A zone counts in totals once it has one.")
          .build();

  public static final Column ZONE_PLACE =
      Column.words(ZONES, "place", "Where")
          .band(ZONE)
          .optional()
          .means("Where the zone is, in a few words.")
          .build();

  public static final Column ZONE_NOTE =
      Column.words(ZONES, "note", "Note")
          .band(ZONE)
          .optional()
          .means("Anything worth remembering about the zone.")
          .build();

  private Facts() {}
}
