package zonewright.workbook.kit;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Native charts over cells of a sheet; they redraw when the cells change. */
public final class Charts {
  private static final String GRID = "D9DEDA";

  private Charts() {}

  /**
   * A row of values.
   *
   * @param name what the legend calls it
   * @param cells where its values stand
   * @param colour six hexadecimal digits
   */
  public record Series(String name, CellRangeAddress cells, String colour) {}

  /** Where a chart stands: from the upper left cell to before the lower right. */
  public record Place(int column, int row, int toColumn, int toRow) {}

  /** Draws upright bars side by side, and lines over them, against months or the like. */
  public static void barsAndLines(
      XSSFSheet sheet,
      Place place,
      String title,
      String unit,
      CellRangeAddress categories,
      List<Series> bars,
      List<Series> lines) {
    XSSFChart chart = chart(sheet, place, title);
    legend(chart);
    XDDFCategoryAxis bottom = chart.createCategoryAxis(AxisPosition.BOTTOM);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    values(left, unit);
    left.setCrosses(AxisCrosses.AUTO_ZERO);
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, bottom, left);
    data.setBarDirection(BarDirection.COL);
    data.setGapWidth(60);
    data.setVaryColors(false);
    bars.forEach(each -> fill(add(sheet, data, categories, each), each.colour()));
    chart.plot(data);
    if (!lines.isEmpty()) {
      XDDFLineChartData over = (XDDFLineChartData) chart.createData(ChartTypes.LINE, bottom, left);
      over.setVaryColors(false);
      for (Series each : lines) {
        XDDFLineChartData.Series series =
            (XDDFLineChartData.Series) add(sheet, over, categories, each);
        series.setSmooth(false);
        series.setMarkerStyle(MarkerStyle.NONE);
        XDDFLineProperties line = new XDDFLineProperties(solid(each.colour()));
        line.setWidth(2.25);
        series.setLineProperties(line);
      }
      chart.plot(over);
    }
  }

  /** Draws lying bars, the first on top, one for each name. */
  public static void lyingBars(
      XSSFSheet sheet, Place place, String title, CellRangeAddress categories, Series values) {
    XSSFChart chart = chart(sheet, place, title);
    XDDFCategoryAxis left = chart.createCategoryAxis(AxisPosition.LEFT);
    left.setOrientation(AxisOrientation.MAX_MIN);
    XDDFValueAxis bottom = chart.createValueAxis(AxisPosition.BOTTOM);
    values(bottom, "");
    bottom.setCrosses(AxisCrosses.MAX);
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, left, bottom);
    data.setBarDirection(BarDirection.BAR);
    data.setGapWidth(40);
    data.setVaryColors(false);
    fill(add(sheet, data, categories, values), values.colour());
    chart.plot(data);
  }

  private static XSSFChart chart(XSSFSheet sheet, Place place, String title) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFClientAnchor anchor =
        drawing.createAnchor(
            0, 0, 0, 0, place.column(), place.row(), place.toColumn(), place.toRow());
    XSSFChart chart = drawing.createChart(anchor);
    chart.setTitleText(title);
    chart.setTitleOverlay(false);
    chart.getFormattedTitle().getParagraph(0).getTextRuns().get(0).setFontSize(11d);
    return chart;
  }

  private static void legend(XSSFChart chart) {
    XDDFChartLegend legend = chart.getOrAddLegend();
    legend.setPosition(LegendPosition.BOTTOM);
    legend.setOverlay(false);
  }

  private static void values(XDDFValueAxis axis, String unit) {
    axis.setMinimum(0);
    if (!unit.isEmpty()) {
      axis.setTitle(unit);
    }
    XDDFLineProperties line = new XDDFLineProperties(solid(GRID));
    line.setWidth(0.75);
    axis.getOrAddMajorGridProperties().setLineProperties(line);
  }

  private static XDDFChartData.Series add(
      XSSFSheet sheet, XDDFChartData data, CellRangeAddress categories, Series series) {
    XDDFChartData.Series added =
        data.addSeries(
            XDDFDataSourcesFactory.fromArray(words(sheet, categories), place(sheet, categories)),
            XDDFDataSourcesFactory.fromArray(
                numbers(sheet, series.cells()), place(sheet, series.cells())));
    added.setTitle(series.name(), null);
    return added;
  }

  private static String place(XSSFSheet sheet, CellRangeAddress cells) {
    return cells.formatAsString(sheet.getSheetName(), true);
  }

  /** The values as the cells show them; the library would calculate the formulas itself. */
  private static Double[] numbers(XSSFSheet sheet, CellRangeAddress cells) {
    List<Double> numbers = new ArrayList<>();
    for (int row = cells.getFirstRow(); row <= cells.getLastRow(); row++) {
      XSSFCell cell = sheet.getRow(row).getCell(cells.getFirstColumn());
      numbers.add(type(cell) == CellType.NUMERIC ? cell.getNumericCellValue() : null);
    }
    return numbers.toArray(Double[]::new);
  }

  private static String[] words(XSSFSheet sheet, CellRangeAddress cells) {
    List<String> words = new ArrayList<>();
    for (int row = cells.getFirstRow(); row <= cells.getLastRow(); row++) {
      List<String> parts = new ArrayList<>();
      for (int column = cells.getFirstColumn(); column <= cells.getLastColumn(); column++) {
        XSSFCell cell = sheet.getRow(row).getCell(column);
        if (type(cell) == CellType.STRING) {
          parts.add(cell.getStringCellValue());
        }
      }
      words.add(String.join(" ", parts));
    }
    return words.toArray(String[]::new);
  }

  private static CellType type(XSSFCell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
  }

  /** Without fill properties of its own a bar cannot be seen in some programs. */
  private static void fill(XDDFChartData.Series series, String colour) {
    series.setFillProperties(solid(colour));
  }

  private static XDDFSolidFillProperties solid(String colour) {
    XDDFSolidFillProperties fill = new XDDFSolidFillProperties(XDDFColor.from(PresetColor.BLACK));
    fill.setColor(XDDFColor.from(HexFormat.of().parseHex(colour)));
    return fill;
  }
}
