package zonewright.retrofit;

import static zonewright.trade.Sheets.APPLICATION;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.MONTHLY;
import static zonewright.trade.Sheets.PRESENT_USE;
import static zonewright.trade.Sheets.TAKEOFF;
import static zonewright.trade.Sheets.ZONE;
import static zonewright.trade.Sheets.ZONES;
import static zonewright.trade.Sheets.ZONE_NIGHTS;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import zonewright.budget.MonthlyVolume;
import zonewright.budget.ZoneBudget;
import zonewright.emitters.Emitters;
import zonewright.emitters.FieldTested;
import zonewright.formula.Cells;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.CycleAndSoak;

/**
 * The columns of the sheet of zones as found. Most are the zones' own columns moved there, so that
 * both are calculated alike and nothing is declared twice.
 */
public final class AsFound {
  /** What a zone as found must come to: all else follows from how these are calculated. */
  private static final List<Column> RESULTS =
      List.of(ZoneBudget.VOLUME_PER_WEEK, MonthlyVolume.YEAR, CycleAndSoak.SOAK);

  /** Where a zone's columns stand: a zone as found has them all on one sheet. */
  static final List<String> FROM = List.of(ZONES, ZONE_NIGHTS, MONTHLY, TAKEOFF);

  public static final Column TESTED_RATE =
      Column.input(
              FOUND,
              FieldTested.RATE_BY_TEST.reference().column(),
              FieldTested.RATE_BY_TEST.name(),
              QuantityKind.RATE)
          .band(APPLICATION)
          .within(Bounds.above(0, 40, Units.INCH_PER_HOUR))
          .optional()
          .means(
              "Net precipitation rate that a catch-can test of the zone as found gave. Needed where its rate method is by field"
                  + " test: the sheet Tests belongs to the zones as proposed. Type the uniformity it gave as well.")
          .build();

  /** Tests are held against names of zones, not of zones as found. */
  private static final Map<Reference, Formula> WITHOUT_TESTS =
      Map.of(
          FieldTested.TESTS_IN_USE.reference(), Formula.number(0),
          FieldTested.RATE_BY_TEST.reference(), TESTED_RATE.asFormula(),
          FieldTested.TESTED_UNIFORMITY.reference(),
              Formula.doesNotApply("no test", "Type here the uniformity that was found."));

  public static final Column BECOMES =
      Column.choice(FOUND, "becomes", "Becomes", new WordList.RowsOf(ZONES))
          .band(ZONE)
          .optional()
          .means(
              "The proposed zone that takes this one's place. Leave it blank where the zone is taken out of use. Two zones as"
                  + " found may become one.")
          .build();

  public static final Column PRESENT_MINUTES =
      Column.input(FOUND, "present-minutes", "Minutes a week at present", QuantityKind.MINUTES)
          .band(PRESENT_USE)
          .within(Bounds.from(0, 10_080, Units.MINUTE))
          .optional()
          .means(
              "What the controller really runs the zone in a week while its seasonal setting is at 100 %: all starts of all days"
                  + " added up, as read from the controller.")
          .build();

  public static final Column PRESENT_VOLUME =
      Column.calculated(
              FOUND,
              "present-volume",
              "Present volume a week",
              QuantityKind.VOLUME,
              of(Emitters.ZONE_FLOW).times(PRESENT_MINUTES))
          .band(PRESENT_USE)
          .means("Water of a week as the controller runs now, at a seasonal setting of 100 %.")
          .source("Flow × time.")
          .build();

  public static final Column PRESENT_PART =
      Column.calculated(
              FOUND,
              "present-part",
              "Present part of the need",
              QuantityKind.SHARE,
              Formula.when(of(ZoneBudget.VOLUME_PER_WEEK).atMost(Formula.zero(QuantityKind.VOLUME)))
                  .then(
                      Formula.doesNotApply("no need", "The zone needs no water in the peak month."))
                  .otherwise(PRESENT_VOLUME.over(of(ZoneBudget.VOLUME_PER_WEEK))))
          .band(PRESENT_USE)
          .decimals(0, 0)
          .means(
              "What the controller gives in a week, as a part of what the zone as found needs in a week of the peak month: above 100 %"
                  + " it gives too much even then, and far more in the other months unless its seasonal setting follows them.")
          .source("By definition.")
          .build();

  private AsFound() {}

  /** Returns a column of the zones as it stands on the sheet of zones as found. */
  public static Reference of(Cells column) {
    Reference own = column.reference();
    return new Reference(FOUND, own.column(), own.name(), own.kind());
  }

  /**
   * Returns the columns of the sheet: those of the zones that the results need, in the zones'
   * order, and the sheet's own.
   *
   * @param zoneColumns all columns of the zones, the one that names them first
   * @param facts columns to keep although nothing follows from them, such as where the zone is
   * @param beside columns that hold a zone as found against the one it becomes
   */
  public static List<Column> columns(
      List<Column> zoneColumns, List<Column> facts, List<Column> beside) {
    Set<Reference> wanted = wanted(zoneColumns, facts);
    List<Column> columns = new ArrayList<>();
    for (Column column : zoneColumns) {
      if (column.reference().equals(FieldTested.RATE_BY_TEST.reference())) {
        columns.add(TESTED_RATE);
      } else if (wanted.contains(column.reference())) {
        columns.add(moved(column));
      }
      if (columns.size() == 1 && !columns.contains(BECOMES)) {
        columns.add(BECOMES);
      }
    }
    columns.addAll(beside);
    columns.add(PRESENT_MINUTES);
    columns.add(PRESENT_VOLUME);
    columns.add(PRESENT_PART);
    Takeoff.COMMON.forEach(column -> columns.add(moved(column)));
    return List.copyOf(columns);
  }

  private static Column moved(Column column) {
    return column.movedTo(FOUND, Set.copyOf(FROM), WITHOUT_TESTS);
  }

  private static Set<Reference> wanted(List<Column> zoneColumns, List<Column> facts) {
    Map<Reference, Column> known = new LinkedHashMap<>();
    zoneColumns.forEach(column -> known.put(column.reference(), column));
    Deque<Reference> open = new ArrayDeque<>();
    open.add(zoneColumns.get(0).reference());
    facts.forEach(column -> open.add(column.reference()));
    RESULTS.forEach(column -> open.add(column.reference()));
    Takeoff.COMMON.forEach(column -> open.addAll(needs(column)));
    Set<Reference> wanted = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      Reference next = open.poll();
      if (known.containsKey(next) && !WITHOUT_TESTS.containsKey(next) && wanted.add(next)) {
        open.addAll(needs(known.get(next)));
      }
    }
    return wanted;
  }

  private static Set<Reference> needs(Column column) {
    return column.formula().map(formula -> Dependencies.of(formula).cells()).orElse(Set.of());
  }
}
