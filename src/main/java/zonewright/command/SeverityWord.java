package zonewright.command;

import java.util.Arrays;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import zonewright.sheet.Severity;

/** Reads the kinds of findings by the words a person sees. */
final class SeverityWord implements ITypeConverter<Severity> {
  @Override
  public Severity convert(String word) {
    return Arrays.stream(Severity.values())
        .filter(severity -> severity.word().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "“%s” is no kind of finding; write wrong, missing, check or note"
                        .formatted(word)));
  }
}
