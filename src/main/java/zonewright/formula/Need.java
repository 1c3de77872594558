package zonewright.formula;

import java.util.List;

/**
 * Something that must be so before a spreadsheet formula may calculate.
 *
 * @param named the column to name where it is not so
 * @param counted cells that must hold numbers
 * @param tests further conditions, as spreadsheet text
 * @param level 0 where it can be asked at once, more where it can be asked only once all of a lower
 *     level is so
 */
record Need(Reference named, List<String> counted, List<String> tests, int level) {
  Need {
    counted = List.copyOf(counted);
    tests = List.copyOf(tests);
  }
}
