package io.faultwright.wording;

import io.faultwright.model.Bend;
import io.faultwright.model.Curve;
import io.faultwright.model.Derived;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Unit;
import io.faultwright.words.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** How a derived reading is computed, in words: what is added first, then what is taken away. */
final class Computation {
  private final Subjects subjects;
  private final Words say;

  Computation(Subjects subjects, Words say) {
    this.say = say;
    this.subjects = subjects;
  }

  /**
   * For instance {@code Room temperature − Coil temperature}, or {@code Suction line temperature −
   * dew point at Suction pressure}.
   *
   * @param unit of the result, to tell factors from conversions of units
   * @param operand the words for an operand
   */
  String words(Derived derived, Unit unit, UnaryOperator<String> operand) {
    List<Map.Entry<String, BigFraction>> terms =
        derived.terms().entrySet().stream()
            .sorted(Comparator.comparing(term -> -term.getValue().signum()))
            .toList();
    StringBuilder words = new StringBuilder();
    for (Map.Entry<String, BigFraction> term : terms) {
      boolean minus = term.getValue().signum() < 0;
      words.append(sign(minus, words.isEmpty())).append(factor(term, unit));
      words.append(operand.apply(term.getKey()));
    }
    for (Bend bend : derived.bends()) {
      words.append(sign(bend.factor().signum() < 0, words.isEmpty()));
      words.append(point(bend.curve(), argument(bend.argument(), operand)));
    }
    return words.toString();
  }

  private String point(Curve curve, String argument) {
    if (!(curve instanceof Curve.OfSaturation saturation)) {
      return say.say("air pressure at {0}", argument);
    }
    return switch (saturation.line()) {
      case BUBBLE -> say.say("bubble point at {0}", argument);
      case DEW -> say.say("dew point at {0}", argument);
    };
  }

  /** What a curve is read at: the operands, those of the air around last. */
  private String argument(Derived argument, UnaryOperator<String> operand) {
    return Stream.concat(
            argument.terms().keySet().stream(),
            argument.bends().stream().flatMap(bend -> bend.argument().operands().stream()))
        .map(operand)
        .reduce((one, other) -> say.say("{0} and {1}", one, other))
        .orElse("");
  }

  private static String sign(boolean minus, boolean first) {
    if (first) {
      return minus ? "−" : "";
    }
    return minus ? " − " : " + ";
  }

  private String factor(Map.Entry<String, BigFraction> term, Unit unit) {
    BigFraction size = term.getValue().signum() < 0 ? term.getValue().negate() : term.getValue();
    BigFraction converted = subjects.unit(term.getKey()).scale().divide(unit.scale());
    return size.equals(converted) ? "" : say.figure(Decimals.show(size.divide(converted))) + " × ";
  }
}
