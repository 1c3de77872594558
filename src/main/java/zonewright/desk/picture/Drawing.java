package zonewright.desk.picture;

/**
 * A picture of a design at one moment, ready to be painted as often and in whatever size is wanted.
 * Holds what it needs by itself: it does not look at the design again.
 */
public interface Drawing {
  /** Returns the line above it, such as {@code Water standing on the soil, zone 3}. */
  String title();

  /**
   * Returns one sentence that says what it shows, for those who do not see it and for exported
   * files.
   */
  String inWords();

  /** Paints all of it but its title into the canvas, whatever its size. */
  void paint(Canvas canvas);

  /** Returns a drawing that only says why there is nothing to draw. */
  static Drawing saying(String title, String sentence) {
    return new Drawing() {
      @Override
      public String title() {
        return title;
      }

      @Override
      public String inWords() {
        return sentence;
      }

      @Override
      public void paint(Canvas canvas) {
        canvas.sentence(sentence);
      }
    };
  }
}
