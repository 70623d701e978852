package io.faultwright.quiz;

import java.util.Locale;

/**
 * Why a wrong choice is nearly right.
 *
 * @param why what is missing
 * @param detail id of the reading, or the model or version, that makes the difference; may be empty
 */
public record NearMiss(Why why, String detail) {
  /** What is missing. */
  public enum Why {
    /** It would be right if one reading were another; the detail is its id. */
    ONE_READING,
    /** It would be right for another model; the detail is its number. */
    OTHER_MODEL,
    /** It would be right with another software version; the detail is the version. */
    OTHER_SOFTWARE,
    /** It would be right if a reading that the limits follow were another; the detail is its id. */
    OTHER_DRIVER,
    /** It tells in some situations, not in all. */
    NOT_ALWAYS,
    /** It is asked later on. */
    LATER,
    /** It asks for another value of the same reading; the detail is its id. */
    OTHER_VALUE,
    /** Two neighbours have changed places. */
    SWAPPED,
    /** A caution comes after its step. */
    CAUTION_TOO_LATE;

    /** As in files, for instance {@code other-model}. */
    public String slug() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
