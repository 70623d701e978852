package io.faultwright.quantity;

/** The two lines between liquid and vapour; for a pure fluid they are one. */
public enum Line {
  /** The first bubble in a liquid: what subcooling is measured from. */
  BUBBLE,
  /** The first drop in a vapour: what superheat is measured from. */
  DEW
}
