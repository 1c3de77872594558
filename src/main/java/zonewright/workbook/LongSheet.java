package zonewright.workbook;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Reads the cells of a long sheet as they go by, and keeps of each what was typed or is shown.
 *
 * <p>Source: ECMA-376 part 1, 18.3.1.4 (c) and 18.3.1.40 (f).
 */
final class LongSheet extends DefaultHandler {
  private static final int MOST_COLUMNS = 16_384;

  private final XSSFWorkbook workbook;
  private final boolean since1904;
  private final String name;
  private final SheetCells cells;
  private final Map<String, String> words = new HashMap<>();
  private final Map<String, String> shared = new HashMap<>();
  private final Map<Integer, SheetCell.Format> formats = new HashMap<>();
  private final List<String> formulas = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final StringBuilder value = new StringBuilder();
  private SheetCell[] row = new SheetCell[0];
  private int rowNumber = -1;
  private int column = -1;
  private String type = "n";
  private int style;
  private String sharedName = "";
  private String formula = "";
  private boolean hasFormula;
  private boolean hasValue;
  private boolean listening;
  private int sounds;

  private LongSheet(XSSFWorkbook workbook, XSSFSheet sheet, boolean since1904) {
    this.workbook = workbook;
    this.since1904 = since1904;
    this.name = sheet.getSheetName();
    this.cells = SheetCells.streamed(sheet);
  }

  /**
   * Reads a sheet's part.
   *
   * @param since1904 whether the part counts its dates from 1904
   * @param progress is told how many bytes went by
   * @throws IOException when the part is damaged
   */
  static SheetCells read(
      XSSFWorkbook workbook, XSSFSheet sheet, boolean since1904, InputStream part, Went progress)
      throws IOException {
    LongSheet reader = new LongSheet(workbook, sheet, since1904);
    try {
      XMLReader parser = XMLHelper.newXMLReader();
      parser.setContentHandler(reader);
      parser.parse(new InputSource(new Counted(part, progress)));
    } catch (SAXException | ParserConfigurationException problem) {
      throw new IOException(problem);
    }
    return reader.cells;
  }

  /** Is told how many more bytes went by. */
  interface Went {
    void by(int bytes);
  }

  private static final class Counted extends FilterInputStream {
    private final Went went;

    Counted(InputStream stream, Went went) {
      super(stream);
      this.went = went;
    }

    @Override
    public int read(byte[] block, int from, int length) throws IOException {
      int read = super.read(block, from, length);
      went.by(Math.max(0, read));
      return read;
    }
  }

  @Override
  public void startElement(String space, String local, String qualified, Attributes attributes) {
    switch (local) {
      case "row" -> {
        String number = attributes.getValue("r");
        rowNumber = number == null ? rowNumber + 1 : Integer.parseInt(number) - 1;
        column = -1;
      }
      case "c" -> cell(attributes);
      case "f" -> {
        hasFormula = true;
        sharedName = "shared".equals(attributes.getValue("t")) ? attributes.getValue("si") : null;
        listen();
      }
      case "v" -> listen();
      case "t" -> listening = sounds == 0;
      case "is" -> text.setLength(0);
      case "rPh" -> sounds++;
      default -> {}
    }
  }

  private void listen() {
    text.setLength(0);
    listening = true;
  }

  private void cell(Attributes attributes) {
    String place = attributes.getValue("r");
    column = place == null ? column + 1 : column(place);
    if (column < 0 || column >= MOST_COLUMNS) {
      throw new IllegalStateException("a cell outside the sheet");
    }
    String said = attributes.getValue("t");
    type = said == null ? "n" : said;
    String look = attributes.getValue("s");
    style = look == null ? 0 : Integer.parseInt(look);
    cells.tint(rowNumber, column, workbook.getCellStyleAt(style));
    hasFormula = false;
    hasValue = false;
    sharedName = null;
    value.setLength(0);
  }

