package io.faultwright.cli;

import java.net.URI;
import java.net.URISyntaxException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** An address on the web below which pages stand; it ends with a slash. */
final class PagesConverter implements ITypeConverter<String> {
  @Override
  public String convert(String written) {
    try {
      URI address = new URI(written);
      boolean web = "https".equals(address.getScheme()) || "http".equals(address.getScheme());
      if (web && address.getHost() != null) {
        return written.endsWith("/") ? written : written + "/";
      }
    } catch (URISyntaxException notOne) {
      // said below
    }
    throw new TypeConversionException("`" + written + "` is not a web address");
  }
}
