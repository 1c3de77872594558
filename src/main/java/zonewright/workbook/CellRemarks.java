package zonewright.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Remark;
import zonewright.sheet.Tint;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.SheetColumn;

/**
 * A person's notes and colours on the cells of a sheet: comments and fills. The program itself
 * makes no comments, and no fills but those of {@link CellStyleName}, so what else stands on our
 * cells is a person's, whichever program it was made in.
 */
final class CellRemarks {
  /** Where the words begin of a comment that others may answer, in files for older programs. */
  private static final String ANSWERED = "[Threaded comment]";

  private static final String WORDS_OF_ANSWERED = "Comment:";

  /** How far a fill may be from one of ours, all three parts added, and still be ours. */
  private static final int NEAR = 24;

  /** With less between its strongest and weakest part a fill is grey, which is none of ours. */
  private static final int GREY = 18;

  private static final int NOTE_COLUMNS = 3;
  private static final int NOTE_LINE = 40;

  private final SheetCells cells;
  private final XSSFSheet sheet;
  private final Map<CellAddress, String> notes = new HashMap<>();

  CellRemarks(SheetCells cells) {
    this.cells = cells;
    this.sheet = cells.sheet();
    sheet.getCellComments().forEach((at, comment) -> notes.put(at, words(comment)));
  }

  private static String words(XSSFComment comment) {
    String all = comment.getString() == null ? "" : comment.getString().getString();
    String plain = all.replace("\r\n", "\n").replace('\r', '\n');
    int start = plain.startsWith(ANSWERED) ? plain.indexOf(WORDS_OF_ANSWERED) : -1;
    return (start < 0 ? plain : plain.substring(start + WORDS_OF_ANSWERED.length())).strip();
  }

  /**
   * Returns the remark on what stands in some cells of a row.
   *
   * @param positions where a person types it and where the value used stands
   */
  Remark at(int row, List<Integer> positions) {
    List<String> words =
        positions.stream()
            .map(position -> notes.getOrDefault(new CellAddress(row, position), ""))
            .filter(note -> !note.isEmpty())
            .distinct()
            .toList();
    Tint tint =
        positions.stream()
            .map(position -> cells.tint(row, position))
            .filter(each -> each != Tint.NONE)
            .findFirst()
            .orElse(Tint.NONE);
    return new Remark(String.join("\n", words), tint);
  }

  /** Returns the colour whose hue the fill of a cell is nearest to; none for what is ours. */
  static Tint tint(XSSFCellStyle style) {
    XSSFColor fill =
        style.getFillPattern() == FillPatternType.NO_FILL
            ? null
            : style.getFillForegroundXSSFColor();
    byte[] named = fill == null ? null : fill.getRGBWithTint();
    byte[] parts = fill == null || named != null ? named : fill.getRGB();
    if (parts == null || parts.length < 3) {
      return Tint.NONE;
    }
    int rgb = (parts[0] & 0xFF) << 16 | (parts[1] & 0xFF) << 8 | (parts[2] & 0xFF);
    boolean ours =
        Stream.of(CellStyleName.values())
            .map(CellStyleName::fill)
            .flatMap(Stream::ofNullable)
            .anyMatch(own -> distance(rgb, Integer.parseInt(own, 16)) <= NEAR);
    return ours || spread(rgb) < GREY ? Tint.NONE : nearest(rgb);
  }

  private static int part(int rgb, int shift) {
    return rgb >> shift & 0xFF;
  }

