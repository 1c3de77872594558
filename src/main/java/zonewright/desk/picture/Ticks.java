package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.List;

/** Round numbers along an axis. */
public final class Ticks {
  private Ticks() {}

  /** Returns multiples of 1, 2 or 5 times a power of ten from 0 to {@code end}, few enough. */
  public static List<Double> upTo(double end, int most) {
    double rough = end / Math.max(1, most);
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double step = power;
    for (double times : new double[] {1, 2, 5, 10}) {
      step = times * power;
      if (step >= rough) {
        break;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (int i = 0; i * step <= end * (1 + 1e-9); i++) {
      ticks.add(i * step);
    }
    return ticks;
  }
}
