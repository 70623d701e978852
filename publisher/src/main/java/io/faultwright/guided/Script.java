package io.faultwright.guided;

import io.faultwright.json.Json;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Data as a script that does nothing but hand them over: a page that is opened from a folder may
 * load scripts and nothing else.
 */
final class Script {
  private Script() {}

  /** The call of a function of ours with these values, UTF-8. */
  static byte[] call(String function, Object... values) {
    String handed = Arrays.stream(values).map(Json::text).collect(Collectors.joining(","));
    return ("faultwright." + function + "(" + handed + ");\n").getBytes(StandardCharsets.UTF_8);
  }
}
