package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.TableDefinition;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;

/** Laws that hold for every garden, whatever its plants, soils and emitters. */
class DesignLawsTest {
  /** Minutes that a station of the usual controller runs at most. */
  private static final double LONGEST_RUN = 240;

  private static final double LAST_BITS = 1e-9;

  /** What a person typed into one garden, by column; the same texts serve in both unit systems. */
  private record Garden(Map<Column, String> site, List<Map<Column, String>> zones) {
    static Garden of(long seed) {
      Random random = new Random(seed);
      Map<Column, String> site = new LinkedHashMap<>();
      site.put(Climate.PLACE, any(random, Climate.PLACES.keys()));
      site.put(SiteRules.DAYS_ALLOWED, Integer.toString(1 + random.nextInt(7)));
      if (random.nextBoolean()) {
        site.put(SiteRules.GROSS_METHOD, SiteRules.BY_EFFICIENCY);
      }
      List<Map<Column, String>> zones = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        zones.add(zone(random));
      }
      return new Garden(site, zones);
    }

    private static Map<Column, String> zone(Random random) {
      Map<Column, String> zone = new LinkedHashMap<>();
      zone.put(SiteBudget.ZONE_PROGRAM, random.nextBoolean() ? "A" : "B");
      zone.put(
          Emitters.AREA, (50 + random.nextInt(5000)) + (random.nextBoolean() ? " ft2" : " m2"));
      zone.put(Plants.PLANT, any(random, Plants.TYPES.keys()));
      zone.put(Emitters.EMITTER, any(random, Emitters.KINDS.keys()));
      zone.put(Emitters.EMITTER_COUNT, Integer.toString(1 + random.nextInt(40)));
      zone.put(
          Emitters.EMITTER_FLOW,
          (1 + random.nextInt(400)) / 100.0 + (random.nextBoolean() ? " gpm" : " L/min"));
      zone.put(Soils.SOIL_TYPE, any(random, Soils.TEXTURES.keys()));
      zone.put(Soils.SLOPE, Integer.toString(random.nextInt(30)));
      if (random.nextInt(3) == 0) {
        zone.put(Emitters.DISTRIBUTION_UNIFORMITY, (30 + random.nextInt(71)) + " %");
      }
      if (random.nextInt(4) == 0) {
        zone.put(
            Plants.ROOT_DEPTH, (1 + random.nextInt(40)) + (random.nextBoolean() ? " in" : " cm"));
      }
      if (random.nextInt(4) == 0) {
        zone.put(Emitters.HEAD_SPACING, (5 + random.nextInt(40)) + " ft");
        zone.put(Emitters.ROW_SPACING, (5 + random.nextInt(40)) + " ft");
        zone.put(Emitters.RATE_METHOD, Emitters.BY_SPACING);
      }
      return zone;
    }

    private static String any(Random random, List<String> words) {
      return words.get(random.nextInt(words.size()));
    }

