package io.faultwright.delivery;

import io.faultwright.page.Frame;
import io.faultwright.quiz.QuizWording.Line;
import io.faultwright.render.html.HandOutHtml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;

/** A participant's page as it is, in German words, and with texts that mean harm. */
final class SamplePages {
  static final String HOSTILE =
      "</script><script>alert(1)</script> <img src=x onerror=alert(2)> **bold** ${7+7} \u202Eabc";

  private SamplePages() {}

  /** Writes {@code plain.html}, {@code german.html} and {@code hostile.html}. */
  static void write(Path folder, HandOut plain) throws IOException {
    List<Question> hostile =
        plain.questions().stream()
            .map(
                one ->
                    new Question(
                        one.id(),
                        List.of(new Line(HOSTILE, HOSTILE)),
                        HOSTILE,
                        Collections.nCopies(3, HOSTILE)))
            .toList();
    write(folder, "plain", plain);
    write(folder, "german", with(plain, "de", plain.title(), plain.questions()));
    write(folder, "hostile", with(plain, "en", HOSTILE, hostile));
  }

  private static HandOut with(
      HandOut one, String language, String title, List<Question> questions) {
    Frame f = one.frame();
    return new HandOut(
        new Frame(language, f.direction(), f.handbook(), f.maker(), "", "", f.hotline(), false),
        one.session(),
        title,
        one.quiz(),
        one.participant(),
        one.key(),
        one.handInBy(),
        questions);
  }

  private static void write(Path folder, String name, HandOut handOut) throws IOException {
    Files.writeString(folder.resolve(name + ".html"), new HandOutHtml().print(handOut));
  }
}
