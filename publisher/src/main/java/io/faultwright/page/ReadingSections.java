package io.faultwright.page;

import io.faultwright.model.Access;
import io.faultwright.model.Domain.Choice;
import io.faultwright.model.Domain.Measured;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.SetUp;
import io.faultwright.page.Target.Kind;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Refrigerant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** How each reading is taken. */
final class ReadingSections {
  /** Easiest first. */
  static final Comparator<Reading> EFFORT =
      Comparator.comparing(Reading::access)
          .thenComparing(Reading::minutes)
          .thenComparing(Reading::place);

  private final Desk desk;

  ReadingSections(Desk desk) {
    this.desk = desk;
  }

  ReadingSection of(Reading reading) {
    return new ReadingSection(
        new Target(Kind.READING, reading.id()).anchor(),
        reading.title(),
        desk.links().own(Kind.READING, reading.id(), reading.title()),
        desk.words()
            .computation(reading.id())
            .map(words -> "Worked out as " + words + ".")
            .orElse(reading.ask()),
        facts(reading),
        reading.domain().match(measured -> List.of(), ReadingSections::titles),
        new Clauses(desk).of(reading.applies()),
        new Cautions(desk).of(reading.cautions()),
        reading.how(),
        Optional.ofNullable(desk.kb().limits().get(reading.id())).map(new LimitsSections(desk)::of),
        desk.links().refrigerants(refrigerants(reading)),
        desk.links().guide(reading.guide()),
        desk.links().symptoms(desk.uses().symptomsWithReading(reading.id())));
  }

  /** Those of the models on which it can be taken. */
  private List<Refrigerant> refrigerants(Reading reading) {
    return desk.uses().needsRefrigerant(reading)
        ? desk.uses().refrigerants().stream().filter(one -> isOn(reading, one)).toList()
        : List.of();
  }

  private boolean isOn(Reading reading, Refrigerant refrigerant) {
    return desk.kb().equipment().builds().stream()
        .filter(build -> build.satisfies(reading.applies()))
        .anyMatch(b -> b.model().refrigerant().equals(Optional.of(refrigerant.id())));
  }

  private List<Fact> facts(Reading reading) {
    List<Fact> facts =
        new ArrayList<>(reading.domain().match(m -> measured(reading, m), this::choice));
    reading.where().ifPresent(text -> facts.add(new Fact("Where", text)));
    reading.phase().ifPresent(text -> facts.add(new Fact("When", text)));
    reading.instrument().ifPresent(text -> facts.add(new Fact("With", text)));
    desk.words().accuracy(reading).ifPresent(text -> facts.add(new Fact("Accuracy", text)));
    facts.add(new Fact("Access", access(reading.access())));
    reading.setUp().map(desk.kb().setUps()::get).map(this::setUp).ifPresent(facts::add);
    facts.add(new Fact("Takes", Decimals.show(reading.minutes()) + " min"));
    if (!reading.after().isEmpty()) {
      facts.add(new Fact("After", titles(reading.after())));
    }
    return facts;
  }

  private Fact setUp(SetUp setUp) {
    return new Fact("Set up once", setUp.title() + ", " + Decimals.show(setUp.minutes()) + " min");
  }

  private String titles(Set<String> readings) {
    return readings.stream()
        .map(id -> desk.kb().readings().get(id).title())
        .collect(Collectors.joining(", "));
  }

  private List<Fact> measured(Reading reading, Measured measured) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        desk.uses().needsRefrigerant(reading)
            ? new Fact("Unit", desk.words().unit(reading.id()))
            : new Fact("Range", desk.words().interval(reading.id(), measured.range())));
    desk.words().resolution(reading.id()).ifPresent(step -> facts.add(new Fact("Read to", step)));
    return facts;
  }

  private static List<String> titles(Choice choice) {
    return choice.yesNo() ? List.of() : choice.values().stream().map(NamedValue::title).toList();
  }

  private List<Fact> choice(Choice choice) {
    return choice.yesNo() ? List.of(new Fact("Answer", "Yes or no")) : List.of();
  }

  /** What has to be opened or touched, as printed. */
  static String access(Access access) {
    return switch (access) {
      case OUTSIDE -> "From outside";
      case PANEL -> "Panel open";
      case LIVE_VOLTAGE -> "At live voltage";
      case REFRIGERANT_CIRCUIT -> "At the refrigerant circuit";
    };
  }
}
