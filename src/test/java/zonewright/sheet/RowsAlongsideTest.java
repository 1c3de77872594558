package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.formula.Comparator;
import zonewright.formula.Matching;
import zonewright.formula.Outcome;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** A table alongside another, rows found by name, and rows that match: as a person meets them. */
class RowsAlongsideTest {
  private static final Column GROUP = Column.words("groups", "group", "Group").build();
  private static final Column PRICE =
      Column.input("groups", "price", "Price", QuantityKind.MONEY).build();
  private static final Column THING = Column.words("things", "thing", "Thing").build();
  private static final Column IN =
      Column.choice("things", "in", "In group", new WordList.RowsOf("groups")).build();
  private static final Column SIZE =
      Column.input("things", "size", "Size", QuantityKind.FACTOR).build();
  private static final Column COST =
      Column.calculated("things", "cost", "Cost", QuantityKind.MONEY, PRICE.inRowOf(IN).times(SIZE))
          .build();
  private static final Column RANK =
      Column.calculated(
              "things",
              "rank",
              "Rank",
              QuantityKind.COUNT,
              Matching.rows(IN, IN).with(SIZE.reference(), Comparator.AT_MOST, SIZE).count())
          .build();
  private static final Column LARGEST =
      Column.calculated(
              "groups",
              "largest",
              "Largest",
              QuantityKind.FACTOR,
              Matching.rows(IN, GROUP).largest(SIZE))
          .build();
  private static final Column NAME = Column.words("notes", "thing", "Thing").build();
  private static final Column EXTRA =
      Column.input("notes", "extra", "Extra", QuantityKind.FACTOR).build();
  private static final Column TOTAL =
      Column.calculated("notes", "total", "Total", QuantityKind.FACTOR, SIZE.plus(EXTRA)).build();

  private Book book;
  private Edits edits;

  @BeforeEach
  void threeThingsInTwoGroups() {
    book =
        new Book(
            new Schema(
                List.of(
                    table("groups", new TableDefinition.Rows.Free(), GROUP, PRICE, LARGEST),
                    table("things", new TableDefinition.Rows.Free(), THING, IN, SIZE, COST, RANK),
                    table(
                        "notes",
                        new TableDefinition.Rows.Alongside("things"),
                        NAME,
                        EXTRA,
                        TOTAL))),
            UnitSystem.US);
    edits = new Edits(book);
    book.start(edits.inserted("groups", 0, 2));
    book.start(edits.inserted("things", 0, 3));
    type(GROUP, 0, "pipes");
    type(GROUP, 1, "heads");
    type(PRICE, 0, "2");
    String[][] things = {
      {"a", "pipes", "5", "1"}, {"b", "heads", "3", "2"}, {"c", "pipes", "4", "3"}
    };
    for (int row = 0; row < 3; row++) {
      type(THING, row, things[row][0]);
      type(IN, row, things[row][1]);
      type(SIZE, row, things[row][2]);
      type(EXTRA, row, things[row][3]);
    }
  }

  private static TableDefinition table(String id, TableDefinition.Rows rows, Column... columns) {
    return new TableDefinition(id, id, id.substring(0, id.length() - 1), rows, List.of(columns));
  }

  private void type(Column column, int row, String text) {
    book.perform(edits.typed(column.reference(), row, text));
  }

  private List<String> beside() {
    return book.contents().rows("notes").stream()
        .map(
            row ->
                (row.entry(0) instanceof Entry.Words words ? words.text() : "")
                    + (row.entry(1) instanceof Entry.Figure figure ? " " + figure.value() : ""))
        .toList();
  }

  @Test
  void entriesStayBesideTheirRowWhateverIsDoneToIt() {
    assertThat(beside()).containsExactly("a 1.0", "b 2.0", "c 3.0");
    book.perform(edits.moved("things", List.of(0), 2, false));
    assertThat(beside()).containsExactly("b 2.0", "c 3.0", "a 1.0");
    book.perform(edits.inserted("things", 1, 1));
    assertThat(beside()).containsExactly("b 2.0", "4", "c 3.0", "a 1.0");
    book.perform(edits.removed("things", 2, 1));
    assertThat(beside()).containsExactly("b 2.0", "4", "a 1.0");
    book.perform(edits.typed(THING.reference(), 0, "bee"));
    assertThat(beside()).containsExactly("bee 2.0", "4", "a 1.0");
    book.perform(edits.duplicated("things", List.of(0)));
    assertThat(beside()).containsExactly("bee 2.0", "bee copy 2.0", "4", "a 1.0");
    for (int i = 0; i < 5; i++) {
      book.undo();
    }
    assertThat(beside()).containsExactly("a 1.0", "b 2.0", "c 3.0");
    for (int i = 0; i < 5; i++) {
      book.redo();
    }
    assertThat(beside()).containsExactly("bee 2.0", "bee copy 2.0", "4", "a 1.0");
  }

