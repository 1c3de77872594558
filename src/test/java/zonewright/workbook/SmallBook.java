package zonewright.workbook;

import java.util.List;
import zonewright.formula.Aggregation;
import zonewright.formula.Comparator;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Matching;
import zonewright.sheet.Book;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Catches of cups in tests, with tables alongside: what no sheet of a design has in one place.
 * Numbers are invented.
 */
final class SmallBook {
  static final Column TEST = Column.words("trials", "test", "Test").build();
  static final Column TARGET =
      Column.input("trials", "target", "Target", QuantityKind.CATCH).build();
  static final Column CUP = Column.words("cups", "cup", "Cup").build();
  static final Column OF_TEST =
      Column.choice("cups", "of-test", "Of test", new WordList.RowsOf("trials")).build();
  static final Column SIDE =
      Column.choice("cups", "side", "Side", new WordList.Fixed(List.of("north", "south"))).build();
  static final Column CAUGHT =
      Column.input("cups", "caught", "Caught", QuantityKind.CATCH)
          .within(Bounds.from(0, 500, Units.MILLILITRE))
          .build();
  static final Column PRICE =
      Column.input("extras", "price", "Price", QuantityKind.MONEY)
          .within(Bounds.from(0, 99, Units.MONEY))
          .build();
  static final Column EXTRA = Column.words("extras", "cup", "Cup").build();
  static final Column FURTHER = Column.words("further", "cup", "Cup").build();

  private SmallBook() {}

  private static Column number(String table, String id, QuantityKind kind, Formula formula) {
    return Column.calculated(table, id, id, kind, formula).build();
  }

  private static Matching cupsOfTest() {
    return Matching.rows(OF_TEST, TEST);
  }

  private static Matching cupsOfSameTest() {
    return Matching.rows(OF_TEST, OF_TEST);
  }

  static Schema schema() {
    Column rank =
        number(
            "cups",
            "rank",
            QuantityKind.COUNT,
            cupsOfSameTest().with(CAUGHT.reference(), Comparator.BELOW, CAUGHT).count().plus(1));
    Column doubled = number("extras", "doubled", QuantityKind.CATCH, CAUGHT.times(2));
    return new Schema(
        List.of(
            new TableDefinition(
                "trials",
                "Tests",
                "test",
                new TableDefinition.Rows.Free(),
                List.of(
                    TEST,
                    TARGET,
                    number("trials", "sum", QuantityKind.CATCH, cupsOfTest().sum(CAUGHT)),
                    number("trials", "count", QuantityKind.COUNT, cupsOfTest().count()),
                    number("trials", "largest", QuantityKind.CATCH, cupsOfTest().largest(CAUGHT)),
                    number("trials", "smallest", QuantityKind.CATCH, cupsOfTest().smallest(CAUGHT)),
                    number(
                        "trials",
                        "lowest two",
                        QuantityKind.CATCH,
                        cupsOfTest()
                            .with(rank.reference(), Comparator.AT_MOST, Formula.number(2))
                            .sum(CAUGHT)),
                    number(
                        "trials",
                        "above target",
                        QuantityKind.COUNT,
                        cupsOfTest().with(CAUGHT.reference(), Comparator.ABOVE, TARGET).count()),
                    number(
                        "trials",
                        "least of all",
                        QuantityKind.CATCH,
                        CAUGHT.gathered(Aggregation.SMALLEST)))),
            new TableDefinition(
                "cups",
                "Cups",
                "cup",
                new TableDefinition.Rows.Free(),
                List.of(
                    CUP,
                    OF_TEST,
                    SIDE,
                    CAUGHT,
                    rank,
                    number(
                        "cups",
                        "of target",
                        QuantityKind.FACTOR,
                        CAUGHT.over(TARGET.inRowOf(OF_TEST))),
                    number(
                        "cups",
                        "off target",
                        QuantityKind.CATCH,
                        CAUGHT.minus(TARGET.inRowOf(OF_TEST)).apply(FunctionKind.ABSOLUTE)),
                    number(
                        "cups",
                        "same side",
                        QuantityKind.COUNT,
                        cupsOfSameTest().and(SIDE.reference(), SIDE.reference()).count()),
                    number("cups", "from beside", QuantityKind.CATCH, doubled.plus(CAUGHT)))),
            new TableDefinition(
                "extras",
                "Extras",
                "cup",
                new TableDefinition.Rows.Alongside("cups"),
                List.of(
                    EXTRA,
                    PRICE,
                    doubled,
                    number(
                        "extras",
                        "rounded",
                        QuantityKind.MONEY,
                        PRICE.over(3).roundedTo(Units.CENT)))),
            new TableDefinition(
                "further",
                "Further",
                "cup",
                new TableDefinition.Rows.Alongside("cups"),
                List.of(
                    FURTHER,
                    number(
                        "further", "side by side", QuantityKind.FACTOR, doubled.over(CAUGHT))))));
  }

  /** Returns names that spreadsheets read signs in, two of one name, blanks and numbers no good. */
  static Book book(UnitSystem system) {
    Book book = new Book(schema(), system);
    Edits edits = new Edits(book);
    String[][] tests = {
      {"a*", "20"},
      {"ab", "30"},
      {">5", ""},
      {"~b?", "10"},
      {"twin", "1"},
      {"twin", "2"},
      {"empty", "9"}
    };
    String[][] cups = {
      {"1", "a*", "north", "10", "1"},
      {"2", "a*", "south", "25", "2"},
      {"3", "ab", "north", "30.5", "10"},
      {"4", "ab", "north", "40", ""},
      {"5", ">5", "south", "7", "0.5"},
      {"6", "~b?", "south", "8", "99.99"},
      {"7", "~B?", "", "8", "100"},
      {"8", "twin", "north", "11", "3"},
      {"", "ab", "north", "1", "5"},
      {"9", "ab", "south", "30.5", "0.1"},
      {"10", "", "south", "3", "7"},
      {"11", "gone", "south", "3", "many"},
      {"12", "twin", "south", "12", "0.045"},
    };
    book.start(edits.inserted("trials", 0, tests.length));
    book.start(edits.inserted("cups", 0, cups.length));
    for (int row = 0; row < tests.length; row++) {
      book.start(edits.typed(TEST.reference(), row, tests[row][0]));
      book.start(edits.typed(TARGET.reference(), row, tests[row][1]));
    }
    List<Column> columns = List.of(CUP, OF_TEST, SIDE, CAUGHT, PRICE);
    for (int row = 0; row < cups.length; row++) {
      for (int i = 0; i < columns.size(); i++) {
        book.start(edits.typed(columns.get(i).reference(), row, cups[row][i]));
      }
    }
    return book;
  }
}
