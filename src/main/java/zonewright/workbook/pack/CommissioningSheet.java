package zonewright.workbook.pack;

import java.util.List;
import zonewright.design.Caution;
import zonewright.handover.Commissioning;
import zonewright.workbook.kit.CellStyleName;

/** The commissioning list: what to do, a box to tick, room for initials. */
final class CommissioningSheet implements PackSheet {
  @Override
  public String word() {
    return "commissioning";
  }

  @Override
  public String title() {
    return "Commissioning";
  }

  @Override
  public String about() {
    return "The list to go through on the day, with boxes to tick and sign.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public void write(PackBook book) {
    Page page = book.page(title(), false, 6, 76, 16);
    page.title("Commissioning", "Tick and initial what is done. Strike out what does not apply.");
    for (Commissioning part : Commissioning.all()) {
      page.band(part.part());
      for (String thing : part.things()) {
        page.words(0, "☐", CellStyleName.NAME)
            .words(1, thing, CellStyleName.PLAIN)
            .words(2, "", CellStyleName.TABLE)
            .next();
      }
    }
    page.next().band("Take care");
    for (Caution caution : Caution.all()) {
      page.across(caution.topic() + ": " + caution.sentences(), CellStyleName.CAUTION);
    }
    page.next();
    for (String name : List.of("Set up by", "Owner or operator", "Date")) {
      page.height(28)
          .words(1, name + ": ______________________________", CellStyleName.PLAIN)
          .next();
    }
  }
}
