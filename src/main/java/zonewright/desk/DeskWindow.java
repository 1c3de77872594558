package zonewright.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.desk.file.FileDrop;
import zonewright.desk.file.FileKeeper;
import zonewright.desk.file.FileQuestions;
import zonewright.desk.file.OfficeDesk;
import zonewright.desk.file.Shelf;
import zonewright.desk.file.UnsavedWork;
import zonewright.desk.findings.FindingsPane;
import zonewright.desk.findings.FindingsWatch;
import zonewright.desk.findings.Mending;
import zonewright.desk.grid.GridAction;
import zonewright.desk.handover.HandOver;
import zonewright.desk.handover.Printing;
import zonewright.desk.help.Cautions;
import zonewright.desk.help.ColumnGuide;
import zonewright.desk.help.WorkingPane;
import zonewright.desk.list.ListDesk;
import zonewright.desk.list.PricingDesk;
import zonewright.desk.nights.NightsWatch;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.DesignCopy;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Keyboard;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.UserAction;
import zonewright.desk.part.UserPreferences;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureView;
import zonewright.desk.sheets.ColumnViews;
import zonewright.desk.sheets.DesignSteps;
import zonewright.desk.sheets.GoMenu;
import zonewright.desk.sheets.GridUserActions;
import zonewright.desk.sheets.SheetDeck;
import zonewright.desk.sheets.SheetGroup;
import zonewright.desk.sheets.SheetUse;
import zonewright.desk.sheets.Wayfinder;
import zonewright.desk.sure.SpanWatch;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Curtain;
import zonewright.desk.task.LazyPart;
import zonewright.desk.task.Questions;
import zonewright.desk.weather.WeatherDesk;
import zonewright.formula.Reference;
import zonewright.help.HelpBook;
import zonewright.sheet.Place;
import zonewright.units.UnitSystem;

/** The main window: puts the parts together and passes on what happens in one to the others. */
final class DeskWindow {
  private final JFrame frame = new JFrame("Zonewright");
  private final UserPreferences memory;
  private final Questions questions;
  private final Appearance look;
  private final OpenDesign open;
  private final Wayfinder ways;
  private final SheetDeck deck;
  private final LazyPart<WorkingPane> working;
  private final LazyPart<FindingsPane> findings;
  private final LazyPart<PicturePane> pictures;
  private final FootLine foot = new FootLine();
  private final MessageBar messages = new MessageBar();
  private final Panels panels;
  private final BackgroundTasks tasks = new BackgroundTasks(foot::busy);
  private final Curtain curtain;
  private final UnsavedWork work;
  private final FileKeeper keeper;
  private final HandOver handOver;
  private final DesignCopy copy;
  private final NightsWatch nightsWatch;
  private final SpanWatch spans;
  private final SideWindows windows;
  private final PricingDesk pricing;
  private final WeatherDesk weather;
  private final ListDesk lists;
  private final OfficeDesk office;
  private final DesignSteps steps;
  private final Mending mending;
  private final GridUserActions gridActions;
  private final ZoneSplit split;
  private final UserAction back;
  private final FileMenu files;
  private final Menus menus;
  private final LazyPart<ColumnGuide> guide;
  private final LazyPart<FindEverywhere> everywhere;
  private final SheetUse use;
  private final LazyPart<FindingsWatch> watch;
  private final Afterwards afterwards = new Afterwards();
  private boolean pending;

