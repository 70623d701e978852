package io.faultwright.resolve;

import io.faultwright.model.Access;
import io.faultwright.model.AccessWeights;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads how many minutes outside a minute of each kind of access counts for. */
final class AccessWeightsResolver {
  static final String ACCESS_WEIGHTS = "access-weights";
  private static final List<String> KEYS = Access.words();
  private static final Unit TIMES = Units.find("times").orElseThrow();

  private final Context context;

  AccessWeightsResolver(Context context) {
    this.context = context;
  }

  AccessWeights of(Fields handbook) {
    return handbook.read(ACCESS_WEIGHTS, this::weights, AccessWeights.USUAL);
  }

  private AccessWeights weights(Node node) {
    int before = context.problems().count();
    Fields fields =
        new Fields(node, "`" + ACCESS_WEIGHTS + "`", node.place(), KEYS, context.problems());
    AccessWeights weights =
        new AccessWeights(
            weight(fields, Access.OUTSIDE),
            weight(fields, Access.PANEL),
            weight(fields, Access.LIVE_VOLTAGE),
            weight(fields, Access.REFRIGERANT_CIRCUIT));
    if (context.problems().count() == before) {
      checkRising(fields, weights);
    }
    return weights;
  }

  private void checkRising(Fields fields, AccessWeights weights) {
    Access[] kinds = Access.values();
    for (int i = 1; i < kinds.length; i++) {
      checkRising(fields, weights, kinds[i - 1], kinds[i]);
    }
  }

  private BigFraction weight(Fields fields, Access access) {
    return fields
        .scalar(access.word())
        .flatMap(this::positive)
        .orElse(AccessWeights.USUAL.of(access));
  }

  private Optional<BigFraction> positive(Scalar written) {
    Optional<BigFraction> weight =
        context.quantities().number(written.place(), written.text(), TIMES, "a weight");
    if (weight.isPresent() && weight.get().signum() <= 0) {
      context
          .problems()
          .add(
              written.place(),
              "a weight must be greater than zero",
              "write how many minutes outside such a minute counts for");
      return Optional.empty();
    }
    return weight;
  }

  private void checkRising(Fields fields, AccessWeights weights, Access easier, Access graver) {
    if (weights.of(graver).compareTo(weights.of(easier)) < 0) {
      context
          .problems()
          .add(
              fields.place(fields.has(graver.word()) ? graver.word() : easier.word()),
              "a minute of `"
                  + graver.word()
                  + "` counts for "
                  + Decimals.show(weights.of(graver))
                  + ", less than the "
                  + Decimals.show(weights.of(easier))
                  + " of `"
                  + easier.word()
                  + "`",
              "weights may not fall from an easier to a graver kind of access; a kind without a weight"
                  + " keeps the usual one");
    }
  }
}
