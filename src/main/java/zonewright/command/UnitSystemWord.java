package zonewright.command;

import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import zonewright.units.UnitSystem;

/** Reads {@code us} and {@code si}. */
final class UnitSystemWord implements ITypeConverter<UnitSystem> {
  @Override
  public UnitSystem convert(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "us" -> UnitSystem.US;
      case "si", "metric" -> UnitSystem.SI;
      default ->
          throw new TypeConversionException(
              "“%s” is no system of units here; write us or si".formatted(word));
    };
  }
}
