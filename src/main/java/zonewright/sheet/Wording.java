package zonewright.sheet;

import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/** Puts what cells hold into words, in one unit system; never changes, so any thread may ask it. */
public final class Wording {
  private final Schema schema;
  private final UnitSystem system;

  Wording(Schema schema, UnitSystem system) {
    this.schema = schema;
    this.system = system;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Wording that && system == that.system && schema.equals(that.schema);
  }

  @Override
  public int hashCode() {
    return system.hashCode();
  }

  /** Returns the unit system it speaks in. */
  public UnitSystem system() {
    return system;
  }

  /** Returns what a cell holds, with its unit; of one without a number, the reason. */
  public String shown(Reference column, Outcome outcome) {
    return outcome.read(
        new Outcome.Cases<>() {
          @Override
          public String amount(double value) {
            return Wording.this.amount(schema.column(column), value);
          }

          @Override
          public String words(String text) {
            return text;
          }

          @Override
          public String blank() {
            return "blank";
          }

          @Override
          public String missing(Outcome.Missing missing) {
            return missing.sentence();
          }

          @Override
          public String refused(Outcome.Refused refused) {
            return refused.sentence();
          }

          @Override
          public String notApplicable(Outcome.NotApplicable not) {
            return not.shown();
          }
        });
  }

  /** Returns a number of a column with its unit and enough digits to follow a sum. */
  String amount(Column column, double value) {
    return column
        .wordsFor(value)
        .orElseGet(() -> amount(column.kind(), value, column.decimals(system, value)));
  }

  /** Returns a number of a column as it was typed, with its unit. */
  String typed(Column column, double value) {
    int usual = column.decimals(system, value);
    return column
        .wordsFor(value)
        .orElseGet(
            () -> amount(column.kind(), value, QuantityText.decimals(value, column.kind(), usual)));
  }

  /** Returns a number of a column exactly, as a person would type it with its unit. */
  public String exactly(Column column, double value) {
    QuantityKind kind = column.kind();
    String number = QuantityText.typed(value, kind);
    String symbol = kind.percent() || kind.onCalendar() ? "" : kind.unit(system).symbol();
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  /** Returns a number of a kind with its unit. */
  String amount(QuantityKind kind, double value) {
    return amount(kind, value, kind.decimals(system));
  }

  private String amount(QuantityKind kind, double value, int decimals) {
    if (kind.percent()) {
      return QuantityText.readable(value * 100, decimals) + " %";
    }
    if (kind.onCalendar()) {
      return QuantityText.shown(value, kind, decimals);
    }
    String symbol = kind.unit(system).symbol();
    String number =
        kind == QuantityKind.MONEY
            ? QuantityText.shown(value, kind, decimals)
            : QuantityText.readable(value, decimals);
    if (kind == QuantityKind.DAYS && number.equals("1")) {
      return "1 day";
    }
    return symbol.isEmpty() ? number : number + " " + symbol;
  }
}
