package zonewright.desk.handover;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Frame;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.PrinterException;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.grid.PageScale;
import zonewright.desk.grid.PrintedGrid;
import zonewright.desk.grid.SheetPages;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Palette;

/** Shows the pages of a sheet before they are printed. */
public final class PrintPreview {
  private final Function<Choice, SheetPages> layOut;
  private final PrintedGrid table;
  private final Set<Integer> columns = new TreeSet<>();
  private final JComboBox<String> ways = new JComboBox<>(new String[] {"across", "upright"});
  private final JComboBox<PageScale> scales = new JComboBox<>(PageScale.values());
  private final JScrollPane list = new JScrollPane();
  private SheetPages pages;
  private final JDialog dialog;
  private final JLabel number = new JLabel();
  private final JButton back = new JButton("Page before");
  private final JButton on = new JButton("Next page");
  private final Sheet sheet = new Sheet();
  private int page;

  /**
   * How a sheet goes on paper.
   *
   * @param across whether the longer edge of the paper lies at the top
   */
  record Choice(PrintedGrid table, boolean across, PageScale scale) {}

  /** What is done with the pages. */
  record Uses(Consumer<SheetPages> print, Consumer<SheetPages> save) {}

  /** A page of paper, as large as there is room. */
  private final class Sheet extends JPanel {
    @Override
    protected void paintComponent(Graphics graphics) {
      super.paintComponent(graphics);
      Graphics2D pen = (Graphics2D) graphics.create();
      PageFormat format = pages.getPageFormat(page);
      double scale =
          Math.min(getWidth() / format.getWidth(), getHeight() / format.getHeight()) * 0.97;
      pen.translate(
          (getWidth() - format.getWidth() * scale) / 2,
          (getHeight() - format.getHeight() * scale) / 2);
      pen.scale(scale, scale);
      pen.setColor(Color.WHITE);
      pen.fillRect(0, 0, (int) format.getWidth(), (int) format.getHeight());
      pen.setColor(Palette.current().strongLine());
      pen.drawRect(0, 0, (int) format.getWidth(), (int) format.getHeight());
      pages.print(pen, format, page);
      pen.dispose();
    }
  }

  private PrintPreview(
      Frame owner, PrintedGrid table, Function<Choice, SheetPages> layOut, Uses uses) {
    this.layOut = layOut;
    this.table = table;
    for (int at = 0; at < table.headings().size(); at++) {
      columns.add(at);
    }
    dialog = new JDialog(owner, "Print " + table.title());
    dialog.setName("print preview");
    number.setName("page number");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    sheet.getAccessibleContext().setAccessibleName("Page of " + table.title());
    dialog.add(choices(), BorderLayout.PAGE_START);
    dialog.add(list, BorderLayout.LINE_START);
    dialog.add(sheet, BorderLayout.CENTER);
    dialog.add(foot(uses), BorderLayout.PAGE_END);
    list.setViewportView(ticks());
    list.setVisible(false);
    key("ESCAPE", dialog::dispose);
    key("PAGE_DOWN", () -> show(page + 1));
    key("PAGE_UP", () -> show(page - 1));
    DialogSize.set(dialog, 980, 780);
    dialog.setLocationRelativeTo(owner);
    layOut();
  }

  private JPanel choices() {
    ways.setName("paper lies");
    ways.getAccessibleContext().setAccessibleName("How the paper lies");
    scales.setName("paper scale");
    scales.getAccessibleContext().setAccessibleName("Size on paper");
    ways.addActionListener(event -> layOut());
    scales.addActionListener(event -> layOut());
    JToggleButton some = new JToggleButton("Columns …");
    some.setName("paper columns");
    some.addActionListener(
        event -> {
          list.setVisible(some.isSelected());
          dialog.validate();
        });
    JPanel panel = new JPanel(new MigLayout("insets 10 14 6 14, gap 8"));
    panel.add(new JLabel("Paper"));
    panel.add(ways);
    panel.add(new JLabel("Size"), "gapleft 12");
    panel.add(scales);
    panel.add(some, "gapleft 12");
    return panel;
  }

  /** Returns a tick for each column; those that stand on every page cannot be left out. */
  private JPanel ticks() {
    JPanel panel = new JPanel(new MigLayout("insets 8 14 8 8, gap 2, wrap 1"));
    for (int at = 0; at < table.headings().size(); at++) {
      int column = at;
      JCheckBox tick = new JCheckBox(table.headings().get(at).name(), true);
      tick.setName("print column " + table.headings().get(at).name());
      tick.setEnabled(at >= table.repeated());
      tick.addActionListener(
          event -> {
            if (tick.isSelected()) {
              columns.add(column);
            } else {
              columns.remove(column);
            }
            layOut();
          });
      panel.add(tick);
    }
    return panel;
  }

  private JPanel foot(Uses uses) {
    back.addActionListener(event -> show(page - 1));
    on.addActionListener(event -> show(page + 1));
    JButton saving = button("save pages", "Save as PDF …", () -> uses.save().accept(pages));
    JButton printing = button("print now", "Print …", () -> uses.print().accept(pages));
    printing.setMnemonic('P');
    JPanel foot = new JPanel(new MigLayout("insets 8 14 12 14, gap 8", "[][]16[grow][][]"));
    foot.add(back);
    foot.add(on);
    foot.add(number);
    foot.add(saving);
    foot.add(printing);
    dialog.getRootPane().setDefaultButton(printing);
    return foot;
  }

  private JButton button(String name, String label, Runnable does) {
    JButton button = new JButton(label);
    button.setName(name);
    button.addActionListener(
        event -> {
          dialog.dispose();
          does.run();
        });
    return button;
  }

  private void layOut() {
    PageScale scale = (PageScale) scales.getSelectedItem();
    pages = layOut.apply(new Choice(table.only(columns), ways.getSelectedIndex() == 0, scale));
    show(page);
  }

  private void key(String stroke, Runnable does) {
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> does.run(), KeyStroke.getKeyStroke(stroke), JComponent.WHEN_IN_FOCUSED_WINDOW);
  }

  private void show(int wanted) {
    int count = pages.getNumberOfPages();
    page = Math.max(0, Math.min(count - 1, wanted));
    number.setText("Page %s of %s".formatted(page + 1, count));
    back.setEnabled(page > 0);
    on.setEnabled(page + 1 < count);
    sheet.repaint();
  }

  /**
   * Shows a sheet as it would stand on pages.
   *
   * @param layOut lays it out as a person wants it
   * @param uses what the pages are then used for, where the person wants that
   */
  static void open(Frame owner, PrintedGrid table, Function<Choice, SheetPages> layOut, Uses uses) {
    new PrintPreview(owner, table, layOut, uses).dialog.setVisible(true);
  }

  /** The sentence for a person where printing went wrong. */
  public static String problem(Exception problem) {
    return problem instanceof PrinterException && problem.getMessage() != null
        ? "The sheet was not printed: " + problem.getMessage() + "."
        : "The sheet was not printed: there is no printer, or it does not answer.";
  }
}
