package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.design.IrrigationSheets;
import zonewright.design.OwnColumns;
import zonewright.design.Sample;
import zonewright.design.Synonyms;
import zonewright.equation.KindWords;
import zonewright.equation.KnownColumns;
import zonewright.equation.TypedEquation;
import zonewright.formula.Formula;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Working;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookLayout;

/**
 * A column somebody types is the column the program declares: the equations of the program's own
 * columns, typed into columns of one's own, give the same numbers to the last bit, the same formula
 * in the workbook and the same working.
 */
class OwnColumnsEqualDeclaredTest {
  /** So many of the program's equations the language must have words for, at the least. */
  private static final int MANY = 290;

  private static final String AGAIN = "Own ";

  /** Declared columns with their equation as it would be typed. */
  private static Map<Column, String> typed() {
    Schema schema = IrrigationSheets.schema();
    Map<Column, String> typed = new LinkedHashMap<>();
    for (TableDefinition table : schema.tables()) {
      KnownColumns known = new KnownColumns(schema, Map.of(), table.id(), Synonyms::of);
      for (Column column : table.columns()) {
        if (column.role() == Column.Role.CALCULATED
            && column.content() == Column.Content.NUMBER
            && column.wordsFrom() == Double.POSITIVE_INFINITY) {
          Formula formula = column.formula().orElseThrow();
          TypedEquation.of(formula, schema, known)
              .ifPresent(equation -> typed.put(column, equation));
        }
      }
    }
    return typed;
  }

  @ParameterizedTest
  @CsvSource({"LIBRARY_GARDEN, US", "CAMPUS_RETROFIT, SI"})
  void whatIsTypedEqualsWhatIsDeclared(Sample sample, UnitSystem system) {
    Map<Column, String> typed = typed();
    Design design = sample.design(system);
    Book book = design.book();
    List<List<Entry>> rows = new ArrayList<>();
    for (Map.Entry<Column, String> each : typed.entrySet()) {
      String sheet = book.schema().table(each.getKey().reference().table()).title();
      String kind = KindWords.of(each.getKey().kind());
      Entry blank = Entry.BLANK;
      rows.add(
          List.of(
              new Entry.Words(AGAIN + each.getKey().name()),
              new Entry.Words(sheet),
              new Entry.Words(kind),
              new Entry.Words(each.getValue()),
              new Entry.Figure(each.getKey().decimals(system)),
              blank,
              blank,
              blank));
    }
    book.perform(new Edits(book).appended(Sheets.OWN_COLUMNS, rows));
    OwnColumns own = OwnColumns.of(book);
    assertThat(design.findings())
        .filteredOn(finding -> finding.column().table().equals(Sheets.OWN_COLUMNS))
        .isEmpty();
    WorkbookLayout layout = WorkbookLayout.of(book.schema(), system);
    int row = 0;
    int alike = 0;
    for (Column declared : typed.keySet()) {
      Column again = own.column(row).orElseThrow();
      numbers(book, declared, again);
      if (again.formula().equals(declared.formula())) {
        alike++;
        texts(layout, declared, again);
        workings(book, declared, again);
      }
      row++;
    }
    assertThat(alike).isGreaterThan(MANY);
  }

  private static void numbers(Book book, Column declared, Column again) {
    for (int row = 0; row < book.rows(declared.reference().table()); row++) {
      assertThat(Double.valueOf(book.number(again.reference(), row)))
          .as("%s, row %d: %s", declared, row, again.source())
          .isEqualTo(Double.valueOf(book.number(declared.reference(), row)));
    }
  }

  /** The formula in the workbook, but for the names of steps, which begin with the column's. */
  private static void texts(WorkbookLayout layout, Column declared, Column again) {
    Optional<String> text =
        layout.formula(again).map(each -> each.replace(AGAIN, "").replace("Own_", ""));
    assertThat(text).as(again.source()).isEqualTo(layout.formula(declared));
  }

  private static void workings(Book book, Column declared, Column again) {
    if (book.rows(declared.reference().table()) == 0) {
      return;
    }
    Working one = book.working(again.reference(), 0);
    Working other = book.working(declared.reference(), 0);
    assertThat(one.symbols()).isEqualTo(other.symbols());
    assertThat(one.taken()).isEqualTo(other.taken());
    assertThat(one.numbers()).isEqualTo(other.numbers());
    assertThat(one.inputs()).isEqualTo(other.inputs());
    assertThat(one.cases()).isEqualTo(other.cases());
  }
}
