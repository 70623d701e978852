package io.faultwright.field;

import io.faultwright.model.Equipment;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the one condition that best tells the disagreeing rows of a rule from the agreeing ones:
 * the one whose share among the former exceeds its share among the latter by most (Youden, "Index
 * for rating diagnostic tests", Cancer 3:32-35, 1950; from memory). Over the thresholds of a
 * measured reading that is the two-sample statistic of Smirnov, so his bound tells what chance
 * would bring ("Table for estimating the goodness of fit of empirical distributions", Annals of
 * Mathematical Statistics 19:279-281, 1948; from memory).
 */
final class Separator {
  /** What is no more than this is not worth telling. */
  private static final BigFraction LEAST = BigFraction.of(1, 2);

  /** How often chance may separate by so much, over all readings compared. */
  private static final double CHANCE = 0.05;

  private static final Comparator<Separation> BEST_FIRST =
      Comparator.comparing(Separation::advantage)
          .thenComparing(Separation::ofDisagreeing)
          .reversed()
          .thenComparing(one -> rank(one.subject()))
          .thenComparing(Separation::subject);

  private final ClassBook classes;

  Separator(ClassBook classes) {
    this.classes = classes;
  }

  /** A reading says more than a fact, and a model least. */
  private static int rank(String subject) {
    return subject.equals(Equipment.MODEL) ? 1 : 0;
  }

  Contrast contrast(Sample disagreeing, Sample agreeing) {
    if (agreeing.rows() == 0) {
      return Contrast.none(Contrast.Kind.NOTHING_AGREES);
    }
    if (!disagreeing.whole() || !agreeing.whole()) {
      return Contrast.none(Contrast.Kind.NOT_COUNTED);
    }
    List<String> subjects =
        disagreeing.readings().keySet().stream()
            .filter(agreeing.readings()::containsKey)
            .filter(id -> 2 * disagreeing.readings().get(id).rows() >= disagreeing.rows())
            .toList();
    Stream<Separation> all =
        subjects.stream()
            .map(id -> best(id, disagreeing.readings().get(id), agreeing.readings().get(id)));
    return judged(all.min(BEST_FIRST), subjects.size(), disagreeing, agreeing);
  }

  /** The best condition on one subject; the first of those that are equally good. */
  private Separation best(String id, Histogram wanted, Histogram others) {
    Comparator<Classes.Split> better =
        Comparator.comparingLong(
            split -> split.wanted() * others.rows() - split.others() * wanted.rows());
    Classes.Split best = classes.of(id).splits(wanted, others).min(better.reversed()).orElseThrow();
    return new Separation(
        id, best.pattern(), best.wanted(), wanted.rows(), best.others(), others.rows());
  }

  private static Contrast judged(
      Optional<Separation> best, int subjects, Sample disagreeing, Sample agreeing) {
    if (chance(subjects, disagreeing.rows(), agreeing.rows()) >= 1) {
      return Contrast.none(Contrast.Kind.TOO_FEW);
    }
    return best.filter(one -> one.advantage().compareTo(LEAST) >= 0)
        .filter(
            one ->
                one.advantage().doubleValue()
                    > chance(subjects, one.ofDisagreeing(), one.ofAgreeing()))
        .map(Contrast::of)
        .orElse(Contrast.none(Contrast.Kind.NOTHING_SEPARATES));
  }

  /**
   * The advantage that chance brings some reading as seldom as agreed; above 1 where it always may.
   */
  private static double chance(int subjects, long some, long others) {
    double factor = StrictMath.log(2 * Math.max(1, subjects) / CHANCE) / 2;
    return StrictMath.sqrt(factor * (some + others) / ((double) some * others));
  }
}
