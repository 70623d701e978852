package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Unit;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads a file that says what the columns of somebody else's table mean. */
final class ColumnMapResolver {
  private static final List<String> KEYS =
      List.of("columns", "always", "ignore", "blank", "decimal");
  private static final List<String> COLUMN_KEYS = List.of("is", "unit", "words");
  private static final List<String> MARKS = List.of("comma", "point");

  private final Context context;
  private final Problems problems;
  private final KnowledgeBase kb;
  private final SituationResolver situations;
  private final Map<String, Scalar> taken = new HashMap<>();

  ColumnMapResolver(Context context, Subjects subjects, KnowledgeBase kb) {
    this.context = context;
    this.problems = context.problems();
    this.kb = kb;
    this.situations = new SituationResolver(context, subjects);
  }

  ColumnMap resolve(Node root) {
    Fields fields = new Fields(root, "the column map", root.place(), KEYS, problems);
    SortedMap<String, ColumnMap.Column> columns = new TreeMap<>();
    fields.map("columns").forEach(entry -> column(entry, columns));
    SortedMap<String, Scalar> always = new TreeMap<>();
    fields.map("always").forEach(entry -> always(entry, always));
    SortedSet<String> ignored = new TreeSet<>();
    fields.oneOrMore("ignore").forEach(heading -> ignored.add(ignored(heading, columns)));
    SortedSet<String> blanks = new TreeSet<>();
    fields.oneOrMore("blank").forEach(word -> blanks.add(ColumnMap.folded(word.text())));
    return new ColumnMap(columns, always, ignored, blanks, decimalComma(fields));
  }

  private boolean decimalComma(Fields fields) {
    Optional<Scalar> mark = fields.scalar("decimal");
    mark.filter(one -> !MARKS.contains(one.text()))
        .ifPresent(
            one ->
                problems.add(
                    one.place(),
                    "`decimal` cannot be " + Words.quoted(one.text()),
                    NearMatch.help(one.text(), MARKS)));
    return mark.filter(one -> one.text().equals("comma")).isPresent();
  }

  private String ignored(Scalar heading, SortedMap<String, ColumnMap.Column> columns) {
    Optional<Scalar> used =
        Optional.ofNullable(columns.get(heading.text().strip())).map(ColumnMap.Column::heading);
    return IgnoredColumn.name(heading, used, problems);
  }

  private void column(Entry entry, SortedMap<String, ColumnMap.Column> columns) {
    Optional<ColumnMap.Column> read =
        entry.value() instanceof Scalar is
            ? Optional.of(new ColumnMap.Column(entry.key(), is.text(), Optional.empty(), none()))
                .filter(column -> isTarget(is, entry.key()))
            : details(entry);
    read.ifPresent(column -> columns.put(entry.name().strip(), column));
  }

  private static SortedMap<String, String> none() {
    return new TreeMap<>();
  }

  private Optional<ColumnMap.Column> details(Entry entry) {
    String what = "column " + Words.quoted(entry.name());
    Fields fields = new Fields(entry.value(), what, entry.key().place(), COLUMN_KEYS, problems);
    Optional<Scalar> is = fields.requireScalar("is").filter(one -> isTarget(one, entry.key()));
    return is.map(Scalar::text)
        .map(
            target ->
                new ColumnMap.Column(
                    entry.key(),
                    target,
                    fields.scalar("unit").flatMap(unit -> unit(target, unit)),
                    words(target, fields.map("words"))));
  }

  /** Whether there is such a thing to fill, and no other column fills it. */
  private boolean isTarget(Scalar is, Scalar heading) {
    if (!isKnown(is)) {
      return false;
    }
    Optional<Scalar> other = Optional.ofNullable(taken.putIfAbsent(is.text(), heading));
    other.ifPresent(
        first ->
            problems.add(
                new Problem(
                    List.of(heading.place(), first.place()),
                    "two columns are " + Words.quoted(is.text()),
                    "put one of them under `ignore`")));
    return other.isEmpty();
  }

  private boolean isKnown(Scalar is) {
    Reading reading = kb.readings().get(is.text());
    if (reading != null && reading.derived().isPresent()) {
      problems.add(
          is.place(),
          Words.quoted(is.text()) + " is computed, it is not given",
          "map " + Words.and(reading.operands()) + ", and put this column under `ignore`");
      return false;
    }
    SortedSet<String> known = names();
    if (!known.contains(is.text())) {
      problems.add(
          is.place(),
          Words.quoted(is.text()) + " is no reading, no equipment fact and no key of a case",
          NearMatch.help(is.text(), known));
    }
    return known.contains(is.text());
  }

  private SortedSet<String> names() {
    SortedSet<String> names = new TreeSet<>(kb.readings().keySet());
    names.addAll(kb.equipment().attributes());
    names.addAll(ColumnMap.CASE_KEYS);
    return names;
  }

  private Optional<Unit> unit(String target, Scalar written) {
    Optional<Domain.Measured> measured =
        Optional.ofNullable(kb.readings().get(target))
            .map(Reading::domain)
            .filter(Domain.Measured.class::isInstance)
            .map(Domain.Measured.class::cast);
    if (measured.isEmpty()) {
      problems.add(
          written.place(),
          Words.quoted(target) + " is not measured, so it has no unit",
          "remove `unit`");
    }
    return measured.flatMap(
        domain ->
            context
                .quantities()
                .unit(
                    written.place(), written.text().strip(), domain.unit(), Words.quoted(target)));
  }

  private SortedMap<String, String> words(String target, List<Entry> entries) {
    SortedMap<String, String> words = new TreeMap<>();
    for (Entry entry : entries) {
      if (!(entry.value() instanceof Scalar meaning)) {
        problems.add(
            entry.value().place(),
            "a word has one meaning, found " + entry.value().kind(),
            "write `word: value`");
      } else if (words.put(ColumnMap.folded(entry.name()), meaning.text().strip()) != null) {
        problems.add(
            entry.key().place(),
            "word " + Words.quoted(entry.name()) + " stands twice",
            "case makes no difference; keep one of the two");
      } else if (!meaning.isBlank()) {
        check(target, meaning);
      }
    }
    return words;
  }

  private void always(Entry entry, SortedMap<String, Scalar> always) {
    if (!isKnown(entry.key())) {
      return;
    }
    if (!(entry.value() instanceof Scalar value)) {
      problems.add(
          entry.value().place(),
          "`always` has one value for "
              + Words.quoted(entry.name())
              + ", found "
              + entry.value().kind(),
          "write one value");
    } else {
      check(entry.name(), value);
      always.put(entry.name(), value);
    }
  }

  /** What a map says for every row is checked once, in the map. */
  private void check(String target, Scalar value) {
    if (target.equals("symptom")) {
      context.names().reference(Kind.SYMPTOM, value);
    } else if (target.equals("expect")) {
      expected(value);
    } else if (!ColumnMap.CASE_KEYS.contains(target)) {
      situations.resolve(List.of(new Entry(new Scalar(target, false, value.place()), value)));
    }
  }

  private void expected(Scalar value) {
    if (value.text().contains(":") || ExpectResolver.WORDS.contains(value.text().strip())) {
      return;
    }
    for (String fault : value.text().split(";")) {
      context.names().reference(Kind.FAULT, new Scalar(fault.strip(), false, value.place()));
    }
  }
}
