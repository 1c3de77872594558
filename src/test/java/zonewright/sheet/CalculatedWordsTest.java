package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.formula.Formula;
import zonewright.formula.Outcome;
import zonewright.units.UnitSystem;

/** Words of another table's rows that follow from a formula keep up with the names there. */
class CalculatedWordsTest {
  private static final Column GROUP = Column.words("groups", "group", "Group").build();
  private static final Column THING = Column.words("things", "thing", "Thing").build();
  private static final Column IN =
      Column.choice("things", "in", "In group", new WordList.RowsOf("groups")).optional().build();
  private static final Column SHOWN =
      Column.calculatedWord(
              "things",
              "shown",
              "Group shown",
              new WordList.RowsOf("groups"),
              Formula.when(IN.given())
                  .then(IN)
                  .otherwise(Formula.doesNotApply("–", "It is in no group.")))
          .build();

  @Test
  void aNewNameIsShownAtOnceAndARowWithoutAWordSaysSo() {
    Book book =
        new Book(
            new Schema(
                List.of(
                    new TableDefinition(
                        "groups",
                        "Groups",
                        "group",
                        new TableDefinition.Rows.Free(),
                        List.of(GROUP)),
                    new TableDefinition(
                        "things",
                        "Things",
                        "thing",
                        new TableDefinition.Rows.Free(),
                        List.of(THING, IN, SHOWN)))),
            UnitSystem.US);
    Edits edits = new Edits(book);
    book.perform(edits.inserted("groups", 0, 2));
    book.perform(edits.inserted("things", 0, 2));
    book.perform(edits.typed(GROUP.reference(), 0, "North"));
    book.perform(edits.typed(GROUP.reference(), 1, "South"));
    book.perform(edits.typed(IN.reference(), 0, "South"));
    assertThat(book.outcome(SHOWN.reference(), 0)).isEqualTo(new Outcome.Words("South"));
    assertThat(book.outcome(SHOWN.reference(), 1)).isInstanceOf(Outcome.NotApplicable.class);
    book.perform(edits.typed(GROUP.reference(), 1, "East"));
    assertThat(book.outcome(SHOWN.reference(), 0))
        .as("the word chosen names no group any more")
        .isInstanceOf(Outcome.Refused.class);
    book.perform(edits.typed(IN.reference(), 0, "East"));
    assertThat(book.outcome(SHOWN.reference(), 0)).isEqualTo(new Outcome.Words("East"));
    book.undo();
    book.undo();
    assertThat(book.outcome(SHOWN.reference(), 0)).isEqualTo(new Outcome.Words("South"));
  }
}
