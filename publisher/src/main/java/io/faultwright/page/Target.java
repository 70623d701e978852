package io.faultwright.page;

import java.util.Locale;

/**
 * Something a link can lead to.
 *
 * @param kind what it is
 * @param id its id; empty for pages of which there is one
 */
public record Target(Kind kind, String id) {
  public static final Target START = new Target(Kind.START, "");
  public static final Target EQUIPMENT = new Target(Kind.EQUIPMENT, "");
  public static final Target SAFETY = new Target(Kind.SAFETY, "");
  public static final Target INDEX = new Target(Kind.INDEX, "");
  public static final Target FINDINGS = new Target(Kind.FINDINGS, "");

  public static final Target PARTS = new Target(Kind.PARTS, "");
  public static final Target SEARCH = new Target(Kind.SEARCH, "");
  public static final Target DIAGNOSIS = new Target(Kind.DIAGNOSIS, "");
  public static final Target STICKERS = new Target(Kind.STICKERS, "");
  public static final Target CHANGES = new Target(Kind.CHANGES, "");
  public static final Target BULLETIN = new Target(Kind.BULLETIN, "");
  public static final Target RELEASES = new Target(Kind.RELEASES, "");

  /** The things that can be linked to. */
  public enum Kind {
    START,
    SYMPTOM,
    FAULT,
    READING,
    GUIDE,
    SEQUENCE,
    COURSE,
    REFRIGERANT,
    EQUIPMENT,
    FAMILY,
    OPTION,
    MODEL,
    SAFETY,
    CAUTION,
    PARTS,
    PART,
    SEARCH,
    DIAGNOSIS,
    STICKERS,
    INDEX,
    FINDINGS,
    CHANGES,
    BULLETIN,
    RELEASES;

    /** The name in addresses, for instance {@code symptom}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The id of its element, unique in the whole handbook. */
  public String anchor() {
    return id.isEmpty() ? kind.word() : kind.word() + "-" + id;
  }
}