  @Test
  void formulasReadTheRowTheyStandBeside() {
    assertThat(book.number(TOTAL.reference(), 2)).isEqualTo(7);
    type(SIZE, 2, "10");
    assertThat(book.number(TOTAL.reference(), 2)).isEqualTo(13);
    type(SIZE, 2, "");
    assertThat(book.outcome(TOTAL.reference(), 2).sentence()).isEqualTo("needs thing c, Size");
  }

  @Test
  void namesAlongsideAreGivenAndPastingKeepsWithinTheRows() {
    book.perform(edits.typed(NAME.reference(), 0, "other"));
    assertThat(book.contents().row("notes", 0).entry(0)).isEqualTo(Entry.words("a"));
    book.perform(
        edits.pasted(
            "notes",
            List.of(EXTRA.reference()),
            1,
            0,
            List.of(List.of("7"), List.of("8"), List.of("9"))));
    assertThat(beside()).containsExactly("a 1.0", "b 7.0", "c 8.0");
  }

  @Test
  void aSnapshotKeepsWhatStandsAlongside() {
    book = new Book(book.schema(), book.snapshot());
    assertThat(beside()).containsExactly("a 1.0", "b 2.0", "c 3.0");
  }

  @Test
  void aRowIsFoundByTheNameChosenAndAWrongNameIsRefusedWithItsLikes() {
    assertThat(book.number(COST.reference(), 0)).isEqualTo(10);
    assertThat(book.outcome(COST.reference(), 1).sentence()).isEqualTo("needs group heads, Price");
    type(IN, 0, "pipe");
    assertThat(book.outcome(COST.reference(), 0).sentence())
        .isEqualTo("thing a, In group: “pipe” is not in the list; did you mean “pipes”?");
    type(IN, 0, "");
    assertThat(book.outcome(COST.reference(), 0).sentence()).isEqualTo("needs thing a, In group");
  }

  @Test
  void ofTwoRowsOfOneNameTheFirstIsFoundAndBothGatherTheSame() {
    type(GROUP, 1, "pipes");
    type(PRICE, 1, "9");
    assertThat(book.number(COST.reference(), 0)).isEqualTo(10);
    assertThat(book.number(LARGEST.reference(), 0)).isEqualTo(5);
    assertThat(book.number(LARGEST.reference(), 1)).isEqualTo(5);
  }

  @Test
  void rowsAreCountedAmongThoseWithTheSameWord() {
    assertThat(book.number(RANK.reference(), 0)).isEqualTo(2);
    assertThat(book.number(RANK.reference(), 1)).isEqualTo(1);
    assertThat(book.number(RANK.reference(), 2)).isEqualTo(1);
    type(SIZE, 2, "5");
    assertThat(book.number(RANK.reference(), 0)).isEqualTo(2);
    assertThat(book.number(RANK.reference(), 2)).isEqualTo(2);
    assertThat(RANK.equation().orElseThrow())
        .isEqualTo("number of rows where In group is this In group and Size ≤ Size of this row");
  }

  @Test
  void ofNoRowsThereIsNoLargestAndABlankOneIsNotZero() {
    type(IN, 1, "pipes");
    assertThat(book.outcome(LARGEST.reference(), 1))
        .isEqualTo(new Outcome.NotApplicable("none", "there is no thing to choose from"));
    type(SIZE, 1, "");
    assertThat(book.outcome(LARGEST.reference(), 0).sentence()).isEqualTo("needs thing b, Size");
  }

  @Test
  void tablesThatCannotStandAlongsideAndWordsOfTwoListsAreRefused() {
    TableDefinition groups = table("groups", new TableDefinition.Rows.One(), PRICE);
    TableDefinition notes = table("notes", new TableDefinition.Rows.Alongside("groups"), NAME);
    assertThatThrownBy(() -> new Schema(List.of(groups, notes)))
        .hasMessage(
            "notes stands alongside a table that is not declared before it, or not free to grow");
    Column wrong =
        Column.calculated(
                "things", "wrong", "Wrong", QuantityKind.COUNT, Matching.rows(IN, THING).count())
            .build();
    assertThatThrownBy(
            () ->
                new Schema(
                    List.of(
                        table("groups", new TableDefinition.Rows.Free(), GROUP),
                        table("things", new TableDefinition.Rows.Free(), THING, IN, wrong))))
        .hasMessage("things.in and things.thing are not words of one list");
  }
}
