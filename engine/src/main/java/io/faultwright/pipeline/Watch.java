package io.faultwright.pipeline;

/** Is told how far a long flow has come. */
public interface Watch {
  /** Nobody watches. */
  Watch NOBODY = new Watch() {};

  /** A phase begins. */
  default void phase(String name) {}

  /** Within the phase, this many steps of all are done; may be called from several threads. */
  default void step(int done, int all) {}
}
