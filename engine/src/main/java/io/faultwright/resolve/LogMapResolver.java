package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Sequence;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads a file that says what the columns of a controller's log mean. */
final class LogMapResolver {
  private static final List<String> KEYS =
      List.of("encoding", "header", "time", "signal", "value", "columns", "ignore");
  private static final List<String> COLUMN_KEYS = List.of("is", "words", "unknown");

  /** Names of the IANA registry of character sets that every Java knows. */
  private static final List<String> ENCODINGS =
      List.of("utf-8", "utf-16", "iso-8859-1", "windows-1250", "windows-1251", "windows-1252");

  private static final String SKIP = "skip";

  private final Problems problems;
  private final LogWords words;
  private final Map<String, Scalar> taken = new HashMap<>();

  LogMapResolver(Sequence sequence, Problems problems) {
    this.problems = problems;
    this.words = new LogWords(sequence, problems);
  }

  /** The map; empty where it does not say which column is the time. */
  Optional<LogMap> resolve(Node root) {
    Fields fields = new Fields(root, "the map of columns", root.place(), KEYS, problems);
    Optional<Node> time = fields.require("time");
    fields.require("columns");
    SortedMap<String, LogMap.Column> columns = new TreeMap<>();
    fields.map("columns").forEach(entry -> column(entry, columns));
    SortedSet<String> ignored = new TreeSet<>();
    fields.oneOrMore("ignore").forEach(heading -> ignored.add(ignored(heading, columns)));
    Optional<Scalar> signal =
        fields.has("value") ? fields.requireScalar("signal") : fields.scalar("signal");
    Optional<Scalar> value =
        fields.has("signal") ? fields.requireScalar("value") : fields.scalar("value");
    OptionalInt header = header(fields.scalar("header"));
    Charset encoding = fields.scalar("encoding").map(this::encoding).orElse(StandardCharsets.UTF_8);
    return time.flatMap(new LogTimeResolver(problems)::resolve)
        .map(known -> new LogMap(encoding, header, known, signal, value, columns, ignored));
  }

  private Charset encoding(Scalar written) {
    String name = written.text().strip().toLowerCase(Locale.ROOT);
    if (!ENCODINGS.contains(name)) {
      problems.add(
          written.place(),
          "a log cannot be encoded as " + Words.quoted(written.text()),
          NearMatch.help(name, ENCODINGS));
      return StandardCharsets.UTF_8;
    }
    return Charset.forName(name);
  }

  private OptionalInt header(Optional<Scalar> written) {
    if (written.isEmpty()) {
      return OptionalInt.empty();
    }
    String text = written.get().text().strip();
    if (!text.matches("[1-9][0-9]{0,4}")) {
      problems.add(
          written.get().place(),
          "`header` is the number of a line, found " + Words.quoted(text),
          "write `header: 4` where the headings stand on the fourth line");
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(text));
  }

  private String ignored(Scalar heading, SortedMap<String, LogMap.Column> columns) {
    Optional<Scalar> used =
        Optional.ofNullable(columns.get(heading.text().strip())).map(LogMap.Column::heading);
    return IgnoredColumn.name(heading, used, problems);
  }

  private void column(Entry entry, SortedMap<String, LogMap.Column> columns) {
    Optional<LogMap.Column> read =
        entry.value() instanceof Scalar is
            ? Optional.of(is)
                .filter(one -> isTarget(one, entry.key()))
                .map(one -> new LogMap.Column(entry.key(), one.text(), new TreeMap<>(), false))
            : details(entry);
    read.ifPresent(column -> columns.put(entry.name().strip(), column));
  }

  private Optional<LogMap.Column> details(Entry entry) {
    String what = "column " + Words.quoted(entry.name());
    Fields fields = new Fields(entry.value(), what, entry.key().place(), COLUMN_KEYS, problems);
    List<Entry> meanings = fields.map("words");
    boolean skip = fields.scalar("unknown").filter(this::isSkip).isPresent();
    return fields
        .requireScalar("is")
        .filter(is -> isTarget(is, entry.key()))
        .map(is -> new LogMap.Column(entry.key(), is.text(), meanings(is.text(), meanings), skip));
  }

  private boolean isSkip(Scalar written) {
    if (!written.text().equals(SKIP)) {
      problems.add(
          written.place(),
          "`unknown` cannot be " + Words.quoted(written.text()),
          "write `unknown: skip`, or leave it out: unknown cells are then an error");
    }
    return true;
  }

  /** Whether a column can be that, and no other column is it; several may tell events. */
  private boolean isTarget(Scalar is, Scalar heading) {
    List<String> known = words.targets();
    if (!known.contains(is.text())) {
      problems.add(
          is.place(),
          Words.quoted(is.text())
              + " is no input, no output and none of `phase`, `display`, `event`",
          NearMatch.help(is.text(), known));
      return false;
    }
    Optional<Scalar> other =
        is.text().equals(LogWords.EVENT)
            ? Optional.empty()
            : Optional.ofNullable(taken.putIfAbsent(is.text(), heading));
    other.ifPresent(
        first ->
            problems.add(
                new Problem(
                    List.of(heading.place(), first.place()),
                    "two columns are " + Words.quoted(is.text()),
                    "put one of them under `ignore`")));
    return other.isEmpty();
  }

  private SortedMap<String, Told> meanings(String target, List<Entry> entries) {
    SortedMap<String, Told> meanings = new TreeMap<>();
    for (Entry entry : entries) {
      meaning(target, entry)
          .filter(told -> meanings.put(LogMap.folded(entry.name()), told) != null)
          .ifPresent(
              told ->
                  problems.add(
                      entry.key().place(),
                      "cell " + Words.quoted(entry.name()) + " stands twice",
                      "case makes no difference; keep one of the two"));
    }
    return meanings;
  }

  private Optional<Told> meaning(String target, Entry entry) {
    if (!(entry.value() instanceof Scalar meaning)) {
      problems.add(
          entry.value().place(),
          "a cell has one meaning, found " + entry.value().kind(),
          "write `cell: meaning`");
      return Optional.empty();
    }
    return meaning.text().equals(SKIP)
        ? Optional.of(new Told.Nothing())
        : words.cell(target, meaning);
  }
}
