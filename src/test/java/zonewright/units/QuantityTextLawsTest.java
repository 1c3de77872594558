package zonewright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of typed numbers. */
class QuantityTextLawsTest {
  @Provide
  Arbitrary<Double> upToTwelveDigits() {
    return Combinators.combine(
            Arbitraries.longs().between(-999_999_999_999L, 999_999_999_999L),
            Arbitraries.integers().between(0, 12))
        .as((digits, scale) -> new BigDecimal(BigInteger.valueOf(digits), scale).doubleValue());
  }

  @Provide
  Arbitrary<Double> anyNumber() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-1e6, 1e6).ofScale(12),
        Arbitraries.longs()
            .map(Double::longBitsToDouble)
            .filter(value -> Math.abs(value) < 1e250 && Math.abs(value) > 1e-250),
        upToTwelveDigits());
  }

  @Property
  void whatIsWrittenAsTypedReadsBackExactly(
      @ForAll("anyNumber") double value, @ForAll QuantityKind kind, @ForAll UnitSystem system) {
    String typed = QuantityText.typed(value, kind);
    assertThat(QuantityText.read(typed, kind, system))
        .as(typed)
        .isEqualTo(new QuantityText.Read(value + 0.0));
  }

  @Property
  void convertedToTheOtherSystemAndBackIsTheNumberTyped(
      @ForAll("upToTwelveDigits") double typed, @ForAll QuantityKind kind) {
    double value = plausible(typed, kind);
    for (UnitSystem system : UnitSystem.values()) {
      Unit own = kind.unit(system);
      Unit other = kind.unit(system == UnitSystem.US ? UnitSystem.SI : UnitSystem.US);
      assertThat(other.convert(own.convert(value, other), own)).isEqualTo(value);
    }
  }

  /** A temperature has its zero moved, so only so many decimals can come back. */
  private static double plausible(double value, QuantityKind kind) {
    return kind == QuantityKind.TEMPERATURE ? Math.rint(value % 1000 * 1000) / 1000 : value;
  }

  @Property
  void switchingBackAndForthManyTimesLosesNothing(
      @ForAll("upToTwelveDigits") double typed, @ForAll QuantityKind kind) {
    double value = plausible(typed, kind);
    Unit us = kind.unit(UnitSystem.US);
    Unit si = kind.unit(UnitSystem.SI);
    double now = value;
    for (int i = 0; i < 20; i++) {
      now = si.convert(us.convert(now, si), us);
    }
    assertThat(now).isEqualTo(value);
  }

  @Property
  void everyTextIsReadOrRefusedWithASentence(
      @ForAll("cellTexts") String text, @ForAll QuantityKind kind, @ForAll UnitSystem system) {
    QuantityText.Reading reading = QuantityText.read(text, kind, system);
    if (reading instanceof QuantityText.Read read) {
      assertThat(read.value()).isFinite();
    } else {
      assertThat(((QuantityText.Unreadable) reading).sentence()).contains(text.strip());
    }
  }

  @Provide
  Arbitrary<String> cellTexts() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("0123456789.,'/- %eE+ftinmgpd\"\u00a0").ofMaxLength(14),
        Arbitraries.strings().ofMaxLength(10));
  }
}
