package zonewright.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JFrame;
import javax.swing.JPanel;
import zonewright.desk.grid.GridAction;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureView;
import zonewright.sheet.Place;
import zonewright.units.UnitSystem;

/** The main window: puts the parts together and passes on what happens in one to the others. */
final class DeskWindow {
  private final JFrame frame = new JFrame("Zonewright");
  private final Memory memory;
  private final Look look;
  private final OpenDesign open;
  private final Wayfinder ways;
  private final SheetDeck deck;
  private final Late<WorkingPane> working;
  private final Late<FindingsPane> findings;
  private final Late<PicturePane> pictures;
  private final FootLine foot = new FootLine();
  private final MessageBar messages = new MessageBar();
  private final Panels panels;
  private final Errands errands = new Errands(foot::busy);
  private final Curtain curtain;
  private final UnsavedWork work;
  private final FileKeeper keeper;
  private final HandOver handOver;
  private final DesignCopy copy;
  private final NightsWatch nightsWatch;
  private final Late<NightsWindow> nights;
  private final PricingDesk pricing;
  private final ListDesk lists;
  private final DesignSteps steps;
  private final Mending mending;
  private final Menus menus;
  private final Late<ColumnGuide> guide;
  private final Late<FindingsWatch> watch;
  private final Afterwards afterwards = new Afterwards();
  private boolean pending;

  /**
   * Makes the window; {@link #show} shows it.
   *
   * @param asked who answers in place of dialogs, if anybody
   * @param spare the folder for the record of designs without a file
   */
  DeskWindow(
      Memory memory,
      Look look,
      OpenDesign open,
      Shelf shelf,
      Optional<Questions> asked,
      Path spare) {
    this.memory = memory;
    this.look = look;
    this.open = open;
    pictures = new Late<>(() -> new PicturePane(memory, this::export));
    deck = new SheetDeck(open, new ColumnViews(memory));
    ways = new Wayfinder(open, deck, this::selected);
    steps = new DesignSteps(open, deck, this::selected);
    working = new Late<>(() -> new WorkingPane(this::follow, steps::backToDefault, this::back));
    findings = new Late<>(() -> new FindingsPane(ways::goTo, finding -> mending().mend(finding)));
    mending = new Mending(open, deck, findings::get, ways, messages);
    panels = new Panels(deck, memory);
    Questions questions = asked.orElseGet(() -> new FileQuestions(frame));
    handOver = new HandOver(open, shelf, errands, questions, messages, () -> pictures.get().zone());
    pricing = new PricingDesk(open, errands, questions, messages);
    lists = new ListDesk(frame, open, errands, questions, messages);
    curtain = new Curtain(frame.getRootPane(), foot, foot::breakOff);
    work = new UnsavedWork(frame, open, messages, spare);
    keeper = new FileKeeper(open, shelf, errands, questions, messages, memory, curtain, work);
    copy = new DesignCopy(open);
    nightsWatch = new NightsWatch(open, copy, words -> foot.busy(words, Optional.empty()));
    nights = new Late<>(() -> new NightsWindow(frame, open, keeper::export));
    guide = new Late<>(() -> new ColumnGuide(frame, open.book().blueprint()));
    watch = new Late<>(() -> new FindingsWatch(open, copy, findings.get(), deck));
    menus = new Menus(this);
    assemble();
    connect();
    begin();
  }

  /** The first picture is the sheet with its figures; what stands around it follows at once. */
  private void begin() {
    deck.build();
    refreshState();
    EventQueue.invokeLater(deck::goToFirstResult);
    panels.onFirstPaint(afterwards::begin);
    afterwards
        .then(
            () -> {
              panels.fill(working.get(), findings.get(), pictures.get());
              menus.fill();
              named();
              open.onNamed(this::named);
              deck.onSelected(this::selected);
              selected();
            })
        .then(
            () -> {
              nightsWatch.onPlanned(this::planned);
              nightsWatch.begin();
              watch.get().startAnew();
            })
        .then(this::takeFiles);
  }

