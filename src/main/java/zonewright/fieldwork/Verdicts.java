package zonewright.fieldwork;

import static zonewright.trade.Sheets.SEEN;
import static zonewright.trade.Sheets.TUNING;
import static zonewright.trade.Sheets.VERDICTS;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the tuning log: how zones looked, and what was done about it. */
public final class Verdicts {
  public static final Column LOOK =
      Column.words(VERDICTS, "look", "Look").band(SEEN).means("Number of the entry.").build();

  public static final Column DATE =
      Column.input(VERDICTS, "date", "Date", QuantityKind.DATE)
          .band(SEEN)
          .within(FieldDates.ANY)
          .means("The day somebody looked: best just before a watering day.")
          .build();

  public static final Column ZONE =
      Column.choice(VERDICTS, "zone", "Zone", new WordList.RowsOf(ZONES))
          .band(SEEN)
          .means("The zone looked at.")
          .build();

  public static final Column VERDICT =
      Column.choice(VERDICTS, "verdict", "Verdict", new WordList.Fixed(Judgement.words()))
          .band(SEEN)
          .means(
              "How plants and soil of the zone are: feel the soil a finger deep, not the surface.")
          .build();

  public static final Column SHOWN =
      Column.input(VERDICTS, "shown", "Percent shown", QuantityKind.SHARE)
          .band(SEEN)
          .within(Bounds.from(0, 3, Units.ONE))
          .optional()
          .means("The percent the controller showed that day, where there is one.")
          .build();

  public static final Column NOTE =
      Column.words(VERDICTS, "note", "Note")
          .band(SEEN)
          .optional()
          .means("What else was seen.")
          .build();

  public static final Column OVER =
      Column.calculated(
              VERDICTS,
              "over",
              "Shown less asked",
              QuantityKind.SHARE,
              Formula.when(SHOWN.given())
                  .then(SHOWN.minus(Watching.percentOf(DATE)))
                  .otherwise(Formula.doesNotApply("not read", "No percent was written down.")))
          .band(SEEN)
          .means("Points the controller showed above what the month asks; below where negative.")
          .source("Percent shown less percent of the baseline, sheet Months.")
          .build();

  public static final Column DONE =
      Column.words(VERDICTS, "done", "Taken into account")
          .band(TUNING)
          .optional()
          .means(
              "What was changed because of it, and when. A verdict with something here is history and is not weighed again.")
          .build();

  /** All columns in their usual order. */
  public static final List<Column> ALL =
      List.of(LOOK, DATE, ZONE, VERDICT, SHOWN, OVER, NOTE, DONE);

  private Verdicts() {}
}
