package zonewright.desk.part;

import java.awt.Window;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;

/** A page to read in a window of its own. */
public final class TextPage {
  private TextPage() {}

  /** Shows a page. */
  public static void open(Window owner, String title, String text, int height) {
    JDialog dialog = new JDialog(owner, title);
    dialog.setName(title);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    StackPanel page = new StackPanel();
    page.setBorder(BorderFactory.createEmptyBorder(16, 24, 24, 24));
    page.setFocusable(true);
    page.getAccessibleContext().setAccessibleName(title);
    page.getAccessibleContext().setAccessibleDescription(text);
    page.stack(new Prose(title).styled("h2"), 0);
    for (String paragraph : text.split("\n\n", -1)) {
      page.stack(new Prose(paragraph.strip()), 10);
    }
    JScrollPane scroll = new JScrollPane(page);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    dialog.add(scroll);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    DialogSize.set(dialog, 560, height);
    dialog.setLocationRelativeTo(owner);
    dialog.setVisible(true);
  }
}
