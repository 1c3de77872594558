package zonewright.desk.season;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Window;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import net.miginfocom.swing.MigLayout;
import zonewright.design.NightsCalendar;
import zonewright.design.WeatherTaken;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SideWindow;
import zonewright.desk.part.TwoLineHeader;
import zonewright.desk.picture.BesideEachOther;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureView;
import zonewright.desk.picture.SeasonDrawing;
import zonewright.desk.picture.SeasonGlance;
import zonewright.nights.NightsPlan;
import zonewright.season.Season;
import zonewright.season.SeasonFinding;
import zonewright.season.SeasonFindings;
import zonewright.season.SeasonReading;
import zonewright.season.SeasonRules;
import zonewright.season.SeasonTable;
import zonewright.season.SeasonWeather;
import zonewright.season.SeasonZones;
import zonewright.sheet.Book;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.weather.WeatherChoices;
import zonewright.weather.WeatherFile;
import zonewright.weather.WeatherProblem;

/** A season in a window of its own: what drives it, the soil of each zone, and what would help. */
public final class SeasonWindow implements FollowingWindow {
  private static final int DELAY_MILLIS = 80;

  /** Of more days times zones the picture of all zones is made away from the event thread. */
  private static final long AT_ONCE = 100_000;

  private final OpenDesign open;
  private final JDialog dialog;
  private final Supplier<Optional<Path>> weatherAsked;
  private final SeasonControls controls;
  private final SeasonZoneModel model = new SeasonZoneModel();
  private final JTable table = new JTable(model);
  private final JTextArea findings = new JTextArea();
  private final JLabel title = new JLabel(" ");
  private final PictureView picture = new PictureView();
  private final Prose summary = new Prose(" ");
  private final Prose origin = new Prose(" ");
  private final Inquiry working = new Inquiry("season", DELAY_MILLIS, this::workOut);
  private final Inquiry reading = new Inquiry("weather file");
  private final Timer again = new Timer(DELAY_MILLIS, event -> planned());
  private Optional<SeasonWeather> measured = Optional.empty();

  /** What was read of the design since it last changed. */
  private final Map<SeasonRules, SeasonZones> read = new EnumMap<>(SeasonRules.class);

  private Optional<SeasonWeather.FromMonths> months = Optional.empty();
  private Optional<SeasonChoice> choice = Optional.empty();
  private Optional<SeasonChoice> other = Optional.empty();
  private List<SeasonFinding> found = List.of();
  private boolean filling;

