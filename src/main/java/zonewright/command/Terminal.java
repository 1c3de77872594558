package zonewright.command;

import java.io.Console;
import java.io.PrintWriter;
import java.util.Optional;

/** Where somebody sits who can be asked, if somebody does. */
interface Terminal {
  /** The terminal of this process. */
  Terminal REAL = Terminal::typed;

  /**
   * Asks for a password, which is not shown as it is typed.
   *
   * @param err where to ask
   * @return what was typed; none where nobody sits there, or nothing was typed
   */
  Optional<String> password(PrintWriter err);

  @SuppressWarnings("SystemConsoleNull") // later versions ask whoever is there: no answer ends it
  private static Optional<String> typed(PrintWriter err) {
    Console console = System.console();
    if (console == null) {
      return Optional.empty();
    }
    err.print("Password: ");
    err.flush();
    char[] typed = console.readPassword();
    return typed == null || typed.length == 0 ? Optional.empty() : Optional.of(new String(typed));
  }
}
