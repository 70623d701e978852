package io.faultwright.release;

import io.faultwright.model.Catalogue;
import io.faultwright.model.Chart;
import io.faultwright.model.Condition;
import io.faultwright.model.Curve;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Unit;
import io.faultwright.source.Place;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The canonical text of a thing of the knowledge base: equal exactly where two things say the same.
 *
 * <p>Every component of every record counts, so that a new one cannot be forgotten. Left out are
 * places, what is empty (so that what the language learns later changes no text of today), and the
 * few components of {@link #LEFT_OUT}. Where order means nothing, parts are sorted.
 */
final class Canon {
  /** Components that mean nothing for what is signed, or stand in the text of another part. */
  private static final Map<Class<?>, Set<String>> LEFT_OUT =
      Map.of(
          Fault.class, Set.of("frequency"),
          Symptom.class, Set.of("rules", "nevers"),
          Curve.OfSaturation.class, Set.of("refrigerants"),
          Model.class, Set.of("data"));

  /**
   * Records of which a list is in no order: rows of a table, answers, values, parts of a sequence.
   */
  private static final Set<Class<?>> UNORDERED =
      Set.of(
          LimitsTable.Row.class,
          Chart.Branch.class,
          NamedValue.class,
          Sequence.Output.class,
          Sequence.Input.class,
          Sequence.Time.class,
          Sequence.Row.class,
          Sequence.Timer.class,
          Sequence.Counter.class,
          Sequence.Phase.class,
          Sequence.Energised.class,
          Sequence.Transition.class,
          Sequence.InState.class,
          Sequence.Apart.class,
          Sequence.Outcome.class,
          Sequence.Course.class,
          Sequence.Happening.class);

  private final SortedMap<String, Catalogue> translations = new TreeMap<>();

  /** Texts count with their translations into the languages of the handbook. */
  Canon(KnowledgeBase kb) {
    Stream.concat(Stream.of(kb.handbook().language()), kb.handbook().translatedTo().stream())
        .forEach(
            tag -> kb.wordbook().catalogue(tag).ifPresent(known -> translations.put(tag, known)));
  }

  /** The text of records, collections, maps and plain values. */
  String of(Object value) {
    if (value instanceof String text) {
      return text(text, List.of(text));
    }
    if (value instanceof Condition condition) {
      return condition(condition);
    }
    if (value instanceof Unit unit) {
      return unit.symbol();
    }
    if (value instanceof Record record) {
      return record(record);
    }
    if (value instanceof Optional<?> maybe) {
      return maybe.map(this::of).orElse("");
    }
    if (value instanceof Collection<?> many) {
      return collection(many);
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> of(entry.getKey()) + ": " + of(entry.getValue()))
          .sorted()
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return plain(value);
  }

  private String plain(Object value) {
    if (value instanceof Polyline line) {
      return "line " + Hash.of(line.knots().stream().map(this::of).collect(Collectors.joining()));
    }
    if (value instanceof Enum<?> constant) {
      return constant.name();
    }
    if (value instanceof Number || value instanceof Boolean) {
      return value.toString();
    }
    throw new IllegalArgumentException("nothing is signed of " + value.getClass());
  }

  /**
   * A text with its translations; a line break or a run of blanks is worth a blank.
   *
   * @param keys under which a translation is looked for, the first that has one
   */
  String text(String text, List<String> keys) {
    return quoted(Catalogue.key(text)) + translated(keys);
  }

  /** A text in which blanks and line breaks count. */
  String verbatim(String text) {
    return quoted(text) + translated(List.of(text));
  }

  private String translated(List<String> keys) {
    StringBuilder all = new StringBuilder();
    translations.forEach(
        (tag, catalogue) ->
            keys.stream()
                .flatMap(key -> catalogue.translation(key).stream())
                .findFirst()
                .ifPresent(
                    other -> all.append(" ").append(tag).append(quoted(Catalogue.key(other)))));
    return all.toString();
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
  }

  /** The same for any order and repetition of its parts; one part alone is that part. */
  private String condition(Condition condition) {
    return condition.match(
        all -> joined("all", all.parts()),
        any -> joined("any", any.parts()),
        not -> "not(" + condition(not.part()) + ")",
        test -> quoted(test.subject()) + " " + of(test.pattern()));
  }

  private String joined(String word, List<Condition> parts) {
    List<String> texts = parts.stream().map(this::condition).distinct().sorted().toList();
    return texts.size() == 1
        ? texts.get(0)
        : texts.stream().collect(Collectors.joining(", ", word + "(", ")"));
  }

  private String collection(Collection<?> many) {
    boolean ordered =
        many instanceof List<?>
            && many.stream().noneMatch(one -> UNORDERED.contains(one.getClass()));
    Stream<String> texts = many.stream().map(this::of);
    return (ordered ? texts : texts.sorted()).collect(Collectors.joining(", ", "[", "]"));
  }

  private String record(Record record) {
    Set<String> leftOut = LEFT_OUT.getOrDefault(record.getClass(), Set.of());
    return Arrays.stream(record.getClass().getRecordComponents())
        .filter(component -> component.getType() != Place.class)
        .filter(component -> !leftOut.contains(component.getName()))
        .map(component -> component(record, component))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("; ", record.getClass().getSimpleName() + "(", ")"));
  }

  private String component(Record record, RecordComponent component) {
    Object value = Objects.requireNonNull(value(record, component));
    return isEmpty(value) ? "" : component.getName() + "=" + of(value);
  }

  private static boolean isEmpty(Object value) {
    return value.equals("")
        || value.equals(Optional.empty())
        || value.equals(false)
        || value.equals(Condition.ALWAYS)
        || value instanceof Collection<?> many && many.isEmpty()
        || value instanceof Map<?, ?> map && map.isEmpty();
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException closed) {
      throw new IllegalStateException(component.toString(), closed);
    }
  }
}
