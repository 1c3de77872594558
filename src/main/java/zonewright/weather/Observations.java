package zonewright.weather;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * What was measured, line by line in order of time: as many numbers of each element as there are
 * lines, not-a-number where there is none.
 */
final class Observations {
  private static final double[] NONE = new double[0];

  private final WeatherStep step;
  private final StationSite site;
  private final boolean typical;
  private final Quality quality;
  private final int[] times;
  private final Map<WeatherElement, double[]> values;

  private Observations(
      WeatherStep step,
      StationSite site,
      boolean typical,
      Quality quality,
      int[] times,
      Map<WeatherElement, double[]> values) {
    this.step = step;
    this.site = site;
    this.typical = typical;
    this.quality = quality;
    this.times = times;
    this.values = values;
  }

  WeatherStep step() {
    return step;
  }

  StationSite site() {
    return site;
  }

  /** Says whether the months come from different years, chosen to be usual ones. */
  boolean typical() {
    return typical;
  }

  Quality quality() {
    return quality;
  }

  /** Returns how many lines there are. */
  int size() {
    return times.length;
  }

  /** Returns the days, or the hours at their beginning, since the beginning of 1970. */
  int time(int line) {
    return times[line];
  }

  /** Returns the elements of which there is a value at least. */
  Set<WeatherElement> elements() {
    return Collections.unmodifiableSet(values.keySet());
  }

  /** Returns an element's value in a line; not-a-number where there is none. */
  double value(WeatherElement element, int line) {
    double[] all = values.getOrDefault(element, NONE);
    return all.length == 0 ? Double.NaN : all[line];
  }

  /** Takes lines as they come and puts them in order. */
  static final class Collector {
    private final WeatherStep step;
    private final Quality quality;
    private final Map<WeatherElement, double[]> values = new EnumMap<>(WeatherElement.class);
    private int[] times = new int[1024];
    private int[] lines = new int[1024];
    private int size;

    Collector(WeatherStep step, Quality quality) {
      this.step = step;
      this.quality = quality;
    }

    /** Begins a line. */
    void begin(int time, int line) {
      if (size == times.length) {
        times = Arrays.copyOf(times, 2 * size);
        lines = Arrays.copyOf(lines, 2 * size);
        values.replaceAll((element, all) -> grown(all, 2 * size));
      }
      times[size] = time;
      lines[size] = line;
      size++;
    }

    private static double[] grown(double[] all, int length) {
      double[] longer = Arrays.copyOf(all, length);
      Arrays.fill(longer, all.length, length, Double.NaN);
      return longer;
    }

    /** Takes a value into the line begun last, after a look at its limits. */
    void put(WeatherElement element, double value) {
      double good = value;
      if (!element.possible(value)) {
        quality.value(element, Quality.Fault.IMPOSSIBLE, lines[size - 1]);
        return;
      }
      boolean share =
          element == WeatherElement.HUMIDITY
              || element == WeatherElement.HIGHEST_HUMIDITY
              || element == WeatherElement.LOWEST_HUMIDITY;
      if (share && value > 100) {
        quality.value(element, Quality.Fault.TOO_HUMID, lines[size - 1]);
        good = 100;
      }
      values.computeIfAbsent(element, any -> grown(NONE, times.length))[size - 1] = good;
    }

    /** Returns how many lines were begun. */
    int size() {
      return size;
    }

    /** Returns all lines in order of time, none twice. */
    Observations collected(StationSite site, boolean typical) {
      Integer[] order = new Integer[size];
      boolean sorted = true;
      for (int i = 0; i < size; i++) {
        order[i] = i;
        if (i > 0 && times[i] < times[i - 1]) {
          sorted = false;
          quality.line(Quality.Fault.OUT_OF_ORDER, lines[i]);
        }
      }
      if (!sorted) {
        Arrays.sort(order, (one, other) -> Integer.compare(times[one], times[other]));
      }
      int kept = 0;
      for (int i = 0; i < size; i++) {
        if (kept > 0 && times[order[i]] == times[order[kept - 1]]) {
          boolean same = same(order[i], order[kept - 1]);
          quality.line(
              same ? Quality.Fault.TWICE : Quality.Fault.TWICE_DIFFERENTLY, lines[order[i]]);
        } else {
          order[kept++] = order[i];
        }
      }
      int[] when = new int[kept];
      Map<WeatherElement, double[]> what = new EnumMap<>(WeatherElement.class);
      for (int i = 0; i < kept; i++) {
        when[i] = times[order[i]];
      }
      for (Map.Entry<WeatherElement, double[]> each : values.entrySet()) {
        double[] all = new double[kept];
        for (int i = 0; i < kept; i++) {
          all[i] = each.getValue()[order[i]];
        }
        what.put(each.getKey(), all);
      }
      return new Observations(step, site, typical, quality, when, what);
    }

    private boolean same(int one, int other) {
      return values.values().stream().allMatch(all -> Double.compare(all[one], all[other]) == 0);
    }
  }
}
