package zonewright.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import zonewright.units.DecimalSign;

/** The sign before decimals, as a person names it on the command line. */
final class DecimalWord implements ITypeConverter<DecimalSign> {
  @Override
  public DecimalSign convert(String word) {
    return DecimalSign.named(word)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "“%s” is no decimal sign; write comma or point".formatted(word)));
  }
}
