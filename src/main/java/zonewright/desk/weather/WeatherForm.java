package zonewright.desk.weather;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.design.WeatherTaken;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Prose;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.weather.ColumnMatch;
import zonewright.weather.Equation;
import zonewright.weather.StationSite;
import zonewright.weather.WeatherChoices;
import zonewright.weather.WeatherElement;
import zonewright.weather.WeatherFile;
import zonewright.weather.YearsOfWeather;

/**
 * Shows what a weather file holds, what it is worth and what its months come to, before anything is
 * taken. What is said of the file here has it read once more.
 */
public final class WeatherForm {
  private static final String LEFT_OUT = "left out";
  private static final List<WeatherElement> ELEMENTS =
      Arrays.stream(WeatherElement.values())
          .filter(each -> each != WeatherElement.STATION)
          .toList();

  private static final List<Equation> EQUATIONS = List.of(Equation.values());

  private final UnitSystem system;
  private final WeatherFile file;
  private final WeatherChoices begun;
  private final Again again;
  private final BiConsumer<YearsOfWeather, Taking> taken;
  private final JDialog dialog;
  private final JPanel said =
      new JPanel(new MigLayout("insets 0, wrap 4, gapx 10", "[][grow][][grow]"));
  private final JCheckBox days = new JCheckBox("Write the days too …");
  private final JButton pictures = new JButton("Pictures …");
  private final BiConsumer<Window, YearsOfWeather> pictured;
  private final JTextField latitude = new JTextField(8);
  private final JTextField longitude = new JTextField(8);
  private final JTextField elevation = new JTextField(8);
  private final JTextField windHeight = new JTextField(8);
  private final JComboBox<String> equation =
      new JComboBox<>(Arrays.stream(Equation.values()).map(Equation::words).toArray(String[]::new));
  private final JCheckBox dry = new JCheckBox("Dry country");
  private final JCheckBox coast = new JCheckBox("Near a coast");
  private final Prose report = new Prose("");
  private final JTable months = new JTable();
  private final JComboBox<String> covered = new JComboBox<>();
  private final JButton take = new JButton("Take into the design");
  private Optional<YearsOfWeather> years = Optional.empty();
  private boolean settling;

  /** Has a file read once more. */
  interface Again {
    void read(WeatherForm form, WeatherFile file, WeatherChoices choices);
  }

