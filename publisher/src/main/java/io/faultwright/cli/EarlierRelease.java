package io.faultwright.cli;

import io.faultwright.archive.ReleaseArchive;
import io.faultwright.archive.ReleaseNote;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Since;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The newest release in an archive, to compare a new revision with. */
final class EarlierRelease {
  private final ReleaseArchive archive;
  private final ReleaseNote note;

  private EarlierRelease(ReleaseArchive archive, ReleaseNote note) {
    this.archive = archive;
    this.note = note;
  }

  /** The newest one; nothing where there is none. */
  static Optional<EarlierRelease> in(ReleaseArchive archive) throws IOException {
    List<ReleaseNote> all = archive.releases();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(new EarlierRelease(archive, all.get(all.size() - 1)));
  }

  int number() {
    return note.number();
  }

  /** The files of its rules. */
  Sources sources() {
    return FolderReader.read(archive.sources(note));
  }

  /** Its rules under its number and date. */
  KnowledgeBase dated(KnowledgeBase rules) {
    return rules.released(note.number(), note.date());
  }

  /** What differs between two revisions. */
  static Since since(KnowledgeBase old, KnowledgeBase current, Console console, boolean timings) {
    try (Watching watching = new Watching(console, timings)) {
      Compared compared = new Comparing(watching).compare(old, current);
      return new Since(compared.before(), compared.shared(), compared.comparison());
    }
  }
}
