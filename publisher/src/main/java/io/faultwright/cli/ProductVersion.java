package io.faultwright.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class ProductVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    Optional<String> version =
        Optional.ofNullable(ProductVersion.class.getPackage().getImplementationVersion());
    return new String[] {"faultwright " + version.orElse("(built from source)")};
  }
}
