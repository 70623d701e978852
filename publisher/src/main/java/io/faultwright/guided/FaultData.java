package io.faultwright.guided;

import io.faultwright.json.Fields;
import io.faultwright.model.Caution;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Part;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.wording.Wording;
import io.faultwright.words.SignalWords;
import java.util.List;
import java.util.Objects;

/** Faults with their repairs, and cautions, for the page. */
final class FaultData {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final BuildNumbers builds;

  FaultData(KnowledgeBase kb, BuildNumbers builds) {
    this.wording = Wording.published(kb);
    this.kb = kb;
    this.builds = builds;
  }

  Fields of(Fault fault) {
    return new Fields()
        .put("title", fault.title())
        .put("about", fault.about())
        .put("page", SitePaths.file(new Target(Kind.FAULT, fault.id())))
        .putIfAny("builds", builds.unlessAll(fault.applies()))
        .put("cautions", fault.cautions())
        .put("remedy", steps(fault.remedy()))
        .put("verify", steps(fault.verify()))
        .put("parts", parts(fault))
        .put("nameplate", fault.nameplate().stream().map(wording::label).toList());
  }

  private static List<Fields> steps(List<Fault.Step> steps) {
    return steps.stream()
        .map(
            step ->
                new Fields()
                    .put("text", step.text())
                    .put("cautions", step.cautions())
                    .put("access", step.access().word()))
        .toList();
  }

  private List<Fields> parts(Fault fault) {
    return fault.parts().stream()
        .map(kb.parts()::get)
        .filter(Objects::nonNull)
        .map(FaultData::part)
        .toList();
  }

  private static Fields part(Part part) {
    return new Fields().put("title", part.title()).putIfAny("number", part.number());
  }

  Fields of(Caution caution) {
    return new Fields()
        .put("ifFlammable", caution.id().equals(Caution.FLAMMABLE_REFRIGERANT))
        .put("signal", caution.signal().name())
        .put("word", SignalWords.of(caution.signal().name(), wording.say()))
        .put("text", caution.text());
  }
}
