package zonewright;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import zonewright.command.Program;
import zonewright.command.Window;
import zonewright.desk.Desk;

/** Starts the program. */
public final class Zonewright {
  private Zonewright() {}

  /** Opens the window, or answers on the command line when there are arguments. */
  public static void main(String[] arguments) {
    Window window = new DesktopWindow();
    if (arguments.length == 0 && window.opened(Optional.empty())) {
      return; // setting the command line up would take longer than the window does
    }
    Program program = new Program(text(FileDescriptor.out), text(FileDescriptor.err), window);
    int code = program.run(arguments);
    if (code != 0) {
      System.exit(code);
    }
  }

  /** Not the system's own stream, which keeps to itself that a disk is full. */
  private static PrintWriter text(FileDescriptor to) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8), true);
  }

  private static final class DesktopWindow implements Window {
    private Optional<Desk> desk = Optional.empty();

    @Override
    public boolean possible() {
      try {
        if (GraphicsEnvironment.isHeadless()) {
          return false;
        }
        desk = Optional.of(Desk.begin());
        return GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice() != null;
      } catch (HeadlessException | AWTError | LinkageError noDisplay) {
        return false;
      }
    }

    @Override
    public void open(Optional<Path> file) {
      desk.orElseGet(Desk::begin).open(file);
    }
  }
}
