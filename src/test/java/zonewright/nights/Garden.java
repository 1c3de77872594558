package zonewright.nights;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.budget.SiteBudget;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** The demo garden, to be changed cell by cell and planned again. */
final class Garden {
  private final Design design = Demo.libraryGarden(UnitSystem.US);

  Garden type(Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
    return this;
  }

  Garden typeAll(Column column, String text) {
    for (int row = 0; row < design.book().rows(column.reference().table()); row++) {
      type(column, row, text);
    }
    return this;
  }

  /** Gives a program another name, its zones following it. */
  Garden nameProgram(int program, String name) {
    List<Integer> own = new ArrayList<>();
    for (int row = 0; row < design.book().rows(Sheets.ZONES); row++) {
      if (design.book().number(SiteBudget.ZONE_PROGRAM.reference(), row) == program) {
        own.add(row);
      }
    }
    type(SiteBudget.PROGRAM, program, name);
    own.forEach(row -> type(SiteBudget.ZONE_PROGRAM, row, name));
    return this;
  }

  /** Keeps the first zones only. */
  Garden firstZones(int count) {
    int rows = design.book().rows(Sheets.ZONES);
    design.book().perform(design.edits().removed(Sheets.ZONES, count, rows - count));
    return this;
  }

  Garden take(Edit edit) {
    design.book().perform(edit);
    return this;
  }

  Design design() {
    return design;
  }

  NightsPlan plan() {
    return design.nights().plan().orElseThrow();
  }

  Optional<NightPlan> night(String label) {
    return plan().timetable().nights().stream()
        .filter(night -> NightWords.label(night.night()).equals(label))
        .findFirst();
  }

  /** What the findings say, once the timetable is made. */
  List<Finding> findings() {
    design.nights().plan();
    return design.findings();
  }

  /** The runs of a zone by its row. */
  List<ValveRun> runsOf(int row) {
    return plan().timetable().nights().stream()
        .flatMap(night -> night.runs().stream())
        .filter(run -> isAt(run, row))
        .toList();
  }

  boolean isAt(ValveRun run, int row) {
    return run.zone().number() == design.book().contents().row(Sheets.ZONES, row).id();
  }

  boolean isOf(ValveRun run, String program) {
    return new NightNames(plan()).program(run.zone().program()).equals(program);
  }
}
