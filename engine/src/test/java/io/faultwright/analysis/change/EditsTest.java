package io.faultwright.analysis.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.SmallBases;
import io.faultwright.change.Edit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each part of a knowledge base, written differently, and what is told of it. */
class EditsTest {
  private static final String BASE =
      """
      equipment:
        families: { fell: { title: Fell, about: Small. }, tarn: { title: Tarn } }
        options: { fan: { title: Fan, values: { one: One fan, two: Two fans } } }
        models:
          F-1: { title: Fell 1, family: fell, options: { fan: one }, data: { charge: 1.1 kg } }
          T-1: { family: tarn, options: { fan: two }, data: { charge: 2.2 kg } }
      readings:
        m: { ask: How much, title: Much, unit: bar(g), range: 0 to 10, how: [Connect it., Wait.], where: Valve, phase: cooling, instrument: Gauge, accuracy: 0.5 bar, access: panel, minutes: 4, cautions: [hot] }
        d: { ask: How warm, unit: °C, range: -10 to 40, set-up: g, after: [s] }
        e: { ask: How cold, unit: °C, range: -10 to 40 }
        gap: { difference: [d, e] }
        s: { ask: Which, values: { lo: Low, ok: Right, hi: High }, normal: ok, applies: { fan: one } }
      limits:
        m:
          by: [family, d]
          between: interpolate
          rows: [{ family: fell, d: 0, low: 2 }, { family: fell, d: 30, low: 2, high: 4 }]
      cautions:
        hot: { signal: caution, text: It is hot., covers: [panel] }
      set-ups:
        g: { title: Gauge on, minutes: 3 }
        h: { title: Hose on, minutes: 1 }
      parts:
        seal: { title: Seal, number: 12-7 }
      faults:
        a: { title: A, about: Often., remedy: [Mend it., Clean it.], verify: [Look.], parts: [seal], nameplate: [charge], cautions: [hot], frequency: 2, applies: { fan: one } }
        b: { title: B, remedy: [Mend it.], verify: [Look.] }
      never:
        n: { when: { s: lo, m: above 9 bar(g) }, because: No. }
      symptoms:
        x:
          title: X
          about: It is.
          applies: { family: [fell, tarn] }
          recognise: { s: [lo, hi] }
          first: [{ when: { d: above 5 °C }, otherwise: y }]
          together: [[a, b]]
          never: { own: { when: { s: hi, gap: above 9 K }, because: No. } }
          rules:
            r1: { when: { all: [{ m: below limits }, { s: lo }] }, conclude: [a, b], because: So. }
            r2: { when: { m: 2 to 3 bar(g) }, conclude: a, instead-of: [r1], because: So. }
            r3: { when: { s: hi }, exclude: b, because: So. }
            r4: { when: { not: { s: hi } }, escalate: hotline, because: So. }
        y: { title: Y, rules: { r: { when: {}, conclude: a, because: So. } } }
      charts:
        c:
          title: By hand
          symptom: y
          applies: { fan: one }
          start: look
          steps:
            look: { check: s, answers: [{ is: lo, conclude: a }, { is: not lo, next: more }] }
            more: { check: m, answers: [{ is: below limits, conclude: b }, { is: above 2, escalate: us }] }
      cases:
        one: { symptom: x, given: { s: lo, m: 1 bar(g) }, expect: a, note: Seen., origin: Field }
      """;

  private static List<Edit> edits(String from, String to) {
    assertTrue(BASE.contains(from), from);
    return Edits.between(SmallBases.read(BASE), SmallBases.read(BASE.replace(from, to)));
  }

  private static String name(Edit edit) {
    return edit.concern().word() + " " + edit.kind() + " " + edit.id() + " " + edit.field();
  }

  /** One edit, with its words before and after. */
  private static void edited(String name, String before, String after, String from, String to) {
    List<Edit> edits = edits(from, to);
    assertEquals(List.of(name), edits.stream().map(EditsTest::name).toList());
    assertEquals(before, edits.get(0).before().orElseThrow().text());
    assertEquals(after, edits.get(0).after().orElseThrow().text());
    assertEquals("changed", edits.get(0).manner());
  }

