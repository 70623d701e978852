package io.faultwright.resolve;

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

  String id() {
    return key.text();
  }

  Place place() {
    return key.place();
  }
}
