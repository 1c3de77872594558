package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.NightsCalendar;
import zonewright.formula.Reference;
import zonewright.nights.MonthBook;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.NightsPlanner;
import zonewright.sheet.Nearest;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.water.DroughtStages;

/** Prints the timetable of a design, or writes it for a spreadsheet or a calendar. */
@Command(
    name = "timetable",
    header = "Make the timetable of the nights of a design.",
    description = {
      "",
      "Places every cycle of every zone into the nights and hours of the sheet Nights, and prints"
          + " when each valve opens and closes, with the least length each night could have. With"
          + " --cards it prints what to key into the controller, program by program; --csv is for a"
          + " spreadsheet, --ics for a calendar (RFC 5545).",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright timetable garden.xlsx",
      "  zonewright timetable garden.xlsx --cards --plain",
      "  zonewright timetable garden.xlsx --month April",
      "  zonewright timetable garden.xlsx --stage 'Stage 2'",
      "  zonewright timetable garden.xlsx --ics > garden.ics",
      "",
      "Times are those of the clock on the wall. Local watering rules decide; have mains wiring and",
      "backflow protection done by those licensed to do it."
    })
final class TimetableCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design file, an .xlsx workbook; without one, the demo garden.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--month",
      paramLabel = "MONTH",
      description =
          "A month by its name, or a percentage such as 60: zones get that share of the water of"
              + " the peak month.")
  private Optional<String> month = Optional.empty();

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      description =
          "A stage of the sheet Stages, or none: the timetable under it, whatever stage the design"
              + " has in force.")
  private Optional<String> stage = Optional.empty();

  @Option(
      names = "--plain",
      description =
          "For a controller that starts programs at set times and runs their stations in order.")
  private boolean plain;

  @Option(names = "--cards", description = "Print the schedule cards, one for each program.")
  private boolean cards;

  @Option(names = "--csv", description = "Print comma-separated values (RFC 4180).")
  private boolean csv;

  @Option(names = "--ics", description = "Print a calendar file (RFC 5545).")
  private boolean ics;

  @Override
  public Integer call() {
    if ((cards ? 1 : 0) + (csv ? 1 : 0) + (ics ? 1 : 0) > 1) {
      throw new Complaint(ExitCode.USAGE, "Choose one of --cards, --csv and --ics.");
    }
    PrintWriter out = out();
    Design design = source.design(file, err());
    stage.ifPresent(word -> inForce(design, word));
    Optional<Double> share = month.map(word -> share(design, word));
    Optional<NightsInput> asked =
        share.isPresent() ? MonthBook.input(design.book(), share.get()) : design.nights().asked();
    if (asked.isEmpty()) {
      throw new Complaint(ExitCode.FOUND, nothing(design, share));
    }
    NightsInput input = asked.get();
    boolean asIs = share.isEmpty() && (!plain || input.plain());
    NightsPlan plan =
        asIs
            ? design.nights().plan().orElseThrow()
            : NightsPlanner.plan(plain ? input.forPlainController() : input, Optional.empty());
    if (ics) {
      out.print(
          NightsCalendar.text(design, plan, Clock.system(ZoneId.systemDefault()))
              .orElseThrow(
                  () -> new Complaint(ExitCode.FOUND, NightsCalendar.WITHOUT_FIRST_NIGHT)));
    } else {
      TimetableText text = new TimetableText(design.book(), plan);
      (csv ? text.csv() : cards ? text.cards() : text.lines(share)).forEach(out::print);
    }
    out.flush();
    boolean complete = plan.complete();
    if (!complete) {
      err().println("Not everything fits; the command findings says what would help.");
    }
    return complete ? ExitCode.FINE : ExitCode.FOUND;
  }

  private static void inForce(Design design, String word) {
    Reference cell = DroughtStages.IN_FORCE.reference();
    boolean none = word.strip().equalsIgnoreCase("none");
    design.book().perform(design.edits().typed(cell, 0, none ? "" : word.strip()));
    if (!none && Double.isNaN(design.book().number(cell, 0))) {
      List<String> stages = design.book().choices(DroughtStages.IN_FORCE);
      throw new Complaint(
          ExitCode.USAGE,
          stages.isEmpty()
              ? "The design has no stages; the sheet Stages holds them."
              : "“%s” is no stage; there are %s."
                  .formatted(word.strip(), String.join(", ", stages)));
    }
  }

  private static String nothing(Design design, Optional<Double> share) {
    return design.nights().findings().isEmpty() && share.filter(value -> value <= 0).isPresent()
        ? "There is nothing to water at 0 percent."
        : NightsCalendar.whyNone(design);
  }

  private static double share(Design design, String word) {
    List<MonthBook.Month> months = MonthBook.months(design.book());
    for (MonthBook.Month each : months) {
      if (each.name().equalsIgnoreCase(word.strip())) {
        return each.share();
      }
    }
    String plainWord = word.strip();
    if (!plainWord.isEmpty() && Character.isDigit(plainWord.charAt(0))) {
      String percent = plainWord.endsWith("%") ? plainWord : plainWord + " %";
      if (QuantityText.read(percent, QuantityKind.SHARE, design.book().system())
              instanceof QuantityText.Read read
          && read.value() <= 3) {
        return read.value();
      }
      throw new Complaint(
          ExitCode.USAGE, "“%s” is no percentage from 0 to 300.".formatted(plainWord));
    }
    List<String> names = months.stream().map(MonthBook.Month::name).toList();
    throw new Complaint(
        ExitCode.USAGE,
        names.isEmpty()
            ? "The months have no percent of the baseline yet; give a percentage such as 60."
            : "“%s” is no month; did you mean %s?"
                .formatted(
                    plainWord, Nearest.to(plainWord.toLowerCase(Locale.ROOT), names, 1).get(0)));
  }
}