  private static void same(String from, String to) {
    assertEquals(List.of(), edits(from, to));
  }

  private static void whole(String name, String manner, String from, String to) {
    assertEquals(
        List.of(name + manner),
        edits(from, to).stream().map(edit -> name(edit) + edit.manner()).toList());
  }

  @Test
  void nothingIsWrittenDifferently() {
    same("It is hot.", "It is hot.");
  }

  @Test
  void equipment() {
    edited("text family fell title", "Fell", "Fall", "{ title: Fell,", "{ title: Fall,");
    edited("text family fell about", "Small.", "Tiny.", "Small.", "Tiny.");
    edited("text option fan title", "Fan", "Fans", "{ title: Fan,", "{ title: Fans,");
    edited(
        "text option fan values",
        "one: One fan\ntwo: Two fans",
        "one: One fan\ntwo: Three fans",
        "Two fans",
        "Three fans");
    edited("text model F-1 title", "Fell 1", "Fell one", "title: Fell 1", "title: Fell one");
    edited("text model F-1 data", "charge: 1.1 kg", "charge: 1.2 kg", "1.1 kg", "1.2 kg");
    edited(
        "rules model T-1 family and options",
        "tarn\nfan: two",
        "tarn\nfan: one",
        "family: tarn, options: { fan: two }",
        "family: tarn, options: { fan: one }");
  }

  @Test
  void readings() {
    edited("work reading m how", "Connect it.\nWait.", "Wait.", "[Connect it., Wait.]", "[Wait.]");
    edited("work reading m where", "Valve", "Pipe", "where: Valve", "where: Pipe");
    edited("work reading m phase", "cooling", "defrost", "phase: cooling", "phase: defrost");
    edited("work reading m instrument", "Gauge", "Dial", "instrument: Gauge", "instrument: Dial");
    edited("work reading m access", "panel", "outside", "access: panel", "access: outside");
    edited("work reading s cautions", "", "hot", "ask: Which,", "ask: Which, cautions: [hot],");
    edited("text reading m title", "Much", "More", "title: Much", "title: More");
    edited("text reading m ask", "How much", "How many", "How much", "How many");
    edited("text reading m minutes", "4", "5", "minutes: 4", "minutes: 5");
    edited("text reading s normal", "ok", "lo", "normal: ok", "normal: lo");
    edited(
        "text reading s titles of values",
        "hi: High\nlo: Low\nok: Right",
        "hi: High\nlo: Low\nok: Good",
        "Right",
        "Good");
    assertEquals(
        List.of("work reading m accuracy"),
        edits("accuracy: 0.5 bar", "accuracy: 0.4 bar").stream().map(EditsTest::name).toList());
    assertEquals(
        List.of("rules reading s applies"),
        edits("applies: { fan: one } }\nlimits", "applies: { fan: two } }\nlimits").stream()
            .map(EditsTest::name)
            .toList());
    assertEquals(
        List.of("text reading s titles of values", "rules reading s values"),
        edits("hi: High }, normal: ok", "hi: High, top: Top }, normal: ok").stream()
            .map(EditsTest::name)
            .toList());
  }

  @Test
  void whatComesBeforeAReading() {
    edited("work reading d set-up", "g", "h", "set-up: g", "set-up: h");
    edited("work reading d after", "s", "", ", after: [s]", "");
    edited("work set-up g title", "Gauge on", "Dial on", "Gauge on", "Dial on");
    edited("text set-up g minutes", "3", "5", "minutes: 3", "minutes: 5");
    edited("work set-up h access", "outside", "panel", "minutes: 1", "minutes: 1, access: panel");
    edited(
        "work symptom y hazardous-checks",
        "last",
        "anywhere",
        "y: {",
        "y: { hazardous-checks: anywhere,");
  }

