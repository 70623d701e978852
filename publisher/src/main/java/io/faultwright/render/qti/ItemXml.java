package io.faultwright.render.qti;

import io.faultwright.delivery.Solved;
import io.faultwright.quiz.QuizWording.Line;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.util.List;

/**
 * An item with one choice to be made. The published template {@code match_correct} would give the
 * score and no feedback; so the item says its response processing itself: the same score, and which
 * feedback is shown.
 */
final class ItemXml {
  static final String NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

  private static final String RESPONSE = "RESPONSE";
  private static final String SCORE = "SCORE";
  private static final String FEEDBACK = "FEEDBACK";
  private static final String RIGHT = "right";
  private static final String WRONG = "wrong";

  private final String language;
  private final Words say;

  ItemXml(String language) {
    this.language = language;
    this.say = Words.of(language);
  }

  /** The item at a position, counted from 1. */
  Xml write(Solved one, int position, int count) {
    Xml xml = new Xml();
    xml.open(
        "qti-assessment-item",
        "xmlns",
        NAMESPACE,
        "identifier",
        one.question().id(),
        "title",
        say.say("Question {0} of {1}", position, count),
        "adaptive",
        "false",
        "time-dependent",
        "false",
        "xml:lang",
        language);
    declarations(xml, one.right());
    body(xml, one);
    processing(xml);
    feedback(xml, one, RIGHT, say.say("That is right."));
    String answer = one.question().choices().get(one.right() - 1);
    feedback(xml, one, WRONG, say.say("That is not right. Right is: {0}", answer));
    return xml.close();
  }

  private static void declarations(Xml xml, int right) {
    declare(xml, "qti-response-declaration", RESPONSE, "identifier")
        .open("qti-correct-response")
        .text("qti-value", choice(right))
        .close()
        .close();
    declare(xml, "qti-outcome-declaration", SCORE, "float")
        .open("qti-default-value")
        .text("qti-value", "0")
        .close()
        .close();
    declare(xml, "qti-outcome-declaration", FEEDBACK, "identifier").close();
  }

  private static Xml declare(Xml xml, String element, String name, String type) {
    return xml.open(element, "identifier", name, "cardinality", "single", "base-type", type);
  }

  private static String choice(int number) {
    return "choice-" + number;
  }

  private static void body(Xml xml, Solved one) {
    xml.open("qti-item-body");
    List<Line> known = one.question().known();
    if (!known.isEmpty()) {
      xml.open("dl");
      known.forEach(line -> xml.text("dt", line.label()).text("dd", line.text()));
      xml.close();
    }
    xml.open(
        "qti-choice-interaction",
        "response-identifier",
        RESPONSE,
        "shuffle",
        "false",
        "max-choices",
        "1");
    xml.text("qti-prompt", one.question().text());
    List<String> choices = one.question().choices();
    for (int i = 1; i <= choices.size(); i++) {
      xml.text("qti-simple-choice", choices.get(i - 1), "identifier", choice(i));
    }
    xml.close().close();
  }

  private static void processing(Xml xml) {
    xml.open("qti-response-processing").open("qti-response-condition").open("qti-response-if");
    xml.open("qti-match")
        .empty("qti-variable", "identifier", RESPONSE)
        .empty("qti-correct", "identifier", RESPONSE)
        .close();
    set(xml, SCORE, "float", "1");
    set(xml, FEEDBACK, "identifier", RIGHT);
    xml.close().open("qti-response-else");
    set(xml, SCORE, "float", "0");
    set(xml, FEEDBACK, "identifier", WRONG);
    xml.close().close().close();
  }

  private static void set(Xml xml, String outcome, String type, String value) {
    xml.open("qti-set-outcome-value", "identifier", outcome)
        .text("qti-base-value", value, "base-type", type)
        .close();
  }

  private void feedback(Xml xml, Solved one, String which, String verdict) {
    xml.open(
        "qti-modal-feedback",
        "outcome-identifier",
        FEEDBACK,
        "show-hide",
        "show",
        "identifier",
        which);
    xml.open("qti-content-body").text("p", verdict);
    one.because().forEach(sentence -> xml.text("p", sentence));
    String page = say.say("See {0}", one.page());
    one.address()
        .ifPresentOrElse(
            to -> xml.open("p").text("a", page, "href", to).close(), () -> xml.text("p", page));
    xml.close().close();
  }
}
