package io.faultwright.resolve;

import io.faultwright.model.Catalogue;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;

/**
 * Something with an id, as it was written.
 *
 * @param what for messages, for instance {@code reading `fan-running`}
 * @param key its id
 * @param body what was written below the id
 */
record Definition(String what, Scalar key, Node body) {
  static Definition of(Kind kind, Node.Entry entry) {
    return new Definition(
        kind.noun() + " " + Words.quoted(entry.name()), entry.key(), entry.value());
  }

  /** A translated text; its id is the text it translates, as a catalogue looks it up. */
  static Definition ofTranslation(String language, Node.Entry entry) {
    String what = "the translation of " + Words.quoted(entry.name()) + " into `" + language + "`";
    Scalar key = entry.key();
    return new Definition(
        what, new Scalar(Catalogue.key(key.text()), key.quoted(), key.place()), entry.value());
  }

  String id() {
    return key.text();
  }

  Place place() {
    return key.place();
  }
}
