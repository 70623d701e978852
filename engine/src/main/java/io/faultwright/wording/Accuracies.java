package io.faultwright.wording;

import io.faultwright.model.Accuracy;
import io.faultwright.model.Accuracy.Part;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Accuracies as the rule language writes them. */
final class Accuracies {
  private final Amounts amounts;

  Accuracies(Amounts amounts) {
    this.amounts = amounts;
  }

  String words(Accuracy accuracy, Unit unit) {
    return accuracy.parts().stream()
        .map(part -> words(part, unit))
        .collect(Collectors.joining(" plus "));
  }

  private String words(Part part, Unit unit) {
    return part.match(
        fixed -> amount(fixed.amount(), Units.ofDifferences(unit)),
        ofReading -> percent(ofReading.share()) + "reading",
        ofScale -> percent(ofScale.share()) + amount(ofScale.end(), unit));
  }

  private String amount(BigFraction value, Unit unit) {
    return amounts.amount(value, new Scale(unit, Optional.empty()));
  }

  private static String percent(BigFraction share) {
    return Decimals.show(share.multiply(100)) + " % of ";
  }
}
