package zonewright.benchmark;

import java.util.Arrays;
import java.util.Map;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.budget.ZoneBudget;
import zonewright.sheet.Book;
import zonewright.sheet.Column;

/** The fewest zones to change for each allowance, by hand: sorted once, then looked up. */
final class PlainCuts {
  private final boolean[] named;
  private final Map<Column, double[]> results;
  private final double allowanceEt;
  private final double limit;
  private final double totalArea;
  private final double overPeakMonth;
  private final double overYear;
  private final double overLocal;

  PlainCuts(Book book, boolean[] named, Map<Column, double[]> results) {
    this.named = named;
    this.results = results;
    allowanceEt = book.number(WaterSense.MONTH_ET.reference(), 0);
    limit = book.number(LocalRule.LIMIT.reference(), 0);
    totalArea = book.number(SiteBudget.TOTAL_AREA.reference(), 0);
    overPeakMonth = -book.number(WaterSense.LEFT_OVER.reference(), 0);
    overYear = -book.number(Ordinance.LEFT_OVER.reference(), 0);
    overLocal = -book.number(LocalRule.LEFT_OVER.reference(), 0);
  }

  private double[] out(Column column) {
    return results.computeIfAbsent(column, any -> new double[named.length]);
  }

  void run(double[] area) {
    double[] required = out(WaterSense.REQUIRED);
    double[] perYear = out(ZoneBudget.VOLUME_PER_YEAR);
    double[] peakMonth = out(WaterSense.ABOVE_SHARE);
    double[] local = out(LocalRule.ABOVE_SHARE);
    for (int i = 0; i < named.length; i++) {
      peakMonth[i] = required[i] - 0.7 * (144.0 / 231 * allowanceEt * area[i]);
      local[i] = perYear[i] - limit * (area[i] / totalArea);
    }
    cut(peakMonth, overPeakMonth, out(WaterSense.LEAST_CUT));
    cut(out(Ordinance.ABOVE_SHARE), overYear, out(Ordinance.LEAST_CUT));
    cut(local, overLocal, out(LocalRule.LEAST_CUT));
    double[] factor = out(Ordinance.ZONE_FACTOR);
    double[] use = out(Ordinance.ESTIMATED_USE);
    double[] yearly = out(Ordinance.LEAST_CUT);
    double[] wanted = out(Ordinance.FACTOR_WANTED);
    for (int i = 0; i < named.length; i++) {
      wanted[i] = factor[i] * (1 - PlainLoop.over(yearly[i], use[i]));
    }
  }

  private void cut(double[] above, double excess, double[] cut) {
    double[] sorted = new double[named.length];
    int counted = 0;
    for (int i = 0; i < named.length; i++) {
      if (named[i]) {
        sorted[counted++] = -above[i];
      }
    }
    Arrays.sort(sorted, 0, counted);
    double[] sums = new double[counted + 1];
    for (int i = 0; i < counted; i++) {
      sums[i + 1] = sums[i] - sorted[i];
    }
    for (int i = 0; i < named.length; i++) {
      int place = Arrays.binarySearch(sorted, 0, counted, -above[i]);
      int higher = place < 0 ? -place - 1 : place;
      while (higher > 0 && PlainLoop.atMost(-sorted[higher - 1], above[i])) {
        higher--;
      }
      double still = Math.max(0, excess - sums[higher]);
      cut[i] = excess > 0 ? Math.max(0, Math.min(above[i], still)) : Double.NaN;
    }
  }
}
