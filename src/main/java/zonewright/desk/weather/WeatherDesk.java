package zonewright.desk.weather;

import java.awt.Window;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import zonewright.design.WeatherTaken;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureView;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Questions;
import zonewright.desk.task.Sentences;
import zonewright.units.UnitSystem;
import zonewright.weather.DailyRecord;
import zonewright.weather.WeatherChoices;
import zonewright.weather.WeatherFile;
import zonewright.weather.WeatherProblem;
import zonewright.weather.YearsOfWeather;
import zonewright.workbook.DaysFile;
import zonewright.workbook.Progress;

/** Reads a weather file and takes what it says of the years into the design. */
public final class WeatherDesk {
  private final Window window;
  private final OpenDesign open;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;
  private final BiConsumer<Drawing, PictureView> exported;

  public WeatherDesk(
      Window window,
      OpenDesign open,
      BackgroundTasks tasks,
      Questions questions,
      MessageBar messages,
      BiConsumer<Drawing, PictureView> exported) {
    this.exported = exported;
    this.window = window;
    this.open = open;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
  }

  /** Asks for a weather file and reads it. */
  public void readAsked() {
    questions.weatherToRead().ifPresent(this::read);
  }

  /** Finds the climate place among those whose reference evapotranspiration is known. */
  public void findPlace() {
    new PlaceForm(
            window,
            open,
            place ->
                messages.tell(
                    "Reference ET now comes from %s; Undo takes it back.".formatted(place),
                    List.of()))
        .open();
  }

  /** Reads a weather file and shows what it is worth. */
  public void read(Path file) {
    String name = file.getFileName().toString();
    WeatherChoices choices = WeatherTaken.choicesFor(open.book());
    tasks.runAbandonable(
        "Reading " + name + " …",
        progress -> first(WeatherFile.open(file), choices, progress),
        this::show,
        problem -> {
          if (!(problem instanceof Progress.BrokenOff)) {
            messages.problem(Sentences.of("“" + name + "” was not read", problem), List.of());
          }
        });
  }

  /**
   * A file, and what it comes to where nothing more has to be said.
   *
   * @param problem what has to be said first
   */
  private record Looked(
      WeatherFile file, WeatherChoices choices, Optional<YearsOfWeather> years, String problem) {}

  private static Looked first(WeatherFile file, WeatherChoices choices, Progress progress) {
    try {
      YearsOfWeather years = new YearsOfWeather(file.read(choices, progress::at));
      return new Looked(file, choices, Optional.of(years), "");
    } catch (WeatherProblem open) {
      return new Looked(file, choices, Optional.empty(), open.getMessage());
    }
  }

  private void show(Looked looked) {
    WeatherForm form =
        new WeatherForm(
            window,
            open.book().system(),
            looked.file(),
            looked.choices(),
            this::again,
            this::take,
            (over, years) ->
                new WeatherPictures(over, open.book().system(), years, exported).open());
    looked.years().ifPresentOrElse(form::show, () -> form.problem(looked.problem()));
    form.open();
  }

  /** Reads a file once more, after a person said something else of it. */
  private void again(WeatherForm form, WeatherFile file, WeatherChoices choices) {
    tasks.run(
        "Reading " + file.name() + " …",
        () -> first(file, choices, Progress.UNWATCHED),
        looked -> looked.years().ifPresentOrElse(form::show, () -> form.problem(looked.problem())),
        problem -> form.problem(Sentences.of("“" + file.name() + "” was not read", problem)));
  }

  private void take(YearsOfWeather years, WeatherForm.Taking taking) {
    String covered = taking.covered();
    List<String> notes = WeatherTaken.typedOver(open.book()).stream().toList();
    open.book().perform(WeatherTaken.edit(open.book(), years, covered));
    messages.tell(
        "Reference ET now comes from “%s”, for the %s; it stands on the sheet Record. Undo takes it back."
            .formatted(years.record().file(), covered),
        notes);
    if (taking.days()) {
      questions
          .daysToWrite(bare(years.record().file()) + " days.xlsx")
          .ifPresent(file -> write(years.record(), file));
    }
  }

  private static String bare(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private void write(DailyRecord record, Path file) {
    String name = file.getFileName().toString();
    UnitSystem system = open.book().system();
    tasks.run(
        "Writing " + name + " …",
        () -> {
          DaysFile.write(record, system, file);
          return name;
        },
        done -> messages.wrote("“" + name + "” was written.", file, List.of()),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not written", problem), List.of()));
  }
}
