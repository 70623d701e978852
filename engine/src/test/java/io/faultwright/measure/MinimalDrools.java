package io.faultwright.measure;

import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.List;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.runtime.KieSession;

/**
 * The least that Drools can be asked: one rule, one fact, in the executable model. What a start of
 * this takes is the floor for every start of Faultwright.
 */
public final class MinimalDrools {
  private MinimalDrools() {}

  /** The fact. */
  public record Lamp(String light, List<String> said) {}

  public static void main(String[] args) {
    System.out.println(fire(new Lamp("red", new ArrayList<>())));
  }

  static List<String> fire(Lamp lamp) {
    Variable<Lamp> lamps = declarationOf(Lamp.class);
    ModelImpl model = new ModelImpl();
    model.addRule(
        rule("io.faultwright.minimal", "red lamp")
            .build(
                pattern(lamps).expr("light is red", fact -> "red".equals(fact.light())),
                on(lamps).execute(fact -> fact.said().add("stop"))));
    KieSession session = KieBaseBuilder.createKieBaseFromModel(model).newKieSession();
    session.insert(lamp);
    session.fireAllRules();
    session.dispose();
    return lamp.said();
  }
}
