package io.faultwright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.flow.Node.Check;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.Node.Start;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Connectors are lettered in the order in which they are met. */
class NumberingTest {
  @Test
  void lettersGoOnAfterZ() {
    List<Tree.Limb> limbs = new ArrayList<>();
    List<List<Part>> pages = new ArrayList<>();
    for (int i = 0; i < 28; i++) {
      limbs.add(new Tree.Limb("", Part.exitTo("n" + i)));
    }
    pages.add(List.of(Part.of(new Tree(new Start("start", "", ""), limbs))));
    for (int i = 0; i < 28; i++) {
      Check check = new Check("n" + i, List.of(), List.of(), "?");
      pages.add(List.of(Part.of(new Tree(check, List.of()))));
    }
    Numbering numbering = new Numbering(pages);
    List<Connector> exits =
        numbering.numbered(pages.get(0).get(0)).tree().limbs().stream()
            .map(limb -> (Connector) limb.tree().node())
            .toList();
    assertEquals("A", exits.get(0).mark());
    assertEquals("Z", exits.get(25).mark());
    assertEquals("AB", exits.get(27).mark());
    assertEquals(List.of(29), exits.get(27).pages());
    Connector entry = (Connector) numbering.numbered(pages.get(28).get(0)).tree().node();
    assertEquals("AB", entry.mark());
    assertEquals(List.of(1), entry.pages());
  }
}
