package zonewright.design;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/** What a column of one's own may be called: equations and workbooks must tell it from others. */
final class OwnColumnName {
  /** Longer names would not fit over a column. */
  private static final int LONGEST = 60;

  private static final Pattern FORM = Pattern.compile("\\p{L}[\\p{L}\\p{N} '’×·%&,./+–-]*");

  /** What a workbook calls columns of its own beside those of the design. */
  private static final Set<String> KEPT =
      Set.of("missing", "filledin", "identity", "units", "item");

  /** What a workbook adds to a column's name for the cells that go with it. */
  private static final Pattern BESIDE =
      Pattern.compile(
          "(?i)(.+?)(?:, yours| (?:step \\d+|used|checked|usual|typed|words|from|to|row|row in \\w+))");

  private OwnColumnName() {}

  /**
   * Says why a column cannot be called so.
   *
   * @param others the names of the other columns that are defined
   */
  static Optional<String> refused(String name, TableDefinition table, Collection<String> others) {
    if (name.length() > LONGEST) {
      return Optional.of("the name is longer than 60 letters; shorten it");
    }
    if (!FORM.matcher(name).matches()) {
      return Optional.of(
          "a name begins with a letter and holds letters, figures, blanks and no other signs than ' × · % & , . / + -");
    }
    String letters = letters(name);
    Optional<String> same =
        table.columns().stream()
            .map(Column::name)
            .filter(each -> letters(each).equals(letters))
            .findFirst();
    if (same.isPresent()) {
      return Optional.of(
          "%s has a column “%s” already; give yours another name"
              .formatted(table.title(), same.get()));
    }
    Matcher beside = BESIDE.matcher(name);
    boolean besideOne =
        beside.matches()
            && Stream.concat(
                    Stream.concat(table.columns().stream().map(Column::name), others.stream()),
                    Stream.of(table.title(), table.other().orElse("")))
                .anyMatch(each -> letters(each).equals(letters(beside.group(1))));
    return KEPT.contains(letters) || besideOne
        ? Optional.of(
            "the workbook needs the name “%s” for itself; give yours another".formatted(name))
        : Optional.empty();
  }

  /** Returns what is left of a name where signs and capitals do not count. */
  static String letters(String name) {
    return name.replaceAll("[^\\p{L}\\p{N}]+", "").toLowerCase(Locale.ROOT);
  }
}
