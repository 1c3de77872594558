package zonewright.nights;

import java.time.LocalDate;
import java.util.List;
import zonewright.timetable.NightRules;
import zonewright.timetable.StartRuns;
import zonewright.timetable.WateredZone;

/**
 * All that a timetable depends on, without a word. Two that are equal have the same timetable.
 *
 * @param zones the zones that water, in their order
 * @param rules what holds for the site
 * @param plain whether the controller starts programs at set times
 * @param startRuns what a start of a program runs then
 * @param firstDay the date from which dates are counted
 */
record NightsProblem(
    List<WateredZone> zones,
    NightRules rules,
    boolean plain,
    StartRuns startRuns,
    LocalDate firstDay) {}
