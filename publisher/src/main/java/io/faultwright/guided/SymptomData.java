package io.faultwright.guided;

import io.faultwright.flow.Course;
import io.faultwright.flow.ScopedChart;
import io.faultwright.json.Fields;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** A symptom with all that its diagnosis takes. */
final class SymptomData {
  private final KnowledgeBase kb;
  private final BuildNumbers builds;
  private final Conditions conditions;
  private final ReadingData readings;

  SymptomData(KnowledgeBase kb) {
    this.kb = kb;
    this.builds = new BuildNumbers(kb.equipment());
    Wording wording = Wording.published(kb);
    this.conditions = new Conditions(wording, builds);
    this.readings = new ReadingData(kb, wording, builds);
  }

  /** The script that hands it over. */
  byte[] script(Symptom symptom, List<ScopedChart> charts) {
    SortedSet<String> used =
        SymptomReadings.of(kb, symptom, charts.stream().map(ScopedChart::course).toList());
    Fields fields = head(symptom);
    rules(fields, symptom);
    fields.put("readings", each(used, id -> readings.of(kb.readings().get(id))));
    SortedSet<String> judged = new TreeSet<>(used);
    judged.retainAll(kb.limits().keySet());
    LimitsData limits = new LimitsData(builds);
    fields.put("limits", each(judged, id -> limits.of(kb.limits().get(id))));
    faults(fields, symptom, used);
    fields.put("charts", charts.stream().map(this::chart).toList());
    fields.put("curves", curves(symptom, used));
    return Script.call("symptom", fields);
  }

  private Fields head(Symptom symptom) {
    return new Fields()
        .put("id", symptom.id())
        .put("equipment", builds.seal())
        .put("title", symptom.title())
        .put("about", symptom.about())
        .put("page", SitePaths.file(new Target(Kind.SYMPTOM, symptom.id())))
        .put("builds", builds.of(symptom.applies()))
        .put("recognise", conditions.of(symptom.recognise()))
        .put("first", symptom.first().stream().map(this::first).toList());
  }

  private Fields first(Symptom.First first) {
    return new Fields()
        .put("when", conditions.of(first.when()))
        .put("otherwise", first.otherwise())
        .put("title", title(first.otherwise()));
  }

  private String title(String symptom) {
    return kb.symptoms().get(symptom).title();
  }

  private void rules(Fields fields, Symptom symptom) {
    fields
        .put(
            "nevers",
            Stream.concat(kb.nevers().values().stream(), symptom.nevers().values().stream())
                .map(this::never)
                .toList())
        .put("rules", symptom.rules().values().stream().map(this::rule).toList())
        .put("together", symptom.together().stream().map(SymptomData::pair).toList());
  }

  private Fields never(Never never) {
    return new Fields()
        .put("id", never.id())
        .put("when", conditions.of(never.when()))
        .put("because", never.because());
  }

  private Fields rule(Rule rule) {
    Fields fields = new Fields().put("id", rule.id()).put("when", conditions.of(rule.when()));
    if (rule.conclusion() instanceof Conclusion.Conclude conclude) {
      fields.put("conclude", conclude.faults());
    } else if (rule.conclusion() instanceof Conclusion.Exclude exclude) {
      fields.put("exclude", exclude.faults());
    } else if (rule.conclusion() instanceof Conclusion.Refer refer) {
      fields.put("refer", refer.symptom());
    } else {
      fields.put("escalate", ((Conclusion.Escalate) rule.conclusion()).to());
    }
    return fields.put("because", rule.because()).putIfAny("insteadOf", rule.insteadOf());
  }

  private static List<String> pair(FaultPair pair) {
    return List.of(pair.one(), pair.other());
  }

  private void faults(Fields fields, Symptom symptom, SortedSet<String> used) {
    FaultData faults = new FaultData(kb, builds);
    SortedSet<String> named = faultsOf(symptom);
    List<Fields> displays = new DisplayData(kb, builds).of(named);
    if (!displays.isEmpty()) {
      fields.put("displays", displays);
    }
    fields
        .put("faults", each(named, id -> faults.of(kb.faults().get(id))))
        .put("cautions", each(cautions(named, used), id -> faults.of(kb.cautions().get(id))))
        .put("titles", each(referred(symptom), this::title));
  }

  private static SortedSet<String> faultsOf(Symptom symptom) {
    SortedSet<String> faults = new TreeSet<>();
    for (Rule rule : symptom.rules().values()) {
      if (rule.conclusion() instanceof Conclusion.Conclude conclude) {
        faults.addAll(conclude.faults());
      } else if (rule.conclusion() instanceof Conclusion.Exclude exclude) {
        faults.addAll(exclude.faults());
      }
    }
    return faults;
  }

  private SortedSet<String> cautions(SortedSet<String> faults, SortedSet<String> used) {
    SortedSet<String> ids = new TreeSet<>();
    used.forEach(id -> ids.addAll(kb.readings().get(id).cautions()));
    for (String fault : faults) {
      ids.addAll(kb.faults().get(fault).cautions());
      kb.faults().get(fault).remedy().forEach(step -> ids.addAll(step.cautions()));
      kb.faults().get(fault).verify().forEach(step -> ids.addAll(step.cautions()));
    }
    ids.retainAll(kb.cautions().keySet());
    return ids;
  }

  private static SortedSet<String> referred(Symptom symptom) {
    SortedSet<String> ids = new TreeSet<>();
    symptom.first().forEach(first -> ids.add(first.otherwise()));
    for (Rule rule : symptom.rules().values()) {
      if (rule.conclusion() instanceof Conclusion.Refer refer) {
        ids.add(refer.symptom());
      }
    }
    return ids;
  }

  private Fields chart(ScopedChart chart) {
    return new Fields()
        .put("builds", builds.of(chart.builds()))
        .put("scope", chart.scope())
        .put("root", chart.course().start())
        .put("nodes", chart.course().steps().stream().map(this::step).toList());
  }

  private Fields step(Course.Step step) {
    if (step instanceof Course.End end) {
      return new Fields().put("end", end.answers().stream().map(Conditions::of).toList());
    }
    Course.Ask ask = (Course.Ask) step;
    return new Fields()
        .put("ask", ask.subject())
        .put("limits", ask.limits())
        .put("arms", ask.arms().stream().map(conditions::of).toList());
  }

  /** Names of the curves that its readings may be read off. */
  private SortedSet<String> curves(Symptom symptom, SortedSet<String> used) {
    List<Reading> bent =
        used.stream()
            .map(kb.readings()::get)
            .filter(
                reading -> reading.derived().filter(form -> !form.bends().isEmpty()).isPresent())
            .toList();
    SortedSet<String> curves = new TreeSet<>();
    if (!bent.isEmpty()) {
      curves.add(CurveData.ALTITUDE);
    }
    if (bent.stream().anyMatch(reading -> reading.derived().get().needsRefrigerant())) {
      kb.equipment().builds().stream()
          .filter(build -> build.satisfies(symptom.applies()))
          .flatMap((Build build) -> build.model().refrigerant().stream())
          .forEach(curves::add);
    }
    return curves;
  }

  private static <T> Map<String, T> each(SortedSet<String> ids, Function<String, T> of) {
    Map<String, T> each = new TreeMap<>();
    ids.forEach(id -> each.put(id, of.apply(id)));
    return each;
  }
}
