package io.faultwright.page;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.Wording;

/**
 * What every section is written from.
 *
 * @param kb the knowledge base
 * @param words its conditions and values in words
 * @param uses what points to what
 * @param links to its things, from the page being written
 */
record Desk(KnowledgeBase kb, Wording words, Uses uses, Links links) {
  static Desk of(KnowledgeBase kb, Addresses addresses) {
    return new Desk(kb, Wording.published(kb), new Uses(kb), new Links(kb, addresses));
  }

  /** A text of the tool in the language of the handbook. */
  String say(String english, Object... parts) {
    return words.say().say(english, parts);
  }

  /** The same for another page. */
  Desk at(Addresses addresses) {
    return new Desk(kb, words, uses, new Links(kb, addresses));
  }
}
