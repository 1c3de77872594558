package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.WaterSense;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.InputRange;

/**
 * An invented design some of whose inputs are ranges, and the same design with other numbers typed
 * into those cells the way a person would, for whoever holds spans to it.
 */
final class RangedGarden {
  private final Design design;
  private final List<InputRange> uncertain;

  private RangedGarden(Design design, List<InputRange> uncertain) {
    this.design = design;
    this.uncertain = uncertain;
  }

  /**
   * Returns a design by chance.
   *
   * @param inputs how many inputs are uncertain
   */
  static RangedGarden of(long seed, int zones, int inputs) {
    Random random = new Random(seed);
    Design design = Design.blank(UnitSystem.US);
    type(design, Climate.PLACE, 0, "CIMIS zone " + (1 + random.nextInt(18)));
    type(design, Ordinance.APPLIES, 0, Ordinance.YES);
    type(
        design,
        WaterSense.APPLIES,
        0,
        WaterSense.APPLIES.words().orElseThrow().constant().orElseThrow().get(1));
    type(design, LocalRule.SHARE, 0, "60 %");
    type(design, Rain.METHOD, 0, random.nextBoolean() ? Rain.NONE : Rain.SHARE);
    for (int month = 0; month < 12; month++) {
      type(design, Rain.MONTH_RAIN, month, Double.toString(month % 6 / 4.0));
    }
    design.book().start(design.edits().inserted(Sheets.ZONES, 0, zones));
    for (int zone = 0; zone < zones; zone++) {
      zone(design, zone, random);
    }
    List<InputRange> all = new ArrayList<>(InputRange.all());
    Collections.shuffle(all, random);
    RangedGarden garden = new RangedGarden(design, all.subList(0, inputs));
    garden.closeAll();
    garden.uncertain.forEach(range -> garden.open(range, random));
    return garden;
  }

  private static void zone(Design design, int zone, Random random) {
    int heads = 8 + random.nextInt(60);
    type(design, Emitters.AREA, zone, Integer.toString(heads * (50 + random.nextInt(30))));
    type(design, Plants.PLANT, zone, any(random, Plants.TYPES.keys()));
    type(design, Emitters.EMITTER, zone, any(random, Emitters.KINDS.keys()));
    type(design, Emitters.EMITTER_COUNT, zone, Integer.toString(heads));
    type(design, Emitters.EMITTER_FLOW, zone, Double.toString((20 + random.nextInt(110)) / 100.0));
    type(design, Soils.SOIL_TYPE, zone, any(random, Soils.TEXTURES.keys()));
    type(design, Soils.SLOPE, zone, random.nextInt(20) + " %");
    if (random.nextInt(4) == 0) {
      type(design, Emitters.HEAD_SPACING, zone, Integer.toString(8 + random.nextInt(10)));
      type(design, Emitters.ROW_SPACING, zone, Integer.toString(8 + random.nextInt(10)));
      type(design, Emitters.RATE_METHOD, zone, Emitters.BY_SPACING);
    }
  }

  private static String any(Random random, List<String> words) {
    return words.get(random.nextInt(words.size()));
  }

  static void type(Design design, Column column, int row, String text) {
    design.book().start(design.edits().typed(column.reference(), row, text));
  }

  /** Types every input over its published range, so that only the ranges typed here count. */
  private void closeAll() {
    Book book = design.book();
    for (InputRange range : InputRange.OF_ZONES) {
      for (int zone = 0; zone < book.rows(Sheets.ZONES); zone++) {
        double held = book.number(range.input().reference(), zone);
        boolean rate = range.input().equals(Emitters.PRECIPITATION_RATE);
        boolean flow = range.input().equals(Emitters.ZONE_FLOW);
        if (!Double.isNaN(held) && !rate && !flow) {
          book.start(design.edits().set(range.input().reference(), zone, new Entry.Figure(held)));
        }
      }
    }
  }

  private void open(InputRange range, Random random) {
    Book book = design.book();
    for (int row = 0; row < (range.ofSite() ? 1 : book.rows(Sheets.ZONES)); row++) {
      double held = range.ofSite() ? 1 : book.number(range.input().reference(), row);
      double high = range.input().bounds().orElseThrow().high(range.input().kind(), book.system());
      double most =
          range.ofSite() ? held * 1.3 : Math.min(high, held * (1 + random.nextDouble() / 2));
      if (!Double.isNaN(held)) {
        double least = held * (0.5 + random.nextDouble() / 2);
        book.start(design.edits().set(range.least().reference(), row, new Entry.Figure(least)));
        book.start(design.edits().set(range.greatest().reference(), row, new Entry.Figure(most)));
      }
    }
  }

  Design design() {
    return design;
  }

  List<InputRange> uncertain() {
    return uncertain;
  }

  /** Where in its range an input is: 0 at the least, 1 at the greatest. */
  interface Part {
    double of(int input, int row);
  }

  /** Returns the design with a number of each range typed into its cell. */
  Book with(Part part) {
    Book known = design.book();
    Design other = Design.of(known.snapshot());
    List<Edit> edits = new ArrayList<>();
    for (int input = 0; input < uncertain.size(); input++) {
      InputRange range = uncertain.get(input);
      for (int row = 0; row < (range.ofSite() ? 1 : known.rows(Sheets.ZONES)); row++) {
        double least = known.number(range.least().reference(), row);
        double most = known.number(range.greatest().reference(), row);
        double number = least + part.of(input, row) * (most - least);
        if (Double.isNaN(number)) {
          continue;
        }
        if (range.ofSite()) {
          for (int month = 0; month < 12; month++) {
            double there = known.number(range.input().reference(), month);
            edits.add(
                other
                    .edits()
                    .set(range.input().reference(), month, new Entry.Figure(there * number)));
          }
        } else {
          edits.add(other.edits().set(range.input().reference(), row, new Entry.Figure(number)));
        }
      }
    }
    other.book().start(new Edit.Several("another", edits));
    return other.book();
  }
}
