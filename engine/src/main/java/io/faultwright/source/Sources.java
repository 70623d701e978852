package io.faultwright.source;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The files of one knowledge base, by path. */
public final class Sources {
  private final SortedMap<String, SourceFile> files = new TreeMap<>();
  private final Map<String, List<String>> lines = new ConcurrentHashMap<>();

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
    List<String> all = lines.computeIfAbsent(place.file(), this::linesOf);
    return place.line() >= 1 && place.line() <= all.size() ? all.get(place.line() - 1) : "";
  }

  private List<String> linesOf(String path) {
    return find(path).map(file -> file.text().lines().toList()).orElse(List.of());
  }
}
