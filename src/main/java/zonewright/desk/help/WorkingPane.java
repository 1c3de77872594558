package zonewright.desk.help;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.InputLink;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SeverityMark;
import zonewright.desk.part.StackPanel;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.sheet.Working;

/** How the selected cell comes about: result, meaning, formula with numbers, inputs to go to. */
public final class WorkingPane extends JPanel {
  private final Consumer<Place> follow;
  private final Consumer<Place> backToDefault;
  private final StackPanel page = new StackPanel();
  private final JScrollPane scroll = new JScrollPane(page);
  private final JLabel title = new JLabel("Working", SwingConstants.LEADING);
  private final JButton back = new JButton("Back", Pictogram.BACK);
  private final JButton copy = new JButton("Copy", Pictogram.COPY);
  private Optional<Working> working = Optional.empty();
  private Optional<Place> shown = Optional.empty();
  private String span = "";

  /**
   * Makes the pane.
   *
   * @param follow goes to a cell
   * @param backToDefault empties a cell so that its default comes back
   * @param goBack goes back to where the last link led away from
   */
  public WorkingPane(Consumer<Place> follow, Consumer<Place> backToDefault, Runnable goBack) {
    super(new BorderLayout());
    this.follow = follow;
    this.backToDefault = backToDefault;
    setName("working");
    page.setName("working page");
    page.setBorder(BorderFactory.createEmptyBorder(4, 14, 14, 14));
    page.setFocusable(true);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.getViewport().setOpaque(false);
    scroll.setOpaque(false);
    toolButton(back, "Back to the cell you came from (Alt+Left)");
    toolButton(copy, "Copy this working as text");
    back.addActionListener(event -> goBack.run());
    copy.addActionListener(event -> copy());
    JPanel head = new JPanel(new MigLayout("insets 4 14 4 8, gap 2, fillx", "[grow][][]"));
    head.setOpaque(false);
    head.add(title);
    head.add(back);
    head.add(copy);
    add(head, BorderLayout.PAGE_START);
    add(scroll, BorderLayout.CENTER);
    setMayGoBack(false);
    copy.setEnabled(false);
  }

  private static void toolButton(JButton button, String tip) {
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.setToolTipText(tip);
    button.setName(button.getText());
  }

  /** Says whether there is a cell to go back to. */
  public void setMayGoBack(boolean may) {
    back.setEnabled(may);
  }

  /** Shows nothing but what would stand here. */
  public void nothing() {
    working = Optional.empty();
    shown = Optional.empty();
    page.removeAll();
    page.stack(
        new Prose("Select a cell to see how it comes about.").coloured("Zonewright.muted"), 8);
    copy.setEnabled(false);
    page.getAccessibleContext().setAccessibleName("Working: no cell selected");
    refresh(true);
  }

  /**
   * Shows how a cell of a book comes about.
   *
   * @param itsSpan what it lies between, as a sentence; blank where that is not known
   */
  public void show(Book book, Place place, String itsSpan) {
    boolean same = shown.equals(Optional.of(place));
    Working found = book.working(place.column(), place.row());
    working = Optional.of(found);
    shown = Optional.of(place);
    span = itsSpan;
    page.removeAll();
    heading(found, place);
    part("Your note", book.remark(place.column(), place.row()).note());
    part("What it means", found.column().help());
    if (!found.symbols().isEmpty()) {
      label(found.cases().isEmpty() ? "How" : "How: the first case that holds");
      int gap = 4;
      for (Working.Case each : found.cases()) {
        page.stack(new CaseRow(each), gap);
        gap = 0;
      }
      List<String> lines = found.equations();
      for (String line : lines.subList(0, lines.size() - 1)) {
        boolean first = line.equals(found.taken());
        if (first && !found.cases().isEmpty()) {
          continue;
        }
        Prose prose = new Prose("= " + line);
        page.stack(first ? prose : prose.coloured("Zonewright.muted"), first ? 3 : 6);
      }
      page.stack(result("= " + found.shown(), "h4", found.outcome()), 6);
    }
    part("How sure", span);
    if (!found.notes().isEmpty()) {
      label("Decided by");
      found.notes().forEach(note -> page.stack(new Prose(note), 3));
    }
    inputs(book, found.inputs());
    rests(found.rests());
    part("Source", String.join("\n", found.sources()));
    copy.setEnabled(true);
    page.getAccessibleContext().setAccessibleName("Working of " + found.cell().inWords());
    page.getAccessibleContext().setAccessibleDescription(text(found));
    refresh(!same);
  }

