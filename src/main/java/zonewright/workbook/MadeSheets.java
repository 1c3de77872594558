package zonewright.workbook;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The titles of the sheets that were handed over beside the design, kept as a property of the file:
 * so they are told from a person's own sheets, whatever those are called.
 */
final class MadeSheets {
  private static final String PROPERTY = "Zonewright sheets";

  /** No sheet's title may hold one. */
  private static final String BETWEEN = "/";

  private MadeSheets() {}

  /** Notes which sheets were made. */
  static void note(XSSFWorkbook workbook, List<XSSFSheet> made) {
    POIXMLProperties.CustomProperties properties = workbook.getProperties().getCustomProperties();
    String titles = made.stream().map(XSSFSheet::getSheetName).collect(Collectors.joining(BETWEEN));
    if (properties.contains(PROPERTY)) {
      properties.getProperty(PROPERTY).setLpwstr(titles);
    } else {
      properties.addProperty(PROPERTY, titles);
    }
  }

  /** Returns the titles noted in a file. */
  static Set<String> in(XSSFWorkbook workbook) {
    POIXMLProperties.CustomProperties properties = workbook.getProperties().getCustomProperties();
    String titles =
        properties.contains(PROPERTY) && properties.getProperty(PROPERTY).isSetLpwstr()
            ? properties.getProperty(PROPERTY).getLpwstr()
            : "";
    return new LinkedHashSet<>(List.of(titles.split(BETWEEN, -1)));
  }
}