  /**
   * Makes the window; {@link #show} shows it.
   *
   * @param asked who answers in place of dialogs, if anybody
   * @param spare the folder for the record of designs without a file
   */
  DeskWindow(
      UserPreferences memory,
      Appearance look,
      OpenDesign open,
      Shelf shelf,
      Optional<Questions> asked,
      Path spare) {
    this.memory = memory;
    this.look = look;
    this.open = open;
    pictures = new LazyPart<>(() -> new PicturePane(memory, this::export));
    deck = new SheetDeck(open, new ColumnViews(memory));
    ways = new Wayfinder(open, deck, this::selected);
    steps = new DesignSteps(open, deck, this::selected, foot::said);
    working = new LazyPart<>(() -> new WorkingPane(this::follow, steps::backToDefault, this::back));
    findings = new LazyPart<>(() -> new FindingsPane(ways::goTo, this::mend, this::about));
    mending = new Mending(open, deck, findings::get, ways, messages);
    panels = new Panels(deck, memory);
    questions = asked.orElseGet(() -> new FileQuestions(frame));
    handOver = new HandOver(open, shelf, tasks, questions, messages, () -> pictures.get().zone());
    pricing = new PricingDesk(open, tasks, questions, messages);
    weather = new WeatherDesk(frame, open, tasks, questions, messages, this::export);
    lists = new ListDesk(frame, open, tasks, questions, messages, weather);
    office = new OfficeDesk(open, shelf, tasks, questions, messages, memory);
    deck.onPaste(lists::takesOver);
    deck.onRefused(new Untypable(open, ways, messages)::tell);
    curtain = new Curtain(frame.getRootPane(), foot, foot::breakOff);
    work = new UnsavedWork(frame, open, messages, spare);
    keeper = new FileKeeper(open, shelf, tasks, questions, messages, memory, curtain, work);
    copy = new DesignCopy(open);
    nightsWatch = new NightsWatch(open, copy, words -> foot.busy(words, Optional.empty()));
    spans = new SpanWatch(open);
    windows = new SideWindows(frame, open, deck, messages, questions, keeper, handOver);
    guide = new LazyPart<>(() -> new ColumnGuide(frame, open.book().declared()));
    use = new SheetUse(copy, deck);
    everywhere = new LazyPart<>(() -> new FindEverywhere(frame, open, ways::jump));
    watch = new LazyPart<>(() -> new FindingsWatch(open, copy, findings.get(), deck));
    gridActions = new GridUserActions(deck, this::perform);
    split = new ZoneSplit(open, deck, messages);
    back = new UserAction("Back", this::back).keys("alt LEFT").drawn(Pictogram.BACK);
    back.setEnabled(false);
    files = new FileMenu(deck, keeper, lists, office, handOver, windowed());
    menus = new Menus(menus());
    assemble();
    connect();
    begin();
  }

  /** The first picture is the sheet with its figures; what stands around it follows at once. */
  private void begin() {
    deck.build();
    refreshState();
    EventQueue.invokeLater(deck::goToStart);
    panels.onFirstPaint(afterwards::begin);
    afterwards
        .then(
            () -> {
              panels.fill(working.get(), findings.get(), pictures.get());
              menus.fill();
              named();
              open.onNamed(this::named);
              deck.onSelected(this::selected);
              deck.onFact(spans::told);
              spans.onKnown(this::selected);
              selected();
            })
        .then(
            () -> {
              nightsWatch.onPlanned(this::planned);
              nightsWatch.begin();
              watch.get().startAnew();
              use.lookSoon();
            })
        .then(this::takeFiles);
  }

  private FileMenu.Windowed windowed() {
    return new FileMenu.Windowed(
        new UserAction("New …", deck.typed(this::beginNew)).keys("ctrl N"),
        new UserAction("Print the sheet …", this::print).keys("ctrl P"),
        new UserAction("Export picture …", deck.typed(() -> pictures.get().export()))
            .keys("ctrl E"),
        new UserAction("Quit", this::close).keys("ctrl Q"));
  }

  private List<Menus.Part> menus() {
    DesignMenu design =
        new DesignMenu(deck, steps, mending, split, pricing, lists, weather, windows);
    return List.of(
        new Menus.Part("File", 'F', files::fill),
        new Menus.Part("Edit", 'E', this::fillEdit),
        new Menus.Part("View", 'V', this::fillView),
        new Menus.Part("Sheet", 'S', this::fillSheet),
        new Menus.Part("Go", 'G', menu -> new GoMenu(open, deck, back).fill(menu)),
        new Menus.Part("Design", 'D', design::fill),
        new Menus.Part("Field", 'I', menu -> new FieldWork(open, deck, messages).fill(menu)),
        new Menus.Part("Help", 'H', this::fillHelp));
  }

