package io.faultwright.revision;

import io.faultwright.source.Sources;
import java.util.List;

/** Earlier states of a knowledge base. */
public interface History {
  /**
   * All states that led to the one of today, that one first; none where there is no history.
   *
   * @throws io.faultwright.diagnostic.Unreadable where it cannot be read
   */
  List<Moment> moments();

  /**
   * Every file of the knowledge base in one of these states.
   *
   * @param id of the moment
   * @throws io.faultwright.diagnostic.Unreadable where there is no such state, or no knowledge base
   *     in it
   */
  Sources read(String id);
}
