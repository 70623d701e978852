package io.faultwright.run;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RunnerTest {
  @Test
  void aRuleWhoseTestsHoldFires() {
    KnowledgeBase base =
        new KnowledgeBaseBuilder()
            .model("FL-1", "fell", Map.of())
            .choice("ice", "untouched", "none")
            .choice("fan", "on", "off")
            .symptom(
                symptom("s")
                    .concludes("r1", all(is("ice", "untouched"), is("fan", "on")), "a")
                    .concludes("r2", all(is("ice", "untouched"), is("fan", "off")), "b"))
            .build();
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    Trace trace = runner.run("s", situation().word("ice", "untouched").word("fan", "on").build());
    assertEquals(Set.of(new Answer.OfFault("a")), trace.answers());
    assertEquals(Set.of("r1"), trace.fired());
    assertEquals(Condition.ALWAYS, base.symptoms().get("s").recognise());
    System.out.println(trace);
    trace = runner.run("s", situation().word("ice", "untouched").build());
    System.out.println(trace);
  }
}
