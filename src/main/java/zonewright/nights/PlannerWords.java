package zonewright.nights;

import static zonewright.nights.NightWords.counted;
import static zonewright.nights.NightWords.day;
import static zonewright.nights.NightWords.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.budget.SiteBudget;
import zonewright.formula.Reference;
import zonewright.sheet.Severity;
import zonewright.timetable.ProgramPart;
import zonewright.timetable.Subject;
import zonewright.timetable.TimetableFinding;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringDays;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** What the planner found, in words, each with the cell to go to. */
final class PlannerWords {
  private final NightsPlan plan;
  private final NightNames names;

  PlannerWords(NightsPlan plan, NightNames names) {
    this.plan = plan;
    this.names = names;
  }

  /** Returns a finding in words. */
  NightFinding of(TimetableFinding finding) {
    if (finding instanceof TimetableFinding.NoOpenDay none) {
      return ofDays(
          none.subject(),
          "may water on " + days(none.days()) + ", and none of these nights is open",
          "open one of them, or choose other days");
    }
    if (finding instanceof TimetableFinding.ClosedDays closed) {
      return ofDays(
          closed.subject(),
          "should water on %s, when nothing may water, and keeps %s"
              .formatted(days(closed.closed()), days(closed.kept())),
          "open these nights, or choose other days");
    }
    if (finding instanceof TimetableFinding.TooFewDays few) {
      return ofDays(
          few.subject(),
          "needs %s a week, and only %s open to it"
              .formatted(counted(few.needed()), few.open() == 1 ? "1 is" : few.open() + " are"),
          "open more nights, or water more on each");
    }
    if (finding instanceof TimetableFinding.GapTooLong gap) {
      return ofDays(
          gap.subject(),
          "should wait no longer than %s, and on %s a week it waits %s"
              .formatted(counted(gap.longest()), counted(gap.days()), gap.waits()),
          gap.enough().isPresent()
              ? "water it on " + counted(gap.enough().getAsInt()) + " a week"
              : "open more nights: those open are too far apart");
    }
    if (finding instanceof TimetableFinding.LostDates lost) {
      return ofDays(
          lost.zone(),
          "loses %s of %s waterings to nights that are not open".formatted(lost.lost(), lost.due()),
          "open these nights, or water it by weekdays");
    }
    if (finding instanceof TimetableFinding.CycleOverWindow cycle) {
      return ofZone(
          cycle.zone(),
          CycleAndSoak.CYCLE_MINUTES.reference(),
          "runs %s min at a time, and on %s no window is longer than %s min"
              .formatted(cycle.zone().minutesPerCycle(), day(cycle.day()), cycle.longest()),
          "widen the window, or water it in more cycles");
    }
    if (finding instanceof TimetableFinding.SpanOverWindow span) {
      return ofZone(
          span.zone(),
          CycleAndSoak.CYCLE_MINUTES.reference(),
          "needs %s min for its cycles and soaks alone, and %s gives %s"
              .formatted(span.needed(), day(span.day()), span.given()),
          "widen the window, water it on more days, or give it emitters with a lower rate");
    }
    if (finding instanceof TimetableFinding.StartOverWindow start) {
      return ofProgram(
          start.program(),
          Severity.CHECK,
          "takes %s min at a start, and the longest window of its nights has %s"
              .formatted(start.minutes(), start.longest()),
          "share its stations over more programs");
    }
    if (finding instanceof TimetableFinding.ProgramSplit split) {
      return ofProgram(
          new ProgramPart(split.program(), 1),
          Severity.NOTE,
          "has stations that do not go together (%s)".formatted(wants(split.examples())),
          "key it in as %s programs, or give its zones the same days and cycles"
              .formatted(split.examples().size()));
    }
    if (finding instanceof TimetableFinding.KeyedTogether keyed) {
      return ofProgram(
          new ProgramPart(keyed.program(), 1),
          Severity.NOTE,
          "shares days and cycles, so that the programs of the controller suffice: "
              + wants(keyed.zones()),
          "have a controller with more programs, or live with the minutes that rounding adds");
    }
    if (finding instanceof TimetableFinding.NoCommonHours hours) {
      return ofProgram(
          hours.program(),
          Severity.CHECK,
          "starts at the same times on all its days, and %s and %s have no hours in common"
              .formatted(day(hours.first()), day(hours.other())),
          "give both nights windows that overlap");
    }
    if (finding instanceof TimetableFinding.RestBetweenNights rest) {
      return ofZone(
          rest.zone(),
          CycleAndSoak.SOAK.reference(),
          "starts again a night later before its soak of %s min is over"
              .formatted(rest.zone().soakMinutes()),
          "close the night sooner, or water on fewer days");
    }
    return found(
        Severity.CHECK,
        NightSheet.CLOSES.reference(),
        AllowedDays.DAY_NAMES.size() - 1,
        "ends too near to the next for the soak of some zones",
        "leave more time between the windows of Sunday and Monday");
  }

  private String wants(List<WateredZone> examples) {
    List<String> wants = new ArrayList<>();
    for (WateredZone zone : examples) {
      String cycles = zone.cycles() == 1 ? "1 cycle" : zone.cycles() + " cycles";
      wants.add(names.zone(zone) + " " + rhythm(zone.days()) + " in " + cycles);
    }
    return String.join(", ", wants);
  }

  private static String rhythm(WateringDays rule) {
    if (rule instanceof WateringDays.ChooseWeekdays free) {
      return counted(free.daysNeeded()) + " a week";
    }
    if (rule instanceof WateringDays.OnWeekdays fixed) {
      return "on " + days(fixed.weekdays());
    }
    if (rule instanceof WateringDays.EveryFewDays interval) {
      return interval.days() == 1 ? "every day" : "every " + interval.days() + " days";
    }
    return rule instanceof WateringDays.OddDates ? "on odd dates" : "on even dates";
  }

  private NightFinding ofDays(Subject subject, String sentence, String cure) {
    return subject instanceof WateredZone zone
        ? ofZone(zone, Demand.WATERING_DAYS.reference(), sentence, cure)
        : ofProgram((ProgramPart) subject, Severity.CHECK, sentence, cure);
  }

  private NightFinding ofZone(WateredZone zone, Reference column, String sentence, String cure) {
    return found(Severity.CHECK, column, names.sheet(zone).row(), sentence, cure);
  }

  /** Goes to the program's row; for zones that belong to none, to the controller. */
  NightFinding ofProgram(ProgramPart part, Severity severity, String sentence, String cure) {
    NightsInput.Program program = plan.input().programs().get(part.program());
    return program == null
        ? found(
            severity,
            Controller.KIND.reference(),
            0,
            "runs the zones without a program as one, which " + sentence,
            cure)
        : found(severity, SiteBudget.PROGRAM.reference(), program.row(), sentence, cure);
  }

  private static NightFinding found(
      Severity severity, Reference column, int row, String sentence, String cure) {
    return new NightFinding(severity, column, row, sentence, cure, Optional.empty());
  }
}
