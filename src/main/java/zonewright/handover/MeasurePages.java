package zonewright.handover;

import java.util.List;
import zonewright.paper.Paper;
import zonewright.paper.PaperSize;
import zonewright.paper.PaperTable;
import zonewright.uncertainty.HowSure;
import zonewright.uncertainty.Narrowing;
import zonewright.uncertainty.SureWords;

/** Writes what to measure first as pages to take to the site. */
public final class MeasurePages {
  private static final String TITLE = "What to measure first";

  private MeasurePages() {}

  /** Returns the file, a PDF; the same design makes the same file to the byte. */
  public static byte[] of(HowSure sure) {
    SureWords words = new SureWords(sure);
    String project = sure.project();
    try (Paper paper =
        new Paper(PaperSize.of(sure.system()), project + ": " + TITLE, project, SureWords.FOOT)) {
      paper.page(TITLE, SureWords.ranking());
      measurements(paper, sure, words);
      if (!words.takenAsSure().isEmpty()) {
        paper.sentences(words.takenAsSure(), 10);
      }
      paper.page("How sure the site is", words.mark());
      words.site().forEach(sentence -> paper.sentences(sentence, 11));
      zones(paper, sure, words);
      paper.page("Zone by zone", "Which measurement narrows cycles and water of each zone most.");
      for (int zone : sure.zones()) {
        paper.heading("Zone " + sure.name(zone));
        words.toMeasure(zone).forEach(sentence -> paper.sentences(sentence, 11));
      }
      return paper.file();
    }
  }

  private static void measurements(Paper paper, HowSure sure, SureWords words) {
    List<Narrowing> worths = sure.measurements();
    if (worths.isEmpty()) {
      paper.sentences("Nothing to measure: no range moves water or cycles.", 11);
      return;
    }
    PaperTable table = new PaperTable().strong("Measurement", 22);
    SureWords.measurementHeadings()
        .subList(1, SureWords.measurementHeadings().size())
        .forEach(heading -> table.number(heading, heading.startsWith("Water") ? 24 : 11));
    worths.forEach(worth -> table.row(words.row(worth)));
    paper.table(table, 12, 8, 0);
    paper.space(8);
    int place = 1;
    for (Narrowing worth : worths) {
      paper.heading(place++ + "   " + worth.measurement().name());
      paper.sentences(worth.measurement().how(), 11);
      paper.sentences("Needs: " + worth.measurement().needs() + ".", 11);
    }
  }

  /** Each column is as wide, beside the others, as its longest span or half its heading. */
  private static void zones(Paper paper, HowSure sure, SureWords words) {
    List<String> headings = words.headings();
    List<List<String>> rows = sure.zones().stream().map(words::row).toList();
    PaperTable table = new PaperTable().strong(headings.get(0), 6);
    for (int at = 1; at < headings.size(); at++) {
      int column = at;
      int longest = rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
      table.number(headings.get(at), Math.max(longest, headings.get(at).length() / 2) + 3.0);
    }
    rows.forEach(table::row);
    paper.space(8);
    paper.table(table, 11, 7, 0);
  }
}
