package zonewright.estimate;

import static zonewright.trade.Sheets.COST;
import static zonewright.trade.Sheets.SECTIONS;

import java.util.List;
import zonewright.formula.Matching;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Columns of the estimate by section: what belongs together on a proposal. */
public final class Sections {
  public static final Column SECTION =
      Column.choice(SECTIONS, "section", "Section", Counted.SECTION_LIST)
          .band(COST)
          .means("A part of the estimate.")
          .build();

  public static final Column MATERIAL =
      sum("material", "Material", QuantityKind.MONEY, Parts.MATERIAL);

  public static final Column HOURS = sum("hours", "Hours", QuantityKind.HOURS, Parts.HOURS);

  public static final Column LABOUR = sum("labour", "Labour", QuantityKind.MONEY, Parts.LABOUR);

  public static final Column COST_OF_SECTION = sum("cost", "Cost", QuantityKind.MONEY, Parts.LINE);

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    return List.of(SECTION, MATERIAL, HOURS, LABOUR, COST_OF_SECTION);
  }

  private Sections() {}

  private static Column sum(String id, String name, QuantityKind kind, Column part) {
    return Column.calculated(
            SECTIONS, id, name, kind, Matching.rows(Parts.SECTION, SECTION).sum(part))
        .band(COST)
        .means("Sum over the items of the section, before overhead.")
        .source("By definition.")
        .build();
  }
}
