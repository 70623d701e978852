package io.faultwright.wording;

import io.faultwright.model.Accuracy;
import io.faultwright.model.Accuracy.Part;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.words.Words;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Accuracies as the rule language writes them. */
final class Accuracies {
  private final Amounts amounts;
  private final Words say;

  Accuracies(Amounts amounts, Words say) {
    this.say = say;
    this.amounts = amounts;
  }

  String words(Accuracy accuracy, Unit unit) {
    return accuracy.parts().stream()
        .map(part -> words(part, unit))
        .reduce((one, other) -> say.say("{0} plus {1}", one, other))
        .orElse("");
  }

  private String words(Part part, Unit unit) {
    return part.match(
        fixed -> amount(fixed.amount(), Units.ofDifferences(unit)),
        ofReading -> say.say("{0} % of reading", percent(ofReading.share())),
        ofScale -> say.say("{0} % of {1}", percent(ofScale.share()), amount(ofScale.end(), unit)));
  }

  private String amount(BigFraction value, Unit unit) {
    return amounts.amount(value, new Scale(unit, Optional.empty()));
  }

  private String percent(BigFraction share) {
    return say.figure(Decimals.show(share.multiply(100)));
  }
}
