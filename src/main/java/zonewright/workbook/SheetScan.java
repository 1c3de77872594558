package zonewright.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Looks through a sheet's part without taking it apart: how many rows and cells it has, and what is
 * left of it without most of its rows.
 */
final class SheetScan {
  /** So many rows are left, in which headings are looked for. */
  private static final int ROWS_LEFT = 40;

  /** No more than this is left of a sheet. */
  private static final int MOST_LEFT = 32 << 20;

  private static final byte[] ROW = "<row".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] CELL = "<c ".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] ROW_END = "</row>".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] END = "</sheetData>".getBytes(StandardCharsets.US_ASCII);

  private final byte[] block = new byte[1 << 16];
  private final boolean slim;
  private final ByteArrayOutputStream left = new ByteArrayOutputStream();
  private long rows;
  private long cells;
  private long bytes;
  private int rowsLeft;
  private boolean skipping;
  private boolean behind;

  /**
   * Prepares for one part.
   *
   * @param slim whether to keep what is left without most rows
   */
  SheetScan(boolean slim) {
    this.slim = slim;
  }

  /** Is asked now and then whether to go on. */
  interface Goes {
    void on(SheetScan scan) throws DesignFileException;
  }

  /** Looks through a part. */
  void through(InputStream part, Goes goes) throws IOException, DesignFileException {
    int kept = 0;
    for (int length; (length = part.read(block, kept, block.length - kept)) >= 0; ) {
      bytes += length;
      int end = kept + length;
      kept = look(end, false);
      System.arraycopy(block, end - kept, block, 0, kept);
      goes.on(this);
    }
    look(kept, true);
    goes.on(this);
  }

  /** Looks at the block; returns how many bytes of its end to look at again with the next. */
  private int look(int end, boolean last) throws IOException {
    int from = 0;
    int at = 0;
    int stop = last ? end : end - END.length;
    for (; at < stop; at++) {
      if (block[at] != '<') {
        continue;
      }
      if (here(at, end, CELL)) {
        cells++;
      } else if (here(at, end, ROW)) {
        rows++;
      } else if (slim && !behind && here(at, end, END)) {
        if (skipping) {
          from = at;
        }
        skipping = false;
        behind = true;
      } else if (slim && !behind && !skipping && here(at, end, ROW_END)) {
        if (++rowsLeft == ROWS_LEFT) {
          keep(from, at + ROW_END.length);
          skipping = true;
        }
      }
    }
    at = Math.max(0, at);
    if (!skipping) {
      keep(from, at);
    }
    return end - at;
  }

  private boolean here(int at, int end, byte[] word) {
    if (at + word.length > end) {
      return false;
    }
    for (int i = 0; i < word.length; i++) {
      if (block[at + i] != word[i]) {
        return false;
      }
    }
    return true;
  }

  private void keep(int from, int to) throws IOException {
    if (slim && to > from) {
      if (left.size() + to - from > MOST_LEFT) {
        throw new IOException("a sheet that cannot be read row by row");
      }
      left.write(block, from, to - from);
    }
  }

  /** Returns how many rows there were. */
  long rows() {
    return rows;
  }

  /** Returns how many cells there were, empty ones among them. */
  long cells() {
    return cells;
  }

  /** Returns how many bytes there were. */
  long bytes() {
    return bytes;
  }

  /** Returns what is left of the part. */
  byte[] left() {
    return left.toByteArray();
  }
}
