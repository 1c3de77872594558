package zonewright.desk.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;
import zonewright.balance.WateringRule;
import zonewright.climate.Climate;
import zonewright.desk.part.SideWindow;
import zonewright.season.SeasonRules;
import zonewright.season.SeasonWeather;
import zonewright.season.SeasonZones;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;

/** What a person chooses of a season: what drives it, its months and years, and its weather. */
final class SeasonControls {
  private static final int MOST_PERCENT = 150;
  private static final String NOTHING = "nothing";

  private final JComboBox<SeasonRules> rule = new JComboBox<>();
  private final JComboBox<Object> beside = new JComboBox<>();
  private final JComboBox<String> first = new JComboBox<>();
  private final JComboBox<String> last = new JComboBox<>();
  private final JCheckBox sensor = new JCheckBox("Rain sensor");
  private final JSlider percent = new JSlider(0, MOST_PERCENT, 100);
  private final JLabel percentWords = new JLabel("100 %");
  private final JButton typical;
  private final JComboBox<Integer> year = new JComboBox<>();
  private final JPanel panel =
      new JPanel(new MigLayout("insets 8 12 6 12, gap 6, wrap 1", "[grow]"));
  private final Runnable changed;
  private boolean filling;

  /**
   * Makes the controls.
   *
   * @param changed told when a person chose something else
   * @param read asks for a weather file and follows it
   * @param months goes back to the months of the design
   * @param export exports the picture
   */
  SeasonControls(Runnable changed, Runnable read, Runnable months, Runnable export) {
    this.changed = changed;
    typical =
        button(
            "Typical year",
            "season typical",
            "Follow a year made from the months of the design",
            months);
    JPanel upper = new JPanel(new MigLayout("insets 0, gap 6"));
    named("Driven by", rule, "season rule", upper);
    named("beside", beside, "season beside", upper);
    named("Waters from", first, "season first month", upper);
    named("to", last, "season last month", upper);
    sensor.setName("season sensor");
    sensor.setToolTipText(
        "A rain sensor that 6 mm (0.24 in) of rain fill and that dries in 3 days");
    sensor.addActionListener(event -> changed.run());
    upper.add(sensor, "gapleft 10");
    JPanel lower = new JPanel(new MigLayout("insets 0, gap 6", "", "[]"));
    JLabel words = new JLabel("Percent times");
    words.setLabelFor(percent);
    lower.add(words);
    lower.add(percent, "w 260!");
    lower.add(percentWords, "w 46!");
    lower.add(button("Weather file …", "season weather", "Follow measured days of a file", read));
    lower.add(typical);
    named("Year", year, "season year", lower);
    lower.add(
        button("Export", "season export", "Export this picture as PNG or SVG", export),
        "push, right");
    panel.add(upper, "growx");
    panel.add(lower, "growx");
    fillMonths();
  }

  /** Returns them laid out. */
  JPanel panel() {
    return panel;
  }

  private static JButton button(String words, String name, String tip, Runnable action) {
    JButton button = SideWindow.button(words, tip, action);
    button.setName(name);
    return button;
  }

  private void named(String words, JComboBox<?> box, String name, JPanel into) {
    JLabel label = new JLabel(words);
    label.setLabelFor(box);
    box.setName(name);
    box.getAccessibleContext().setAccessibleName(words);
    box.addActionListener(event -> chosen());
    into.add(label, into.getComponentCount() == 0 ? "" : "gapleft 6");
    into.add(box);
  }

  private void chosen() {
    if (!filling) {
      changed.run();
    }
  }

  private void fillMonths() {
    filling = true;
    for (String month : Climate.MONTH_NAMES) {
      first.addItem(month);
      last.addItem(month);
    }
    last.setSelectedIndex(last.getItemCount() - 1);
    percent.setName("season percent");
    percent.getAccessibleContext().setAccessibleName("What all percents are multiplied with");
    percent.setToolTipText("What all percents of the rule are multiplied with");
    percent.addChangeListener(
        event -> {
          percentWords.setText(percent.getValue() + " %");
          chosen();
        });
    filling = false;
  }

  /** Offers the rules that the design has what it takes for. */
  void fillRules(Book book) {
    List<SeasonRules> fitting = new ArrayList<>();
    for (SeasonRules each : SeasonRules.values()) {
      boolean found = each != SeasonRules.FOUND || book.rows(Sheets.FOUND) > 0;
      if (found && each.setting(book).isPresent()) {
        fitting.add(each);
      }
    }
    filling = true;
    Object before = rule.getSelectedItem();
    Object besideBefore = beside.getSelectedItem();
    rule.removeAllItems();
    beside.removeAllItems();
    beside.addItem(NOTHING);
    for (SeasonRules each : fitting) {
      rule.addItem(each);
      beside.addItem(each);
    }
    rule.setSelectedItem(
        fitting.contains(before)
            ? before
            : fitting.contains(SeasonRules.DAILY) ? SeasonRules.DAILY : SeasonRules.FIXED);
    beside.setSelectedItem(fitting.contains(besideBefore) ? besideBefore : NOTHING);
    filling = false;
  }

  /** Offers the years of the weather that is followed. */
  void fillYears(Optional<SeasonWeather> weather, boolean measured) {
    List<Integer> years =
        weather
            .map(SeasonWeather::days)
            .map(
                days ->
                    IntStream.range(0, days.yearCount())
                        .map(at -> days.year(0) + at)
                        .boxed()
                        .toList())
            .orElse(List.of());
    List<Integer> shown =
        IntStream.range(0, year.getItemCount()).mapToObj(year::getItemAt).toList();
    if (!years.equals(shown)) {
      filling = true;
      year.removeAllItems();
      years.forEach(year::addItem);
      filling = false;
    }
    year.setEnabled(years.size() > 1);
    typical.setEnabled(measured);
  }

  /** Returns what drives the season. */
  SeasonRules rule() {
    return (SeasonRules) rule.getSelectedItem();
  }

  /** Returns what is held beside it, if anything. */
  Optional<SeasonRules> beside() {
    return beside.getSelectedItem() instanceof SeasonRules held
        ? Optional.of(held)
        : Optional.empty();
  }

  /** Returns the year shown, the first where none is chosen. */
  int year(SeasonChoice now) {
    return year.getSelectedItem() instanceof Integer chosen ? chosen : now.weather().days().year(0);
  }

  /** Returns what is chosen, of a rule and its setting. */
  SeasonChoice choice(
      SeasonRules which, WateringRule.Setting setting, SeasonZones zones, SeasonWeather days) {
    return new SeasonChoice(
        which,
        setting,
        zones,
        days,
        percent.getValue() / 100.0,
        first.getSelectedIndex(),
        last.getSelectedIndex(),
        sensor.isSelected());
  }
}
