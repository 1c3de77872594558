package zonewright.desk.weather;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import zonewright.climate.PlaceFinder;
import zonewright.design.PlaceTaken;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.TextListener;

/** Chooses the climate place by words of its name or region, or by what is nearest to the site. */
public final class PlaceForm {
  private final OpenDesign open;
  private final JDialog dialog;
  private final JTextField words = new JTextField(16);
  private final JTextField latitude = new JTextField(7);
  private final JTextField longitude = new JTextField(7);
  private final DefaultListModel<PlaceFinder.Found> lines = new DefaultListModel<>();
  private final JList<PlaceFinder.Found> list = new JList<>(lines);
  private final Prose origin = new Prose(" ");
  private final JButton take = new JButton("Take this place");
  private final Consumer<String> taken;

  /** Prepares; {@code taken} is told the name of the place once it is in the design. */
  PlaceForm(Window owner, OpenDesign open, Consumer<String> taken) {
    this.open = open;
    this.taken = taken;
    dialog = new JDialog(owner, "Find a climate place", JDialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("place form");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    JPanel page =
        new JPanel(
            new MigLayout("insets 14, fill, wrap 6", "[][grow][][][][]", "[][grow,push][]10[]"));
    field(page, "Name, state or country", words, "growx");
    field(page, "Latitude, °", latitude, "");
    field(page, "Longitude, °", longitude, "");
    words.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "any");
    latitude.setToolTipText("North positive, south negative");
    longitude.setToolTipText("East positive, west negative");
    list.setName("places");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.getAccessibleContext().setAccessibleName("Places found");
    list.setCellRenderer(new Line());
    list.addListSelectionListener(event -> selected());
    page.add(new JScrollPane(list), "grow, span 6");
    page.add(origin, "growx, wmin 100, span 6");
    page.add(buttons(), "growx, span 6");
    dialog.add(page);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            javax.swing.JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.getRootPane().setDefaultButton(take);
    look();
    DialogSize.set(dialog, 720, 520);
    dialog.setLocationRelativeTo(owner);
  }

  private void field(JPanel page, String name, JTextField field, String layout) {
    JLabel label = new JLabel(name);
    label.setLabelFor(field);
    field.setName("place " + name);
    field.getAccessibleContext().setAccessibleName(name);
    page.add(label);
    page.add(field, layout);
    field.getDocument().addDocumentListener(new TextListener(this::look));
  }

  private JPanel buttons() {
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8", "push[][]"));
    JButton not = new JButton("Not now");
    not.addActionListener(event -> dialog.dispose());
    take.setName("take place");
    take.addActionListener(event -> take());
    panel.add(not);
    panel.add(take);
    return panel;
  }

  private static OptionalDouble degrees(JTextField field, double most) {
    try {
      double value = Double.parseDouble(field.getText().strip().replace('−', '-'));
      return Math.abs(value) <= most ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (NumberFormatException noNumber) {
      return OptionalDouble.empty();
    }
  }

  private void look() {
    List<PlaceFinder.Found> named = PlaceFinder.named(words.getText());
    OptionalDouble north = degrees(latitude, 90);
    OptionalDouble east = degrees(longitude, 180);
    boolean point = north.isPresent() && east.isPresent();
    List<PlaceFinder.Found> found =
        point
            ? PlaceFinder.nearest(north.getAsDouble(), east.getAsDouble()).stream()
                .filter(each -> named.stream().anyMatch(one -> one.place().equals(each.place())))
                .toList()
            : named;
    lines.clear();
    found.forEach(lines::addElement);
    list.setSelectedIndex(found.isEmpty() ? -1 : 0);
    if (found.isEmpty()) {
      origin.setText("No place is called so. Measured weather of any place can be read instead.");
    }
    take.setEnabled(!found.isEmpty());
  }

  private void selected() {
    Optional.ofNullable(list.getSelectedValue())
        .ifPresent(
            found ->
                origin.setText(
                    (found.weather().isPresent() ? "Reference ET is " : "Published: ")
                        + found.origin()));
  }

  private void take() {
    PlaceFinder.Found found = list.getSelectedValue();
    if (found != null) {
      dialog.dispose();
      open.book().perform(PlaceTaken.edit(open.book(), found));
      taken.accept(found.place());
    }
  }

  /** Shows the form. */
  void open() {
    dialog.setVisible(true);
  }

  /** A place, where it lies, and how far that is. */
  private static final class Line extends javax.swing.DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public java.awt.Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      PlaceFinder.Found found = (PlaceFinder.Found) value;
      String far = found.distance().isEmpty() ? "" : "  ·  " + found.distance();
      return super.getListCellRendererComponent(
          list,
          found.place() + "  ·  " + found.region() + far + "  ·  " + found.kind(),
          index,
          selected,
          focused);
    }
  }
}
