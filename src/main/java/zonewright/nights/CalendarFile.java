package zonewright.nights;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ProgramPart;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateringWindow;

/**
 * A timetable as a calendar file: an event for each program and night, which comes again every week
 * where the timetable does.
 *
 * <p>Source: RFC 5545, Internet Calendaring and Scheduling Core Object Specification. Times are
 * floating local times (3.3.5, form 1): the controller's clock is the clock on the wall.
 */
public final class CalendarFile {
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
  private static final int MOST_OCTETS = 75;

  private final NightsPlan plan;
  private final String project;
  private final String stamp;
  private final NightNames names;
  private final StringBuilder text = new StringBuilder();

  /** The runs of a program in a night, alike in all nights they stand for. */
  private record Block(ProgramPart program, List<ValveRun> runs) {
    int start() {
      return runs.get(0).startMinute();
    }

    int end() {
      return runs.stream().mapToInt(ValveRun::endMinute).max().orElse(start());
    }
  }

  private CalendarFile(NightsPlan plan, String project, Instant made) {
    this.plan = plan;
    this.project = project;
    this.stamp = LOCAL.format(LocalDateTime.ofInstant(made, ZoneOffset.UTC)) + "Z";
    this.names = new NightNames(plan);
  }

  /**
   * Returns the text of the file.
   *
   * @param project what the project is called
   * @param from the first date that counts; of a timetable by dates the first date is its own
   * @param made when the file is made
   */
  public static String of(NightsPlan plan, String project, LocalDate from, Instant made) {
    CalendarFile file = new CalendarFile(plan, project, made);
    file.line("BEGIN:VCALENDAR");
    file.line("VERSION:2.0");
    file.line("PRODID:-//Zonewright//Irrigation timetable//EN");
    file.line("CALSCALE:GREGORIAN");
    if (plan.weekly()) {
      file.weekly(from);
    } else {
      file.dated();
    }
    file.notPlaced(from);
    file.line("END:VCALENDAR");
    return file.text.toString();
  }

  private void weekly(LocalDate from) {
    Map<Block, List<DayOfWeek>> blocks = new LinkedHashMap<>();
    for (NightPlan night : plan.timetable().nights()) {
      for (Block block : blocks(night)) {
        blocks.computeIfAbsent(block, any -> new ArrayList<>()).add(night.night().weekday());
      }
    }
    blocks.forEach(
        (block, days) -> {
          List<LocalDate> firsts =
              days.stream().map(day -> from.with(TemporalAdjusters.nextOrSame(day))).toList();
          LocalDate first = firsts.stream().min(LocalDate::compareTo).orElseThrow();
          int later = block.start() / WateringWindow.DAY;
          String byDay =
              days.stream()
                  .map(day -> day.plus(later).name().substring(0, 2))
                  .collect(Collectors.joining(","));
          event(block, first, "RRULE:FREQ=WEEKLY;BYDAY=" + byDay);
        });
  }

  private void dated() {
    for (NightPlan night : plan.timetable().nights()) {
      for (Block block : blocks(night)) {
        event(block, night.night().date().orElseThrow(), "");
      }
    }
  }

  private List<Block> blocks(NightPlan night) {
    Map<ProgramPart, List<ValveRun>> programs = new HashMap<>();
    for (ValveRun run : night.runs()) {
      programs.computeIfAbsent(names.part(run.zone()), any -> new ArrayList<>()).add(run);
    }
    return NightNames.sorted(programs, names).entrySet().stream()
        .map(entry -> new Block(entry.getKey(), List.copyOf(entry.getValue())))
        .toList();
  }

  /** An event of a whole day, on the first, that names the zones the nights leave short. */
  private void notPlaced(LocalDate from) {
    List<ZoneShare> shares = ZoneShare.of(plan);
    List<ZoneShare> lacking = shares.stream().filter(share -> !share.whole()).toList();
    if (lacking.isEmpty()) {
      return;
    }
    StringBuilder description = new StringBuilder(project);
    lacking.forEach(share -> description.append('\n').append(share.line(plan)));
    LocalDate first =
        plan.timetable().nights().stream()
            .flatMap(night -> night.night().date().stream())
            .findFirst()
            .orElse(from);
    line("BEGIN:VEVENT");
    line("UID:" + uid("not placed"));
    line("DTSTAMP:" + stamp);
    line("DTSTART;VALUE=DATE:" + DateTimeFormatter.BASIC_ISO_DATE.format(first));
    line("DTEND;VALUE=DATE:" + DateTimeFormatter.BASIC_ISO_DATE.format(first.plusDays(1)));
    line("SUMMARY:" + escaped("Watering that does not fit: " + ZoneShare.summary(shares)));
    line("DESCRIPTION:" + escaped(description.toString()));
    line("TRANSP:TRANSPARENT");
    line("END:VEVENT");
  }

  private void event(Block block, LocalDate night, String rule) {
    LocalDateTime midnight = night.atStartOfDay();
    String program = names.program(block.program());
    String name = program.isEmpty() ? "Watering" : "Watering, program " + program;
    StringBuilder description = new StringBuilder(project);
    long zones = block.runs().stream().map(ValveRun::zone).distinct().count();
    for (ValveRun run : block.runs()) {
      description
          .append('\n')
          .append(NightWords.time(run.startMinute()))
          .append(' ')
          .append(names.withPlace(run.zone()))
          .append(", ")
          .append(run.minutes())
          .append(" min");
      if (run.zone().cycles() > 1) {
        description.append(", cycle ").append(run.cycle()).append(" of ");
        description.append(run.zone().cycles());
      }
    }
    line("BEGIN:VEVENT");
    line(
        "UID:"
            + uid(names.lasting(block.program()) + "/" + night + "/" + rule + "/" + block.start()));
    line("DTSTAMP:" + stamp);
    line("DTSTART:" + LOCAL.format(midnight.plusMinutes(block.start())));
    line("DTEND:" + LOCAL.format(midnight.plusMinutes(block.end())));
    if (!rule.isEmpty()) {
      line(rule);
    }
    line("SUMMARY:" + escaped(name + (zones == 1 ? ", 1 zone" : ", " + zones + " zones")));
    line("DESCRIPTION:" + escaped(description.toString()));
    line("TRANSP:TRANSPARENT");
    line("END:VEVENT");
  }

  /** The same event of the same project keeps its identifier, so that a later file replaces it. */
  private String uid(String event) {
    String what = project + "/" + event;
    return UUID.nameUUIDFromBytes(what.getBytes(StandardCharsets.UTF_8)).toString();
  }

  /** RFC 5545, 3.3.11: backslash, semicolon, comma and line ends of a text are escaped. */
  static String escaped(String words) {
    return words
        .replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replaceAll("\\R", "\\\\n")
        .replaceAll("[\\p{Cntrl}&&[^\\t]]", " ");
  }

  /** RFC 5545, 3.1: lines end with CRLF and are folded after at most 75 octets. */
  private void line(String content) {
    int octets = 0;
    for (int at = 0; at < content.length(); ) {
      int letter = content.codePointAt(at);
      String one = Character.toString(letter);
      int length = one.getBytes(StandardCharsets.UTF_8).length;
      if (octets + length > MOST_OCTETS) {
        text.append("\r\n ");
        octets = 1;
      }
      text.append(one);
      octets += length;
      at += Character.charCount(letter);
    }
    text.append("\r\n");
  }

  /** Returns a name for the file, such as {@code library-garden.ics}. */
  public static String fileName(String project) {
    String plain =
        project.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return (plain.isEmpty() ? "timetable" : plain) + ".ics";
  }
}
