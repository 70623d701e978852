package io.faultwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * How many values each threshold asks for.
 *
 * @param count two or three
 */
record BoundaryValues(int count) {
  static final BoundaryValues TWO = new BoundaryValues(2);

  boolean three() {
    return count == 3;
  }

  /** Reads 2 or 3. */
  static final class Converter implements ITypeConverter<BoundaryValues> {
    @Override
    public BoundaryValues convert(String text) {
      if (!text.matches("[23]")) {
        throw new TypeConversionException("`" + text + "` is neither 2 nor 3");
      }
      return new BoundaryValues(Integer.parseInt(text));
    }
  }
}
