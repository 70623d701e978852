package io.faultwright.report;

import io.faultwright.grading.Draw;
import io.faultwright.grading.Draw.Ticket;
import java.util.List;
import java.util.stream.Collectors;

/** A draw among participants, with all that is needed to repeat it. */
public final class DrawText {
  private DrawText() {}

  /**
   * The draw.
   *
   * @param wanted how many are drawn
   * @param participants numbers of those who take part
   */
  public static String write(int wanted, String seed, List<String> participants) {
    List<Ticket> tickets = Draw.tickets(seed, participants);
    List<Ticket> drawn = tickets.subList(0, Math.min(wanted, tickets.size()));
    String few =
        wanted > tickets.size() ? "  Only " + tickets.size() + " could be drawn from.\n" : "";
    return "Drawn: "
        + drawn.stream().map(Ticket::participant).collect(Collectors.joining(", "))
        + "\n"
        + few
        + "\nHow to repeat it\n"
        + "  Everybody who handed in on time and is graded takes part, by number: "
        + String.join(", ", participants)
        + "\n  Take the SHA-256 of the seed, a colon and the number, as UTF-8 text."
        + "\n  Those with the lowest values are drawn, the lowest first."
        + "\n  Seed: "
        + Columns.printable(seed)
        + "\n  It is fair where the seed was announced before anybody handed in, or comes from a"
        + " public source that nobody here can choose.\n\n"
        + tickets.stream()
            .map(ticket -> "  " + ticket.digest() + "  " + ticket.participant() + "\n")
            .collect(Collectors.joining());
  }
}
