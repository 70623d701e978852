package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Version;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads lists of published software versions. */
final class SoftwareResolver {
  private final Context context;
  private final VersionPatterns versions;

  SoftwareResolver(Context context) {
    this.context = context;
    this.versions = new VersionPatterns(context.problems());
  }

  /** The versions below the key {@code software}, oldest first. */
  List<Version> versions(Fields fields) {
    Map<Version, Place> found = new TreeMap<>();
    for (Scalar written : fields.oneOrMore("software")) {
      versions
          .version(written.place(), written.text().strip())
          .ifPresent(version -> add(found, version, written.place()));
    }
    return List.copyOf(found.keySet());
  }

  private void add(Map<Version, Place> found, Version version, Place place) {
    Place earlier = found.putIfAbsent(version, place);
    if (earlier != null) {
      context
          .problems()
          .add(
              new Problem(
                  List.of(place, earlier),
                  "software version `" + version + "` is listed twice",
                  "remove one of the two"));
    }
  }
}
