package io.faultwright.revision;

import java.util.List;

/**
 * A commit in the history of a knowledge base.
 *
 * @param id its name in full
 * @param date when it was written, ISO 8601, in the zone of its writer
 * @param summary first line of its message
 * @param state name of the folder's content, the same where the files are the same; empty where the
 *     folder was not there
 * @param parents ids of the commits before it
 */
public record Moment(String id, String date, String summary, String state, List<String> parents) {
  public Moment {
    parents = List.copyOf(parents);
  }
}
