package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import zonewright.desk.part.Palette;
import zonewright.sheet.WordMatch;

/**
 * Completes words in a field from a list: all fitting words drop down beneath, and the rest of the
 * only one that fits appears selected behind what was typed. Of several one is taken only when it
 * is asked for, by Tab, an arrow or the mouse; what is a word of the list by itself stands.
 */
final class Completion {
  private static final int MOST_LINES = 10;

  private static final int CLEAR = 3;

  private final JTextField field;
  private final DefaultListModel<String> fitting = new DefaultListModel<>();
  private final JList<String> list = new JList<>(fitting);
  private final JPopupMenu popup = new JPopupMenu();
  private List<String> words = List.of();
  private boolean own;

  Completion(JTextField field, Runnable done) {
    this.field = field;
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setFocusable(false);
    list.setName("choices");
    list.getAccessibleContext().setAccessibleName("words to choose from");
    popup.setFocusable(false);
    popup.setLayout(new BorderLayout());
    popup.setBorder(BorderFactory.createLineBorder(Palette.current().strongLine()));
    JScrollPane pane = new JScrollPane(list);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setFocusable(false);
    pane.getVerticalScrollBar().setFocusable(false);
    popup.add(pane);
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseReleased(MouseEvent event) {
            take();
            done.run();
          }
        });
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent event) {
                changed(true);
              }

              @Override
              public void removeUpdate(DocumentEvent event) {
                changed(false);
              }

              @Override
              public void changedUpdate(DocumentEvent event) {}
            });
  }

  void updateUI() {
    SwingUtilities.updateComponentTreeUI(popup);
    popup.setBorder(BorderFactory.createLineBorder(Palette.current().strongLine()));
  }

  /** Offers words from now on; none where the field holds anything. */
  void offer(List<String> choices) {
    words = choices;
  }

  /** Offers nothing. */
  void rest() {
    popup.setVisible(false);
    words = List.of();
  }

  /** Drops down the whole list, at the word the field holds. */
  void openAll() {
    if (words.isEmpty()) {
      return;
    }
    fitting.clear();
    words.forEach(fitting::addElement);
    list.setSelectedValue(field.getText(), true);
    show();
  }

  /** Returns what the field comes to: the word in the list's own spelling, or else as typed. */
  String result() {
    String text = field.getText();
    Optional<String> meant = WordMatch.in(words, text);
    List<String> fitting = meant.isEmpty() && clear(text) ? fitting(words, text) : List.of();
    return meant.orElse(fitting.size() == 1 ? fitting.get(0) : text);
  }

  /** Says whether enough was typed for the only word that holds it to be meant. */
  private static boolean clear(String text) {
    return text.strip().length() >= CLEAR;
  }

  /**
   * Returns the words that fit what was typed: first the one it is, then those a part of which
   * begins with it, last those that hold it; each kind in the order of the list.
   */
  static List<String> fitting(List<String> words, String typed) {
    Set<String> fitting = new LinkedHashSet<>();
    WordMatch.in(words, typed).ifPresent(fitting::add);
    words.stream().filter(word -> WordMatch.beginsAPart(word, typed)).forEach(fitting::add);
    words.stream().filter(word -> WordMatch.fits(word, typed)).forEach(fitting::add);
    return List.copyOf(fitting);
  }

  private void changed(boolean grown) {
    if (own || words.isEmpty() || !field.isShowing()) {
      return;
    }
    SwingUtilities.invokeLater(() -> follow(grown));
  }

  private void follow(boolean grown) {
    if (words.isEmpty() || !field.isShowing()) {
      return;
    }
    int caret = Math.min(field.getCaretPosition(), field.getText().length());
    String typed = field.getText().substring(0, caret);
    List<String> found = fitting(words, typed);
    fitting.clear();
    found.forEach(fitting::addElement);
    boolean only =
        found.size() == 1
            && !typed.isBlank()
            && found.get(0).toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT));
    if (grown && only && caret == field.getText().length()) {
      own = true;
      String rest = found.get(0).substring(typed.length());
      field.setText(typed + rest);
      field.setCaretPosition(typed.length() + rest.length());
      field.moveCaretPosition(typed.length());
      own = false;
    }
    if (WordMatch.in(found, field.getText()).isPresent()) {
      list.setSelectedIndex(0);
    } else {
      list.clearSelection();
    }
    if (found.isEmpty()) {
      popup.setVisible(false);
    } else {
      show();
    }
  }

  private void show() {
    Palette palette = Palette.current();
    list.setSelectionBackground(palette.selected(palette.paper()));
    list.setSelectionForeground(palette.ink());
    list.setFont(field.getFont());
    list.setFixedCellHeight(field.getFontMetrics(field.getFont()).getHeight() + UIScale.scale(6));
    list.setVisibleRowCount(Math.min(MOST_LINES, fitting.size()));
    int height = list.getFixedCellHeight() * list.getVisibleRowCount();
    int width = Math.max(field.getWidth(), list.getPreferredSize().width + UIScale.scale(24));
    popup.setPopupSize(new Dimension(width, height + UIScale.scale(4)));
    if (!popup.isVisible()) {
      popup.show(field, 0, field.getHeight());
    }
    list.ensureIndexIsVisible(Math.max(0, list.getSelectedIndex()));
  }

  /** Takes the first of the words that fit, unless what was typed is one. */
  private void takeFirst() {
    boolean typed = !field.getText().isBlank();
    if (typed && WordMatch.in(words, field.getText()).isEmpty() && !fitting.isEmpty()) {
      list.setSelectedIndex(Math.max(0, list.getSelectedIndex()));
      take();
    }
  }

  private void take() {
    String word = list.getSelectedValue();
    if (word != null) {
      own = true;
      field.setText(word);
      own = false;
    }
  }

  /** Does what a key means to the list; returns whether it meant something. */
  boolean pressed(KeyEvent event) {
    int key = event.getKeyCode();
    if (key == KeyEvent.VK_DOWN && event.isAltDown()) {
      openAll();
      return !words.isEmpty();
    }
    if (!popup.isVisible()) {
      return false;
    }
    if (key == KeyEvent.VK_TAB && !event.isShiftDown()) {
      takeFirst();
      return false;
    }
    int step =
        switch (key) {
          case KeyEvent.VK_DOWN -> 1;
          case KeyEvent.VK_UP -> -1;
          case KeyEvent.VK_PAGE_DOWN -> MOST_LINES;
          case KeyEvent.VK_PAGE_UP -> -MOST_LINES;
          default -> 0;
        };
    if (step == 0) {
      return false;
    }
    int to = Math.max(0, Math.min(fitting.size() - 1, list.getSelectedIndex() + step));
    list.setSelectedIndex(to);
    list.ensureIndexIsVisible(to);
    take();
    field.selectAll();
    return true;
  }
}
