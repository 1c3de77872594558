package zonewright.desk.weather;

import java.awt.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import zonewright.climate.Climate;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Pictogram;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.HottestWeeksDrawing;
import zonewright.desk.picture.NeedCalendarDrawing;
import zonewright.desk.picture.PictureView;
import zonewright.desk.picture.YearBandDrawing;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.weather.YearPatterns;
import zonewright.weather.YearsOfWeather;

/**
 * Pictures of the days of a weather file. They are made from the file as it was read, for a design
 * keeps what its months come to and not the days.
 */
public final class WeatherPictures {
  private final Unit unit;
  private final JDialog dialog;

  /**
   * Prepares.
   *
   * @param exported is given a drawing and its view to export
   */
  WeatherPictures(
      Window owner,
      UnitSystem system,
      YearsOfWeather years,
      BiConsumer<Drawing, PictureView> exported) {
    unit = Climate.REFERENCE_ET.kind().unit(system);
    dialog = new JDialog(owner, "Pictures of the weather", JDialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("weather pictures");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    List<Drawing> drawings = drawings(years);
    PictureView view = new PictureView();
    view.show(drawings.get(0));
    JComboBox<String> choice =
        new JComboBox<>(drawings.stream().map(Drawing::title).toArray(String[]::new));
    choice.setName("weather picture");
    choice.getAccessibleContext().setAccessibleName("Picture");
    choice.addActionListener(event -> view.show(drawings.get(choice.getSelectedIndex())));
    JButton export = new JButton("Export", Pictogram.EXPORT);
    export.setName("export weather picture");
    export.addActionListener(event -> exported.accept(view.drawing(), view));
    JButton close = new JButton("Close");
    close.addActionListener(event -> dialog.dispose());
    JPanel page = new JPanel(new MigLayout("insets 14, fill, wrap 3", "[]push[][]", "[][grow]"));
    page.add(choice);
    page.add(export);
    page.add(close);
    page.add(view, "grow, push, span 3");
    dialog.add(page);
    DialogSize.set(dialog, 860, 560);
    dialog.setLocationRelativeTo(owner);
  }

  private double shown(double millimetres) {
    return Units.MILLIMETRE.convert(millimetres, unit);
  }

  private List<Double> shown(List<Double> millimetres) {
    return millimetres.stream().map(this::shown).toList();
  }

  private List<Drawing> drawings(YearsOfWeather years) {
    List<Drawing> all = new ArrayList<>();
    String band = "Reference ET: the driest, middle and wettest year";
    all.add(
        YearPatterns.band(years)
            .map(found -> band(band, found))
            .orElseGet(() -> Drawing.saying(band, "No year has every month.")));
    String weeks = "The hottest week of each year";
    List<YearPatterns.Week> hottest = YearPatterns.hottestWeeks(years.record());
    all.add(
        hottest.isEmpty()
            ? Drawing.saying(weeks, "Nowhere are seven days in a row known.")
            : new HottestWeeksDrawing(
                weeks,
                unit.symbol(),
                hottest.stream()
                    .map(week -> new HottestWeeksDrawing.Week(week.first(), shown(week.depth())))
                    .toList()));
    all.add(
        new NeedCalendarDrawing(
            "Reference ET of each day, mean of the years",
            unit.symbol() + " a day",
            Arrays.stream(YearPatterns.usualDays(years.record()))
                .map(month -> shown(Arrays.stream(month).boxed().toList()))
                .toList()));
    return all;
  }

  private Drawing band(String title, YearPatterns.Band band) {
    return new YearBandDrawing(
        title,
        unit.symbol(),
        List.of(
            new YearBandDrawing.Line(
                "driest " + band.driest().year(), shown(band.driest().months())),
            new YearBandDrawing.Line(
                "middle " + band.middle().year(), shown(band.middle().months())),
            new YearBandDrawing.Line(
                "wettest " + band.wettest().year(), shown(band.wettest().months()))),
        shown(band.lowest()),
        shown(band.highest()));
  }

  /** Shows them. */
  void open() {
    dialog.setVisible(true);
  }
}
