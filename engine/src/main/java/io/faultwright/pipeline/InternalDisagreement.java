package io.faultwright.pipeline;

/** Thrown where the analyses and Drools judge one situation differently: one of them is wrong. */
public final class InternalDisagreement extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  InternalDisagreement(String message) {
    super(message);
  }
}
