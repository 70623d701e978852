package io.faultwright.dmn;

import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.run.Status;
import io.faultwright.run.Verdict;
import io.faultwright.wording.RuleText;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.kie.api.io.Resource;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNResult;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/** The decision engine of Drools with the exported tables of a knowledge base. */
public final class DecisionEngine {
  private final KnowledgeBase kb;
  private final DerivedValues derived;
  private final DMNRuntime runtime;

  /** Reads the tables of a knowledge base. */
  public static DecisionEngine of(KnowledgeBase kb) {
    return new DecisionEngine(kb, DmnExport.files(kb));
  }

  DecisionEngine(KnowledgeBase kb, SortedMap<String, byte[]> files) {
    this.kb = kb;
    this.derived = new DerivedValues(kb);
    List<Resource> resources = new ArrayList<>();
    files.forEach((name, content) -> resources.add(resource(name, content)));
    this.runtime =
        DMNRuntimeBuilder.fromDefaults()
            .buildConfiguration()
            .fromResources(resources)
            .getOrElseThrow(RuntimeException::new);
  }

  private static Resource resource(String name, byte[] content) {
    Resource resource =
        ResourceFactory.newReaderResource(
            new StringReader(new String(content, StandardCharsets.UTF_8)), "UTF-8");
    resource.setSourcePath(name);
    return resource;
  }

  /** What was wrong with a model when it was read. */
  List<String> complaints(String symptom) {
    return model(symptom).getMessages().stream().map(DMNMessage::getText).toList();
  }

  private DMNModel model(String symptom) {
    return runtime.getModel(DmnExport.NAMESPACE + symptom, symptom);
  }

  /** What the decision of a symptom says; with what went wrong where it did. */
  Map<String, Object> decide(String symptom, Situation situation) {
    DMNContext context = runtime.newContext();
    given(situation).forEach(context::set);
    DMNResult result = runtime.evaluateByName(model(symptom), context, Names.answer(symptom));
    Object told = result.getDecisionResultByName(Names.answer(symptom)).getResult();
    Map<String, Object> all = new HashMap<>();
    if (told instanceof Map<?, ?> named) {
      named.forEach((name, value) -> all.put(name.toString(), value));
    }
    all.put("messages", result.getMessages().stream().map(DMNMessage::getText).toList());
    return all;
  }

  /** How far a symptom gets and what it answers; what went wrong where something did. */
  public String told(String symptom, Situation situation) {
    Map<String, Object> decision = decide(symptom, situation);
    List<?> messages = (List<?>) decision.get("messages");
    return messages.isEmpty()
        ? decision.get("status") + " " + decision.get("answers")
        : messages.toString();
  }

  /** The same of the rules. */
  public static String expected(Verdict verdict) {
    List<String> answers = verdict.answers().stream().map(RuleText::answer).toList();
    return stage(verdict.status()).word() + " " + answers;
  }

  private static Stage stage(Status status) {
    return switch (status) {
      case TAKE_AGAIN -> Stage.TAKE_AGAIN;
      case NOT_THIS_SYMPTOM -> Stage.NOT_THIS_SYMPTOM;
      case ASK_FIRST -> Stage.ASK_FIRST;
      case REFERRED -> Stage.SENT_ELSEWHERE;
      case ANSWERED -> Stage.ANSWERED;
      case NOTHING_YET, NO_ANSWER -> Stage.NOTHING_YET;
      default -> Stage.NO_SUCH_MACHINE;
    };
  }

  /** What is put in: what is read off a curve is computed beforehand. */
  private Map<String, Object> given(Situation situation) {
    Map<String, Object> given = new HashMap<>();
    given.put(Names.MODEL, situation.equipment().get("model"));
    given.put(Names.SOFTWARE, situation.equipment().get("software"));
    for (Reading reading : kb.readings().values()) {
      given.put(Names.of(reading.id()), null);
      given.put(Names.untaken(reading.id()), false);
    }
    situation.readings().forEach((id, value) -> put(given, id, value));
    derived.of(situation).forEach((id, value) -> put(given, id, value));
    return given;
  }

  private static void put(Map<String, Object> given, String reading, Value value) {
    if (value instanceof Value.Word word) {
      given.put(Names.of(reading), word.id());
    } else if (value instanceof Value.Number number) {
      given.put(Names.of(reading), decimal(number));
    } else {
      given.put(Names.untaken(reading), true);
    }
  }

  /** With 34 digits, which DMN has, where there are more. */
  private static BigDecimal decimal(Value.Number number) {
    return new BigDecimal(number.amount().getNumerator())
        .divide(new BigDecimal(number.amount().getDenominator()), MathContext.DECIMAL128);
  }
}
