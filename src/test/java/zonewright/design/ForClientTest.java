package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import zonewright.formula.Dependencies;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;

/** The lists of what goes to a client hold together. */
class ForClientTest {
  @Test
  void sheetsForAClientAskForNoSheetOfTheOffice() {
    for (String id : ForClient.SHEETS) {
      TableDefinition table = IrrigationSheets.schema().table(id);
      for (Column column : table.columns()) {
        column.formula().ifPresent(formula -> inside(column.toString(), Dependencies.of(formula)));
        column
            .words()
            .ifPresent(
                list -> {
                  if (list instanceof WordList.RowsOf rows) {
                    assertThat(ForClient.SHEETS).as("%s", column).contains(rows.table());
                  }
                });
      }
    }
    for (Rule rule : IrrigationSheets.rules()) {
      if (ForClient.SHEETS.contains(rule.table())) {
        inside(rule.id(), Dependencies.of(rule.when()));
      }
    }
  }

  private static void inside(String asking, Dependencies needs) {
    Set<Reference> all = new LinkedHashSet<>(needs.cells());
    all.addAll(needs.columns());
    assertThat(all).as(asking).allMatch(need -> ForClient.SHEETS.contains(need.table()));
  }
}
