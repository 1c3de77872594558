package zonewright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import zonewright.formula.Reference;
import zonewright.units.UnitSystem;

/** Edits of every kind a person can ask for, at random. */
public final class RandomEdits {
  private static final List<String> TEXTS =
      List.of(
          "",
          "",
          "0",
          "1",
          "2.5",
          "-3",
          "0.1",
          "7",
          "1e6",
          "99",
          "abc",
          "12 gpm",
          "1/3",
          "plain",
          "odd",
          "none",
          "other way",
          "one way",
          "A",
          "b",
          "C",
          "D",
          "5 ft 6 in",
          "3 m");

  private final Book book;
  private final Random random;
  private final Edits edits;

  public RandomEdits(Book book, Random random) {
    this.book = book;
    this.random = random;
    this.edits = new Edits(book);
  }

  private static List<Integer> rows(int at, int count) {
    return IntStream.range(at, at + count).boxed().toList();
  }

  /** Returns a next edit, most often the typing of something. */
  public Edit next() {
    String table = any(book.schema().tables()).id();
    int count = book.rows(table);
    boolean free = book.schema().table(table).rows() instanceof TableDefinition.Rows.Free;
    if (free && count == 0) {
      return edits.inserted(table, 0, 1 + random.nextInt(4));
    }
    if (count == 0) {
      return next();
    }
    int at = random.nextInt(count);
    if (!free || random.nextInt(3) != 0) {
      return cells(table, at);
    }
    int some = 1 + random.nextInt(Math.min(3, count - at));
    return switch (random.nextInt(7)) {
      case 0, 1 -> edits.inserted(table, random.nextInt(count + 1), 1 + random.nextInt(3));
      case 2 -> edits.removed(table, at, some);
      case 3 -> edits.duplicated(table, rows(at, some));
      case 4 -> {
        List<Integer> others = new ArrayList<>(rows(0, count));
        others.removeAll(rows(at, some));
        yield others.isEmpty()
            ? edits.removed(table, rows(at, some))
            : edits.moved(table, rows(at, some), any(others), random.nextBoolean());
      }
      case 5 -> {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < count; i++) {
          order.add(i);
        }
        Collections.shuffle(order, random);
        yield edits.reordered(table, "sort", order);
      }
      default -> edits.switched(book.system() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US);
    };
  }

  /** Returns a next edit that leaves rows and units as they are. */
  Edit nextOfCells() {
    String table = any(book.schema().tables()).id();
    return book.rows(table) == 0 ? nextOfCells() : cells(table, random.nextInt(book.rows(table)));
  }

  private Edit cells(String table, int at) {
    List<Reference> columns =
        book.schema().table(table).columns().stream().map(Column::reference).toList();
    return switch (random.nextInt(8)) {
      case 0 ->
          edits.cleared(
              List.of(any(columns), any(columns)).stream().distinct().toList(), List.of(at));
      case 1 -> {
        List<Integer> rows = new ArrayList<>();
        for (int row = at; row < Math.min(at + 4, book.rows(table)); row++) {
          rows.add(row);
        }
        yield edits.filledDown(List.of(any(columns)), rows);
      }
      case 2 -> {
        int left = random.nextInt(columns.size());
        int height = 1 + random.nextInt(Math.min(3, book.rows(table) - at));
        List<List<String>> block = new ArrayList<>();
        for (int i = 0; i < height; i++) {
          block.add(List.of(any(TEXTS), any(TEXTS)));
        }
        yield edits.pasted(table, columns, at, left, block);
      }
      default -> edits.typed(any(columns), at, any(TEXTS));
    };
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
