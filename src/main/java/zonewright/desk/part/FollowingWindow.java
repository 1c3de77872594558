package zonewright.desk.part;

/** A window beside the main one that follows the design on the desk as long as it is open. */
public interface FollowingWindow {
  /** The design was edited. */
  default void edited() {}

  /** Another design lies on the desk. */
  default void replaced() {
    edited();
  }

  /** The timetable was made anew. */
  default void planned() {}

  /** Takes the look over after it changed. */
  void restyle();

  /** Closes for good. */
  void close();
}
