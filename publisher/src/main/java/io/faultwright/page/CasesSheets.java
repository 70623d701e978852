package io.faultwright.page;

import io.faultwright.adequacy.Coverage;
import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Goal;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.Tally;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.CasesSheet.Complaint;
import io.faultwright.page.CasesSheet.Item;
import io.faultwright.page.CasesSheet.Open;
import io.faultwright.page.HeatTable.Cell;
import io.faultwright.page.HeatTable.Row;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** The page on how good the recorded cases are. */
public final class CasesSheets {
  private final Measured measured;
  private final BuildColumns columns;

  private CasesSheets(Measured measured) {
    this.measured = measured;
    this.columns = new BuildColumns(measured.builds());
  }

  public static CasesSheet of(KnowledgeBase kb, Measured measured) {
    CasesSheets sheets = new CasesSheets(measured);
    return new CasesSheet(
        Frames.of(kb.handbook(), false),
        sheets.facts(),
        sheets.criteria(),
        sheets.equipment(),
        measured.symptoms().stream().map(sheets::complaint).toList(),
        measured.mutants().stream().map(new MistakeItems(kb)::of).toList());
  }

  private List<String> facts() {
    List<String> facts = new ArrayList<>();
    facts.add("Cases that were measured: " + measured.counts().counted() + ".");
    if (measured.counts().failed() > 0) {
      facts.add(
          "Cases that come out otherwise than they expect, and do not count: "
              + measured.counts().failed()
              + ".");
    }
    if (measured.counts().unconfirmed() > 0) {
      facts.add(
          "Cases that nobody has confirmed, and that do not count: "
              + measured.counts().unconfirmed()
              + ".");
    }
    if (!measured.done().whole()) {
      facts.add(
          "Stopped early: "
              + measured.done().pieces()
              + " of "
              + measured.done().of()
              + " pieces of work were done. What is missing here was not looked at.");
    }
    return facts;
  }

  private HeatTable criteria() {
    List<Criterion> criteria = List.copyOf(measured.tallies().keySet());
    List<Row> rows = new ArrayList<>();
    for (Coverage symptom : measured.symptoms()) {
      rows.add(row(symptom.symptom(), criteria, symptom.tallies()));
    }
    rows.add(row("all", criteria, measured.tallies()));
    return new HeatTable(
        "Shown, of what can be shown",
        "Complaint",
        false,
        criteria.stream().map(one -> List.of(one.title())).toList(),
        rows);
  }

  private static Row row(String head, List<Criterion> criteria, Map<Criterion, Tally> tallies) {
    return new Row(
        head,
        criteria.stream()
            .map(one -> HeatCells.count(tallies.getOrDefault(one, new Tally(0, 0))))
            .toList());
  }

  private List<HeatTable> equipment() {
    Map<String, Function<Build, Cell>> rows = new LinkedHashMap<>();
    measured
        .symptoms()
        .forEach(
            symptom -> rows.put(symptom.symptom(), build -> HeatCells.percent(symptom.on(build))));
    rows.put("all", build -> HeatCells.percent(measured.on(build)));
    return columns.tables("Shown on each model and software, in per cent", "Complaint", rows);
  }

  private Complaint complaint(Coverage symptom) {
    return new Complaint(symptom.symptom(), symptom.title(), rules(symptom), open(symptom));
  }

  private List<HeatTable> rules(Coverage symptom) {
    Map<String, List<GoalStatus>> rules = new LinkedHashMap<>();
    symptom
        .goals()
        .forEach(
            goal ->
                goal.goal()
                    .rule()
                    .ifPresent(
                        rule -> rules.computeIfAbsent(rule, id -> new ArrayList<>()).add(goal)));
    Map<String, Function<Build, Cell>> rows = new LinkedHashMap<>();
    rules.forEach(
        (rule, goals) ->
            rows.put(
                rule,
                build ->
                    HeatCells.count(
                        new Coverage(symptom.symptom(), symptom.title(), 0, goals).on(build))));
    return columns.tables("What is shown of each rule, by model and software", "Rule", rows);
  }

  private static List<Open> open(Coverage symptom) {
    Map<Criterion, List<Item>> open = new EnumMap<>(Criterion.class);
    symptom
        .open()
        .map(GoalStatus::goal)
        .sorted(Comparator.comparing(Goal::place))
        .forEach(
            goal ->
                open.computeIfAbsent(goal.criterion(), one -> new ArrayList<>()).add(item(goal)));
    return Stream.of(Criterion.values())
        .filter(open::containsKey)
        .map(
            one ->
                new Open(
                    one.title(),
                    open.get(one).size(),
                    one == Criterion.PAIRS ? List.of() : open.get(one)))
        .toList();
  }

  private static Item item(Goal goal) {
    return new Item(goal.wordsInRule(), line(goal.place()));
  }

  static String line(Place place) {
    return place.file() + ":" + place.line();
  }
}
