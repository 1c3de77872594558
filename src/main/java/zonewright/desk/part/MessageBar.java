package zonewright.desk.part;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Desktop;
import java.awt.Toolkit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** A bar for what must be said: one sentence, more where there is more, no dialog. */
public final class MessageBar extends JPanel {
  private final JButton more = new JButton();
  private boolean problem;
  private transient Runnable shown = () -> {};

  /** Made with the rest when there is something to say for the first time: a start has nothing. */
  private Prose sentence;

  private Prose details;
  private JPanel offers;

  public MessageBar() {
    super(new BorderLayout());
    setName("message bar");
    setVisible(false);
    frame();
  }

  private void frame() {
    Color line = UIManager.getColor("Component.borderColor");
    setBorder(BorderFactory.createLineBorder(line == null ? Color.GRAY : line));
  }

  private void build() {
    sentence = new Prose("");
    details = new Prose("");
    offers = new JPanel(new MigLayout("insets 0, gap 6"));
    sentence.setName("message");
    details.setName("message details");
    JButton close = new JButton(Pictogram.CLOSE);
    close.setName("close message");
    close.setToolTipText("Close this message");
    close.getAccessibleContext().setAccessibleName("Close this message");
    close.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    close.addActionListener(event -> clear());
    more.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    more.setText("More");
    more.addActionListener(event -> showDetails(!details.isVisible()));
    StackPanel text = new StackPanel();
    text.setBorder(BorderFactory.createEmptyBorder(8, 12, 8, 8));
    text.stack(sentence, 0);
    text.stack(details, 4);
    JPanel buttons = new JPanel(new MigLayout("insets 3 0 3 6, gap 2"));
    buttons.setOpaque(false);
    offers.setOpaque(false);
    buttons.add(offers, "hidemode 3");
    buttons.add(more, "hidemode 3");
    buttons.add(close);
    add(text, BorderLayout.CENTER);
    add(buttons, BorderLayout.LINE_END);
  }

  /** Sets what is done when a message came or takes another height. */
  public void onShown(Runnable does) {
    shown = does;
  }

  /** Says that a file was written, in which folder it is, and offers to open that. */
  public void wrote(String words, Path file, List<String> further) {
    Path folder = file.toAbsolutePath().getParent();
    boolean opens =
        Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    Offer open = new Offer("Open the folder", () -> open(folder));
    show(
        "%s It is in %s.".formatted(words, folder),
        further,
        false,
        opens ? List.of(open) : List.of());
  }

  /** Opens a folder; the desktop may take its time for that. */
  private static void open(Path folder) {
    Thread opening =
        new Thread(
            () -> {
              try {
                Desktop.getDesktop().open(folder.toFile());
              } catch (IOException | RuntimeException notThere) {
                Toolkit.getDefaultToolkit().beep();
              }
            },
            "open folder");
    opening.setDaemon(true);
    opening.start();
  }

  /** Something a person may do about a message. */
  public record Offer(String label, Runnable does) {}

  /** Says that something was done or is worth knowing. */
  public void tell(String words, List<String> further) {
    show(words, further, false, List.of());
  }

  /** Says that something went wrong. */
  public void problem(String words, List<String> further) {
    show(words, further, true, List.of());
  }

  /** Says something and offers what may be done about it; either way the message goes. */
  public void offer(String words, boolean wrong, Offer... offers) {
    show(words, List.of(), wrong, List.of(offers));
  }

  private void show(String words, List<String> further, boolean wrong, List<Offer> offered) {
    problem = wrong;
    if (sentence == null) {
      build();
    }
    offers.removeAll();
    for (Offer offer : offered) {
      JButton button = new JButton(offer.label());
      button.setName("offer " + offer.label());
      button.addActionListener(
          event -> {
            clear();
            offer.does().run();
          });
      offers.add(button);
    }
    offers.setVisible(!offered.isEmpty());
    sentence.setText(words);
    details.setText(String.join("\n", further));
    more.setVisible(!further.isEmpty());
    showDetails(false);
    colour();
    setVisible(true);
    getAccessibleContext().setAccessibleName(words);
    revalidate();
    shown.run();
  }

  private void showDetails(boolean open) {
    details.setVisible(open);
    more.setText(open ? "Less" : "More");
    revalidate();
    shown.run();
  }

  /** Takes the message away. */
  public void clear() {
    setVisible(false);
    if (sentence != null) {
      sentence.setText("");
      details.setText("");
    }
  }

  /** Returns the sentence that stands in the bar; empty where none does. */
  public String sentence() {
    return sentence == null ? "" : sentence.getText();
  }

  private void colour() {
    setBackground(
        UIManager.getColor(
            problem ? "Zonewright.problemBackground" : "Zonewright.messageBackground"));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (sentence != null) {
      frame();
      colour();
      shown.run();
    }
  }
}
