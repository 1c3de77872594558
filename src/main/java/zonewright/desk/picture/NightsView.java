package zonewright.desk.picture;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import zonewright.desk.part.Palette;
import zonewright.nights.NightNames;
import zonewright.nights.NightWords;
import zonewright.nights.NightsPlan;
import zonewright.timetable.NightPlan;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;
import zonewright.units.QuantityText;

/** A night to look into: zoom with wheel or keys, drag a program to start it later. */
public final class NightsView extends JPanel implements Scrollable {
  private static final int LINE_PIXELS = 18;
  private static final int OTHER_PIXELS = 170;
  private static final int SHORTEST_MINUTES = 30;
  private static final int STEP_MINUTES = 5;

  private final transient BiConsumer<Long, OptionalInt> wished;
  private transient Optional<NightDrawing> shown = Optional.empty();
  private transient NightChart chart;
  private transient String sentence = "";

  /** The number of the program that is dragged, if one is. */
  private transient long dragged = WateredZone.NO_PROGRAM;

  private int pressedAt;
  private double pressedMinute;
  private double movedMinutes;

  /**
   * Makes a view that shows nothing yet.
   *
   * @param wished is given the number of a program and the minute of the day before which it should
   *     not start, or none where it may start at once
   */
  public NightsView(BiConsumer<Long, OptionalInt> wished) {
    this.wished = wished;
    setName("night");
    setFocusable(true);
    setOpaque(true);
    putClientProperty(FlatClientProperties.STYLE_CLASS, "small");
    setToolTipText("");
    key("PLUS", "nearer", () -> zoom(0.8, middle()));
    key("ADD", "nearer", () -> zoom(0.8, middle()));
    key("EQUALS", "nearer", () -> zoom(0.8, middle()));
    key("MINUS", "farther", () -> zoom(1.25, middle()));
    key("SUBTRACT", "farther", () -> zoom(1.25, middle()));
    key("0", "whole night", this::wholeNight);
    key("NUMPAD0", "whole night", this::wholeNight);
    key("LEFT", "earlier", () -> pan(-0.2));
    key("RIGHT", "later", () -> pan(0.2));
    key("ESCAPE", "leave it", this::leave);
    Mouse mouse = new Mouse();
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
  }

