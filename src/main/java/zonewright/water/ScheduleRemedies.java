package zonewright.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/** Cures for schedules that can be carried out without a person's thinking. */
final class ScheduleRemedies {
  private static final int DAYS_A_WEEK = 7;

  private ScheduleRemedies() {}

  /** Allows as many days on the site as a zone needs, and lets the zone use them. */
  static Optional<Edit> allowDays(Book book, Reference cell, int row) {
    int needed = (int) book.number(Demand.DAYS_NEEDED.reference(), row);
    double allowed = book.number(SiteRules.DAYS_ALLOWED.reference(), 0);
    if (needed < 1 || needed > DAYS_A_WEEK) {
      return Optional.empty();
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    if (allowed < needed) {
      parts.add(edits.set(SiteRules.DAYS_ALLOWED.reference(), 0, new Entry.Figure(needed)));
    }
    parts.add(edits.cleared(List.of(Demand.WATERING_DAYS.reference()), List.of(row)));
    Edit all = new Edit.Several("days", parts);
    Trial trial = Trial.of(book, row);
    trial.book.perform(all(trial, needed, allowed));
    boolean helps =
        trial.number(Demand.LONGEST_GAP) <= trial.number(Demand.LONGEST_INTERVAL) + 1e-9;
    return helps ? Optional.of(all) : Optional.empty();
  }

  private static Edit all(Trial trial, int needed, double allowed) {
    Edits edits = new Edits(trial.book);
    Edit zone = edits.cleared(List.of(Demand.WATERING_DAYS.reference()), List.of(0));
    return allowed < needed
        ? new Edit.Several(
            "trial",
            List.of(
                edits.set(SiteRules.DAYS_ALLOWED.reference(), 0, new Entry.Figure(needed)), zone))
        : zone;
  }

  /** Waters on the fewest days on which the controller starts enough cycles, if any will do. */
  static Optional<Edit> moreDays(Book book, Reference cell, int row) {
    Trial trial = Trial.of(book, row);
    int now = (int) book.number(Demand.WATERING_DAYS.reference(), row);
    int most = (int) book.number(SiteRules.DAYS_ALLOWED.reference(), 0);
    for (int days = now + 1; days <= Math.min(most, DAYS_A_WEEK); days++) {
      trial.type(Demand.WATERING_DAYS, days);
      if (trial.number(CycleAndSoak.CYCLES) <= trial.number(Controller.STARTS)) {
        return Optional.of(
            new Edits(book).set(Demand.WATERING_DAYS.reference(), row, new Entry.Figure(days)));
      }
    }
    return Optional.empty();
  }

  /**
   * Splits a zone into the fewest like parts each of which the supply can feed: area, emitters and
   * counted plants are shared out, whole ones as evenly as they can be.
   */
  static Optional<Edit> split(Book book, Reference cell, int row) {
    double flow = book.number(Emitters.ZONE_FLOW.reference(), row);
    double supply = book.number(SiteRules.AVAILABLE_FLOW.reference(), 0);
    int parts = supply > 0 ? (int) Math.ceil(flow / supply - 1e-9) : 0;
    if (parts < 2 || parts > 50) {
      return Optional.empty();
    }
    while (!partsFit(book, row, parts, flow, supply)) {
      parts++;
    }
    Edits edits = new Edits(book);
    List<Edit> all = new ArrayList<>();
    List<Map<Reference, Entry>> copies = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      Map<Reference, Entry> own = new HashMap<>();
      for (Column column :
          List.of(
              Emitters.AREA, Emitters.EMITTER_COUNT, Emitters.PLANT_COUNT, Emitters.ZONE_FLOW)) {
        if (book.entry(column.reference(), row) instanceof Entry.Figure whole) {
          boolean counted =
              column.equals(Emitters.EMITTER_COUNT) || column.equals(Emitters.PLANT_COUNT);
          double share = counted ? counted(whole.value(), parts, part) : whole.value() / parts;
          own.put(column.reference(), new Entry.Figure(share));
        }
      }
      copies.add(own);
    }
    copies.get(0).forEach((column, entry) -> all.add(edits.set(column, row, entry)));
    all.add(edits.copiedBelow(Sheets.ZONES, row, copies.subList(1, parts)));
    return Optional.of(new Edit.Several("split", all));
  }

  private static double counted(double whole, int parts, int part) {
    double least = Math.floor(whole / parts);
    return part < whole - least * parts ? least + 1 : least;
  }

  /** Says whether the largest part keeps to the supply: whole emitters do not divide evenly. */
  private static boolean partsFit(Book book, int row, int parts, double flow, double supply) {
    boolean typed = book.entry(Emitters.ZONE_FLOW.reference(), row) instanceof Entry.Figure;
    if (!typed
        && book.entry(Emitters.EMITTER_COUNT.reference(), row) instanceof Entry.Figure count) {
      double largest = counted(count.value(), parts, 0);
      return parts >= count.value() || flow * largest / count.value() <= supply * (1 + 1e-9);
    }
    return true;
  }

  /** A book with one zone alone, to see what an edit would come to. */
  private record Trial(Book book) {
    static Trial of(Book book, int row) {
      BookSnapshot now = book.snapshot();
      Map<String, List<Row>> tables = new HashMap<>(now.tables());
      tables.put(Sheets.ZONES, List.of(now.rows(Sheets.ZONES).get(row)));
      book.schema()
          .alongside(Sheets.ZONES)
          .forEach(beside -> tables.put(beside.id(), List.of(now.rows(beside.id()).get(row))));
      return new Trial(book.another(new BookSnapshot(now.system(), tables)));
    }

    void type(Column column, int number) {
      book.perform(new Edits(book).set(column.reference(), 0, new Entry.Figure(number)));
    }

    double number(Column column) {
      return book.number(column.reference(), 0);
    }
  }
}