  /**
   * Makes the window; it is not shown yet.
   *
   * @param weatherAsked asks a person for a weather file
   * @param exported is given a drawing to export and its size
   */
  public SeasonWindow(
      Window owner,
      OpenDesign open,
      Supplier<Optional<Path>> weatherAsked,
      BiConsumer<Drawing, Dimension> exported) {
    this.open = open;
    this.weatherAsked = weatherAsked;
    dialog = SideWindow.of(owner, "A season", "season");
    again.setRepeats(false);
    controls =
        new SeasonControls(
            this::changed,
            this::read,
            this::takeTypical,
            () -> exported.accept(picture.drawing(), picture.exportSize()));
    setUpTable();
    setUpFindings();
    JSplitPane left =
        new JSplitPane(
            JSplitPane.VERTICAL_SPLIT, new JScrollPane(table), new JScrollPane(findings));
    left.setResizeWeight(0.6);
    left.setDividerLocation(UIScale.scale(310));
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, pictured());
    split.setDividerLocation(UIScale.scale(590));
    dialog.add(controls.panel(), BorderLayout.PAGE_START);
    dialog.add(split, BorderLayout.CENTER);
    dialog.add(foot(), BorderLayout.PAGE_END);
    SideWindow.place(dialog, 1240, 720);
  }

  private JPanel pictured() {
    JPanel panel = new JPanel(new BorderLayout());
    title.setFont(title.getFont().deriveFont(Font.BOLD));
    title.setBorder(BorderFactory.createEmptyBorder(8, UIScale.scale(14), 2, 8));
    panel.add(title, BorderLayout.PAGE_START);
    panel.add(picture, BorderLayout.CENTER);
    return panel;
  }

  private JPanel foot() {
    JPanel foot = new JPanel(new MigLayout("insets 6 12 8 12, gap 2, wrap 1", "[grow, 100:100:]"));
    summary.setName("season result");
    origin.setName("season origin");
    foot.add(summary, "growx, wmin 100");
    foot.add(origin, "growx, wmin 100");
    return foot;
  }

  private void setUpTable() {
    table.setName("season zones");
    table.getAccessibleContext().setAccessibleName("What the season gives each zone");
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setFillsViewportHeight(true);
    table.setTableHeader(
        new TwoLineHeader(table.getColumnModel()) {
          private static final long serialVersionUID = 1L;

          @Override
          public String getToolTipText(MouseEvent event) {
            int column = columnAtPoint(event.getPoint());
            return column < 0 ? null : model.meaning(column);
          }
        });
    table.setDefaultRenderer(Object.class, cells());
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!event.getValueIsAdjusting() && !filling) {
                draw();
                tellFindings();
              }
            });
  }

  private TableCellRenderer cells() {
    return new DefaultTableCellRenderer() {
      private static final long serialVersionUID = 1L;

      @Override
      public Component getTableCellRendererComponent(
          JTable of, Object value, boolean selected, boolean focus, int row, int column) {
        Component cell =
            super.getTableCellRendererComponent(of, value, selected, false, row, column);
        setHorizontalAlignment(
            model.numbers(column) ? SwingConstants.TRAILING : SwingConstants.LEADING);
        cell.setFont(row == 0 ? of.getFont().deriveFont(Font.BOLD) : of.getFont());
        setToolTipText(value.toString().isEmpty() ? null : value.toString());
        return cell;
      }
    };
  }

  private void setUpFindings() {
    findings.setName("season findings");
    findings.getAccessibleContext().setAccessibleName("What the season has to say");
    findings.setEditable(false);
    findings.setLineWrap(true);
    findings.setWrapStyleWord(true);
    findings.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
  }

  /** Shows the window. */
  public void open() {
    refresh();
    dialog.setVisible(true);
    table.requestFocusInWindow();
  }

  /** Takes the look over after it changed. */
  @Override
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
  }

  /** Closes the window for good. */
  @Override
  public void close() {
    working.close();
    reading.close();
    again.stop();
    dialog.dispose();
  }

  /** Shows the design as it is now, where the window is seen. */
  @Override
  public void planned() {
    if (dialog.isShowing()) {
      refresh();
    }
  }

  /** The same a moment later, once for many edits. */
  @Override
  public void edited() {
    if (dialog.isShowing()) {
      again.restart();
    }
  }

  private void refresh() {
    read.clear();
    months = Optional.empty();
    controls.fillRules(open.book());
    changed();
  }

  private void read() {
    weatherAsked
        .get()
        .ifPresent(
            file -> {
              WeatherChoices choices = WeatherTaken.choicesFor(open.book());
              say("Reading " + file.getFileName() + " …");
              reading.ask(
                  mine -> {
                    try {
                      SeasonWeather days =
                          SeasonWeather.of(WeatherFile.open(file).read(choices, (at, of) -> {}));
                      mine.tell(
                          () -> {
                            measured = Optional.of(days);
                            changed();
                          });
                    } catch (WeatherProblem problem) {
                      mine.tell(
                          () -> {
                            changed();
                            origin.setText(
                                problem.getMessage()
                                    + " The command weather takes more said of a file; open here what its --days writes.");
                          });
                    }
                  });
            });
  }

  private void takeTypical() {
    measured = Optional.empty();
    changed();
  }

  /** What is asked has changed: the picture follows at once, the tables a moment later. */
  private void changed() {
    take();
    controls.fillYears(choice.map(SeasonChoice::weather), measured.isPresent());
    draw();
    working.soon();
  }

  private void take() {
    choice = Optional.empty();
    other = Optional.empty();
    SeasonWeather.FromMonths made = months.orElseGet(() -> SeasonWeather.of(open.book()));
    months = Optional.of(made);
    Optional<SeasonWeather> days = measured.isPresent() ? measured : made.weather();
    if (days.isEmpty()) {
      say(made.problem());
      return;
    }
    choice = asked(controls.rule(), days.get());
    other = controls.beside().flatMap(held -> asked(held, days.get()));
    origin.setText(days.get().origin());
  }

  private Optional<SeasonChoice> asked(SeasonRules which, SeasonWeather days) {
    Book book = open.book();
    Optional<NightsPlan> plan = open.design().nights().known();
    if (which != SeasonRules.FOUND && plan.isEmpty()) {
      say(
          open.design().nights().asked().isPresent()
              ? "The timetable is being worked out."
              : NightsCalendar.whyNone(open.design()));
      return Optional.empty();
    }
    SeasonZones zones =
        read.computeIfAbsent(
            which,
            any ->
                which == SeasonRules.FOUND
                    ? SeasonReading.found(book)
                    : SeasonReading.proposed(book, plan.orElseThrow()));
    if (zones.zones().isEmpty()) {
      say("No zone can be followed. " + String.join(" ", zones.remarks()));
      return Optional.empty();
    }
    return which.setting(book).map(setting -> controls.choice(which, setting, zones, days));
  }

  /** Draws the zone selected, or all; within a frame where that can be. */
  private void draw() {
    if (choice.isEmpty()) {
      return;
    }
    SeasonChoice now = choice.get();
    int selected = table.getSelectedRow() - 1;
    if (selected >= 0 && selected < now.zones().zones().size()) {
      show(zoneDrawn(now, selected));
    } else if ((long) now.zones().zones().size() * now.weather().days().size() < AT_ONCE) {
      show(allDrawn(now.season(), other.map(SeasonChoice::season)));
    }
  }

  private Drawing zoneDrawn(SeasonChoice now, int selected) {
    UnitSystem system = open.book().system();
    Drawing one = zoneDrawn(now, selected, system);
    String name = now.zones().zones().get(selected).name();
    int place = other.map(held -> held.place(name)).orElse(-1);
    return place < 0
        ? one
        : new BesideEachOther(
            "Two schedules: zone " + name, one, zoneDrawn(other.get(), place, system));
  }

  private SeasonDrawing zoneDrawn(SeasonChoice of, int zone, UnitSystem system) {
    return new SeasonDrawing(
        of.seasonOf(zone), of.zones().zones().get(zone), of.words(), controls.year(of), system);
  }

  private Drawing allDrawn(Season season, Optional<Season> held) {
    SeasonChoice now = choice.orElseThrow();
    Drawing one = new SeasonGlance(season, now.words(), controls.year(now));
    return held.isEmpty()
        ? one
        : new BesideEachOther(
            "Two schedules: all zones",
            one,
            new SeasonGlance(held.get(), other.orElseThrow().words(), controls.year(now)));
  }

  private void show(Drawing drawing) {
    title.setText(drawing.title());
    picture.show(drawing);
  }

  /** Works all zones out, and what would help, away from the event thread. */
  private void workOut() {
    if (choice.isEmpty()) {
      return;
    }
    SeasonChoice now = choice.get();
    Optional<SeasonChoice> held = other;
    working.ask(
        mine -> {
          Season season = now.season();
          Optional<Season> beside = held.map(SeasonChoice::season);
          mine.tell(() -> worked(season, beside));
          List<SeasonFinding> said = SeasonFindings.of(season);
          mine.tell(
              () -> {
                found = said;
                tellFindings();
              });
        });
  }

  private void worked(Season season, Optional<Season> held) {
    UnitSystem system = open.book().system();
    filling = true;
    int selected = Math.max(0, table.getSelectedRow());
    boolean began = model.getRowCount() == 0;
    model.show(season, system);
    for (int column = 0; began && column < model.getColumnCount(); column++) {
      table
          .getColumnModel()
          .getColumn(column)
          .setPreferredWidth(UIScale.scale(SeasonZoneModel.width(column)));
    }
    if (selected < model.getRowCount()) {
      table.setRowSelectionInterval(selected, selected);
    }
    filling = false;
    String words = String.join(" ", SeasonTable.summary(season, system));
    String money =
        season.cost(open.book()).stream()
            .mapToObj(cost -> " It costs " + QuantityText.grouped(cost, 2) + " a year.")
            .collect(Collectors.joining());
    String compared =
        held.map(
                other ->
                    " Beside it: "
                        + SeasonTable.summary(other, system).get(0).toLowerCase(Locale.ROOT))
            .orElse("");
    summary.setText(words + money + compared);
    if (table.getSelectedRow() <= 0) {
      show(allDrawn(season, held));
    }
  }

  private void tellFindings() {
    int selected = table.getSelectedRow() - 1;
    List<String> lines = new ArrayList<>();
    choice.ifPresent(
        now -> {
          if (selected < 0) {
            lines.addAll(now.zones().remarks());
          }
          int row =
              selected < 0 || selected >= now.zones().zones().size()
                  ? -1
                  : now.zones().zones().get(selected).row();
          found.stream()
              .filter(finding -> selected < 0 || finding.row() == row)
              .map(finding -> Prose.capital(finding.line()) + ".")
              .forEach(lines::add);
        });
    findings.setText(
        lines.isEmpty()
            ? "Nothing to say: plants get what they need, and little is wasted."
            : String.join("\n\n", lines));
    findings.setCaretPosition(0);
  }

  private void say(String sentence) {
    show(Drawing.saying("A season", sentence));
    summary.setText(sentence);
    found = List.of();
    findings.setText("");
  }
}
