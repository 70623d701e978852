package io.faultwright.quantity;

/**
 * The safety class of a refrigerant after ASHRAE 34 and ISO 817: a letter for toxicity (B is the
 * higher), a figure for how it burns.
 */
public enum SafetyClass {
  A1,
  A2L,
  A2,
  A3,
  B1,
  B2L,
  B2,
  B3;

  /** Whether a charge of it can burn; class 1 alone does not. */
  public boolean flammable() {
    return this != A1 && this != B1;
  }
}
