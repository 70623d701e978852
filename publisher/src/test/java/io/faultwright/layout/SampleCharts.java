package io.faultwright.layout;

import io.faultwright.flow.Edge;
import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Check;
import io.faultwright.flow.Node.Ending;
import io.faultwright.flow.Node.Outcome;
import io.faultwright.flow.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;

/** Flowcharts made by hand and by a seeded generator; every figure in them is invented. */
public final class SampleCharts {
  public static final Imprint IMPRINT =
      new Imprint(
          "Walk-in freezers, service handbook",
          "Brantmoor Cold",
          "7",
          "2026-03-02",
          "For trained refrigeration technicians. Local electrical and refrigerant codes come first;"
              + " where this chart and a code differ, follow the code. Stop and ask when a reading"
              + " does not fit.",
          false,
          "en");

  private static final Warning LIVE =
      new Warning(
          "DANGER",
          true,
          "Live voltage inside the panel. Licensed persons only; test your meter first.");
  private static final Warning PRESSURE =
      new Warning(
          "WARNING", true, "Refrigerant under pressure. Wear gloves and goggles, purge hoses.");
  private static final Warning CLEAN =
      new Warning("NOTICE", false, "Keep the caps clean; dirt blocks the valve.");

  private SampleCharts() {}

  /** Builds a chart node by node. */
  static final class Builder {
    private final TreeMap<String, Node> nodes = new TreeMap<>();
    private final List<Edge> edges = new ArrayList<>();
    private final Node.Start start;

    Builder(String title, String scope) {
      start = new Node.Start("start", title, scope);
      nodes.put(start.id(), start);
    }

    Builder node(Node node) {
      nodes.put(node.id(), node);
      return this;
    }

    Builder check(String id, String question, List<Warning> warnings, String... steps) {
      return node(new Check(id, warnings, List.of(steps), question));
    }

    Builder fault(String id, String title, String advice) {
      return node(new Outcome(id, Ending.FAULT, title, advice));
    }

    Builder edge(String from, String answer, String to) {
      edges.add(new Edge(from, to, answer));
      return this;
    }

    Flowchart build() {
      return new Flowchart("sample", start, nodes, edges);
    }
  }

  /** One check, two outcomes. */
  public static Flowchart small() {
    return new Builder("Alarm lamp stays on", "All models")
        .check("lamp", "Does the lamp go out after a reset?", List.of())
        .fault("wiring", "Alarm wiring broken", "Remedy: alarm-wiring")
        .fault("none", "Alarm was not acknowledged", "No repair needed")
        .edge("start", "", "lamp")
        .edge("lamp", "Yes", "none")
        .edge("lamp", "No", "wiring")
        .build();
  }

  /** A real-sized chart with every kind of node, a shared check and long cautions. */
  public static Flowchart defrost() {
    return new Builder(
            "Ice is left on the coil after a hot-gas defrost", "Fell and Tarn, hot-gas defrost")
        .check(
            "ice",
            "How does the ice look after the defrost?",
            List.of(),
            "Open the door straight after the drip time and look at the whole coil.")
        .check(
            "voltage",
            "Is there voltage at the coil of the defrost valve?",
            List.of(LIVE),
            "Start a defrost by hand.",
            "Measure at the terminals of the valve coil.")
        .check(
            "discharge",
            "Discharge pressure in defrost against its limits?",
            List.of(PRESSURE, CLEAN),
            "Connect gauges.",
            "Read two minutes into the defrost.")
        .check("software", "Which software version?", List.of(), "See the start screen.")
        .check("fan", "Does the fan stop during the defrost?", List.of())
        .fault("restricted", "Hot-gas defrost valve restricted", "Remedy: defrost-valve-restricted")
        .fault("stuck", "Hot-gas defrost valve stuck shut", "Remedy: defrost-valve-stuck")
        .fault("leaks", "Compressor valves leak", "Remedy: compressor-valves")
        .fault("board", "Relay on the control board has failed", "Remedy: control-board-relay")
        .fault("setting", "Defrost ends too early", "Remedy: defrost-setting")
        .fault("fan-relay", "Fan relay welded", "Remedy: fan-relay")
        .node(
            new Outcome("room", Ending.REFERRAL, "Go to: Room is too warm", "Chart room-too-warm"))
        .node(new Outcome("hotline", Ending.ESCALATION, "Ask the hotline", "+00 000 000"))
        .edge("start", "", "ice")
        .edge("ice", "Untouched", "voltage")
        .edge("ice", "Melted but still hanging", "fan")
        .edge("ice", "No ice", "room")
        .edge("voltage", "Present", "discharge")
        .edge("voltage", "Absent", "software")
        .edge("discharge", "Below", "leaks")
        .edge("discharge", "Within", "stuck")
        .edge("discharge", "Above", "restricted")
        .edge("software", "Below 2.10", "setting")
        .edge("software", "2.10 and later", "board")
        .edge("fan", "Yes", "hotline")
        .edge("fan", "No", "fan-relay")
        .build();
  }

