package zonewright.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.pipes.FlowTest;
import zonewright.pipes.Laterals;
import zonewright.pipes.Losses;
import zonewright.pipes.Mains;
import zonewright.pipes.PipeLimits;
import zonewright.pipes.Supply;
import zonewright.pipes.Wiring;
import zonewright.sheet.Column;

/** Supply and pipes of the garden to look at: invented, like the garden. */
final class DemoPipes {
  /** Columns of the sheet Pipes that are typed, in the order of the texts of each zone. */
  static final List<Column> COLUMNS =
      List.of(
          Laterals.COUNT,
          Laterals.SIZE,
          Laterals.LENGTH,
          Laterals.RISE,
          Losses.VALVE,
          Losses.REGULATED,
          Mains.SIZE,
          Mains.LENGTH,
          Mains.RISE,
          Wiring.RUN,
          Wiring.WIRE_CHOSEN);

  static final String[][] ZONES = {
    {
      "4",
      "3/4 in",
      "62 ft",
      "1 ft",
      "1-1/2 in valve",
      "35 psi",
      "2 in",
      "85 ft",
      "1 ft",
      "120 ft",
      "18 AWG"
    },
    {
      "4",
      "3/4 in",
      "62 ft",
      "1 ft",
      "1-1/2 in valve",
      "35 psi",
      "2 in",
      "140 ft",
      "1 ft",
      "175 ft",
      "18 AWG"
    },
    {
      "2", "3/4 in", "90 ft", "9 ft", "1 in valve", "", "2 in", "210 ft", "4 ft", "260 ft", "18 AWG"
    },
    {
      "2",
      "1-1/4 in",
      "110 ft",
      "2 ft",
      "1-1/2 in valve",
      "",
      "1-1/4 in",
      "60 ft",
      "",
      "95 ft",
      "18 AWG"
    },
    {"2", "3/4 in", "48 ft", "", "1 in valve", "35 psi", "2 in", "40 ft", "", "70 ft", "18 AWG"},
    {
      "6",
      "",
      "60 ft",
      "1 ft",
      "3/4 in valve",
      "30 psi",
      "2 in",
      "150 ft",
      "2 ft",
      "190 ft",
      "18 AWG"
    },
    {
      "8", "", "80 ft", "3 ft", "1 in valve", "30 psi", "2 in", "240 ft", "5 ft", "290 ft", "18 AWG"
    },
    {"6", "", "70 ft", "", "3/4 in valve", "30 psi", "2 in", "310 ft", "2 ft", "370 ft", "18 AWG"},
    {
      "2",
      "3/4 in",
      "75 ft",
      "1 ft",
      "3/4 in valve",
      "30 psi",
      "2 in",
      "280 ft",
      "6 ft",
      "330 ft",
      "18 AWG"
    },
    {
      "2",
      "",
      "90 ft",
      "3 ft",
      "3/4 in valve",
      "30 psi",
      "2 in",
      "330 ft",
      "7 ft",
      "390 ft",
      "18 AWG"
    },
    {
      "3",
      "3/4 in",
      "95 ft",
      "-10 ft",
      "1 in valve",
      "",
      "2 in",
      "190 ft",
      "12 ft",
      "240 ft",
      "18 AWG"
    },
    {
      "1",
      "3/4 in",
      "40 ft",
      "",
      "3/4 in valve",
      "30 psi",
      "2 in",
      "170 ft",
      "14 ft",
      "1450 ft",
      "18 AWG"
    },
  };

  private DemoPipes() {}

  /** Returns what is typed on the sheet Supply. */
  static Map<Column, String> supply() {
    Map<Column, String> supply = new LinkedHashMap<>();
    supply.put(FlowTest.STATIC_PRESSURE, "68 psi");
    supply.put(FlowTest.BASIS, FlowTest.UPSTREAM);
    supply.put(FlowTest.FIRST_FLOW, "25 gpm");
    supply.put(FlowTest.FIRST_PRESSURE, "66 psi");
    supply.put(FlowTest.SECOND_FLOW, "60 gpm");
    supply.put(FlowTest.SECOND_PRESSURE, "58.5 psi");
    supply.put(Supply.WATER_METER, "1-1/2 in");
    supply.put(Supply.SERVICE_SIZE, "1-1/2 in");
    supply.put(Supply.SERVICE_LENGTH, "35 ft");
    supply.put(Supply.SERVICE_RISE, "2 ft");
    supply.put(Supply.BACKFLOW_DEVICE, "pressure vacuum breaker");
    supply.put(PipeLimits.USUAL_VALVE, "1 in valve");
    return supply;
  }
}
