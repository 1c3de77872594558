package zonewright.command;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * A column asked for, and the unit it is wanted in: {@code Run time in h}.
 *
 * @param unit none where the name has no unit
 */
record AskedFor(Column column, Optional<Unit> unit) {
  private static final Pattern IN_UNIT = Pattern.compile("(.*\\S)\\s+in\\s+(\\S.*)");

  /**
   * Reads a name.
   *
   * @throws Complaint where it means no column or several, or its unit does not measure that
   */
  static AskedFor of(ColumnFinder finder, String written) {
    Matcher in = IN_UNIT.matcher(written.strip());
    Optional<Unit> unit = in.matches() ? Units.named(in.group(2)) : Optional.empty();
    if (unit.isPresent() && finder.find(in.group(1)) instanceof ColumnFinder.One one) {
      if (one.column().kind().takes(unit.get())) {
        return new AskedFor(one.column(), unit);
      }
      if (!(finder.find(written) instanceof ColumnFinder.One)) {
        throw new Complaint(
            ExitCode.USAGE,
            "%s is %s, and “%s” is no unit of that; one is %s."
                .formatted(
                    one.column().name(),
                    one.column().kind().wordsWithArticle(),
                    in.group(2),
                    one.column().kind().unit(UnitSystem.US).inWords()));
      }
    }
    return new AskedFor(Asked.column(finder, written), Optional.empty());
  }
}
