package zonewright.alternatives;

import static java.util.stream.Collectors.toSet;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Row;
import zonewright.sheet.Wording;
import zonewright.trade.Sheets;

/** An edit with what it means for the alternatives. */
final class CompletedEdit {
  private final Book book;
  private final Edit edit;
  private final BookSnapshot before;
  private final BookSnapshot after;

  CompletedEdit(Book book, Edit edit) {
    this.book = book;
    this.edit = edit;
    this.before = book.snapshot();
    this.after = book.after(edit);
  }

  Edit edit() {
    if (!after.rows(Sheets.CHANGES).equals(before.rows(Sheets.CHANGES))) {
      return edit;
    }
    Set<Long> held = marked(before);
    Set<Long> then = marked(after);
    boolean there =
        after.rows(Sheets.ALTERNATIVES).stream().map(Row::id).collect(toSet()).containsAll(held);
    if (!held.equals(then) && there) {
      return chosen(held, then);
    }
    if (!after.rows(Sheets.ALTERNATIVES).equals(before.rows(Sheets.ALTERNATIVES))) {
      return listed();
    }
    return held.isEmpty() ? edit : noted();
  }

  private static Set<Long> marked(BookSnapshot sheets) {
    return sheets.rows(Sheets.ALTERNATIVES).stream()
        .filter(Alternatives::marked)
        .map(Row::id)
        .collect(toSet());
  }

  /** Another was marked on the sheet itself: it comes to the sheets, as if asked for by name. */
  private Edit chosen(Set<Long> held, Set<Long> then) {
    Optional<String> name =
        after.rows(Sheets.ALTERNATIVES).stream()
            .filter(
                row -> then.contains(row.id()) && (!held.contains(row.id()) || then.size() == 1))
            .map(row -> Alternatives.text(row.entry(0)))
            .findFirst();
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
    return new Edit.Several(
        edit.name(),
        List.of(
            edit,
            AlternativeEdits.changes(book, before, edit.name(), alternatives.wayBack(), others)));
  }

  /** While an alternative is in hand the design stays as it is. */
  private Edit noted() {
    Alternatives alternatives = new Alternatives(book);
    BookSnapshot design = alternatives.design();
    Wording wording = book.wording();
    if (design.system() != after.system()) {
      Book other = book.another(design);
      other.start(new Edits(other).switched(after.system()));
      design = other.snapshot();
      wording = other.wording();
    }
    List<Change> wayBack = Differences.between(book.declared(), wording, after, design);
    Edit noted =
        AlternativeEdits.changes(book, before, edit.name(), wayBack, alternatives.others());
    return noted.changesNothing() ? edit : new Edit.Several(edit.name(), List.of(edit, noted));
  }
}
