package io.faultwright.input;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import io.faultwright.syntax.YamlReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cases in YAML or JSON: a map {@code cases}, or the witnesses of a check's {@code findings}. */
final class CaseTree {
  private static final String CASES = "cases";
  private static final String FINDINGS = "findings";
  private static final String HELP = "write `cases:` and below it an id for each case";

  private final Problems problems;

  private CaseTree(Problems problems) {
    this.problems = problems;
  }

  static List<Entry> entries(SourceFile file, Problems problems) {
    Optional<Node> root = YamlReader.read(file, problems).root();
    if (root.isEmpty() && problems.isEmpty()) {
      problems.add(new Place(file.path(), 1, 1, 1), "the file has no cases", HELP);
    }
    return root.map(new CaseTree(problems)::entries).orElse(List.of());
  }

  private List<Entry> entries(Node root) {
    if (!(root instanceof MapNode map)) {
      problems.add(root.place(), "the file must be a map, found " + root.kind(), HELP);
      return List.of();
    }
    Optional<Node> findings = find(map, FINDINGS);
    return findings.map(this::witnesses).orElseGet(() -> cases(map));
  }

  private List<Entry> cases(MapNode map) {
    map.entries().stream()
        .filter(entry -> !entry.name().equals(CASES))
        .forEach(
            entry ->
                problems.add(
                    entry.key().place(),
                    "a file of cases has no section `" + entry.name() + "`",
                    NearMatch.of(entry.name(), List.of(CASES, FINDINGS))
                        .map(name -> "did you mean `" + name + "`?")
                        .orElse(HELP)));
    return find(map, CASES)
        .map(node -> node instanceof MapNode cases ? cases.entries() : notCases(node))
        .orElse(List.of());
  }

  private List<Entry> notCases(Node node) {
    problems.add(node.place(), "`cases` takes a map, found " + node.kind(), HELP);
    return List.of();
  }

  private List<Entry> witnesses(Node findings) {
    List<Entry> entries = new ArrayList<>();
    List<Node> items = findings instanceof ListNode list ? list.items() : List.of();
    for (int i = 0; i < items.size(); i++) {
      String id = "finding-" + (i + 1);
      if (items.get(i) instanceof MapNode finding) {
        witness(id, finding).ifPresent(entries::add);
      }
    }
    return entries;
  }

  /** A finding about a symptom that has a witness; others cannot be run. */
  private static Optional<Entry> witness(String id, MapNode finding) {
    Optional<Node> symptom = find(finding, "symptom").filter(node -> !isNull(node));
    Optional<Node> witness = find(finding, "witness").filter(MapNode.class::isInstance);
    return symptom.flatMap(known -> witness.map(given -> entry(id, finding.place(), known, given)));
  }

  private static Entry entry(String id, Place place, Node symptom, Node given) {
    List<Entry> body =
        List.of(
            new Entry(new Scalar("symptom", false, symptom.place()), symptom),
            new Entry(new Scalar("given", false, given.place()), given));
    return new Entry(new Scalar(id, false, place), new MapNode(body, place));
  }

  private static boolean isNull(Node node) {
    return node instanceof Scalar scalar && !scalar.quoted() && scalar.text().equals("null");
  }

  private static Optional<Node> find(MapNode map, String key) {
    return map.entries().stream()
        .filter(entry -> entry.name().equals(key))
        .findFirst()
        .map(Entry::value);
  }
}
