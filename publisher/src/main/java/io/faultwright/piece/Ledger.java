package io.faultwright.piece;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What the pieces of a published folder were made from. It stands in the folder itself, so that it
 * is replaced together with the files it speaks of. A ledger of another program, and one that is
 * damaged, counts as empty.
 */
public final class Ledger {
  /** Its file in a published folder. */
  public static final String NAME = ".faultwright-made-from";

  private static final String HEADING = "# what these files were made from, for the next publish";

  private final Path folder;
  private final SortedMap<String, String> lines;

  /**
   * @param lines by the names of the pieces they speak of
   */
  private Ledger(Path folder, SortedMap<String, String> lines) {
    this.folder = folder;
    this.lines = lines;
  }

  /** A ledger that knows nothing. */
  public static Ledger empty() {
    return new Ledger(Path.of(""), new TreeMap<>());
  }

  /** The ledger of a folder, if this program wrote it; else an empty one. */
  public static Ledger read(Path folder) {
    return Program.fingerprint().map(program -> read(folder, program)).orElseGet(Ledger::empty);
  }

  static Ledger read(Path folder, Fingerprint program) {
    try {
      Path file = folder.resolve(NAME);
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          ? parsed(folder, program, Files.readAllBytes(file))
          : empty();
    } catch (IOException unreadable) {
      return empty();
    }
  }

  private static Ledger parsed(Path folder, Fingerprint program, byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    String body = text.substring(Math.min(text.length(), head(program, "").length()));
    if (!text.equals(head(program, body) + body)) {
      return empty();
    }
    SortedMap<String, String> lines = new TreeMap<>();
    body.lines().forEach(line -> lines.put(Entry.name(line), line));
    return new Ledger(folder, lines);
  }

  /** The text of a ledger; its first lines seal the rest. */
  static byte[] bytes(Fingerprint program, Collection<Entry> entries) {
    String body = entries.stream().map(entry -> entry.line() + "\n").collect(Collectors.joining());
    return (head(program, body) + body).getBytes(StandardCharsets.UTF_8);
  }

  /** Its length is always the same. */
  private static String head(Fingerprint program, String body) {
    return HEADING + "\n" + new Fingerprints().of(program, body).hex() + "\n";
  }

  private Optional<Entry> entry(String name) {
    return Optional.ofNullable(lines.get(name)).flatMap(Entry::of);
  }

  /** Whether a piece of that name was made from the same. */
  public boolean has(String name, Fingerprint inputs) {
    return entry(name).filter(entry -> entry.inputs().equals(inputs)).isPresent();
  }

  /** The notes of an entry; nothing where there is none. */
  List<String> notes(String name) {
    return entry(name).map(Entry::notes).orElse(List.of());
  }

  /** The piece as it was made before; nothing where it was made from something else, or is lost. */
  Optional<Made> find(String name, Fingerprint inputs) {
    return entry(name).filter(entry -> entry.inputs().equals(inputs)).flatMap(this::whole);
  }

  private Optional<Made> whole(Entry entry) {
    try {
      SortedMap<String, FileContent> files = new TreeMap<>();
      for (Seal seal : entry.files()) {
        files.put(seal.path(), content(seal));
      }
      return Optional.of(new Made(files, entry.notes()));
    } catch (IOException | InvalidPathException lost) {
      return Optional.empty();
    }
  }

  private FileContent content(Seal seal) throws IOException {
    Path file = folder.resolve(seal.path()).normalize();
    if (!file.startsWith(folder.normalize())
        || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException("no published file: " + seal.path());
    }
    FileContent content = FileContent.of(file);
    if (!content.sum().equals(seal.sum())) {
      throw new IOException("changed since it was published: " + seal.path());
    }
    return content;
  }
}
