package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Case;
import io.faultwright.model.Caution;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Equipment;
import io.faultwright.model.Fault;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Session;
import io.faultwright.model.SetUp;
import io.faultwright.model.Symptom;
import io.faultwright.model.Wordbook;
import io.faultwright.source.Place;
import io.faultwright.source.Sources;
import java.util.Optional;
import java.util.SortedMap;

/** Makes a knowledge base of the files of a folder. */
public final class Resolver {
  private final Context context;
  private final Problems problems;

  private Resolver(Context context) {
    this.context = context;
    this.problems = context.problems();
  }

  /**
   * The knowledge base in these files.
   *
   * @throws Unreadable with every problem of every file
   */
  public static KnowledgeBase resolve(Sources sources) {
    return resolution(sources).knowledge();
  }

  /**
   * The knowledge base in these files, and what it takes to read further cases for it.
   *
   * @throws Unreadable with every problem of every file
   */
  public static Resolution resolution(Sources sources) {
    Problems problems = new Problems();
    Outline outline = Outline.of(sources, problems);
    Context context = Context.of(outline, problems);
    KnowledgeBase knowledge = new Resolver(context).resolve();
    SortedMap<String, Session> sessions = new SessionResolver(context, knowledge).resolveAll();
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return new Resolution(knowledge, sessions, outline);
  }

  private KnowledgeBase resolve() {
    Handbook handbook = new HandbookResolver(context).resolve();
    int before = problems.count();
    Equipment equipment = new EquipmentResolver(context).resolve();
    boolean sound = problems.count() == before && context.names().complete(Kind.MODEL);
    Subjects subjects = new Subjects(context, equipment, sound);
    ConditionResolver facts = ConditionResolver.ofEquipment(context, subjects);
    ConditionResolver situation = ConditionResolver.ofSituation(context, subjects);
    SortedMap<String, Caution> cautions = new CautionResolver(context, equipment).resolveAll();
    CautionRule cautionRule = new CautionRule(context.names(), cautions.values());
    SortedMap<String, SetUp> setUps = new SetUpResolver(context).resolveAll();
    PreparationResolver preparation = new PreparationResolver(context, setUps);
    SortedMap<String, Reading> readings =
        new ReadingResolver(context, equipment, facts, cautionRule, preparation).resolveAll();
    readings.values().forEach(subjects::add);
    SortedMap<String, LimitsTable> limits = new LimitsResolver(context, subjects).resolveAll();
    Optional<Equipment> known = Optional.of(equipment).filter(one -> sound);
    SortedMap<String, Fault> faults =
        new FaultResolver(context, facts, cautionRule, new NameplateLabels(problems, known))
            .resolveAll();
    SortedMap<String, Symptom> symptoms =
        new SymptomResolver(context, facts, situation).resolveAll();
    if (sound) {
      symptoms.values().forEach(symptom -> requireEquipment(symptom, equipment));
    }
    SortedMap<String, Never> nevers = new NeverResolver(context, situation).resolveAll();
    SortedMap<String, Sequence> sequences =
        new SequenceResolver(context, facts, readings).resolveAll();
    if (sound) {
      sequences.values().forEach(sequence -> requireEquipment(sequence, equipment));
    }
    SortedMap<String, Case> cases =
        new CaseResolver(
                context,
                subjects,
                symptoms,
                new CaseLogResolver(context, sequences, readings, known),
                known)
            .resolveAll();
    return new KnowledgeBase(
        handbook,
        equipment,
        readings,
        limits,
        faults,
        symptoms,
        nevers,
        cases,
        cautions,
        new PartResolver(context).resolveAll(),
        new GuideResolver(context).resolveAll(),
        setUps,
        new ChartResolver(context, facts, situation, symptoms, known).resolveAll(),
        sequences,
        new Wordbook(
            new SynonymResolver(context).resolveAll(),
            new TranslationResolver(context).resolveAll()));
  }

  /** A symptom for which no published model and software is left would never be offered. */
  private void requireEquipment(Symptom symptom, Equipment equipment) {
    requireEquipment(
        "symptom `" + symptom.id() + "`", symptom.place(), symptom.applies(), equipment);
  }

  private void requireEquipment(Sequence sequence, Equipment equipment) {
    requireEquipment(
        "sequence `" + sequence.id() + "`", sequence.place(), sequence.applies(), equipment);
  }

  private void requireEquipment(String what, Place place, Condition applies, Equipment equipment) {
    if (equipment.builds().stream().noneMatch(build -> build.satisfies(applies))) {
      problems.add(
          applies.tests().findFirst().map(Test::place).orElse(place),
          "the " + what + " applies to no published model and software",
          "correct `applies`, or publish a model that it applies to");
    }
  }
}
