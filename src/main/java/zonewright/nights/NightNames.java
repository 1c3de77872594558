package zonewright.nights;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.timetable.PlainProgram;
import zonewright.timetable.ProgramPart;
import zonewright.timetable.WateredZone;

/** What the zones and programs of a timetable are called; each is found by its number. */
public final class NightNames {
  private final Map<Long, NightsInput.SheetZone> zones = new HashMap<>();
  private final Map<Long, NightsInput.Program> programs;
  private final Map<Long, ProgramPart> parts = new HashMap<>();

  /** Takes the names from what a plan was made from. */
  public NightNames(NightsPlan plan) {
    this.programs = plan.input().programs();
    for (NightsInput.Station station : plan.input().stations()) {
      zones.put(station.zone().number(), station.sheet());
    }
    for (PlainProgram program : plan.programs()) {
      program.asked().zones().forEach(zone -> parts.put(zone.number(), program.program()));
    }
  }

  /** Returns a zone as the sheet has it. */
  public NightsInput.SheetZone sheet(WateredZone zone) {
    return zones.get(zone.number());
  }

  /** Returns what to call a zone within a sentence, such as {@code zone 3}. */
  public String zone(WateredZone zone) {
    return zone(sheet(zone));
  }

  /** Returns what to call a zone within a sentence, such as {@code zone 3}. */
  static String zone(NightsInput.SheetZone sheet) {
    return sheet.name().isEmpty() ? "the zone without a name" : "zone " + sheet.name();
  }

  /** Returns a zone with its place, such as {@code zone 3, south lawn}. */
  public String withPlace(WateredZone zone) {
    return withPlace(sheet(zone));
  }

  static String withPlace(NightsInput.SheetZone sheet) {
    return sheet.place().isBlank() ? zone(sheet) : zone(sheet) + ", " + sheet.place();
  }

  /** Returns several zones within a sentence. */
  String zones(List<WateredZone> some) {
    return String.join(", ", some.stream().map(this::zone).toList());
  }

  /** Returns a program's name; empty for zones that belong to none. */
  public String program(long number) {
    NightsInput.Program program = programs.get(number);
    return program == null ? "" : program.name();
  }

  /** Returns the program of a zone as it is keyed in. */
  public ProgramPart part(WateredZone zone) {
    return parts.getOrDefault(zone.number(), new ProgramPart(zone.program(), 1));
  }

  /** Returns the name under which a part of a program is keyed in, such as {@code A (2)}. */
  public String program(ProgramPart part) {
    String name = program(part.program());
    return part.part() == 1 ? name : (name + " (" + part.part() + ")").strip();
  }

  /** The order of programs: by name, zones without one last; those of one name by their rows. */
  Comparator<ProgramPart> order() {
    return Comparator.comparing((ProgramPart part) -> program(part.program()).isEmpty())
        .thenComparing(part -> program(part.program()))
        .thenComparingInt(part -> row(part.program()))
        .thenComparingInt(ProgramPart::part);
  }

  private int row(long program) {
    return programs.containsKey(program) ? programs.get(program).row() : -1;
  }

  /**
   * Returns what tells a program from all others and stays the same when the design is read again:
   * its name, and of those of one name which it is.
   */
  String lasting(ProgramPart part) {
    String name = program(part.program());
    long before =
        programs.values().stream()
            .filter(other -> other.name().equals(name) && other.row() < row(part.program()))
            .count();
    return program(part) + (before == 0 ? "" : "/" + before);
  }

  /** Returns the zones of a list by their programs, in the order of programs. */
  static <T> Map<ProgramPart, List<T>> sorted(
      Map<ProgramPart, List<T>> byProgram, NightNames names) {
    Map<ProgramPart, List<T>> sorted = new LinkedHashMap<>();
    byProgram.keySet().stream()
        .sorted(names.order())
        .forEach(part -> sorted.put(part, byProgram.get(part)));
    return sorted;
  }
}
