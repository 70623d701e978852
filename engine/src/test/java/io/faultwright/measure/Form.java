package io.faultwright.measure;

import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.measure.GeneratedRules.Rule;
import io.faultwright.measure.GeneratedRules.Sample;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.run.Runner;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.drools.compiler.kie.builder.impl.DrlProject;
import org.drools.model.Index;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.builder.KieBuilder;
import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieSession;
import org.kie.internal.utils.KieHelper;

/** Ways to bring rules to Drools; each gives how many rules fire on a sample. */
enum Form {
  MODEL("executable model by program") {
    @Override
    ToIntFunction<Sample> prepare(List<Rule> rules) {
      return firing(KieBaseBuilder.createKieBaseFromModel(model(rules, false)));
    }
  },
  INDEXED_MODEL("executable model by program, choices indexed") {
    @Override
    ToIntFunction<Sample> prepare(List<Rule> rules) {
      return firing(KieBaseBuilder.createKieBaseFromModel(model(rules, true)));
    }
  },
  DRL("DRL text, interpreted") {
    @Override
    ToIntFunction<Sample> prepare(List<Rule> rules) {
      KieHelper helper = new KieHelper().addContent(DrlText.of(rules), ResourceType.DRL);
      return firing(helper.build(DrlProject.class));
    }
  },
  DRL_TO_MODEL("DRL text, generated to the executable model") {
    @Override
    ToIntFunction<Sample> prepare(List<Rule> rules) {
      KieHelper helper = new KieHelper().addContent(DrlText.of(rules), ResourceType.DRL);
      return firing(helper.build(projectType("org.drools.model.codegen.ExecutableModelProject")));
    }
  },
  FAULTWRIGHT("Faultwright: three-valued, exact rationals") {
    @Override
    ToIntFunction<Sample> prepare(List<Rule> rules) {
      KnowledgeBase base = GeneratedBase.of(new GeneratedRules(rules, List.of()), 1);
      Runner runner = new Runner(base, RuleCompiler.compile(base));
      Map<Sample, Situation> situations = new HashMap<>();
      return sample ->
          runner
              .verdict("symptom-0", situations.computeIfAbsent(sample, GeneratedBase::situationOf))
              .answers()
              .size();
    }
  };

  private final String title;

  Form(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }

  abstract ToIntFunction<Sample> prepare(List<Rule> rules);

  private static ToIntFunction<Sample> firing(KieBase base) {
    KieSession session = base.newKieSession();
    return sample -> {
      SampleFact fact = new SampleFact(sample);
      var handle = session.insert(fact);
      session.fireAllRules();
      session.delete(handle);
      return fact.fired();
    };
  }

  private static ModelImpl model(List<Rule> rules, boolean indexed) {
    ModelImpl model = new ModelImpl();
    rules.forEach(rule -> model.addRule(write(rule, indexed)));
    return model;
  }

  private static org.drools.model.Rule write(Rule made, boolean indexed) {
    Variable<SampleFact> sample = declarationOf(SampleFact.class);
    PatternDef<SampleFact> pattern = pattern(sample);
    made.choices().forEach((column, value) -> choice(pattern, column, value, indexed));
    made.above().forEach((column, value) -> above(pattern, column, value));
    return rule("io.faultwright.measure", made.name())
        .build(pattern, on(sample).execute(SampleFact::fire));
  }

  private static void choice(
      PatternDef<SampleFact> pattern, int column, String value, boolean indexed) {
    String text = "c" + column + " == " + value;
    if (indexed) {
      pattern.expr(
          text,
          fact -> fact.choice(column).equals(value),
          alphaIndexedBy(
              String.class,
              Index.ConstraintType.EQUAL,
              column,
              fact -> fact.choice(column),
              value));
    } else {
      pattern.expr(text, fact -> fact.choice(column).equals(value));
    }
  }

  private static void above(PatternDef<SampleFact> pattern, int column, int value) {
    pattern.expr("q" + column + " > " + value, fact -> fact.quantity(column) > value);
  }

  /** Found by name, because it is on the class path only where DRL text is measured. */
  private static Class<? extends KieBuilder.ProjectType> projectType(String name) {
    try {
      return Class.forName(name).asSubclass(KieBuilder.ProjectType.class);
    } catch (ClassNotFoundException missing) {
      throw new IllegalStateException("run with the profile drl-text", missing);
    }
  }
}
