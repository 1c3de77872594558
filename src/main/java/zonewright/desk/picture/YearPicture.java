package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.budget.SiteBudget;
import zonewright.budget.YearBalance;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/** The months of the year: what plants need, what rain gives, what is allowed and what is given. */
final class YearPicture implements Picture {
  private static final String NAME = "The year: need, rain and allowance";

  private final KnownZones known = new KnownZones();

  @Override
  public String id() {
    return "year";
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Subject subject() {
    return Subject.whole(Sheets.MONTHS);
  }

  @Override
  public Drawing of(Design design, int row) {
    return known
        .of(design)
        .map(some -> drawn(some.design().book(), NAME + some.without()))
        .orElseGet(() -> drawn(design.book(), NAME));
  }

  private static Drawing drawn(Book book, String title) {
    List<YearDrawing.Month> months = new ArrayList<>();
    for (int month = 0; month < book.rows(Sheets.MONTHS); month++) {
      Outcome need = book.outcome(YearBalance.NEED.reference(), month);
      if (!(need instanceof Outcome.Amount amount)) {
        return Drawing.saying(title, YearBalance.NEED.name() + ": " + need.sentence());
      }
      months.add(
          new YearDrawing.Month(
              Climate.MONTH_NAMES.get(month),
              amount.value(),
              number(book, YearBalance.FROM_RAIN, month).orElse(0.0),
              number(book, YearBalance.ALLOWED, month),
              number(book, SiteBudget.MONTH_VOLUME, month)));
    }
    if (months.stream().allMatch(month -> month.need() == 0)) {
      return Drawing.saying(title, "No zone has an area yet, so nothing is needed.");
    }
    return new YearDrawing(title, months, QuantityKind.VOLUME.unit(book.system()).symbol());
  }

  private static Optional<Double> number(Book book, Column column, int month) {
    double value = book.number(column.reference(), month);
    return Double.isNaN(value) ? Optional.empty() : Optional.of(value);
  }
}
