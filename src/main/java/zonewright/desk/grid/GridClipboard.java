package zonewright.desk.grid;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;

/**
 * Cells on the way through the clipboard: as text and as a table for other programs, and for a grid
 * of this program as what was entered, so that a default copied stays a default.
 */
public final class GridClipboard {
  private static final DataFlavor ENTRIES = new DataFlavor(Cells.class, "entries of cells");

  private GridClipboard() {}

  /**
   * A block of cells.
   *
   * @param shown what stands in them, exactly
   * @param entered what would have to be typed to get them again
   */
  record Cells(List<List<String>> shown, List<List<String>> entered) {}

  /** Returns a block of cells as the text that spreadsheet programs exchange. */
  public static String text(List<List<String>> block) {
    return BlockText.write(block);
  }

  static Clipboard system() {
    return Toolkit.getDefaultToolkit().getSystemClipboard();
  }

  static void put(Cells cells) {
    system().setContents(new Block(cells), (clipboard, contents) -> {});
  }

  /** Puts cells there for other programs, as they stand. */
  static void putText(List<List<String>> shown) {
    system().setContents(new Text(shown), (clipboard, contents) -> {});
  }

  /**
   * Returns the values that are there to paste: of cells of this program what stood in them,
   * calculated or not.
   */
  static List<List<String>> values() {
    try {
      Transferable there = system().getContents(GridClipboard.class);
      return there != null && there.isDataFlavorSupported(ENTRIES)
          ? ((Cells) there.getTransferData(ENTRIES)).shown()
          : take();
    } catch (UnsupportedFlavorException | IOException | IllegalStateException gone) {
      return List.of();
    }
  }

  /** Returns the block of cells that is there to paste; empty where there is none. */
  public static List<List<String>> take() {
    try {
      Transferable there = system().getContents(GridClipboard.class);
      if (there == null) {
        return List.of();
      }
      if (there.isDataFlavorSupported(ENTRIES)) {
        return ((Cells) there.getTransferData(ENTRIES)).entered();
      }
      if (there.isDataFlavorSupported(DataFlavor.stringFlavor)) {
        return BlockText.read((String) there.getTransferData(DataFlavor.stringFlavor));
      }
      if (there.isDataFlavorSupported(DataFlavor.allHtmlFlavor)) {
        return BlockHtml.read((String) there.getTransferData(DataFlavor.allHtmlFlavor));
      }
    } catch (UnsupportedFlavorException | IOException | IllegalStateException gone) {
      return List.of();
    }
    return List.of();
  }

  /** Cells for other programs. */
  private record Text(List<List<String>> shown) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {DataFlavor.stringFlavor, DataFlavor.allHtmlFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return List.of(getTransferDataFlavors()).contains(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
      if (flavor.equals(DataFlavor.stringFlavor)) {
        return BlockText.write(shown);
      }
      if (flavor.equals(DataFlavor.allHtmlFlavor)) {
        return BlockHtml.write(shown);
      }
      throw new UnsupportedFlavorException(flavor);
    }
  }

  /** Cells in all the forms in which they can be had. */
  private record Block(Cells cells) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {ENTRIES, DataFlavor.stringFlavor, DataFlavor.allHtmlFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return List.of(getTransferDataFlavors()).contains(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
      return flavor.equals(ENTRIES) ? cells : new Text(cells.shown()).getTransferData(flavor);
    }
  }
}
