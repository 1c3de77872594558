package zonewright.desk.nights;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import net.miginfocom.swing.MigLayout;
import zonewright.climate.Climate;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.SideWindow;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.NightsView;
import zonewright.emitters.Emitters;
import zonewright.nights.MonthBook;
import zonewright.nights.NightNames;
import zonewright.nights.NightWords;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.NightsPlanner;
import zonewright.nights.SiteNights;
import zonewright.nights.ZoneShare;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.timetable.NightPlan;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.water.DroughtStages;
import zonewright.water.MonthlySchedule;

/** The nights in a window of their own: which night, which month, and the night itself. */
public final class NightsWindow implements FollowingWindow {
  private static final int MOST_PERCENT = 150;
  private static final int DELAY_MILLIS = 60;

  private final OpenDesign open;
  private final JDialog dialog;
  private final DefaultListModel<NightPlan> nights = new DefaultListModel<>();
  private final JList<NightPlan> list = new JList<>(nights);
  private final JComboBox<Share> months = new JComboBox<>();
  private final JLabel stageWords = new JLabel("Stage");
  private final JComboBox<String> stages = new JComboBox<>();
  private final JSlider percent = new JSlider(0, MOST_PERCENT, 100);
  private final JLabel percentWords = new JLabel("100 %");
  private final JLabel result = new JLabel(" ");
  private final ZoneShareModel zones = new ZoneShareModel();
  private final NightsView view = new NightsView(this::wish);
  private final Inquiry scaling = new Inquiry("months", DELAY_MILLIS, this::plan);
  private Optional<NightsPlan> plan = Optional.empty();
  private boolean filling;

  /** A share of the peak month's water, by name. */
  private record Share(String name, int percent) {
    @Override
    public String toString() {
      return name + " (" + percent + " %)";
    }
  }

