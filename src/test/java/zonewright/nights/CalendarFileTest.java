package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import biweekly.util.com.google.ical.compat.javautil.DateIterator;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.water.WateringPattern;

/**
 * Calendar files keep RFC 5545, named by its sections, and another program's library reads the same
 * waterings from them.
 */
class CalendarFileTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 6, 1);
  private static final Instant MADE = Instant.parse("2026-05-20T10:15:30Z");

  private final Garden garden = new Garden();

  private String file(String project) {
    return CalendarFile.of(garden.plan(), project, FIRST, MADE);
  }

  private static ICalendar read(String text) {
    List<List<ParseWarning>> warnings = new ArrayList<>();
    List<ICalendar> all = Biweekly.parse(text).warnings(warnings).all();
    assertThat(all).hasSize(1);
    assertThat(warnings).isEqualTo(List.of(List.of()));
    return all.get(0);
  }

  /** RFC 5545, 3.1: content lines end with CRLF and hold at most 75 octets. */
  @Test
  void linesEndWithBothLettersAndAreFolded() {
    garden.type(Facts.ZONE_PLACE, 0, "Große Wiese – südlich der Bücherei, am Weiher 😀 gelegen");
    String text = file("Bücherei");
    assertThat(text).endsWith("\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
    for (String line : text.split("\r\n", -1)) {
      assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75);
    }
  }

  /** RFC 5545, 3.4, 3.6 and 3.6.1: what a calendar and an event must hold, each once. */
  @Test
  void everyEventHasWhatItMustHave() {
    String text = file("Garden").replace("\r\n ", "");
    assertThat(text).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:");
    String[] events = text.split("BEGIN:VEVENT\r\n", -1);
    assertThat(events.length).isGreaterThan(5);
    Set<String> identifiers = new TreeSet<>();
    for (int i = 1; i < events.length; i++) {
      assertThat(events[i]).containsOnlyOnce("UID:").containsOnlyOnce("DTSTAMP:20260520T101530Z");
      assertThat(events[i]).containsOnlyOnce("DTSTART").containsOnlyOnce("DTEND");
      assertThat(events[i]).containsOnlyOnce("END:VEVENT");
      identifiers.add(events[i].substring(0, events[i].indexOf("\r\n")));
    }
    assertThat(identifiers).hasSize(events.length - 1);
  }

  @Test
  void anotherLibraryFindsNothingToWarnOf() {
    ICalendar calendar = read(file("Garden"));
    assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
  }

  /** RFC 5545, 3.3.11: texts come back letter by letter. */
  @Test
  void wordsComeBackAsTheyWere() {
    String odd = "A, b; c\\d \"e\" and: ü";
    garden.type(Facts.ZONE_PLACE, 4, odd);
    ICalendar calendar = read(file(odd));
    assertThat(calendar.getEvents())
        .allMatch(event -> event.getDescription().getValue().startsWith(odd + "\n"))
        .anyMatch(
            event -> event.getDescription().getValue().contains("zone 5, " + odd + ", 9 min"));
  }

  /** RFC 5545, 3.3.5, form 1, and 3.8.5.3: local times that come again every week. */
  @Test
  void theCalendarHoldsEveryWateringOfThreeWeeks() {
    ICalendar calendar = read(file("Garden"));
    Set<String> expected = new TreeSet<>();
    for (int week = 0; week < 3; week++) {
      for (NightPlan night : garden.plan().timetable().nights()) {
        LocalDate date = FIRST.plusDays(night.night().weekday().getValue() - 1L).plusWeeks(week);
        for (String program : List.of("A", "B")) {
          List<ValveRun> runs =
              night.runs().stream().filter(run -> garden.isOf(run, program)).toList();
          if (!runs.isEmpty()) {
            int start = runs.get(0).startMinute();
            int end = runs.stream().mapToInt(ValveRun::endMinute).max().orElseThrow();
            expected.add(
                program
                    + " "
                    + date.atStartOfDay().plusMinutes(start)
                    + " "
                    + date.atStartOfDay().plusMinutes(end));
          }
        }
      }
    }
    assertThat(occurrences(calendar, FIRST.plusWeeks(3))).isEqualTo(expected);
  }

  private static Set<String> occurrences(ICalendar calendar, LocalDate until) {
    Set<String> found = new TreeSet<>();
    TimeZone here = TimeZone.getDefault();
    for (VEvent event : calendar.getEvents()) {
      if (event.getSummary().getValue().startsWith("Watering that does not fit")) {
        continue;
      }
      long length =
          event.getDateEnd().getValue().getTime() - event.getDateStart().getValue().getTime();
      String program = event.getSummary().getValue().replaceAll(".*program (\\w+).*", "$1");
      DateIterator dates = event.getDateIterator(here);
      while (dates.hasNext()) {
        LocalDateTime start =
            LocalDateTime.ofInstant(dates.next().toInstant(), ZoneId.systemDefault());
        if (!start.isBefore(until.atStartOfDay().plusHours(12))) {
          break;
        }
        found.add(program + " " + start + " " + start.plusSeconds(length / 1000));
      }
    }
    return found;
  }

  /** RFC 5545, 3.3.5, form 1: a time that clocks leave out here stands in the file as it is. */
  @Test
  void theHourThatSummerTimeLeavesOutStaysWhatItIs() {
    TimeZone here = TimeZone.getDefault();
    String anywhere = CalendarFile.of(garden.plan(), "Garden", LocalDate.of(2026, 3, 29), MADE);
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
      assertThat(CalendarFile.of(garden.plan(), "Garden", LocalDate.of(2026, 3, 29), MADE))
          .isEqualTo(anywhere);
    } finally {
      TimeZone.setDefault(here);
    }
  }

  @Test
  void aTimetableByDatesHasAnEventForEachDate() {
    garden.firstZones(1).type(WateringPattern.PATTERN, 0, WateringPattern.ODD);
    garden.typeAll(NightSheet.WATERED, "yes");
    ICalendar calendar = read(file("Garden"));
    assertThat(calendar.getEvents())
        .hasSize(28)
        .allMatch(event -> event.getRecurrenceRule() == null);
    assertThat(calendar.getEvents().get(0).getDateStart().getValue().toInstant())
        .isEqualTo(FIRST.atTime(21, 0).atZone(ZoneId.systemDefault()).toInstant());
  }
}