  /** The column a place such as {@code AB12} names, counted from 0. */
  private static int column(String place) {
    int column = 0;
    for (int i = 0; i < place.length() && Character.isLetter(place.charAt(i)); i++) {
      column = column * 26 + Character.toUpperCase(place.charAt(i)) - 'A' + 1;
    }
    return column - 1;
  }

  @Override
  public void characters(char[] letters, int from, int length) {
    if (listening) {
      text.append(letters, from, length);
    }
  }

  @Override
  public void endElement(String space, String local, String qualified) {
    switch (local) {
      case "f" -> {
        formula = formulaText();
        listening = false;
      }
      case "v", "is" -> {
        value.append(text);
        hasValue = true;
        listening = false;
      }
      case "t" -> listening = false;
      case "rPh" -> sounds--;
      case "c" -> keep(made());
      case "row" -> {
        cells.put(rowNumber, row);
        row = new SheetCell[0];
      }
      default -> {}
    }
  }

  private void keep(SheetCell cell) {
    if (cell == null) {
      return;
    }
    if (column >= row.length) {
      row = Arrays.copyOf(row, Math.max(column + 1, Math.min(MOST_COLUMNS, row.length * 2)));
    }
    row[column] = cell;
  }

  private SheetCell made() {
    if (hasFormula) {
      boolean number = hasValue && type.equals("n");
      return of(CellType.FORMULA, number ? number() : Double.NaN, formula);
    }
    if (!hasValue) {
      return null;
    }
    return switch (type) {
      case "b" -> of(CellType.BOOLEAN, Double.NaN, value.toString().equals("1") ? "TRUE" : "FALSE");
      case "e" -> of(CellType.ERROR, Double.NaN, once(value.toString()));
      case "s" -> {
        int index = Integer.parseInt(value.toString().strip());
        yield of(
            CellType.STRING,
            Double.NaN,
            once(workbook.getSharedStringSource().getItemAt(index).getString()));
      }
      case "str", "inlineStr" -> of(CellType.STRING, Double.NaN, once(decoded(value.toString())));
      case "n" -> numeric();
      default -> throw new IllegalStateException("a kind of cell not known: " + type);
    };
  }

  private SheetCell numeric() {
    double number = number();
    if (Double.isNaN(number)) {
      return of(CellType.STRING, number, once(value.toString().strip()));
    }
    boolean dated = format(number) == SheetCell.Format.DATED;
    double usual = dated && since1904 ? DateSystem.usual(number) : number;
    return of(
        CellType.NUMERIC,
        usual,
        dated ? SheetCell.date(workbook.getCellStyleAt(style), usual) : "");
  }

  private SheetCell of(CellType kind, double number, String words) {
    return new SheetCell(name, rowNumber, column, kind, number, words, format(number));
  }

  private SheetCell.Format format(double number) {
    XSSFCellStyle look = workbook.getCellStyleAt(style);
    SheetCell.Format format = formats.computeIfAbsent(style, any -> SheetCell.format(look, 1));
    return format == SheetCell.Format.DATED ? SheetCell.format(look, number) : format;
  }

  private double number() {
    return SheetCell.number(value.toString());
  }

  private String once(String text) {
    return words.computeIfAbsent(text, same -> same);
  }

  private static String decoded(String text) {
    return text.contains("_x") ? new XSSFRichTextString(text).getString() : text;
  }

  /** The formulas of a column are mostly the same, and are kept once. */
  private String formulaText() {
    if (sharedName != null && text.length() == 0) {
      return shared.getOrDefault(sharedName, "");
    }
    while (formulas.size() <= column) {
      formulas.add("");
    }
    String above = formulas.get(column);
    if (!above.contentEquals(text)) {
      above = text.toString();
      formulas.set(column, above);
    }
    if (sharedName != null) {
      shared.put(sharedName, above);
    }
    return above;
  }
}
