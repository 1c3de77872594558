package zonewright.help;

import static zonewright.help.HelpPage.escaped;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import zonewright.audit.ReferenceCheck;
import zonewright.audit.ReferenceChecks;
import zonewright.climate.MonthlyWeather;
import zonewright.design.IrrigationSheets;
import zonewright.formula.ReferenceTable;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Pages of tables: the published values the program draws on, and the published values it is held
 * against.
 */
final class TablePages {
  static final String PUBLISHED = "tables.html";
  static final String CHECKS = "reference-checks.html";

  private TablePages() {}

  /** Returns the units that can be typed, by what they measure. */
  static String units() {
    Map<List<Unit>, List<String>> kinds = new LinkedHashMap<>();
    for (QuantityKind kind : QuantityKind.values()) {
      List<Unit> units = Units.all().stream().filter(kind::takes).toList();
      if (!units.isEmpty()) {
        kinds.computeIfAbsent(units, none -> new ArrayList<>()).add(kind.words());
      }
    }
    StringBuilder body = new StringBuilder("<table>\n<tr><th>Of</th><th>Units</th></tr>\n");
    kinds.forEach(
        (units, words) -> {
          body.append("<tr>");
          cell(body, "td", String.join(", ", words));
          cell(
              body,
              "td",
              units.stream()
                  .map(unit -> String.join(", ", Units.namesOf(unit)))
                  .collect(Collectors.joining("; ")));
          body.append("</tr>\n");
        });
    return body.append("</table>\n").toString();
  }

  static String published() {
    StringBuilder body = new StringBuilder();
    body.append(
        "<p>Values the program looks up, each row with its source and how far it was checked. “From memory” and “common practice”"
            + " mean what they say: check such a row before you rely on it.</p>\n");
    for (ReferenceTable table : IrrigationSheets.referenceTables()) {
      body.append("<h2 id=\"")
          .append(table.name())
          .append("\">")
          .append(table.name())
          .append("</h2>\n");
      body.append("<table>\n<tr>");
      table.headings().forEach(heading -> cell(body, "th", heading));
      body.append("</tr>\n");
      for (int row = 0; row < table.size(); row++) {
        body.append("<tr>");
        for (String heading : table.headings()) {
          cell(body, "td", table.text(row, heading));
        }
        body.append("</tr>\n");
      }
      body.append("</table>\n");
    }
    weatherPlaces(body);
    return body.toString();
  }

  private static void weatherPlaces(StringBuilder body) {
    body.append("<h2 id=\"WeatherPlaces\">Places worked out</h2>\n<p>")
        .append(
            "Of these places the monthly weather was read; taken into a design it goes to the sheet Weather, which works"
                + " reference ET out. A design holds no other of them.</p>\n<table>\n<tr>");
    for (String head : List.of("Place", "Region", "Latitude", "Longitude", "Reference ET")) {
      cell(body, "th", head);
    }
    body.append("</tr>\n");
    for (MonthlyWeather place : MonthlyWeather.places()) {
      body.append("<tr>");
      cell(body, "td", place.place());
      cell(body, "td", place.region());
      cell(body, "td", QuantityText.exact(place.latitude()));
      cell(body, "td", QuantityText.exact(place.longitude()));
      cell(body, "td", place.origin());
      body.append("</tr>\n");
    }
    body.append("</table>\n");
  }

  static String checks() {
    List<ReferenceCheck> checks = ReferenceChecks.all();
    StringBuilder body = new StringBuilder();
    body.append("<p>Published values, what the program gives for them, and what each is worth. ")
        .append(checks.size())
        .append(
            " checks; each is asked in US and in metric units when the program is built. A tolerance is half a unit of the last"
                + " printed digit unless the note says why not.</p>\n");
    String topic = "";
    for (ReferenceCheck check : checks) {
      if (!check.topic().equals(topic)) {
        body.append(topic.isEmpty() ? "" : "</table>\n");
        topic = check.topic();
        body.append("<h2>").append(escaped(topic)).append("</h2>\n<table>\n<tr>");
        for (String head :
            List.of("Example", "Column", "Expected", "Got", "Holds", "Status", "Source", "Note")) {
          cell(body, "th", head);
        }
        body.append("</tr>\n");
      }
      line(body, check, check.in(UnitSystem.US));
    }
    body.append("</table>\n");
    return body.toString();
  }

  private static void line(StringBuilder body, ReferenceCheck check, ReferenceCheck.Result result) {
    String unit = check.unit().symbol().isEmpty() ? "" : " " + check.unit().symbol();
    body.append("<tr>");
    cell(body, "td", check.example());
    cell(body, "td", check.asked().column().name());
    cell(
        body,
        "td",
        QuantityText.readable(check.expected(), 3)
            + " ± "
            + QuantityText.readable(check.tolerance(), 0)
            + unit);
    cell(body, "td", QuantityText.readable(result.got(), 4) + unit);
    cell(body, "td", result.holds() ? "yes" : "no");
    cell(body, "td", check.status());
    cell(body, "td", check.source());
    cell(body, "td", check.note());
    body.append("</tr>\n");
  }

  private static void cell(StringBuilder body, String tag, String text) {
    body.append('<')
        .append(tag)
        .append('>')
        .append(escaped(text))
        .append("</")
        .append(tag)
        .append('>');
  }
}
