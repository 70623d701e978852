package io.faultwright.source;

import java.util.AbstractList;
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

  /**
   * Some lines of a file that is too long to be kept.
   *
   * @param excerpt line number, from 1, to the line
   */
  public static Sources excerpt(String path, SortedMap<Integer, String> excerpt) {
    Sources sources = new Sources(List.of(new SourceFile(path, "")));
    SortedMap<Integer, String> kept = new TreeMap<>(excerpt);
    sources.lines.put(path, lines(kept));
    return sources;
  }

  private static List<String> lines(SortedMap<Integer, String> kept) {
    return new AbstractList<>() {
      @Override
      public String get(int index) {
        return kept.getOrDefault(index + 1, "");
      }

      @Override
      public int size() {
        return kept.isEmpty() ? 0 : kept.lastKey();
      }
    };
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
