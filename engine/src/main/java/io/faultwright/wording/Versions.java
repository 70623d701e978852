package io.faultwright.wording;

import io.faultwright.model.Version;
import io.faultwright.words.Words;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Sets of software versions as stretches of the published ones. */
final class Versions {
  private final List<String> published;
  private final Words say;

  Versions(List<Version> published, Words say) {
    this.say = say;
    this.published = published.stream().map(Version::text).toList();
  }

  /** {@code at least 2.10} and the like, where two or more versions have no gap between them. */
  Optional<String> stretch(Collection<String> chosen) {
    List<String> kept = published.stream().filter(chosen::contains).toList();
    if (kept.size() < 2 || kept.size() == published.size() || hasGap(kept)) {
      return Optional.empty();
    }
    return Optional.of(words(kept));
  }

  private String words(List<String> kept) {
    String oldest = kept.get(0);
    String newest = kept.get(kept.size() - 1);
    if (newest.equals(published.get(published.size() - 1))) {
      return say.say("at least {0}", oldest);
    }
    return oldest.equals(published.get(0))
        ? say.say("at most {0}", newest)
        : say.say("{0} to {1}", oldest, newest);
  }

  private boolean hasGap(List<String> kept) {
    int from = published.indexOf(kept.get(0));
    return !published.subList(from, from + kept.size()).equals(kept);
  }
}
