package io.faultwright.page;

import io.faultwright.model.Answer;
import io.faultwright.model.Fault;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Value;
import io.faultwright.page.LessonDrawing.Setting;
import io.faultwright.page.LessonSheet.Leaf;
import io.faultwright.page.LessonSheet.Machine;
import io.faultwright.page.LessonSheet.PlacedLimits;
import io.faultwright.page.LessonSheet.Read;
import io.faultwright.page.LessonSheet.Repair;
import io.faultwright.page.LessonSheet.Scale;
import io.faultwright.page.LessonSheet.Standing;
import io.faultwright.page.LessonSheet.Take;
import io.faultwright.page.LessonSource.Drawn;
import io.faultwright.page.LessonSource.Example;
import io.faultwright.page.LessonSource.Moment;
import io.faultwright.page.LessonSource.Taken;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tells a worked example: each reading is asked before its value is shown. */
final class LessonExample {
  private final Desk desk;
  private final Setting setting;
  private final Example example;
  private final String name;

  LessonExample(Desk desk, Setting setting, Example example, int number) {
    this.desk = desk;
    this.setting = setting;
    this.example = example;
    this.name = desk.say("Example {0}", number);
  }

  List<Leaf> leaves() {
    List<Leaf> leaves = new ArrayList<>(List.of(machine()));
    for (Moment moment : example.moments()) {
      leaves.addAll(readings(moment));
      leaves.add(standing(moment));
    }
    leaves.addAll(repairs());
    return leaves;
  }

  private Leaf machine() {
    List<Fact> facts = new ArrayList<>();
    example
        .recorded()
        .given()
        .equipment()
        .forEach(
            (id, value) ->
                facts.add(new Fact(desk.words().subject(id), desk.words().value(id, value))));
    facts.add(new Fact(desk.say("Complaint"), desk.words().symptom(example.recorded().symptom())));
    return new Machine(name, example.told().title(), facts, example.recorded().note());
  }

  private List<Leaf> readings(Moment moment) {
    List<Leaf> leaves = new ArrayList<>();
    for (Taken taken : moment.taken()) {
      Reading reading = desk.kb().readings().get(taken.reading());
      if (!taken.computed()) {
        leaves.add(take(moment, reading));
      }
      leaves.add(read(moment, reading, taken));
    }
    return leaves;
  }

  private Leaf take(Moment moment, Reading reading) {
    return new Take(
        over(moment),
        reading.title(),
        reading.ask(),
        new Cautions(desk).of(reading.cautions()),
        reading.how());
  }

  private String over(Moment moment) {
    return name + ": " + moment.phase().phase();
  }

  private Leaf read(Moment moment, Reading reading, Taken taken) {
    Optional<LimitsTable> limits =
        Optional.ofNullable(desk.kb().limits().get(reading.id()))
            .filter(table -> taken.band().isPresent());
    return new Read(
        over(moment),
        reading.title(),
        desk.words().value(reading.id(), taken.value()),
        note(taken, limits),
        scale(taken),
        limits.flatMap(table -> placed(table, taken)));
  }

  private String note(Taken taken, Optional<LimitsTable> limits) {
    if (taken.computed()) {
      return desk.say(
          "Worked out as {0}.", desk.words().computation(taken.reading(), taken.beside()));
    }
    boolean open = limits.isEmpty() && desk.kb().limits().containsKey(taken.reading());
    return open ? desk.say("Its limits are not known yet.") : "";
  }

  private Optional<Scale> scale(Taken taken) {
    return amount(taken.value())
        .flatMap(
            amount ->
                taken.band().map(band -> new LessonScales(desk).of(taken.reading(), amount, band)));
  }

  private static Optional<BigFraction> amount(Value value) {
    return value.match(
        word -> Optional.empty(), number -> Optional.of(number.amount()), () -> Optional.empty());
  }

  /** Its limits on this machine alone; what names the machine need not stand in the table. */
  private Optional<PlacedLimits> placed(LimitsTable table, Taken taken) {
    List<LimitsTable.Row> rows =
        table.rows().stream()
            .filter(row -> example.builds().stream().anyMatch(b -> b.satisfies(row.builds())))
            .toList();
    if (rows.isEmpty() || table.drivers().isEmpty()) {
      return Optional.empty();
    }
    LimitsTable own =
        new LimitsTable(
            table.reading(),
            table.place(),
            table.drivers(),
            table.drivers(),
            table.between(),
            rows);
    return Optional.of(new PlacedLimits(new LimitsSections(desk).of(own), marked(own, taken)));
  }

  /** The row that holds, or the two that the limits lie between. */
  private static List<Integer> marked(LimitsTable table, Taken taken) {
    if (table.drivers().size() != 1) {
      return List.of();
    }
    return Optional.ofNullable(taken.beside().get(table.drivers().get(0)))
        .flatMap(LessonExample::amount)
        .map(at -> LessonRows.around(table.rows(), at))
        .orElse(List.of());
  }

  private Leaf standing(Moment moment) {
    return new Standing(
        over(moment),
        moment.answers().isEmpty() ? desk.say("How far this leads") : told(moment.answers()),
        moment.phase().text(),
        moment.answers().isEmpty() ? faults(moment.possible()) : List.of(),
        faults(moment.ruledOut()),
        moment.way().flatMap(drawn -> way(drawn, moment)));
  }

  private Optional<LessonDrawing> way(Drawn drawn, Moment moment) {
    List<Moment> all = example.moments();
    return setting.way(drawn, over(moment), moment.equals(all.get(all.size() - 1)));
  }

  private String told(Collection<Answer> answers) {
    return desk.words().say().andEach(answers.stream().map(desk.words()::answer).toList());
  }

  private List<String> faults(Collection<String> ids) {
    return ids.stream().map(desk.words()::fault).toList();
  }

  /** The repair of each fault that the example ends with. */
  private List<Leaf> repairs() {
    return example.moments().stream()
        .skip(Math.max(0, example.moments().size() - 1))
        .flatMap(last -> last.answers().stream())
        .filter(Answer.OfFault.class::isInstance)
        .map(answer -> desk.kb().faults().get(answer.name()))
        .flatMap(this::repair)
        .toList();
  }

  private Stream<Leaf> repair(Fault fault) {
    Steps steps = new Steps(desk);
    return Stream.of(
        new Repair(
            name,
            desk.words().fault(fault.id()),
            new Cautions(desk).of(fault.cautions()),
            steps.of(fault.remedy(), fault.cautions()),
            steps.of(fault.verify(), List.of())));
  }
}
