package zonewright.desk.file;

import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPasswordField;
import javax.swing.filechooser.FileNameExtensionFilter;
import zonewright.desk.task.Questions;
import zonewright.workbook.pack.PackSheet;

/** Asks with dialogs. */
public final class FileQuestions implements Questions {
  private static final String SUFFIX = ".xlsx";

  private final Component window;
  private File folder;

  public FileQuestions(Component window) {
    this.window = window;
  }

  @Override
  public Unsaved unsaved(String name) {
    Object[] answers = {"Save", "Do not save", "Cancel"};
    int answer =
        JOptionPane.showOptionDialog(
            window,
            "“" + name + "” has changes that are not saved.",
            "Save the changes?",
            JOptionPane.YES_NO_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[0]);
    return answer == 0 ? Unsaved.SAVE : answer == 1 ? Unsaved.LOSE : Unsaved.CANCEL;
  }

  @Override
  public Optional<String> password(String words) {
    JPasswordField field = new JPasswordField(24);
    field.setName("password");
    field.getAccessibleContext().setAccessibleName("Password");
    field.addHierarchyListener(event -> field.requestFocusInWindow());
    int answer =
        JOptionPane.showConfirmDialog(
            window,
            new Object[] {words, field},
            "Password",
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE);
    return answer == JOptionPane.OK_OPTION
        ? Optional.of(new String(field.getPassword()))
        : Optional.empty();
  }

  private JFileChooser chooser(String title) {
    JFileChooser chooser = new JFileChooser(folder);
    chooser.setDialogTitle(title);
    chooser.setFileFilter(new FileNameExtensionFilter("Workbooks (*.xlsx)", "xlsx"));
    return chooser;
  }

  @Override
  public Optional<Path> fileToOpen() {
    JFileChooser chooser = chooser("Open a design");
    return chosen(chooser, chooser.showOpenDialog(window));
  }

  @Override
  public Optional<Path> fileToSave(Path suggestion) {
    JFileChooser chooser = chooser("Save the design");
    chooser.setSelectedFile(
        suggestion.isAbsolute()
            ? suggestion.toFile()
            : new File(chooser.getCurrentDirectory(), suggestion.toString()));
    Optional<Path> wanted =
        chosen(chooser, chooser.showSaveDialog(window)).map(FileQuestions::withSuffix);
    return wanted.filter(file -> !Files.exists(file) || mayReplace(file));
  }

