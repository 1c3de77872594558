package zonewright.timetable;

/**
 * A program as it is keyed into a controller that starts programs: the designer's whole program, or
 * a part of one whose stations do not go together.
 *
 * @param program the designer's program, {@link WateredZone#NO_PROGRAM} for zones without one
 * @param part which part, from 1
 */
public record ProgramPart(long program, int part) implements Subject {}