    Design design(UnitSystem system) {
      Design design = Design.blank(system);
      Edits edits = design.edits();
      design.book().perform(edits.inserted(Sheets.ZONES, 0, zones.size()));
      site.forEach((column, text) -> type(design, column, 0, text));
      for (int row = 0; row < zones.size(); row++) {
        int at = row;
        zones.get(row).forEach((column, text) -> type(design, column, at, text));
      }
      return design;
    }
  }

  private static void type(Design design, Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
  }

  private static double number(Design design, Column column, int row) {
    return design.book().number(column.reference(), row);
  }

  /** Not less, where both are numbers; a cell without one must have stayed or become so. */
  private static void neverMore(Design design, Column column, int row, double before) {
    double after = number(design, column, row);
    if (!Double.isNaN(before) && !Double.isNaN(after)) {
      assertThat(after).as(column.name()).isLessThanOrEqualTo(before * (1 + LAST_BITS));
    }
  }

  @Property(tries = 60)
  void evenerWaterNeverNeedsMoreOfIt(@ForAll long seed) {
    Design design = Garden.of(seed).design(UnitSystem.US);
    List<Column> water =
        List.of(
            Demand.GROSS_DEMAND,
            Demand.RUN_TIME_PER_WEEK,
            Demand.RUN_TIME,
            ZoneBudget.VOLUME_PER_WEEK);
    for (int row = 0; row < 3; row++) {
      for (int percent = 40; percent < 100; percent += 20) {
        type(design, Emitters.DISTRIBUTION_UNIFORMITY, row, percent + " %");
        int at = row;
        List<Double> before = water.stream().map(column -> number(design, column, at)).toList();
        type(design, Emitters.DISTRIBUTION_UNIFORMITY, row, (percent + 20) + " %");
        for (int i = 0; i < water.size(); i++) {
          neverMore(design, water.get(i), row, before.get(i));
        }
      }
    }
  }

  @Property(tries = 60)
  void thirstierPlantsNeverGetLessInAWeek(@ForAll long seed) {
    Design design = Garden.of(seed).design(UnitSystem.SI);
    for (int row = 0; row < 3; row++) {
      type(design, Plants.PLANT_FACTOR, row, "0.8");
      double demand = number(design, Demand.NET_DEMAND, row);
      double minutes = number(design, Demand.RUN_TIME_PER_WEEK, row);
      double days = number(design, Demand.DAYS_NEEDED, row);
      type(design, Plants.PLANT_FACTOR, row, "0.5");
      neverMore(design, Demand.NET_DEMAND, row, demand);
      neverMore(design, Demand.RUN_TIME_PER_WEEK, row, minutes);
      neverMore(design, Demand.DAYS_NEEDED, row, days);
    }
  }

  @Property(tries = 200)
  void cyclesGiveTheWholeRunAndNeverRunOff(@ForAll long seed) {
    Design design = Garden.of(seed).design(seed % 2 == 0 ? UnitSystem.US : UnitSystem.SI);
    for (int row = 0; row < 3; row++) {
      double run = number(design, Demand.RUN_TIME, row);
      double cycles = number(design, CycleAndSoak.CYCLES, row);
      double minutes = number(design, CycleAndSoak.CYCLE_MINUTES, row);
      double longest = number(design, CycleAndSoak.LONGEST_CYCLE, row);
      double soak = number(design, CycleAndSoak.SOAK, row);
      double rate = number(design, Emitters.WETTED_RATE, row);
      double intake = number(design, Soils.INTAKE_RATE, row);
      double storage = number(design, Soils.SURFACE_STORAGE, row);
      if (Double.isNaN(cycles)) {
        assertThat(rate).isGreaterThan(intake);
        continue;
      }
      assertThat(cycles * minutes).isGreaterThanOrEqualTo(run);
      assertThat(cycles * (minutes - 1)).isLessThan(run);
      assertThat(minutes).isLessThanOrEqualTo(LONGEST_RUN);
      if (Double.isNaN(longest)) {
        assertThat(rate).isLessThanOrEqualTo(intake * (1 + LAST_BITS));
        assertThat(cycles).isEqualTo(Math.max(1, Math.ceil(run / LONGEST_RUN)));
      } else {
        assertThat(minutes).isLessThanOrEqualTo(longest);
        double standing = (rate - intake) * minutes / 60;
        assertThat(standing).isLessThanOrEqualTo(storage * (1 + LAST_BITS));
        if (cycles > 1) {
          assertThat(intake * soak / 60).isGreaterThanOrEqualTo(standing * (1 - LAST_BITS));
          assertThat(intake * (soak - 1) / 60).isLessThan(standing);
        }
      }
    }
  }

  @Property(tries = 60)
  void wateringDaysKeepToTheRulesAndCarryTheWholeWeek(@ForAll long seed) {
    Design design = Garden.of(seed).design(UnitSystem.US);
    double allowed = number(design, SiteRules.DAYS_ALLOWED, 0);
    for (int row = 0; row < 3; row++) {
      double days = number(design, Demand.WATERING_DAYS, row);
      assertThat(days).isBetween(1.0, allowed);
      double run = number(design, Demand.RUN_TIME, row);
      double week = number(design, Demand.RUN_TIME_PER_WEEK, row);
      if (!Double.isNaN(run)) {
        assertThat(run * days).isGreaterThanOrEqualTo(week - LAST_BITS * days);
        assertThat((run - 1) * days).isLessThan(week);
      }
    }
  }

  @Property(tries = 60)
  void theSameGardenTypedInEitherSystemIsTheSameGarden(@ForAll long seed) {
    Garden garden = Garden.of(seed);
    Design us = garden.design(UnitSystem.US);
    Design si = garden.design(UnitSystem.SI);
    alike(us.book(), si.book());
    us.book().perform(us.edits().switched(UnitSystem.SI));
    alike(us.book(), si.book());
  }

  private static void alike(Book first, Book second) {
    for (TableDefinition table : first.schema().tables()) {
      for (Column column : table.columns()) {
        for (int row = 0; row < first.rows(table.id()); row++) {
          double one = first.number(column.reference(), row);
          double other = second.number(column.reference(), row);
          alike(column, first, one, second, other);
        }
      }
    }
  }

  private static void alike(Column column, Book first, double one, Book second, double other) {
    QuantityKind kind = column.kind();
    double brought = kind.unit(first.system()).convert(one, kind.unit(second.system()));
    boolean whole =
        one == Math.rint(one) && kind.unit(UnitSystem.US).equals(kind.unit(UnitSystem.SI));
    if (Double.isNaN(one) || Double.isNaN(other) || (whole && other == Math.rint(other))) {
      assertThat(Double.valueOf(other)).as(column.name()).isEqualTo(Double.valueOf(one));
    } else {
      assertThat(other).as(column.name()).isCloseTo(brought, offset(LAST_BITS * Math.abs(brought)));
    }
  }

  @Property(tries = 40)
  void programsMonthsAndSharesAddUpToTheSite(@ForAll long seed) {
    Design design = Garden.of(seed).design(UnitSystem.US);
    double week = number(design, SiteBudget.SITE_WEEK, 0);
    if (Double.isNaN(week)) {
      return;
    }
    double programs = 0;
    for (int row = 0; row < design.book().rows(Sheets.PROGRAMS); row++) {
      programs += number(design, SiteBudget.PROGRAM_WEEK, row);
    }
    double shares = 0;
    for (int row = 0; row < 3; row++) {
      shares += number(design, ZoneBudget.SHARE, row);
    }
    double months = 0;
    double greatest = 0;
    for (int month = 0; month < 12; month++) {
      months += number(design, SiteBudget.MONTH_VOLUME, month);
      greatest = Math.max(greatest, number(design, SiteBudget.PERCENT, month));
    }
    assertThat(programs).isCloseTo(week, offset(LAST_BITS * week));
    assertThat(shares).isCloseTo(1, offset(LAST_BITS));
    assertThat(greatest).isCloseTo(1, offset(LAST_BITS));
    double year = number(design, SiteBudget.SITE_YEAR, 0);
    assertThat(months).isCloseTo(year, offset(LAST_BITS * year));
  }
}
