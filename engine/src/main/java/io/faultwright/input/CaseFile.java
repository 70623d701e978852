package io.faultwright.input;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node.Entry;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Reads cases from a file of any of the kinds there are. */
public final class CaseFile {
  /** So many characters tell a table from anything else. */
  private static final int BEGINNING = 8_192;

  private static final int LARGEST = 64 * 1024 * 1024;

  private CaseFile() {}

  /**
   * Begins to read a file: a table row by row, anything else as a whole.
   *
   * @param path what to call it in messages
   * @throws Unreadable where the file as a whole makes no sense
   * @throws UncheckedIOException where it cannot be read
   */
  public static CaseInput open(String path, BufferedReader text, KnowledgeBase kb, TableUse use) {
    try {
      return CaseTable.isTable(path, firstLine(text))
          ? new CaseTable(path, text, kb, use)
          : new Whole(SourceFile.of(path, all(path, text)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static String firstLine(BufferedReader text) throws IOException {
    char[] beginning = new char[BEGINNING];
    text.mark(BEGINNING);
    int read = Math.max(0, text.read(beginning));
    text.reset();
    return new String(beginning, 0, read).lines().findFirst().orElse("");
  }

  private static String all(String path, BufferedReader text) throws IOException {
    StringBuilder all = new StringBuilder();
    char[] part = new char[BEGINNING];
    for (int read = text.read(part); read >= 0; read = text.read(part)) {
      all.append(part, 0, read);
      if (all.length() > LARGEST) {
        Problem problem =
            new Problem(
                List.of(), "`" + path + "` has more than 64 MB", "split it, or use a table");
        throw new Unreadable(List.of(problem));
      }
    }
    return all.toString();
  }

  /** A file that is kept as a whole. */
  private static final class Whole implements CaseInput {
    private final List<String> lines;
    private final Iterator<Entry> entries;

    Whole(SourceFile file) {
      Problems problems = new Problems();
      this.lines = file.text().lines().toList();
      this.entries = CaseTree.entries(file, problems).iterator();
      if (!problems.isEmpty()) {
        throw new Unreadable(problems.sorted(), new Sources(List.of(file)));
      }
    }

    @Override
    public Optional<Item> next() {
      return entries.hasNext() ? Optional.of(item(entries.next())) : Optional.empty();
    }

    /** With the lines from its id to the end of what is written below it. */
    private Item item(Entry entry) {
      int first = entry.key().place().line();
      int last = Math.max(first, LastLine.of(entry.value()));
      return new Item(
          Optional.of(entry),
          first,
          lines.subList(first - 1, Math.min(last, lines.size())),
          List.of());
    }

    @Override
    public List<Problem> notes() {
      return List.of();
    }
  }
}
