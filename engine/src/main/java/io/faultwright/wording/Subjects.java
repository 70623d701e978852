package io.faultwright.wording;

import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Reading;
import io.faultwright.model.Version;
import io.faultwright.quantity.Rounding;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.words.Words;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a condition can ask about: titles, values and units of readings and equipment facts. */
final class Subjects {
  private final KnowledgeBase kb;
  private final Words say;

  Subjects(KnowledgeBase kb) {
    this(kb, Words.ENGLISH);
  }

  Subjects(KnowledgeBase kb, Words say) {
    this.kb = kb;
    this.say = say;
  }

  String title(String subject) {
    return switch (subject) {
      case Equipment.FAMILY -> say.say("Family");
      case Equipment.MODEL -> say.say("Model");
      case Equipment.SOFTWARE -> say.say("Software");
      default -> optionTitle(subject).or(() -> readingTitle(subject)).orElse(subject);
    };
  }

  private Optional<String> optionTitle(String subject) {
    return Optional.ofNullable(kb.equipment().options().get(subject)).map(Option::title);
  }

  private Optional<String> readingTitle(String subject) {
    return Optional.ofNullable(kb.readings().get(subject)).map(reading -> reading.title());
  }

  String valueTitle(String subject, String value) {
    if (subject.equals(Equipment.FAMILY)) {
      return Optional.ofNullable(kb.equipment().families().get(value))
          .map(family -> family.title())
          .orElse(value);
    }
    return named(subject).stream()
        .filter(named -> named.id().equals(value))
        .findFirst()
        .map(named -> isYesNo(subject) ? yesOrNo(value) : named.title())
        .orElse(value);
  }

  private boolean isYesNo(String subject) {
    return domain(subject).filter(this::isYesNo).isPresent();
  }

  private boolean isYesNo(Domain domain) {
    return domain.match(measured -> false, Domain.Choice::yesNo);
  }

  private String yesOrNo(String value) {
    return value.equals("yes") ? say.say("Yes") : say.say("No");
  }

  /** Ids of all values of a choice or an equipment fact, in their order; empty for a quantity. */
  List<String> values(String subject) {
    return switch (subject) {
      case Equipment.FAMILY -> List.copyOf(kb.equipment().families().keySet());
      case Equipment.MODEL -> List.copyOf(kb.equipment().models().keySet());
      case Equipment.SOFTWARE -> kb.equipment().versions().stream().map(Version::text).toList();
      default -> named(subject).stream().map(NamedValue::id).toList();
    };
  }

  private List<NamedValue> named(String subject) {
    Option option = kb.equipment().options().get(subject);
    if (option != null) {
      return option.values();
    }
    return domain(subject)
        .map(domain -> domain.match(measured -> List.<NamedValue>of(), Domain.Choice::values))
        .orElse(List.of());
  }

  /** Unit of a quantity; for anything else, which has no amounts, a bare count. */
  Unit unit(String reading) {
    return domain(reading)
        .flatMap(
            domain ->
                domain.match(
                    measured -> Optional.of(measured.unit()), choice -> Optional.<Unit>empty()))
        .orElseGet(() -> Units.find("times").orElseThrow());
  }

  /** Unit and resolution of a quantity. */
  Scale scale(String reading) {
    return new Scale(
        unit(reading),
        domain(reading)
            .flatMap(
                domain -> domain.match(Domain.Measured::resolution, choice -> Optional.empty())));
  }

  /**
   * An amount as it is shown: what is read off a curve has no end of digits and is rounded to its
   * resolution, or else to a tenth of its unit, without passing a step.
   */
  BigFraction shown(String reading, BigFraction amount) {
    boolean curved =
        Optional.ofNullable(kb.readings().get(reading))
            .flatMap(Reading::derived)
            .filter(form -> !form.bends().isEmpty() || dependsOnCurve(form))
            .isPresent();
    BigFraction step = scale(reading).resolution().orElse(BigFraction.of(1, 10));
    return curved ? Rounding.to(step).shown(amount) : amount;
  }

  private boolean dependsOnCurve(Derived form) {
    return form.operands().stream()
        .flatMap(id -> kb.readings().get(id).derived().stream())
        .anyMatch(operand -> !operand.bends().isEmpty());
  }

  private Optional<Domain> domain(String reading) {
    return Optional.ofNullable(kb.readings().get(reading)).map(found -> found.domain());
  }
}
