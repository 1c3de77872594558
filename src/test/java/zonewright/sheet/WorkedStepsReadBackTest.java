package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.formula.Explainer;
import zonewright.formula.Formula;
import zonewright.formula.KnownRow;
import zonewright.formula.Outcome;
import zonewright.formula.PrintedArithmetic;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.units.UnitSystem;
import zonewright.workbook.RandomDesigns;

/** Every worked step, read back as arithmetic with ordinary precedence, gives its result. */
class WorkedStepsReadBackTest {
  @ParameterizedTest
  @CsvSource({"US, 1", "SI, 2"})
  void asPrintedWithinThePrintedRounding(UnitSystem system, long seed) {
    Book book = RandomDesigns.of(system, 2, seed, 0).book();
    List<String> wrong = new ArrayList<>();
    int[] told = {0};
    everyNumber(
        book,
        (column, row) -> {
          Working step = book.working(column.reference(), row);
          String shown = step.shown();
          if (column.wordsFor(step.outcome().number()).isEmpty()) {
            check(step.numbers(), shown, true, column, wrong);
            told[0] += tells(step.numbers()) ? 1 : 0;
          }
        });
    assertThat(wrong).isEmpty();
    assertThat(told[0]).as("steps narrow enough to tell right from wrong").isGreaterThan(250);
  }

  /** With all digits no lost bracket hides behind the rounding. */
  @ParameterizedTest
  @CsvSource({"US, 3", "SI, 4"})
  void withAllDigitsExactly(UnitSystem system, long seed) {
    Book book = RandomDesigns.of(system, 2, seed, 0).book();
    List<String> wrong = new ArrayList<>();
    everyNumber(
        book,
        (column, row) -> {
          Reference cell = column.reference();
          KnownRow exact = new Exact(new BookRow(book, cell.table(), row));
          Explainer.Explanation step =
              Explainer.explain(book.calculation().plain(cell), exact, book.cellName(cell, row));
          check(step.numbers(), "{" + step.outcome().number() + "}", false, column, wrong);
        });
    assertThat(wrong).isEmpty();
  }

  /** 0.623377 × (0 or more) × 1,500 ÷ 0.65, which lost its bracket, by hand: 5,898. */
  @Test
  void aLostBracketIsFound() {
    String sound = "0.623377 × (the larger of 0 and 8.4 in × 0.5 − 0.1 in) × 1,500 ft² ÷ 65 %";
    String lost = "0.623377 × the larger of 0 and 8.4 in × 0.5 − 0.1 in × 1,500 ft² ÷ 65 %";
    PrintedArithmetic.Range printed = PrintedArithmetic.read("5,898 gal", true);
    assertThat(PrintedArithmetic.read(sound, true).meets(printed)).isTrue();
    assertThatThrownBy(() -> PrintedArithmetic.read(lost, true))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static void everyNumber(Book book, BiConsumer<Column, Integer> check) {
    for (TableDefinition table : book.schema().tables()) {
      for (int row = 0; row < Math.min(2, book.rows(table.id())); row++) {
        for (Column column : table.columns()) {
          boolean typed =
              column.takesEntries()
                  && !(book.entry(column.reference(), row) instanceof Entry.Blank);
          if (column.formula().isPresent()
              && column.content() == Column.Content.NUMBER
              && !typed
              && book.outcome(column.reference(), row) instanceof Outcome.Amount) {
            check.accept(column, row);
          }
        }
      }
    }
  }

  private static boolean tells(String numbers) {
    return PrintedArithmetic.read(numbers, true).tells();
  }

  private static void check(
      String numbers, String shown, boolean rounded, Column column, List<String> wrong) {
    try {
      PrintedArithmetic.Range read = PrintedArithmetic.read(numbers, rounded);
      if (!read.meets(PrintedArithmetic.read(shown, rounded))) {
        wrong.add("%s: %s is %s, not %s".formatted(column, numbers, read, shown));
      }
    } catch (IllegalArgumentException problem) {
      wrong.add(column + ": " + problem.getMessage());
    }
  }

  /** A row whose numbers are printed with all their digits. */
  private record Exact(BookRow row) implements KnownRow {
    @Override
    public String shown(Reference column, double value) {
      return (value < 0 ? "-" : "") + "{" + Math.abs(value) + "}";
    }

    @Override
    public Outcome outcome(Reference cell) {
      return row.outcome(cell);
    }

    @Override
    public boolean given(Reference cell) {
      return row.given(cell);
    }

    @Override
    public Outcome gathered(Formula.Aggregate gather) {
      return row.gathered(gather);
    }

    @Override
    public Outcome matched(Formula.Where where, double than) {
      return row.matched(where, than);
    }

    @Override
    public Outcome found(Formula.RowLookup find) {
      return row.found(find);
    }

    @Override
    public int rows(Reference column) {
      return row.rows(column);
    }

    @Override
    public Outcome picked(Reference column, int position) {
      return row.picked(column, position);
    }

    @Override
    public LookedUp lookedUp(String word, ReferenceTable.Numbers column) {
      LookedUp found = row.lookedUp(word, column);
      return found.outcome() instanceof Outcome.Amount amount
          ? new LookedUp(
              found.outcome(), () -> "{" + amount.value() + "}", () -> "", found.origin())
          : found;
    }
  }
}
