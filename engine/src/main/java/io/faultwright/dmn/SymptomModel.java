package io.faultwright.dmn;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.model.Version;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A symptom as decisions: the group of machines, each reading against its limits, what comes before
 * the rules, and the answer.
 */
final class SymptomModel {
  /** More rows than anybody waits for. */
  private static final int MOST_ROWS = 20_000;

  /** What is said where the rules are to be asked. */
  private static final String ASK_RULES = "ask the rules";

  private final KnowledgeBase kb;
  private final Symptom symptom;
  private final Labels labels;
  private final Relevant relevant;
  private final Column.Groups groups;
  private final Grid before;
  private final Grid rules;

  SymptomModel(KnowledgeBase kb, Symptom symptom) {
    this.kb = kb;
    this.symptom = symptom;
    this.labels = new Labels(kb);
    this.relevant = Relevant.of(kb, symptom);
    this.groups = Grid.groups(kb, symptom, relevant);
    this.before =
        new Grid(
            kb,
            groups,
            Stream.of(
                    relevant.nevers().stream(),
                    Stream.of(symptom.recognise()),
                    symptom.first().stream().map(Symptom.First::when))
                .flatMap(some -> some)
                .toList());
    List<Condition> when = symptom.rules().values().stream().map(Rule::when).toList();
    this.rules = new Grid(kb, groups, when);
  }

  /** Ids of readings that are put in, and of those that can be said to be impossible to take. */
  Inputs inputs() {
    SortedSet<String> readings = new TreeSet<>();
    SortedSet<String> untaken = new TreeSet<>();
    Amounts amounts = new Amounts(kb);
    for (Grid grid : List.of(before, rules)) {
      for (Column column : grid.columns()) {
        if (column instanceof Column.Words words) {
          readings.add(words.reading());
        } else if (column instanceof Column.Numbers numbers) {
          readings.addAll(amounts.inputs(numbers.reading()));
        } else if (column instanceof Column.Untaken refused) {
          untaken.addAll(amounts.inputs(refused.reading()));
        }
      }
    }
    for (String limited : limited()) {
      readings.addAll(amounts.inputs(limited));
      kb.limits().get(limited).drivers().forEach(id -> readings.addAll(amounts.inputs(id)));
    }
    return new Inputs(readings, untaken);
  }

  /** What is put in. */
  record Inputs(SortedSet<String> readings, SortedSet<String> untaken) {}

  SortedSet<String> limited() {
    SortedSet<String> limited = before.limited();
    limited.addAll(rules.limited());
    return limited;
  }

  Table side(String reading) {
    return new SideTables(kb, groups).of(reading, labels);
  }

  /** The builds that the symptom is offered for. */
  List<Build> builds() {
    return groups.builds().stream().flatMap(List::stream).sorted().toList();
  }

  Table groups() {
    List<Table.Row> rows = new ArrayList<>();
    for (int group = 0; group < groups.builds().size(); group++) {
      for (Build build : groups.builds().get(group)) {
        String software = build.software().map(Version::text).map(Feel::string).orElse("null");
        rows.add(
            new Table.Row(
                List.of(Feel.string(build.model().id()), software),
                List.of(Feel.string(Column.Groups.name(group)))));
      }
    }
    return new Table(
        List.of(
            new Table.Input("Model", Names.MODEL, "string"),
            new Table.Input("Software", Names.SOFTWARE, "string")),
        List.of(new Table.Output("", "string", "null")),
        rows);
  }

  /** What comes before the rules: the machine, what cannot be, recognition, what must be right. */
  Table before() {
    List<Table.Row> rows = new ArrayList<>();
    for (Outcomes.Part part : new Outcomes(before).beforeRules(symptom, relevant.nevers())) {
      add(rows, before, part, List.of());
    }
    return new Table(
        before.columns().stream().map(labels::input).toList(), outputs(ASK_RULES), rows);
  }

  /** The answer: what came before the rules, or what they say. */
  Table answer() {
    String stage = Names.before(symptom.id());
    List<Table.Input> inputs = new ArrayList<>();
    inputs.add(new Table.Input("Before the rules", stage + ".status", "string"));
    rules.columns().forEach(column -> inputs.add(labels.input(column)));
    List<Table.Row> rows = new ArrayList<>();
    List<String> any = new ArrayList<>(List.of("not(" + Feel.string(ASK_RULES) + ")"));
    rules.columns().forEach(column -> any.add("-"));
    rows.add(new Table.Row(any, List.of(stage + ".status", stage + ".answers", stage + ".words")));
    for (Outcomes.Part part : new Outcomes(rules).ofRules(symptom)) {
      add(rows, rules, part, List.of(Feel.string(ASK_RULES)));
    }
    return new Table(inputs, outputs(Stage.NOTHING_YET.word()), rows);
  }

  /**
   * Adds the rows of a part.
   *
   * @param leading tests before those of the columns; they hold for known machines only
   */
  private void add(List<Table.Row> rows, Grid grid, Outcomes.Part part, List<String> leading) {
    List<String> results =
        List.of(
            Feel.string(part.stage().word()),
            Feel.list(part.answers().stream().map(RuleText::answer).toList()),
            Feel.list(words(part.answers())));
    for (List<BitSet> row : Rows.of(grid.diagrams(), part.where(), MOST_ROWS - rows.size())) {
      List<String> tests = new ArrayList<>(leading);
      boolean everyMachine =
          !leading.isEmpty() && row.get(0).cardinality() >= groups.builds().size();
      for (int i = 0; i < row.size(); i++) {
        boolean free = i == 0 && everyMachine;
        tests.add(free ? "-" : grid.columns().get(i).entry(row.get(i)));
      }
      rows.add(new Table.Row(tests, results));
    }
    if (rows.size() >= MOST_ROWS) {
      throw tooMany();
    }
  }

  private Unreadable tooMany() {
    return new Unreadable(
        List.of(
            Problem.at(
                symptom.place(),
                "the decision table of `" + symptom.id() + "` would have more than 20000 rows",
                "divide the symptom")));
  }

  private List<String> words(Collection<Answer> answers) {
    return answers.stream().map(labels.wording()::answer).toList();
  }

  private static List<Table.Output> outputs(String status) {
    return List.of(
        new Table.Output("status", "string", Feel.string(status)),
        new Table.Output("answers", SymptomFile.TEXTS, "[]"),
        new Table.Output("words", SymptomFile.TEXTS, "[]"));
  }
}
