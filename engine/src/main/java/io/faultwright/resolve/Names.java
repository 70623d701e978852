package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Scalar;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** The ids of all files; looks references up. */
final class Names {
  private final Outline outline;
  private final Problems problems;

  Names(Outline outline, Problems problems) {
    this.outline = outline;
    this.problems = problems;
  }

  Set<String> all(Kind kind) {
    return outline.of(kind).keySet();
  }

  boolean known(Kind kind, String id) {
    return all(kind).contains(id);
  }

  /** Whether an id that is not known is surely not defined anywhere. */
  boolean complete(Kind kind) {
    return outline.complete(kind);
  }

  /** The id a text refers to; reports it where no such thing is defined. */
  String reference(Kind kind, Scalar text) {
    return reference(kind, text, all(kind));
  }

  /** As above, where only some ids may be meant. */
  String reference(Kind kind, Scalar text, Collection<String> allowed) {
    if (!allowed.contains(text.text()) && complete(kind)) {
      problems.add(
          text.place(),
          "unknown " + kind.noun() + " " + Words.quoted(text.text()),
          allowed.isEmpty()
              ? "no file defines " + kind.one() + " yet"
              : NearMatch.help(text.text(), allowed));
    }
    return text.text();
  }

  SortedSet<String> references(Kind kind, List<Scalar> texts) {
    SortedSet<String> ids = new TreeSet<>();
    texts.forEach(text -> ids.add(reference(kind, text)));
    return ids;
  }
}
