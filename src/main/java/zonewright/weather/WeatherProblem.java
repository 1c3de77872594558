package zonewright.weather;

/** A weather file cannot be read or used; the message is a sentence or two for a designer. */
public final class WeatherProblem extends Exception {
  private static final long serialVersionUID = 1;

  WeatherProblem(String sentence) {
    super(sentence);
  }

  WeatherProblem(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
