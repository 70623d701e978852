package io.faultwright.report;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.conclude;
import static io.faultwright.model.SymptomBuilder.symptom;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.run.Runner;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Cases that bring out every status a trace can have. */
final class SampleRuns {
  static final KnowledgeBase BASE = base();

  private SampleRuns() {}

  private static KnowledgeBase base() {
    KnowledgeBaseBuilder base =
        new KnowledgeBaseBuilder()
            .option("defrost", "hot-gas", "electric")
            .model("FL-12G1", "fell", Map.of("defrost", "hot-gas"), "1.4", "2.9", "2.10")
            .model("FL-12E1", "fell", Map.of("defrost", "electric"))
            .data("FL-12G1", "charge", "1.1 kg")
            .data("FL-12G1", "supply", "230 V 1~ 50 Hz")
            .choice("ice", "untouched", "loose", "none")
            .choice("cooling", "normal", "weak")
            .yesNo("fan")
            .measured("ambient", "°C", "-10", "45")
            .measured("pressure", "bar(g)", "0", "30")
            .limits(
                LimitsTableBuilder.interpolated("pressure", "ambient")
                    .at(Condition.ALWAYS, "10", "8", "10")
                    .at(Condition.ALWAYS, "31", "12", "15")
                    .build())
            .symptom(iceLeft())
            .fault("valve-restricted", "charge")
            .symptom(symptom("room-warm").concludes("weak", is("cooling", "weak"), "low-charge"));
    cases(base);
    return base.build();
  }

  private static SymptomBuilder iceLeft() {
    return symptom("ice-left")
        .applies(is("defrost", "hot-gas"))
        .recognise(is("ice", "untouched", "loose"))
        .first(is("cooling", "normal"), "room-warm")
        .never("hot-and-still", all(above("pressure", "28"), is("fan", "yes")))
        .concludes(
            "restricted",
            all(is("ice", "untouched"), limits("pressure", Side.ABOVE)),
            "valve-restricted")
        .concludes(
            "fan-dead",
            all(is("fan", "no"), any(is("ice", "loose"), is("software", "2.10"))),
            "fan-dead",
            "controller")
        .rule("controller", not(is("software", "2.10")), conclude("controller-old"))
        .rule("ask", limits("pressure", Side.BELOW), new Conclusion.Escalate("the hotline"));
  }

  private static void cases(KnowledgeBaseBuilder base) {
    Answer.OfFault restricted = new Answer.OfFault("valve-restricted");
    base.recorded(
        "a-answered",
        "ice-left",
        known().amount("pressure", "20").word("fan", "yes").build(),
        restricted);
    base.recorded("b-nothing-yet", "ice-left", known().build());
    base.recorded(
        "c-referred",
        "ice-left",
        situation().word("ice", "loose").word("cooling", "weak").build(),
        restricted);
    base.recorded("d-ask-first", "ice-left", situation().word("ice", "loose").build());
    base.recorded(
        "e-take-again", "ice-left", known().amount("pressure", "29").word("fan", "yes").build());
    base.recorded("f-other", "ice-left", situation().word("ice", "none").build());
    base.recorded("g-value", "ice-left", known().amount("pressure", "200").build());
    base.recorded(
        "h-not-offered", "ice-left", situation().equipment("defrost", "electric").build());
    base.recorded("i-no-model", "ice-left", situation().equipment("model", "XX").build());
    base.recorded(
        "j-silenced",
        "ice-left",
        situation()
            .equipment("software", "2.9")
            .word("ice", "loose")
            .word("cooling", "normal")
            .word("fan", "no")
            .amount("ambient", "20")
            .build());
    base.recorded(
        "k-limits",
        "ice-left",
        known().amount("ambient", "40").amount("pressure", "9").word("fan", "yes").build());
  }

  private static SituationBuilder known() {
    return situation()
        .equipment("model", "FL-12G1")
        .equipment("software", "2.10")
        .word("ice", "untouched")
        .word("cooling", "normal")
        .amount("ambient", "17");
  }

  static RunReport report() {
    Runner runner = new Runner(BASE, RuleCompiler.compile(BASE));
    List<CaseRun> runs =
        BASE.cases().values().stream()
            .map(
                recorded ->
                    new CaseRun(
                        runner.run(recorded), Optional.empty(), !recorded.id().startsWith("b")))
            .toList();
    Problem row = Problem.at(new Place("cases.csv", 4, 1, 1), "row 3 has no case id", "give one");
    return new RunReport("Test handbook", runs, List.of(row));
  }
}