  private void key(String key, String name, Runnable action) {
    getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), name);
    getActionMap()
        .put(
            name,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                action.run();
              }
            });
  }

  /** Shows a night; the part shown before stays where it is the same night again. */
  public void show(NightsPlan plan, NightPlan night, String flowUnit) {
    NightDrawing whole = NightDrawing.whole(plan, night, flowUnit);
    boolean same =
        shown.filter(before -> before.night().night().equals(night.night())).isPresent()
            && zoomed();
    if (same) {
      NightDrawing before = shown.get();
      whole = part(whole, before.from(), before.to());
    }
    shown = Optional.of(whole);
    sentence = "";
    tell(whole.title(), whole.inWords());
  }

  /** Shows a sentence in place of a night. */
  public void say(String words) {
    shown = Optional.empty();
    chart = null;
    sentence = words;
    tell("The nights", words);
  }

  private void tell(String name, String description) {
    getAccessibleContext().setAccessibleName(name);
    getAccessibleContext().setAccessibleDescription(description);
    revalidate();
    repaint();
  }

  /** Returns what is shown. */
  public Optional<NightDrawing> drawing() {
    return shown;
  }

  private static NightDrawing part(NightDrawing of, double from, double to) {
    return new NightDrawing(of.title(), of.plan(), of.night(), of.flowUnit(), from, to);
  }

  private boolean zoomed() {
    return shown
        .filter(
            now ->
                now.to() - now.from() < NightDrawing.last(now.night()) - now.night().opensMinute())
        .isPresent();
  }

  private double middle() {
    return shown.map(now -> (now.from() + now.to()) / 2).orElse(0.0);
  }

  /** Shows less (a factor below 1) or more of the night around a minute. */
  public void zoom(double factor, double around) {
    shown.ifPresent(
        now -> {
          double length = now.to() - now.from();
          double whole = NightDrawing.last(now.night()) - now.night().opensMinute() + 20.0;
          double wanted = Math.max(SHORTEST_MINUTES, Math.min(whole, length * factor));
          if (wanted >= whole) {
            wholeNight();
            return;
          }
          double from = around - (around - now.from()) * wanted / length;
          range(from, wanted);
        });
  }

  /** Shows less or more around the middle. */
  public void zoom(double factor) {
    zoom(factor, middle());
  }

  private void range(double from, double length) {
    NightDrawing now = shown.orElseThrow();
    double first = now.night().opensMinute() - 10.0;
    double last = NightDrawing.last(now.night()) + 10.0;
    double start = Math.max(first, Math.min(last - length, from));
    shown = Optional.of(part(now, start, start + length));
    repaint();
  }

  private void pan(double share) {
    shown.ifPresent(
        now -> range(now.from() + share * (now.to() - now.from()), now.to() - now.from()));
  }

  /** Shows the whole night. */
  public void wholeNight() {
    shown = shown.map(now -> NightDrawing.whole(now.plan(), now.night(), now.flowUnit()));
    repaint();
  }

  private void leave() {
    dragged = WateredZone.NO_PROGRAM;
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Palette palette = Palette.current();
    graphics.setColor(palette.paper());
    graphics.fillRect(0, 0, getWidth(), getHeight());
    Graphics2D pen = (Graphics2D) graphics.create();
    Painting.smoothForScreen(pen);
    Drawing what =
        shown.<Drawing>map(night -> new Overlaid(night)).orElse(Drawing.saying("", sentence));
    Painting.paint(what, pen, getSize(), getFont(), palette, UIScale.scale(1f), false);
    pen.dispose();
  }

  /** The night with the program that is being dragged above it. */
  private final class Overlaid implements Drawing {
    private final NightDrawing night;

    Overlaid(NightDrawing night) {
      this.night = night;
    }

    @Override
    public String title() {
      return night.title();
    }

    @Override
    public String inWords() {
      return night.inWords();
    }

    @Override
    public void paint(Canvas canvas) {
      night.paint(canvas);
      chart = night.chart(canvas);
      if (dragged != WateredZone.NO_PROGRAM && movedMinutes != 0) {
        ghosts(canvas);
      }
    }
  }

  private void ghosts(Canvas canvas) {
    Graphics2D pen = canvas.pen();
    pen.setColor(canvas.palette().ink());
    pen.setStroke(canvas.broken(1.4, 3, 3));
    for (int line = 0; line < chart.lines().size(); line++) {
      if (chart.lines().get(line).program() == dragged) {
        for (ValveRun run : chart.lines().get(line).runs()) {
          Rectangle2D bar = chart.bar(line, run);
          double shift = chart.x(run.startMinute() + movedMinutes) - chart.x(run.startMinute());
          pen.draw(
              new Rectangle2D.Double(
                  bar.getX() + shift, bar.getY(), bar.getWidth(), bar.getHeight()));
        }
      }
    }
    int minute = wishedMinute();
    double x = chart.x(minute);
    pen.draw(new Line2D.Double(x, chart.bars().y, x, chart.bars().getMaxY()));
    String program = new NightNames(shown.orElseThrow().plan()).program(dragged);
    String words =
        minute <= chart.night().opensMinute()
            ? "program " + program + " may start at once"
            : "program " + program + " not before " + NightWords.time(minute);
    double left =
        Math.min(x + canvas.px(5), canvas.place().getMaxX() - canvas.width(words) - canvas.px(4));
    double base = chart.bars().y + canvas.metrics().getAscent();
    Color paper = canvas.palette().paper();
    pen.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 235));
    pen.fill(
        new Rectangle2D.Double(
            left - canvas.px(2),
            chart.bars().y,
            canvas.width(words) + canvas.px(4),
            canvas.metrics().getHeight()));
    canvas.write(words, left, base, canvas.palette().ink());
  }

  private int wishedMinute() {
    double minute = chart.firstStart(dragged) + movedMinutes;
    return (int) Math.round(minute / STEP_MINUTES) * STEP_MINUTES;
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    if (chart == null) {
      return null;
    }
    return chart.runAt(event.getX(), event.getY()).map(this::inWords).orElse(null);
  }

  private String inWords(ValveRun run) {
    NightDrawing now = shown.orElseThrow();
    NightNames names = new NightNames(now.plan());
    String drag =
        run.zone().program() == WateredZone.NO_PROGRAM
            ? "Give it a program to drag its start."
            : "Drag it to start program " + names.program(run.zone().program()) + " later.";
    return "%s: %s to %s, cycle %s of %s, %s %s. %s"
        .formatted(
            names.withPlace(run.zone()),
            NightWords.time(run.startMinute()),
            NightWords.time(run.endMinute()),
            run.cycle(),
            run.zone().cycles(),
            QuantityText.readable(run.zone().flow(), 1),
            now.flowUnit(),
            drag);
  }

  private final class Mouse extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent event) {
      requestFocusInWindow();
      if (chart != null && SwingUtilities.isLeftMouseButton(event)) {
        pressedAt = event.getX();
        pressedMinute = chart.minute(event.getX());
        movedMinutes = 0;
        dragged =
            chart
                .runAt(event.getX(), event.getY())
                .map(run -> run.zone().program())
                .orElse(WateredZone.NO_PROGRAM);
      }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
      if (chart != null && dragged != WateredZone.NO_PROGRAM) {
        boolean far = Math.abs(event.getX() - pressedAt) > UIScale.scale(3);
        movedMinutes = far || movedMinutes != 0 ? chart.minute(event.getX()) - pressedMinute : 0;
        repaint();
      }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
      if (chart != null && dragged != WateredZone.NO_PROGRAM && movedMinutes != 0) {
        int minute = wishedMinute();
        long program = dragged;
        dragged = WateredZone.NO_PROGRAM;
        wished.accept(
            program,
            minute <= chart.night().opensMinute() ? OptionalInt.empty() : OptionalInt.of(minute));
      }
      dragged = WateredZone.NO_PROGRAM;
      repaint();
    }

    @Override
    public void mouseMoved(MouseEvent event) {
      boolean may =
          chart != null
              && chart
                  .runAt(event.getX(), event.getY())
                  .filter(run -> run.zone().program() != WateredZone.NO_PROGRAM)
                  .isPresent();
      setCursor(Cursor.getPredefinedCursor(may ? Cursor.E_RESIZE_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
      boolean scrolls =
          getParent() != null && getHeight() > getParent().getHeight() && !event.isControlDown();
      if (scrolls || chart == null) {
        getParent()
            .dispatchEvent(SwingUtilities.convertMouseEvent(NightsView.this, event, getParent()));
      } else if ((event.getModifiersEx() & InputEvent.SHIFT_DOWN_MASK) != 0) {
        pan(event.getPreciseWheelRotation() * 0.1);
      } else {
        zoom(Math.pow(1.15, event.getPreciseWheelRotation()), chart.minute(event.getX()));
      }
    }
  }

  @Override
  public Dimension getPreferredSize() {
    int lines = shown.map(now -> NightChart.lines(now.plan(), now.night()).size()).orElse(0);
    return UIScale.scale(new Dimension(640, OTHER_PIXELS + lines * LINE_PIXELS));
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return UIScale.scale(new Dimension(760, 420));
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return UIScale.scale(LINE_PIXELS);
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return visible.height;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() != null && getParent().getHeight() > getPreferredSize().height;
  }
}
