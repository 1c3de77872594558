package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.desk.sheets.SheetGroup;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/** A sheet in no group could not be reached. */
class SheetGroupTest {
  @Test
  void everySheetStandsInOneGroup() {
    var sheets = Demo.libraryGarden(UnitSystem.US).book().schema().tables();
    assertThat(Arrays.stream(SheetGroup.values()).flatMap(group -> group.tables().stream()))
        .containsExactlyInAnyOrderElementsOf(sheets.stream().map(TableDefinition::id).toList());
  }

  @Test
  void aTitleOfTwoWordsIsReadAsTwo() {
    TableDefinition nights = Demo.libraryGarden(UnitSystem.US).book().schema().table("zone-nights");
    assertThat(SheetGroup.caption(nights)).isEqualTo("Zone nights");
  }
}