  private void fillEdit(JMenu menu) {
    menu.add(steps.undo().item());
    menu.add(steps.redo().item());
    gridActions.edits(menu);
    menu.add(
        new UserAction("Find on all sheets …", deck.typed(() -> everywhere.get().begin()))
            .keys("ctrl alt F")
            .item());
  }

  /** What is shown of a sheet: its columns in a view, its rows sorted and filtered. */
  private void fillSheet(JMenu menu) {
    menu.add(new UserAction("Next view", deck.tools()::nextView).keys("ctrl shift V").item());
    menu.add(new UserAction("Keep this view as my own …", deck.tools()::keepView).item());
    gridActions.rowsAndColumns(menu);
  }

  private void fillView(JMenu menu) {
    new ViewMenu(look, this::restyle, panels)
        .fill(
            menu,
            new UserAction("Next picture", pictures.get()::next).keys("ctrl shift P"),
            new UserAction("Next part of the window", this::nextPart).keys("F6"));
  }

  private void fillHelp(JMenu menu) {
    menu.add(new UserAction("What this column means", this::explainColumn).keys("F1").item());
    menu.add(new UserAction("Keys", () -> guide.get().read(HelpBook.KEYS)).item());
    menu.add(windows.practice().item());
    menu.add(new UserAction("Cautions", () -> Cautions.open(frame)).item());
    menu.addSeparator();
    menu.add(new UserAction("About Zonewright", () -> Cautions.openAbout(frame)).item());
  }

  private List<Menus.Button> buttons() {
    UserAction explain =
        new UserAction("What is this?", this::explainColumn)
            .drawn(Pictogram.HELP)
            .tip("What the column means, its equation and its source (F1)");
    return List.of(
        new Menus.Button(files.open(), "Open", ""),
        new Menus.Button(files.save(), "Save", "gapright 14"),
        new Menus.Button(steps.undo(), "Undo", ""),
        new Menus.Button(steps.redo(), "Redo", "gapright 14"),
        new Menus.Button(steps.newRow(), "", "gapright 14"),
        new Menus.Button(mending.next(), "Next finding", ""),
        new Menus.Button(explain, "What is this?", "pushx"),
        new Menus.Button(steps.units(), "", "wmin 40"));
  }

  private void assemble() {
    Floating.over(frame.getLayeredPane(), messages, foot);
    frame.setJMenuBar(menus.bar());
    frame.add(Menus.buttons(buttons()), BorderLayout.PAGE_START);
    frame.add(panels, BorderLayout.CENTER);
    frame.add(foot, BorderLayout.PAGE_END);
    frame.setIconImages(WindowIcon.images());
    frame.setName("desk");
    frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
    frame.setMinimumSize(UIScale.scale(new Dimension(720, 480)));
  }

