package io.faultwright.find;

import io.faultwright.find.Entry.Kind;
import io.faultwright.model.Family;
import io.faultwright.model.Fault;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Part;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Symptom;
import io.faultwright.page.Link;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a knowledge base holds that can be found, with the texts in which it is found. */
final class Sources {
  /** Where a link of Markdown leads; it is not read, so it is not found. */
  private static final Pattern DESTINATION = Pattern.compile("\\]\\([^)\\s]*");

  private final KnowledgeBase kb;
  private final Reach reach;

  Sources(KnowledgeBase kb) {
    this.kb = kb;
    this.reach = new Reach(kb);
  }

  /** Everything, in a fixed order. */
  List<Source> all(Collection<Link> refrigerants) {
    return Stream.of(
            kb.symptoms().values().stream().map(this::symptom),
            kb.faults().values().stream().map(this::fault),
            kb.readings().values().stream().map(this::reading),
            kb.sequences().values().stream().map(this::sequence),
            kb.parts().values().stream().map(this::part),
            kb.equipment().models().values().stream().map(this::model),
            kb.equipment().families().values().stream().map(Sources::family),
            kb.equipment().options().values().stream().map(Sources::option),
            kb.guides().values().stream().map(Sources::guide),
            refrigerants.stream().map(Sources::refrigerant))
        .flatMap(sources -> sources)
        .toList();
  }

  private Source symptom(Symptom one) {
    return new Source(
        entry(Kind.SYMPTOM, Target.Kind.SYMPTOM, one.id(), one.title(), one.about(), reach.of(one)),
        List.of(),
        List.of(one.about()),
        List.of());
  }

  private Source fault(Fault one) {
    List<String> texts = new ArrayList<>();
    Stream.concat(one.remedy().stream(), one.verify().stream())
        .forEach(step -> texts.add(step.text()));
    one.parts().stream().map(kb.parts()::get).forEach(part -> texts.addAll(names(part)));
    return new Source(
        entry(Kind.FAULT, Target.Kind.FAULT, one.id(), one.title(), one.about(), reach.of(one)),
        List.of(),
        List.of(one.about()),
        texts);
  }

  private static List<String> names(Part part) {
    return Stream.concat(Stream.of(part.title()), part.number().stream()).toList();
  }

  private Source reading(Reading one) {
    List<String> texts = new ArrayList<>(one.how());
    List.of(one.where(), one.phase(), one.instrument()).forEach(text -> text.ifPresent(texts::add));
    texts.addAll(
        one.domain()
            .match(
                measured -> List.of(),
                choice -> choice.values().stream().map(NamedValue::title).toList()));
    return new Source(
        entry(Kind.READING, Target.Kind.READING, one.id(), one.title(), one.ask(), reach.of(one)),
        List.of(),
        List.of(one.ask()),
        texts);
  }

  /** By what a display shows too. */
  private Source sequence(Sequence one) {
    List<String> texts = new ArrayList<>();
    one.phases().forEach(phase -> texts.addAll(List.of(phase.title(), phase.about())));
    one.courses().forEach(course -> texts.add(course.title()));
    return new Source(
        entry(
            Kind.SEQUENCE, Target.Kind.SEQUENCE, one.id(), one.title(), one.about(), reach.of(one)),
        one.phases().stream().flatMap(phase -> phase.display().stream()).distinct().toList(),
        List.of(one.about()),
        texts);
  }

  private Source part(Part one) {
    List<String> faults =
        kb.faults().values().stream()
            .filter(fault -> fault.parts().contains(one.id()))
            .map(Fault::title)
            .toList();
    String context =
        Stream.concat(one.number().stream(), faults.stream()).collect(Collectors.joining(" · "));
    return new Source(
        entry(Kind.PART, Target.Kind.PART, one.id(), one.title(), context, List.of()),
        one.number().stream().toList(),
        List.of(),
        faults);
  }

  private Source model(Model one) {
    List<String> values =
        one.options().entrySet().stream()
            .flatMap(option -> value(option.getKey(), option.getValue()).stream())
            .toList();
    String context =
        Stream.concat(Stream.of(one.title()), values.stream()).collect(Collectors.joining(" · "));
    return new Source(
        entry(Kind.MODEL, Target.Kind.MODEL, one.id(), one.id(), context, List.of(one.family())),
        List.of(one.title()),
        values,
        List.of());
  }

  private Optional<String> value(String option, String id) {
    return kb.equipment().options().get(option).values().stream()
        .filter(value -> value.id().equals(id))
        .map(NamedValue::title)
        .findFirst();
  }

  private static Source family(Family one) {
    return new Source(
        entry(
            Kind.EQUIPMENT,
            Target.Kind.FAMILY,
            one.id(),
            one.title(),
            one.about(),
            List.of(one.id())),
        List.of(),
        List.of(one.about()),
        List.of());
  }

  private static Source option(Option one) {
    List<String> values = one.values().stream().map(NamedValue::title).toList();
    return new Source(
        entry(
            Kind.EQUIPMENT,
            Target.Kind.OPTION,
            one.id(),
            one.title(),
            String.join(", ", values),
            List.of()),
        List.of(),
        values,
        List.of());
  }

  private static Source guide(Guide one) {
    return new Source(
        entry(Kind.GUIDE, Target.Kind.GUIDE, one.id(), one.title(), "", List.of()),
        List.of(),
        List.of(),
        List.of(DESTINATION.matcher(one.markdown()).replaceAll(" ")));
  }

  private static Source refrigerant(Link page) {
    Entry entry = new Entry(Kind.REFRIGERANT, page.text(), page.text(), "", page.href(), List.of());
    return new Source(entry, List.of(), List.of(), List.of());
  }

  private static Entry entry(
      Kind kind,
      Target.Kind target,
      String id,
      String title,
      String context,
      List<String> families) {
    String href = SitePaths.address(new Target(target, id));
    return new Entry(kind, id, title, Line.of(context), href, families);
  }
}
