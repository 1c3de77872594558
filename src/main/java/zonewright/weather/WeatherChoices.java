package zonewright.weather;

import java.util.Optional;

/**
 * What a person says of a weather file and of how to use it.
 *
 * @param place what the file does not say of its place, or says wrongly
 * @param equation which form of the Penman-Monteith equation
 * @param dry whether the country is dry: where humidity is missing, dew is then taken to fall 2 °C
 *     below the lowest temperature instead of at it
 * @param coast whether a coast is near: radiation then follows from temperatures by 0.19, else 0.16
 * @param dayFirst whether the day stands before the month in dates; none to go by what they show
 * @param storage depth of rain in millimetres that the root zone can take up between waterings
 */
public record WeatherChoices(
    StationSite place,
    Equation equation,
    boolean dry,
    boolean coast,
    Optional<Boolean> dayFirst,
    double storage) {
  /** Nothing said: the ASCE form, inland, not dry, an inch of storage. */
  public static final WeatherChoices USUAL =
      new WeatherChoices(StationSite.UNKNOWN, Equation.ASCE, false, false, Optional.empty(), 25.4);

  /** Returns the same with more said of the place. */
  public WeatherChoices at(StationSite said) {
    return new WeatherChoices(place.with(said), equation, dry, coast, dayFirst, storage);
  }

  /** Returns the same with another form of the equation. */
  public WeatherChoices by(Equation other) {
    return new WeatherChoices(place, other, dry, coast, dayFirst, storage);
  }
}
