package zonewright.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Days of weather in order, with the reference evapotranspiration of each. */
public final class DailyRecord {
  private final String file;
  private final StationSite site;
  private final Equation equation;
  private final boolean typical;
  private final double storage;
  private final int[] days;
  private final Map<Of, double[]> columns;
  private final int[] notes;
  private final List<String> report;

  /** What is known of each day. */
  enum Of {
    EVAPOTRANSPIRATION,
    RAIN,
    LOWEST,
    MEAN
  }

  DailyRecord(
      String file,
      StationSite site,
      Equation equation,
      boolean typical,
      double storage,
      int[] days,
      Map<Of, double[]> columns,
      int[] notes,
      List<String> report) {
    this.file = file;
    this.site = site;
    this.equation = equation;
    this.typical = typical;
    this.storage = storage;
    this.days = days;
    this.columns = columns;
    this.notes = notes;
    this.report = List.copyOf(report);
  }

  /** Returns the name of the file it was read from. */
  public String file() {
    return file;
  }

  /** Returns where it was measured, as far as that is known. */
  public StationSite site() {
    return site;
  }

  /** Returns which form of the Penman-Monteith equation was used. */
  public Equation equation() {
    return equation;
  }

  /** Says whether it is a year made of usual months, which says nothing of how years differ. */
  public boolean typical() {
    return typical;
  }

  /** Returns the depth of rain in mm that the root zone can take up between waterings. */
  public double storage() {
    return storage;
  }

  /** Returns how many days there are. */
  public int size() {
    return days.length;
  }

  /** Returns a day's date. */
  public LocalDate date(int day) {
    return LocalDate.ofEpochDay(days[day]);
  }

  /** Returns a day's number since the beginning of 1970. */
  int dayNumber(int day) {
    return days[day];
  }

  /** Returns a day's reference evapotranspiration in mm; not-a-number where it is not known. */
  public double evapotranspiration(int day) {
    return value(Of.EVAPOTRANSPIRATION, day);
  }

  /** Returns a day's rain in mm; not-a-number where it is not known. */
  public double rain(int day) {
    return value(Of.RAIN, day);
  }

  /** Returns a day's lowest temperature in °C; not-a-number where it is not known. */
  public double lowest(int day) {
    return value(Of.LOWEST, day);
  }

  double value(Of what, int day) {
    return columns.get(what)[day];
  }

  /** Returns how a day's evapotranspiration came about. */
  public Set<DayNote> notes(int day) {
    return DayNote.of(notes[day]);
  }

  /** Returns how many days have a note. */
  public int count(DayNote note) {
    int count = 0;
    for (int each : notes) {
      count += (each & note.bit()) == 0 ? 0 : 1;
    }
    return count;
  }

  /** Returns what a person should know of the reading and the values, each a sentence. */
  public List<String> report() {
    return report;
  }
}
