package zonewright.weather;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** How the evapotranspiration of a day came about, and what was filled in for it. */
public enum DayNote {
  GIVEN(1, "as the file gives it"),
  BY_HOURS(2, "Penman-Monteith, hour by hour"),
  BY_DAY(4, "Penman-Monteith, by the day"),
  HARGREAVES(8, "Hargreaves, from temperatures alone"),
  NONE(16, "not known: a temperature is missing"),
  DEW_FROM_LOWEST(32, "humidity from the lowest temperature"),
  SUN_FROM_RANGE(64, "radiation from the range of temperatures"),
  SUN_FROM_SUNSHINE(128, "radiation from hours of sunshine"),
  WIND_OF_TWO(256, "wind of 2 m/s"),
  AT_SATURATION(512, "humidity above 100 % taken as 100 %");

  private final int bit;
  private final String words;

  DayNote(int bit, String words) {
    this.bit = bit;
    this.words = words;
  }

  /** Returns it in words. */
  public String words() {
    return words;
  }

  int bit() {
    return bit;
  }

  /** Returns the notes in a set of bits. */
  static Set<DayNote> of(int bits) {
    EnumSet<DayNote> notes = EnumSet.noneOf(DayNote.class);
    for (DayNote note : values()) {
      if ((bits & note.bit()) != 0) {
        notes.add(note);
      }
    }
    return notes;
  }

  /** Returns notes in words, the way first: Penman-Monteith, by the day; wind of 2 m/s. */
  public static String inWords(Set<DayNote> notes) {
    return notes.stream().map(DayNote::words).collect(Collectors.joining("; "));
  }
}
