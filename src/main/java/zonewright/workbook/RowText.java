package zonewright.workbook;

import java.io.IOException;
import java.io.Writer;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import zonewright.sheet.Book;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Tint;
import zonewright.workbook.kit.SheetColumn;

/**
 * A table's rows as a sheet's part of the file has them.
 *
 * <p>Source: ECMA-376 part 1, 18.3.1.73 (row), 18.3.1.4 (c), 18.3.1.40 (f), 18.3.1.53 (is).
 */
final class RowText {
  private final TableDefinition table;
  private final List<SheetColumn> columns;
  private final CellWriter cells;
  private final String[] starts;
  private final Book book;

  /** By colour and position: the style of a cell, and that of words like a formula. */
  private final Map<Tint, String[]> styles = new EnumMap<>(Tint.class);

  private final Map<Tint, String[]> literals = new EnumMap<>(Tint.class);

  /** The identifier of the column of the design that a cell shows; empty for other cells. */
  private final String[] shows;

  /** Formulas by their text: what stands in the file, empty where the value is to stand alone. */
  private final Map<String, String> formulas = new HashMap<>();

  /**
   * Prepares; all styles are there once this is done, as they must be before the workbook itself is
   * written.
   */
  RowText(TableDefinition table, List<SheetColumn> columns, Book book, CellWriter cells) {
    this.table = table;
    this.columns = columns;
    this.book = book;
    this.cells = cells;
    starts = new String[columns.size()];
    shows = new String[columns.size()];
    for (int i = 0; i < starts.length; i++) {
      starts[i] = "<c r=\"" + CellReference.convertNumToColString(i);
      SheetColumn.Role role = columns.get(i).role();
      boolean shown = role == SheetColumn.Role.TYPED || role == SheetColumn.Role.VALUE;
      shows[i] = shown ? columns.get(i).column().orElseThrow().reference().column() : "";
    }
    Set<Tint> used = EnumSet.of(Tint.NONE);
    for (Row row : book.contents().rows(table.id())) {
      row.remarks().values().forEach(remark -> used.add(remark.tint()));
    }
    for (Tint tint : used) {
      styles.put(tint, styles(tint, cells::style));
      literals.put(tint, styles(tint, cells::literal));
    }
  }

  private String[] styles(Tint tint, Function<SheetColumn, XSSFCellStyle> plain) {
    return columns.stream()
        .map(
            column -> {
              XSSFCellStyle style = plain.apply(column);
              return tint == Tint.NONE ? style : cells.tinted(style, column, tint);
            })
        .map(style -> "\" s=\"" + style.getIndex() + "\"")
        .toArray(String[]::new);
  }

  /** Writes the row of a table that has this number, counted from 0. */
  void write(int row, Writer out) throws IOException {
    String number = Integer.toString(TableSheet.FIRST_ROW + row + 1);
    out.write("<row r=\"");
    out.write(number);
    out.write("\">");
    Row held = book.contents().row(table.id(), row);
    for (int position = 0; position < starts.length; position++) {
      Tint tint = held.remark(shows[position]).tint();
      CellWriter.Content content = cells.content(table, columns.get(position), row);
      out.write(starts[position]);
      out.write(number);
      out.write((content.literal() ? literals : styles).get(tint)[position]);
      inside(content, out);
    }
    out.write("</row>");
  }

  private void inside(CellWriter.Content content, Writer out) throws IOException {
    String formula = content.formula().map(this::formula).orElse("");
    if (content.error()) {
      out.write(" t=\"e\">");
      out.write(formula);
      out.write("<v>#N/A</v></c>");
    } else if (!Double.isNaN(content.number())) {
      out.write(">");
      out.write(formula);
      out.write("<v>");
      out.write(number(content.number()));
      out.write("</v></c>");
    } else if (content.words().isPresent()) {
      String words = escaped(content.words().get());
      if (formula.isEmpty()) {
        out.write(" t=\"inlineStr\"><is><t xml:space=\"preserve\">");
        out.write(words);
        out.write("</t></is></c>");
      } else {
        out.write(" t=\"str\">");
        out.write(formula);
        out.write("<v>");
        out.write(words);
        out.write("</v></c>");
      }
    } else if (formula.isEmpty()) {
      out.write("/>");
    } else {
      out.write(">");
      out.write(formula);
      out.write("</c>");
    }
  }

  private String formula(String text) {
    return formulas.computeIfAbsent(text, any -> "<f>" + escaped(text) + "</f>");
  }

  private static String number(double value) {
    long whole = (long) value;
    return whole == value && Math.abs(whole) < 1L << 53 && Double.compare(value, -0.0) != 0
        ? Long.toString(whole)
        : Double.toString(value);
  }

  /**
   * Returns text that means itself in a part of the file; what XML 1.0 (2.2, Char) has no place for
   * becomes a question mark, as it does where the library writes cells.
   */
  static String escaped(String text) {
    StringBuilder escaped = null;
    for (int i = 0; i < text.length(); i++) {
      String instead = instead(text, i);
      if (instead != null && escaped == null) {
        escaped = new StringBuilder(text.length() + 16).append(text, 0, i);
      }
      if (escaped != null) {
        if (instead == null) {
          escaped.append(text.charAt(i));
        } else {
          escaped.append(instead);
        }
      }
    }
    return escaped == null ? text : escaped.toString();
  }

  private static String instead(String text, int at) {
    char letter = text.charAt(at);
    return switch (letter) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '\r' -> "&#13;";
      case '\t', '\n' -> null;
      default -> letter < ' ' || letter >= 0xFFFE || halved(text, at) ? "?" : null;
    };
  }

  /** Says whether a letter is one half of a pair whose other half is not there. */
  private static boolean halved(String text, int at) {
    char letter = text.charAt(at);
    if (Character.isHighSurrogate(letter)) {
      return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
    }
    return Character.isLowSurrogate(letter)
        && (at == 0 || !Character.isHighSurrogate(text.charAt(at - 1)));
  }
}
