package zonewright.workbook.pack;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which sheets there are to hand over: the one list of them, in the order of the pack. */
public final class PackSheets {
  private static final List<PackSheet> ALL =
      List.of(
          new CoverSheet(),
          new CheckSheet(),
          new TimetableSheet(),
          new ScheduleCardSheet(),
          new MonthZonesSheet(),
          new ControllerFactsSheet(),
          new MonthPercentsSheet(),
          new CommissioningSheet(),
          new ProposalSheet(),
          new RetrofitSheet(),
          new EstimateSheet(),
          new YearSheet(),
          new SeasonSheet(),
          new CheckbookSheet(),
          new BudgetSheet(),
          new WorkingSheet(),
          new SourcesSheet());

  private PackSheets() {}

  /** Returns all of them in the order in which they stand in a workbook. */
  public static List<PackSheet> all() {
    return ALL;
  }

  /** Returns those that stand in every design file. */
  public static List<PackSheet> standing() {
    return ALL.stream().filter(PackSheet::standing).toList();
  }

  /** Returns those a client may get. */
  public static List<PackSheet> forClient() {
    return ALL.stream().filter(sheet -> sheet.audience() == Audience.CLIENT).toList();
  }

  /** Returns those named and those that always stand, in the order of the pack. */
  public static List<PackSheet> chosen(Collection<PackSheet> wanted) {
    return ALL.stream().filter(sheet -> sheet.standing() || wanted.contains(sheet)).toList();
  }

  /** Returns those that made sheets of these titles. */
  public static List<PackSheet> ofTitles(Collection<String> titles) {
    return ALL.stream()
        .filter(
            sheet ->
                titles.stream()
                    .anyMatch(
                        title ->
                            title.equals(sheet.title()) || title.startsWith(sheet.title() + " ")))
        .toList();
  }

  /** Returns the sheet of a word or a title; capitals do not matter. */
  public static Optional<PackSheet> named(String written) {
    String plain = written.strip().toLowerCase(Locale.ROOT);
    return ALL.stream()
        .filter(
            sheet ->
                sheet.word().equals(plain) || sheet.title().toLowerCase(Locale.ROOT).equals(plain))
        .findFirst();
  }
}
