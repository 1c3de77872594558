package zonewright.alternatives;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/** An edit with what it means for the alternatives. */
final class Completion {
  private final Book book;
  private final Edit edit;
  private final BookSnapshot before;
  private final BookSnapshot after;

  Completion(Book book, Edit edit) {
    this.book = book;
    this.edit = edit;
    this.before = book.snapshot();
    this.after = book.after(edit);
  }

  Edit edit() {
    if (!after.rows(Sheets.CHANGES).equals(before.rows(Sheets.CHANGES))) {
      return edit;
    }
    Optional<String> held = Alternatives.inHand(book, before);
    Optional<String> chosen = Alternatives.inHand(book, after);
    if (!held.equals(chosen)) {
      return chosen(chosen);
    }
    if (!after.rows(Sheets.ALTERNATIVES).equals(before.rows(Sheets.ALTERNATIVES))) {
      return listed();
    }
    return held.isEmpty() ? edit : noted();
  }

  /** Another was chosen on the sheet itself: it comes to the sheets, as if asked for by name. */
  private Edit chosen(Optional<String> name) {
    Alternatives alternatives = new Alternatives(book);
    Optional<String> known = name.flatMap(alternatives::named);
    return name.isPresent() && known.isEmpty()
        ? edit
        : new AlternativeEdits(alternatives).worked(known);
  }

  /** Alternatives were named otherwise or taken out on their sheet. */
  private Edit listed() {
    Map<Long, String> names = new HashMap<>();
    after
        .rows(Sheets.ALTERNATIVES)
        .forEach(row -> names.put(row.id(), Alternatives.text(row.entry(0))));
    Alternatives alternatives = new Alternatives(book);
    Map<String, String> renamed = new HashMap<>();
    for (Row row : before.rows(Sheets.ALTERNATIVES)) {
      String old = Alternatives.text(row.entry(0));
      String now = names.getOrDefault(row.id(), "");
      if (now.isEmpty() && alternatives.inHand().filter(old::equals).isPresent()) {
        return new AlternativeEdits(alternatives).removed(old);
      }
      renamed.put(old, now);
    }
    Map<String, List<Change>> others = new LinkedHashMap<>();
    alternatives
        .others()
        .forEach((old, changes) -> others.put(renamed.getOrDefault(old, old), changes));
    others.remove("");
    List<Edit> parts = new ArrayList<>(List.of(edit));
    parts.add(
        AlternativeEdits.changes(book, before, edit.name(), alternatives.wayBack(), others));
    alternatives
        .inHand()
        .map(old -> renamed.getOrDefault(old, old))
        .ifPresent(
            name ->
                parts.add(
                    new Edits(book)
                        .set(AlternativeSheets.IN_HAND.reference(), 0, Entry.words(name))));
    return new Edit.Several(edit.name(), parts);
  }

  /** While an alternative is in hand the design stays as it is. */
  private Edit noted() {
    Alternatives alternatives = new Alternatives(book);
    BookSnapshot design = alternatives.design();
    Book then = book.another(after);
    if (design.system() != after.system()) {
      Book other = book.another(design);
      other.start(new Edits(other).switched(after.system()));
      design = other.snapshot();
    }
    List<Change> wayBack = Differences.between(then.schema(), then.wording(), after, design);
    Edit noted =
        AlternativeEdits.changes(book, before, edit.name(), wayBack, alternatives.others());
    return noted.changesNothing() ? edit : new Edit.Several(edit.name(), List.of(edit, noted));
  }
}
