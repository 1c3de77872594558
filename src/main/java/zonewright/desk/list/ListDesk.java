package zonewright.desk.list;

import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import zonewright.design.ClimateFinding;
import zonewright.desk.grid.GridClipboard;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Questions;
import zonewright.desk.task.Sentences;
import zonewright.desk.weather.WeatherDesk;
import zonewright.exchange.ForeignList;
import zonewright.exchange.ListMatch;
import zonewright.exchange.ListProblem;
import zonewright.exchange.PriceLists;
import zonewright.sheet.ListText;
import zonewright.trade.Sheets;
import zonewright.weather.WeatherFile;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.FileSize;
import zonewright.workbook.PriceFile;

/**
 * Takes somebody's list, of zones or of prices, from a file or as it was copied, into the design.
 */
public final class ListDesk {
  private final Window window;
  private final OpenDesign open;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;
  private final WeatherDesk weather;

  public ListDesk(
      Window window,
      OpenDesign open,
      BackgroundTasks tasks,
      Questions questions,
      MessageBar messages,
      WeatherDesk weather) {
    this.weather = weather;
    this.window = window;
    this.open = open;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
  }

  /** Reads a file that was dropped on the window where it is weather or a list. */
  public void dropped(Path file, Consumer<Path> otherwise) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (WeatherFile.looksLikeWeather(file)) {
      weather.read(file);
    } else if (name.endsWith(".csv") || name.endsWith(".tsv") || name.endsWith(".txt")) {
      read(file);
    } else {
      otherwise.accept(file);
    }
  }

  /** Asks for a list of zones and shows where its columns go. */
  public void readAsked() {
    questions.listToRead().ifPresent(this::read);
  }

  /** Asks for a list of zones as found and shows where its columns go. */
  public void readFoundAsked() {
    questions.listToRead().ifPresent(file -> read(file, Sheets.FOUND));
  }

  /** Reads a list of zones and shows where its columns go. */
  void read(Path file) {
    read(file, Sheets.ZONES);
  }

  private void read(Path file, String table) {
    String name = file.getFileName().toString();
    tasks.run(
        "Reading " + name + " …",
        () -> ForeignList.read(file),
        list -> ask("“" + name + "”", list, table),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not read", problem), List.of()));
  }

  /** Shows where the columns go of what was copied in another program. */
  public void paste() {
    String text;
    try {
      text =
          (String)
              Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
    } catch (UnsupportedFlavorException | IOException | IllegalStateException nothing) {
      messages.problem(
          "There is no list to paste; copy it with its headings in the other program first.",
          List.of());
      return;
    }
    try {
      ask("What was copied", ForeignList.pasted(text), Sheets.ZONES);
    } catch (ListProblem problem) {
      messages.problem(problem.getMessage(), List.of());
    }
  }

  /** Offers to match the columns of a list that somebody pastes together with its headings. */
  public boolean takesOver(String table, List<List<String>> block, Runnable asItIs) {
    if (!List.of(Sheets.ZONES, Sheets.FOUND).contains(table)
        || block.size() < 2
        || block.get(0).size() < 2) {
      return false;
    }
    try {
      ForeignList list = ForeignList.pasted(GridClipboard.text(block));
      if (new ListMatch(open.book(), table, list).headingsKnown() * 2 < block.get(0).size()) {
        return false;
      }
      messages.offer(
          "What you paste begins with a line of headings.",
          false,
          new MessageBar.Offer(
              "Choose where each column goes …", () -> ask("What was copied", list, table)),
          new MessageBar.Offer("Paste it as it is", asItIs));
      return true;
    } catch (ListProblem none) {
      return false;
    }
  }

  /** Asks for a price book and shows what it changes. */
  public void readPrices() {
    Optional<Path> file = questions.pricesToRead();
    if (file.isEmpty()) {
      return;
    }
    String name = file.get().getFileName().toString();
    tasks.run(
        "Reading " + name + " …",
        () -> PriceLists.of(prices(file.get()), name),
        list -> ask("“" + name + "”", list, Sheets.PARTS),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not read", problem), List.of()));
  }

  private static ListText prices(Path file) throws DesignFileException, ListText.Problem {
    return PriceFile.isWorkbook(file) ? PriceFile.read(file) : ListText.of(file);
  }

  private void ask(String name, ForeignList list, String table) {
    if (list.rows().isEmpty()) {
      messages.problem(
          name + " has headings and no rows; its first line must name the columns.", List.of());
      return;
    }
    ListMatch match = new ListMatch(open.book(), table, list);
    ListForm.open(window, name, open.book(), match, taken -> take(taken, table));
  }

  private void take(ListMatch.Taken taken, String table) {
    Optional<String> refused = FileSize.refused(open.book(), taken.edit());
    if (refused.isPresent()) {
      messages.problem("The list was not taken. " + refused.get(), List.of());
      return;
    }
    open.book().perform(taken.edit());
    if (table.equals(Sheets.PARTS)) {
      messages.tell(
          "The price book was read: %s Undo takes it back.".formatted(taken.changes().get(0)),
          taken.notes());
      return;
    }
    messages.tell(
        (taken.rows() == 1 ? "1 zone was added" : taken.rows() + " zones were added")
            + " below the others; Undo takes "
            + (taken.rows() == 1 ? "it" : "them")
            + " back."
            + ClimateFinding.sentence(open.book()).map(words -> " " + words).orElse(""),
        taken.notes());
  }
}
