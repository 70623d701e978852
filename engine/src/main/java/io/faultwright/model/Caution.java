package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.Set;

/**
 * A warning shown before the step that needs it.
 *
 * @param id identifier
 * @param place where it stands
 * @param signal how grave it is
 * @param text the hazard and how to avoid it
 * @param covers kinds of access to which it belongs by itself
 */
public record Caution(String id, Place place, Signal signal, String text, Set<Access> covers) {
  /** Id of the caution that belongs to every flammable refrigerant. */
  public static final String FLAMMABLE_REFRIGERANT = "flammable-refrigerant";

  /** Signal words (ANSI Z535.6), gravest first. */
  public enum Signal {
    DANGER,
    WARNING,
    CAUTION,
    NOTICE
  }
}
