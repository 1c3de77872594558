package zonewright.desk.part;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/** Asks the desktop whether it is set to dark; where it does not answer, it is not. */
public final class SystemDarkness {
  private static final long PATIENCE_MILLIS = 700;

  private static final AtomicReference<CompletableFuture<Boolean>> ASKED = new AtomicReference<>();

  private SystemDarkness() {}

  /** Asks beforehand, so that who wants to know next need not wait for the answer. */
  public static void askAhead() {
    ASKED.set(CompletableFuture.supplyAsync(SystemDarkness::ask, work -> new Thread(work).start()));
  }

  /** Says whether the person has set their desktop to dark. */
  public static boolean isPreferred() {
    CompletableFuture<Boolean> ahead = ASKED.getAndSet(null);
    return ahead == null ? ask() : ahead.join();
  }

  private static boolean ask() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("mac")) {
      return answer("defaults", "read", "-g", "AppleInterfaceStyle").contains("dark");
    }
    if (system.contains("windows")) {
      return answer(
              "reg",
              "query",
              "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
              "/v",
              "AppsUseLightTheme")
          .contains("0x0");
    }
    return answer("gsettings", "get", "org.gnome.desktop.interface", "color-scheme")
        .contains("dark");
  }

  private static String answer(String... command) {
    try {
      Process process =
          new ProcessBuilder(List.of(command))
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!process.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
        process.destroy();
        return "";
      }
      return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
          .toLowerCase(Locale.ROOT);
    } catch (IOException notThere) {
      return "";
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return "";
    }
  }
}
