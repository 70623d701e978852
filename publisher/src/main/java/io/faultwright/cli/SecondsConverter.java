package io.faultwright.cli;

import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number of seconds, at least one. */
final class SecondsConverter implements ITypeConverter<Duration> {
  @Override
  public Duration convert(String text) {
    if (!text.matches("[1-9]\\d{0,6}")) {
      throw new TypeConversionException("`" + text + "` is not a whole number of seconds");
    }
    return Duration.ofSeconds(Long.parseLong(text));
  }
}