  @Test
  void chartsOfTheTrainer() {
    edited("text chart c title", "By hand", "By foot", "By hand", "By foot");
    edited("work chart c start", "look", "more", "start: look", "start: more");
    edited("work chart c symptom", "y", "x", "symptom: y", "symptom: x");
    edited(
        "work chart c steps",
        "look: S: Low → a\nlook: S: not Low → more\nmore: Much: below limits → b\n"
            + "more: Much: above 2 bar(g) → escalate: us",
        "look: S: Low → b\nlook: S: not Low → more\nmore: Much: below limits → b\n"
            + "more: Much: above 2 bar(g) → escalate: us",
        "is: lo, conclude: a",
        "is: lo, conclude: b");
    same("{ is: above 2, ", "{ is: above 2 bar(g), ");
    assertEquals(
        List.of("work chart c applies"),
        edits("applies: { fan: one }\n    start", "applies: { fan: two }\n    start").stream()
            .map(EditsTest::name)
            .toList());
  }

  @Test
  void whatAReadingIsComputedFrom() {
    assertEquals(
        List.of("rules reading gap difference", "work reading gap how"),
        edits("difference: [d, e]", "difference: [e, d]").stream().map(EditsTest::name).toList());
  }

  @Test
  void faultsPartsAndCautions() {
    edited("work fault a remedy", "Mend it.\nClean it.", "Mend it.", ", Clean it.]", "]");
    edited("text fault a about", "Often.", "Rarely.", "Often.", "Rarely.");
    edited("text fault a frequency", "2", "3", "frequency: 2", "frequency: 3");
    edited("work fault a parts", "seal", "", "parts: [seal], ", "");
    edited("work fault a nameplate", "charge", "", "nameplate: [charge], ", "");
    edited("text fault b title", "B", "Be", "title: B,", "title: Be,");
    edited("work part seal title", "Seal", "Ring", "title: Seal", "title: Ring");
    edited("work part seal number", "12-7", "12-8", "12-7", "12-8");
    edited("work caution hot text", "It is hot.", "Hot!", "It is hot.", "Hot!");
    edited("work caution hot signal", "CAUTION", "WARNING", "signal: caution", "signal: warning");
    assertEquals(
        List.of("work fault b verification"),
        edits(
                "b: { title: B, remedy: [Mend it.], verify: [Look.]",
                "b: { title: B, remedy: [Mend it.], verify: [Read.]")
            .stream()
            .map(EditsTest::name)
            .toList());
  }

  /** A step is its words, its access and its cautions; only the words are told. */
  @Test
  void whatAStepTouches() {
    edited(
        "work fault b remedy",
        "Mend it.",
        "Mend it.",
        "b: { title: B, remedy: [Mend it.]",
        "b: { title: B, remedy: [{ do: Mend it., access: live-voltage }]");
  }

  @Test
  void rulesAndStatements() {
    edited("rules rule x/r3 conclusion", "exclude: b", "exclude: a", "exclude: b", "exclude: a");
    edited("rules rule x/r1 conclusion", "a, b", "a", "conclude: [a, b]", "conclude: a");
    edited(
        "rules rule x/r4 conclusion",
        "escalate: hotline",
        "escalate: office",
        "escalate: hotline",
        "escalate: office");
    edited("rules rule x/r2 instead-of", "r1", "", "instead-of: [r1], ", "");
    edited("text symptom x about", "It is.", "It was.", "It is.", "It was.");
    edited("rules symptom x together", "a and b", "", "together: [[a, b]]", "together: []");
    assertEquals(
        List.of("rules never n when"),
        edits("above 9 bar(g)", "above 8 bar(g)").stream().map(EditsTest::name).toList());
    assertEquals(
        List.of("rules never x/own when"),
        edits("gap: above 9 K", "gap: above 8 K").stream().map(EditsTest::name).toList());
    assertEquals(
        List.of("rules symptom x first"),
        edits("d: above 5 °C", "d: above 6 °C").stream().map(EditsTest::name).toList());
    assertEquals(
        List.of("rules symptom x recognise"),
        edits("recognise: { s: [lo, hi] }", "recognise: { s: [lo] }").stream()
            .map(EditsTest::name)
            .toList());
    assertEquals(
        List.of("rules symptom x applies"),
        edits("applies: { family: [fell, tarn] }", "applies: { family: fell }").stream()
            .map(EditsTest::name)
            .toList());
    assertEquals(
        List.of("text rule x/r4 because"),
        edits("escalate: hotline, because: So.", "escalate: hotline, because: Why.").stream()
            .map(EditsTest::name)
            .toList());
  }

