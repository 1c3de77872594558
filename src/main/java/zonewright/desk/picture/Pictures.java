package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.List;

/** All pictures there are, in the order in which they are offered. */
public final class Pictures {
  private static final List<Picture> ALL =
      List.of(
          new StandingWaterPicture(),
          new SharePicture(),
          new YearPicture(),
          new PressureLinePicture(),
          new NightPicture(),
          new CatchPicture(false),
          new CatchPicture(true),
          new WatchPicture(),
          new RecordPicture(),
          new CashPicture());

  private Pictures() {}

  /** Returns all of them. */
  public static List<Picture> all() {
    return ALL;
  }

  /** Returns those to offer beside a sheet: its own first, then those of the whole design. */
  public static List<Picture> beside(String sheet) {
    List<Picture> fitting = new ArrayList<>();
    for (Picture picture : ALL) {
      if (picture.subject().sheet().equals(sheet)) {
        fitting.add(picture);
      }
    }
    for (Picture picture : ALL) {
      if (!picture.subject().ofRow() && !fitting.contains(picture)) {
        fitting.add(picture);
      }
    }
    return fitting;
  }
}
