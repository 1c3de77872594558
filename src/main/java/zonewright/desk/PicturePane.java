package zonewright.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.UserPreferences;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.Picture;
import zonewright.desk.picture.PictureView;
import zonewright.desk.picture.Pictures;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;

/** Shows one of the pictures that fit the sheet at the front; its title lets one choose another. */
final class PicturePane extends JPanel {
  private final PictureView view = new PictureView();
  private final JButton title = new JButton(" ");
  private final JButton export = new JButton("Export", Pictogram.EXPORT);
  private final UserPreferences memory;

  /** The row selected last in each sheet. */
  private final Map<String, Integer> rows = new HashMap<>();

  private Design design;
  private String sheet = "";

  /**
   * Makes the pane.
   *
   * @param exported is given a drawing and its view to export
   */
  PicturePane(UserPreferences memory, BiConsumer<Drawing, PictureView> exported) {
    super(new BorderLayout());
    this.memory = memory;
    setName("pictures");
    title.setName("choose picture");
    title.setHorizontalAlignment(SwingConstants.LEADING);
    title.setHorizontalTextPosition(SwingConstants.LEADING);
    title.setToolTipText("Choose another picture");
    tool(title);
    title.addActionListener(
        event -> {
          if (title.isFocusable()) {
            menu().show(title, 0, title.getHeight());
          }
        });
    export.setName("export picture");
    export.setToolTipText("Export this picture as PNG or SVG");
    tool(export);
    export.setEnabled(false);
    export.addActionListener(event -> exported.accept(view.drawing(), view));
    JPanel head = new JPanel(new MigLayout("insets 3 8 0 8, gap 4", "[grow,left][]"));
    head.setOpaque(false);
    head.add(title, "wmin 0");
    head.add(export);
    add(head, BorderLayout.PAGE_START);
    add(view, BorderLayout.CENTER);
  }

  private static void tool(JComponent button) {
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
  }

  /** Forgets which rows were selected, for another design. */
  void startAnew() {
    rows.clear();
  }

  /** Notes where a person is. */
  void at(Place place) {
    rows.put(place.column().table(), place.row());
  }

  /** Returns the name of the zone a person was at last, or of the first. */
  Optional<String> zone() {
    Entry name =
        design.book().rows(Sheets.ZONES) == 0
            ? Entry.BLANK
            : design.book().entry(Facts.ZONE_NAME.reference(), rowIn(Sheets.ZONES));
    return name instanceof Entry.Words words ? Optional.of(words.text()) : Optional.empty();
  }

  private int rowIn(String table) {
    return Math.min(rows.getOrDefault(table, 0), design.book().rows(table) - 1);
  }

  /** Shows the picture chosen for a sheet, of a design as it is now. */
  void show(Design of, String frontSheet) {
    design = of;
    sheet = frontSheet;
    List<Picture> fitting = Pictures.beside(sheet);
    export.setEnabled(!fitting.isEmpty());
    if (fitting.isEmpty()) {
      put(Drawing.saying("No picture", "There is no picture of this sheet."), false);
    } else {
      put(drawing(chosen(fitting)), fitting.size() > 1);
    }
  }

  private void put(Drawing drawing, boolean others) {
    Appearance.title(title);
    title.setText(drawing.title());
    title.setIcon(others ? Pictogram.DOWN : null);
    title.setFocusable(others);
    title.getAccessibleContext().setAccessibleDescription(drawing.inWords());
    view.show(drawing);
  }

  private Picture chosen(List<Picture> fitting) {
    String id = memory.word("picture-" + sheet, "");
    return fitting.stream()
        .filter(picture -> picture.id().equals(id))
        .findFirst()
        .orElse(fitting.get(0));
  }

  private Drawing drawing(Picture picture) {
    if (!picture.subject().ofRow()) {
      return picture.of(design, 0);
    }
    String table = picture.subject().sheet();
    int count = design.book().rows(table);
    if (count == 0) {
      String word = design.book().schema().table(table).rowWord();
      return Drawing.saying(picture.name(), "There is no " + word + " yet.");
    }
    return picture.of(design, rowIn(table));
  }

  private JPopupMenu menu() {
    JPopupMenu menu = new JPopupMenu("Pictures");
    ButtonGroup group = new ButtonGroup();
    List<Picture> fitting = Pictures.beside(sheet);
    for (Picture picture : fitting) {
      JRadioButtonMenuItem item = new JRadioButtonMenuItem(picture.name());
      item.setSelected(picture == chosen(fitting));
      item.addActionListener(event -> choose(picture));
      group.add(item);
      menu.add(item);
    }
    return menu;
  }

  private void choose(Picture picture) {
    memory.keep("picture-" + sheet, picture.id());
    show(design, sheet);
  }

  /** Shows the next of the pictures that fit. */
  void next() {
    List<Picture> fitting = Pictures.beside(sheet);
    if (!fitting.isEmpty()) {
      choose(fitting.get((fitting.indexOf(chosen(fitting)) + 1) % fitting.size()));
    }
  }

  /** Exports what is shown. */
  void export() {
    export.doClick();
  }

  /** Returns what takes the keyboard here. */
  Component focusTarget() {
    return title.isFocusable() ? title : export;
  }

  /** Returns the drawing shown. */
  Drawing drawing() {
    return view.drawing();
  }
}
