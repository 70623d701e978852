package io.faultwright.resolve;

import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node.Scalar;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads how long something takes. */
final class MinutesResolver {
  static final String MINUTES = "minutes";
  private static final Unit MINUTE = Units.find("min").orElseThrow();

  private final Context context;

  MinutesResolver(Context context) {
    this.context = context;
  }

  Optional<BigFraction> read(Scalar written) {
    Optional<BigFraction> minutes =
        context.quantities().number(written.place(), written.text(), MINUTE, "`minutes`");
    if (minutes.isPresent() && minutes.get().signum() < 0) {
      context
          .problems()
          .add(written.place(), "`minutes` cannot be negative", "write `0` or more minutes");
    }
    return minutes;
  }
}
