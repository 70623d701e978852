package io.faultwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.words.Words;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimesTest {
  private static final Times TIMES = new Times(Words.ENGLISH);

  private static BigFraction tenths(int number) {
    return BigFraction.of(number, 10);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 s",
    "5, 0.5 s",
    "400, 40 s",
    "599, 59.9 s",
    "600, 1 min",
    "905, 1 min 30.5 s",
    "36000, 60 min",
    "71999, 119 min 59.9 s",
    "72000, 2 h",
    "90600, 2 h 31 min",
    "72010, 2 h 1 s"
  })
  void spansHaveTheUnitsThatTheyNeed(int tenths, String words) {
    assertEquals(words, TIMES.span(tenths(tenths)).replace('\u00A0', ' '));
  }

  @ParameterizedTest
  @CsvSource({"0, 0:00", "100, 0:10", "25, 0:02.5", "880, 1:28", "6000, 10:00", "60000, 100:00"})
  void momentsAreThoseOfAStopwatch(int tenths, String clock) {
    assertEquals(clock, TIMES.clock(tenths(tenths), BigFraction.of(6000)));
  }

  @ParameterizedTest
  @CsvSource({"0, 0:00:00", "880, 0:01:28", "36615, 1:01:01.5", "900000, 25:00:00"})
  void momentsOfALongCourseHaveHours(int tenths, String clock) {
    assertEquals(clock, TIMES.clock(tenths(tenths), BigFraction.of(6001)));
  }

  @Test
  void germanHasAComma() {
    assertEquals("0,5\u00A0s", new Times(Words.of("de")).span(tenths(5)));
    assertEquals("0:02,5", new Times(Words.of("de")).clock(tenths(25), tenths(30)));
  }
}
