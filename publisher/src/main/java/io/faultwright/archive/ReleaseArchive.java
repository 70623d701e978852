package io.faultwright.archive;

import io.faultwright.diagnostic.Problems;
import io.faultwright.output.AtomicArchive;
import io.faultwright.output.Refused;
import io.faultwright.output.Sink;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import io.faultwright.syntax.YamlReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The folder in which all releases of a handbook lie, each in a folder named by its number. */
public final class ReleaseArchive {
  /** The folder of the rules in a release. */
  public static final String SOURCES = "sources";

  private static final String NUMBER = "[1-9][0-9]{0,8}";

  private final Path root;

  public ReleaseArchive(Path root) {
    this.root = root;
  }

  /** Makes the start page of these releases, ascending. */
  public interface Index {
    byte[] page(List<ReleaseNote> releases) throws IOException;
  }

  /**
   * The releases there are, ascending.
   *
   * @throws Refused where one does not say what it is
   */
  public List<ReleaseNote> releases() throws IOException {
    List<ReleaseNote> found = new ArrayList<>();
    if (Files.isDirectory(root)) {
      try (Stream<Path> all = Files.list(root)) {
        List<Path> numbered =
            all.filter(path -> path.getFileName().toString().matches(NUMBER)).sorted().toList();
        for (Path folder : numbered) {
          found.add(note(folder));
        }
      }
    }
    found.sort(Comparator.comparingInt(ReleaseNote::number));
    return found;
  }

  /** The folder of the rules that a release was made from. */
  public Path sources(ReleaseNote release) {
    return root.resolve(Integer.toString(release.number())).resolve(SOURCES);
  }

  private ReleaseNote note(Path folder) throws IOException {
    int number = Integer.parseInt(folder.getFileName().toString());
    Path file = folder.resolve(ReleaseNote.FILE);
    if (!Files.isRegularFile(file)) {
      throw new Refused(
          "`" + number + "` in `" + root + "` is no release",
          "give a folder with releases and nothing else");
    }
    return parsed(number, Files.readString(file))
        .orElseThrow(
            () ->
                new Refused(
                    "`" + number + "/" + ReleaseNote.FILE + "` in `" + root + "` is damaged",
                    "put the release back from a copy"));
  }

  private static Optional<ReleaseNote> parsed(int number, String text) {
    Problems problems = new Problems();
    Optional<Node> root = YamlReader.read(SourceFile.of(ReleaseNote.FILE, text), problems).root();
    SortedMap<String, String> fields = new TreeMap<>();
    if (root.isPresent() && root.get() instanceof MapNode map) {
      for (Node.Entry entry : map.entries()) {
        if (entry.value() instanceof Scalar scalar) {
          fields.put(entry.name(), scalar.text());
        }
      }
    }
    boolean whole =
        Integer.toString(number).equals(fields.get("number")) && isDate(fields.get("date"));
    return whole && problems.isEmpty()
        ? Optional.of(
            new ReleaseNote(
                number,
                fields.get("date"),
                fields.getOrDefault("handbook", ""),
                fields.getOrDefault("revision", "")))
        : Optional.empty();
  }

  private static boolean isDate(String text) {
    try {
      return text != null && LocalDate.parse(text).toString().equals(text);
    } catch (DateTimeException wrong) {
      return false;
    }
  }

  /**
   * Looks whether a release can come next, and whether the one before it is as it was released.
   *
   * @throws Refused where it cannot
   */
  public void requireNext(ReleaseNote next) throws IOException {
    List<ReleaseNote> releases = releases();
    if (releases.isEmpty()) {
      refuseForeignIndex();
      return;
    }
    ReleaseNote last = releases.get(releases.size() - 1);
    if (releases.stream().anyMatch(one -> one.number() == next.number())) {
      throw new Refused(
          "release " + next.number() + " is there already, and a release is never changed",
          "the next one is release " + (last.number() + 1));
    }
    if (next.number() < last.number()) {
      throw new Refused(
          "release " + next.number() + " would come after release " + last.number(),
          "the next one is release " + (last.number() + 1));
    }
    if (LocalDate.parse(next.date()).isBefore(LocalDate.parse(last.date()))) {
      throw new Refused(
          "the date "
              + next.date()
              + " is before that of release "
              + last.number()
              + ", "
              + last.date(),
          "give the date of this release with `--date`");
    }
    requireUnchanged(last);
  }

  private void refuseForeignIndex() {
    if (Files.exists(root.resolve(AtomicArchive.INDEX))) {
      throw new Refused(
          "`" + root + "` holds an `" + AtomicArchive.INDEX + "` and no release",
          "release to a new folder");
    }
  }

  /** Every file of a release must still be there as it was. */
  private void requireUnchanged(ReleaseNote release) throws IOException {
    Path folder = root.resolve(Integer.toString(release.number()));
    Path list = folder.resolve(Checksums.FILE);
    SortedMap<String, String> sums =
        Files.isRegularFile(list) ? Checksums.parsed(Files.readString(list)) : new TreeMap<>();
    if (sums.isEmpty()) {
      throw changed(release, Checksums.FILE);
    }
    for (Map.Entry<String, String> listed : sums.entrySet()) {
      Path file = folder.resolve(listed.getKey());
      if (!Files.isRegularFile(file) || !Checksums.fits(listed, Files.readAllBytes(file))) {
        throw changed(release, listed.getKey());
      }
    }
  }

  private static Refused changed(ReleaseNote release, String path) {
    return new Refused(
        "release " + release.number() + " is not as it was released: `" + path + "` differs",
        "put release " + release.number() + " back from a copy");
  }

  /**
   * Adds a release, whole or not at all; its checksums with it.
   *
   * @param filler writes all its files but the note and the checksums
   * @throws Refused where it cannot come next
   */
  public void add(ReleaseNote note, Sink.Filler filler, Index index) throws IOException {
    new AtomicArchive(root)
        .add(
            Integer.toString(note.number()),
            sink -> {
              requireNext(note);
              Checksums checksums = new Checksums(sink);
              checksums.write(ReleaseNote.FILE, note.yaml().getBytes(StandardCharsets.UTF_8));
              filler.fill(checksums);
              checksums.finish();
            },
            () -> index.page(releases()));
  }
}
