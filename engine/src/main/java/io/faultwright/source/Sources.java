package io.faultwright.source;

import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of one knowledge base, by path. */
public final class Sources {
  private final SortedMap<String, SourceFile> files = new TreeMap<>();

  public Sources(Collection<SourceFile> files) {
    files.forEach(file -> this.files.put(file.path(), file));
  }

  public Collection<SourceFile> files() {
    return Collections.unmodifiableCollection(files.values());
  }

  public Optional<SourceFile> find(String path) {
    return Optional.ofNullable(files.get(path));
  }

  /** The line a place stands on, or the empty string where the file is unknown. */
  public String line(Place place) {
    return find(place.file()).map(file -> file.line(place.line())).orElse("");
  }
}
