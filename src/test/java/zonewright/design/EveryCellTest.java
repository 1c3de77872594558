package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.climate.WeatherSite;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * The number in a cell and the number its working arrives at are the same, in every cell, to the
 * last bit.
 */
class EveryCellTest {
  static void numbersAndWorkingsAgree(Book book) {
    for (TableDefinition table : book.schema().tables()) {
      for (int row = 0; row < book.rows(table.id()); row++) {
        for (Column column : table.columns()) {
          if (column.content() == Column.Content.NUMBER) {
            double number = book.number(column.reference(), row);
            Outcome outcome = book.working(column.reference(), row).outcome();
            assertThat(outcome.number())
                .as("%s, row %d: %s", column.reference().key(), row, outcome.sentence())
                .isEqualTo(Double.valueOf(number));
          }
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void inTheDemoGarden(UnitSystem system) {
    numbersAndWorkingsAgree(Demo.libraryGarden(system).book());
  }

  @Test
  void aroundEveryChoiceOfTheSite() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    Book book = design.book();
    for (int month = 0; month < 12; month++) {
      book.perform(design.edits().typed(Rain.MONTH_RAIN.reference(), month, month + " in"));
    }
    for (Column column : book.schema().table(Sheets.SITE).columns()) {
      if (column.usualWord().isPresent()) {
        for (String word : book.choices(column)) {
          book.perform(design.edits().typed(column.reference(), 0, word));
          numbersAndWorkingsAgree(book);
        }
        book.undo();
      }
    }
  }

  @Test
  void asACellIsTypedAfterAnother() {
    Design design = Design.blank(UnitSystem.SI);
    Book book = design.book();
    book.perform(design.edits().inserted(Sheets.ZONES, 0, 3));
    numbersAndWorkingsAgree(book);
    book.perform(design.edits().typed(Climate.PLACE.reference(), 0, "CIMIS zone 15"));
    numbersAndWorkingsAgree(book);
    book.perform(design.edits().typed(WeatherSite.LATITUDE.reference(), 0, "36.7"));
    numbersAndWorkingsAgree(book);
    for (Column column : book.schema().table(Sheets.ZONES).columns()) {
      if (column.takesEntries()) {
        String text = column.words().isPresent() ? book.choices(column).get(0) : "0.5";
        book.perform(design.edits().typed(column.reference(), 1, text));
        numbersAndWorkingsAgree(book);
      }
    }
  }
}
