package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import zonewright.formula.BlockColumn;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.units.UnitSystem;

/** Laws that every book keeps, whatever its formulas and whatever is done to it. */
class RandomBookLawsTest {
  private static Book filled(long seed, Random random, int rows) {
    Book book = new Book(RandomTables.schema(seed), UnitSystem.US);
    Edits edits = new Edits(book);
    book.start(edits.inserted(RandomTables.GROUPS, 0, 3));
    book.start(edits.inserted(RandomTables.ROWS, 0, rows));
    for (int row = 0; row < 3; row++) {
      book.start(
          edits.typed(
              book.schema().table(RandomTables.GROUPS).columns().get(0).reference(),
              row,
              List.of("A", "B", "C").get(row)));
    }
    RandomEdits more = new RandomEdits(book, random);
    for (int i = 0; i < 10 * Math.min(rows, 12); i++) {
      book.start(more.nextOfCells());
    }
    return book;
  }

  /** The blocks and the explanation of a cell are two readings of one formula. */
  @Property(tries = 100)
  void everyNumberIsTheOneItsExplanationGivesBitForBit(@ForAll long seed) {
    Book book = filled(seed, new Random(seed), 8);
    for (TableDefinition table : book.schema().tables()) {
      for (Column column : table.columns()) {
        for (int row = 0; row < book.rows(table.id()); row++) {
          agrees(book, column, row);
        }
      }
    }
  }

  /** As above where sums run over more than one block. */
  @Property(tries = 3)
  void numbersAndExplanationsAgreeBeyondOneBlock(@ForAll long seed) {
    Random random = new Random(seed);
    Book book = filled(seed, random, BlockColumn.BLOCK + 30);
    for (TableDefinition table : book.schema().tables()) {
      for (Column column : table.columns()) {
        for (int i = 0; i < 3; i++) {
          agrees(book, column, random.nextInt(book.rows(table.id())));
        }
      }
    }
  }

  private static void agrees(Book book, Column column, int row) {
    if (column.content() == Column.Content.WORDS) {
      return;
    }
    double number = book.number(column.reference(), row);
    Outcome outcome = book.working(column.reference(), row).outcome();
    if (column.content() == Column.Content.CHOICE) {
      assertThat(outcome instanceof Outcome.Words).isEqualTo(!Double.isNaN(number));
      return;
    }
    assertThat(Double.doubleToLongBits(outcome.number()))
        .as("%s in row %d: %s and %s", column, row, number, outcome)
        .isEqualTo(Double.doubleToLongBits(number));
    assertThat(outcome.sentence().isEmpty())
        .as("%s gives a reason exactly where it has no number: %s", column, outcome)
        .isEqualTo(outcome instanceof Outcome.Amount || outcome instanceof Outcome.Blank);
  }

  @Property(tries = 60)
  void whatAnEditRecalculatesIsWhatAFullCalculationWouldChange(@ForAll long seed) {
    Random random = new Random(seed);
    Book book = filled(seed, random, 6);
    RandomEdits edits = new RandomEdits(book, random);
    List<Changes> heard = new ArrayList<>();
    book.listen(heard::add);
    for (int i = 0; i < 15; i++) {
      Snapshot before = Snapshot.of(book);
      heard.clear();
      book.perform(edits.nextOfCells());
      Snapshot after = Snapshot.of(book);
      assertThat(after.bits()).isEqualTo(Snapshot.of(Snapshot.freshCopy(book)).bits());
      Map<Reference, BitSet> told = heard.isEmpty() ? Map.of() : heard.get(0).cells();
      assertThat(heard).hasSizeLessThanOrEqualTo(1);
      if (heard.isEmpty() || !heard.get(0).everything()) {
        for (Reference column : before.bits().keySet()) {
          BitSet differs = differences(before.bits().get(column), after.bits().get(column));
          BitSet said = told.getOrDefault(column, new BitSet());
          if (book.schema().column(column).takesEntries()) {
            differs.andNot(said);
            assertThat(differs.cardinality()).as("changes of %s not told", column).isZero();
          } else {
            assertThat(said).as("changes of %s", column).isEqualTo(differs);
          }
        }
      }
    }
  }

