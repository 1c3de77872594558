package zonewright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Ranks columns by how well words written by a person fit their names and what else they are
 * called. Words are weighed by how few columns have them; a slip of the finger in a long word and
 * another ending are forgiven.
 */
public final class ColumnSearch {
  /** What an exact name, or another name written exactly, scores. */
  public static final double EXACT = 1;

  /** What fits less is not worth showing. */
  private static final double ENOUGH = 0.45;

  private static final double SLIP = 0.85;
  private static final double SLIP_IN_A_SHORT_WORD = 0.7;
  private static final double LONGER = 0.9;
  private static final double INEXACT = 0.98;

  /** Words of a question that say nothing of what is asked. */
  private static final Set<String> EMPTY_WORDS =
      Set.of(
          "a an the of to in on at for per and is are be do does did i my me we it its this that"
              .concat(" what how much should would can will need with by from when which have")
              .split(" "));

  private final List<Named> names = new ArrayList<>();
  private final Map<String, Double> weights = new HashMap<>();
  private final String preferred;
  private double unheard;

  /** A name of a column, taken apart. */
  private record Named(Column column, String plain, List<String> words) {}

  /** A column that fits, and how well: 1 where a name was written as it is. */
  public record Fit(Column column, double score) {}

  /**
   * Takes columns apart.
   *
   * @param preferred identifier of the table whose columns come first where others fit as well
   * @param others what else a column is called
   */
  public ColumnSearch(
      List<Column> columns, String preferred, Function<Column, List<String>> others) {
    this.preferred = preferred;
    Map<String, Set<Column>> having = new HashMap<>();
    for (Column column : columns) {
      List<String> called = new ArrayList<>(others.apply(column));
      called.add(column.name());
      for (String name : called) {
        Named named = new Named(column, plain(name), words(name));
        names.add(named);
        named
            .words()
            .forEach(word -> having.computeIfAbsent(word, any -> new HashSet<>()).add(column));
      }
    }
    unheard = Math.log(columns.size() + 1.0);
    having.forEach((word, in) -> weights.put(word, unheard - Math.log(in.size())));
  }

  /** Returns the columns that fit, the best first; of equal ones those of the preferred table. */
  public List<Fit> ranked(String written) {
    String plain = plain(written);
    List<String> words = words(written);
    Map<Column, Double> best = new HashMap<>();
    List<Column> order = new ArrayList<>();
    for (Named named : names) {
      double score = named.plain().equals(plain) ? EXACT : INEXACT * alike(words, named.words());
      if (score >= ENOUGH) {
        if (!best.containsKey(named.column())) {
          order.add(named.column());
        }
        best.merge(named.column(), score, Math::max);
      }
    }
    return order.stream()
        .map(column -> new Fit(column, best.get(column)))
        .sorted(
            Comparator.comparingDouble((Fit fit) -> -fit.score())
                .thenComparing(fit -> !fit.column().reference().table().equals(preferred)))
        .toList();
  }

  /** Returns the share of the weight of all words that both have, 1 where all are the same. */
  private double alike(List<String> written, List<String> name) {
    double shared = 0;
    double whole = 0;
    for (String word : written) {
      double best = name.stream().mapToDouble(other -> alike(word, other)).max().orElse(0);
      shared += best * weight(word);
      whole += weight(word);
    }
    for (String word : name) {
      double best = written.stream().mapToDouble(other -> alike(other, word)).max().orElse(0);
      shared += best * weight(word);
      whole += weight(word);
    }
    return whole == 0 ? 0 : shared / whole;
  }

  private double weight(String word) {
    return weights.getOrDefault(word, unheard);
  }

  private static double alike(String written, String name) {
    if (written.equals(name)) {
      return 1;
    }
    int length = Math.min(written.length(), name.length());
    if (length < 3 || Math.max(written.length(), name.length()) < 4) {
      return 0;
    }
    if (length > 3 && (name.startsWith(written) || written.startsWith(name))) {
      return LONGER;
    }
    int slips = swapped(written, name) ? 1 : Nearest.distance(written, name);
    if (slips == 1) {
      return length >= 5 ? SLIP : SLIP_IN_A_SHORT_WORD;
    }
    return slips == 2 && length >= 7 ? SLIP : 0;
  }

  /** Says whether two words differ only in two letters beside each other that changed places. */
  private static boolean swapped(String written, String name) {
    if (written.length() != name.length()) {
      return false;
    }
    int at = 0;
    while (at < name.length() - 1 && written.charAt(at) == name.charAt(at)) {
      at++;
    }
    return at < name.length() - 1
        && written.charAt(at) == name.charAt(at + 1)
        && written.charAt(at + 1) == name.charAt(at)
        && written.substring(at + 2).equals(name.substring(at + 2));
  }

  /** Returns what is written in small letters, each word apart by one space. */
  static String plain(String written) {
    return written
        .toLowerCase(Locale.ROOT)
        .replaceAll("['’]", "")
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .strip();
  }

  private static List<String> words(String written) {
    List<String> all =
        List.of(plain(written).split(" ")).stream().map(ColumnSearch::singular).toList();
    List<String> kept = all.stream().filter(word -> !EMPTY_WORDS.contains(word)).toList();
    return kept.isEmpty() ? all : kept;
  }

  private static String singular(String word) {
    return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
        ? word.substring(0, word.length() - 1)
        : word;
  }
}
