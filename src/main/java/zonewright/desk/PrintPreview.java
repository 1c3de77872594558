package zonewright.desk;

import java.awt.Color;
import java.awt.Frame;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.PrinterException;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.grid.Palette;
import zonewright.desk.grid.SheetPages;
import zonewright.desk.part.DialogSize;

/** Shows the pages of a sheet before they are printed. */
final class PrintPreview {
  private final SheetPages pages;
  private final JDialog dialog;
  private final JLabel number = new JLabel();
  private final JButton back = new JButton("Page before");
  private final JButton on = new JButton("Next page");
  private final Sheet sheet = new Sheet();
  private int page;

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

  private PrintPreview(Frame owner, SheetPages pages, String title, Runnable print) {
    this.pages = pages;
    dialog = new JDialog(owner, "Print " + title);
    dialog.setName("print preview");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    back.addActionListener(event -> show(page - 1));
    on.addActionListener(event -> show(page + 1));
    JButton printing = new JButton("Print …");
    printing.setName("print now");
    printing.setMnemonic('P');
    printing.addActionListener(
        event -> {
          dialog.dispose();
          print.run();
        });
    JPanel foot = new JPanel(new MigLayout("insets 8 14 12 14, gap 8", "[][]16[grow][]"));
    foot.add(back);
    foot.add(on);
    foot.add(number);
    foot.add(printing);
    sheet.getAccessibleContext().setAccessibleName("Page of " + title);
    dialog.setLayout(new MigLayout("insets 0, fill, wrap 1", "[grow,fill]", "[grow,fill][]"));
    dialog.add(sheet);
    dialog.add(foot);
    key("ESCAPE", dialog::dispose);
    key("PAGE_DOWN", () -> show(page + 1));
    key("PAGE_UP", () -> show(page - 1));
    dialog.getRootPane().setDefaultButton(printing);
    DialogSize.set(dialog, 940, 740);
    dialog.setLocationRelativeTo(owner);
    show(0);
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

  /** Shows the pages; {@code print} is run where the person wants them printed. */
  static void open(Frame owner, SheetPages pages, String title, Runnable print) {
    new PrintPreview(owner, pages, title, print).dialog.setVisible(true);
  }

  /** The sentence for a person where printing went wrong. */
  static String problem(Exception problem) {
    return problem instanceof PrinterException && problem.getMessage() != null
        ? "The sheet was not printed: " + problem.getMessage() + "."
        : "The sheet was not printed: there is no printer, or it does not answer.";
  }
}