  private static BitSet differences(List<Long> before, List<Long> after) {
    BitSet differs = new BitSet();
    for (int row = 0; row < after.size(); row++) {
      differs.set(row, !before.get(row).equals(after.get(row)));
    }
    return differs;
  }

  @Property(tries = 100)
  void aListenerThatKeepsItsOwnCopyFromEventsAloneHoldsTheSheet(@ForAll long seed) {
    Random random = new Random(seed);
    Book book = filled(seed, random, 4);
    Mirror mirror = new Mirror(book);
    book.listen(mirror::hear);
    RandomEdits edits = new RandomEdits(book, random);
    for (int i = 0; i < 25; i++) {
      switch (random.nextInt(5)) {
        case 0 -> book.undo();
        case 1 -> book.redo();
        default -> book.perform(edits.next());
      }
      assertThat(mirror.bits).isEqualTo(Snapshot.of(book).bits());
      assertThat(mirror.bits).isEqualTo(Snapshot.of(Snapshot.freshCopy(book)).bits());
    }
  }

  /** A copy of the numbers, as a window would keep one. */
  private static final class Mirror {
    private final Book book;
    private final Map<Reference, List<Long>> bits = new HashMap<>();

    Mirror(Book book) {
      this.book = book;
      bits.putAll(Snapshot.of(book).bits());
    }

    void hear(Changes changes) {
      if (changes.everything()) {
        bits.clear();
        bits.putAll(Snapshot.of(book).bits());
        return;
      }
      Snapshot.of(book)
          .bits()
          .forEach(
              (column, numbers) -> {
                if (changes.anew(column.table())) {
                  bits.put(column, numbers);
                }
              });
      changes.cells().entrySet().stream()
          .filter(cells -> !changes.anew(cells.getKey().table()))
          .forEach(cells -> cells.getValue().stream().forEach(row -> heard(cells.getKey(), row)));
    }

    private void heard(Reference column, int row) {
      bits.get(column).set(row, Double.doubleToLongBits(book.number(column, row)));
    }
  }

  @Property(tries = 100)
  void undoingEverythingGivesBackTheSameBookAndRedoingTheOther(@ForAll long seed) {
    Random random = new Random(seed);
    Book book = filled(seed, random, 4);
    List<Snapshot> states = new ArrayList<>(List.of(Snapshot.of(book)));
    RandomEdits edits = new RandomEdits(book, random);
    for (int i = 0; i < 20; i++) {
      int noted = states.size() - 1;
      Edit edit = edits.next();
      book.perform(edit);
      if (book.journal().toUndo().filter(last -> last == edit).isPresent()) {
        states.add(Snapshot.of(book));
      } else {
        assertThat(Snapshot.of(book)).isEqualTo(states.get(noted));
      }
    }
    for (int i = states.size() - 2; i >= 0; i--) {
      book.undo();
      assertThat(Snapshot.of(book)).isEqualTo(states.get(i));
    }
    assertThat(book.journal().toUndo()).isEmpty();
    for (int i = 1; i < states.size(); i++) {
      book.redo();
      assertThat(Snapshot.of(book)).isEqualTo(states.get(i));
    }
    assertThat(book.journal().toRedo()).isEmpty();
  }

  @Property(tries = 100)
  void switchingUnitsBackAndForthGivesBackEveryEntry(@ForAll long seed) {
    Book book = filled(seed, new Random(seed), 5);
    Snapshot before = Snapshot.of(book);
    book.perform(new Edits(book).switched(UnitSystem.SI));
    book.perform(new Edits(book).switched(UnitSystem.US));
    assertThat(Snapshot.of(book)).isEqualTo(before);
  }
}