  @Override
  public Optional<Path> fileToExport(String suggestion) {
    JFileChooser chooser = new JFileChooser(folder);
    chooser.setDialogTitle("Export the picture");
    FileNameExtensionFilter svg = new FileNameExtensionFilter("Drawing (*.svg)", "svg");
    chooser.setAcceptAllFileFilterUsed(false);
    chooser.addChoosableFileFilter(new FileNameExtensionFilter("Picture (*.png)", "png"));
    chooser.addChoosableFileFilter(svg);
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggestion));
    Optional<Path> wanted =
        chosen(chooser, chooser.showSaveDialog(window))
            .map(file -> withSuffix(file, chooser.getFileFilter() == svg ? ".svg" : ".png"));
    return wanted.filter(file -> !Files.exists(file) || mayReplace(file));
  }

  @Override
  public Optional<Path> pagesToSave(Path suggestion) {
    return toSave("Save pages to print", "Pages", "pdf", suggestion);
  }

  @Override
  public Optional<Path> calendarToSave(Path suggestion) {
    return toSave("Save the nights as a calendar", "Calendars", "ics", suggestion);
  }

  private Optional<Path> toSave(String title, String kind, String ending, Path suggestion) {
    JFileChooser chooser = new JFileChooser(folder);
    chooser.setDialogTitle(title);
    chooser.setFileFilter(new FileNameExtensionFilter(kind + " (*." + ending + ")", ending));
    chooser.setSelectedFile(suggestion.toFile());
    Optional<Path> wanted =
        chosen(chooser, chooser.showSaveDialog(window))
            .map(
                file ->
                    file.toString().toLowerCase(Locale.ROOT).endsWith("." + ending)
                        ? file
                        : file.resolveSibling(file.getFileName() + "." + ending));
    return wanted.filter(file -> !Files.exists(file) || mayReplace(file));
  }

  /** Gives a name that says neither PNG nor SVG the ending chosen. */
  private static Path withSuffix(Path file, String usual) {
    String name = file.getFileName().toString();
    String low = name.toLowerCase(Locale.ROOT);
    return low.endsWith(".png") || low.endsWith(".svg") ? file : file.resolveSibling(name + usual);
  }

  @Override
  public Optional<List<PackSheet>> sheetsToHandOver(List<PackSheet> sheets) {
    return SheetChoice.ask(window, sheets);
  }

  private JFileChooser pricesChooser(String title) {
    JFileChooser chooser = new JFileChooser(folder);
    chooser.setDialogTitle(title);
    return chooser;
  }

  @Override
  public Optional<Path> listToRead() {
    JFileChooser chooser = new JFileChooser(folder);
    chooser.setDialogTitle("Add zones from a list");
    chooser.setFileFilter(
        new FileNameExtensionFilter("Lists as text (*.csv, *.tsv, *.txt)", "csv", "tsv", "txt"));
    return chosen(chooser, chooser.showOpenDialog(window));
  }

  @Override
  public Optional<Path> weatherToRead() {
    JFileChooser chooser = new JFileChooser(folder);
    chooser.setDialogTitle("Read weather");
    chooser.setFileFilter(
        new FileNameExtensionFilter(
            "Weather files (*.csv, *.epw, *.tsv, *.txt)", "csv", "epw", "tsv", "txt"));
    return chosen(chooser, chooser.showOpenDialog(window));
  }

  @Override
  public Optional<Path> pricesToRead() {
    JFileChooser chooser = pricesChooser("Read a price book");
    chooser.setFileFilter(
        new FileNameExtensionFilter(
            "Comma-separated text or workbooks (*.csv, *.xlsx)", "csv", "xlsx"));
    return chosen(chooser, chooser.showOpenDialog(window));
  }

  @Override
  public Optional<Path> daysToWrite(String suggestion) {
    return tableToWrite("Write the days", suggestion);
  }

  @Override
  public Optional<Path> pricesToWrite(String suggestion) {
    return tableToWrite("Write the price book", suggestion);
  }

  private Optional<Path> tableToWrite(String title, String suggestion) {
    JFileChooser chooser = pricesChooser(title);
    FileNameExtensionFilter workbook = new FileNameExtensionFilter("Workbooks (*.xlsx)", "xlsx");
    chooser.setAcceptAllFileFilterUsed(false);
    chooser.addChoosableFileFilter(
        new FileNameExtensionFilter("Comma-separated text (*.csv)", "csv"));
    chooser.addChoosableFileFilter(workbook);
    chooser.setSelectedFile(new File(folder, suggestion));
    return chosen(chooser, chooser.showSaveDialog(window))
        .map(file -> ending(file, chooser.getFileFilter() == workbook ? SUFFIX : ".csv"))
        .filter(file -> !Files.exists(file) || mayReplace(file));
  }

  /** The kind of file chosen decides, whatever ending of the two its name had. */
  private static Path ending(Path file, String wanted) {
    String name = file.getFileName().toString();
    String low = name.toLowerCase(Locale.ROOT);
    String bare = low.endsWith(".csv") ? name.substring(0, name.length() - 4) : name;
    return low.endsWith(SUFFIX) ? file : file.resolveSibling(bare + wanted);
  }

  private Optional<Path> chosen(JFileChooser chooser, int answer) {
    if (answer != JFileChooser.APPROVE_OPTION || chooser.getSelectedFile() == null) {
      return Optional.empty();
    }
    folder = chooser.getCurrentDirectory();
    return Optional.of(chooser.getSelectedFile().toPath());
  }

  private static Path withSuffix(Path file) {
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(SUFFIX)
        ? file
        : file.resolveSibling(name + SUFFIX);
  }

  private boolean mayReplace(Path file) {
    Object[] answers = {"Replace", "Cancel"};
    int answer =
        JOptionPane.showOptionDialog(
            window,
            "There is a file “" + file.getFileName() + "” already.",
            "Replace the file?",
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[1]);
    return answer == 0;
  }
}
