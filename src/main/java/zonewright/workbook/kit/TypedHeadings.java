package zonewright.workbook.kit;

/**
 * How the heading of a column reads in which a person's own value may take the usual one's place.
 */
public final class TypedHeadings {
  /** What stands behind the name, before the unit. */
  public static final String YOURS = ", yours";

  private TypedHeadings() {}

  /** Says whether a heading is that of such a column. */
  public static boolean yours(String heading) {
    return heading.strip().matches("(?is).*" + YOURS + "(\\s*\\([^()]*\\))?");
  }

  /** Returns the heading without those words. */
  public static String plain(String heading) {
    return heading.strip().replaceFirst("(?is)" + YOURS + "(\\s*\\([^()]*\\))?$", "$1");
  }
}
