package zonewright.desk.file;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.InputEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Takes a file that is dropped on the window, and leaves all else to who handled it before. */
public final class FileDrop extends TransferHandler {
  private final transient Optional<TransferHandler> before;
  private final transient Consumer<Path> open;

  private FileDrop(Optional<TransferHandler> before, Consumer<Path> open) {
    this.before = before;
    this.open = open;
  }

  /** Lets files be dropped on a component and on all in it that would refuse them otherwise. */
  public static void accept(JComponent root, Consumer<Path> open) {
    root.setTransferHandler(new FileDrop(Optional.empty(), open));
    within(root, open);
  }

  private static void within(Container container, Consumer<Path> open) {
    for (Component component : container.getComponents()) {
      if (component instanceof JComponent part
          && part.getTransferHandler() != null
          && !(part.getTransferHandler() instanceof FileDrop)) {
        part.setTransferHandler(new FileDrop(Optional.of(part.getTransferHandler()), open));
      }
      if (component instanceof Container inner) {
        within(inner, open);
      }
    }
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
        || before.map(handler -> handler.canImport(support)).orElse(false);
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
      return before.map(handler -> handler.importData(support)).orElse(false);
    }
    try {
      Object dropped = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      if (dropped instanceof List<?> files
          && !files.isEmpty()
          && files.get(0) instanceof File file) {
        open.accept(file.toPath());
        return true;
      }
      return false;
    } catch (UnsupportedFlavorException | IOException unreadable) {
      return false;
    }
  }

  @Override
  public boolean importData(JComponent component, Transferable transferable) {
    return importData(new TransferSupport(component, transferable));
  }

  @Override
  public int getSourceActions(JComponent component) {
    return before.map(handler -> handler.getSourceActions(component)).orElse(NONE);
  }

  @Override
  public void exportToClipboard(JComponent component, Clipboard clipboard, int action) {
    before.ifPresent(handler -> handler.exportToClipboard(component, clipboard, action));
  }

  @Override
  public void exportAsDrag(JComponent component, InputEvent event, int action) {
    before.ifPresent(handler -> handler.exportAsDrag(component, event, action));
  }
}