  /** Markup, templates, controls, other scripts and words that do not fit, in every text. */
  public static Flowchart hostile() {
    String markup = "<script>alert(1)</script> & \"quoted\" ]]> ${7*7} {{7*7}} <#assign x=1>";
    String strange = "\u0000\u001B[31m\u202Eabc\u202C שלום العربية 冷凍庫 \uD800 😀";
    String endless = "W".repeat(400) + " " + "word ".repeat(300);
    Warning live = new Warning("DANGER", true, markup + ". " + strange + ". " + endless);
    return new Builder(markup, strange)
        .check("a", markup, List.of(live), strange, endless)
        .check("b", endless, List.of(new Warning("NOTICE", false, endless)), endless, markup)
        .check("c", "", List.of(new Warning("CAUTION", true, "")), "")
        .fault("x", strange, markup)
        .fault("y", endless, endless)
        .node(new Outcome("z", Ending.ESCALATION, "", ""))
        .edge("start", "", "a")
        .edge("a", markup, "b")
        .edge("a", strange, "x")
        .edge("b", endless, "y")
        .edge("b", "", "c")
        .edge("c", "Yes", "z")
        .edge("c", "No", "x")
        .build();
  }

  /** One check after another, each with one fault beside it. */
  public static Flowchart spine(int checks) {
    Builder builder = new Builder("Compressor does not start", "Fell, K1 controller");
    builder.edge("start", "", "c1");
    for (int i = 1; i <= checks; i++) {
      String next = i < checks ? "c" + (i + 1) : "end";
      List<Warning> warnings = i % 3 == 0 ? List.of(LIVE) : List.of();
      String[] steps = i % 2 == 0 ? new String[] {"Look behind the front cover."} : new String[0];
      builder
          .check("c" + i, "Is safety switch number " + i + " closed?", warnings, steps)
          .fault("f" + i, "Safety switch " + i + " open", "Remedy: switch-" + i)
          .edge("c" + i, "Yes", next)
          .edge("c" + i, "No", "f" + i);
    }
    return builder.fault("end", "Compressor motor open circuit", "Remedy: motor").build();
  }

  /** A random chart of about so many nodes; the same seed gives the same chart. */
  public static Flowchart random(long seed, int size) {
    return new Generator(seed, size).build();
  }

  private static final class Generator {
    private static final List<String> WORDS =
        List.of(
            "valve",
            "pressure",
            "after",
            "the",
            "two",
            "minutes",
            "voltage",
            "coil",
            "ice",
            "defrost-termination",
            "room",
            "temperature",
            "fan",
            "of",
            "at",
            "controller");
    private static final List<String> ANSWERS =
        List.of(
            "Yes",
            "No",
            "Below",
            "Within",
            "Above",
            "Melted but still hanging",
            "4 to 8 K",
            "Below or within",
            "FL-12G1 or FL-18G1",
            "Cannot be taken");

    private final Random random;
    private final Builder builder = new Builder("Generated chart", "Everything, everywhere");
    private int budget;
    private int next;

    Generator(long seed, int size) {
      random = new Random(seed);
      budget = size - 1;
    }

    Flowchart build() {
      builder.edge("start", "", subtree());
      return builder.build();
    }

    private String subtree() {
      List<String> open = new ArrayList<>();
      String root = check();
      open.add(root);
      while (!open.isEmpty()) {
        String id = open.remove(random.nextInt(open.size()));
        int answers = 2 + (random.nextInt(3) == 0 ? 1 : 0) + (random.nextInt(12) == 0 ? 5 : 0);
        for (int i = 0; i < answers; i++) {
          boolean last = budget <= 2 * open.size() + answers - i || random.nextInt(3) == 0;
          String below = last && (i > 0 || budget < 8) ? outcome() : check();
          if (builder.nodes.get(below) instanceof Check) {
            open.add(below);
          }
          builder.edge(id, ANSWERS.get(random.nextInt(ANSWERS.size())) + " " + i, below);
        }
      }
      return root;
    }

    private String check() {
      budget--;
      List<Warning> warnings =
          switch (random.nextInt(4)) {
            case 0 -> List.of(LIVE);
            case 1 -> List.of(PRESSURE, CLEAN);
            default -> List.of();
          };
      String[] steps = new String[random.nextInt(3)];
      for (int i = 0; i < steps.length; i++) {
        steps[i] = words(3 + random.nextInt(8));
      }
      String id = "n" + next++;
      builder.check(id, words(4 + random.nextInt(9)) + "?", warnings, steps);
      return id;
    }

    private String outcome() {
      budget--;
      Ending ending = Ending.values()[random.nextInt(Ending.values().length)];
      String id = "n" + next++;
      builder.node(new Outcome(id, ending, words(2 + random.nextInt(5)), "Remedy: " + id));
      return id;
    }

    private String words(int count) {
      List<String> words = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        words.add(WORDS.get(random.nextInt(WORDS.size())));
      }
      return String.join(" ", words);
    }
  }
}