  /**
   * Makes the window; it is not shown yet.
   *
   * @param exported is given a drawing to export and its size
   */
  public NightsWindow(Window owner, OpenDesign open, BiConsumer<Drawing, Dimension> exported) {
    this.open = open;
    dialog = SideWindow.of(owner, "The nights", "nights");
    JScrollPane scroll = new JScrollPane(view);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    JSplitPane right = new JSplitPane(JSplitPane.VERTICAL_SPLIT, scroll, new JScrollPane(zones()));
    right.setResizeWeight(1);
    right.setDividerLocation(UIScale.scale(360));
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, new JScrollPane(list), right);
    split.setDividerLocation(UIScale.scale(190));
    dialog.add(head(exported), BorderLayout.PAGE_START);
    dialog.add(split, BorderLayout.CENTER);
    result.setName("night result");
    result.setBorder(BorderFactory.createEmptyBorder(6, 12, 8, 12));
    dialog.add(result, BorderLayout.PAGE_END);
    setUpList();
    setUpShares();
    SideWindow.place(dialog, 1040, 620);
  }

  private JPanel head(BiConsumer<Drawing, Dimension> exported) {
    JPanel head = new JPanel(new MigLayout("insets 8 12 6 12, gap 6", "", "[]"));
    JLabel words = new JLabel("Water of");
    words.setLabelFor(months);
    head.add(words);
    head.add(months);
    head.add(percent, "w 220!");
    head.add(percentWords, "w 46!");
    stageWords.setLabelFor(stages);
    head.add(stageWords, "hidemode 3");
    head.add(stages, "hidemode 3");
    head.add(new JLabel(), "pushx");
    head.add(button("Farther", "Show more of the night (−)", () -> view.zoom(1.25)));
    head.add(button("Nearer", "Show less of the night (+)", () -> view.zoom(0.8)));
    head.add(button("Whole night", "Show the whole night (0)", view::wholeNight));
    head.add(
        button(
            "Export",
            "Export this picture as PNG or SVG",
            () ->
                view.drawing()
                    .ifPresent(
                        drawing ->
                            exported.accept(
                                drawing,
                                new Dimension(
                                    Math.max(640, UIScale.unscale(view.getWidth())),
                                    Math.max(360, UIScale.unscale(view.getHeight())))))));
    return head;
  }

  private JTable zones() {
    JTable table = new JTable(zones);
    table.setName("night zones");
    table.getAccessibleContext().setAccessibleName("What the nights give each zone");
    table.setFillsViewportHeight(true);
    for (int column = 0; column < zones.getColumnCount(); column++) {
      TableColumn of = table.getColumnModel().getColumn(column);
      of.setPreferredWidth(UIScale.scale(zones.width(column)));
      DefaultTableCellRenderer cells = new DefaultTableCellRenderer();
      cells.setHorizontalAlignment(
          ZoneShareModel.atTheRight(column) ? SwingConstants.TRAILING : SwingConstants.LEADING);
      of.setCellRenderer(cells);
    }
    return table;
  }

  private static JButton button(String name, String tip, Runnable action) {
    JButton button = SideWindow.button(name, tip, action);
    button.setName("night " + name.toLowerCase(Locale.ROOT));
    return button;
  }

  private void setUpList() {
    list.setName("nights list");
    list.getAccessibleContext().setAccessibleName("Nights");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new NightCell());
    list.addListSelectionListener(event -> showNight());
  }

  private void setUpShares() {
    months.setName("month");
    months.getAccessibleContext().setAccessibleName("Month");
    months.addActionListener(
        event -> {
          if (!filling && months.getSelectedItem() instanceof Share share) {
            percent.setValue(Math.min(MOST_PERCENT, share.percent()));
            showMonth(share.name());
          }
        });
    stages.setName("stage");
    stages.getAccessibleContext().setAccessibleName("Stage in force");
    stages.setToolTipText("The stage of a drought that the site keeps to");
    stages.addActionListener(
        event -> {
          if (!filling) {
            putInForce(stages.getSelectedIndex() == 0 ? "" : (String) stages.getSelectedItem());
          }
        });
    percent.setName("percent");
    percent.getAccessibleContext().setAccessibleName("Percent of the peak month's water");
    percent.setToolTipText("The water of the zones, in percent of the peak month");
    percent.addChangeListener(
        event -> {
          percentWords.setText(percent.getValue() + " %");
          if (!filling) {
            fillMonths();
            scaling.soon();
          }
        });
  }

  /** Lets the sheet Monthly and the page to key in show the same month. */
  private void showMonth(String name) {
    Entry month = Climate.MONTH_NAMES.contains(name) ? new Entry.Words(name) : Entry.BLANK;
    Book book = open.book();
    if (!book.entry(MonthlySchedule.MONTH.reference(), 0).equals(month)) {
      book.perform(new Edits(book).set(MonthlySchedule.MONTH.reference(), 0, month));
    }
  }

  private void putInForce(String stage) {
    Book book = open.book();
    Entry entry = stage.isEmpty() ? Entry.BLANK : new Entry.Words(stage);
    book.perform(new Edits(book).set(DroughtStages.IN_FORCE.reference(), 0, entry));
  }

  /** Offers the stages; a design without any is not asked for one. */
  private void fillStages() {
    filling = true;
    List<String> all = open.book().choices(DroughtStages.IN_FORCE);
    stages.removeAllItems();
    stages.addItem("none");
    all.forEach(stages::addItem);
    String now = open.book().outcome(DroughtStages.IN_FORCE.reference(), 0).text();
    stages.setSelectedIndex(1 + all.indexOf(now));
    stages.setVisible(!all.isEmpty());
    stageWords.setVisible(!all.isEmpty());
    filling = false;
  }

  /** Takes the percent of the month that the design shows. */
  private void takeMonth() {
    String shown = open.book().outcome(MonthlySchedule.MONTH.reference(), 0).text();
    int share =
        MonthBook.months(open.book()).stream()
            .filter(month -> month.name().equals(shown))
            .mapToInt(month -> (int) Math.round(month.share() * 100))
            .findFirst()
            .orElse(100);
    percent.setValue(Math.min(MOST_PERCENT, share));
  }

  private void fillMonths() {
    filling = true;
    months.removeAllItems();
    Share peak = new Share("Peak month", 100);
    months.addItem(peak);
    Share chosen = percent.getValue() == 100 ? peak : null;
    for (MonthBook.Month month : MonthBook.months(open.book())) {
      Share share = new Share(month.name(), (int) Math.round(month.share() * 100));
      months.addItem(share);
      chosen = chosen == null && share.percent() == percent.getValue() ? share : chosen;
    }
    if (chosen == null) {
      chosen = new Share("Some month", percent.getValue());
      months.addItem(chosen);
    }
    months.setSelectedItem(chosen);
    filling = false;
  }

  /** Shows the window. */
  public void open() {
    takeMonth();
    refresh();
    dialog.setVisible(true);
    list.requestFocusInWindow();
  }

  /** Takes the look over after it changed. */
  @Override
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
  }

  /** Closes the window for good. */
  @Override
  public void close() {
    scaling.close();
    dialog.dispose();
  }

  /** Shows the design as it is now, where the window is seen. */
  @Override
  public void planned() {
    if (dialog.isShowing()) {
      refresh();
    }
  }

  private void refresh() {
    fillMonths();
    fillStages();
    plan();
  }

  private void plan() {
    if (percent.getValue() == 100) {
      scaling.drop();
      show(open.design().nights().known());
      return;
    }
    Book book = open.book();
    BookSnapshot snapshot = book.snapshot();
    double[] minutes = MonthBook.minutes(book);
    double share = percent.getValue() / 100.0;
    scaling.ask(
        mine -> {
          Optional<NightsPlan> made =
              MonthBook.scaled(book.schema(), snapshot, minutes, share)
                  .map(input -> NightsPlanner.plan(input, Optional.empty()));
          mine.tell(() -> show(made));
        });
  }

  private void show(Optional<NightsPlan> made) {
    plan = made;
    zones.show(made);
    NightPlan before = list.getSelectedValue();
    filling = true;
    nights.clear();
    made.ifPresent(plan -> plan.timetable().nights().forEach(nights::addElement));
    int select = nights.isEmpty() ? -1 : 0;
    for (int i = 0; i < nights.size(); i++) {
      boolean same = before != null && nights.get(i).night().equals(before.night());
      boolean longest =
          before == null
              && made.flatMap(NightsPlan::longestNight).equals(Optional.of(nights.get(i)));
      select = same || longest ? i : select;
    }
    filling = false;
    if (select >= 0) {
      list.setSelectedIndex(select);
      list.ensureIndexIsVisible(select);
    }
    showNight();
  }

  private void showNight() {
    if (filling) {
      return;
    }
    NightPlan night = list.getSelectedValue();
    if (night == null || plan.isEmpty()) {
      view.say(
          open.design().nights().asked().isPresent() && percent.getValue() > 0
              ? "The timetable is being worked out."
              : "There is nothing to water: no zone has cycles, minutes and flow, or no night is open.");
      result.setText(" ");
      return;
    }
    view.show(plan.get(), night, Emitters.ZONE_FLOW.kind().unit(open.book().system()).symbol());
    result.setText(words(plan.get(), night));
  }

  private static String words(NightsPlan plan, NightPlan night) {
    String all = ZoneShare.summary(ZoneShare.of(plan));
    if (night.isEmpty()) {
      return "Nothing waters on this night. " + all;
    }
    String noRoom = NightWords.noRoom(night, new NightNames(plan));
    return NightWords.capital(NightWords.result(night))
        + ". "
        + (noRoom.isEmpty() ? "" : "No room for " + noRoom + ". ")
        + all;
  }

  /** Types the time before which a program should not start. */
  private void wish(long program, OptionalInt minute) {
    NightsInput.Program typed = plan.orElseThrow().input().programs().get(program);
    Book book = open.book();
    if (typed != null && typed.row() < book.rows(Sheets.PROGRAMS)) {
      Entry time =
          minute.isPresent()
              ? new Entry.Figure(CalendarText.timeOfDay(minute.getAsInt()))
              : Entry.BLANK;
      book.perform(new Edits(book).set(SiteNights.START_WISH.reference(), typed.row(), time));
    }
  }
}