  private void assemble() {
    JPanel head = new JPanel(new BorderLayout());
    head.add(menus.buttons(), BorderLayout.PAGE_START);
    head.add(messages, BorderLayout.PAGE_END);
    frame.setJMenuBar(menus.bar());
    frame.add(head, BorderLayout.PAGE_START);
    frame.add(panels, BorderLayout.CENTER);
    frame.add(foot, BorderLayout.PAGE_END);
    frame.setIconImages(WindowIcon.images());
    frame.setName("desk");
    frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
    frame.setMinimumSize(UIScale.scale(new Dimension(720, 480)));
  }

  private void connect() {
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            close();
          }

          @Override
          public void windowActivated(WindowEvent event) {
            keeper.lookAtFile();
          }
        });
    open.onReplaced(this::replaced);
    open.onChanged(changes -> selectedLater());
  }

  private void replaced() {
    ways.startAnew();
    pictures.get().startAnew();
    takeFiles();
    watch.get().startAnew();
    selected();
    named();
    nightsWatch.begin();
    deck.focusTarget().requestFocusInWindow();
    EventQueue.invokeLater(deck::goToFirstResult);
  }

  /** Lets files be dropped anywhere. */
  private void takeFiles() {
    FileDrop.accept(frame.getRootPane(), file -> lists().dropped(file, keeper::open));
  }

  ListDesk lists() {
    deck.front().finishTyping();
    return lists;
  }

  /** The timetable is there: what it found, and its pictures. */
  private void planned() {
    watch.get().refresh();
    pictures.get().show(open.design(), deck.frontTable());
    nights.ifMade(NightsWindow::refreshShown);
  }

  /** Shows the nights in a window of their own. */
  void showNights() {
    deck.front().finishTyping();
    nights.get().open();
  }

  private void named() {
    menus.refreshRecent(memory.recent());
    refreshState();
  }

  private void refreshState() {
    String name = curtain.words().orElse((open.unsaved() ? "• " : "") + open.name());
    frame.setTitle(name + " – Zonewright");
    frame.getRootPane().putClientProperty("Window.documentModified", open.unsaved());
    foot.state(open);
    deck.tools().refresh();
    menus.refresh();
  }

  /** Shows what follows from an edit once the cells themselves are painted. */
  private void selectedLater() {
    if (!pending) {
      pending = true;
      EventQueue.invokeLater(
          () ->
              EventQueue.invokeLater(
                  () -> {
                    pending = false;
                    selected();
                  }));
    }
  }

  private void selected() {
    Optional<Place> current = deck.current();
    current.ifPresentOrElse(
        place -> working.get().show(open.book(), place), working.get()::nothing);
    current.ifPresent(pictures.get()::at);
    pictures.get().show(open.design(), deck.frontTable());
    foot.selection(open.book(), deck.front().selected().stream().filter(open::holds).toList());
    working.get().setMayGoBack(ways.mayGoBack());
    refreshState();
  }

  private void export(Drawing drawing, PictureView view) {
    keeper.export(drawing, view.exportSize());
  }

  /** Shows the window for a file: nothing else is seen in it before the file is read. */
  void show(Path file) {
    curtain.close("Opening " + file.getFileName() + " …");
    refreshState();
    show();
    afterwards(() -> keeper.open(file));
  }

  /** Shows the window as it was left last. */
  void show() {
    new WindowPlace(memory).give(frame);
    frame.setVisible(true);
    afterwards.shown();
    deck.focusTarget().requestFocusInWindow();
  }

  private void follow(Place place) {
    ways.jump(place);
    working.get().focusTarget().requestFocusInWindow();
  }

  /** Goes back to the cell that the last link led away from. */
  void back() {
    boolean inWorking = Wayfinder.has(working.get());
    ways.back();
    (inWorking ? working.get().focusTarget() : deck.focusTarget()).requestFocusInWindow();
  }

  boolean mayGoBack() {
    return ways.mayGoBack();
  }

  /** Does something to the selected cells or rows. */
  void perform(GridAction which) {
    boolean typedElsewhere =
        EventQueue.getCurrentEvent() instanceof KeyEvent
            && (Wayfinder.has(working.get()) || Wayfinder.has(findings.get()));
    Action action = deck.front().action(which);
    if (!typedElsewhere && action.isEnabled()) {
      Menus.run(action, deck.front().component());
    }
  }

  /**
   * Returns what there is to do about prices and retrofits, with what was being typed taken over.
   */
  PricingDesk pricing() {
    deck.front().finishTyping();
    return pricing;
  }

  /** Begins a new design with a form. */
  void begin(UnitSystem system) {
    deck.front().finishTyping();
    keeper.whenSafe(
        () -> StartForm.open(frame, system, design -> keeper.lay(design, "New design")));
  }

  /** Asks for a file and opens it. */
  void open() {
    deck.front().finishTyping();
    keeper.openAsked();
  }

  /** Gives up what was not saved. */
  void revert() {
    deck.front().finishTyping();
    keeper.revert();
  }

  /** Offers what a crash left over. */
  void offerLeftOver() {
    work.offerLeftOver(keeper::bringBack);
  }

  /** Saves the design. */
  void save() {
    deck.front().finishTyping();
    keeper.save(() -> {});
  }

  /** Asks where to save the design. */
  void saveAs() {
    deck.front().finishTyping();
    keeper.saveAs(() -> {});
  }

  /** Returns what writes copies to hand over, with what is being typed finished. */
  HandOver handOver() {
    deck.front().finishTyping();
    return handOver;
  }

  /** Closes the window, unless something would be lost and the person thinks better of it. */
  void close() {
    deck.front().finishTyping();
    keeper.whenSafe(this::dispose);
  }

  private void dispose() {
    new WindowPlace(memory).keep(frame);
    panels.keep();
    afterwards.close();
    nightsWatch.close();
    nights.ifMade(NightsWindow::close);
    errands.close();
    work.close();
    watch.ifMade(FindingsWatch::close);
    copy.close();
    frame.dispose();
  }

  /** Shows the sheet at the front on pages, to print. */
  void print() {
    new Printing(frame, open, errands, messages).begin(deck.front().paper());
  }

  /** Shows the next of the pictures that fit the sheet. */
  void nextPicture() {
    pictures.get().next();
  }

  /** Exports the picture shown. */
  void exportPicture() {
    deck.front().finishTyping();
    pictures.get().export();
  }

  /** Brings a sheet to the front. */
  void goToSheet(String table) {
    deck.show(table);
    deck.focusTarget().requestFocusInWindow();
  }

  /** Gives the keyboard to the next part of the window. */
  void nextPart() {
    Wayfinder.next(
        List.of(
            Wayfinder.part(deck, deck::focusTarget),
            Wayfinder.part(working.get(), working.get()::focusTarget),
            Wayfinder.part(findings.get(), findings.get()::focusTarget),
            Wayfinder.part(pictures.get(), pictures.get()::focusTarget)));
  }

  /** Shows what the column of the selected cell means. */
  void explainColumn() {
    guide.get().open(deck.current().map(Place::column));
  }

  /** Puts on another look. */
  void dress(Look.Choice choice) {
    look.choose(choice);
    restyle();
  }

  /** Makes the text larger or smaller. */
  void resizeText(int step) {
    look.resize(step);
    restyle();
  }

  private void restyle() {
    guide.ifMade(ColumnGuide::restyle);
    nights.ifMade(NightsWindow::restyle);
    selected();
  }

  /** Does something once the first picture is on the screen and all around it is filled. */
  void afterwards(Runnable step) {
    afterwards.then(step);
  }

  FileKeeper keeper() {
    return keeper;
  }

  Look look() {
    return look;
  }

  /** Returns what a person changes in the design as a whole. */
  DesignSteps steps() {
    return steps;
  }

  /** Returns what there is to do about findings. */
  Mending mending() {
    return mending;
  }

  MessageBar messages() {
    return messages;
  }

  Panels panels() {
    return panels;
  }

  OpenDesign openDesign() {
    return open;
  }

  SheetView front() {
    return deck.front();
  }

  JFrame frame() {
    return frame;
  }

  SheetDeck deck() {
    return deck;
  }
}
