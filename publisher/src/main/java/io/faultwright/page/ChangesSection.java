package io.faultwright.page;

import java.util.List;

/**
 * What changed since an earlier revision.
 *
 * @param since the earlier revision in words
 * @param changed complaints with another outcome in some situation
 * @param kept complaints in which every situation has the outcome it had
 * @param added complaints that are new
 * @param removed titles of complaints that are gone
 * @param equipment models that came or went
 * @param sequences sequences of operation that do something otherwise
 * @param work what is done differently although the outcome is the same
 */
public record ChangesSection(
    String since,
    List<ChangedComplaint> changed,
    List<Link> kept,
    List<Link> added,
    List<String> removed,
    List<Fact> equipment,
    List<ChangedSequence> sequences,
    List<WorkItem> work)
    implements Content {
  /**
   * A complaint in which something is answered otherwise now.
   *
   * @param link to it
   * @param always what all its changes have in common
   * @param changes one for each way in which the outcome changed
   * @param more whether there are more situations than are listed
   */
  public record ChangedComplaint(
      Link link, List<Fact> always, List<Change> changes, boolean more) {}

  /**
   * One change of an outcome.
   *
   * @param before what was said
   * @param now what is said
   * @param where for whom and in which situations: one list, or several of which one must hold
   */
  public record Change(String before, String now, List<List<Fact>> where) {}

  /**
   * A sequence of operation that does something otherwise.
   *
   * @param link to it; without address where it is gone
   * @param turns what it does otherwise
   */
  public record ChangedSequence(Link link, List<Turn> turns) {}

  /**
   * A part of a sequence of operation that is otherwise.
   *
   * @param what which part
   * @param before what it was; empty where that would say nothing
   * @param now what it is; empty where that would say nothing
   * @param machines for which; empty where there are none
   */
  public record Turn(String what, String before, String now, String machines) {}

  /**
   * Something that is done differently.
   *
   * @param name of the fault, reading, part or caution
   * @param href its page; empty where it has none
   * @param what which parts of it changed
   */
  public record WorkItem(String name, String href, String what) {}
}
