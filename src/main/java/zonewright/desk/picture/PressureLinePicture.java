package zonewright.desk.picture;

import zonewright.design.Design;
import zonewright.pipes.PressureLine;
import zonewright.pipes.Valves;
import zonewright.trade.Sheets;

/** Where the pressure goes on the way to the worst head of a zone. */
final class PressureLinePicture implements Picture {
  private static final String NAME = "Where the pressure goes";

  @Override
  public String id() {
    return "pressure-line";
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Subject subject() {
    return Subject.row(Sheets.PIPES);
  }

  @Override
  public Drawing of(Design design, int row) {
    String title = NAME + ", " + design.book().cellName(Valves.ZONE.reference(), row).row();
    PressureLine.Answer answer = PressureLine.of(design.book(), row);
    return answer instanceof PressureLine.Shown shown
        ? new PressureLineDrawing(title, shown.line())
        : Drawing.saying(title, ((PressureLine.NotKnown) answer).sentence());
  }
}
