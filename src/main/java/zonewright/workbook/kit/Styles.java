package zonewright.workbook.kit;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Column;
import zonewright.sheet.Tint;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/** Cell styles, each made once. */
public final class Styles {
  private static final String TYPEFACE = "Arial";

  /** An indention no cell of ours has. */
  private static final short MARK = 13;

  private static final String LINE = "D9DEDA";

  private final XSSFWorkbook workbook;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<CellStyleName, XSSFFont> fonts = new EnumMap<>(CellStyleName.class);

  /** One that was made and found to be there already, for the next to be made. */
  private XSSFCellStyle spare;

  private final Map<Ground, XSSFCellStyle> grounded = new HashMap<>();

  private record Ground(int style, int plain, Tint tint) {}

  private record Key(CellStyleName look, String format, boolean literal) {}

  private Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /**
   * Returns the styles of a workbook. One without sheets gets our usual typeface; styles that one
   * with sheets has already are used again.
   */
  public static Styles of(XSSFWorkbook workbook) {
    if (workbook.getNumberOfSheets() == 0) {
      XSSFFont usual = workbook.getFontAt(0);
      usual.setFontName(TYPEFACE);
      usual.setFontHeightInPoints((short) CellStyleName.CALCULATED.points);
    }
    Styles styles = new Styles(workbook);
    for (int i = 1; i < workbook.getNumCellStyles(); i++) {
      if (marked(workbook.getCellStyleAt(i))) {
        styles.spare = workbook.getCellStyleAt(i);
      }
    }
    return styles;
  }

  /** Returns a style for words. */
  public XSSFCellStyle of(CellStyleName look) {
    return of(look, "General", false);
  }

  /** Returns a style for numbers shown in {@code format}. */
  public XSSFCellStyle of(CellStyleName look, String format) {
    return of(look, format, false);
  }

  /**
   * Returns a style for words that a spreadsheet could take for a formula were they typed again.
   */
  public XSSFCellStyle literal(CellStyleName look) {
    return of(look, "General", true);
  }

  private XSSFCellStyle of(CellStyleName look, String format, boolean literal) {
    return styles.computeIfAbsent(new Key(look, format, literal), this::make);
  }

  private XSSFCellStyle make(Key key) {
    // A file that is saved again and again must not gather styles: what it has is used again.
    XSSFCellStyle made = spare == null ? workbook.createCellStyle() : spare;
    spare = null;
    made.cloneStyleFrom(workbook.getCellStyleAt(0));
    fill(made, key);
    return once(made);
  }

  /** Returns a style like another but for its ground, which is that of a third or a colour. */
  public XSSFCellStyle grounded(XSSFCellStyle style, XSSFCellStyle plain, Tint tint) {
    return grounded.computeIfAbsent(
        new Ground(style.getIndex(), plain.getIndex(), tint),
        key -> {
          XSSFCellStyle made = spare == null ? workbook.createCellStyle() : spare;
          spare = null;
          made.cloneStyleFrom(style);
          if (tint != Tint.NONE) {
            made.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            made.setFillForegroundColor(colour("%06X".formatted(tint.light())));
          } else {
            made.setFillPattern(plain.getFillPattern());
            made.setFillForegroundColor(plain.getFillForegroundXSSFColor());
          }
          return once(made);
        });
  }

  private XSSFCellStyle once(XSSFCellStyle made) {
    String looks = looks(made);
    for (int i = 0; i < workbook.getNumCellStyles(); i++) {
      if (i != made.getIndex() && looks(workbook.getCellStyleAt(i)).equals(looks)) {
        spare = made;
        mark(spare);
        return workbook.getCellStyleAt(i);
      }
    }
    return made;
  }

  /** The spare is left so that the next writing of the same file knows it. */
  private void mark(XSSFCellStyle style) {
    style.cloneStyleFrom(workbook.getCellStyleAt(0));
    style.setHidden(true);
    style.setIndention(MARK);
  }

  private static boolean marked(XSSFCellStyle style) {
    return style.getHidden() && style.getIndention() == MARK;
  }

  private static String looks(XSSFCellStyle style) {
    return style.getCoreXf().xmlText();
  }

  private void fill(XSSFCellStyle style, Key key) {
    CellStyleName look = key.look();
    style.setFont(fonts.computeIfAbsent(look, this::font));
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setWrapText(look.wrapped);
    style.setLocked(!look.typed());
    style.setQuotePrefixed(key.literal());
    style.setDataFormat(workbook.createDataFormat().getFormat(key.format()));
    if (look.heading()) {
      style.setAlignment(HorizontalAlignment.CENTER);
    } else if (key.format().equals("General")) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention(
          (short) (look == CellStyleName.BAND || look == CellStyleName.TITLE ? 0 : 1));
    } else {
      // Numbers go right and words left, so that a long reason loses its end, not its start.
      style.setAlignment(HorizontalAlignment.GENERAL);
    }
    if (look.fill != null) {
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      style.setFillForegroundColor(colour(look.fill));
    }
    if (look.typed()
        || look == CellStyleName.CALCULATED
        || look == CellStyleName.TOTAL
        || look == CellStyleName.TABLE
        || look == CellStyleName.NAME) {
      XSSFColor line = colour(LINE);
      style.setBorderBottom(BorderStyle.THIN);
      style.setBottomBorderColor(line);
      style.setBorderRight(BorderStyle.THIN);
      style.setRightBorderColor(line);
    }
  }

  private XSSFFont font(CellStyleName look) {
    XSSFFont font = new XSSFFont();
    font.setFontName(TYPEFACE);
    font.setFontHeightInPoints((short) look.points);
    font.setBold(look.bold);
    font.setItalic(look.italic);
    font.setColor(colour(look.ink));
    for (int i = 0; i < workbook.getNumberOfFonts(); i++) {
      if (workbook.getFontAt(i).getCTFont().xmlText().equals(font.getCTFont().xmlText())) {
        return workbook.getFontAt(i);
      }
    }
    font.registerTo(workbook.getStylesSource());
    return font;
  }

  /** Returns a colour from six hexadecimal digits. */
  public static XSSFColor colour(String digits) {
    return new XSSFColor(HexFormat.of().parseHex(digits), null);
  }

  /** Returns the number format of a column's cells. */
  public static String format(Column column, UnitSystem system) {
    if (column.content() != Column.Content.NUMBER) {
      return "General";
    }
    int decimals = column.decimals(system);
    String number = format(column.kind(), decimals, column.inFull());
    double least = column.wordsFrom();
    return column
        .wordsFor(least)
        .filter(words -> Double.isFinite(least))
        .map(words -> "[>=%s]\"%s\";%s".formatted(QuantityText.exact(least), words, number))
        .orElse(number);
  }

  /** Returns the number format of a kind with the decimals given. */
  public static String format(QuantityKind kind, int decimals) {
    return format(kind, decimals, false);
  }

  private static String format(QuantityKind kind, int decimals, boolean inFull) {
    if (kind.onCalendar()) {
      return kind == QuantityKind.DATE ? "yyyy\\-mm\\-dd" : "hh:mm";
    }
    if (inFull && decimals == 0 && !kind.percent()) {
      // any pattern with places that may be blank leaves the point of whole numbers standing
      return "General";
    }
    String places = decimals == 0 ? "" : "." + "0".repeat(decimals);
    if (inFull && decimals > 0) {
      places += "#".repeat(Math.max(0, QuantityText.MOST_DECIMALS - decimals));
    }
    return kind.percent() ? "0" + places + "%" : "#,##0" + places;
  }
}
