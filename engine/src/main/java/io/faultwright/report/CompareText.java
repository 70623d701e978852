package io.faultwright.report;

import io.faultwright.change.Comparison;
import io.faultwright.change.Comparison.Revision;
import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Concern;
import io.faultwright.change.SymptomChange;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What differs between two revisions, for people. */
public final class CompareText {
  private final SituationText situations;
  private final Ink ink;

  /**
   * @param shared the readings in which situations are written
   */
  public CompareText(KnowledgeBase shared, Ink ink) {
    this.situations = new SituationText(shared);
    this.ink = ink;
  }

  /** What means something else, what is only written differently, and a verdict. */
  public String write(Comparison comparison) {
    return ink.strong(Columns.printable(comparison.handbook()))
        + "\n"
        + revision("before", comparison.before())
        + revision("now", comparison.after())
        + "\n"
        + equipment(comparison)
        + symptoms(comparison)
        + edits("Rules, readings and limits", comparison.edits(Concern.RULES))
        + edits("How the work is done", comparison.edits(Concern.WORK))
        + edits("Texts", comparison.edits(Concern.TEXT))
        + edits("Cases", comparison.edits(Concern.CASES))
        + verdict(comparison);
  }

  private static String revision(String label, Revision revision) {
    return Block.of(label, "revision " + revision.number() + " of " + revision.date());
  }

  private String equipment(Comparison comparison) {
    String body =
        Block.of("added", builds(comparison.added()))
            + Block.of("removed", builds(comparison.removed()));
    return body.isEmpty() ? "" : ink.strong("Equipment") + "\n\n" + body + "\n";
  }

  /** A line for each model. */
  private static List<String> builds(List<Build> builds) {
    Map<String, List<String>> byModel = new LinkedHashMap<>();
    for (Build build : builds) {
      byModel
          .computeIfAbsent(build.model().id(), model -> new ArrayList<>())
          .addAll(build.software().map(version -> version.text()).stream().toList());
    }
    return byModel.entrySet().stream()
        .map(
            model ->
                model.getKey()
                    + (model.getValue().isEmpty()
                        ? ""
                        : " with software " + String.join(", ", model.getValue())))
        .toList();
  }

  private String symptoms(Comparison comparison) {
    return comparison.symptoms().stream()
        .filter(symptom -> !symptom.unchanged())
        .map(new SymptomChangeText(situations, ink)::of)
        .collect(Collectors.joining());
  }

  private String edits(String title, List<Edit> edits) {
    if (edits.isEmpty()) {
      return "";
    }
    Map<String, List<Edit>> things = new LinkedHashMap<>();
    edits.forEach(
        edit ->
            things
                .computeIfAbsent(edit.kind() + " " + edit.id(), k -> new ArrayList<>())
                .add(edit));
    return ink.strong(title)
        + "\n\n"
        + things.entrySet().stream()
            .map(thing -> thing(thing.getKey(), thing.getValue()))
            .collect(Collectors.joining())
        + "\n";
  }

  private String thing(String name, List<Edit> edits) {
    Edit first = edits.get(0);
    String what =
        first.whole()
            ? first.manner()
            : edits.stream().map(Edit::field).collect(Collectors.joining(", "));
    return "  "
        + Columns.printable(name.strip())
        + ": "
        + what
        + "  "
        + ink.frame(first.place().toString())
        + "\n";
  }

  private String verdict(Comparison comparison) {
    long same = comparison.symptoms().stream().filter(SymptomChange::unchanged).count();
    int all = comparison.symptoms().size();
    String proof =
        Counts.of(all, "symptom")
            + " in both: "
            + (same == all ? "all" : same == 0 ? "none" : Long.toString(same))
            + " proved to have no situation with another outcome\n";
    return (all == 0 ? "" : proof)
        + (comparison.sameMeaning()
            ? ink.good("no change in meaning")
            : ink.uneasy("the meaning changed"))
        + "\n";
  }
}
