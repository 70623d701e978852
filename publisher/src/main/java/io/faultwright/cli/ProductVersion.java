package io.faultwright.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class ProductVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"faultwright " + number().orElse("(built from source)")};
  }

  /** The number alone; absent where there is no jar. */
  static Optional<String> number() {
    return Optional.ofNullable(ProductVersion.class.getPackage().getImplementationVersion());
  }
}