  @Test
  void conditionsInOtherWordsAreTheSame() {
    same("all: [{ m: below limits }, { s: lo }]", "all: [{ s: lo }, { m: below limits }]");
    same("all: [{ m: below limits }, { s: lo }]", "m: below limits, s: lo");
    same(
        "all: [{ m: below limits }, { s: lo }]",
        "all: [{ m: below limits }, { s: lo }, { s: lo }]");
    same("m: 2 to 3 bar(g)", "m: 200 to 300 kPa(g)");
    same("d: above 5 °C", "d: above 41 °F");
  }

  @Test
  void conditionsThatDiffer() {
    for (String other :
        List.of(
            "any: [{ m: below limits }, { s: lo }]",
            "all: [{ m: below limits }, { s: ok }]",
            "all: [{ m: above limits }, { s: lo }]",
            "all: [{ m: below limits }, { not: { s: lo } }]")) {
      assertEquals(
          List.of("rules rule x/r1 when"),
          edits("all: [{ m: below limits }, { s: lo }]", other).stream()
              .map(EditsTest::name)
              .toList());
    }
    for (String other :
        List.of("above 2 bar(g)", "at least 2 bar(g)", "below 3 bar(g)", "2 to 4 bar(g)")) {
      assertEquals(1, edits("m: 2 to 3 bar(g)", "m: " + other).size(), other);
    }
    assertEquals(1, edits("d: above 5 °C", "d: at least 5 °C").size());
  }

  @Test
  void limits() {
    edited(
        "rules limits m rows",
        "2 rows",
        "2 rows",
        "d: 30, low: 2, high: 4",
        "d: 30, low: 2, high: 5");
    edited(
        "rules limits m rows",
        "2 rows",
        "2 rows",
        "d: 30, low: 2, high: 4",
        "d: 29, low: 2, high: 4");
    edited("rules limits m rows", "2 rows", "2 rows", "d: 30, low: 2, high: 4", "d: 30, high: 4");
    edited(
        "rules limits m rows",
        "2 rows",
        "1 rows",
        ", { family: fell, d: 30, low: 2, high: 4 }]",
        "]");
    same("{ family: fell, d: 0, low: 2 }", "{ d: 0, low: 200 kPa(g), family: fell }");
  }

  @Test
  void cases() {
    edited("cases case one note", "Seen.", "Heard.", "Seen.", "Heard.");
    edited("cases case one origin", "Field", "Shop", "Field", "Shop");
    edited("cases case one expect", "a", "b", "expect: a", "expect: b");
    assertEquals(
        List.of("cases case one given"),
        edits("given: { s: lo, m: 1 bar(g) }", "given: { s: lo, m: 2 bar(g) }").stream()
            .map(EditsTest::name)
            .toList());
    same("given: { s: lo, m: 1 bar(g) }", "given: { m: 1 bar(g), s: lo }");
  }

  @Test
  void thingsThatComeAndGo() {
    whole(
        "rules rule x/r3 ",
        "removed",
        "      r3: { when: { s: hi }, exclude: b, because: So. }\n",
        "");
    whole("work part ring ", "added", "parts:\n", "parts:\n  ring: { title: Ring }\n");
    whole("rules fault c ", "added", "faults:\n", "faults:\n  c: { title: C, remedy: [Do.] }\n");
    List<Edit> renamed = edits("  n: { when: { s: lo, m", "  o: { when: { s: lo, m");
    assertEquals(
        List.of("rules never n  removed", "rules never o  added"),
        renamed.stream().map(edit -> name(edit) + " " + edit.manner()).toList());
    assertTrue(renamed.get(0).whole());
    assertEquals("", renamed.get(0).before().orElseThrow().text());
  }
}
