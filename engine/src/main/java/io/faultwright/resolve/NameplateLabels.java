package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Equipment;
import io.faultwright.model.Model;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads which nameplate data a remedy needs. Every model that can have the fault must have them: a
 * technician must not be sent to a figure that is not there.
 */
final class NameplateLabels {
  private static final int NAMED = 3;

  private final Problems problems;
  private final Optional<Equipment> equipment;

  /**
   * For these models.
   *
   * @param equipment absent where it could not be read, and nothing can be said about it
   */
  NameplateLabels(Problems problems, Optional<Equipment> equipment) {
    this.problems = problems;
    this.equipment = equipment;
  }

  List<String> read(List<Scalar> written, Condition applies) {
    equipment.ifPresent(known -> written.forEach(label -> check(label, known, applies)));
    return written.stream().map(label -> label.text().strip()).distinct().toList();
  }

  private void check(Scalar written, Equipment known, Condition applies) {
    String label = written.text().strip();
    SortedSet<String> labels =
        known.models().values().stream()
            .flatMap(model -> model.labels().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    if (labels.contains(label)) {
      checkEveryModel(written, label, known, applies);
    } else {
      problems.add(
          written.place(),
          "no model has " + Words.quoted(label) + " on its nameplate",
          labels.isEmpty() ? cure(label) : NearMatch.help(label, labels));
    }
  }

  private void checkEveryModel(Scalar written, String label, Equipment known, Condition applies) {
    List<String> lacking =
        known.builds().stream()
            .filter(build -> build.satisfies(applies))
            .map(Build::model)
            .distinct()
            .filter(model -> model.nameplate(label).isEmpty())
            .map(Model::id)
            .toList();
    if (!lacking.isEmpty()) {
      problems.add(
          written.place(),
          "the fault applies to "
              + named(lacking)
              + ", with no "
              + Words.quoted(label)
              + " on the nameplate",
          cure(label) + ", or narrow `applies` of the fault");
    }
  }

  private static String named(List<String> models) {
    int more = models.size() - NAMED;
    return more > 0
        ? Words.quoted(models.subList(0, NAMED)) + " and " + more + " more"
        : Words.and(models);
  }

  private static String cure(String label) {
    return label.equals(Model.REFRIGERANT)
        ? "give the model a `refrigerant`"
        : "write it below `data` of the model";
  }
}
