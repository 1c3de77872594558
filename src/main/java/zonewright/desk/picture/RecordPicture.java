package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.climate.Climate;
import zonewright.climate.RecordedWeather;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/** The months of a weather record as a design keeps them: what was not exceeded, and the mean. */
final class RecordPicture implements Picture {
  private static final String NAME = "Measured years: reference ET of the months";
  private static final Map<String, Column> LINES = new LinkedHashMap<>();

  static {
    LINES.put("9 years of 10", RecordedWeather.IN_NINE);
    LINES.put("5 years of 10", RecordedWeather.IN_FIVE);
    LINES.put("mean", RecordedWeather.MEAN);
  }

  @Override
  public String id() {
    return "record";
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Subject subject() {
    return Subject.whole(Sheets.RECORD);
  }

  @Override
  public Drawing of(Design design, int row) {
    Book book = design.book();
    List<YearBandDrawing.Line> lines = new ArrayList<>();
    LINES.forEach(
        (name, column) -> {
          List<Double> months = new ArrayList<>();
          for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
            months.add(book.number(column.reference(), month));
          }
          if (months.stream().noneMatch(depth -> Double.isNaN(depth))) {
            lines.add(new YearBandDrawing.Line(name, months));
          }
        });
    if (lines.isEmpty()) {
      return Drawing.saying(
          NAME, "No weather file has been read; Design, Read weather … takes one.");
    }
    List<Double> highest = lines.get(0).months();
    List<Double> lowest = lines.get(lines.size() - 1).months();
    return new YearBandDrawing(
        NAME, QuantityKind.DEPTH.unit(book.system()).symbol(), lines, lowest, highest);
  }
}
