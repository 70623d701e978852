package io.faultwright.release;

import io.faultwright.model.SignOff;
import io.faultwright.model.Signer;

/** Looks whether a signature with a key is that of a person. */
@FunctionalInterface
public interface SignatureCheck {
  /** Looks at none of them. */
  SignatureCheck NONE = (signOff, signer) -> Proof.UNCHECKED;

  /**
   * What the tool of the signature says.
   *
   * @param signOff one that carries a signature
   * @param signer the person it names, with at least one key of that format
   */
  Proof of(SignOff signOff, Signer signer);
}
