package zonewright.desk.picture;

import java.awt.Font;
import java.awt.Rectangle;

/**
 * Two drawings in one, each with its title: beside each other where there is width for it, else one
 * above the other.
 */
public record BesideEachOther(String title, Drawing one, Drawing other) implements Drawing {
  private static final double WIDE = 2.6;

  @Override
  public String inWords() {
    return one.title() + ": " + one.inWords() + " " + other.title() + ": " + other.inWords();
  }

  @Override
  public void paint(Canvas canvas) {
    Rectangle all = canvas.place();
    int gap = Math.round(canvas.px(18));
    if (all.width > WIDE * all.height) {
      int half = (all.width - gap) / 2;
      half(canvas, one, new Rectangle(all.x, all.y, half, all.height));
      half(canvas, other, new Rectangle(all.x + half + gap, all.y, half, all.height));
    } else {
      int half = (all.height - gap) / 2;
      half(canvas, one, new Rectangle(all.x, all.y, all.width, half));
      half(canvas, other, new Rectangle(all.x, all.y + half + gap, all.width, half));
    }
  }

  private static void half(Canvas canvas, Drawing drawing, Rectangle place) {
    Font plain = canvas.pen().getFont();
    canvas.pen().setFont(plain.deriveFont(Font.BOLD));
    canvas.write(
        drawing.title(), place.x, place.y + canvas.metrics().getAscent(), canvas.palette().ink());
    int head = canvas.metrics().getHeight() + Math.round(canvas.px(2));
    canvas.pen().setFont(plain);
    drawing.paint(
        canvas.within(
            new Rectangle(place.x, place.y + head, place.width, Math.max(1, place.height - head))));
  }
}
