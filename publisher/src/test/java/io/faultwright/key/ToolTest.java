package io.faultwright.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.output.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ToolTest {
  private static final byte[] NOTHING = new byte[0];

  @Test
  void missingProgramIsToldWithTheCure() {
    Tool tool = new Tool("faultwright-no-such-program", Map.of(), "install it");
    Refused refused = assertThrows(Refused.class, () -> tool.run(NOTHING, List.of()));
    assertEquals("`faultwright-no-such-program` cannot be started", refused.getMessage());
    assertEquals("install it", refused.help());
  }

  /** A shell would run the second word. */
  @Test
  void argumentsArePassedAsTheyAre() throws IOException {
    Tool tool = new Tool("java", Map.of(), "");
    Tool.Result result = tool.run(NOTHING, List.of("$(touch x); `y` && no\"class"));
    assertTrue(result.code() != 0);
    assertTrue(result.err().contains("$(touch x); `y` && no\"class"), result.err());
  }

  @Test
  void muchInputAndOutputDoNotBlock() throws IOException {
    Tool tool = new Tool("cat", Map.of(), "");
    String text = "all of it\n".repeat(100_000);
    Tool.Result result = tool.run(text.getBytes(StandardCharsets.UTF_8), List.of());
    assertEquals(text, result.out());
  }
}
