package io.faultwright.layout;

import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.Node.Connector.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** Gives the connectors their letters and pages once it is known what stands where. */
final class Numbering {
  private final Map<String, String> marks = new HashMap<>();
  private final Map<String, Integer> pageOf = new HashMap<>();
  private final Map<String, SortedSet<Integer>> pagesTo = new HashMap<>();

  /** The numbering of parts by page. */
  Numbering(List<List<Part>> pages) {
    for (int i = 0; i < pages.size(); i++) {
      int page = i + 1;
      for (Part part : pages.get(i)) {
        pageOf.put(part.id(), page);
        part.exits().forEach(id -> leadsTo(id, page));
      }
    }
  }

  private void leadsTo(String id, int page) {
    marks.computeIfAbsent(id, unmarked -> letters(marks.size()));
    pagesTo.computeIfAbsent(id, none -> new TreeSet<>()).add(page);
  }

  /** A, B … Z, AA, AB … */
  private static String letters(int number) {
    String last = Character.toString('A' + number % 26);
    return number < 26 ? last : letters(number / 26 - 1) + last;
  }

  Part numbered(Part part) {
    return Part.drawn(part.id(), numbered(part.tree()));
  }

  private Tree numbered(Tree tree) {
    List<Tree.Limb> limbs = new ArrayList<>();
    for (Tree.Limb limb : tree.limbs()) {
      limbs.add(new Tree.Limb(limb.answer(), numbered(limb.tree())));
    }
    return new Tree(numbered(tree.node()), limbs);
  }

  private Node numbered(Node node) {
    return node instanceof Connector connector ? numbered(connector) : node;
  }

  private Node numbered(Connector connector) {
    String id = connector.id();
    List<Integer> pages =
        connector.side() == Side.EXIT ? List.of(pageOf.get(id)) : List.copyOf(pagesTo.get(id));
    String end = connector.side() == Side.EXIT ? "to-" : "at-";
    return new Connector(end + id, marks.get(id), connector.side(), pages);
  }
}
