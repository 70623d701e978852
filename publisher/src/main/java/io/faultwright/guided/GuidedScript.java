package io.faultwright.guided;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** The script of the page: small files, one after the other. */
public final class GuidedScript {
  private static final List<String> FILES =
      List.of(
          "judge/number",
          "judge/curves",
          "judge/limits",
          "judge/forms",
          "judge/observed",
          "judge/standing",
          "judge/asking",
          "judge/judge",
          "judge/displays",
          "view/say",
          "view/load",
          "view/make",
          "view/store",
          "view/address",
          "view/figure",
          "view/machine",
          "view/job",
          "view/quantity",
          "view/remedy",
          "view/so-far",
          "view/hand-over",
          "view/display-panel",
          "view/start-screen",
          "view/machine-screen",
          "view/step-screen",
          "view/outcome-screen",
          "view/trouble-screen",
          "view/hand-over-screen",
          "view/page",
          "view/main");

  private GuidedScript() {}

  /** The same for every handbook. */
  public static String text() {
    return FILES.stream().map(GuidedScript::read).collect(Collectors.joining());
  }

  private static String read(String name) {
    try (InputStream in = GuidedScript.class.getResourceAsStream(name + ".js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
