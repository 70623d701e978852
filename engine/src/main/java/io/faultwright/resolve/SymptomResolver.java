package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.Condition;
import io.faultwright.model.FaultPair;
import io.faultwright.model.HazardOrder;
import io.faultwright.model.Symptom;
import io.faultwright.model.Symptom.First;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads the section {@code symptoms}. */
final class SymptomResolver {
  private static final String HAZARDOUS_CHECKS = "hazardous-checks";
  private static final List<String> KEYS =
      List.of(
          "title",
          "about",
          "applies",
          "recognise",
          "first",
          "rules",
          "table",
          "never",
          "together",
          "guide",
          HAZARDOUS_CHECKS);

  private final Context context;
  private final ConditionResolver equipment;
  private final ConditionResolver situation;
  private final NeverResolver nevers;
  private final RulesResolver rules;

  SymptomResolver(Context context, ConditionResolver equipment, ConditionResolver situation) {
    this.context = context;
    this.equipment = equipment;
    this.situation = situation;
    this.nevers = new NeverResolver(context, situation);
    this.rules = new RulesResolver(context, situation);
  }

  SortedMap<String, Symptom> resolveAll() {
    SortedMap<String, Symptom> symptoms = new TreeMap<>();
    context.outline().of(Kind.SYMPTOM).forEach((id, one) -> symptoms.put(id, resolve(one)));
    return symptoms;
  }

  private Symptom resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    return new Symptom(
        definition.id(),
        definition.place(),
        fields.requireText("title"),
        fields.text("about").orElse(""),
        fields.read("applies", equipment::all, Condition.ALWAYS),
        fields.read("recognise", situation::all, Condition.ALWAYS),
        fields.list("first").stream().map(node -> first(definition, node)).toList(),
        rules.resolve(definition, fields),
        nevers.resolve(fields.map("never")),
        together(fields.list("together")),
        fields.scalar("guide").map(guide -> context.names().reference(Kind.GUIDE, guide)),
        fields.scalar(HAZARDOUS_CHECKS).flatMap(this::hazards).orElse(HazardOrder.LAST));
  }

  private First first(Definition symptom, Node node) {
    Fields fields =
        new Fields(
            node,
            "an entry of `first`",
            node.place(),
            List.of("when", "otherwise"),
            context.problems());
    Condition when = fields.require("when").map(situation::all).orElse(Condition.ALWAYS);
    Optional<Scalar> otherwise = fields.requireScalar("otherwise");
    otherwise.ifPresent(target -> checkOther(symptom, target));
    return new First(node.place(), when, otherwise.map(this::symptom).orElse(""));
  }

  private Optional<HazardOrder> hazards(Scalar written) {
    String word = written.text().strip();
    Optional<HazardOrder> order = HazardOrder.of(word);
    if (order.isEmpty()) {
      problem(
          written,
          Words.quoted(word) + " is no place for hazardous checks",
          NearMatch.help(word, HazardOrder.words()));
    }
    return order;
  }

  private String symptom(Scalar target) {
    return context.names().reference(Kind.SYMPTOM, target);
  }

  private void checkOther(Definition symptom, Scalar target) {
    if (target.text().equals(symptom.id())) {
      context
          .problems()
          .add(
              target.place(),
              symptom.what() + " refers to itself",
              "name another symptom, the one to work where this condition fails");
    }
  }

  private SortedSet<FaultPair> together(List<Node> pairs) {
    SortedSet<FaultPair> together = new TreeSet<>();
    pairs.forEach(pair -> pair(pair).ifPresent(together::add));
    return together;
  }

  private Optional<FaultPair> pair(Node node) {
    List<Scalar> faults =
        node instanceof ListNode list
            ? list.items().stream()
                .filter(Scalar.class::isInstance)
                .map(Scalar.class::cast)
                .filter(fault -> !fault.text().isBlank())
                .toList()
            : List.of();
    if (!(node instanceof ListNode list) || list.items().size() != 2 || faults.size() != 2) {
      problem(
          node,
          "`together` lists pairs of faults",
          "write `[[fault-a, fault-b]]`, every pair by itself");
      return Optional.empty();
    }
    faults.forEach(fault -> context.names().reference(Kind.FAULT, fault));
    if (faults.get(0).text().equals(faults.get(1).text())) {
      problem(node, "a fault stands together with itself", "name two different faults");
    }
    return Optional.of(FaultPair.of(faults.get(0).text(), faults.get(1).text()));
  }

  private void problem(Node node, String message, String help) {
    context.problems().add(node.place(), message, help);
  }
}
