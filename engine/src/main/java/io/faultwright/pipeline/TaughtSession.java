package io.faultwright.pipeline;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Session;
import java.util.List;
import java.util.SortedMap;

/** Finds a session by its id. */
public final class TaughtSession {
  private TaughtSession() {}

  /**
   * The session.
   *
   * @throws Unreadable where there is none of that id, with the nearest one
   */
  public static Session of(SortedMap<String, Session> sessions, String id) {
    Session found = sessions.get(id);
    if (found == null) {
      String help =
          sessions.isEmpty()
              ? "write one below `sessions:`"
              : NearMatch.help(id, sessions.keySet());
      throw new Unreadable(
          List.of(new Problem(List.of(), "there is no session `" + id + "`", help)));
    }
    return found;
  }
}
