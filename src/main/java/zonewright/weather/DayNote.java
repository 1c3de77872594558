package zonewright.weather;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** How the evapotranspiration of a day came about, and what was filled in for it. */
public enum DayNote {
  GIVEN("as the file gives it"),
  BY_HOURS("Penman-Monteith, hour by hour"),
  BY_DAY("Penman-Monteith, by the day"),
  HARGREAVES("Hargreaves, from temperatures alone"),
  NONE("not known: a temperature is missing"),
  DEW_FROM_LOWEST("humidity from the lowest temperature"),
  SUN_FROM_RANGE("radiation from the range of temperatures"),
  SUN_FROM_SUNSHINE("radiation from hours of sunshine"),
  WIND_OF_TWO("wind of 2 m/s"),
  AT_SATURATION("humidity above 100 % taken as 100 %");

  private final String words;

  DayNote(String words) {
    this.words = words;
  }

  /** Returns it in words. */
  public String words() {
    return words;
  }

  int bit() {
    return 1 << ordinal();
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
