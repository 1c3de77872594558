package zonewright.whatif;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import zonewright.alternatives.AlternativeSheets;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.design.Design;
import zonewright.design.NamedCell;
import zonewright.design.SheetsInUse;
import zonewright.estimate.BuildUp;
import zonewright.formula.Outcome;
import zonewright.nights.NightWords;
import zonewright.nights.NightsPlan;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.timetable.NightPlan;
import zonewright.units.QuantityKind;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** A figure by which alternatives of a design are compared. */
sealed interface ComparedFigure {
  /** What adds up over the rows of a sheet. */
  Set<QuantityKind> ADDS_UP =
      EnumSet.of(
          QuantityKind.AREA,
          QuantityKind.VOLUME,
          QuantityKind.MINUTES,
          QuantityKind.HOURS,
          QuantityKind.MONEY,
          QuantityKind.ENERGY,
          QuantityKind.PIPE_LENGTH,
          QuantityKind.COUNT);

  /** Returns what a person calls it. */
  String name();

  /** Returns it as it is shown, with its unit; empty where a design has none. */
  String shown(Design design);

  /** What stands in a cell, found by the names in each design. */
  record OfCell(String name, String row, Column column) implements ComparedFigure {
    @Override
    public String shown(Design design) {
      Book book = design.book();
      TableDefinition table = book.schema().table(column.reference().table());
      return SheetsInUse.uses(book, table)
              && NamedCell.in(book, table.title() + ": " + column.name(), row)
                  instanceof NamedCell.OfRow cell
          ? ComparedFigure.shown(book, column, cell.row())
          : "";
    }
  }

  /** What the rows of a sheet come to. */
  record Sum(String name, Column column) implements ComparedFigure {
    @Override
    public String shown(Design design) {
      Book book = design.book();
      String table = column.reference().table();
      double[] numbers =
          IntStream.range(0, book.rows(table))
              .filter(row -> book.counts(table, row))
              .mapToDouble(row -> book.number(column.reference(), row))
              .toArray();
      double sum = 0;
      for (double number : numbers) {
        sum += number;
      }
      return numbers.length == 0 || Double.isNaN(sum)
          ? ""
          : book.shown(column.reference(), new Outcome.Amount(sum));
    }
  }

  /** When the longest night ends, and what does not fit in it. */
  record EndOfNight(String name) implements ComparedFigure {
    @Override
    public String shown(Design design) {
      Optional<NightsPlan> plan = design.nights().plan();
      Optional<NightPlan> longest = plan.flatMap(NightsPlan::longestNight);
      return longest
          .map(
              night ->
                  NightWords.time(night.finishMinute())
                      + (plan.get().complete() ? "" : ", not all fits"))
          .orElse("");
    }
  }

  /** How many findings there are, but notes. */
  record FindingsThere(String name) implements ComparedFigure {
    @Override
    public String shown(Design design) {
      long count =
          design.findings().stream().filter(each -> each.severity() != Severity.NOTE).count();
      return Long.toString(count);
    }
  }

  private static String shown(Book book, Column column, int row) {
    Outcome outcome = book.outcome(column.reference(), row);
    return outcome instanceof Outcome.Amount || outcome instanceof Outcome.Words
        ? book.shown(column.reference(), outcome)
        : "";
  }

  /** What was read of the names of figures. */
  record Chosen(List<ComparedFigure> figures, List<String> problems) {}

  /** Returns the figures that a design says its alternatives are compared by. */
  static Chosen of(Book book) {
    Outcome words = book.outcome(AlternativeSheets.COMPARED.reference(), 0);
    return words instanceof Outcome.Words names
        ? named(book, names.text())
        : new Chosen(usual(), List.of());
  }

  private static Chosen named(Book book, String names) {
    List<ComparedFigure> figures = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (String name : names.split(";", -1)) {
      String plain = name.strip();
      NamedCell found = plain.isEmpty() ? new NamedCell.Unclear("") : NamedCell.in(book, plain);
      if (found instanceof NamedCell.OfRow cell) {
        boolean single = book.schema().table(cell.column().reference().table()).single();
        figures.add(new OfCell(plain, single ? "" : rowName(book, cell), cell.column()));
      } else if (found instanceof NamedCell.OfAll all && ADDS_UP.contains(all.column().kind())) {
        figures.add(new Sum(all.column().name() + ", all rows together", all.column()));
      } else if (found instanceof NamedCell.OfAll all) {
        problems.add(
            "%s does not add up over rows; say of which, as “%s of 1”."
                .formatted(all.column().name(), all.column().name()));
      } else if (found instanceof NamedCell.Unclear unclear && !unclear.sentence().isEmpty()) {
        problems.add(unclear.sentence());
      }
    }
    return new Chosen(figures, problems);
  }

  private static String rowName(Book book, NamedCell.OfRow cell) {
    return NamedCell.names(book, book.schema().table(cell.column().reference().table()))
        .get(cell.row());
  }

  private static List<ComparedFigure> usual() {
    List<ComparedFigure> figures = new ArrayList<>();
    figures.add(cell(SiteBudget.TOTAL_AREA));
    figures.add(cell(SiteBudget.SITE_WEEK));
    figures.add(cell(SiteBudget.SITE_YEAR));
    figures.add(new Sum("Run time a week, all zones together", Demand.RUN_TIME_PER_WEEK));
    figures.add(new Sum("Cycles a watering day, all zones together", CycleAndSoak.CYCLES));
    figures.add(new EndOfNight("End of the longest night"));
    figures.add(cell(WaterSense.LEFT_OVER));
    figures.add(cell(Ordinance.LEFT_OVER));
    figures.add(cell(LocalRule.LEFT_OVER));
    figures.add(cell(BuildUp.TOTAL));
    figures.add(new FindingsThere("Findings (without notes)"));
    return figures;
  }

  private static ComparedFigure cell(Column column) {
    return new OfCell(column.name(), "", column);
  }
}