  private void connect() {
    frame
        .getRootPane()
        .registerKeyboardAction(
            steps.redo(),
            KeyStroke.getKeyStroke("ctrl shift Z"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
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
    open.onChanged(
        changes -> {
          selectedLater();
          use.lookSoon();
          windows.each(FollowingWindow::edited);
        });
  }

  private void replaced() {
    windows.each(FollowingWindow::replaced);
    ways.startAnew();
    pictures.get().startAnew();
    takeFiles();
    watch.get().startAnew();
    use.lookSoon();
    selected();
    named();
    nightsWatch.begin();
    deck.focusTarget().requestFocusInWindow();
    EventQueue.invokeLater(deck::goToStart);
  }

  /** Lets files be dropped anywhere. */
  private void takeFiles() {
    FileDrop.accept(
        frame.getRootPane(), file -> deck.typed(() -> lists.dropped(file, keeper::open)).run());
  }

  /** The timetable is there: what it found, and its pictures. */
  private void planned() {
    watch.get().refresh();
    pictures.get().show(open.design(), deck.frontTable());
    windows.each(FollowingWindow::planned);
  }

  private void named() {
    files.refreshRecent(memory.recent());
    refreshState();
  }

  private void refreshState() {
    String name = curtain.words().orElse((open.unsaved() ? "• " : "") + open.name());
    frame.setTitle(name + " – Zonewright");
    frame.getRootPane().putClientProperty("Window.documentModified", open.unsaved());
    foot.state(open);
    deck.tools().refresh();
    steps.refresh();
    split.refresh();
    gridActions.refresh();
    back.setEnabled(ways.mayGoBack());
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
    String span = current.filter(open::holds).map(spans::told).orElse("");
    current.ifPresentOrElse(
        place -> working.get().show(open.book(), place, span), working.get()::nothing);
    current.ifPresent(pictures.get()::at);
    pictures.get().show(open.design(), deck.frontTable());
    foot.selection(
        open.book(), deck.front().selected().stream().filter(open::holds).toList(), span);
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
  private void back() {
    boolean inWorking = Keyboard.has(working.get());
    ways.back();
    (inWorking ? working.get().focusTarget() : deck.focusTarget()).requestFocusInWindow();
  }

  /** Says what a finding is about, by the sheet of its cell. */
  private String about(Finding finding) {
    return SheetGroup.caption(open.book().schema().table(finding.column().table()));
  }

  private void mend(Finding finding) {
    mending.mend(finding);
  }

  /** Does something to the selected cells or rows. */
  private void perform(GridAction which) {
    boolean typedElsewhere =
        EventQueue.getCurrentEvent() instanceof KeyEvent
            && (Keyboard.has(working.get()) || Keyboard.has(findings.get()));
    Action action = deck.front().action(which);
    boolean own = which.ofCells() && inField();
    if (!typedElsewhere && !own && action.isEnabled()) {
      UserAction.run(action, deck.front().component());
    }
  }

  /** Says whether a key was pressed in a field that is no cell: it means something there. */
  private static boolean inField() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return EventQueue.getCurrentEvent() instanceof KeyEvent
        && owner instanceof JTextComponent
        && !"cell editor".equals(owner.getName());
  }

  /** Begins a new design with a form. */
  private void beginNew() {
    UnitSystem system = open.book().system();
    keeper.whenSafe(
        () ->
            office.begin(
                system,
                first ->
                    StartForm.open(
                        frame,
                        first.orElseGet(() -> Design.blank(system)),
                        design -> keeper.lay(design, "New design"))));
  }

  /** Offers what a crash left over. */
  void offerLeftOver() {
    work.offerLeftOver(keeper::bringBack);
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
    windows.each(FollowingWindow::close);
    tasks.close();
    work.close();
    watch.ifMade(FindingsWatch::close);
    use.close();
    spans.close();
    copy.close();
    frame.dispose();
  }

  /** Shows the sheet at the front on pages, to print. */
  private void print() {
    new Printing(frame, open, tasks, questions, messages).begin(deck.front().paper());
  }

  /** Gives the keyboard to the next part of the window. */
  private void nextPart() {
    Keyboard.next(
        List.of(
            Keyboard.part(deck, deck::focusTarget),
            Keyboard.part(working.get(), working.get()::focusTarget),
            Keyboard.part(findings.get(), findings.get()::focusTarget),
            Keyboard.part(pictures.get(), pictures.get()::focusTarget)));
  }

  /** Shows what the column of the selected cell means. */
  private void explainColumn() {
    Optional<Reference> column = deck.current().map(Place::column);
    boolean own = column.filter(open.book().declared()::has).isEmpty() && column.isPresent();
    if (own) {
      guide.get().read(HelpBook.OWN_COLUMNS);
    } else {
      guide.get().open(column);
    }
  }

  private void restyle() {
    guide.ifMade(ColumnGuide::restyle);
    everywhere.ifMade(FindEverywhere::restyle);
    use.lookSoon();
    windows.each(FollowingWindow::restyle);
    selected();
  }

  /** Does something once the first picture is on the screen and all around it is filled. */
  void afterwards(Runnable step) {
    afterwards.then(step);
  }

  FileKeeper keeper() {
    return keeper;
  }

  MessageBar messages() {
    return messages;
  }

  OpenDesign openDesign() {
    return open;
  }

  JFrame frame() {
    return frame;
  }

  SheetDeck deck() {
    return deck;
  }
}
