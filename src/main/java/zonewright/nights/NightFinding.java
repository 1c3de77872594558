package zonewright.nights;

import java.util.Optional;
import zonewright.formula.Reference;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;

/**
 * Something about the nights that the designer should know.
 *
 * @param severity how much it matters
 * @param column the column to go to
 * @param row the row to go to, counted from 0
 * @param sentence what is wrong, going on from the name of the row
 * @param cure what to do about it; empty where the sentence says it
 * @param remedy what the program can do about it by itself, if anything
 */
public record NightFinding(
    Severity severity,
    Reference column,
    int row,
    String sentence,
    String cure,
    Optional<Remedy> remedy) {}
