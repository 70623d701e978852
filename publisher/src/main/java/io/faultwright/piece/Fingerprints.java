package io.faultwright.piece;

import io.faultwright.quantity.Polyline;
import io.faultwright.source.Place;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Stream;

/**
 * Takes the fingerprints of values. All components of all records count, so that a new one cannot
 * be forgotten; a kind of value that is not known here is refused instead of being overlooked.
 * Several threads may use one.
 */
public final class Fingerprints {
  private static final char OPTIONAL = 'o';
  private static final char LIST = 'l';
  private static final char SET = 's';
  private static final char MAP = 'm';
  private static final char ORDER = 'w';
  private static final char UNORDERED = 'u';
  private static final char LINE = 'k';
  private static final char END = 'e';
  private static final char RECORD = 'r';
  private static final char SHARED = 'h';
  private static final char BYTES = 'b';
  private static final char TEXT = 't';
  private static final char TYPE = 'c';
  private static final char PLAIN = 'p';

  private final ClassValue<List<RecordComponent>> counted =
      new ClassValue<>() {
        @Override
        protected List<RecordComponent> computeValue(Class<?> type) {
          return components(type);
        }
      };

  private final Set<Class<?>> ignored;
  private final boolean ordered;

  /** Things that many values share, such as a reading; each is looked at once. */
  private final Map<Object, byte[]> known = Collections.synchronizedMap(new IdentityHashMap<>());

  /** Fingerprints in which everything counts. */
  public Fingerprints() {
    this(Set.of(), false);
  }

  private Fingerprints(Set<Class<?>> ignored, boolean ordered) {
    this.ignored = ignored;
    this.ordered = ordered;
  }

  /** Fingerprints in which it does not count in which line of which file something stands. */
  public static Fingerprints withoutPlaces() {
    return new Fingerprints(Set.of(Place.class), false);
  }

  /**
   * As above, but within a thing the order counts in which its parts were written, such as that of
   * the rules of a symptom. In which order the things themselves were written does not count.
   */
  public static Fingerprints inWrittenOrder() {
    return new Fingerprints(Set.of(Place.class), true);
  }

  private List<RecordComponent> components(Class<?> type) {
    List<RecordComponent> components =
        Arrays.stream(type.getRecordComponents())
            .filter(component -> !ignored.contains(component.getType()))
            .toList();
    components.forEach(component -> component.getAccessor().setAccessible(true));
    return components;
  }

  /** The fingerprint of some values, their order included. */
  public Fingerprint of(Object... values) {
    return new Fingerprint(HexFormat.of().formatHex(digest(List.of(values))));
  }

  private byte[] digest(Object value) {
    Spelling spelling = new Spelling();
    add(spelling, value);
    return spelling.digest();
  }

  private void add(Spelling to, Object value) {
    if (value instanceof String text) {
      to.text(TEXT, text);
    } else if (value instanceof Record record) {
      addRecord(to, record);
    } else if (value instanceof Optional<?> maybe) {
      to.mark(OPTIONAL);
      maybe.ifPresent(present -> add(to, present));
      to.mark(END);
    } else if (value instanceof Collection<?> many) {
      addCollection(to, many);
    } else if (value instanceof Map<?, ?> map) {
      addMap(to, map);
    } else if (value instanceof Map.Entry<?, ?> entry) {
      add(to, entry.getKey());
      add(to, entry.getValue());
    } else {
      addPlain(to, value);
    }
  }

  private void addCollection(Spelling to, Collection<?> many) {
    if (many instanceof List<?>) {
      addAll(to, LIST, many);
    } else if (many instanceof SortedSet<?>) {
      addAll(to, SET, many);
    } else if (many instanceof Set<?>) {
      addUnordered(to, many.stream());
    } else {
      throw unknown(many);
    }
  }

  private void addMap(Spelling to, Map<?, ?> map) {
    if (map instanceof SortedMap<?, ?> sorted) {
      addAll(to, MAP, sorted.entrySet());
    } else {
      addUnordered(to, map.entrySet().stream());
    }
  }

  private void addPlain(Spelling to, Object value) {
    if (value instanceof byte[] bytes) {
      to.bytes(BYTES, bytes);
    } else if (value instanceof Polyline line) {
      addAll(to, LINE, line.knots());
    } else if (value instanceof Enum<?> constant) {
      to.text(TYPE, constant.getDeclaringClass().getName());
      to.text(PLAIN, constant.name());
    } else if (value instanceof Number || value instanceof Boolean) {
      to.text(TYPE, value.getClass().getName());
      to.text(PLAIN, value.toString());
    } else {
      throw unknown(value);
    }
  }

  private static IllegalArgumentException unknown(Object value) {
    return new IllegalArgumentException("no fingerprint is taken of " + value.getClass());
  }

  private void addAll(Spelling to, char kind, Iterable<?> values) {
    to.mark(kind);
    values.forEach(value -> add(to, value));
    to.mark(END);
  }

  private void addUnordered(Spelling to, Stream<?> values) {
    List<byte[]> digests = values.map(this::digest).sorted(Arrays::compare).toList();
    addAll(to, UNORDERED, digests);
  }

  private void addRecord(Spelling to, Record record) {
    List<RecordComponent> components = counted.get(record.getClass());
    if (isShared(components)) {
      to.bytes(SHARED, shared(record, components));
    } else {
      addComponents(to, record, components);
    }
  }

  private byte[] shared(Record record, List<RecordComponent> components) {
    byte[] before = known.get(record);
    byte[] digest = before == null ? digest(record, components) : before;
    known.put(record, digest);
    return digest;
  }

  /** Whether it is a thing of its own rather than a part of one. */
  private static boolean isShared(List<RecordComponent> components) {
    return components.size() > 2 && components.get(0).getName().equals("id");
  }

  private byte[] digest(Record record, List<RecordComponent> components) {
    Spelling own = new Spelling();
    addComponents(own, record, components);
    return own.digest();
  }

  private void addComponents(Spelling to, Record record, List<RecordComponent> components) {
    to.text(RECORD, record.getClass().getName());
    boolean orders = ordered && isShared(components);
    for (RecordComponent component : components) {
      Object value = value(record, component);
      add(to, value);
      if (orders && value instanceof SortedMap<?, ?> map) {
        addAll(to, ORDER, WrittenOrder.of(map));
      }
    }
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException closed) {
      throw new IllegalStateException(component.toString(), closed);
    }
  }
}
