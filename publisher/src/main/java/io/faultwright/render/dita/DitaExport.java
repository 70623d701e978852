package io.faultwright.render.dita;

import io.faultwright.page.Frame;
import io.faultwright.page.Page;
import io.faultwright.page.ReadingSection;
import io.faultwright.page.SequenceSection;
import io.faultwright.page.SymptomSection;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A handbook in DITA 1.3 (OASIS Standard, 2015, with errata 02 of 2018): a troubleshooting topic
 * for each complaint, a topic for each reading with its limits and for each sequence of operation,
 * one about the handbook, and a map.
 *
 * <p>It has the words of the site, since it is made from the same pages.
 */
public final class DitaExport {
  private final String language;
  private final Words say;
  private final SortedMap<String, byte[]> files = new TreeMap<>();

  /**
   * @param language BCP 47 tag of the pages
   */
  public DitaExport(String language) {
    this.language = language;
    this.say = Words.of(language);
  }

  /** The files by name. */
  public SortedMap<String, byte[]> files(List<Page> pages) {
    List<SymptomSection> symptoms = new ArrayList<>();
    List<ReadingSection> readings = new ArrayList<>();
    List<SequenceSection> sequences = new ArrayList<>();
    for (Page page : pages) {
      if (page.content() instanceof SymptomSection symptom) {
        symptoms.add(symptom);
      } else if (page.content() instanceof ReadingSection reading) {
        readings.add(reading);
      } else if (page.content() instanceof SequenceSection sequence) {
        sequences.add(sequence);
      }
    }
    Frame frame = pages.get(0).frame();
    put(Doctype.TOPIC, "about", new AboutTopic(say).write(frame, language));
    TroubleTopic trouble = new TroubleTopic(say, language);
    symptoms.forEach(one -> put(Doctype.TROUBLESHOOTING, one.anchor(), trouble.write(one)));
    ReadingTopic reading = new ReadingTopic(say, language);
    readings.forEach(one -> put(Doctype.TOPIC, one.anchor(), reading.write(one)));
    SequenceTopic sequence = new SequenceTopic(say, language);
    sequences.forEach(one -> put(Doctype.TOPIC, one.anchor(), sequence.write(one)));
    Map<String, List<String>> topics = new LinkedHashMap<>();
    topics.put(say.say("Readings"), readings.stream().map(ReadingSection::anchor).toList());
    topics.put(
        say.say("Sequences of operation"),
        sequences.stream().map(SequenceSection::anchor).toList());
    put(Doctype.MAP, "handbook", map(frame, symptoms, topics));
    return files;
  }

  private void put(Doctype type, String name, Xml xml) {
    String text = Xml.DECLARATION + type.declaration() + xml;
    files.put(name + type.ending(), text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The map.
   *
   * @param topics names of plain topics, by what stands over them
   */
  private Xml map(Frame frame, List<SymptomSection> symptoms, Map<String, List<String>> topics) {
    Xml xml = new Xml().open("map", "xml:lang", language).text("title", frame.handbook());
    reference(xml, Doctype.TOPIC, "about");
    xml.open("topichead", "navtitle", say.say("List of complaints"));
    symptoms.forEach(one -> reference(xml, Doctype.TROUBLESHOOTING, one.anchor()));
    xml.close();
    topics.forEach((title, names) -> topics(xml, title, names));
    return xml.close();
  }

  private static void topics(Xml xml, String title, List<String> names) {
    if (!names.isEmpty()) {
      xml.open("topichead", "navtitle", title);
      names.forEach(name -> reference(xml, Doctype.TOPIC, name));
      xml.close();
    }
  }

  private static void reference(Xml xml, Doctype type, String name) {
    xml.empty("topicref", "href", name + type.ending(), "type", type.root());
  }
}
