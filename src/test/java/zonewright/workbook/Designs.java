package zonewright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import zonewright.budget.SiteBudget;
import zonewright.climate.Climate;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.OwnColumnRows;
import zonewright.emitters.Emitters;
import zonewright.estimate.Currencies;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Tint;
import zonewright.soil.Soils;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.AllowedDays;
import zonewright.water.Demand;
import zonewright.water.DroughtStages;
import zonewright.water.SiteRules;

/** Designs to put through the workbook: the demo, and one in which much is wrong. Invented. */
final class Designs {
  private Designs() {}

  static Design demo(UnitSystem system) {
    return Demo.libraryGarden(system);
  }

  /** Blank, unreadable, unknown and impossible cells, and defaults typed over. */
  static Design broken(UnitSystem system) {
    Design design = Demo.libraryGarden(system);
    type(design, Emitters.AREA, 0, "");
    type(design, Emitters.AREA, 1, "about a tennis court");
    type(design, Soils.SOIL_TYPE, 2, "moon dust");
    type(design, Emitters.ZONE_FLOW, 3, "-5");
    type(design, Emitters.EMITTER_FLOW, 4, "-1");
    type(design, Soils.INTAKE_RATE, 5, "9 in/h");
    type(design, Plants.PLANT, 6, "");
    type(design, Plants.PLANT_FACTOR, 7, "0.55");
    type(design, Demand.WATERING_DAYS, 7, "2.5");
    type(design, Demand.WATERING_DAYS, 8, "2");
    type(design, Facts.ZONE_NAME, 9, "");
    type(design, Emitters.HEAD_SPACING, 10, "15 ft");
    type(design, Emitters.ROW_SPACING, 10, "0");
    type(design, Emitters.HEAD_SPACING, 11, "15 ft");
    type(design, Emitters.ROW_SPACING, 11, "13 ft");
    type(design, Emitters.RATE_METHOD, 11, Emitters.BY_SPACING);
    type(design, SiteBudget.ZONE_PROGRAM, 8, "Z");
    type(design, SiteBudget.ZONE_PROGRAM, 7, "");
    type(design, Facts.ZONE_NOTE, 0, "=SUM(A1:A9)");
    type(design, Facts.ZONE_NOTE, 1, "@home");
    type(design, Facts.ZONE_NOTE, 2, "-north side-");
    type(design, Facts.ZONE_NOTE, 3, "as _x0041_ stands, “quoted”, 温室, & <b>");
    type(design, Soils.SURFACE_STORAGE, 6, "0");
    Edits edits = design.edits();
    design.book().perform(edits.noted(Emitters.AREA.reference(), 2, "paced, =not taped\n_x0041_"));
    List<Reference> marked = List.of(Facts.ZONE_NOTE.reference(), Plants.PLANT_FACTOR.reference());
    design.book().perform(edits.tinted(marked, List.of(0, 7), Tint.VIOLET));
    return design;
  }

  /** The broken design with only its whole zones in it, so that its sums come to numbers. */
  static Design overridden(UnitSystem system) {
    Design design = Demo.libraryGarden(system);
    type(design, Emitters.ZONE_FLOW, 3, "28 gpm");
    type(design, Demand.WATERING_DAYS, 4, "3");
    type(design, Plants.ROOT_DEPTH, 0, "5 in");
    type(design, Emitters.RATE_METHOD, 1, Emitters.BY_AREA);
    type(design, Emitters.DISTRIBUTION_UNIFORMITY, 2, "58 %");
    type(design, SiteRules.GROSS_METHOD, 0, SiteRules.BY_EFFICIENCY);
    type(design, Climate.REFERENCE_ET, 6, "9.1 in");
    stage(design);
    OwnColumnRows.addSome(design);
    OwnTablesFileTest.addOwn(design);
    return design;
  }

  /** A stage in force, with days by house number and hours. */
  private static void stage(Design design) {
    design.book().perform(design.edits().inserted(Sheets.STAGES, 0, 2));
    type(design, DroughtStages.STAGE, 0, "Stage 1");
    type(design, DroughtStages.STAGE, 1, "Stage 2");
    type(design, DroughtStages.MOST_DAYS, 1, "2");
    type(design, DroughtStages.CUT, 1, "15 %");
    type(design, DroughtStages.STAGE_FROM, 1, "05:30");
    type(design, DroughtStages.STAGE_UNTIL, 1, "22:30");
    type(design, DroughtStages.IN_FORCE, 0, "Stage 2");
    design.book().perform(design.edits().inserted(Sheets.DAY_RULES, 0, 3));
    String[][] rules = {
      {"1", "", "all", "Mon Tue Thu Fri Sat"},
      {"2", "Stage 2", "even", "Tue Sat"},
      {"3", "Stage 2", "odd", "Wed Sun"}
    };
    for (int row = 0; row < rules.length; row++) {
      type(design, AllowedDays.RULE, row, rules[row][0]);
      type(design, AllowedDays.STAGE, row, rules[row][1]);
      type(design, AllowedDays.NUMBERS, row, rules[row][2]);
      type(design, AllowedDays.DAYS, row, rules[row][3]);
    }
    type(design, AllowedDays.HOUSE_NUMBER, 0, "1204");
  }

  /** Money without decimals, or with three, and items priced in another currency. */
  private static Design abroad(Design design) {
    Book book = design.book();
    type(design, JobFacts.CURRENCY, 0, book.system() == UnitSystem.US ? "KWD" : "JPY");
    book.perform(design.edits().inserted(Sheets.CURRENCIES, 0, 2));
    type(design, Currencies.CODE, 0, "EUR");
    type(design, Currencies.WORTH, 0, "161.237");
    type(design, Currencies.CODE, 1, "CHF");
    int items = book.rows(Sheets.PARTS);
    book.perform(design.edits().inserted(Sheets.PARTS, items, 3));
    for (int row = items; row < items + 3; row++) {
      type(design, Parts.ITEM_NAME, row, "Abroad " + row);
      type(design, Parts.COUNT, row, "7");
      type(design, Parts.PRICE, row, "3.485");
    }
    type(design, Parts.PRICE_IN, items, "EUR");
    type(design, Parts.PRICE_IN, items + 1, "CHF");
    return design;
  }

  /** No place, one month typed, no zones. */
  static Design empty(UnitSystem system) {
    Design design = Design.blank(system);
    type(design, Climate.REFERENCE_ET, 3, "4 in");
    return design;
  }

  private static List<Design> all() {
    List<Design> all = new ArrayList<>();
    for (UnitSystem system : UnitSystem.values()) {
      all.add(demo(system));
      all.add(broken(system));
      all.add(overridden(system));
      all.add(empty(system));
      all.add(RandomDesigns.of(system, Counts.of(12, 40), 20260 + all.size(), 0));
      all.add(abroad(RandomDesigns.of(system, Counts.of(12, 40), 30260 + all.size(), 6)));
    }
    return all;
  }

  /** Each kind of design in one unit system, in turn; in a long run in both. */
  static List<Design> eachKind() {
    List<Design> all = all();
    int kinds = all.size() / 2;
    return IntStream.range(0, all.size())
        .filter(at -> Counts.of(1, 2) == 2 || at / kinds == at % kinds % 2)
        .mapToObj(all::get)
        .toList();
  }

  static void type(Design design, Column column, int row, String text) {
    if (row < design.book().rows(column.reference().table())) {
      design.book().perform(design.edits().typed(column.reference(), row, text));
    }
  }

  /** Returns how many zones there are. */
  static int zones(Design design) {
    return design.book().rows(Sheets.ZONES);
  }
}
