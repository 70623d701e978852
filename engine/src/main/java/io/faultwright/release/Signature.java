package io.faultwright.release;

import io.faultwright.model.SignOff;
import java.util.List;

/**
 * A sign-off, and what it is worth today.
 *
 * @param signOff by whom, as what, when
 * @param standing whether it holds
 * @param changed what is not as it was signed, in words; empty where nothing changed
 * @param proof whether to believe the name
 */
public record Signature(SignOff signOff, Standing standing, List<String> changed, Proof proof) {
  public Signature {
    changed = List.copyOf(changed);
  }

  /** Whether a sign-off holds. */
  public enum Standing {
    HOLDS,
    /** What was signed means something else now. */
    LAPSED,
    /** The person wrote it, or nobody says who did. */
    OWN,
    /** The signature with a key is not theirs. */
    BROKEN
  }

  public boolean holds() {
    return standing == Standing.HOLDS;
  }
}
