package io.faultwright.resolve;

import io.faultwright.model.Accuracy;
import io.faultwright.model.Accuracy.Part;
import io.faultwright.model.Domain;
import io.faultwright.quantity.Dimension;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node.Scalar;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads how accurate an instrument is, for instance {@code 0.5 % of reading plus 0.1 K}. */
final class AccuracyResolver {
  static final String ACCURACY = "accuracy";
  private static final Pattern PLUS = Pattern.compile("\\s+plus\\s+");
  private static final Pattern SHARE = Pattern.compile("(.+?)\\s*%\\s*of\\s+(.+)");
  private static final String FORMS =
      "write `0.5 K`, `1 % of reading`, `1 % of 35` for a share of a scale that ends at 35, or"
          + " several with `plus` between them";

  private final Context context;

  AccuracyResolver(Context context) {
    this.context = context;
  }

  /** The accuracy; empty where none is written or it could not be read. */
  Optional<Accuracy> resolve(Definition definition, Fields fields, Domain domain) {
    Optional<Scalar> written = fields.scalar(ACCURACY);
    if (written.isEmpty() || domain == DomainResolver.STAND_IN) {
      return Optional.empty();
    }
    return domain.match(
        measured -> parts(definition, written.get(), measured.unit()),
        choice -> {
          problem(
              written.get(),
              "`accuracy` fits measured readings, but " + definition.what() + " is a choice",
              "take it out; what the instrument is can be said with `instrument`");
          return Optional.empty();
        });
  }

  private Optional<Accuracy> parts(Definition definition, Scalar written, Unit unit) {
    String text = written.text().strip();
    if (text.matches(".*[±+].*")) {
      problem(
          written,
          "an accuracy is written in words, found " + Words.quoted(text),
          "it counts to both sides, so leave out `±`; add parts with `plus`");
      return Optional.empty();
    }
    List<Optional<Part>> parts =
        Arrays.stream(PLUS.split(text)).map(part -> part(definition, written, part, unit)).toList();
    return parts.stream().allMatch(Optional::isPresent)
        ? Optional.of(new Accuracy(parts.stream().map(Optional::orElseThrow).toList()))
        : Optional.empty();
  }

  private Optional<Part> part(Definition definition, Scalar written, String text, Unit unit) {
    Matcher share = SHARE.matcher(text);
    if (share.matches()) {
      return percent(written, share.group(1))
          .flatMap(part -> share(written, part, share.group(2).strip(), unit));
    }
    if (text.endsWith("%") && unit.dimension() != Dimension.RATIO) {
      problem(written, Words.quoted(text) + " does not say of what", FORMS);
      return Optional.empty();
    }
    String whose = "the accuracy of `" + definition.id() + "`";
    return number(written, text, Units.ofDifferences(unit), whose).map(Accuracy.Fixed::new);
  }

  private Optional<BigFraction> percent(Scalar written, String text) {
    return number(written, text, Units.find("times").orElseThrow(), "a share")
        .map(number -> number.divide(100));
  }

  private Optional<Part> share(Scalar written, BigFraction share, String whole, Unit unit) {
    if (whole.equals("reading")) {
      return Optional.of(new Accuracy.OfReading(share));
    }
    if (!whole.matches("[-+]?\\d.*")) {
      problem(
          written, "a share is of `reading` or of a number, found " + Words.quoted(whole), FORMS);
      return Optional.empty();
    }
    return number(written, whole, unit, "the scale").map(end -> new Accuracy.OfScale(share, end));
  }

  private Optional<BigFraction> number(Scalar written, String text, Unit unit, String whose) {
    Optional<BigFraction> number = context.quantities().number(written.place(), text, unit, whose);
    if (number.isPresent() && number.get().signum() <= 0) {
      problem(
          written, "the accuracy must be greater than zero, found " + Words.quoted(text), FORMS);
      return Optional.empty();
    }
    return number;
  }

  private void problem(Scalar written, String message, String help) {
    context.problems().add(written.place(), message, help);
  }
}
