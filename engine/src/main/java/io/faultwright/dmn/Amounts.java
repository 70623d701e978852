package io.faultwright.dmn;

import io.faultwright.model.Derived;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Readings as expressions of what is put in. What is read off a curve, such as a saturation
 * temperature, is put in itself, computed beforehand; sums and differences are computed here.
 */
final class Amounts {
  private final KnowledgeBase kb;

  Amounts(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** A reading as a sum of what is put in. */
  Sum sum(String id) {
    Optional<Derived> form = kb.readings().get(id).derived();
    if (form.isEmpty() || !form.get().bends().isEmpty()) {
      return Sum.of(id);
    }
    Sum sum = Sum.of(form.get().constant());
    for (Map.Entry<String, BigFraction> term : form.get().terms().entrySet()) {
      sum = sum.plus(sum(term.getKey()).times(term.getValue()));
    }
    return sum;
  }

  /** Readings that have to be put in to know a reading. */
  SortedSet<String> inputs(String reading) {
    return new TreeSet<>(sum(reading).factors().keySet());
  }

  /** A sum whose numbers have finite decimals. */
  String expression(Sum sum) {
    List<String> names = sum.factors().keySet().stream().map(this::known).toList();
    return Feel.sum(List.copyOf(sum.factors().values()), names, sum.constant());
  }

  /** What was put in, or what is assumed where nothing was. */
  private String known(String reading) {
    String name = Names.of(reading);
    Reading definition = kb.readings().get(reading);
    return definition
        .assumed()
        .filter(Value.Number.class::isInstance)
        .map(value -> Feel.number(((Value.Number) value).amount()))
        .map(value -> "(if " + name + " = null then " + value + " else " + name + ")")
        .orElse(name);
  }

  /** Whether a reading, or one that it is computed from, cannot be taken. */
  String untaken(String reading) {
    return inputs(reading).stream()
        .map(input -> Names.untaken(input) + " = true")
        .collect(Collectors.joining(" or "));
  }

  /** The least factor that gives numbers finite decimals, those of the reading's sum included. */
  BigFraction times(Sum sum, List<BigFraction> compared) {
    List<BigFraction> numbers = new ArrayList<>(sum.numbers());
    numbers.addAll(compared);
    return BigFraction.of(Feel.whole(numbers));
  }
}
