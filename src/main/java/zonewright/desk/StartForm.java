package zonewright.desk;

import java.awt.Frame;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.PlaceTaken;
import zonewright.desk.grid.Arrangement;
import zonewright.desk.grid.FormQuestion;
import zonewright.desk.grid.RecordGrid;
import zonewright.desk.grid.SheetGrid;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Keyboard;
import zonewright.desk.part.Prose;
import zonewright.desk.sheets.GridView;
import zonewright.emitters.Emitters;
import zonewright.nights.NightSheet;
import zonewright.pipes.FlowTest;
import zonewright.pipes.Supply;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Controller;
import zonewright.water.SiteRules;

/**
 * One form to begin a design with: what it is called and where, supply and rules, the first zones.
 *
 * <p>Its two grids are those of the design itself, so all that can be typed there can be typed
 * here.
 */
final class StartForm {
  /** What changes every answer, in the order in which a designer knows it. */
  private static final List<FormQuestion> SITE =
      List.of(
          new FormQuestion(
              "The job", Facts.PROJECT_NAME, "Left blank: the file is called a new design."),
          new FormQuestion(
              "Place",
              Climate.PLACE,
              "One of the list, or another town whose weather the program knows. Left blank: no minutes follow until the months are typed."),
          new FormQuestion(
              "Controller",
              Controller.KIND,
              "Left blank: programs with start times, stations one after another, the usual one."),
          new FormQuestion(
              "Controller", Controller.PROGRAMS, "Left blank: as many programs as shown."),
          new FormQuestion(
              "Controller",
              Controller.STARTS,
              "Left blank: as many starts a program as shown; long runs are parted into them."),
          new FormQuestion(
              "Water supply",
              FlowTest.STATIC_PRESSURE,
              "Left blank: pressure is not followed to the heads."),
          new FormQuestion(
              "Water supply",
              Supply.WATER_METER,
              "Left blank: the meter sets no limit, so type the flow below."),
          new FormQuestion(
              "Water supply",
              SiteRules.AVAILABLE_FLOW,
              "Left blank: it follows from pressure and meter; without them no flow is held against it."),
          new FormQuestion(
              "Days and hours",
              SiteRules.WEEKDAYS,
              "Left blank: any day of the week. Write Mon Wed Fri, in any order."),
          new FormQuestion(
              "Days and hours",
              SiteRules.DAYS_ALLOWED,
              "Left blank: as many days a week as shown."),
          new FormQuestion(
              "Days and hours", NightSheet.OPENS, "Left blank: as shown, the same every night."),
          new FormQuestion(
              "Days and hours", NightSheet.CLOSES, "Left blank: as shown, the next morning."));

  private static final List<Column> ZONES =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          Emitters.AREA,
          Plants.PLANT,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.EMITTER_FLOW,
          Soils.SOIL_TYPE,
          Soils.SLOPE,
          Emitters.PRECIPITATION_RATE);

  private final Design design;
  private final JDialog dialog;
  private final RecordGrid site;
  private final SheetGrid zones;
  private final JButton begin = new JButton("Begin");
  private final Consumer<Design> begun;

  private StartForm(Window owner, Design design, Consumer<Design> begun) {
    this.begun = begun;
    this.design = design;
    UnitSystem system = design.book().system();
    dialog = new JDialog(owner, "A new design", JDialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("start form");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.addWindowFocusListener(
        new WindowAdapter() {
          @Override
          public void windowGainedFocus(WindowEvent event) {
            dialog.removeWindowFocusListener(this);
            site.table().requestFocusInWindow();
          }
        });
    site = new RecordGrid(design.book(), Sheets.SITE, SITE);
    zones = new SheetGrid(design.book(), Sheets.ZONES);
    site.table().setName("start site");
    zones.table().setName("start zones");
    zones
        .columns()
        .apply(
            Arrangement.of(ZONES.stream().map(column -> column.reference().column()).toList(), 1));
    JPanel page = new JPanel(new MigLayout("insets 18 22 16 22, fill, wrap 1", "[grow]", ""));
    page.add(new Prose("A new design").styled("h2"), "growx");
    page.add(
        new Prose(
                "Fill in what you know, from the top. Beside each line stands what happens where it is"
                    + " left blank; all of it can be changed later.")
            .coloured("Zonewright.muted"),
        "growx, wmin 300");
    if (design.book().entry(Facts.OFFICE.reference(), 0) instanceof Entry.Words office) {
      page.add(
          new Prose(
              "It begins with the tables, prices and rules of “%s”.".formatted(office.text())),
          "growx, wmin 300");
    }
    page.add(units(system), "gaptop 6");
    page.add(site, "grow, pushx, gaptop 8, h 96lp:410lp:430lp");
    page.add(heading("First zones"), "gaptop 8");
    page.add(
        new Prose(
                "Slope as a ratio (4:1), in percent (25 %) or in degrees (14°). Where the rate of the"
                    + " emitters is known, type it over the one that follows from flow and area.")
            .coloured("Zonewright.muted"),
        "growx, wmin 300");
    page.add(zones, "grow, push, h 110lp:170lp");
    page.add(buttons(), "growx, gaptop 8");
    dialog.add(page);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> begin(),
            KeyStroke.getKeyStroke("ctrl ENTER"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    for (JTable table : List.of(site.table(), zones.table())) {
      table
          .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
          .put(KeyStroke.getKeyStroke("F6"), "none");
    }
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event ->
                Keyboard.next(
                    List.of(
                        Keyboard.part(site, site::table),
                        Keyboard.part(zones, zones::table),
                        Keyboard.part(begin, () -> begin))),
            KeyStroke.getKeyStroke("F6"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    DialogSize.set(dialog, 1120, 860);
    dialog.setLocationRelativeTo(owner);
  }

  private static JLabel heading(String words) {
    JLabel label = new JLabel(words);
    label.putClientProperty("FlatLaf.styleClass", "h4");
    return label;
  }

  private JComponent units(UnitSystem chosen) {
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 10"));
    ButtonGroup group = new ButtonGroup();
    for (UnitSystem system : UnitSystem.values()) {
      JRadioButton choice = new JRadioButton("In " + system.words(), system == chosen);
      choice.setName("start in " + system.words());
      choice.addActionListener(
          event -> {
            finishTyping();
            design.book().perform(design.edits().switched(system));
          });
      group.add(choice);
      panel.add(choice);
    }
    return panel;
  }

  private JComponent buttons() {
    begin.setName("begin design");
    begin.setMnemonic('B');
    begin.setToolTipText("Put this design on the desk (Ctrl+Enter)");
    begin.addActionListener(event -> begin());
    JButton not = new JButton("Not now");
    not.setName("begin nothing");
    not.setMnemonic('N');
    not.addActionListener(event -> putAway());
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8", "push[][]"));
    panel.add(not);
    panel.add(begin);
    return panel;
  }

  private void finishTyping() {
    GridView.finishTyping(site.table());
    GridView.finishTyping(zones.table());
  }

  private void begin() {
    finishTyping();
    putAway();
    PlaceTaken.named(design.book())
        .ifPresent(place -> design.book().start(PlaceTaken.edit(design.book(), place)));
    begun.accept(design);
  }

  private void putAway() {
    dialog.dispose();
    site.close();
    zones.close();
  }

  /**
   * Shows the form.
   *
   * @param first what the design begins with
   * @param begun is given the design when the person begins it; else nothing happens
   */
  static void open(Frame owner, Design first, Consumer<Design> begun) {
    new StartForm(owner, first, begun).dialog.setVisible(true);
  }
}
