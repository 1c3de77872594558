package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.poi.xssf.usermodel.XSSFCell;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.nights.NightNames;
import zonewright.nights.NightWords;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.sheet.Book;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.units.CalendarText;
import zonewright.units.QuantityKind;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.Styles;

/** The nights as they will run, valve by valve, with a cell that tells whether they still hold. */
final class TimetableSheet implements PackSheet {
  private static final String STILL_RIGHT =
      "Yes: it belongs to the zones and nights of this workbook as they stand.";
  private static final String OLDER =
      "No: the timetable is older than the zones. Open the workbook in Zonewright and write it anew.";

  @Override
  public String word() {
    return "timetable";
  }

  @Override
  public String title() {
    return "Timetable";
  }

  @Override
  public String about() {
    return "When each valve opens and closes, night by night, with the least time each night could take.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return design.nights().asked().isPresent()
        ? Optional.empty()
        : Optional.of(
            "There is no timetable yet: it takes zones with cycles, minutes and flow, and nights that water.");
  }

  @Override
  public void write(PackBook book) {
    Optional<NightsPlan> plan = book.design().nights().plan();
    Page page = book.page(title(), false, 12, 10, 12, 34, 15, 10, 10, 15);
    page.title(
            "Timetable of the nights",
            "Worked out by Zonewright from the peak month's run times; these are values, not formulas. "
                + "Night names are those of the evening on which a night opens.")
        .restingOnClimate();
    if (plan.isEmpty()) {
      page.across("There is no timetable yet.", CellStyleName.PLAIN);
      return;
    }
    int answer = page.row();
    page.words(0, "Still right?", CellStyleName.NAME).across(1, STILL_RIGHT, CellStyleName.PLAIN);
    zones(page.next(), plan.get());
    for (NightPlan night : plan.get().timetable().nights()) {
      night(page.next(), book.design().book(), new NightNames(plan.get()), night);
    }
    page.next().band("Take care");
    page.across(
        "Local rules decide on which days and at which hours water may run. Try every zone by hand once"
            + " before the controller is left alone, and look for runoff after the first nights.",
        CellStyleName.CAUTION);
    page.next().printedToHere();
    answer(page, answer, new TimetableBasis(page, book).write());
  }

  private static void answer(Page page, int row, String changed) {
    page.words(0, STILL_RIGHT, CellStyleName.SMALL);
    String right = page.cell(0);
    page.next().words(0, OLDER, CellStyleName.SMALL);
    XSSFCell cell = page.sheet().getRow(row).getCell(1);
    cell.setCellFormula("IF(%s=0,%s,%s)".formatted(changed, right, page.cell(0)));
    cell.setCellValue(STILL_RIGHT);
  }

  /** Every zone of the design, placed or not; the minutes placed and not placed are all it asks. */
  private static void zones(Page page, NightsPlan plan) {
    List<ZoneShare> shares = ZoneShare.of(plan);
    NightNames names = new NightNames(plan);
    page.band("What the nights give each zone, in minutes " + ZoneShare.period(plan));
    page.across(
        ZoneShare.summary(shares),
        shares.stream().allMatch(ZoneShare::whole) ? CellStyleName.PLAIN : CellStyleName.CAUTION);
    page.headings("Asks for", "Placed", "Zone", "Where", "Program", "Not placed", "", "Why");
    for (ZoneShare share : shares) {
      minutes(page, 0, share.asked());
      minutes(page, 1, OptionalInt.of(share.placed()));
      page.words(2, share.sheet().name(), CellStyleName.TABLE)
          .words(3, share.sheet().place(), CellStyleName.TABLE)
          .words(4, names.program(share.sheet().program()), CellStyleName.TABLE);
      minutes(page, 5, share.undone());
      page.words(6, "", CellStyleName.TABLE)
          .words(7, share.why().isEmpty() ? share.state().word() : share.why(), CellStyleName.TABLE)
          .next();
    }
    page.next();
  }

  private static void minutes(Page page, int column, OptionalInt minutes) {
    if (minutes.isPresent()) {
      page.number(column, minutes.getAsInt(), "0", CellStyleName.TABLE);
    } else {
      page.words(column, "?", CellStyleName.TABLE);
    }
  }

  private static void night(Page page, Book book, NightNames names, NightPlan night) {
    page.band(NightWords.label(night.night()) + ", " + NightWords.hours(night));
    if (night.isEmpty()) {
      page.across("Nothing waters.", CellStyleName.PLAIN);
      return;
    }
    page.across(
        NightWords.capital(NightWords.result(night)) + ".",
        night.overrunMinutes() > 0 ? CellStyleName.CAUTION : CellStyleName.PLAIN);
    if (!night.undone().isEmpty()) {
      page.across("No room for " + NightWords.noRoom(night, names) + ".", CellStyleName.CAUTION);
    }
    page.headings(
        "Opens",
        "Closes",
        "Zone",
        "Where",
        "Program",
        "Cycle",
        "Minutes",
        Emitters.ZONE_FLOW.heading(book.system()));
    String time = Styles.format(QuantityKind.TIME_OF_DAY, 0);
    String flow = Styles.format(Emitters.ZONE_FLOW, book.system());
    for (ValveRun run : night.runs()) {
      NightsInput.SheetZone zone = names.sheet(run.zone());
      page.number(0, CalendarText.timeOfDay(run.startMinute()), time, CellStyleName.TABLE)
          .number(1, CalendarText.timeOfDay(run.endMinute()), time, CellStyleName.TABLE)
          .words(2, zone.name(), CellStyleName.TABLE)
          .words(3, zone.place(), CellStyleName.TABLE)
          .words(4, names.program(names.part(run.zone())), CellStyleName.TABLE)
          .words(5, run.cycle() + " of " + run.zone().cycles(), CellStyleName.TABLE)
          .number(6, run.minutes(), "0", CellStyleName.TABLE)
          .number(7, run.zone().flow(), flow, CellStyleName.TABLE)
          .next();
    }
  }
}
