package io.faultwright.render.dita;

import io.faultwright.page.ReadingSection;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;

/** How a reading is taken, and its limits. */
final class ReadingTopic {
  private final Words say;
  private final String language;

  ReadingTopic(Words say, String language) {
    this.say = say;
    this.language = language;
  }

  Xml write(ReadingSection reading) {
    Xml xml = new Xml().open("topic", "id", reading.anchor(), "xml:lang", language);
    xml.text("title", reading.title()).open("body");
    Blocks blocks = new Blocks(xml, say);
    blocks.cautions(reading.cautions());
    blocks.line(reading.ask());
    blocks.clauses(say.say("Only for"), reading.applies());
    blocks.facts(reading.facts());
    blocks.list("ul", say.say("Answer"), reading.values());
    blocks.list("ol", say.say("How to take it"), reading.how());
    reading.limits().ifPresent(blocks::limits);
    return xml.close().close();
  }
}
