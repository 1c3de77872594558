package zonewright.recovery;

import java.util.List;
import java.util.Random;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Tint;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Edits of a design, the same again from the same seed; each leaves its number in the design. */
final class TypingSteps {
  private final Design design;
  private final Random random;
  private int number;

  TypingSteps(Design design, long seed) {
    this.design = design;
    this.random = new Random(seed);
  }

  /** Returns the design it types into. */
  Design design() {
    return design;
  }

  /** Does the next edit and returns its number. */
  int next() {
    number++;
    Edits edits = design.edits();
    int zones = design.book().rows(Sheets.ZONES);
    int zone = random.nextInt(zones);
    Edit edit =
        switch (random.nextInt(12)) {
          case 0 -> zones < 40 ? edits.duplicated(Sheets.ZONES, List.of(zone)) : delete(zone);
          case 1 -> zones > 6 ? delete(zone) : edits.inserted(Sheets.ZONES, zone, 1);
          case 2 -> edits.typed(Facts.ZONE_NOTE.reference(), zone, "tab\tand \\ line\nend");
          case 3 -> edits.typed(Emitters.AREA.reference(), zone, "a lot");
          case 4 -> edits.switched(other(design.book().system()));
          case 5 -> edits.moved(Sheets.ZONES, List.of(zone), zone == 0 ? 1 : 0, true);
          case 6 -> edits.typed(Facts.ZONE_NOTE.reference(), zone, "");
          case 7 -> edits.noted(Emitters.AREA.reference(), zone, "measured\ttwice\nby " + number);
          case 8 ->
              edits.tinted(
                  List.of(Emitters.AREA.reference(), Facts.ZONE_NAME.reference()),
                  List.of(zone),
                  random.nextBoolean() ? Tint.GREEN : Tint.NONE);
          default ->
              edits.typed(
                  Emitters.AREA.reference(), zone, Integer.toString(500 + random.nextInt(4000)));
        };
    Edit mark = edits.typed(Facts.PREPARED_BY.reference(), 0, "edit " + number);
    design.book().perform(new Edit.Several("step", List.of(edit, mark)));
    return number;
  }

  private Edit delete(int zone) {
    return design.edits().removed(Sheets.ZONES, zone, 1);
  }

  private static UnitSystem other(UnitSystem system) {
    return system == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
  }

  /** Returns what tells the content of a design from another, whatever its rows are called. */
  static String mark(Schema schema, BookSnapshot book) {
    StringBuilder text = new StringBuilder(book.system().name());
    for (TableDefinition table : schema.tables()) {
      for (Row row : book.rows(table.id())) {
        text.append('\n').append(table.id());
        for (int i = 0; i < table.columns().size(); i++) {
          String column = table.columns().get(i).reference().column();
          text.append('\t').append(EntryText.of(row.entry(i)));
          text.append(row.remark(column).inWords());
        }
      }
    }
    return text.length() + "/" + text.toString().hashCode();
  }

  /** The same of a design as it is now. */
  static String mark(Design design) {
    return mark(design.book().schema(), design.book().snapshot());
  }

  /** Returns the number of the last edit done to a design; 0 where none was. */
  static int numberIn(Design design) {
    Entry mark = design.book().entry(Facts.PREPARED_BY.reference(), 0);
    return mark instanceof Entry.Words words && words.text().startsWith("edit ")
        ? Integer.parseInt(words.text().substring(5))
        : 0;
  }
}
