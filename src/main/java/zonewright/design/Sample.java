package zonewright.design;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import zonewright.units.UnitSystem;

/** The designs that come with the program. */
public enum Sample {
  /** An invented garden. */
  LIBRARY_GARDEN("library-garden", Demo::libraryGarden),
  /** Three zones of a published test protocol, from memory. */
  CONTROLLER_TEST_ZONES("controller-test-zones", ControllerTestZones::design),
  /** An invented school campus: its zones as found, as proposed, and what that costs and saves. */
  CAMPUS_RETROFIT("campus-retrofit", CampusRetrofit::design),
  /** A student's problem with one zone, invented. */
  HOMEWORK("homework", Homework::oneZone);

  private final String word;

  @SuppressWarnings(
      "ImmutableEnumChecker") // a reference to a method that makes a new design each time
  private final Function<UnitSystem, Design> maker;

  Sample(String word, Function<UnitSystem, Design> maker) {
    this.word = word;
    this.maker = maker;
  }

  /** Returns its name on the command line and, with the ending, as a file. */
  public String word() {
    return word;
  }

  /** Returns the design, freshly made. */
  public Design design(UnitSystem system) {
    return maker.apply(system);
  }

  /** Returns the sample of that name; capitals do not matter. */
  public static Optional<Sample> named(String word) {
    return Arrays.stream(values()).filter(sample -> sample.word.equalsIgnoreCase(word)).findFirst();
  }

  /** Returns all names. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Sample::word).toList();
  }
}
