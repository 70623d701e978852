package io.faultwright.translation;

import io.faultwright.model.Caution;
import io.faultwright.model.Chart;
import io.faultwright.model.Fault;
import io.faultwright.model.Guide;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Part;
import io.faultwright.model.SetUp;
import io.faultwright.model.Sorted;
import io.faultwright.model.Synonym;
import io.faultwright.model.Wordbook;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** A knowledge base with all its texts in other words. The only place that knows what is shown. */
final class Reworded {
  private final Rewording rewording;
  private final Reword reword;

  Reworded(Rewording rewording) {
    this.rewording = rewording;
    this.reword = new Reword(rewording);
  }

  KnowledgeBase of(KnowledgeBase old) {
    NameplateLabels labels = NameplateLabels.of(old, reword);
    return new KnowledgeBase(
        handbook(old.handbook()),
        new EquipmentTexts(reword, labels).of(old.equipment()),
        each(old.readings(), new ReadingTexts(reword)::of),
        old.limits(),
        each(old.faults(), fault -> fault(fault, labels)),
        each(old.symptoms(), new SymptomTexts(reword)::of),
        each(old.nevers(), this::never),
        old.cases(),
        each(old.cautions(), this::caution),
        each(old.parts(), this::part),
        each(old.guides(), this::guide),
        each(old.setUps(), this::setUp),
        each(old.charts(), this::chart),
        each(old.sequences(), new SequenceTexts(reword)::of),
        new Wordbook(synonyms(old.wordbook()), old.wordbook().catalogues()));
  }

  static <T> SortedMap<String, T> each(SortedMap<String, T> all, UnaryOperator<T> reworded) {
    SortedMap<String, T> others = new TreeMap<>();
    all.forEach((id, one) -> others.put(id, reworded.apply(one)));
    return others;
  }

  private Handbook handbook(Handbook old) {
    return new Handbook(
        old.place(),
        reword.text(old.title(), old.place()),
        old.maker(),
        old.revision(),
        old.date(),
        old.language(),
        reword.text(old.disclaimer(), old.place()),
        old.hotline(),
        old.base(),
        old.start(),
        reword.texts(old.notes(), old.place()),
        old.units(),
        old.weights(),
        old.translatedTo(),
        old.signOffs());
  }

  private Fault fault(Fault old, NameplateLabels labels) {
    return new Fault(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.text(old.about(), old.place()),
        old.remedy().stream().map(this::step).toList(),
        old.verify().stream().map(this::step).toList(),
        old.parts(),
        old.nameplate().stream().map(labels::reworded).toList(),
        old.cautions(),
        old.frequency(),
        old.guide(),
        old.applies());
  }

  private Fault.Step step(Fault.Step old) {
    String text = reword.text(old.text(), old.place());
    return new Fault.Step(old.place(), text, old.access(), old.cautions());
  }

  private Never never(Never old) {
    return new Never(old.id(), old.place(), old.when(), reword.text(old.because(), old.place()));
  }

  private Caution caution(Caution old) {
    String text = reword.text(old.text(), old.place());
    return new Caution(old.id(), old.place(), old.signal(), text, old.covers());
  }

  private Part part(Part old) {
    return new Part(old.id(), old.place(), reword.text(old.title(), old.place()), old.number());
  }

  private Guide guide(Guide old) {
    return Guide.of(old.id(), old.place(), new GuideBlocks(old).reworded(rewording));
  }

  private SetUp setUp(SetUp old) {
    String title = reword.text(old.title(), old.place());
    return new SetUp(old.id(), old.place(), title, old.minutes(), old.access());
  }

  private Chart chart(Chart old) {
    return new Chart(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        old.symptom(),
        old.applies(),
        old.start(),
        old.steps());
  }

  private SortedMap<String, Synonym> synonyms(Wordbook old) {
    SortedMap<String, Synonym> others = new TreeMap<>();
    for (Synonym synonym : old.synonyms().values()) {
      String text = reword.text(synonym.text(), synonym.place());
      others.merge(text, new Synonym(text, synonym.place(), synonym.ids()), Reworded::both);
    }
    return others;
  }

  private static Synonym both(Synonym one, Synonym other) {
    SortedMap<String, Boolean> ids = new TreeMap<>();
    one.ids().forEach(id -> ids.put(id, true));
    other.ids().forEach(id -> ids.put(id, true));
    return new Synonym(one.text(), one.place(), Sorted.set(ids.keySet()));
  }
}
