package zonewright.equation;

import java.util.List;
import java.util.Random;
import zonewright.sheet.Column;

/** Makes equations: well formed ones of all the language has, damaged ones, and nonsense. */
public final class RandomEquations {
  private static final List<String> NUMBERS =
      List.of("0", "1", "2.5", "12 gpm", "1.5 in", "500 ft2", "30%", "10 min", "4,5", "1e3", "3 d");
  private static final List<String> SIGNS = List.of(" + ", "-", " * ", "/", "^", " × ", "÷", " − ");
  private static final List<String> COMPARED = List.of("<", "<=", ">", ">=", "=", "<>", "≤", "≠");
  private static final List<String> WORDS =
      List.of("\"loam\"", "\"yes\"", "\"no limit\"", "\">5 gpm\"", "\"<=Area\"", "\"\"");
  private static final String NONSENSE =
      "=+-*/^%()[]\"';,.:!<>≤≥≠×÷−π0123456789eE abcZone Area IF(SUM(Site.\u00a0\u0000\t\n{}|\\~#@“”„";

  private final Random random;
  private final List<Column> columns;
  private final KnownColumns known;

  /** Makes equations of one sheet. */
  public RandomEquations(Random random, KnownColumns known) {
    this.random = random;
    this.known = known;
    this.columns = known.withinReach();
  }

  /** Returns the next one. */
  public String next() {
    return switch (random.nextInt(4)) {
      case 0, 1 -> wellFormed(4);
      case 2 -> damaged(wellFormed(4));
      default -> nonsense();
    };
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private String wellFormed(int depth) {
    if (depth == 0) {
      return leaf();
    }
    String next = wellFormed(depth - 1);
    return switch (random.nextInt(7)) {
      case 0 -> next + one(SIGNS) + wellFormed(depth - 1);
      case 1 -> "(" + next + ")";
      case 2 -> "-" + next;
      case 3, 4 -> call(depth);
      case 5 -> next + one(COMPARED) + wellFormed(depth - 1);
      default -> leaf();
    };
  }

  private String call(int depth) {
    Functions.Known function = one(List.of(Functions.Known.values()));
    StringBuilder call = new StringBuilder(function.name()).append('(');
    int parts = random.nextInt(4);
    String sign = random.nextBoolean() ? ";" : ", ";
    for (int i = 0; i < parts; i++) {
      call.append(i == 0 ? "" : sign).append(wellFormed(depth - 1));
    }
    return call.append(')').toString();
  }

  private String leaf() {
    return switch (random.nextInt(6)) {
      case 0, 1 -> one(NUMBERS);
      case 2 -> one(WORDS);
      case 3 -> "Zones." + one(columns).name();
      default -> known.written(one(columns));
    };
  }

  private String damaged(String whole) {
    StringBuilder text = new StringBuilder(whole);
    for (int i = 0; i <= random.nextInt(3); i++) {
      int at = random.nextInt(text.length() + 1);
      if (random.nextBoolean() && at < text.length()) {
        text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(6)));
      } else {
        text.insert(at, NONSENSE.charAt(random.nextInt(NONSENSE.length())));
      }
    }
    return text.toString();
  }

  private String nonsense() {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(40); i > 0; i--) {
      boolean odd = random.nextInt(10) == 0;
      text.append(
          odd
              ? (char) random.nextInt(Character.MAX_VALUE)
              : NONSENSE.charAt(random.nextInt(NONSENSE.length())));
    }
    return text.toString();
  }
}
