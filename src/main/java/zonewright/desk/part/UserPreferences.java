package zonewright.desk.part;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/**
 * What the window remembers from one time to the next: recent files, its size, its look.
 *
 * <p>Where nothing can be kept, it is forgotten at the end and nobody is troubled.
 */
public final class UserPreferences {
  private static final int MOST_RECENT = 8;

  /** The store grumbles at the console where it cannot write; held here so that it stays quiet. */
  private static final Logger STORE_LOG = Logger.getLogger("java.util.prefs");

  private final Preferences store;

  /** Remembers in a place of one's own. */
  public UserPreferences(Preferences store) {
    this.store = store;
  }

  /** Returns the memory of the person who is logged in. */
  public static UserPreferences ofUser() {
    STORE_LOG.setLevel(Level.OFF);
    return new UserPreferences(Preferences.userRoot().node("zonewright/desk"));
  }

  /** Returns a remembered word, or {@code usual}. */
  public String word(String key, String usual) {
    try {
      return store.get(key, usual);
    } catch (IllegalStateException gone) {
      return usual;
    }
  }

  /** Returns a remembered number, or {@code usual}. */
  public int number(String key, int usual) {
    try {
      return store.getInt(key, usual);
    } catch (IllegalStateException gone) {
      return usual;
    }
  }

  /** Remembers a word. */
  public void keep(String key, String word) {
    try {
      if (word.length() <= Preferences.MAX_VALUE_LENGTH) {
        store.put(key, word);
        store.flush();
      }
    } catch (BackingStoreException | IllegalStateException lost) {
      forgotten();
    }
  }

  /** Remembers a number. */
  public void keep(String key, int number) {
    keep(key, Integer.toString(number));
  }

  /** Nothing that a person needs to hear about: the next start uses what is usual. */
  private static void forgotten() {}

  /** Returns the files opened or saved last, the latest first. */
  public List<Path> recent() {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MOST_RECENT; i++) {
      String file = word("recent" + i, "");
      if (!file.isEmpty()) {
        try {
          files.add(Path.of(file));
        } catch (InvalidPathException unreadable) {
          forgotten();
        }
      }
    }
    return files;
  }

  /** Puts a file at the head of the recent ones. */
  public void used(Path file) {
    List<Path> files = recent();
    Path whole = file.toAbsolutePath().normalize();
    files.remove(whole);
    files.add(0, whole);
    for (int i = 0; i < MOST_RECENT; i++) {
      keep("recent" + i, i < files.size() ? files.get(i).toString() : "");
    }
  }
}