  private static int distance(int one, int other) {
    int distance = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      distance += Math.abs(part(one, shift) - part(other, shift));
    }
    return distance;
  }

  private static int spread(int rgb) {
    int most = Math.max(part(rgb, 0), Math.max(part(rgb, 8), part(rgb, 16)));
    int least = Math.min(part(rgb, 0), Math.min(part(rgb, 8), part(rgb, 16)));
    return most - least;
  }

  private static Tint nearest(int rgb) {
    Tint best = Tint.YELLOW;
    double least = Double.POSITIVE_INFINITY;
    for (Tint tint : Tint.values()) {
      double away = Math.abs(hue(tint.light()) - hue(rgb));
      double round = Math.min(away, 1 - away);
      if (tint != Tint.NONE && round < least) {
        best = tint;
        least = round;
      }
    }
    return best;
  }

  /** Returns where on the circle of colours one stands, 0 to 1: red, then green, then blue. */
  private static double hue(int rgb) {
    int red = part(rgb, 16);
    int green = part(rgb, 8);
    int blue = part(rgb, 0);
    double spread = Math.max(1, spread(rgb));
    int most = Math.max(red, Math.max(green, blue));
    double sixth =
        most == red
            ? (green - blue) / spread
            : most == green ? 2 + (blue - red) / spread : 4 + (red - green) / spread;
    return (sixth + 6) % 6 / 6;
  }

  /**
   * Brings the cells of a row to what is wanted; what already says so stays as a person made it.
   *
   * @param by the cells in which a column of the design stands, those that exist
   * @param writer knows how they look without a remark
   */
  void renew(int row, Map<Integer, SheetColumn> by, Remark wanted, CellWriter writer) {
    List<Integer> positions = List.copyOf(by.keySet());
    Remark there = at(row, positions);
    XSSFRow target = sheet.getRow(row);
    if (!there.note().equals(wanted.note())) {
      positions.forEach(position -> target.getCell(position).removeCellComment());
      note(row, positions.get(0), wanted.note());
    }
    if (there.tint() != wanted.tint()) {
      by.forEach(
          (position, column) -> {
            XSSFCell cell = target.getCell(position);
            cell.setCellStyle(writer.tinted(cell.getCellStyle(), column, wanted.tint()));
          });
    }
  }

  /** Takes the note on a cell away. */
  void clear(int row, int position) {
    if (notes.containsKey(new CellAddress(row, position))) {
      sheet.getRow(row).getCell(position).removeCellComment();
    }
  }

  /**
   * Brings the cells of a one-row table to what its book holds.
   *
   * @param places in which columns of the sheet typed and used values stand
   * @param lines in which rows the columns of the design stand
   */
  void renew(
      Book book, Map<SheetColumn, Integer> places, Map<Column, Integer> lines, CellWriter writer) {
    lines.forEach(
        (column, row) ->
            renew(row, cells(places, column), book.remark(column.reference(), 0), writer));
  }

  /** Puts a note on a cell, which need not be there yet; none where it has no words. */
  void note(int row, int position, String words) {
    if (words.isEmpty()) {
      return;
    }
    List<String> lines = new ArrayList<>(words.lines().toList());
    int high = lines.stream().mapToInt(line -> 1 + line.length() / NOTE_LINE).sum() + 1;
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(
            0, 0, 0, 0, position + 1, row, position + 1 + NOTE_COLUMNS, row + high);
    XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setAddress(new CellAddress(row, position));
    comment.setString(new XSSFRichTextString(CellText.encoded(words)));
    comment.setAuthor("");
  }

  /**
   * Returns the cells in which a column of the design stands, by their positions: where a person
   * types first, then where the value used stands.
   *
   * @param places where the columns of the sheet stand
   */
  static Map<Integer, SheetColumn> cells(Map<SheetColumn, Integer> places, Column column) {
    Map<Integer, SheetColumn> cells = new LinkedHashMap<>();
    places.entrySet().stream()
        .filter(
            place ->
                place.getKey().is(SheetColumn.Role.TYPED, column)
                    || place.getKey().is(SheetColumn.Role.VALUE, column))
        .sorted(Comparator.comparing(place -> place.getKey().role()))
        .forEach(place -> cells.put(place.getValue(), place.getKey()));
    return cells;
  }

  /** Returns the positions there are, where a person types first. */
  static List<Integer> positions(Optional<Integer> typed, Optional<Integer> used) {
    return Stream.of(typed, used).flatMap(Optional::stream).distinct().toList();
  }
}
