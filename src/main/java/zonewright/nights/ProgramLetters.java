package zonewright.nights;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import zonewright.timetable.PlainProgram;
import zonewright.timetable.ProgramPart;

/**
 * The letters of the controller's programs. A program of the design that is called by one of them
 * keeps it; the others take those left, in the order of their rows.
 */
final class ProgramLetters {
  private static final int LETTERS = 26;

  private ProgramLetters() {}

  /** Returns the letter of each program that has something to key in. */
  static Map<ProgramPart, String> of(NightsPlan plan, NightNames names) {
    Map<ProgramPart, String> letters = new HashMap<>();
    Set<String> taken = new HashSet<>();
    List<ProgramPart> keyed = new ArrayList<>();
    for (PlainProgram program : plan.programs()) {
      if (!program.startMinutes().isEmpty()) {
        keyed.add(program.program());
      }
    }
    keyed.sort(names.order());
    List<String> all = new ArrayList<>();
    for (int number = 0; number < plan.input().rules().mostPrograms(); number++) {
      all.add(letter(number));
    }
    for (ProgramPart part : keyed) {
      String name = names.program(part);
      if (all.contains(name) && taken.add(name)) {
        letters.put(part, name);
      }
    }
    keyed.removeAll(letters.keySet());
    all.removeAll(taken);
    for (int i = 0; i < keyed.size(); i++) {
      letters.put(keyed.get(i), all.get(i));
    }
    return letters;
  }

  /** What controllers call their programs; by numbers where letters do not suffice. */
  private static String letter(int number) {
    return number < LETTERS ? String.valueOf((char) ('A' + number)) : String.valueOf(number + 1);
  }
}