  /**
   * Makes the form.
   *
   * @param begun what was said of the file so far
   * @param again has it read once more
   * @param pictured shows pictures of what was read
   * @param taken is given what the person takes, and for how many years
   */
  WeatherForm(
      Window owner,
      UnitSystem system,
      WeatherFile file,
      WeatherChoices begun,
      Again again,
      BiConsumer<YearsOfWeather, Taking> taken,
      BiConsumer<Window, YearsOfWeather> pictured) {
    this.pictured = pictured;
    this.system = system;
    this.file = file;
    this.begun = begun;
    this.again = again;
    this.taken = taken;
    dialog = new JDialog(owner, "Weather from a file", JDialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("weather form");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    // where the screen is low the months give way first: they scroll, and are read last
    String rows = file.match().isPresent() ? "[][][][][shrinkprio 200]" : "[][][][shrinkprio 200]";
    JPanel page = new JPanel(new MigLayout("insets 18 22 16 22, fill, wrap 1", "[grow]", rows));
    page.add(new Prose("Weather from a file").styled("h2"), "growx");
    fillSaid();
    page.add(said, "growx");
    file.match().ifPresent(match -> page.add(columns(match), "grow, h 130lp:220lp:220lp"));
    page.add(scrolled(report, "weather report"), "grow, push, hmin 150lp");
    months.setName("weather months");
    months.getAccessibleContext().setAccessibleName("What the months come to");
    page.add(scrolled(months, "weather months in a frame"), "growx, h 130lp:316lp:316lp");
    page.add(buttons(), "growx, gaptop 4");
    dialog.add(page);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    DialogSize.set(dialog, 980, 860);
    dialog.setLocationRelativeTo(owner);
  }

  private static JScrollPane scrolled(JComponent part, String name) {
    JScrollPane scroll = new JScrollPane(part);
    scroll.setName(name);
    scroll.getVerticalScrollBar().setUnitIncrement(18);
    if (part instanceof Prose) {
      scroll.setViewportBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
    }
    return scroll;
  }

  private void fillSaid() {
    StationSite site = file.site().with(begun.place());
    field("Latitude, ° (south negative)", "latitude", latitude, site.latitude());
    field("Longitude, ° (west negative)", "longitude", longitude, site.longitude());
    field("Height above the sea, m", "elevation", elevation, site.elevation());
    field("Wind measured at, m", "wind height", windHeight, site.windHeight());
    JLabel label = new JLabel("Equation");
    label.setLabelFor(equation);
    equation.setName("equation");
    equation.setSelectedIndex(EQUATIONS.indexOf(begun.equation()));
    equation.addActionListener(event -> reread());
    said.add(label);
    said.add(equation);
    dry.setName("dry");
    dry.setToolTipText("Where humidity is missing, dew falls 2 °C below the lowest temperature");
    dry.addActionListener(event -> reread());
    coast.setName("coast");
    coast.setToolTipText("How radiation follows from temperatures where it is missing");
    coast.addActionListener(event -> reread());
    said.add(dry);
    said.add(coast);
  }

  private void field(String words, String name, JTextField field, double value) {
    JLabel label = new JLabel(words);
    label.setLabelFor(field);
    field.setName(name);
    field.setText(Double.isNaN(value) ? "" : plain(value));
    field.addActionListener(event -> reread());
    said.add(label);
    said.add(field, "growx");
  }

  private static String plain(double value) {
    return value == Math.rint(value)
        ? String.valueOf((long) value)
        : String.format(Locale.ROOT, "%.4f", value).replaceAll("0+$", "");
  }

  private JComponent columns(ColumnMatch match) {
    JPanel panel =
        new JPanel(
            new MigLayout("insets 6 8 6 8, wrap 4, gapx 14", "[][220lp!][110lp!][grow]", ""));
    List<String> names = new ArrayList<>(List.of(LEFT_OUT));
    ELEMENTS.forEach(each -> names.add(each.words()));
    for (int position = 0; position < match.headings().size(); position++) {
      String heading = match.headings().get(position);
      JComboBox<String> element =
          new JComboBox<>(new DefaultComboBoxModel<>(names.toArray(String[]::new)));
      JComboBox<String> unit = new JComboBox<>();
      element.setName("holds " + heading);
      element.getAccessibleContext().setAccessibleName("“" + heading + "” holds");
      unit.setName("unit " + heading);
      unit.getAccessibleContext().setAccessibleName("Unit of “" + heading + "”");
      unit.setEditable(true);
      int at = position;
      element.setSelectedIndex(match.element(at).map(each -> ELEMENTS.indexOf(each) + 1).orElse(0));
      units(match, at, unit);
      element.addActionListener(
          event -> {
            int index = element.getSelectedIndex();
            if (index <= 0) {
              match.leave(at);
            } else {
              match.set(at, ELEMENTS.get(index - 1), match.unit(at));
            }
            units(match, at, unit);
            reread();
          });
      unit.addActionListener(
          event ->
              match
                  .element(at)
                  .filter(any -> !settling && unit.getSelectedItem() != null)
                  .filter(any -> !unit.getSelectedItem().toString().equals(match.unit(at)))
                  .ifPresent(
                      each -> {
                        match.set(at, each, unit.getSelectedItem().toString());
                        reread();
                      }));
      JLabel label = new JLabel(heading.isBlank() ? "(no heading)" : heading);
      label.setLabelFor(element);
      panel.add(label, "wmax 240lp");
      panel.add(element, "growx");
      panel.add(unit, "growx");
      JLabel values = new JLabel(String.join(" · ", match.samples(at)));
      values.putClientProperty("FlatLaf.style", "foreground: $Zonewright.muted");
      panel.add(values, "wmax 300lp");
    }
    return scrolled(panel, "weather columns");
  }

  private void units(ColumnMatch match, int position, JComboBox<String> unit) {
    settling = true;
    List<String> choices =
        match.element(position).map(WeatherElement::unitChoices).orElse(List.of());
    unit.setModel(new DefaultComboBoxModel<>(choices.toArray(String[]::new)));
    unit.setSelectedItem(match.unit(position));
    unit.setEnabled(!choices.isEmpty());
    settling = false;
  }

  private JComponent buttons() {
    JButton rereading = new JButton("Read again");
    rereading.setName("read again");
    rereading.setMnemonic('R');
    rereading.addActionListener(event -> reread());
    covered.setName("years covered");
    JLabel label = new JLabel("Enough in");
    label.setLabelFor(covered);
    take.setName("take weather");
    take.setMnemonic('T');
    take.setEnabled(false);
    take.addActionListener(event -> take());
    JButton not = new JButton("Not now");
    not.setName("take no weather");
    not.setMnemonic('N');
    not.addActionListener(event -> dialog.dispose());
    pictures.setName("weather pictures");
    pictures.setEnabled(false);
    pictures.addActionListener(event -> years.ifPresent(read -> pictured.accept(dialog, read)));
    days.setName("days too");
    days.setToolTipText(
        "Writes each day with its evapotranspiration into a file of its own; the design keeps the months");
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8", "[][]push[][][][][]"));
    panel.add(rereading);
    panel.add(pictures);
    panel.add(days);
    panel.add(label);
    panel.add(covered);
    panel.add(not);
    panel.add(take);
    dialog.getRootPane().setDefaultButton(take);
    return panel;
  }

  /** Says everything anew and has the file read. */
  private void reread() {
    if (settling) {
      return;
    }
    WeatherChoices choices;
    try {
      choices =
          new WeatherChoices(
              new StationSite(
                  "",
                  number(latitude, "The latitude", -90, 90),
                  number(longitude, "The longitude", -180, 180),
                  number(elevation, "The height above the sea", -430, 9000),
                  number(windHeight, "The height of the wind", 0.5, 200),
                  Double.NaN),
              EQUATIONS.get(equation.getSelectedIndex()),
              dry.isSelected(),
              coast.isSelected(),
              begun.dayFirst(),
              begun.storage());
    } catch (IllegalArgumentException wrong) {
      problem(wrong.getMessage());
      return;
    }
    enable(false);
    take.setEnabled(false);
    report.setText("Reading …");
    again.read(this, file, choices);
  }

  private static double number(JTextField field, String what, double least, double most) {
    String text = field.getText().strip().replace('−', '-').replace(',', '.');
    if (text.isEmpty()) {
      return Double.NaN;
    }
    double value = text.matches("-?\\d{1,6}(\\.\\d{0,9})?") ? Double.parseDouble(text) : Double.NaN;
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          "%s is a number from %s to %s, not “%s”."
              .formatted(what, plain(least), plain(most), field.getText()));
    }
    return value;
  }

  private void enable(boolean may) {
    enable(said, may);
  }

  private static void enable(Container container, boolean may) {
    for (Component part : container.getComponents()) {
      part.setEnabled(may);
    }
  }

  /** Says what has to be said first. */
  void problem(String sentence) {
    enable(true);
    years = Optional.empty();
    report.setText(sentence);
    report.setCaretPosition(0);
    months.setModel(new DefaultTableModel());
    take.setEnabled(false);
    pictures.setEnabled(false);
  }

  /** Shows what the file comes to. */
  void show(YearsOfWeather read) {
    enable(true);
    years = Optional.of(read);
    List<String> sentences = new ArrayList<>(read.record().report());
    read.season().ifPresent(words -> sentences.add(words + "."));
    report.setText(String.join("\n", sentences));
    report.setCaretPosition(0);
    covered.setModel(new DefaultComboBoxModel<>(WeatherTaken.choices(read).toArray(String[]::new)));
    covered.setSelectedItem(WeatherTaken.usualChoice(read));
    take.setEnabled(true);
    pictures.setEnabled(true);
    fillMonths(read);
  }

  private void fillMonths(YearsOfWeather read) {
    String unit = " (" + Climate.REFERENCE_ET.kind().unit(system).symbol() + ")";
    DefaultTableModel model =
        new DefaultTableModel(
            new Object[] {
              "Span",
              "Years",
              "Mean ET" + unit,
              "5 of 10",
              "8 of 10",
              "9 of 10",
              "Rain" + unit,
              "Rain counted"
            },
            0) {
          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    List<YearsOfWeather.Stretch> all = new ArrayList<>(read.months());
    all.addAll(read.spans());
    for (int row = 0; row < all.size(); row++) {
      YearsOfWeather.Stretch each = all.get(row);
      String name =
          row < Climate.MONTH_NAMES.size()
              ? Climate.MONTH_NAMES.get(row)
              : "Hottest %s days".formatted(each.days());
      List<String> cells = new ArrayList<>(List.of(name, String.valueOf(each.years())));
      cells.add(depth(each.mean()));
      each.notExceeded().forEach(value -> cells.add(depth(value)));
      cells.add(depth(each.rain()));
      cells.add(depth(each.effectiveRain()));
      model.addRow(cells.toArray());
    }
    months.setModel(model);
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(SwingConstants.TRAILING);
    for (int i = 1; i < model.getColumnCount(); i++) {
      months.getColumnModel().getColumn(i).setCellRenderer(right);
    }
  }

  private String depth(double millimetres) {
    if (Double.isNaN(millimetres)) {
      return "–";
    }
    double value = Units.MILLIMETRE.convert(millimetres, Rain.MONTH_RAIN.kind().unit(system));
    return QuantityText.shown(value, Rain.MONTH_RAIN.kind(), Rain.MONTH_RAIN.decimals(system));
  }

  private void take() {
    years.ifPresent(
        read -> {
          dialog.dispose();
          taken.accept(
              read, new Taking(String.valueOf(covered.getSelectedItem()), days.isSelected()));
        });
  }

  /**
   * How a record is taken.
   *
   * @param covered for how many years of ten the months shall be enough
   * @param days whether the days are to be written too
   */
  record Taking(String covered, boolean days) {}

  /** Shows the form until it is closed. */
  void open() {
    dialog.setVisible(true);
  }
}
