package zonewright.desk.picture;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.SwingUtilities;
import zonewright.desk.part.Palette;

/** Draws shares as bars beneath each other, the greatest first; what finds no room is counted. */
record ShareDrawing(String title, List<Share> shares, int unknown) implements Drawing {
  /** A zone and its share, from 0 to 1, also as text. */
  record Share(String name, double value, String shown) {}

  ShareDrawing {
    shares = List.copyOf(shares);
  }

  @Override
  public String inWords() {
    Share first = shares.get(0);
    String rest =
        unknown == 0
            ? ""
            : " " + unknown + (unknown == 1 ? " share is" : " shares are") + " not known.";
    return "Zone %s takes most of the water, %s; %s zones are shown.%s"
        .formatted(first.name().strip(), first.shown(), shares.size(), rest);
  }

  @Override
  public void paint(Canvas canvas) {
    Rectangle place = canvas.place();
    int line = canvas.metrics().getHeight() + Math.round(canvas.px(3));
    int room = Math.max(1, place.height / line);
    boolean all = shares.size() <= room;
    int shown = all ? shares.size() : Math.max(0, room - 1);
    int names =
        shares.stream().limit(shown).mapToInt(share -> canvas.width(share.name())).max().orElse(0);
    int left = place.x + Math.min(names, place.width * 2 / 5) + Math.round(canvas.px(10));
    int numbers = canvas.width("100.0 %") + Math.round(canvas.px(6));
    double wide = Math.max(1, place.getMaxX() - left - numbers);
    double greatest = Math.max(1e-9, shares.get(0).value());
    int y = place.y;
    for (int i = 0; i < shown; i++) {
      Share share = shares.get(i);
      double base = y + canvas.metrics().getAscent() + canvas.px(1);
      String name = cut(canvas, share.name(), left - place.x - Math.round(canvas.px(10)));
      canvas.write(name, place.x, base, canvas.palette().ink());
      double width = wide * share.value() / greatest;
      canvas.pen().setColor(bar(canvas));
      canvas.pen().fill(new Rectangle2D.Double(left, y + canvas.px(2), width, line - canvas.px(6)));
      canvas.write(share.shown(), left + width + canvas.px(5), base, canvas.palette().muted());
      y += line;
    }
    if (!all) {
      double rest = shares.stream().skip(shown).mapToDouble(Share::value).sum();
      canvas.write(
          "and %s more zones with %s %% together"
              .formatted(shares.size() - shown, zonewright.units.QuantityText.fixed(rest * 100, 1)),
          place.x,
          y + canvas.metrics().getAscent() + canvas.px(1),
          canvas.palette().muted());
    }
  }

  private static Color bar(Canvas canvas) {
    return Palette.mix(canvas.palette().water(), canvas.palette().paper(), 0.6);
  }

  private static String cut(Canvas canvas, String name, int width) {
    Rectangle none = new Rectangle();
    return SwingUtilities.layoutCompoundLabel(
        canvas.metrics(),
        name,
        null,
        0,
        0,
        0,
        0,
        new Rectangle(0, 0, Math.max(1, width), 20),
        none,
        new Rectangle(),
        0);
  }
}
