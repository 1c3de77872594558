package zonewright.sheet;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Lengths of things, sorted into groups and added up: a small book to try sheets on. */
final class Ledger {
  static final Column GROUP = Column.words("groups", "group", "Group").build();
  static final Column NAME = Column.words("things", "name", "Name").build();
  static final Column IN_GROUP =
      Column.choice("things", "in", "In group", new WordList.RowsOf("groups")).build();
  static final Column LENGTH =
      Column.input("things", "length", "Length", QuantityKind.LENGTH)
          .within(Bounds.above(0, 100, Units.FOOT))
          .build();
  static final Column SPARE =
      Column.defaulted("things", "spare", "Spare", QuantityKind.LENGTH, LENGTH.times(2)).build();
  static final Column BOTH =
      Column.calculated("things", "both", "Both", QuantityKind.LENGTH, LENGTH.plus(SPARE)).build();
  static final Column OTHER =
      Column.calculated("things", "other", "Other", QuantityKind.FACTOR, Formula.number(1).plus(1))
          .build();
  static final Column GROUP_TOTAL =
      Column.calculated(
              "groups",
              "total",
              "Total",
              QuantityKind.LENGTH,
              Matching.rows(IN_GROUP, GROUP).sum(LENGTH))
          .build();
  static final Column TOTAL =
      Column.calculated("site", "total", "Total", QuantityKind.LENGTH, LENGTH.sum()).build();

  private Ledger() {}

  static Schema schema() {
    return new Schema(
        List.of(
            new TableDefinition(
                "site", "Site", "site", new TableDefinition.Rows.One(), List.of(TOTAL)),
            new TableDefinition(
                "groups",
                "Groups",
                "group",
                new TableDefinition.Rows.Free(),
                List.of(GROUP, GROUP_TOTAL)),
            new TableDefinition(
                "things",
                "Things",
                "thing",
                new TableDefinition.Rows.Free(),
                List.of(NAME, IN_GROUP, LENGTH, SPARE, BOTH, OTHER))));
  }

  /**
   * Returns a book with the groups A and B and things of 1, 2 and 4 ft, the first in A, the rest in
   * B.
   */
  static Book book() {
    Book book = new Book(schema(), UnitSystem.US);
    Edits edits = new Edits(book);
    book.start(
        edits.appended(
            "groups", List.of(List.of(new Entry.Words("A")), List.of(new Entry.Words("B")))));
    book.start(
        edits.appended(
            "things", List.of(thing("one", "A", 1), thing("two", "B", 2), thing("three", "B", 4))));
    return book;
  }

  private static List<Entry> thing(String name, String group, double length) {
    return List.of(new Entry.Words(name), new Entry.Words(group), new Entry.Figure(length));
  }
}
