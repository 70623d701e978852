package io.faultwright.page;

import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Conclusion.Conclude;
import io.faultwright.model.Conclusion.Exclude;
import io.faultwright.model.Conclusion.Refer;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.RuleItem.Outcome;
import io.faultwright.page.Target.Kind;
import java.util.List;

/** The rules of a symptom, numbered in the written order. */
final class RuleItems {
  private final Desk desk;
  private final Symptom symptom;
  private final List<Rule> rules;

  RuleItems(Desk desk, Symptom symptom) {
    this.desk = desk;
    this.symptom = symptom;
    this.rules = Written.order(symptom.rules().values(), Rule::place);
  }

  List<RuleItem> all() {
    return rules.stream().map(this::item).toList();
  }

  private RuleItem item(Rule rule) {
    return new RuleItem(
        anchor(rule),
        number(rule),
        new Clauses(desk).of(rule.when()),
        verb(rule.conclusion()),
        outcomes(rule.conclusion()),
        rule.because(),
        rules.stream()
            .filter(other -> rule.insteadOf().contains(other.id()))
            .map(other -> new Link(desk.say("rule {0}", number(other)), "#" + anchor(other)))
            .toList());
  }

  private String anchor(Rule rule) {
    return "rule-" + symptom.id() + "--" + rule.id();
  }

  private int number(Rule rule) {
    return rules.indexOf(rule) + 1;
  }

  private String verb(Conclusion conclusion) {
    if (conclusion instanceof Conclude conclude) {
      return conclude.faults().size() == 1 ? desk.say("Fault") : desk.say("Faults, at once");
    }
    if (conclusion instanceof Exclude) {
      return desk.say("Ruled out");
    }
    return conclusion instanceof Refer ? desk.say("Work instead") : desk.say("Ask");
  }

  private List<Outcome> outcomes(Conclusion conclusion) {
    return conclusion instanceof Exclude exclude
        ? exclude.faults().stream().map(this::fault).toList()
        : conclusion.answers().stream().map(this::answer).toList();
  }

  private Outcome answer(Answer answer) {
    if (answer instanceof Answer.OfFault fault) {
      return fault(fault.fault());
    }
    return answer instanceof Answer.OfReferral referral
        ? new Outcome(
            desk.words().symptom(referral.symptom()),
            desk.links().href(Kind.SYMPTOM, referral.symptom()))
        : new Outcome(desk.words().escalation(answer.name()), "");
  }

  private Outcome fault(String id) {
    return new Outcome(desk.words().fault(id), desk.links().href(Kind.FAULT, id));
  }
}