  private void heading(Working found, Place place) {
    Column column = found.column();
    if (!found.cell().row().isEmpty()) {
      page.stack(new Prose(Prose.capital(found.cell().row())).coloured("Zonewright.muted"), 4);
    }
    page.stack(new Prose(column.name()).styled("h3"), 0);
    boolean number =
        found.outcome() instanceof Outcome.Amount || found.outcome() instanceof Outcome.Words;
    page.stack(result(found.shown(), number ? "h0" : "large", found.outcome()), 4);
    JPanel origin = new JPanel(new MigLayout("insets 0, gap 8", "[grow][]"));
    origin.setOpaque(false);
    JLabel how = new JLabel(Prose.capital(found.origin()));
    how.setName("origin");
    origin.add(how, "height pref!");
    boolean overridden = found.origin().equals("typed over the default");
    if (overridden) {
      JButton clear = new JButton("Back to default");
      clear.setName("back to default");
      clear.addActionListener(event -> backToDefault.accept(place));
      origin.add(clear);
    }
    page.stack(origin, 4);
  }

  private static Prose result(String text, String style, Outcome outcome) {
    Prose prose = new Prose(text).styled(style);
    prose.setName("result");
    if (outcome instanceof Outcome.Refused) {
      prose.setForeground(SeverityMark.colour(Severity.WRONG));
    } else if (outcome instanceof Outcome.Missing) {
      prose.setForeground(SeverityMark.colour(Severity.MISSING));
    }
    return prose;
  }

  private void label(String words) {
    page.stack(new Prose(words).styled("small").coloured("Zonewright.muted"), 16);
  }

  private void part(String title, String text) {
    if (!text.isEmpty()) {
      label(title);
      page.stack(new Prose(text), 3);
    }
  }

  /** Where the values come from on which it rests: sentences, which want the whole width. */
  private void rests(List<Working.Input> rests) {
    if (!rests.isEmpty()) {
      label("Rests on");
    }
    for (Working.Input rest : rests) {
      Place place = new Place(rest.column().reference(), rest.row());
      page.stack(new InputLink(rest.column().name(), "", () -> follow.accept(place)), 2);
      page.stack(new Prose(Prose.capital(rest.shown())).coloured("Zonewright.muted"), 0);
    }
  }

  private void inputs(Book book, List<Working.Input> inputs) {
    if (inputs.isEmpty()) {
      return;
    }
    label("Made from");
    int gap = 2;
    for (Working.Input input : inputs) {
      Place place = new Place(input.column().reference(), Math.max(0, input.row()));
      boolean there = place.row() < book.rows(place.column().table());
      InputLink link =
          new InputLink(input.column().name(), input.shown(), () -> follow.accept(place));
      link.setEnabled(there);
      page.stack(link, gap);
      gap = 0;
    }
  }

  private void refresh(boolean fromTheTop) {
    Appearance.title(title);
    page.revalidate();
    page.repaint();
    if (fromTheTop) {
      scroll.getVerticalScrollBar().setValue(0);
    }
  }

  private String text(Working found) {
    return found.asText() + (span.isEmpty() ? "" : "  " + span + "\n");
  }

  /** Puts the working on the clipboard as text. */
  void copy() {
    working.ifPresent(
        found ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(text(found)), null));
  }

  /** Returns what takes the keyboard here: the first link, or the page. */
  public Component focusTarget() {
    for (Component component : page.getComponents()) {
      if (component instanceof InputLink && component.isEnabled()) {
        return component;
      }
    }
    return page;
  }
}
