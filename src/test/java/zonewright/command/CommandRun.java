package zonewright.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A command that ran: what a person and a script get of it.
 *
 * @param code the exit code
 * @param out the results, with plain line ends
 * @param err the complaints and remarks, with plain line ends
 * @param opened the files the window was opened on; empty for the demo
 */
record CommandRun(int code, String out, String err, List<Optional<Path>> opened) {
  /** Runs a command where there is no display. */
  static CommandRun of(String... arguments) {
    return with(false, arguments);
  }

  /** Runs a command where there is a display. */
  static CommandRun onDesktop(String... arguments) {
    return with(true, arguments);
  }

  private static CommandRun with(boolean display, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    List<Optional<Path>> opened = new ArrayList<>();
    Window window =
        new Window() {
          @Override
          public boolean possible() {
            return display;
          }

          @Override
          public void open(Optional<Path> file) {
            opened.add(file);
          }
        };
    int code = new Program(new PrintWriter(out), new PrintWriter(err), window).run(arguments);
    return new CommandRun(code, lines(out), lines(err), opened);
  }

  private static String lines(StringWriter text) {
    return text.toString().replace("\r\n", "\n");
  }

  /** Returns the line with the answer, which stands below what was assumed. */
  String answer() {
    List<String> lines = out.lines().toList();
    return out.startsWith("Assumed") ? lines.get(lines.indexOf("") + 1) : firstLine();
  }

  /** Returns the first line of the results. */
  String firstLine() {
    return out.lines().findFirst().orElse("");
  }
}
