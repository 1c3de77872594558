package zonewright.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;

/** Collects what is worth knowing about a file; what happens in many cells is told once. */
final class Notes {
  private final Map<String, Repeated> repeated = new LinkedHashMap<>();
  private final List<Object> order = new ArrayList<>();

  private static final class Repeated {
    private final ReadingReport.Note first;
    private int more;

    Repeated(ReadingReport.Note first) {
      this.first = first;
    }

    ReadingReport.Note told() {
      return more == 0
          ? first
          : new ReadingReport.Note(
              first.sheet(),
              first.cell(),
              "%s (and so in %s more %s)"
                  .formatted(first.sentence(), more, more == 1 ? "cell" : "cells"));
    }
  }

  /** Returns how a cell is called. */
  static String cell(int row, int column) {
    return new CellReference(row, column, false, false).formatAsString();
  }

  /** Notes something once. */
  void add(String sheet, String cell, String sentence) {
    order.add(new ReadingReport.Note(sheet, cell, sentence));
  }

  /** Notes something that may happen in many cells; only the first under a key is told in full. */
  void repeated(String key, String sheet, String cell, String sentence) {
    Repeated known = repeated.get(sheet + key);
    if (known == null) {
      Repeated fresh = new Repeated(new ReadingReport.Note(sheet, cell, sentence));
      repeated.put(sheet + key, fresh);
      order.add(fresh);
    } else {
      known.more++;
    }
  }

  /** Returns all notes in the order in which they came up. */
  List<ReadingReport.Note> all() {
    return order.stream()
        .map(each -> each instanceof Repeated several ? several.told() : (ReadingReport.Note) each)
        .toList();
  }
}
