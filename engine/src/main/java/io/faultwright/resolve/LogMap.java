package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import io.faultwright.syntax.YamlReader;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;

/**
 * What the columns of a controller's log mean.
 *
 * @param encoding by which the log's bytes are text
 * @param header the line on which the headings stand, from 1; absent: the first that is not empty
 * @param signal heading of the column that names a signal, where each row tells of one
 * @param value heading of the column that holds its value; there if {@code signal} is
 * @param columns by their headings, or signals by their names
 * @param ignored headings and names of signals that are of no concern
 */
public record LogMap(
    Charset encoding,
    OptionalInt header,
    LogTime time,
    Optional<Scalar> signal,
    Optional<Scalar> value,
    SortedMap<String, Column> columns,
    SortedSet<String> ignored) {
  private static final String HELP =
      "write `time:` and `columns:`, and below that a line for each heading";

  public LogMap {
    columns = Sorted.copy(columns);
    ignored = Sorted.set(ignored);
  }

  /**
   * One column, or one signal.
   *
   * @param heading as the map writes it
   * @param is what it tells: an input, an output, or one of the words of {@link LogWords}
   * @param words what its cells mean, by the folded cell
   * @param skip whether cells that mean nothing known are passed over
   */
  public record Column(Scalar heading, String is, SortedMap<String, Told> words, boolean skip) {
    public Column {
      words = Sorted.copy(words);
    }
  }

  /**
   * What a file says about the columns of a log.
   *
   * @throws Unreadable with every problem of the file
   */
  public static LogMap read(SourceFile file, Sequence sequence) {
    Problems problems = new Problems();
    Optional<Node> root = YamlReader.read(file, problems).root();
    root.filter(node -> !(node instanceof MapNode))
        .ifPresent(
            node ->
                problems.add(
                    node.place(), "this is no map of columns: it is " + node.kind(), HELP));
    Optional<LogMap> map =
        root.filter(MapNode.class::isInstance)
            .flatMap(node -> new LogMapResolver(sequence, problems).resolve(node));
    if (root.isEmpty() && problems.isEmpty()) {
      problems.add(new Place(file.path(), 1, 1, 1), "the map of columns is empty", HELP);
    }
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return map.orElseThrow();
  }

  /** What a cell is looked up by. */
  public static String folded(String cell) {
    return ColumnMap.folded(cell);
  }
}
