package io.faultwright.quantity;

import io.faultwright.quantity.SaturationEquation.Term;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The constants of the papers, copied figure by figure; safety classes after ASHRAE 34. */
final class PublishedFluids {
  private static final String BLENDS =
      "Lemmon, Pseudo-pure fluid equations of state for the refrigerant blends R-410A, R-404A,"
          + " R-507A, and R-407C, Int. J. Thermophys. 24(4):991-1006, 2003";

  private PublishedFluids() {}

  static SortedMap<String, PublishedFluid> all() {
    SortedMap<String, PublishedFluid> all = new TreeMap<>();
    all.put("R-134a", r134a());
    all.put("R-290", r290());
    all.put("R-404A", r404a());
    all.put("R-407C", r407c());
    all.put("R-410A", r410a());
    all.put("R-507A", r507a());
    return all;
  }

  private static PublishedFluid r134a() {
    SaturationEquation line =
        new SaturationEquation(
            374.18,
            4056.29,
            List.of(
                new Term(-7.686556, 1),
                new Term(2.311791, 1.5),
                new Term(-2.039554, 2),
                new Term(-3.583758, 4)));
    return new PublishedFluid(
        SafetyClass.A1,
        line,
        line,
        "Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23:657-729, 1994");
  }

  private static PublishedFluid r290() {
    SaturationEquation line =
        new SaturationEquation(
            369.89,
            4251.2,
            List.of(
                new Term(-6.7722, 1),
                new Term(1.6938, 1.5),
                new Term(-1.3341, 2.2),
                new Term(-3.1876, 4.8),
                new Term(0.94937, 6.2)));
    return new PublishedFluid(
        SafetyClass.A3,
        line,
        line,
        "Lemmon, McLinden and Wagner, J. Chem. Eng. Data 54:3141-3180, 2009");
  }

  private static PublishedFluid r404a() {
    return blend(
        345.27,
        3734.8,
        List.of(
            new Term(0.061067, 0.54),
            new Term(-6.5646, 0.965),
            new Term(-3.6162, 3.7),
            new Term(-3.9771, 9)),
        List.of(
            new Term(-0.00026863, 0.1),
            new Term(-6.5757, 0.972),
            new Term(-4.1802, 3.8),
            new Term(-7.9102, 9)));
  }

  private static PublishedFluid r407c() {
    return blend(
        359.345,
        4631.7,
        List.of(
            new Term(0.48722, 0.54),
            new Term(-6.6959, 0.925),
            new Term(-1.4165, 2.7),
            new Term(-2.5109, 4.7)),
        List.of(
            new Term(-0.086077, 0.4),
            new Term(-6.6364, 0.965),
            new Term(-2.4648, 3.1),
            new Term(-3.4776, 5)));
  }

  private static PublishedFluid r410a() {
    return blend(
        344.494,
        4901.2,
        List.of(
            new Term(-7.2818, 1),
            new Term(2.5093, 1.8),
            new Term(-3.2695, 2.4),
            new Term(-2.8022, 4.9)),
        List.of(
            new Term(-7.4411, 1),
            new Term(1.9883, 1.6),
            new Term(-2.4925, 2.4),
            new Term(-3.2633, 5)));
  }

  private static PublishedFluid r507a() {
    return blend(
        343.765,
        3704.9,
        List.of(
            new Term(-7.4853, 1),
            new Term(2.0115, 1.5),
            new Term(-2.0141, 2.2),
            new Term(-3.7763, 4.6)),
        List.of(
            new Term(-7.5459, 1),
            new Term(2.338, 1.5),
            new Term(-2.237, 2.1),
            new Term(-4.1535, 4.7)));
  }

  private static PublishedFluid blend(
      double kelvin, double kilopascal, List<Term> bubble, List<Term> dew) {
    return new PublishedFluid(
        SafetyClass.A1,
        new SaturationEquation(kelvin, kilopascal, bubble),
        new SaturationEquation(kelvin, kilopascal, dew),
        BLENDS);
  }
}
