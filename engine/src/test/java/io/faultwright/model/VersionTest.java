package io.faultwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class VersionTest {
  private static int compare(String one, String other) {
    return Integer.signum(new Version(one).compareTo(new Version(other)));
  }

  @Test
  void segmentsAreWholeNumbers() {
    assertEquals(-1, compare("2.9", "2.10"));
    assertEquals(-1, compare("2", "2.0"));
    assertEquals(1, compare("10", "9.9"));
    assertEquals(0, compare("2.09", "2.9"));
    assertEquals(0, compare("0.0", "00.000"));
    assertEquals(1, compare("99999999999999999999.1", "99999999999999999998.2"));
  }

  /** As the whole numbers of the JDK compare. */
  @Test
  void theOrderIsThatOfTheNumbers() {
    Random random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      String one = text(random);
      String other = text(random);
      int expected = Arrays.compare(numbers(one), numbers(other));
      assertEquals(Integer.signum(expected), compare(one, other), one + " and " + other);
      boolean equal = new Version(one).equals(new Version(other));
      assertEquals(expected == 0, equal);
      assertTrue(!equal || new Version(one).hashCode() == new Version(other).hashCode(), one);
    }
  }

  private static String text(Random random) {
    List<String> digits = List.of("0", "00", "1", "01", "2", "9", "10", "007", "12");
    return IntStream.rangeClosed(0, random.nextInt(3))
        .mapToObj(i -> digits.get(random.nextInt(digits.size())))
        .collect(Collectors.joining("."));
  }

  private static BigInteger[] numbers(String text) {
    return Arrays.stream(text.split("\\.")).map(BigInteger::new).toArray(BigInteger[]::new);
  }
}
