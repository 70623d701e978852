package io.faultwright.page;

import io.faultwright.words.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Lists the releases, the newest first. */
final class ReleasesSections {
  /** The page of the archive, seen from the root of a site in it. */
  private static final String ALL = "../../index.html";

  private ReleasesSections() {}

  static ReleasesSection of(
      List<Released> releases, Words say, UnaryOperator<String> fromRoot, Optional<Link> bulletin) {
    int newest = releases.stream().mapToInt(Released::number).max().orElse(0);
    return new ReleasesSection(
        items(releases, newest, say, fromRoot),
        bulletin,
        new Link(say.say("All releases"), fromRoot.apply(ALL)));
  }

  /**
   * @param current number of the release that is read; 0 for none
   */
  static List<ReleasesSection.Item> items(
      List<Released> releases, int current, Words say, UnaryOperator<String> fromRoot) {
    return releases.stream()
        .sorted(Comparator.comparingInt(Released::number).reversed())
        .map(
            one ->
                new ReleasesSection.Item(
                    new Link(say.say("Release {0}", one.number()), fromRoot.apply(one.site())),
                    one.date(),
                    one.number() == current))
        .toList();
  }
}
