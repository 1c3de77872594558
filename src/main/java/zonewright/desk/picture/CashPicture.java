package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.List;
import zonewright.design.Design;
import zonewright.estimate.Money;
import zonewright.formula.Outcome;
import zonewright.savings.Cases;
import zonewright.savings.Savings;
import zonewright.savings.Worth;
import zonewright.savings.Years;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;

/** The cash of a retrofit added up year by year, in three cases. */
final class CashPicture implements Picture {
  private static final String NAME = "Cumulative cash";

  @Override
  public String id() {
    return "cumulative-cash";
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Subject subject() {
    return Subject.whole(Sheets.SAVINGS);
  }

  @Override
  public Drawing of(Design design, int row) {
    Book book = design.book();
    double life = book.number(Savings.LIFE.reference(), 0);
    List<CashDrawing.Line> lines = new ArrayList<>();
    for (int at = 0; at < Cases.NAMES.size() && !Double.isNaN(life); at++) {
      List<Double> values = new ArrayList<>();
      for (int year = 0; year <= (int) life; year++) {
        values.add(book.number(Years.CUMULATIVE.get(at).reference(), year));
        if (Double.isNaN(values.get(year))) {
          return Drawing.saying(
              NAME, reason(book.outcome(Years.CUMULATIVE.get(at).reference(), year)));
        }
      }
      lines.add(new CashDrawing.Line(Cases.NAMES.get(at), values));
    }
    if (lines.isEmpty()) {
      return Drawing.saying(NAME, "The life of the equipment is not known.");
    }
    if (book.number(Savings.COST.reference(), 0) == 0) {
      return Drawing.saying(
          NAME,
          "Nothing is priced yet: fill the sheet Parts, or type a cost on the sheet Savings.");
    }
    return new CashDrawing(NAME, lines, paidBack(book));
  }

  private static String reason(Outcome outcome) {
    String sentence = outcome.sentence();
    return sentence.isEmpty() ? "The cash is not known yet." : "The cash " + sentence + ".";
  }

  private static String paidBack(Book book) {
    Outcome expected = book.outcome(Worth.PAID_BACK.reference(), 1);
    String value = Money.text(book, Worth.NET_PRESENT_VALUE, 1);
    return expected instanceof Outcome.Amount amount
        ? "as expected paid back in year %s, net present value %s"
            .formatted(Long.toString(Math.round(amount.value())), value)
        : "as expected not paid back in its life, net present value " + value;
  }
}
