package io.faultwright.render.dita;

import io.faultwright.page.Frame;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;

/** What stands on the title page, the disclaimer in full. */
final class AboutTopic {
  private final Words say;

  AboutTopic(Words say) {
    this.say = say;
  }

  Xml write(Frame frame, String language) {
    Xml xml = new Xml().open("topic", "id", "about", "xml:lang", language);
    xml.text("title", frame.handbook()).open("body");
    Blocks blocks = new Blocks(xml, say);
    xml.text("note", frame.disclaimer(), "type", "important");
    blocks.line(frame.maker());
    blocks.line(frame.edition());
    frame.hotline().ifPresent(hotline -> blocks.line(say.say("Hotline") + ": " + hotline));
    return xml.close().close();
  }
}
