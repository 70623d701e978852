package io.faultwright.certificate;

import io.faultwright.certificate.Certificate.Score;
import io.faultwright.certificate.Certificate.Session;
import io.faultwright.handin.Course;
import io.faultwright.handin.Marks;
import io.faultwright.handin.Marks.Person;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The certificates of those who passed. */
public final class Certificates {
  /** Enough of the quiz's fingerprint to tell the sessions of a trainer apart. */
  private static final int DIGITS = 8;

  private Certificates() {}

  /**
   * One for each who passed and gave a name, by number.
   *
   * @param date the day the session was held
   */
  public static List<Certificate> of(Marks marks, LocalDate date, boolean withScore) {
    Course about = marks.about();
    Session session = new Session(about.session(), about.title(), about.handbook(), about.maker());
    return marks.people().stream()
        .filter(person -> person.passed() && !person.name().isEmpty())
        .map(
            person ->
                Certificate.of(
                    number(marks, person),
                    person.name(),
                    session,
                    date,
                    withScore
                        ? Optional.of(new Score(person.right(), marks.items()))
                        : Optional.empty(),
                    marks.registerKey()))
        .toList();
  }

  /** Those who passed and gave no name. */
  public static List<Integer> nameless(Marks marks) {
    return marks.people().stream()
        .filter(person -> person.passed() && person.name().isEmpty())
        .map(Person::number)
        .toList();
  }

  private static String number(Marks marks, Person person) {
    String digits = "00" + person.number();
    String three =
        person.number() > 99 ? "" + person.number() : digits.substring(digits.length() - 3);
    String print = marks.fingerprint();
    return print.substring(0, Math.min(DIGITS, print.length())) + "-" + three;
  }
}
