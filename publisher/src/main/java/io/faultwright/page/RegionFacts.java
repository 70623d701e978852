package io.faultwright.page;

import io.faultwright.finding.RegionTest;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.Wording;
import java.util.Arrays;
import java.util.List;

/** Words of a region with titles instead of ids. */
final class RegionFacts {
  private static final String NOT = "not ";

  private final Wording words;

  RegionFacts(KnowledgeBase kb) {
    this(Wording.published(kb));
  }

  RegionFacts(Wording words) {
    this.words = words;
  }

  List<Fact> of(List<RegionTest> tests) {
    return tests.stream().map(this::fact).toList();
  }

  private Fact fact(RegionTest test) {
    return new Fact(words.subject(test.reading()), accepted(test.reading(), test.accepts()));
  }

  private String accepted(String subject, String text) {
    if (text.startsWith("[") && text.endsWith("]")) {
      return words
          .say()
          .orEach(
              Arrays.stream(text.substring(1, text.length() - 1).split(", "))
                  .map(value -> accepted(subject, value))
                  .toList());
    }
    return text.startsWith(NOT)
        ? words.say().say("not {0}", words.value(subject, text.substring(NOT.length())))
        : words.value(subject, text);
  }
}
