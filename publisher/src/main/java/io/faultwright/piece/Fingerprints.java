package io.faultwright.piece;

import io.faultwright.quantity.Polyline;
import io.faultwright.source.Place;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
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

  /** As above, but the order counts in which the things of one kind were written. */
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
    MessageDigest digest = sha256();
    add(digest, value);
    return digest.digest();
  }

  private void add(MessageDigest to, Object value) {
    if (value instanceof Record record) {
      addRecord(to, record);
    } else if (value instanceof Optional<?> maybe) {
      addAll(to, "optional", maybe.stream().toList());
    } else if (value instanceof List<?> list) {
      addAll(to, "list", list);
    } else if (value instanceof SortedSet<?> set) {
      addAll(to, "set", set);
    } else if (value instanceof Set<?> set) {
      addUnordered(to, set.stream());
    } else if (value instanceof SortedMap<?, ?> map) {
      addAll(to, "map", map.entrySet());
      addAll(to, "order", ordered ? WrittenOrder.of(map) : List.of());
    } else if (value instanceof Map<?, ?> map) {
      addUnordered(to, map.entrySet().stream());
    } else if (value instanceof Map.Entry<?, ?> entry) {
      add(to, entry.getKey());
      add(to, entry.getValue());
    } else if (value instanceof byte[] bytes) {
      addBytes(to, "bytes", bytes);
    } else if (value instanceof Polyline line) {
      addAll(to, "line", line.knots());
    } else {
      addPlain(to, value);
    }
  }

  private void addPlain(MessageDigest to, Object value) {
    if (value instanceof String text) {
      addText(to, "text", text);
    } else if (value instanceof Enum<?> constant) {
      addText(to, constant.getDeclaringClass().getName(), constant.name());
    } else if (value instanceof Number || value instanceof Boolean) {
      addText(to, value.getClass().getName(), value.toString());
    } else {
      throw new IllegalArgumentException("no fingerprint is taken of " + value.getClass());
    }
  }

  private void addAll(MessageDigest to, String kind, Iterable<?> values) {
    addText(to, "kind", kind);
    values.forEach(value -> add(to, value));
    addText(to, "kind", "end");
  }

  private void addUnordered(MessageDigest to, Stream<?> values) {
    List<byte[]> digests = values.map(this::digest).sorted(Arrays::compare).toList();
    addAll(to, "unordered", digests);
  }

  private void addRecord(MessageDigest to, Record record) {
    List<RecordComponent> components = counted.get(record.getClass());
    if (isShared(components)) {
      addBytes(to, "record", shared(record, components));
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
    MessageDigest own = sha256();
    addComponents(own, record, components);
    return own.digest();
  }

  private void addComponents(MessageDigest to, Record record, List<RecordComponent> components) {
    addText(to, "record", record.getClass().getName());
    components.forEach(component -> add(to, value(record, component)));
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException closed) {
      throw new IllegalStateException(component.toString(), closed);
    }
  }

  private static void addText(MessageDigest to, String kind, String text) {
    addBytes(to, kind, text.getBytes(StandardCharsets.UTF_8));
  }

  /** With its kind and its length, so that no two values look alike side by side. */
  private static void addBytes(MessageDigest to, String kind, byte[] bytes) {
    to.update(kind.getBytes(StandardCharsets.UTF_8));
    to.update((":" + bytes.length + ":").getBytes(StandardCharsets.UTF_8));
    to.update(bytes);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
