package zonewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import picocli.CommandLine.Option;
import zonewright.design.Synonyms;
import zonewright.exchange.ListMatch;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.units.DecimalSign;

/** What a person says about which column of a list goes where. */
final class MatchOptions {
  @Option(
      names = "--match",
      paramLabel = "THEIRS=OURS",
      description = "Which column of the design a column of the list goes into; may be repeated.")
  private List<String> matches = new ArrayList<>();

  @Option(
      names = "--leave",
      paramLabel = "THEIRS",
      description = "A column of the list to leave out; may be repeated.")
  private List<String> left = new ArrayList<>();

  @Option(
      names = "--guess",
      description =
          "Let columns with other names go where they most likely belong, and say where; what is told by --match or --leave holds.")
  private boolean guess;

  @Option(
      names = "--decimal",
      paramLabel = "comma|point",
      converter = DecimalWord.class,
      description = "What stands before the decimals of the list; by what it shows unless given.")
  private Optional<DecimalSign> decimal = Optional.empty();

  /**
   * Matches as was said; complains where a column of the list goes nowhere and was not left out.
   *
   * @param told is told what was guessed, a line for each column
   */
  void apply(ListMatch match, Consumer<String> told) {
    match.decimals(decimal);
    matches.forEach(each -> match(match, each));
    List<Integer> leaving = left.stream().map(name -> position(match, name)).toList();
    if (guess) {
      Set<Integer> guessed = new TreeSet<>(match.guess());
      guessed.removeAll(leaving);
      guessed.forEach(position -> told.accept(guessed(match, position)));
    }
    leaving.forEach(match::leave);
    List<Integer> nowhere = new ArrayList<>(match.unmatched());
    nowhere.removeAll(leaving);
    if (!nowhere.isEmpty()) {
      throw new Complaint(ExitCode.USAGE, nowhere(match, nowhere));
    }
  }

  private static void match(ListMatch match, String pair) {
    int equals = pair.lastIndexOf('=');
    if (equals < 0) {
      throw new Complaint(
          ExitCode.USAGE, "Write --match \"their column=our column\", not “%s”.".formatted(pair));
    }
    int position = position(match, pair.substring(0, equals));
    ColumnFinder.Found found =
        Synonyms.finder(match.schema(), match.table().id())
            .in(match.table(), pair.substring(equals + 1));
    if (found instanceof ColumnFinder.Unclear unclear) {
      throw new Complaint(ExitCode.USAGE, unclear.sentence());
    }
    Column column = ((ColumnFinder.One) found).column();
    if (!column.takesEntries()) {
      throw new Complaint(
          ExitCode.USAGE,
          "%s is calculated; choose a column that is typed.".formatted(column.name()));
    }
    match.set(position, column);
  }

  private static int position(ListMatch match, String heading) {
    return match
        .position(heading)
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "The list has no column “%s”; it has %s."
                        .formatted(heading.strip(), String.join(", ", match.list().headings()))));
  }

  private static String guessed(ListMatch match, int position) {
    return "Guessed: “%s” of the list goes into %s."
        .formatted(
            match.list().headings().get(position),
            match.target(position).map(Column::name).orElse("none"));
  }

  private static String nowhere(ListMatch match, List<Integer> positions) {
    StringBuilder text = new StringBuilder();
    text.append(
        "These columns of the list match none of the design; say where each goes, or --guess:");
    for (int position : positions) {
      String heading = match.list().headings().get(position);
      text.append(System.lineSeparator())
          .append(
              "  --match \"%s=%s\"   or   --leave \"%s\""
                  .formatted(heading, match.suggestions(position).get(0).name(), heading));
    }
    return text.toString();
  }
}
