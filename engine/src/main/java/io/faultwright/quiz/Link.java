package io.faultwright.quiz;

/**
 * A page of the handbook, as guides link to it: {@code fault:charge-low}.
 *
 * @param kind symptom, fault, reading or guide
 * @param id its id
 */
public record Link(Kind kind, String id) {
  /** The kinds of page that explain items. */
  public enum Kind {
    SYMPTOM,
    FAULT,
    READING,
    GUIDE;

    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  public static Link symptom(String id) {
    return new Link(Kind.SYMPTOM, id);
  }

  public static Link fault(String id) {
    return new Link(Kind.FAULT, id);
  }

  public static Link reading(String id) {
    return new Link(Kind.READING, id);
  }

  public static Link guide(String id) {
    return new Link(Kind.GUIDE, id);
  }

  /** The id of its element in the handbook, for instance {@code fault-charge-low}. */
  public String anchor() {
    return kind.word() + "-" + id;
  }

  @Override
  public String toString() {
    return kind.word() + ":" + id;
  }
}
