package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import zonewright.fieldwork.Cans;
import zonewright.fieldwork.CatchTests;
import zonewright.fieldwork.Inspection;
import zonewright.fieldwork.Verdicts;
import zonewright.fieldwork.Watching;
import zonewright.trade.Sheets;

/** What was found in the demo garden once it was there: invented, like the garden. */
final class DemoField {
  /** Catches of the far row first, as the cans stood; in millilitres. */
  private static final int[][] CATCHES = {
    {44, 52, 58, 61, 55, 41},
    {49, 60, 67, 70, 62, 47},
    {46, 57, 64, 66, 59, 30},
    {38, 45, 51, 53, 48, 36},
  };

  private static final String[][] TESTS = {
    {
      "North lawn",
      "1",
      "2026-05-12",
      "4 in",
      "10",
      "10 ft",
      "10 ft",
      "Invented. Light wind; one head at the east edge leans."
    }
  };

  private static final String[][] SEEN = {
    {
      "1",
      "2026-05-12",
      "1",
      "tilted head",
      "East edge, third head from the path",
      "soon",
      "no",
      "photos/lawn-east-head.jpg",
      "",
      "",
      "Invented."
    },
    {
      "2",
      "2026-05-12",
      "6",
      "leak",
      "Fitting at the start of the drip line, by the gate",
      "urgent",
      "yes",
      "photos/border-fitting.jpg",
      "",
      "",
      "Invented. Mended the same day."
    },
    {
      "3",
      "2026-05-12",
      "1",
      "flow reading",
      "At the water meter, zone running alone",
      "when there is time",
      "no",
      "",
      "36.4 gpm",
      "52 psi",
      "Invented."
    },
  };

  private static final String[][] PERCENTS = {
    {"1", "2026-06-08", "91 %", "Invented."},
    {"2", "2026-06-22", "97 %", ""},
    {"3", "2026-07-06", "104 %", "Hot week."},
    {"4", "2026-07-20", "96 %", ""},
  };

  private static final String[][] LOOKS = {
    {"1", "2026-07-21", "1", "right", "96 %", "Invented."},
    {"2", "2026-07-21", "2", "right", "96 %", ""},
    {"3", "2026-07-21", "3", "too dry", "96 %", "Top of the bank is hard and pale."},
    {"4", "2026-07-21", "4", "right", "96 %", ""},
    {"5", "2026-07-21", "5", "right", "96 %", ""},
    {"6", "2026-07-21", "6", "right", "96 %", ""},
    {"7", "2026-07-21", "7", "right", "96 %", ""},
  };

  private DemoField() {}

  /** Returns the rows of the sheets of the field. */
  static List<SampleText.Rows> rows() {
    return List.of(
        new SampleText.Rows(
            Sheets.TESTS,
            List.of(
                CatchTests.NAME,
                CatchTests.ZONE,
                CatchTests.DATE,
                CatchTests.OPENING_ACROSS,
                CatchTests.MINUTES,
                CatchTests.SPACING_ACROSS,
                CatchTests.SPACING_UP,
                CatchTests.NOTE),
            List.of(TESTS)),
        new SampleText.Rows(
            Sheets.CANS, List.of(Cans.CAN, Cans.TEST, Cans.ACROSS, Cans.UP, Cans.VOLUME), cans()),
        new SampleText.Rows(
            Sheets.INSPECTION,
            List.of(
                Inspection.ITEM,
                Inspection.DATE,
                Inspection.ZONE,
                Inspection.WHAT,
                Inspection.WHERE,
                Inspection.PRIORITY,
                Inspection.DONE,
                Inspection.PHOTO,
                Inspection.FLOW,
                Inspection.PRESSURE,
                Inspection.NOTE),
            List.of(SEEN)),
        new SampleText.Rows(
            Sheets.CONTROLLER,
            List.of(Watching.READING, Watching.DATE, Watching.SHOWN, Watching.NOTE),
            List.of(PERCENTS)),
        new SampleText.Rows(
            Sheets.VERDICTS,
            List.of(
                Verdicts.LOOK,
                Verdicts.DATE,
                Verdicts.ZONE,
                Verdicts.VERDICT,
                Verdicts.SHOWN,
                Verdicts.NOTE),
            List.of(LOOKS)));
  }

  private static List<String[]> cans() {
    List<String[]> cans = new ArrayList<>();
    for (int line = 0; line < CATCHES.length; line++) {
      for (int at = 0; at < CATCHES[line].length; at++) {
        cans.add(
            new String[] {
              Integer.toString(cans.size() + 1),
              TESTS[0][0],
              at * 10 + " ft",
              (CATCHES.length - 1 - line) * 10 + " ft",
              CATCHES[line][at] + " mL"
            });
      }
    }
    return cans;
  }
}
