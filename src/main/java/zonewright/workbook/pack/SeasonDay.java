package zonewright.workbook.pack;

import org.apache.poi.ss.util.CellReference;

/** The columns of the days of a season, in their order. */
enum SeasonDay {
  DATE(0, "Date"),
  ET(1, "Reference ET"),
  RAIN(2, "Rain"),
  NEED(3, "Need"),
  PERCENT(4, "Percent"),
  CYCLES(5, "Cycles"),
  CYCLE_MINUTES(6, "Minutes a cycle"),
  MINUTES(7, "Minutes"),
  REACHING(8, "Reaching the ground"),
  RUN_OFF(9, "Runs off"),
  SOAKS_IN(10, "Soaks in"),
  DRAINED(11, "Drained of it"),
  AFTER_WATER(12, "Used up after it"),
  RAIN_COUNTED(13, "Rain that counts"),
  RAIN_DRAINED(14, "Drained of it"),
  AFTER_RAIN(15, "Used up after it"),
  TAKEN(16, "Taken"),
  USED(17, "Used up"),
  BELOW(18, "Below allowed");

  final int place;
  final String heading;

  SeasonDay(int place, String heading) {
    this.place = place;
    this.heading = heading;
  }

  String letters() {
    return CellReference.convertNumToColString(place);
  }

  String in(int row) {
    return "$" + letters() + (row + 1);
  }
}
