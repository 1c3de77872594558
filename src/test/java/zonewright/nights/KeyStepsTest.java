package zonewright.nights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;
import zonewright.water.Controller;
import zonewright.water.MonthlySchedule;
import zonewright.water.TuningPercents;

/** What to key in stands in the order of the keys pressed, and ticks hold while it stays so. */
class KeyStepsTest {
  private final Garden garden = new Garden();

  private Book book() {
    return garden.design().book();
  }

  private List<KeySteps.Page> pages() {
    return KeySteps.of(garden.plan(), book());
  }

  @Test
  void daysThenStartsThenStationsThenThePercent() {
    garden.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
    KeySteps.Page page = pages().get(0);
    ScheduleCard card = page.card();
    assertThat(card.title()).isEqualTo("Program A");
    List<String> words = page.steps().stream().map(KeySteps.Step::words).toList();
    assertThat(words).hasSize(1 + card.starts().size() + card.lines().size() + 1);
    assertThat(words.get(0)).isEqualTo("Days: " + card.days());
    assertThat(words.get(1)).isEqualTo("Start 1: " + card.starts().get(0));
    assertThat(words.get(1 + card.starts().size()))
        .startsWith("Station 1, Reading lawn, north half: ")
        .endsWith(" min");
    assertThat(words.get(words.size() - 1)).isEqualTo("Percent, Jul 100 %");
    garden.type(MonthlySchedule.MONTH, 0, "September");
    assertThat(pages().get(0).steps().get(words.size() - 1).words()).isEqualTo("Percent, Sep 75 %");
  }

  @Test
  void aControllerThatKeepsSoaksIsGivenRunTimeCycleAndSoak() {
    garden.type(Controller.KIND, 0, Controller.CYCLES_AND_SOAKS);
    assertThat(pages().get(0).steps())
        .extracting(KeySteps.Step::words)
        .anyMatch(words -> words.matches("Station 1, .*: \\d+ min, cycle \\d+ min, soak \\d+ min"));
    assertThat(pages().get(0).card().starts()).hasSize(1);
  }

  @Test
  void aTickIsKeptUntilTheDesignSaysSomethingElse() {
    garden.type(Controller.KIND, 0, Controller.PROGRAM_STARTS);
    List<KeySteps.Page> pages = pages();
    List<KeySteps.Step> steps = pages.get(0).steps();
    garden.take(KeySteps.tick(book(), pages, steps.get(0), true));
    garden.take(KeySteps.tick(book(), pages, steps.get(steps.size() - 2), true));
    assertThat(KeySteps.ticked(book()))
        .containsExactly(steps.get(0).key(), steps.get(steps.size() - 2).key());
    garden.take(KeySteps.tick(book(), pages, steps.get(0), false));
    assertThat(KeySteps.ticked(book())).containsExactly(steps.get(steps.size() - 2).key());
    book().undo();
    assertThat(KeySteps.ticked(book())).hasSize(2);
    garden.type(TuningPercents.SITE_TUNING, 0, "130");
    assertThat(pages().get(0).steps())
        .extracting(KeySteps.Step::key)
        .doesNotContain(steps.get(steps.size() - 2).key());
    assertThat(book().rows(Sheets.ZONES)).isEqualTo(12);
  }
}
