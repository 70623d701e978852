package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Sorted;
import io.faultwright.model.Version;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Turns what is said about the software into the published versions that are meant. */
final class VersionPatterns {
  private static final String TO = " to ";

  private final Problems problems;

  VersionPatterns(Problems problems) {
    this.problems = problems;
  }

  Optional<OneOf> read(Place place, String text, Subject.Software software) {
    Optional<Comparison.Written> comparison = Comparison.read(text);
    if (comparison.isPresent()) {
      return compared(place, text, comparison.get(), software);
    }
    return text.contains(TO)
        ? between(place, text, software)
        : version(place, text)
            .flatMap(version -> published(place, version, software))
            .map(version -> pick(List.of(version)));
  }

  private Optional<OneOf> compared(
      Place place, String text, Comparison.Written written, Subject.Software software) {
    return version(place, written.threshold())
        .flatMap(
            threshold ->
                picked(
                    place,
                    text,
                    software,
                    version -> written.comparison().accepts(version.compareTo(threshold))));
  }

  private Optional<OneOf> between(Place place, String text, Subject.Software software) {
    int at = text.indexOf(TO);
    Optional<Version> low = version(place, text.substring(0, at).strip());
    Optional<Version> high = version(place, text.substring(at + TO.length()).strip());
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    return picked(
        place,
        text,
        software,
        version -> version.compareTo(low.get()) >= 0 && version.compareTo(high.get()) <= 0);
  }

  /** The version a text stands for; reports anything that is none. */
  Optional<Version> version(Place place, String text) {
    if (Version.isVersion(text)) {
      return Optional.of(new Version(text));
    }
    problems.add(
        place,
        Words.quoted(text) + " is not a software version",
        "a version has whole numbers with full stops between them, as in `2.10`");
    return Optional.empty();
  }

  /** The version as it is published; reports one that is not. */
  Optional<Version> published(Place place, Version version, Subject.Software software) {
    Optional<Version> found = software.published().stream().filter(version::equals).findFirst();
    if (found.isEmpty() && software.complete()) {
      problems.add(
          place,
          "no model has the software version " + Words.quoted(version.text()),
          NearMatch.help(version.text(), texts(software.published())));
    }
    return found;
  }

  private Optional<OneOf> picked(
      Place place, String text, Subject.Software software, Predicate<Version> wanted) {
    List<Version> picked = software.published().stream().filter(wanted).toList();
    if (picked.isEmpty() && software.complete()) {
      problems.add(
          place,
          "no published software version is " + Words.quoted(text),
          "published are " + Words.quoted(texts(software.published())));
    }
    return Optional.of(picked).filter(versions -> !versions.isEmpty()).map(VersionPatterns::pick);
  }

  private static OneOf pick(List<Version> versions) {
    return new OneOf(Sorted.set(texts(versions)));
  }

  private static List<String> texts(List<Version> versions) {
    return versions.stream().map(Version::text).toList();
  }
}
