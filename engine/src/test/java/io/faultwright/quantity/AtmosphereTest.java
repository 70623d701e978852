package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {
  private static double bar(double metres) {
    return Atmosphere.overAltitude().at(BigFraction.from(metres)).orElseThrow().doubleValue();
  }

  /** Standard atmosphere, ISO 2533; kPa. */
  @ParameterizedTest
  @CsvSource({
    "0, 101.325",
    "500, 95.461",
    "1000, 89.875",
    "1500, 84.556",
    "2000, 79.495",
    "3000, 70.109"
  })
  void standardAtmosphere(double metres, double kilopascal) {
    assertEquals(kilopascal, bar(metres) * 100, 0.0005);
  }

  @Test
  void theChordsKeepToTheEquation() {
    IntStream.range(0, 20_000)
        .mapToDouble(i -> i / 4.0)
        .forEach(h -> assertEquals(1, bar(h) / Atmosphere.bar(h), 2e-6));
  }

  @Test
  void itFallsFromSeaLevel() {
    assertFalse(Atmosphere.overAltitude().rising());
    assertEquals(
        Optional.of(Atmosphere.atSeaLevel()), Atmosphere.overAltitude().at(BigFraction.ZERO));
  }

  @Test
  void nothingIsSaidOfMinesAndOfHimalayanPeaks() {
    assertEquals(Optional.empty(), Atmosphere.overAltitude().at(BigFraction.of(-1)));
    assertEquals(Optional.empty(), Atmosphere.overAltitude().at(BigFraction.of(5001)));
  }
}
