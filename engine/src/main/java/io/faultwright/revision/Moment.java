package io.faultwright.revision;

import java.util.List;

/**
 * A state in the history of a knowledge base: a commit, or a release.
 *
 * @param id its name in full
 * @param date when it was written, ISO 8601, in the zone of its writer
 * @param summary first line of its message
 * @param state name of the folder's content, the same where the files are the same; empty where the
 *     folder was not there
 * @param parents ids of those before it
 */
public record Moment(String id, String date, String summary, String state, List<String> parents) {
  private static final int SHORT = 8;

  public Moment {
    parents = List.copyOf(parents);
  }

  /** The first digits of a commit's name, the number of a release. */
  public String brief() {
    return id.substring(0, Math.min(SHORT, id.length()));
  }
}
