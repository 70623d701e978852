package io.faultwright.pipeline;

/** A small handbook with a rule for each value of a lamp. */
final class DemoYaml {
  static final String SMALL =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      equipment:
        families: { fell: { title: Fell } }
        models:
          A-1: { title: One, family: fell, options: {} }
          A-2: { title: Two, family: fell, options: {} }
          A-3: { title: Three, family: fell, options: {} }
      readings:
        lamp:
          ask: Which lamp is lit?
          values: { v1: one, v2: two, v3: three, v4: four, v5: five, v6: six, v7: seven, v8: eight, x: other }
        pressure: { ask: How much, unit: bar(g), range: 0 to 10 }
      limits: { pressure: { by: [model], rows: [{ low: 2, high: 4 }] } }
      faults:
        f1: { title: One, remedy: [Replace it.], verify: [Look.] }
        f2: { title: Two, remedy: [Replace it.], verify: [Look.] }
      symptoms:
        other:
          title: Other
          rules:
            always: { when: {}, conclude: f1, because: So. }
        dark:
          title: It is dark
          applies: {}
          recognise: { lamp: not x }
          first: []
          never: {}
          rules:
            r1: { when: { lamp: v1 }, conclude: f1, because: So. }
            r2: { when: { lamp: v2 }, conclude: f1, because: So. }
            r3: { when: { lamp: v3 }, conclude: f1, because: So. }
            r3b: { when: { lamp: x }, conclude: f2, because: So. }
            r4: { when: { lamp: v4 }, conclude: f1, because: So. }
            r5: { when: { lamp: v5, pressure: within limits }, conclude: f1, because: So. }
            r5b: { when: { lamp: v5, pressure: outside limits }, conclude: f2, because: So. }
            r6: { when: { lamp: v6 }, conclude: f1, because: So. }
            r7: { when: { lamp: v7 }, conclude: f1, because: So. }
            r8: { when: { lamp: v8 }, conclude: f1, because: So. }
      """;

  private DemoYaml() {}
}
