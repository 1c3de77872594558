package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.alternatives.AlternativeEdits;
import zonewright.alternatives.Alternatives;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Rows of one's own and alternatives are in the file like all else, and come back from it. */
class OwnTablesFileTest {
  @TempDir Path folder;

  /** A design with a plant, an emitter and a soil of one's own in use, and an alternative. */
  static Design withSome() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    addOwn(design);
    design.book().perform(new AlternativeEdits(new Alternatives(design.book())).copied("Smaller"));
    type(design, Emitters.AREA, 2, "=20*30");
    design.book().perform(design.edits().removed(Sheets.ZONES, 3, 1));
    return design;
  }

  /** Adds a plant, an emitter and a soil of one's own, each chosen in a zone. */
  static void addOwn(Design design) {
    add(design, Sheets.OWN_PLANTS, "Meadow mix", "cool-season turf", "0.55", "14 in", "", "seed");
    add(design, Sheets.OWN_EMITTERS, "Seep hose", "drip line", "75 %", "", "12 psi", "");
    add(design, Sheets.OWN_SOILS, "Terrace fill", "loam", "1.1 in/h", "0.1 in", "", "lab");
    type(design, Plants.PLANT, 0, "Meadow mix");
    type(design, Emitters.EMITTER, 5, "Seep hose");
    type(design, Soils.SOIL_TYPE, 11, "Terrace fill");
  }

  private static void add(Design design, String table, String... texts) {
    int row = design.book().rows(table);
    design.book().perform(design.edits().inserted(table, row, 1));
    List<Column> columns = design.book().declared().table(table).columns();
    for (int i = 0; i < texts.length; i++) {
      type(design, columns.get(i), row, texts[i]);
    }
  }

  private static void type(Design design, Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
  }

  @Test
  void theDesignIsTheSameWhenOpenedAndSavedAgain() throws Exception {
    Design design = withSome();
    Path file = folder.resolve("own.xlsx");
    DesignFile.write(design, file);
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(opened.report().notes()).isEmpty();
    assertThat(opened.design().book().snapshot().sameEntries(design.book().snapshot())).isTrue();
    assertThat(opened.design().book().number(Plants.PLANT_FACTOR.reference(), 0)).isEqualTo(0.55);
    Path again = folder.resolve("again.xlsx");
    DesignFile.save(opened.design(), again, Optional.of(opened.kept()));
    DesignFile.Opened twice = DesignFile.read(again);
    assertThat(twice.report().notes()).isEmpty();
    assertThat(twice.design().book().snapshot().sameEntries(design.book().snapshot())).isTrue();
    Design back = twice.design();
    back.book()
        .perform(new AlternativeEdits(new Alternatives(back.book())).worked(Optional.empty()));
    assertThat(back.book().rows(Sheets.ZONES)).isEqualTo(12);
  }

  @Test
  void theTableInTheFileFollowsWhatIsChangedAndTakenAway() throws Exception {
    Path file = folder.resolve("own.xlsx");
    DesignFile.write(withSome(), file);
    assertThat(plants(file)).contains("Meadow mix");
    DesignFile.Opened opened = DesignFile.read(file);
    Design design = opened.design();
    design.book().perform(design.edits().removed(Sheets.OWN_PLANTS, 0, 1));
    add(design, Sheets.OWN_PLANTS, "Steppe", "desert plants", "0.15");
    DesignFile.save(design, file, Optional.of(opened.kept()));
    assertThat(plants(file)).contains("Steppe").doesNotContain("Meadow mix");
    assertThat(DesignFile.read(file).report().notes()).isEmpty();
  }

  private static List<String> plants(Path file) throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      java.util.ArrayList<String> keys = new java.util.ArrayList<>();
      for (Row row : workbook.getSheet("Plants")) {
        Cell key = row.getCell(0);
        keys.add(key == null ? "" : key.toString());
      }
      return keys;
    }
  }
}
