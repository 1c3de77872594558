package zonewright;

/** Starts the program. */
public final class Zonewright {
  private Zonewright() {}

  /** Opens the window, or answers on the command line when there are arguments. */
  public static void main(String[] arguments) {
    System.out.println("Zonewright");
  }
}
