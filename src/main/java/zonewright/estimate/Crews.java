package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CREWS;
import static zonewright.trade.Sheets.ITEM;
import static zonewright.trade.Sheets.PRICE;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the crews: people of two rates, and what an hour of one of them costs in the mean. */
public final class Crews {
  public static final Column CREW_NAME =
      Column.words(CREWS, "crew", "Crew")
          .band(ITEM)
          .means("Name of the crew, as items of the sheet Parts name it.")
          .build();

  public static final Column LEADERS = people("leaders", "Leaders", number(1), "One unless typed.");

  public static final Column LEADER_RATE =
      rate("leader-rate", "Leader rate").means("Cost of an hour of one leader.").build();

  public static final Column WORKERS =
      people("workers", "Workers", number(0), "None unless typed.");

  public static final Column WORKER_RATE =
      rate("worker-rate", "Worker rate")
          .optional()
          .means("Cost of an hour of one worker. Needed only where the crew has workers.")
          .build();

  public static final Column PEOPLE =
      Column.calculated(CREWS, "people", "People", QuantityKind.COUNT, LEADERS.plus(WORKERS))
          .band(PRICE)
          .means("How many they are.")
          .source("By definition.")
          .build();

  private static final Formula OF_WORKERS =
      Formula.when(WORKERS.above(0))
          .then(WORKERS.times(WORKER_RATE))
          .otherwise(Formula.zero(QuantityKind.PRICE_PER_HOUR));

  public static final Column AN_HOUR =
      Column.calculated(
              CREWS,
              "an-hour",
              "Crew an hour",
              QuantityKind.PRICE_PER_HOUR,
              LEADERS.times(LEADER_RATE).plus(OF_WORKERS))
          .band(PRICE)
          .means("What an hour of the whole crew costs.")
          .source("By definition.")
          .build();

  public static final Column RATE =
      Column.calculated(
              CREWS,
              "rate",
              "Rate of one",
              QuantityKind.PRICE_PER_HOUR,
              Formula.when(PEOPLE.above(0))
                  .then(AN_HOUR.over(PEOPLE))
                  .otherwise(Formula.doesNotApply("nobody", "The crew has no people.")))
          .band(PRICE)
          .decimals(4, 4)
          .means("An hour of one of them in the mean; labour hours are those of one worker.")
          .source("By definition.")
          .build();

  private Crews() {}

  /** Returns the columns of the sheet in their order. */
  public static List<Column> columns() {
    return List.of(CREW_NAME, LEADERS, LEADER_RATE, WORKERS, WORKER_RATE, PEOPLE, AN_HOUR, RATE);
  }

  private static Column people(String id, String name, Formula usual, String source) {
    return Column.defaulted(CREWS, id, name, QuantityKind.COUNT, usual)
        .band(ITEM)
        .within(Bounds.from(0, 1000, Units.ONE).wholeNumbers())
        .means("How many of the crew they are.")
        .source(source)
        .build();
  }

  private static Column.Builder rate(String id, String name) {
    return Column.input(CREWS, id, name, QuantityKind.PRICE_PER_HOUR)
        .band(PRICE)
        .within(Bounds.from(0, 10_000, Units.MONEY_PER_HOUR));
  }
}
