package zonewright.desk;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JFrame;
import zonewright.desk.alternatives.AlternativesWindow;
import zonewright.desk.columns.OwnColumnWindow;
import zonewright.desk.file.FileKeeper;
import zonewright.desk.handover.HandOver;
import zonewright.desk.nights.FirstWeeksWindow;
import zonewright.desk.nights.KeyInWindow;
import zonewright.desk.nights.NightsWindow;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserAction;
import zonewright.desk.practice.PracticeWindow;
import zonewright.desk.season.SeasonWindow;
import zonewright.desk.sheets.SheetDeck;
import zonewright.desk.sure.RangeForm;
import zonewright.desk.sure.SureWindow;
import zonewright.desk.task.LazyPart;
import zonewright.desk.task.Questions;
import zonewright.desk.whatif.InputWindow;
import zonewright.trade.Sheets;

/** The windows beside the main one, each made when it is first wanted, and what opens them. */
final class SideWindows {
  private final JFrame frame;
  private final OpenDesign open;
  private final SheetDeck deck;
  private final MessageBar messages;
  private final LazyPart<NightsWindow> nights;
  private final LazyPart<KeyInWindow> keyIn;
  private final LazyPart<FirstWeeksWindow> weeks;
  private final LazyPart<SeasonWindow> season;
  private final LazyPart<InputWindow> inputs;
  private final LazyPart<AlternativesWindow> alternatives;
  private final LazyPart<OwnColumnWindow> ownColumns;
  private final LazyPart<SureWindow> sure;
  private final LazyPart<PracticeWindow> practice;

  SideWindows(
      JFrame frame,
      OpenDesign open,
      SheetDeck deck,
      MessageBar messages,
      Questions questions,
      FileKeeper keeper,
      HandOver handOver) {
    this.frame = frame;
    this.open = open;
    this.deck = deck;
    this.messages = messages;
    nights = new LazyPart<>(() -> new NightsWindow(frame, open, keeper::export));
    keyIn =
        new LazyPart<>(() -> new KeyInWindow(frame, open, handOver::cards, () -> weeks().open()));
    weeks =
        new LazyPart<>(
            () ->
                new FirstWeeksWindow(
                    frame, open, handOver::firstWeeks, () -> deck.enter(Sheets.VERDICTS)));
    season =
        new LazyPart<>(
            () -> new SeasonWindow(frame, open, questions::weatherToRead, keeper::export));
    inputs = new LazyPart<>(() -> new InputWindow(frame, open));
    alternatives = new LazyPart<>(() -> new AlternativesWindow(frame, open));
    ownColumns =
        new LazyPart<>(
            () ->
                new OwnColumnWindow(
                    frame,
                    open,
                    place ->
                        messages.offer(
                            "“%s” stands behind the other columns of %s."
                                .formatted(
                                    place.column().name(),
                                    open.book().schema().table(place.column().table()).title()),
                            false,
                            new MessageBar.Offer("Go there", () -> deck.goTo(place)))));
    sure = new LazyPart<>(() -> new SureWindow(frame, open, handOver::measurements));
    practice = new LazyPart<>(() -> new PracticeWindow(frame, open, handOver::pages));
    deck.onOwnColumn(() -> ownColumns.get().open(deck.frontTable(), deck.current()));
  }

  private FirstWeeksWindow weeks() {
    return weeks.get();
  }

  /** Does something to those that were made already. */
  void each(Consumer<FollowingWindow> does) {
    List.of(nights, keyIn, weeks, season, inputs, alternatives, ownColumns, sure, practice)
        .forEach(window -> window.ifMade(does::accept));
  }

  /** Returns what opens those about when water runs. */
  List<UserAction> timing() {
    return List.of(
        action("The nights", "ctrl T", () -> nights.get().open()),
        action("Key this in", "ctrl K", () -> keyIn.get().open()),
        action("After the first weeks", "ctrl alt K", () -> weeks.get().open()),
        action("A season", "ctrl shift T", () -> season.get().open()));
  }

  /** Returns what opens those about what would be if something were otherwise. */
  List<UserAction> otherwise() {
    return List.of(
        action("Find the input …", "ctrl I", this::findInput),
        action("Alternatives", "ctrl shift A", () -> alternatives.get().open()),
        action("Range of this input …", "ctrl R", this::askRange),
        action("How sure", "ctrl shift R", () -> sure.get().open()));
  }

  /** Returns what opens the exercises. */
  UserAction practice() {
    return action("Practice", "ctrl shift E", () -> practice.get().open());
  }

  private UserAction action(String words, String keys, Runnable opens) {
    return new UserAction(words, deck.typed(opens)).keys(keys);
  }

  /** Finds what to type into the cell a person is at, so that an answer is as wanted. */
  private void findInput() {
    deck.current()
        .flatMap(place -> inputs.get().open(place))
        .ifPresent(sentence -> messages.problem(sentence, List.of()));
  }

  /** Asks what the input in the cell a person is at lies between. */
  private void askRange() {
    deck.current()
        .flatMap(place -> RangeForm.open(frame, open.book(), place, deck.front().selected()))
        .ifPresent(sentence -> messages.problem(sentence, List.of()));
  }
}
