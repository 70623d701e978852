package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.resolve.LogTime.Form;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads what a map of columns says of the time. */
final class LogTimeResolver {
  private static final List<String> KEYS =
      List.of("column", "as", "date", "dates", "over-midnight", "zero");
  private static final List<String> FORMS = List.of("clock", "seconds", "date-time");
  private static final List<String> YES_NO = List.of("yes", "no");

  private final Problems problems;

  LogTimeResolver(Problems problems) {
    this.problems = problems;
  }

  Optional<LogTime> resolve(Node node) {
    if (node instanceof Scalar heading) {
      return Optional.of(
          new LogTime(
              heading, Optional.empty(), Form.CLOCK, DateForm.ISO, false, Optional.empty()));
    }
    Fields fields = new Fields(node, "`time`", node.place(), KEYS, problems);
    Form form = fields.scalar("as").map(this::form).orElse(Form.CLOCK);
    Optional<Scalar> date = fields.scalar("date");
    DateForm dates = fields.scalar("dates").map(this::dates).orElse(DateForm.ISO);
    boolean over = fields.scalar("over-midnight").filter(this::isYes).isPresent();
    Optional<Scalar> zero = fields.scalar("zero");
    fits(fields, form);
    return fields
        .requireScalar("column")
        .map(heading -> new LogTime(heading, date, form, dates, over, zero));
  }

  /** Keys that say nothing beside others. */
  private void fits(Fields fields, Form form) {
    if (fields.has("date") && form != Form.CLOCK) {
      problems.add(
          fields.place("date"),
          "a date of its own stands beside a clock, and not beside " + Words.quoted(word(form)),
          "write `as: clock`, or leave `date` out");
    }
    if (fields.has("dates") && !fields.has("date") && form != Form.DATE_TIME) {
      problems.add(
          fields.place("dates"),
          "`dates` says how dates are written, and there are none",
          "name their column by `date`, or write `as: date-time`");
    }
    if (fields.has("over-midnight") && (form != Form.CLOCK || fields.has("date"))) {
      problems.add(
          fields.place("over-midnight"),
          "`over-midnight` is for a clock without dates",
          "leave it out");
    }
  }

  private static String word(Form form) {
    return form.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Form form(Scalar written) {
    if (!FORMS.contains(written.text())) {
      problems.add(
          written.place(),
          "a time cannot be written as " + Words.quoted(written.text()),
          NearMatch.help(written.text(), FORMS));
      return Form.CLOCK;
    }
    return Form.valueOf(written.text().replace('-', '_').toUpperCase(Locale.ROOT));
  }

  private DateForm dates(Scalar written) {
    Optional<DateForm> form = DateForm.of(written.text());
    if (form.isEmpty()) {
      problems.add(
          written.place(),
          "dates cannot be written as " + Words.quoted(written.text()),
          "write `YYYY-MM-DD`, `DD.MM.YYYY`, `MM/DD/YYYY` or the like; `YY` is a short year");
    }
    return form.orElse(DateForm.ISO);
  }

  private boolean isYes(Scalar written) {
    if (!YES_NO.contains(written.text())) {
      problems.add(
          written.place(),
          "`over-midnight` cannot be " + Words.quoted(written.text()),
          NearMatch.help(written.text(), YES_NO));
    }
    return written.text().equals("yes");
  }
}
