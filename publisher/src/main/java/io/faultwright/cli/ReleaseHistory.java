package io.faultwright.cli;

import io.faultwright.archive.ReleaseArchive;
import io.faultwright.archive.ReleaseNote;
import io.faultwright.revision.History;
import io.faultwright.revision.Moment;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The releases of a handbook as the history of its rules, up to one that is being made. Unlike the
 * commits of a repository they are the same for everybody, however the repository was copied.
 */
final class ReleaseHistory implements History {
  private final ReleaseArchive archive;
  private final List<ReleaseNote> releases;
  private final Sources current;

  /**
   * @param next the release that is being made
   * @param current its rules
   */
  ReleaseHistory(ReleaseArchive archive, ReleaseNote next, Sources current) throws IOException {
    this.archive = archive;
    this.current = current;
    this.releases = new ArrayList<>(archive.releases());
    this.releases.add(next);
  }

  @Override
  public List<Moment> moments() {
    List<Moment> moments = new ArrayList<>();
    for (int i = releases.size() - 1; i >= 0; i--) {
      ReleaseNote release = releases.get(i);
      moments.add(
          new Moment(
              id(release),
              release.date(),
              "release",
              id(release),
              i == 0 ? List.of() : List.of(id(releases.get(i - 1)))));
    }
    return moments;
  }

  private static String id(ReleaseNote release) {
    return Integer.toString(release.number());
  }

  @Override
  public Sources read(String id) {
    ReleaseNote newest = releases.get(releases.size() - 1);
    return id.equals(id(newest))
        ? current
        : FolderReader.read(
            archive.sources(
                releases.stream().filter(one -> id(one).equals(id)).findFirst().orElseThrow()));
  }
}
