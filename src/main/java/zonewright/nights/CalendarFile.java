package zonewright.nights;

import static java.time.format.DateTimeFormatter.BASIC_ISO_DATE;

import biweekly.ICalDataType;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.CalendarScale;
import biweekly.util.Frequency;
import biweekly.util.Recurrence;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Date;
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
  /** The library would write moments of a time zone, in which clocks jump. */
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

  /** The library folds by letters, of which the longest have 3 octets; RFC 5545, 3.1, wants 75. */
  private static final int MOST_LETTERS = 25;

  private final NightsPlan plan;
  private final String project;
  private final Date made;
  private final NightNames names;
  private final ICalendar calendar = new ICalendar();

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
    this.made = Date.from(made);
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
    file.calendar.setProductId("-//Zonewright//Irrigation timetable//EN");
    file.calendar.setCalendarScale(CalendarScale.gregorian());
    if (plan.weekly()) {
      file.weekly(from);
    } else {
      file.dated();
    }
    file.notPlaced(from);
    return file.text();
  }

  private String text() {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(MOST_LETTERS);
      writer.write(calendar);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return text.toString();
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
          List<biweekly.util.DayOfWeek> on =
              days.stream()
                  .map(day -> biweekly.util.DayOfWeek.valueOf(day.plus(later).name()))
                  .toList();
          event(block, first, on);
        });
  }

  private void dated() {
    for (NightPlan night : plan.timetable().nights()) {
      for (Block block : blocks(night)) {
        event(block, night.night().date().orElseThrow(), List.of());
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
    StringBuilder lines = new StringBuilder(project);
    lacking.forEach(share -> lines.append('\n').append(share.line(plan)));
    LocalDate first =
        plan.timetable().nights().stream()
            .flatMap(night -> night.night().date().stream())
            .findFirst()
            .orElse(from);
    VEvent event =
        event("not placed", "Watering that does not fit: " + ZoneShare.summary(shares), lines);
    event.addExperimentalProperty("DTSTART", ICalDataType.DATE, BASIC_ISO_DATE.format(first));
    event.addExperimentalProperty(
        "DTEND", ICalDataType.DATE, BASIC_ISO_DATE.format(first.plusDays(1)));
  }

  private void event(Block block, LocalDate night, List<biweekly.util.DayOfWeek> weekly) {
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
    String rule =
        weekly.isEmpty()
            ? ""
            : weekly.stream()
                .map(biweekly.util.DayOfWeek::getAbbr)
                .collect(Collectors.joining(",", "RRULE:FREQ=WEEKLY;BYDAY=", ""));
    VEvent event =
        event(
            names.lasting(block.program()) + "/" + night + "/" + rule + "/" + block.start(),
            name + (zones == 1 ? ", 1 zone" : ", " + zones + " zones"),
            description);
    event.addExperimentalProperty("DTSTART", LOCAL.format(midnight.plusMinutes(block.start())));
    event.addExperimentalProperty("DTEND", LOCAL.format(midnight.plusMinutes(block.end())));
    if (!weekly.isEmpty()) {
      event.setRecurrenceRule(new Recurrence.Builder(Frequency.WEEKLY).byDay(weekly).build());
    }
  }

  /** Adds an event that leaves its time free for others. */
  private VEvent event(String id, String summary, CharSequence description) {
    VEvent event = new VEvent();
    event.setUid(uid(id));
    event.setDateTimeStamp(made);
    event.setSummary(plain(summary));
    event.setDescription(plain(description));
    event.setTransparency(true);
    calendar.addEvent(event);
    return event;
  }

  /** What neither a reader nor the format knows: signs that print nothing. */
  private static String plain(CharSequence words) {
    return words.toString().replaceAll("[\\p{Cntrl}&&[^\\t\\n]]", " ");
  }

  /** The same event of the same project keeps its identifier, so that a later file replaces it. */
  private String uid(String event) {
    String what = project + "/" + event;
    return UUID.nameUUIDFromBytes(what.getBytes(StandardCharsets.UTF_8)).toString();
  }

  /** Returns a name for the file, such as {@code library-garden.ics}. */
  public static String fileName(String project) {
    String plain =
        project.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return (plain.isEmpty() ? "timetable" : plain) + ".ics";
  }
}
