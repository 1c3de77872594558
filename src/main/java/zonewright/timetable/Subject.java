package zonewright.timetable;

/** What a finding is about. */
public sealed interface Subject permits WateredZone, ProgramPart {}
