package io.faultwright.render.html;

import io.faultwright.delivery.HandOut;
import io.faultwright.delivery.HandOutScript;
import io.faultwright.offline.Fingerprint;
import io.faultwright.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Prints the quiz of one participant as one page that needs no other. Its policy names the one
 * script and the one style sheet by their fingerprints, so that nothing else in it can run.
 */
public final class HandOutHtml {
  private static final String STYLE = Resources.text("delivery/hand-out.css");

  private final Templates templates = new Templates();

  public String print(HandOut handOut) {
    return templates.print(
        "delivery/hand-out.ftlh",
        Words.of(handOut.frame().language()),
        Map.of(
            "it", handOut,
            "style", STYLE,
            "script", HandOutScript.text(),
            "data", HandOutScript.data(handOut),
            "policy", Map.of("style", source(STYLE), "script", source(HandOutScript.text()))));
  }

  private static String source(String text) {
    return Fingerprint.source(text.getBytes(StandardCharsets.UTF_8));
  }
}
