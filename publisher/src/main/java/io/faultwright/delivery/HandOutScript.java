package io.faultwright.delivery;

import io.faultwright.json.Fields;
import io.faultwright.json.Json;
import io.faultwright.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** The script of a participant's page, small files one after the other, and what it reads. */
public final class HandOutScript {
  private static final List<String> FILES = List.of("sha256", "quiz", "sending", "screens");
  private static final String TEXT =
      FILES.stream().map(HandOutScript::read).collect(Collectors.joining());

  private HandOutScript() {}

  /** The same for everybody. */
  public static String text() {
    return TEXT;
  }

  /** What differs, as JSON that may stand in a page. */
  public static String data(HandOut handOut) {
    return Json.text(
        new Fields()
            .put("session", handOut.session())
            .put("quiz", handOut.quiz())
            .put("participant", handOut.participant())
            .put("key", handOut.key())
            .put("items", handOut.questions().stream().map(Question::id).toList())
            .put("words", Words.of(handOut.frame().language()).calledFor(TEXT)));
  }

  private static String read(String name) {
    try (InputStream in = HandOutScript.class.getResourceAsStream(name + ".js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
