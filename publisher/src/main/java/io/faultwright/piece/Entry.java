package io.faultwright.piece;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A line of the ledger: what a piece was made from, and what came of it.
 *
 * @param name of the piece
 * @param inputs what it was made from
 * @param files what it consists of
 * @param notes what is to be known of it besides its files
 */
record Entry(String name, Fingerprint inputs, List<Seal> files, List<String> notes) {
  private static final String BREAK = "\t";

  Entry {
    files = List.copyOf(files);
    notes = List.copyOf(notes);
  }

  static Entry of(String name, Fingerprint inputs, Made made) {
    List<Seal> seals =
        made.files().entrySet().stream()
            .map(file -> new Seal(file.getKey(), file.getValue().sum()))
            .toList();
    return new Entry(name, inputs, seals, made.notes());
  }

  String line() {
    Stream<String> head = Stream.of(name, inputs.hex(), Integer.toString(files.size()));
    Stream<String> sealed = files.stream().flatMap(file -> Stream.of(file.path(), file.sum()));
    return Stream.of(head, sealed, notes.stream())
        .flatMap(words -> words)
        .map(Entry::escaped)
        .collect(Collectors.joining(BREAK));
  }

  /** The name in a line. */
  static String name(String line) {
    int end = line.indexOf(BREAK);
    return plain(end < 0 ? line : line.substring(0, end));
  }

  /** The entry of a line; nothing where it is none. */
  static Optional<Entry> of(String line) {
    try {
      Iterator<String> words = Stream.of(line.split(BREAK, -1)).map(Entry::plain).iterator();
      String name = words.next();
      Fingerprint inputs = new Fingerprint(words.next());
      List<Seal> files = new ArrayList<>();
      for (int left = Integer.parseInt(words.next()); left > 0; left--) {
        files.add(new Seal(words.next(), words.next()));
      }
      List<String> notes = new ArrayList<>();
      words.forEachRemaining(notes::add);
      return Optional.of(new Entry(name, inputs, files, notes));
    } catch (NoSuchElementException | IllegalArgumentException damaged) {
      return Optional.empty();
    }
  }

  private static String escaped(String word) {
    return word.replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  private static String plain(String word) {
    return word.translateEscapes();
  }
}
