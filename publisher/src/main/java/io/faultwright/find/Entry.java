package io.faultwright.find;

import java.util.List;

/**
 * Something that can be found.
 *
 * @param kind what it is
 * @param id its id
 * @param title as printed
 * @param context a line that says more
 * @param href where it stands, seen from the site's root
 * @param families ids of the families it is for; empty where it is for all
 */
public record Entry(
    Kind kind, String id, String title, String context, String href, List<String> families) {
  public Entry {
    families = List.copyOf(families);
  }

  /** The kinds of things, in the order in which equally good ones are shown. */
  public enum Kind {
    SYMPTOM,
    FAULT,
    READING,
    SEQUENCE,
    PART,
    MODEL,
    EQUIPMENT,
    GUIDE,
    REFRIGERANT
  }
}
