package zonewright.weather;

/** What one line of a weather file stands for. */
public enum WeatherStep {
  HOUR("hour", "hours"),
  DAY("day", "days");

  private final String one;
  private final String many;

  WeatherStep(String one, String many) {
    this.one = one;
    this.many = many;
  }

  /** Returns a number of them in words: 1 day, 1,234 days. */
  String count(long number) {
    return Sentence.number(number) + " " + (number == 1 ? one : many);
  }

  /** Returns it in the singular. */
  String one() {
    return one;
  }
}
