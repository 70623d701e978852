package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.flow.Node.Check;
import io.faultwright.flow.Node.Ending;
import io.faultwright.flow.Node.Outcome;
import io.faultwright.flow.Node.Start;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A flowchart refuses to be malformed. */
class FlowchartTest {
  private static final Start START = new Start("start", "Dark", "");
  private static final Check LAMP = new Check("lamp", List.of(), List.of(), "Lit?");
  private static final Outcome FUSE = new Outcome("fuse", Ending.FAULT, "Fuse", "");
  private static final Outcome FINE = new Outcome("fine", Ending.REFERRAL, "Fine", "");

  @Test
  void keepsTheOrderOfAnswers() {
    Flowchart chart =
        chart(
            edge("start", "lamp"), new Edge("lamp", "fuse", "No"), new Edge("lamp", "fine", "Yes"));
    assertEquals(List.of("No", "Yes"), chart.from("lamp").stream().map(Edge::answer).toList());
  }

  @Test
  void refusesACheckWithOneExit() {
    assertRefused("wrong number of lines leave lamp", edge("start", "lamp"), edge("lamp", "fuse"));
  }

  @Test
  void refusesACircle() {
    assertRefused(
        "the chart runs in a circle",
        edge("start", "lamp"),
        edge("lamp", "lamp"),
        edge("lamp", "fuse"),
        edge("lamp", "fine"));
  }

  @Test
  void refusesANodeThatCannotBeReached() {
    assertRefused("a node cannot be reached", edge("start", "fuse"));
  }

  @Test
  void refusesAnEdgeToNowhere() {
    assertRefused("an edge leads nowhere", edge("start", "elsewhere"));
  }

  private static void assertRefused(String message, Edge... edges) {
    assertEquals(
        message, assertThrows(IllegalArgumentException.class, () -> chart(edges)).getMessage());
  }

  private static Edge edge(String from, String to) {
    return new Edge(from, to, "");
  }

  private static Flowchart chart(Edge... edges) {
    SortedMap<String, Node> nodes = new TreeMap<>();
    List.of(START, LAMP, FUSE, FINE).forEach(node -> nodes.put(node.id(), node));
    if (List.of(edges).stream().noneMatch(edge -> edge.to().equals("fine")) && edges.length == 2) {
      nodes.remove("fine");
    }
    return new Flowchart("dark", START, nodes, List.of(edges));
  }
}
